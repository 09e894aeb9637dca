import { type Branched, branched } from "./branching";
import { type Proof, provenLeast, wholeUnits, worthSteps } from "./certificate";
import { columnsGenerated, type Generated, meetsLinearCost } from "./column-generation";
import { type Candidate, cheaper, DIVE_RULES, dived, fullestPlans } from "./dive";
import { type Effort, withShare } from "./effort";
import { downsized, handPlan } from "./hand-plan";
import { type Knapsack, knapsackOf } from "./knapsack";
import { type MasterMaker, wholeShelf } from "./master";
import { inCuttingOrder, isPreferred } from "./merit";
import { nearPatterns, weighedBy } from "./near-patterns";
import { cutsOf, patternOf, usesCost } from "./pattern";
import { patternBranched, type WholeSearch } from "./pattern-branching";
import { type Cut, outlay, piecesWanted, type Shelf } from "./shelf";
import { simplexMaster } from "./simplex-master";
import { preferred } from "./ties";

export interface ShelfPlan {
  /** Nothing where no plan was found. */
  readonly cuts: readonly Cut[] | undefined;
  /** No plan costs less: by worths alone, which anyone can check, and with what was searched. Infinity where there is no plan. */
  readonly certified: number;
  readonly proven: number;
  readonly proof: Proof;
}

/** With what a plan is looked for, and for how long. */
export interface Engine {
  readonly masterOf: MasterMaker;
  readonly searchWhole: WholeSearch;
  /** Steps in all. */
  readonly effort: number;
  /** Patterns up to which a plan of many pieces is searched as a whole; 0 for not at all. */
  readonly mostPatterns: number;
}

/** What a worksheet function spends: under two seconds where it is all used. */
export const IN_A_CELL: Engine = { masterOf: simplexMaster, searchWhole: patternBranched, effort: 600_000_000, mostPatterns: 0 };

const ROUGH_SHARE = 0.4;
const ROOT_SHARE = 0.7;
const DIVE_SHARE = 0.35;
const KNOWN_SHARE = 0.2;
/** A plan of many pieces is looked for near the proven cost first, where few patterns are, then farther off, up to the best one known. */
const NEAR_PARTS = [0.1, 0.35, 1];
/** Pieces up to which a stock of several kinds is branched on. */
const MOST_BRANCHED = 400;
/** Pieces up to which plans of equal cost are compared, and the steps for it. */
const MOST_COMPARED = 60;
const TIES_EFFORT = 300_000;

/** Kinds beyond which the dense linear program is too slow. */
const MOST_KINDS = 200;

/** Worths by width alone: no linear program, and so also for jobs too large for one. A stick counts as if it could be filled to the end. */
const byWidth = (shelf: Shelf): { worth: number[]; held: number[] } => {
  const steps = worthSteps(shelf);
  const pieces = piecesWanted(shelf);
  const rate = Math.min(...shelf.sticks.filter(({ available, price }) => available >= pieces || price > 0).map(({ price, holds }) => (price * steps) / holds));
  const share = Number.isFinite(rate) ? rate : 0;
  return {
    worth: shelf.kinds.map(({ width }) => Math.floor(width * share)),
    held: shelf.sticks.map(({ holds }) => Math.floor(holds * share)),
  };
};

/** What worths by width prove, without a linear program. */
const provenByWidth = (shelf: Shelf): Pick<Generated, "worth" | "least"> => {
  const { worth, held } = byWidth(shelf);
  return { worth, least: provenLeast(shelf, wholeShelf(shelf), worthSteps(shelf), worth, held.map((each) => ({ worth: each }))) };
};

/** Widths beyond which, times the kinds, patterns are first looked for on a coarser measure, and the widths of that measure. */
const COARSE_FROM = 1_500_000;
const COARSE_WIDTHS = 4_000;

/** The shelf on a coarser measure: pieces rounded up and sticks down, so that its patterns fit the shelf itself. */
const coarsened = (shelf: Shelf): Shelf | undefined => {
  const longest = Math.max(...shelf.sticks.map((stick) => stick.holds));
  const measure = Math.ceil(longest / COARSE_WIDTHS);
  if (longest * shelf.kinds.length < COARSE_FROM || measure === 1) return undefined;
  const coarse = {
    ...shelf,
    kinds: shelf.kinds.map((kind) => ({ ...kind, width: Math.ceil(kind.width / measure) })),
    sticks: shelf.sticks.map((stick) => ({ ...stick, holds: Math.floor(stick.holds / measure) })),
  };
  return coarse.kinds[0]!.width > Math.max(...coarse.sticks.map((stick) => stick.holds)) ? undefined : coarse;
};

const handCandidate = (shelf: Shelf): Candidate | undefined => {
  const cuts = handPlan(shelf);
  if (cuts === undefined) return undefined;
  const uses = cuts.map((cut) => ({ pattern: patternOf(cut), times: 1 }));
  return { cost: usesCost(shelf, uses), uses };
};

/** The better of a plan and the same with each stick changed for the cheapest that holds its cuts, in cutting order. */
const finished = (shelf: Shelf, best: Candidate | undefined): readonly Cut[] | undefined =>
  best === undefined ? undefined : inCuttingOrder(shelf, downsized(shelf, cutsOf(shelf, best.uses)));

/** A plan of many pieces, searched among the patterns of the linear plan first, then among all near the proven cost. */
const searchedAtRoot = (shelf: Shelf, knapsack: Knapsack, { masterOf, searchWhole, mostPatterns }: Engine, effort: Effort, root: Generated, start: Branched): Branched => {
  if (start.best === undefined || mostPatterns === 0) return start;
  const limits = wholeShelf(shelf);
  const steps = worthSteps(shelf);
  const fillings = knapsack.fill(root.worth, shelf.kinds.map((kind) => kind.wanted), effort);
  const weighed = weighedBy(shelf, limits, steps, root.worth, fillings);
  const known = [...root.patterns, ...start.best.uses.map(({ pattern }) => pattern)].map((pattern) => ({ pattern, lack: 0 }));
  const target = start.best.cost - 1;
  const improved = withShare(effort, effort.left * KNOWN_SHARE, (share) => searchWhole(shelf, limits, weighed, known, target, masterOf, share));
  let best = cheaper(start.best, improved.best) ?? start.best;
  let { proven } = start;
  for (const [place, part] of NEAR_PARTS.entries()) {
    if (best.cost <= proven) break;
    const aim = start.proven + Math.floor((best.cost - 1 - start.proven) * part);
    const near = nearPatterns(shelf, limits, weighed, aim * steps - root.least, true, mostPatterns, effort);
    if (near === undefined) break;
    const search = withShare(effort, effort.left / (NEAR_PARTS.length - place), (share) => searchWhole(shelf, limits, weighed, near, aim, masterOf, share));
    best = cheaper(best, search.best) ?? best;
    if (search.isClosed) proven = Math.min(best.cost, Math.max(proven, aim + 1));
  }
  return {
    best,
    certified: Math.min(start.certified, best.cost),
    proven: Math.min(proven, best.cost),
    proof: { by: "worth", worth: root.worth, isSearched: proven > start.proven },
  };
};

const linearly = (shelf: Shelf, knapsack: Knapsack, engine: Engine, effort: Effort, byHand: Candidate | undefined): ShelfPlan => {
  const { masterOf, searchWhole } = engine;
  const limits = wholeShelf(shelf);
  const steps = worthSteps(shelf);
  const pieces = piecesWanted(shelf);
  const byHandPatterns = (byHand?.uses ?? []).map(({ pattern }) => pattern);
  const coarse = coarsened(shelf);
  const coarseKnapsack = coarse === undefined ? undefined : knapsackOf(coarse);
  const isCoarse = coarse !== undefined && coarseKnapsack !== undefined;
  const rough = isCoarse
    ? withShare(effort, effort.left * ROUGH_SHARE, (share) => columnsGenerated(coarse, limits, coarseKnapsack, [], masterOf, share, meetsLinearCost(coarse)))
    : undefined;
  const known = [...byHandPatterns, ...(rough?.patterns ?? [])];
  const generated = withShare(effort, effort.left * ROOT_SHARE, (share) => columnsGenerated(shelf, limits, knapsack, known, masterOf, share, meetsLinearCost(shelf)));
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
      : branched(shelf, root, knapsack, masterOf, searchWhole, best, effort);
  const cuts = finished(shelf, proven.best);
  if (cuts === undefined || pieces > MOST_COMPARED) return { ...proven, cuts };
  const wanted = shelf.kinds.map((kind) => kind.wanted);
  const weighed = weighedBy(shelf, limits, steps, root.worth, knapsack.fill(root.worth, wanted, effort));
  return { ...proven, cuts: preferred(shelf, limits, weighed, root.least, cuts, { left: TIES_EFFORT }) };
};

const cheapestPlan = (shelf: Shelf, engine: Engine): ShelfPlan => {
  const effort: Effort = { left: engine.effort };
  const byHand = handCandidate(shelf);
  const knapsack = knapsackOf(shelf);
  if (knapsack !== undefined && shelf.kinds.length <= MOST_KINDS) return linearly(shelf, knapsack, engine, effort, byHand);
  const { worth, least } = provenByWidth(shelf);
  const bound = Math.min(wholeUnits(least, worthSteps(shelf)), byHand?.cost ?? Infinity);
  return { cuts: finished(shelf, byHand), certified: bound, proven: bound, proof: { by: "worth", worth, isSearched: false } };
};

/** Sticks that cost nothing as if they cost their new length, and a little each: so that the least new length wins, then the fewest sticks. */
const pricedByLength = (shelf: Shelf): Shelf => ({
  ...shelf,
  sticks: shelf.sticks.map((stick) => ({
    ...stick,
    price: stick.newLength * (piecesWanted(shelf) + 1) + 1,
    available: stick.price === 0 ? stick.available : 0,
  })),
});

/** The plan of one grade, with the least any plan can cost and its proof. */
export const shelfPlan = (shelf: Shelf, engine: Engine = IN_A_CELL): ShelfPlan => {
  const plan = cheapestPlan(shelf, engine);
  if (plan.cuts === undefined || outlay(shelf, plan.cuts).cash > 0) return plan;
  const { cuts } = cheapestPlan(pricedByLength(shelf), engine);
  return cuts === undefined || !isPreferred(shelf, cuts, plan.cuts) ? plan : { ...plan, cuts };
};
