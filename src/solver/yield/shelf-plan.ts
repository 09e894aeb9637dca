import { FINE_CELLS, fractionalCoverCost } from "./cover";
import { handPlan } from "./hand-plan";
import { buyable, leastCost, neededWorth } from "./least-cost";
import { patternPlan } from "./pattern-plan";
import { type LinearPlan, linearPlan } from "./linear-plan";
import { regrouped } from "./regroup";
import { searched } from "./search";
import { betterOf, type Cut, outlay, piecesWanted, type Shelf } from "./shelf";
import { priceWeighing, type Weighing, weighings } from "./weighing";

export interface ShelfPlan {
  /** Nothing where no plan was found. */
  readonly cuts: readonly Cut[] | undefined;
  /** The least any plan can cost, proven by a weighing. Infinity where the stock is proven too small. */
  readonly least: number;
  /** The search looked at everything: the plan is the cheapest, or there is none. */
  readonly closed: boolean;
}

/** Jobs of more pieces are not searched as a whole. */
const MOST_SEARCHED_PIECES = 80;
/** Steps of the search for the cheapest plan, of the one for the best among the cheapest, and of replanning in groups. */
const CASH_EFFORT = { steps: 250_000, cells: FINE_CELLS };
const TIES_EFFORT = { steps: 60_000, cells: FINE_CELLS };
const REGROUP_BUDGET = 150_000;

/** Weighings worth a table, and those the search carries along. */
const TABLED = 8;
const CARRIED = 3;

interface Proof {
  readonly scale: Weighing;
  readonly least: number;
}

/** The strongest weighings with what each proves; the first is always the one by width. */
const proofs = (shelf: Shelf, dearest: number, linear: LinearPlan | undefined): Proof[] => {
  const [byWidth, ...others] = weighings(shelf);
  const byPrice = linear === undefined ? undefined : priceWeighing(shelf, linear.worth);
  if (byPrice !== undefined) others.push(byPrice);
  const inPart = (scale: Weighing): number => fractionalCoverCost(buyable(shelf, scale), neededWorth(shelf, scale));
  const strongest = others
    .map((scale) => ({ scale, least: inPart(scale) }))
    .sort((a, b) => (a.least === b.least ? 0 : b.least - a.least))
    .slice(0, TABLED)
    .map(({ scale }) => ({ scale, least: leastCost(shelf, scale, dearest) }))
    .sort((a, b) => (a.least === b.least ? 0 : b.least - a.least));
  return [{ scale: byWidth!, least: leastCost(shelf, byWidth!, dearest) }, ...strongest.slice(0, CARRIED)];
};

/**
 * The plan of one grade, with the least any plan can cost: the better of hand methods and the linear plan made whole, replanned in
 * groups, then searched exactly where the job is small.
 */
export const shelfPlan = (shelf: Shelf): ShelfPlan => {
  const byHand = handPlan(shelf);
  const linear = linearPlan(shelf);
  const start = linear === undefined ? byHand : betterOf(shelf, byHand, patternPlan(shelf, linear));
  const dearest = start === undefined ? Infinity : outlay(shelf, start).cash;
  const proven = proofs(shelf, dearest, linear);
  const least = Math.max(...proven.map((proof) => proof.least));
  if (least === Infinity) return { cuts: undefined, least, closed: true };
  const scales = proven.map((proof) => proof.scale);
  const isSmall = piecesWanted(shelf) <= MOST_SEARCHED_PIECES;

  let cuts = start;
  if (cuts !== undefined && outlay(shelf, cuts).cash > least) cuts = regrouped(shelf, cuts, REGROUP_BUDGET);
  let closed = false;
  if (isSmall && (cuts === undefined || outlay(shelf, cuts).cash > least)) {
    const search = searched(shelf, scales, cuts, CASH_EFFORT, false);
    cuts = search.best;
    closed = search.closed;
  }
  const isCheapest = cuts !== undefined && (closed || outlay(shelf, cuts).cash === least);
  if (isSmall && isCheapest) cuts = searched(shelf, scales, cuts, TIES_EFFORT, true).best;
  return { cuts, least, closed };
};
