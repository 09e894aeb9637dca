import { type Proof, wholeUnits, worthSteps } from "./certificate";
import { columnsGenerated, type Generated } from "./column-generation";
import { type Candidate, cheaper, DIVE_RULES, type DiveRule, dived } from "./dive";
import { type Effort, isSpent, withShare } from "./effort";
import { type Knapsack } from "./knapsack";
import { type WholeSearch } from "./pattern-branching";
import { type Limits, type MasterMaker, wholeShelf } from "./master";
import { nearPatterns, weighedBy } from "./near-patterns";
import { type Pattern, patternKey } from "./pattern";
import { remaining, type Shelf } from "./shelf";

export interface Branched {
  readonly best: Candidate | undefined;
  /** No plan costs less: by worths and branches alone, and with what was searched. */
  readonly certified: number;
  readonly proven: number;
  readonly proof: Proof;
}

/** Stick counts this close to a whole number are whole. */
const WHOLE = 1e-5;
const MOST_SHORTAGE = 1e-6;
/** Patterns carried from a branch to the next. */
const CARRIED = 1_500;
/** Every so many branches a plan is looked for in one of them. */
const DIVE_EVERY = 6;
const DIVE_EFFORT = 4_000_000;
const LEAF_PATTERNS = 20_000;
const LEAF_EFFORT = 60_000_000;

/** A branch of the proof, until it is closed or split. */
interface Branch {
  readonly limits: Limits;
  readonly first: Generated | undefined;
  /** What is proven so far, in steps, and by which worths. */
  least: number;
  worth: readonly number[];
  isSearched: boolean;
  split?: { readonly stick: number; readonly atMost: number; readonly upTo: Branch; readonly over: Branch };
}

const proofOf = ({ isSearched, worth, split }: Branch): Proof => {
  if (split !== undefined)
    return { by: "branch", stick: split.stick, atMost: split.atMost, upTo: proofOf(split.upTo), over: proofOf(split.over) };
  return { by: "worth", worth, isSearched };
};

const leaves = (branch: Branch): Branch[] =>
  branch.split === undefined ? [branch] : [...leaves(branch.split.upTo), ...leaves(branch.split.over)];

const withLimit = (values: readonly number[], stick: number, value: number): number[] =>
  values.map((each, index) => (index === stick ? value : each));

/** The stick kind whose number in the linear plan is farthest from whole, with that number rounded down. */
const farthest = (shelf: Shelf, { answer }: Generated): { stick: number; atMost: number } | undefined => {
  const numbers = shelf.sticks.map(() => 0);
  for (const { pattern, times } of answer.uses) numbers[pattern.stick]! += times;
  let found: number | undefined;
  let most = WHOLE;
  for (const [stick, number] of numbers.entries()) {
    const part = Math.min(number - Math.floor(number), Math.ceil(number) - number);
    if (part <= most) continue;
    most = part;
    found = stick;
  }
  return found === undefined ? undefined : { stick: found, atMost: Math.floor(numbers[found]!) };
};

/** Takes out the branch that may be cheapest, of equals the first. */
const cheapestOf = (open: Branch[]): Branch | undefined => {
  let next = 0;
  for (let place = 1; place < open.length; place += 1) if (open[place]!.least < open[next]!.least) next = place;
  return open.splice(next, 1)[0];
};

/** Splits a branch by how many sticks of a kind are bought. */
const split = (branch: Branch, at: { readonly stick: number; readonly atMost: number }): readonly Branch[] => {
  const child = (limits: Limits): Branch => ({ limits, first: undefined, least: branch.least, worth: branch.worth, isSearched: false });
  const upTo = child({ ...branch.limits, most: withLimit(branch.limits.most, at.stick, at.atMost) });
  const over = child({ ...branch.limits, least: withLimit(branch.limits.least, at.stick, at.atMost + 1) });
  branch.split = { ...at, upTo, over };
  return [upTo, over];
};

/** What all branches together prove. */
const provenBy = (top: Branch, best: Candidate | undefined, steps: number): Branched => {
  const ends = leaves(top);
  const leastOf = (branches: readonly Branch[]): number =>
    branches.reduce((least, branch) => Math.min(least, wholeUnits(branch.least, steps)), Infinity);
  const mostProven = best?.cost ?? Infinity;
  return {
    best,
    certified: Math.min(mostProven, leastOf(ends)),
    proven: Math.min(mostProven, leastOf(ends.filter((branch) => !branch.isSearched))),
    proof: proofOf(top),
  };
};

/** What is the same in every branch. */
interface Ground {
  readonly shelf: Shelf;
  readonly wanted: readonly number[];
  readonly steps: number;
  readonly knapsack: Knapsack;
  readonly masterOf: MasterMaker;
  readonly searchWhole: WholeSearch;
  readonly effort: Effort;
}

/** What all branches so far have found: the cheapest plan, and the patterns that later branches begin with. */
interface Found {
  best: Candidate | undefined;
  readonly pool: Map<string, Pattern>;
}

const pooled = ({ pool }: Found, patterns: readonly Pattern[]): void => {
  for (const pattern of patterns) pool.set(patternKey(pattern), pattern);
};

/** Whether a cost of so many steps at least is no less than that of the best plan. */
const isTooDear = (least: number, { steps }: Ground, { best }: Found): boolean =>
  best !== undefined && wholeUnits(least, steps) >= best.cost;

/** The linear plan of a branch; it may prove more than its parent did. */
const linearPlan = (branch: Branch, ground: Ground, found: Found): Generated => {
  const { shelf, knapsack, masterOf, effort } = ground;
  const known = [...found.pool.values()].filter((pattern) => branch.limits.most[pattern.stick]! > 0).slice(-CARRIED);
  const generated =
    branch.first ??
    columnsGenerated(shelf, branch.limits, knapsack, known, masterOf, effort, (least) => isTooDear(least, ground, found));
  pooled(found, generated.patterns);
  if (generated.least > branch.least) {
    branch.least = generated.least;
    branch.worth = generated.worth;
  }
  return generated;
};

/** Looks for a plan in one branch by each of the rules. */
const diveIn = (branch: Branch, generated: Generated, rules: readonly DiveRule[], ground: Ground, found: Found): void => {
  const { shelf, wanted, steps, knapsack, masterOf, effort } = ground;
  const here = remaining(shelf, wanted, branch.limits.most);
  for (const rule of rules) {
    found.best = withShare(effort, DIVE_EFFORT, (share) =>
      dived(here, generated, knapsack, masterOf, found.best, wholeUnits(branch.least, steps), rule, share),
    );
  }
};

/** Searches the patterns of a branch near its proven cost, in whole uses, with so much effort at most. */
const searchIn = (branch: Branch, generated: Generated, most: number, ground: Ground, found: Found): void => {
  const { shelf, wanted, steps, knapsack, masterOf, searchWhole, effort } = ground;
  const fillings = knapsack.fill(generated.worth, wanted, effort);
  const weighed = weighedBy(shelf, branch.limits, steps, generated.worth, fillings);
  const target =
    found.best === undefined
      ? shelf.sticks.reduce((sum, { price }, stick) => sum + price * branch.limits.most[stick]!, 0)
      : found.best.cost - 1;
  withShare(effort, most, (share) => {
    const near = nearPatterns(shelf, branch.limits, weighed, target * steps - generated.least, true, LEAF_PATTERNS, share);
    if (near === undefined) return;
    const search = searchWhole(shelf, branch.limits, weighed, near, target, masterOf, share);
    found.best = cheaper(found.best, search.best);
    branch.isSearched = search.isClosed;
  });
};

/**
 * Splits the plans by how many sticks of a kind are bought, where the linear plan buys them in part; the branch that may be cheapest
 * comes first. Within whole numbers of sticks the patterns near the proven cost are searched. Each split keeps its worths as proof.
 */
export const branched = (
  shelf: Shelf, root: Generated, knapsack: Knapsack, masterOf: MasterMaker, searchWhole: WholeSearch, start: Candidate | undefined,
  effort: Effort,
): Branched => {
  const steps = worthSteps(shelf);
  const ground: Ground = { shelf, wanted: shelf.kinds.map((kind) => kind.wanted), steps, knapsack, masterOf, searchWhole, effort };
  const found: Found = { best: start, pool: new Map() };
  pooled(found, [...root.patterns, ...(start?.uses ?? []).map(({ pattern }) => pattern)]);
  const first = root.isComplete ? root : undefined;
  const top: Branch = { limits: wholeShelf(shelf), first, least: root.least, worth: root.worth, isSearched: false };
  const open: Branch[] = [top];
  const isClosed = (branch: Branch): boolean => isTooDear(branch.least, ground, found);
  const search = (branch: Branch, generated: Generated): void =>
    searchIn(branch, generated, open.length === 0 ? effort.left : LEAF_EFFORT, ground, found);
  let count = 0;
  while (open.length > 0 && !isSpent(effort)) {
    const branch = cheapestOf(open);
    if (branch === undefined || isClosed(branch)) continue;
    count += 1;
    const generated = linearPlan(branch, ground, found);
    if (isClosed(branch)) continue;
    if (generated.answer.shortage > MOST_SHORTAGE) {
      search(branch, generated);
      continue;
    }
    // with one kind of stick the number of sticks is the cost: a branch on it would say nothing of the pieces
    const at = shelf.sticks.length === 1 ? undefined : farthest(shelf, generated);
    if (at === undefined || (count > 1 && count % DIVE_EVERY === 0)) {
      diveIn(branch, generated, at === undefined ? DIVE_RULES : [DIVE_RULES[count % 2]!], ground, found);
      if (isClosed(branch)) continue;
    }
    if (at === undefined) search(branch, generated);
    else open.push(...split(branch, at));
  }
  return provenBy(top, found.best, steps);
};
