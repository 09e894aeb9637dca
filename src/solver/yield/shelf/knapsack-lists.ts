import { type Bundle, type Filling, fillingOf, type Section } from "./bundles";
import { type Effort } from "./effort";
import { type Shelf } from "./shelf";

/** Steps of one state, in steps of one cell of the table. */
const STATE_STEPS = 8;
/** A list is given up where it has more states than this share of the widths, or took more looks than this share of the table's cells. */
const MOST_STATES = 1 / 3;
const MOST_LOOKS = 1 / 4;
const BEYOND = 0x7fffffff;
const FIRST_ORIGINS = 1 << 14;

/** Ways to fill a stick that no other makes needless: width and worth both rise. `origins` tells how each came about. */
interface States {
  size: number;
  readonly widths: Int32Array;
  readonly worths: Float64Array;
  readonly origins: Int32Array;
}

/** For each state that a bundle was put on: which one, and which bundle. The empty state is number 0. */
interface Origins {
  count: number;
  before: Int32Array;
  bundle: Int32Array;
}

export interface KnapsackLists {
  readonly most: number;
  now: States;
  next: States;
  readonly origins: Origins;
}

export const knapsackLists = ({ longest }: Section): KnapsackLists => {
  const most = Math.max(64, Math.floor(longest * MOST_STATES));
  const states = (): States => ({
    size: 0, widths: new Int32Array(2 * most + 2), worths: new Float64Array(2 * most + 2), origins: new Int32Array(2 * most + 2),
  });
  const origins = { count: 0, before: new Int32Array(FIRST_ORIGINS), bundle: new Int32Array(FIRST_ORIGINS) };
  return { most, now: states(), next: states(), origins };
};

const withRoom = (origins: Origins, more: number): void => {
  if (origins.count + more <= origins.before.length) return;
  const grown = (old: Int32Array): Int32Array => {
    const larger = new Int32Array(2 * (origins.count + more));
    larger.set(old);
    return larger;
  };
  origins.before = grown(origins.before);
  origins.bundle = grown(origins.bundle);
};

/** All states with and without one bundle more, into `next`; how many were looked at. */
const withBundle = ({ now, next, origins }: KnapsackLists, place: number, width: number, gain: number, longest: number): number => {
  const { size, widths, worths, origins: from } = now;
  let ends = size;
  while (ends > 0 && widths[ends - 1]! + width > longest) ends -= 1;
  withRoom(origins, ends);
  const { before, bundle } = origins;
  let without = 0;
  let withIt = 0;
  let top = -1;
  let count = 0;
  while (without < size || withIt < ends) {
    const plain = without < size ? widths[without]! : BEYOND;
    const wider = withIt < ends ? widths[withIt]! + width : BEYOND;
    const isPlain = plain < wider || (plain === wider && worths[without]! >= worths[withIt]! + gain);
    const held = isPlain ? worths[without]! : worths[withIt]! + gain;
    const at = isPlain ? without++ : withIt++;
    if (held <= top) continue;
    top = held;
    next.widths[count] = isPlain ? plain : wider;
    next.worths[count] = held;
    if (isPlain) next.origins[count] = from[at]!;
    else {
      before[origins.count] = from[at]!;
      bundle[origins.count] = place;
      next.origins[count] = origins.count;
      origins.count += 1;
    }
    count += 1;
  }
  next.size = count;
  return size + ends;
};

/** The last state no wider than a room: it holds the most of all that fit. */
const lastWithin = ({ size, widths }: States, room: number): number => {
  let low = 0;
  let high = size - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (widths[middle]! <= room) low = middle;
    else high = middle - 1;
  }
  return low;
};

/**
 * The best fillings by lists of the states that are worth a look (Nemhauser and Ullmann 1969, from memory): few where pieces are long or
 * differ much in worth. Exact as the table is. Nothing where the lists grow too long. Bundles widest first.
 */
export const listFillings = (
  shelf: Shelf, { sticks, longest }: Section, bundles: readonly Bundle[], worth: ArrayLike<number>, lists: KnapsackLists, effort: Effort,
): Filling[] | undefined => {
  lists.origins.count = 1;
  lists.now.size = 1;
  lists.now.widths[0] = 0;
  lists.now.worths[0] = 0;
  lists.now.origins[0] = 0;
  const most = longest * bundles.length * MOST_LOOKS;
  let looks = 0;
  for (let place = 0; place < bundles.length; place += 1) {
    const { kind, copies, width } = bundles[place]!;
    looks += withBundle(lists, place, width, worth[kind]! * copies, longest);
    const { now } = lists;
    lists.now = lists.next;
    lists.next = now;
    if (lists.now.size <= lists.most && looks <= most) continue;
    effort.left -= STATE_STEPS * looks;
    return undefined;
  }
  effort.left -= STATE_STEPS * looks;
  const { before, bundle } = lists.origins;
  return sticks.map((stick) => {
    const at = lastWithin(lists.now, shelf.sticks[stick]!.holds);
    const chosen: Bundle[] = [];
    for (let origin = lists.now.origins[at]!; origin !== 0; origin = before[origin]!) chosen.push(bundles[bundle[origin]!]!);
    return fillingOf(lists.now.worths[at]!, chosen);
  });
};
