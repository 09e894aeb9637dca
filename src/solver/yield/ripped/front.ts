import type { Effort } from "../shelf/effort";

/**
 * What can be worth most in each length, after a piece more was offered: lengths rising, worths rising with them, and where each came from
 * in the front before; from below where the piece was taken. The numbers stand in a space that is used again for the next stretch.
 */
export interface Front {
  readonly before: Front | undefined;
  /** What was offered last. */
  readonly item: number;
  readonly start: number;
  readonly count: number;
}

const FIRST_ROOM = 65_536;

interface Space {
  /** The first place that is free; place 0 holds no piece, no length and no worth. */
  free: number;
  size: Float64Array;
  worth: Float64Array;
  from: Int32Array;
}

const space: Space = {
  free: 1, size: new Float64Array(FIRST_ROOM), worth: new Float64Array(FIRST_ROOM), from: new Int32Array(FIRST_ROOM),
};

export const emptyFront: Front = { before: undefined, item: -1, start: 0, count: 1 };

/** Gives back the space of all fronts but the empty one; whoever asks has read what is wanted of them. */
export const clearFronts = (): void => {
  space.free = 1;
};

const makeRoom = (count: number): void => {
  if (space.free + count <= space.size.length) return;
  const room = 2 * (space.free + count);
  const size = new Float64Array(room);
  const worth = new Float64Array(room);
  const from = new Int32Array(room);
  size.set(space.size);
  worth.set(space.worth);
  from.set(space.from);
  Object.assign(space, { size, worth, from });
};

/** Work of an offer besides its places. */
const OFFER_STEPS = 40;

/** Offers one piece more, of so much size and worth, within the room. */
export const offered = (before: Front, item: number, length: number, gain: number, room: number, effort: Effort): Front => {
  const { start, count } = before;
  makeRoom(2 * count);
  const { size, worth, from } = space;
  const end = start + count;
  let shifted = start;
  while (shifted < end && size[shifted]! + length <= room) shifted += 1;
  let left = start;
  let taken = start;
  let filled = space.free;
  let most = -1;
  while (left < end || taken < shifted) {
    const isTaken = left >= end || (taken < shifted && size[taken]! + length < size[left]!);
    const at = isTaken ? taken : left;
    const reached = isTaken ? worth[at]! + gain : worth[at]!;
    if (reached > most) {
      const long = isTaken ? size[at]! + length : size[at]!;
      if (filled > space.free && size[filled - 1] === long) filled -= 1;
      size[filled] = long;
      worth[filled] = reached;
      from[filled] = isTaken ? -1 - (at - start) : at - start;
      filled += 1;
      most = reached;
    }
    if (isTaken) taken += 1;
    else left += 1;
  }
  effort.left -= count + shifted - start + OFFER_STEPS;
  const front: Front = { before, item, start: space.free, count: filled - space.free };
  space.free = filled;
  return front;
};

/** The place of the most worth within a room. */
export const bestWithin = ({ start, count }: Front, room: number): number => {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (space.size[start + middle]! <= room) low = middle + 1;
    else high = middle;
  }
  return low - 1;
};

export const worthAt = ({ start }: Front, place: number): number => space.worth[start + place]!;

export const mostWorth = ({ start, count }: Front): number => space.worth[start + count - 1]!;

/** The items taken on the way to a place. */
export const itemsAt = (front: Front, place: number): number[] => {
  const taken: number[] = [];
  let at = place;
  for (let each: Front | undefined = front; each?.before !== undefined; each = each.before) {
    const from: number = space.from[each.start + at]!;
    if (from < 0) taken.push(each.item);
    at = from < 0 ? -1 - from : from;
  }
  return taken;
};
