import type { Effort } from "../shelf/effort";

/**
 * What can be worth most in each length, after a piece more was offered: lengths rising, worths rising with them, and where each came from
 * in the front before; from below where the piece was taken.
 */
export interface Front {
  readonly before: Front | undefined;
  /** What was offered last. */
  readonly item: number;
  readonly count: number;
  readonly size: Float64Array;
  readonly worth: Float64Array;
  readonly from: Int32Array;
}

export const emptyFront: Front = {
  before: undefined, item: -1, count: 1, size: new Float64Array(1), worth: new Float64Array(1), from: new Int32Array(1),
};

/** Offers one piece more, of so much size and worth, within the room. */
export const offered = (before: Front, item: number, size: number, worth: number, room: number, effort: Effort): Front => {
  const { count, size: sizes, worth: worths } = before;
  let shifted = 0;
  while (shifted < count && sizes[shifted]! + size <= room) shifted += 1;
  const all = count + shifted;
  const nextSize = new Float64Array(all);
  const nextWorth = new Float64Array(all);
  const from = new Int32Array(all);
  let left = 0;
  let taken = 0;
  let filled = 0;
  let most = -1;
  while (left < count || taken < shifted) {
    const isTaken = left >= count || (taken < shifted && sizes[taken]! + size < sizes[left]!);
    const at = isTaken ? taken : left;
    const reached = isTaken ? worths[at]! + worth : worths[at]!;
    if (reached > most) {
      const length = isTaken ? sizes[at]! + size : sizes[at]!;
      if (filled > 0 && nextSize[filled - 1] === length) filled -= 1;
      nextSize[filled] = length;
      nextWorth[filled] = reached;
      from[filled] = isTaken ? -1 - at : at;
      filled += 1;
      most = reached;
    }
    if (isTaken) taken += 1;
    else left += 1;
  }
  effort.left -= all;
  return { before, item, count: filled, size: nextSize, worth: nextWorth, from };
};

/** The place of the most worth within a room; -1 where even nothing is too long. */
export const bestWithin = ({ count, size }: Front, room: number): number => {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (size[middle]! <= room) low = middle + 1;
    else high = middle;
  }
  return low - 1;
};

/** The items taken on the way to a place. */
export const itemsAt = (front: Front, place: number): number[] => {
  const taken: number[] = [];
  let at = place;
  for (let each: Front | undefined = front; each?.before !== undefined; each = each.before) {
    const from: number = each.from[at]!;
    if (from < 0) taken.push(each.item);
    at = from < 0 ? -1 - from : from;
  }
  return taken;
};
