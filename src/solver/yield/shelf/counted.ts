import { type Branched } from "./branching";
import { wholeUnits, worthSteps } from "./certificate";
import { columnsGenerated, type Generated } from "./column-generation";
import { type Candidate, candidateOf, cheaper, DIVE_RULES, dived, fullestPlans } from "./dive";
import { type Effort, isSpent, withShare } from "./effort";
import { type Engine } from "./engine";
import { quickHandPlan } from "./hand-plan";
import { type Knapsack } from "./knapsack";
import { type Limits } from "./master";
import { nearPatterns, type Weighed } from "./near-patterns";
import { type Pattern, patternKey, usesCost } from "./pattern";
import { remaining, type Shelf } from "./shelf";
import { type CountLaw, countLaw, leastCounts } from "./stick-counts";

const MOST_SHORTAGE = 1e-6;
/** Patterns carried from one linear plan to the next. */
const CARRIED = 1_500;
const DIVE_EFFORT = 4_000_000;
const LEAF_PATTERNS = 20_000;
const LEAF_EFFORT = 60_000_000;

/** What is the same for all numbers of sticks, and the patterns and laws that were found so far. */
export interface CountGround {
  readonly shelf: Shelf;
  /** The same with sticks that cost nothing: only whether there are enough of them counts. */
  readonly free: Shelf;
  readonly wanted: readonly number[];
  readonly knapsack: Knapsack;
  readonly engine: Engine;
  readonly pool: Map<string, Pattern>;
  readonly laws: CountLaw[];
}

const lawOf = (shelf: Shelf, knapsack: Knapsack, worth: readonly number[], effort: Effort): CountLaw => {
  const wanted = shelf.kinds.map((kind) => kind.wanted);
  return countLaw(shelf, worth, knapsack.fill(worth, wanted, effort).map((filling) => filling.worth));
};

/** The first laws are those of the linear plan of any numbers of sticks, and of widths. */
export const countGround = (
  shelf: Shelf, root: Generated, knapsack: Knapsack, engine: Engine, start: Candidate | undefined, effort: Effort,
): CountGround => {
  const patterns = [...root.patterns, ...(start?.uses ?? []).map(({ pattern }) => pattern)];
  return {
    shelf, knapsack, engine,
    free: { ...shelf, sticks: shelf.sticks.map((stick) => ({ ...stick, price: 0 })) },
    wanted: shelf.kinds.map((kind) => kind.wanted),
    pool: new Map(patterns.map((pattern) => [patternKey(pattern), pattern])),
    laws: [root.worth, shelf.kinds.map(({ width }) => width)].map((worth) => lawOf(shelf, knapsack, worth, effort)),
  };
};

/** Patterns in plans of so many sticks leave no more worth over than all of them do: by the law that leaves least, in proportion. */
export const weighedByCounts = (
  { shelf, laws }: CountGround, counts: readonly number[],
): { readonly weighed: Weighed; readonly slack: number; readonly limits: Limits } => {
  const overOf = ({ held, needed }: CountLaw): number => counts.reduce((sum, count, stick) => sum + count * held[stick]!, -needed);
  let law = laws[0]!;
  for (const each of laws) if (overOf(each) * law.needed < overOf(law) * each.needed) law = each;
  const steps = worthSteps(shelf);
  const charges = shelf.sticks.map(({ price }, stick) => price * steps - law.held[stick]!);
  return { weighed: { worth: law.worth, steps, charges }, slack: overOf(law), limits: { least: counts, most: counts } };
};

/** All plans of so many sticks, searched in whole uses of patterns. */
const searched = (ground: CountGround, counts: readonly number[], effort: Effort) => {
  const { shelf, engine: { masterOf, searchWhole } } = ground;
  const { weighed, slack, limits } = weighedByCounts(ground, counts);
  const cost = counts.reduce((sum, count, stick) => sum + count * shelf.sticks[stick]!.price, 0);
  return withShare(effort, LEAF_EFFORT, (share) => {
    const near = nearPatterns(shelf, limits, weighed, slack, true, LEAF_PATTERNS, share);
    return near === undefined ? undefined : searchWhole(shelf, limits, weighed, near, cost, masterOf, share);
  });
};

/** Patterns for so many sticks, and whether a linear plan has enough of them. */
const patternsFor = ({ free, knapsack, engine: { masterOf }, pool }: CountGround, counts: readonly number[], effort: Effort): Generated => {
  const limits: Limits = { least: counts.map(() => 0), most: counts };
  const known = [...pool.values()].filter((pattern) => counts[pattern.stick]! > 0).slice(-CARRIED);
  const generated = columnsGenerated(free, limits, knapsack, known, masterOf, effort, (least) => least > 0);
  for (const pattern of generated.patterns) pool.set(patternKey(pattern), pattern);
  return generated;
};

/** Plans of so many sticks by dives alone: they repeat patterns where they can. */
export const divedWithin = (ground: CountGround, counts: readonly number[], effort: Effort): readonly Candidate[] => {
  const { free, wanted, knapsack, engine: { masterOf } } = ground;
  const generated = patternsFor(ground, counts, effort);
  if (generated.least > 0 || generated.answer.shortage > MOST_SHORTAGE) return [];
  const here = remaining(free, wanted, counts);
  return DIVE_RULES.flatMap((rule) => dived(here, generated, knapsack, masterOf, undefined, 0, rule, effort) ?? []);
};

/** A plan of so many sticks by hand methods and dives. */
const planWithin = (
  { free, wanted, knapsack, engine: { masterOf }, laws }: CountGround, counts: readonly number[], generated: Generated, effort: Effort,
): Candidate | undefined => {
  const here = remaining(free, wanted, counts);
  let found = candidateOf(here, quickHandPlan(here)) ?? fullestPlans(here, knapsack, laws[0]!.worth, 1, effort);
  for (const rule of DIVE_RULES) {
    if (found !== undefined) break;
    found = withShare(effort, DIVE_EFFORT, (share) => dived(here, generated, knapsack, masterOf, undefined, 0, rule, share));
  }
  return found;
};

/** What came of so many sticks: a law that they break, a plan, none although every one was looked for, or nothing certain. */
export type Tried = CountLaw | Candidate | "none" | "open";

export const tried = (ground: CountGround, counts: readonly number[], effort: Effort): Tried => {
  const { shelf, knapsack } = ground;
  const generated = patternsFor(ground, counts, effort);
  if (generated.least > 0) return lawOf(shelf, knapsack, generated.worth, effort);
  if (generated.answer.shortage > MOST_SHORTAGE) return "open";
  const search = planWithin(ground, counts, generated, effort) ?? searched(ground, counts, effort);
  if (search === undefined) return "open";
  const found = "isClosed" in search ? search.best : search;
  if (found !== undefined) return { cost: usesCost(shelf, found.uses), uses: found.uses };
  return "isClosed" in search && search.isClosed ? "none" : "open";
};

/**
 * Goes through whole numbers of sticks, cheapest first, until some give a plan. What a linear plan of so many sticks lacks is a law that
 * these and many others break, so that few are tried (Benders 1962, from memory, over the numbers of sticks). The laws are the proof; where
 * numbers that keep every law were searched for a plan in vain, the search is part of it.
 */
export const counted = (ground: CountGround, root: Generated, start: Candidate | undefined, effort: Effort): Branched => {
  const { shelf, laws } = ground;
  const price = shelf.sticks.map((stick) => stick.price);
  const without: (readonly number[])[] = [];
  let best = start;
  let proven = Math.min(wholeUnits(root.least, worthSteps(shelf)), best?.cost ?? Infinity);
  let certified = proven;
  while (!isSpent(effort)) {
    const below = best?.cost ?? shelf.sticks.reduce((sum, stick) => sum + stick.price * stick.available, 1);
    const next = leastCounts(shelf, { price, below, laws, without }, effort);
    if (isSpent(effort)) break;
    // no sticks at all give a plan where none was found and none are left to try
    proven = next?.sum ?? best?.cost ?? Infinity;
    if (without.length === 0) certified = proven;
    if (next === undefined) break;
    const found = tried(ground, next.counts, effort);
    if (found === "open") break;
    if (found === "none") without.push(next.counts);
    else if ("uses" in found) best = cheaper(best, found);
    else laws.push(found);
  }
  const cost = best?.cost ?? Infinity;
  const worths = laws.map((law) => law.worth);
  const isSearched = without.length > 0;
  return { best, certified: Math.min(certified, cost), proven: Math.min(proven, cost), proof: { by: "counts", worths, isSearched } };
};
