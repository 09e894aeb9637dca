import { type Effort, isSpent, withShare } from "../shelf/effort";
import { draws, shuffled } from "./draws";
import { type Filled, filledPanels } from "./filled-panels";
import type { GluedStrip, GlueWork } from "./glue-work";
import { type Sections, sectionsOfWork } from "./sections";
import { setsInOrder } from "./sets-in-order";
import { ofOffers, type WidthRow, widthRows } from "./width-rows";

/** What the search finds. */
export interface GlueSearch {
  readonly strips: readonly GluedStrip[];
  /** Offers paid for, and the cheapest set that no reckoning rules out: nothing costs less. */
  readonly offers: readonly number[];
  readonly bound: readonly number[] | number;
}

export type NoGlueUp =
  /** All boards together are too small. */
  | { readonly row: WidthRow; readonly given: number }
  /** No order was found in which this kind has a place. */
  | { readonly without: number };

/** Orders tried for one set of boards, and for the set that is taken, so that it has few strips. */
const ORDERS = 150;
const ORDERS_OF_PLAN = 120;
/** Strips above the fewest that panels may have, one after the other, where few strips are looked for. */
const SPARES = 3;
const MOST_SETS = 80;
/** By how much more boards are asked for, step by step, where the cheapest sets held no plan. */
const MORE = [0.005, 0.01, 0.02, 0.03, 0.05, 0.08, 0.12, 0.2, 0.35, 0.6];
const SETS_AT_MORE = 3;
const SHARE_OF_SETS = 0.4;

const boardsInPanels = (strips: readonly GluedStrip[]): number =>
  new Set(strips.map(({ kind, panel, wood }) => `${kind} ${panel} ${wood}`)).size;

/** Fewest strips, then fewest boards a panel. */
const isPlainer = (one: readonly GluedStrip[], other: readonly GluedStrip[]): boolean =>
  one.length < other.length || (one.length === other.length && boardsInPanels(one) < boardsInPanels(other));

const orderOf = (work: GlueWork, sections: Sections, woods: readonly number[], seed: number, spare: number, effort: Effort): Filled => {
  if (seed === 0) return filledPanels(work, sections(woods, undefined), { draw: undefined, spare }, effort);
  const draw = draws(seed);
  return filledPanels(work, sections(shuffled(woods, draw), draw), { draw, spare }, effort);
};

/** Panels of so many boards, in a few orders; the first that holds them all. */
const held = (work: GlueWork, sections: Sections, woods: readonly number[], effort: Effort): Filled => {
  let last: Filled = { strips: [], without: 0 };
  for (let seed = 0; seed < ORDERS && !isSpent(effort); seed += 1) {
    const found = orderOf(work, sections, woods, seed, Infinity, effort);
    if (found.without === undefined) return found;
    if (found.strips.length >= last.strips.length) last = found;
  }
  return last;
};

const plainest = (work: GlueWork, sections: Sections, woods: readonly number[], first: Filled, effort: Effort): readonly GluedStrip[] => {
  let best = first.strips;
  for (let seed = 0; seed < ORDERS_OF_PLAN && !isSpent(effort); seed += 1) {
    const found = orderOf(work, sections, woods, seed, seed % SPARES, effort);
    if (found.without === undefined && isPlainer(found.strips, best)) best = found.strips;
  }
  return best;
};

/** Least cost first, sets of boards are tried until one holds the panels; what none cheaper can hold is proven by the rows. */
export const glueSearch = (work: GlueWork, effort: Effort): GlueSearch | NoGlueUp => {
  const rows = ofOffers(work, widthRows(work));
  const all = (row: WidthRow): number => row.gives.reduce((sum, gives) => sum + gives, 0);
  const short = [...rows].sort((one, other) => Number(other.kind !== undefined) - Number(one.kind !== undefined))
    .find((row) => all(row) < row.need);
  if (short !== undefined) return { row: short, given: all(short) };
  const sections = sectionsOfWork(work);
  const woodsOf = (offers: readonly number[]): readonly number[] =>
    offers.flatMap((offer) => work.offers[offer]!.woods).sort((one, other) => one - other);
  let bound: GlueSearch["bound"] | undefined;
  let without = 0;
  const tried = (offers: readonly number[]): GlueSearch | undefined => {
    const woods = woodsOf(offers);
    const found = held(work, sections, woods, effort);
    if (found.without === undefined) return { strips: plainest(work, sections, woods, found, effort), offers, bound: bound ?? 0 };
    without = found.without;
    return undefined;
  };
  const firstOf = (asked: readonly WidthRow[], most: number): GlueSearch | undefined => {
    const sets = setsInOrder(work.offers, asked);
    for (let count = 0; count < most; count += 1) {
      const set = withShare(effort, effort.left * SHARE_OF_SETS, sets.next);
      if (bound === undefined) bound = set?.offers ?? sets.least();
      const found = set === undefined ? undefined : tried(set.offers);
      if (set === undefined || found !== undefined) return found;
    }
    return undefined;
  };
  let found = firstOf(rows, MOST_SETS);
  for (const more of MORE) {
    if (found !== undefined || isSpent(effort)) break;
    const asked = rows.map((row) => ({ ...row, need: Math.min(all(row), row.need * (1 + more)) }));
    found = firstOf(asked, SETS_AT_MORE);
  }
  return found ?? tried(work.offers.map((_, offer) => offer)) ?? { without };
};
