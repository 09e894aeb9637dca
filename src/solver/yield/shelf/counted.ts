import { type Branched } from "./branching";
import { wholeUnits, worthSteps } from "./certificate";
import { columnsGenerated, type Generated } from "./column-generation";
import { type Candidate, candidateOf, cheaper, DIVE_RULES, dived, fullestPlans } from "./dive";
import { type Effort, isSpent, withShare } from "./effort";
import { quickHandPlan } from "./hand-plan";
import { type Knapsack } from "./knapsack";
import { type Limits, type MasterMaker } from "./master";
import { nearPatterns, type Weighed } from "./near-patterns";
import { type Pattern, patternKey, usesCost } from "./pattern";
import { type WholeSearch } from "./pattern-branching";
import { remaining, type Shelf } from "./shelf";
import { cheapestCounts, type CountLaw, countLaw, type Counts } from "./stick-counts";

const MOST_SHORTAGE = 1e-6;
/** Patterns carried from one linear plan to the next. */
const CARRIED = 1_500;
const DIVE_EFFORT = 4_000_000;
const LEAF_PATTERNS = 20_000;
const LEAF_EFFORT = 60_000_000;

/** What is the same for all numbers of sticks, and what has been found so far. */
interface Ground {
  readonly shelf: Shelf;
  /** The same with sticks that cost nothing: only whether there are enough of them counts. */
  readonly free: Shelf;
  readonly wanted: readonly number[];
  readonly knapsack: Knapsack;
  readonly masterOf: MasterMaker;
  readonly searchWhole: WholeSearch;
  readonly effort: Effort;
  readonly pool: Map<string, Pattern>;
  readonly laws: CountLaw[];
}

const lawOf = ({ shelf, wanted, knapsack, effort }: Ground, worth: readonly number[]): CountLaw =>
  countLaw(shelf, worth, knapsack.fill(worth, wanted, effort).map((filling) => filling.worth));

/** The law that leaves least over, in proportion, in so many sticks, and how much. */
const tightest = ({ laws }: Ground, counts: readonly number[]): { readonly law: CountLaw; readonly over: number } => {
  const overOf = ({ held, needed }: CountLaw): number => counts.reduce((sum, count, stick) => sum + count * held[stick]!, -needed);
  let law = laws[0]!;
  for (const each of laws) if (overOf(each) * law.needed < overOf(law) * each.needed) law = each;
  return { law, over: overOf(law) };
};

/** All plans of so many sticks, searched by the patterns that leave no more worth over than there is. */
const searched = (ground: Ground, { cost, counts }: Counts) => {
  const { shelf, masterOf, searchWhole, effort } = ground;
  const steps = worthSteps(shelf);
  const limits: Limits = { least: counts, most: counts };
  const { law, over } = tightest(ground, counts);
  const charges = shelf.sticks.map(({ price }, stick) => price * steps - law.held[stick]!);
  const weighed: Weighed = { worth: law.worth, steps, charges };
  return withShare(effort, LEAF_EFFORT, (share) => {
    const near = nearPatterns(shelf, limits, weighed, over, true, LEAF_PATTERNS, share);
    return near === undefined ? undefined : searchWhole(shelf, limits, weighed, near, cost, masterOf, share);
  });
};

/** A plan of so many sticks by hand methods and dives. */
const planWithin = (ground: Ground, counts: readonly number[], generated: Generated): Candidate | undefined => {
  const { shelf, free, wanted, knapsack, masterOf, laws, effort } = ground;
  const here = remaining(free, wanted, counts);
  let found = candidateOf(here, quickHandPlan(here)) ?? fullestPlans(here, knapsack, laws[0]!.worth, 1, effort);
  for (const rule of DIVE_RULES) {
    if (found !== undefined) break;
    found = withShare(effort, DIVE_EFFORT, (share) => dived(here, generated, knapsack, masterOf, undefined, 0, rule, share));
  }
  return found && { cost: usesCost(shelf, found.uses), uses: found.uses };
};

/** What came of so many sticks: a law that they break, a plan, none although every one was looked for, or nothing certain. */
type Tried = CountLaw | Candidate | "none" | "open";

const tried = (ground: Ground, asked: Counts): Tried => {
  const { shelf, free, knapsack, masterOf, pool, effort } = ground;
  const { counts } = asked;
  const limits: Limits = { least: counts.map(() => 0), most: counts };
  const known = [...pool.values()].filter((pattern) => counts[pattern.stick]! > 0).slice(-CARRIED);
  const generated = columnsGenerated(free, limits, knapsack, known, masterOf, effort, (least) => least > 0);
  for (const pattern of generated.patterns) pool.set(patternKey(pattern), pattern);
  if (generated.least > 0) return lawOf(ground, generated.worth);
  if (generated.answer.shortage > MOST_SHORTAGE) return "open";
  const found = planWithin(ground, counts, generated);
  if (found !== undefined) return found;
  const search = searched(ground, asked);
  if (search?.best !== undefined) return { cost: usesCost(shelf, search.best.uses), uses: search.best.uses };
  return search?.isClosed === true ? "none" : "open";
};

/**
 * Goes through whole numbers of sticks, cheapest first, until some give a plan. What a linear plan of so many sticks lacks is a law that
 * these and many others break, so that few are tried (Benders 1962, from memory, over the numbers of sticks). The laws are the proof; where
 * numbers that keep every law were searched for a plan in vain, the search is part of it.
 */
export const counted = (
  shelf: Shelf, root: Generated, knapsack: Knapsack, masterOf: MasterMaker, searchWhole: WholeSearch, start: Candidate | undefined,
  effort: Effort,
): Branched => {
  const free = { ...shelf, sticks: shelf.sticks.map((stick) => ({ ...stick, price: 0 })) };
  const pool = new Map([...root.patterns, ...(start?.uses ?? []).map(({ pattern }) => pattern)].map((each) => [patternKey(each), each]));
  const wanted = shelf.kinds.map((kind) => kind.wanted);
  const ground: Ground = { shelf, free, wanted, knapsack, masterOf, searchWhole, effort, pool, laws: [] };
  for (const worth of [root.worth, shelf.kinds.map(({ width }) => width)]) ground.laws.push(lawOf(ground, worth));
  const without: (readonly number[])[] = [];
  let best = start;
  let proven = Math.min(wholeUnits(root.least, worthSteps(shelf)), best?.cost ?? Infinity);
  let certified = proven;
  while (!isSpent(effort)) {
    const below = best?.cost ?? shelf.sticks.reduce((sum, { price, available }) => sum + price * available, 1);
    const next = cheapestCounts(shelf, ground.laws, without, below, effort);
    if (isSpent(effort)) break;
    // no sticks at all give a plan where none was found and none are left to try
    proven = next?.cost ?? best?.cost ?? Infinity;
    if (without.length === 0) certified = proven;
    if (next === undefined) break;
    const found = tried(ground, next);
    if (found === "open") break;
    if (found === "none") without.push(next.counts);
    else if ("uses" in found) best = cheaper(best, found);
    else ground.laws.push(found);
  }
  const cost = best?.cost ?? Infinity;
  const worths = ground.laws.map((law) => law.worth);
  const isSearched = without.length > 0;
  return { best, certified: Math.min(certified, cost), proven: Math.min(proven, cost), proof: { by: "counts", worths, isSearched } };
};
