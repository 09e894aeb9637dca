import { type Branched, branched } from "./branching";
import { provenByWidth } from "./by-width";
import { wholeUnits, worthSteps } from "./certificate";
import { coarsened } from "./coarse-shelf";
import { columnsGenerated, type Generated, meetsLinearCost } from "./column-generation";
import { preferredByCounts } from "./count-ties";
import { counted, type CountGround, countGround } from "./counted";
import { type Candidate, candidateOf, cheaper, DIVE_RULES, dived, fullestPlans } from "./dive";
import { type Effort, withShare } from "./effort";
import { type Engine } from "./engine";
import { fullSticksPlan } from "./full-sticks";
import { downsized, handPlan, quickHandPlan } from "./hand-plan";
import { type Knapsack, knapsackOf } from "./knapsack";
import { MOST_STICKS, planOfMany } from "./many-sticks";
import { wholeShelf } from "./master";
import { FEW_KINDS, planOfMerged } from "./merged-kinds";
import { inCuttingOrder, isPreferred, lengthPrices } from "./merit";
import { weighedBy } from "./near-patterns";
import { cutsOf } from "./pattern";
import { repaired } from "./repaired";
import { searchedAtRoot } from "./root-search";
import { type ShelfPlan } from "./planned-shelf";
import { type Cut, outlay, piecesWanted, type Shelf } from "./shelf";
import { preferred } from "./ties";

/** Shares of what is left for each stage: patterns on a coarse measure, patterns, each of two dives. */
const ROUGH_SHARE = 0.4;
const ROOT_SHARE = 0.7;
const DIVE_SHARE = 0.35;
/** Pieces up to which a stock of several kinds is branched on. */
const MOST_BRANCHED = 400;
/** What full sticks are made anew and plans repaired with, as a share of the effort: besides it, so that nothing else has less. */
const SPARE_SHARE = 0.5;
/**
 * Kinds of stick up to which their numbers are gone through, and the share of the effort for it; of many pieces less, and before dives:
 * chosen on the bench.
 */
const MOST_COUNTED = 10;
const COUNTED_SHARE = 0.6;
const COUNTED_OF_MANY = 0.1;
/** Pieces up to which that comes before dives, and full sticks after all else. */
const MOST_AT_ONCE = 60;
/** Pieces up to which plans of equal cost are compared, the steps for it, and the effort a part of a job must have for it. */
const MOST_COMPARED = 60;
const TIES_EFFORT = 300_000;
const COUNT_TIES_EFFORT = 2_000_000;
const COMPARED_FROM = 1_500_000;

/** Steps that a linear program takes for each triple of its kinds: where there are fewer left, it is one of merged kinds. */
const KIND_STEPS = 20;
/** Kinds from which a plan of merged kinds comes first, and the share of the effort for it. */
const MERGED_FROM = 80;
const MERGED_SHARE = 0.55;

const isCountable = (shelf: Shelf): boolean => shelf.sticks.length > 1 && shelf.sticks.length <= MOST_COUNTED;

/** The better of a plan and the same with each stick changed for the cheapest that holds its cuts, in cutting order. */
const finished = (shelf: Shelf, best: Candidate | undefined): readonly Cut[] | undefined =>
  best === undefined ? undefined : inCuttingOrder(shelf, downsized(shelf, cutsOf(shelf, best.uses)));

/** Patterns of a linear plan, on a coarse measure first where the shelf is large. */
interface Rooted {
  readonly root: Generated;
  readonly coarse?: { readonly shelf: Shelf; readonly knapsack: Knapsack; readonly rough: Generated };
}

const rooted = (shelf: Shelf, knapsack: Knapsack, { masterOf }: Engine, effort: Effort, byHand: Candidate | undefined): Rooted => {
  const limits = wholeShelf(shelf);
  const byHandPatterns = (byHand?.uses ?? []).map(({ pattern }) => pattern);
  const coarse = coarsened(shelf);
  const coarseKnapsack = coarse === undefined ? undefined : knapsackOf(coarse);
  const isCoarse = coarse !== undefined && coarseKnapsack !== undefined;
  const rough = isCoarse
    ? withShare(effort, effort.left * ROUGH_SHARE, (share) =>
        columnsGenerated(coarse, limits, coarseKnapsack, [], masterOf, share, meetsLinearCost(coarse)),
      )
    : undefined;
  const known = [...byHandPatterns, ...(rough?.patterns ?? [])];
  const generated = withShare(effort, effort.left * ROOT_SHARE, (share) =>
    columnsGenerated(shelf, limits, knapsack, known, masterOf, share, meetsLinearCost(shelf)),
  );
  const simple = provenByWidth(shelf);
  const root = generated.least < simple.least ? { ...generated, ...simple } : generated;
  return isCoarse && rough !== undefined ? { root, coarse: { shelf: coarse, knapsack: coarseKnapsack, rough } } : { root };
};

/** No plan can be cheaper, or none exists. */
const isClosed = ({ best, proven }: Branched): boolean => (best?.cost ?? Infinity) <= proven;

/** The cheapest plan by fullest sticks and dives. */
const divedFrom = (
  shelf: Shelf, knapsack: Knapsack, { masterOf }: Engine, effort: Effort, { root, coarse }: Rooted, start: Candidate | undefined,
): Candidate | undefined => {
  const least = wholeUnits(root.least, worthSteps(shelf));
  let best = cheaper(start, fullestPlans(shelf, knapsack, root.worth, start?.cost ?? Infinity, effort));
  for (const rule of DIVE_RULES) {
    if (best !== undefined && best.cost <= least) break;
    best = withShare(effort, effort.left * DIVE_SHARE, (share) =>
      coarse === undefined
        ? dived(shelf, root, knapsack, masterOf, best, least, rule, share)
        : dived(coarse.shelf, coarse.rough, coarse.knapsack, masterOf, best, least, rule, share),
    );
  }
  return best;
};

/** What the linear plan alone proves of the cheapest plan so far. */
const atRoot = (shelf: Shelf, { worth, least }: Pick<Generated, "worth" | "least">, best: Candidate | undefined): Branched => {
  const bound = Math.min(wholeUnits(least, worthSteps(shelf)), best?.cost ?? Infinity);
  return { best, certified: bound, proven: bound, proof: { by: "worth", worth, isSearched: false } };
};

/** The plan that is proven to be nearer the least cost; both are of the same shelf. */
const better = (one: Branched, other: Branched): Branched => {
  const best = cheaper(one.best, other.best);
  const bound = one.proven > other.proven || (one.proven === other.proven && one.certified >= other.certified) ? one : other;
  const most = best?.cost ?? Infinity;
  return { ...bound, best, certified: Math.min(bound.certified, most), proven: Math.min(bound.proven, most) };
};

/** A plan of many pieces from several kinds of stick, repaired. */
const repairedFrom = (shelf: Shelf, knapsack: Knapsack, root: Generated, found: Branched, effort: Effort): Branched => {
  const { best, proven } = found;
  if (best === undefined || shelf.sticks.length === 1) return found;
  const limits = wholeShelf(shelf);
  const fillings = knapsack.fill(root.worth, shelf.kinds.map((kind) => kind.wanted), effort);
  const weighed = weighedBy(shelf, limits, worthSteps(shelf), root.worth, fillings);
  // downsized first, as it will be at the end: so no plan becomes dearer
  const start = candidateOf(shelf, downsized(shelf, cutsOf(shelf, best.uses))) ?? best;
  return atRoot(shelf, root, repaired(shelf, limits, weighed, proven, start, effort));
};

/**
 * The search of a shelf: small ones by numbers of sticks at once, large ones by full sticks, then by dives, numbers of sticks, repairs,
 * branches or a search of the whole.
 */
const searchedFrom = (
  shelf: Shelf, knapsack: Knapsack, engine: Engine, effort: Effort, first: Rooted, ground: CountGround | undefined,
  byHand: Candidate | undefined, spare: Effort,
): Branched => {
  const { root } = first;
  let found = atRoot(shelf, root, byHand);
  const count = (share: number): void => {
    if (ground === undefined || isClosed(found)) return;
    found = better(found, withShare(effort, effort.left * share, (granted) => counted(ground, root, found.best, granted)));
  };
  if (piecesWanted(shelf) <= MOST_AT_ONCE) count(COUNTED_SHARE);
  if (isClosed(found)) return found;
  const fill = (): void => {
    if (found.best === undefined || isClosed(found)) return;
    found = better(found, atRoot(shelf, root, fullSticksPlan(shelf, found.best, spare)));
  };
  const isMany = piecesWanted(shelf) > MOST_AT_ONCE;
  const isTooManyToBranch = piecesWanted(shelf) > MOST_BRANCHED;
  if (isMany) fill();
  if (isTooManyToBranch) count(COUNTED_OF_MANY);
  if (isClosed(found)) return found;
  found = better(found, atRoot(shelf, root, divedFrom(shelf, knapsack, engine, effort, first, found.best)));
  if (!isTooManyToBranch) count(COUNTED_SHARE);
  if (isClosed(found)) return found;
  if (isTooManyToBranch) found = better(found, repairedFrom(shelf, knapsack, root, found, spare));
  if (isClosed(found)) return found;
  found = better(
    found,
    isTooManyToBranch
      ? searchedAtRoot(shelf, knapsack, engine, effort, root, atRoot(shelf, root, found.best))
      : branched(shelf, root, knapsack, engine.masterOf, engine.searchWhole, found.best, effort),
  );
  if (!isMany) fill();
  return found;
};

/** The plan of a shelf that is not too large for a linear program. */
const linearly = (shelf: Shelf, knapsack: Knapsack, engine: Engine, effort: Effort, byHand: Candidate | undefined): ShelfPlan => {
  const isCompared = effort.left >= COMPARED_FROM && piecesWanted(shelf) <= MOST_COMPARED;
  const spare = { left: effort.left * SPARE_SHARE };
  const first = rooted(shelf, knapsack, engine, effort, byHand);
  const { root } = first;
  const ground = isCountable(shelf) ? countGround(shelf, root, knapsack, engine, byHand, effort) : undefined;
  const found = searchedFrom(shelf, knapsack, engine, effort, first, ground, byHand, spare);
  const cuts = finished(shelf, found.best);
  if (cuts === undefined || !isCompared) return { ...found, cuts };
  const byCounts = ground === undefined ? cuts : preferredByCounts(ground, cuts, { left: COUNT_TIES_EFFORT });
  const limits = wholeShelf(shelf);
  const steps = worthSteps(shelf);
  const wanted = shelf.kinds.map((kind) => kind.wanted);
  const weighed = weighedBy(shelf, limits, steps, root.worth, knapsack.fill(root.worth, wanted, effort));
  const slack = outlay(shelf, cuts).cash * steps - root.least;
  return { ...found, cuts: preferred(shelf, limits, weighed, slack, byCounts, { left: TIES_EFFORT }) };
};

const cheapestPlan = (shelf: Shelf, engine: Engine, effort: Effort): ShelfPlan => {
  if (shelf.sticks.length > MOST_STICKS) return planOfMany(shelf, effort, (few, share) => planOfFew(few, engine, share));
  return planOfFew(shelf, engine, effort);
};

const planOfFew = (shelf: Shelf, engine: Engine, effort: Effort): ShelfPlan => {
  const isTooLarge = (): boolean => KIND_STEPS * shelf.kinds.length ** 3 > effort.left;
  const isMerged = shelf.kinds.length > FEW_KINDS && ((shelf.kinds.length >= MERGED_FROM && shelf.sticks.length > 1) || isTooLarge());
  const merged = isMerged
    ? withShare(effort, isTooLarge() ? effort.left : effort.left * MERGED_SHARE, (share) =>
        planOfMerged(shelf, engine, share, (few, granted) => planOfFew(few, engine, granted)),
      )
    : undefined;
  const isProven = merged?.cuts !== undefined && outlay(shelf, merged.cuts).cash === merged.proven;
  if (merged !== undefined && (isTooLarge() || isProven)) return merged;
  const isQuick = isCountable(shelf) && piecesWanted(shelf) <= MOST_AT_ONCE;
  const byHand = candidateOf(shelf, merged === undefined ? (isQuick ? quickHandPlan(shelf) : handPlan(shelf, effort)) : merged.cuts);
  const knapsack = knapsackOf(shelf);
  const plan =
    knapsack === undefined || effort.left <= 0
      ? { ...atRoot(shelf, provenByWidth(shelf), byHand), cuts: finished(shelf, byHand) }
      : linearly(shelf, knapsack, engine, effort, byHand);
  return merged === undefined || plan.proven >= merged.proven ? plan : { ...merged, cuts: plan.cuts };
};

/** Sticks that cost nothing as if they cost their new length, and a little each. */
const pricedByLength = (shelf: Shelf): Shelf => {
  const prices = lengthPrices(shelf);
  return {
    ...shelf,
    sticks: shelf.sticks.map((stick, index) => ({ ...stick, price: prices[index]!, available: stick.price === 0 ? stick.available : 0 })),
  };
};

/** The plan of a shelf, with the least any plan can cost and its proof. */
export const shelfPlan = (shelf: Shelf, engine: Engine, effort: Effort): ShelfPlan => {
  const plan = cheapestPlan(shelf, engine, effort);
  if (plan.cuts === undefined || outlay(shelf, plan.cuts).cash > 0) return plan;
  const { cuts } = cheapestPlan(pricedByLength(shelf), engine, effort);
  return cuts === undefined || !isPreferred(shelf, cuts, plan.cuts) ? plan : { ...plan, cuts };
};
