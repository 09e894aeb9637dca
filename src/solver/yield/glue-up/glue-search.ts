import { type Effort, isSpent, withShare } from "../shelf/effort";
import { draws, shuffled } from "../draws";
import { type EveryFilling, everyFilling } from "./every-filling";
import { type Filled, filledPanels } from "./filled-panels";
import type { GluedStrip, GlueWork } from "./glue-work";
import { type Sections, sectionsOfWork } from "./sections";
import { setsInOrder, someSet } from "./sets-in-order";
import { ofOffers, type WidthRow, widthRows } from "./width-rows";

/** What the search finds. */
export interface GlueSearch {
  readonly strips: readonly GluedStrip[];
  /** Offers paid for, and the cheapest set that no reckoning rules out: nothing costs less. */
  readonly offers: readonly number[];
  readonly bound: readonly number[] | number;
  /** Cheaper sets were looked through, of which nothing is kept that could be repeated. */
  readonly isSearched: boolean;
}

export type NoGlueUp =
  /** All boards together are too small. */
  | { readonly row: WidthRow; readonly given: number }
  /** No order was found in which this kind has a place. */
  | { readonly without: number };

/** Orders tried for one set of boards, and for the set that is taken, so that it has few strips. */
const ORDERS = 150;
const ORDERS_OF_PLAN = 120;
/** The first sets get all of them, the others few: many sets are worth more than many orders. */
const FIRST_SETS = 12;
const FEW_ORDERS = 12;
/** Strips above the fewest that panels may have, one after the other, where few strips are looked for. */
const SPARES = 3;
const MOST_SETS = 500;
/** By how much more boards are asked for, step by step, where the cheapest sets held no plan. */
const MORE = [0.005, 0.01, 0.02, 0.03, 0.05, 0.08, 0.12, 0.2, 0.35, 0.6];
const SETS_AT_MORE = 3;
const SHARE_OF_SETS = 0.4;
const SHARE_OF_A_SET = 0.4;
/** Steps in which every filling of all sets, and of one, may be looked through: chosen on tiny jobs; large ones lose little time. */
const EVERY_FILLING = 600_000;
const MOST_OF_A_SET = 150_000;

const boardsInPanels = (strips: readonly GluedStrip[]): number =>
  new Set(strips.map(({ kind, panel, wood }) => `${kind} ${panel} ${wood}`)).size;

/** Fewest strips, then fewest boards a panel. */
const isPlainer = (one: readonly GluedStrip[], other: readonly GluedStrip[]): boolean =>
  one.length < other.length || (one.length === other.length && boardsInPanels(one) < boardsInPanels(other));

const orderOf = (work: GlueWork, sections: Sections, woods: readonly number[], seed: number, spare: number, effort: Effort): Filled => {
  if (seed === 0) return filledPanels(work, sections(woods, undefined, effort), { draw: undefined, spare }, effort);
  const draw = draws(seed);
  return filledPanels(work, sections(shuffled(woods, draw), draw, effort), { draw, spare }, effort);
};

/** Panels of so many boards, in a few orders; the first that holds them all. */
const held = (work: GlueWork, sections: Sections, woods: readonly number[], orders: number, effort: Effort): Filled => {
  let last: Filled = { strips: [], without: 0, missing: Infinity };
  for (let seed = 0; seed < orders && (seed === 0 || !isSpent(effort)); seed += 1) {
    const found = orderOf(work, sections, woods, seed, Infinity, effort);
    if (found.without === undefined) return found;
    if (found.missing <= last.missing) last = found;
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

/** Tries one choice of offers: its strips, or "none" where every filling has been looked through. */
type Tried = (offers: readonly number[], orders: number, share: Effort) => EveryFilling;

interface Found {
  readonly strips: readonly GluedStrip[];
  readonly offers: readonly number[];
}

/** The first of the cheapest sets that holds the panels, and as the bound the very first that is not known to hold them not. */
const amongCheapest = (
  work: GlueWork, rows: readonly WidthRow[], tried: Tried, effort: Effort,
): { readonly found?: Found; readonly bound: GlueSearch["bound"] } => {
  const sets = setsInOrder(work.offers, rows);
  const most = effort.left * SHARE_OF_A_SET;
  let bound: GlueSearch["bound"] | undefined;
  for (let count = 0; count < MOST_SETS && !isSpent(effort); count += 1) {
    const set = withShare(effort, effort.left * SHARE_OF_SETS, sets.next);
    if (set === undefined) return { bound: bound ?? sets.least() };
    const strips = withShare(effort, most, (share) => tried(set.offers, count < FIRST_SETS ? ORDERS : FEW_ORDERS, share));
    if (strips === "none") continue;
    bound ??= set.offers;
    if (strips !== "not known") return { found: { strips, offers: set.offers }, bound };
  }
  return { bound: bound ?? sets.least() };
};

/** A set that has more than it needs, step by step more, up to all there is. */
const amongLarger = (work: GlueWork, rows: readonly WidthRow[], tried: Tried, effort: Effort): Found | undefined => {
  const all = work.offers.map((_, offer) => offer);
  const most = effort.left / MORE.length;
  for (const more of MORE) {
    const asked = rows.map((row) => ({ ...row, need: Math.min(sumOf(row), row.need * (1 + more)) }));
    const found = withShare(effort, most, (share): Found | undefined => {
      const sets = setsInOrder(work.offers, asked);
      for (let count = 0; count < SETS_AT_MORE; count += 1) {
        const offers = withShare(share, share.left * SHARE_OF_SETS, sets.next)?.offers ?? someSet(work.offers, asked);
        const strips = offers === undefined ? "none" : withShare(share, share.left / 2, (part) => tried(offers, ORDERS, part));
        if (typeof strips !== "string") return { strips, offers: offers! };
        if (isSpent(share)) break;
      }
      return undefined;
    });
    if (found !== undefined) return found;
  }
  const strips = tried(all, ORDERS, effort);
  return typeof strips === "string" ? undefined : { strips, offers: all };
};

const sumOf = ({ gives }: WidthRow): number => gives.reduce((sum, each) => sum + each, 0);

/** Least cost first, sets of boards are tried until one holds the panels; what none cheaper can hold is proven by the rows. */
export const glueSearch = (work: GlueWork, effort: Effort): GlueSearch | NoGlueUp => {
  const rows = ofOffers(work, widthRows(work));
  const short = [...rows].sort((one, other) => Number(other.kind !== undefined) - Number(one.kind !== undefined))
    .find((row) => sumOf(row) < row.need);
  if (short !== undefined) return { row: short, given: sumOf(short) };
  const sections = sectionsOfWork(work);
  const every = { left: EVERY_FILLING };
  let isSearched = false;
  let without = 0;
  const tried: Tried = (offers, orders, share) => {
    const woods = offers.flatMap((offer) => work.offers[offer]!.woods).sort((one, other) => one - other);
    const found = held(work, sections, woods, orders, share);
    if (found.without === undefined) return plainest(work, sections, woods, found, share);
    without = found.without;
    const filling = withShare(every, MOST_OF_A_SET, (part) => everyFilling(work, woods, part));
    isSearched = isSearched || filling === "none";
    return typeof filling === "string" ? filling : plainest(work, sections, woods, { strips: filling, missing: 0 }, share);
  };
  const { found: cheap, bound } = withShare(effort, effort.left / 2, (share) => amongCheapest(work, rows, tried, share));
  const found = cheap ?? amongLarger(work, rows, tried, effort);
  return found === undefined ? { without } : { ...found, bound, isSearched };
};
