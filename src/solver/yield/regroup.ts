import { searched } from "./search";
import { type Cut, isBetter, outlay, type Shelf, usedWidth } from "./shelf";

/** Pieces replanned together: few enough for an exact search of each group. */
const GROUP_PIECES = 14;
const GROUP_EFFORT = { steps: 4_000, cells: 1_000 };
/** Passes without any gain after which the plan is left as it is. */
const MOST_IDLE_PASSES = 6;

/** Multiplier and modulus of the minimal standard generator (Park and Miller 1988, from memory): one fixed order on every host. */
const MULTIPLIER = 48_271;
const MODULUS = 2_147_483_647;

const shuffled = (length: number, seed: number): number[] => {
  const order = Array.from({ length }, (_, index) => index);
  let state = seed;
  for (let at = length - 1; at > 0; at -= 1) {
    state = (state * MULTIPLIER) % MODULUS;
    const other = state % (at + 1);
    [order[at], order[other]] = [order[other]!, order[at]!];
  }
  return order;
};

/** Neighbours in the order, as many to a group as its pieces allow. */
const groupsOf = (cuts: readonly Cut[], order: readonly number[]): number[][] => {
  const groups: number[][] = [[]];
  let pieces = 0;
  for (const index of order) {
    const more = cuts[index]!.kinds.length;
    if (groups.at(-1)!.length > 1 && pieces + more > GROUP_PIECES) {
      groups.push([]);
      pieces = 0;
    }
    groups.at(-1)!.push(index);
    pieces += more;
  }
  return groups;
};

interface Replanned {
  readonly cuts: readonly Cut[] | undefined;
  readonly work: number;
}

/** A better plan for the pieces of these sticks, from these sticks and the stock nobody uses. */
const replanned = (shelf: Shelf, cuts: readonly Cut[], unused: readonly number[]): Replanned => {
  const pieces = cuts.flatMap((cut) => cut.kinds);
  const kinds = [...new Set(pieces)].sort((a, b) => a - b);
  const available = [...unused];
  for (const cut of cuts) available[cut.stick]! += 1;
  const part: Shelf = {
    kinds: kinds.map((kind) => ({ width: shelf.kinds[kind]!.width, wanted: pieces.filter((each) => each === kind).length })),
    sticks: shelf.sticks.map((stick, index) => ({ ...stick, available: Math.min(pieces.length, available[index]!) })),
  };
  const byWidth = { worth: part.kinds.map((kind) => kind.width), holds: part.sticks.map((stick) => stick.holds) };
  const now = cuts.map((cut) => ({ ...cut, kinds: cut.kinds.map((kind) => kinds.indexOf(kind)) }));
  const { best, work } = searched(part, [byWidth], now, GROUP_EFFORT, true);
  const isGain = best !== undefined && isBetter(outlay(part, best), outlay(part, now));
  return {
    cuts: isGain ? best.map((cut) => ({ ...cut, kinds: cut.kinds.map((kind) => kinds[kind]!) })) : undefined,
    work: work + part.kinds.length,
  };
};

/**
 * A plan no worse than the one given: small groups of its sticks are planned anew, exactly, as long as the counted budget lasts.
 * Sticks that waste most come together first, then mixed groups.
 */
export const regrouped = (shelf: Shelf, start: readonly Cut[], budget: number): readonly Cut[] => {
  let cuts = [...start];
  let work = 0;
  let idle = 0;
  for (let pass = 1; work < budget && idle <= MOST_IDLE_PASSES; pass += 1) {
    const waste = cuts.map((cut) => shelf.sticks[cut.stick]!.holds - usedWidth(shelf, cut));
    const byWaste = cuts.map((_, index) => index).sort((a, b) => waste[b]! - waste[a]! || a - b);
    const unused = shelf.sticks.map((stick) => stick.available);
    for (const cut of cuts) unused[cut.stick]! -= 1;
    const next: Cut[] = [];
    idle += 1;
    for (const group of groupsOf(cuts, pass === 1 ? byWaste : shuffled(cuts.length, pass))) {
      const old = group.map((index) => cuts[index]!);
      const fresh = work < budget ? replanned(shelf, old, unused) : { cuts: undefined, work: 0 };
      work += fresh.work;
      next.push(...(fresh.cuts ?? old));
      if (fresh.cuts === undefined) continue;
      for (const cut of old) unused[cut.stick]! += 1;
      for (const cut of fresh.cuts) unused[cut.stick]! -= 1;
      idle = 0;
    }
    cuts = next;
  }
  return cuts;
};
