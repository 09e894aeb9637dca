import { commonDivisor } from "../common-divisor";
import { type Branched, branched } from "./branching";
import { provenByWidth } from "./by-width";
import { wholeUnits, worthSteps } from "./certificate";
import { coarsened } from "./coarse-shelf";
import { counted } from "./counted";
import { columnsGenerated, meetsLinearCost } from "./column-generation";
import { type Candidate, candidateOf, cheaper, DIVE_RULES, dived, fullestPlans } from "./dive";
import { type Effort, isSpent, withShare } from "./effort";
import { type Engine } from "./engine";
import { downsized, handPlan } from "./hand-plan";
import { type Knapsack, knapsackOf } from "./knapsack";
import { MOST_STICKS, planOfMany } from "./many-sticks";
import { wholeShelf } from "./master";
import { inCuttingOrder, isPreferred } from "./merit";
import { weighedBy } from "./near-patterns";
import { cutsOf } from "./pattern";
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
/** Kinds of stick up to which their numbers are gone through. */
const MOST_COUNTED = 10;
/** Pieces up to which plans of equal cost are compared, the steps for it, and the effort a part of a job must have for it. */
const MOST_COMPARED = 60;
const TIES_EFFORT = 300_000;
const COMPARED_FROM = 5 * TIES_EFFORT;

/** Kinds beyond which the dense linear program is too slow. */
const MOST_KINDS = 200;

/** The better of a plan and the same with each stick changed for the cheapest that holds its cuts, in cutting order. */
const finished = (shelf: Shelf, best: Candidate | undefined): readonly Cut[] | undefined =>
  best === undefined ? undefined : inCuttingOrder(shelf, downsized(shelf, cutsOf(shelf, best.uses)));

/** The plan of a shelf that is not too large for a linear program: patterns, dives, then branches or a search of the whole. */
const linearly = (shelf: Shelf, knapsack: Knapsack, engine: Engine, effort: Effort, byHand: Candidate | undefined): ShelfPlan => {
  const { masterOf, searchWhole } = engine;
  const isCompared = effort.left >= COMPARED_FROM && piecesWanted(shelf) <= MOST_COMPARED;
  const limits = wholeShelf(shelf);
  const steps = worthSteps(shelf);
  const pieces = piecesWanted(shelf);
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
  const least = wholeUnits(root.least, steps);
  const isDone = (): boolean => best !== undefined && best.cost <= least;
  let best = byHand;
  if (!isDone()) best = cheaper(best, fullestPlans(shelf, knapsack, root.worth, best?.cost ?? Infinity, effort));
  for (const rule of DIVE_RULES) {
    if (isDone()) break;
    best = withShare(effort, effort.left * DIVE_SHARE, (share) =>
      isCoarse && rough !== undefined
        ? dived(coarse, rough, coarseKnapsack, masterOf, best, least, rule, share)
        : dived(shelf, root, knapsack, masterOf, best, least, rule, share),
    );
  }
  const bound = Math.min(least, best?.cost ?? Infinity);
  const atRoot: Branched = { best, certified: bound, proven: bound, proof: { by: "worth", worth: root.worth, isSearched: false } };
  const proven = isDone()
    ? atRoot
    : pieces > MOST_BRANCHED
      ? searchedAtRoot(shelf, knapsack, engine, effort, root, atRoot)
      : shelf.sticks.length > 1 && shelf.sticks.length <= MOST_COUNTED
        ? counted(shelf, root, knapsack, masterOf, searchWhole, best, effort)
        : branched(shelf, root, knapsack, masterOf, searchWhole, best, effort);
  const cuts = finished(shelf, proven.best);
  if (cuts === undefined || !isCompared) return { ...proven, cuts };
  const wanted = shelf.kinds.map((kind) => kind.wanted);
  const weighed = weighedBy(shelf, limits, steps, root.worth, knapsack.fill(root.worth, wanted, effort));
  return { ...proven, cuts: preferred(shelf, limits, weighed, root.least, cuts, { left: TIES_EFFORT }) };
};

const cheapestPlan = (shelf: Shelf, engine: Engine, effort: Effort): ShelfPlan => {
  if (shelf.sticks.length > MOST_STICKS) return planOfMany(shelf, effort, (few, share) => planOfFew(few, engine, share));
  return planOfFew(shelf, engine, effort);
};

const planOfFew = (shelf: Shelf, engine: Engine, effort: Effort): ShelfPlan => {
  const byHand = candidateOf(shelf, handPlan(shelf, effort));
  const knapsack = knapsackOf(shelf);
  if (knapsack !== undefined && shelf.kinds.length <= MOST_KINDS && !isSpent(effort))
    return linearly(shelf, knapsack, engine, effort, byHand);
  const { worth, least } = provenByWidth(shelf);
  const bound = Math.min(wholeUnits(least, worthSteps(shelf)), byHand?.cost ?? Infinity);
  return { cuts: finished(shelf, byHand), certified: bound, proven: bound, proof: { by: "worth", worth, isSearched: false } };
};

/**
 * Sticks that cost nothing as if they cost their new length, and a little each: so that the least new length wins, then the fewest
 * sticks. New lengths in their common measure, so that the unit they come in says nothing.
 */
const pricedByLength = (shelf: Shelf): Shelf => {
  const measure = shelf.sticks.reduce((divisor, stick) => commonDivisor(divisor, stick.newLength), 0) || 1;
  return {
    ...shelf,
    sticks: shelf.sticks.map((stick) => ({
      ...stick,
      price: (stick.newLength / measure) * (piecesWanted(shelf) + 1) + 1,
      available: stick.price === 0 ? stick.available : 0,
    })),
  };
};

/** The plan of a shelf, with the least any plan can cost and its proof. */
export const shelfPlan = (shelf: Shelf, engine: Engine, effort: Effort): ShelfPlan => {
  const plan = cheapestPlan(shelf, engine, effort);
  if (plan.cuts === undefined || outlay(shelf, plan.cuts).cash > 0) return plan;
  const { cuts } = cheapestPlan(pricedByLength(shelf), engine, effort);
  return cuts === undefined || !isPreferred(shelf, cuts, plan.cuts) ? plan : { ...plan, cuts };
};
