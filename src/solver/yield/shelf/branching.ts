import { type Proof, wholeUnits, worthSteps } from "./certificate";
import { columnsGenerated, type Generated } from "./column-generation";
import { type Candidate, cheaper, DIVE_RULES, dived } from "./dive";
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

/**
 * Splits the plans by how many sticks of a kind are bought, where the linear plan buys them in part; the branch that may be cheapest
 * comes first. Within whole numbers of sticks the patterns near the proven cost are searched. Each split keeps its worths as proof.
 */
export const branched = (
  shelf: Shelf,
  root: Generated,
  knapsack: Knapsack,
  masterOf: MasterMaker,
  searchWhole: WholeSearch,
  start: Candidate | undefined,
  effort: Effort,
): Branched => {
  const steps = worthSteps(shelf);
  const wanted = shelf.kinds.map((kind) => kind.wanted);
  const pool = new Map<string, Pattern>(root.patterns.map((pattern) => [patternKey(pattern), pattern]));
  for (const { pattern } of start?.uses ?? []) pool.set(patternKey(pattern), pattern);
  const top: Branch = {
    limits: wholeShelf(shelf),
    first: root.isComplete ? root : undefined,
    least: root.least,
    worth: root.worth,
    isSearched: false,
  };
  const open: Branch[] = [top];
  let best = start;
  let count = 0;
  const isClosed = (branch: Branch): boolean => best !== undefined && wholeUnits(branch.least, steps) >= best.cost;

  const searchBranch = (branch: Branch, generated: Generated): void => {
    const fillings = knapsack.fill(generated.worth, wanted, effort);
    const weighed = weighedBy(shelf, branch.limits, steps, generated.worth, fillings);
    const target =
      best === undefined ? shelf.sticks.reduce((sum, { price }, stick) => sum + price * branch.limits.most[stick]!, 0) : best.cost - 1;
    withShare(effort, open.length === 0 ? effort.left : LEAF_EFFORT, (share) => {
      const near = nearPatterns(shelf, branch.limits, weighed, target * steps - generated.least, true, LEAF_PATTERNS, share);
      if (near === undefined) return;
      const search = searchWhole(shelf, branch.limits, weighed, near, target, masterOf, share);
      best = cheaper(best, search.best);
      branch.isSearched = search.isClosed;
    });
  };

  while (open.length > 0 && !isSpent(effort)) {
    const branch = cheapestOf(open);
    if (branch === undefined || isClosed(branch)) continue;
    count += 1;
    const known = [...pool.values()].filter((pattern) => branch.limits.most[pattern.stick]! > 0).slice(-CARRIED);
    const generated =
      branch.first ??
      columnsGenerated(
        shelf,
        branch.limits,
        knapsack,
        known,
        masterOf,
        effort,
        (least) => best !== undefined && wholeUnits(least, steps) >= best.cost,
      );
    for (const pattern of generated.patterns) pool.set(patternKey(pattern), pattern);
    if (generated.least > branch.least) {
      branch.least = generated.least;
      branch.worth = generated.worth;
    }
    if (isClosed(branch)) continue;
    if (generated.answer.shortage > MOST_SHORTAGE) {
      searchBranch(branch, generated);
      continue;
    }
    // with one kind of stick the number of sticks is the cost: a branch on it would say nothing of the pieces
    const at = shelf.sticks.length === 1 ? undefined : farthest(shelf, generated);
    if (at === undefined || (count > 1 && count % DIVE_EVERY === 0)) {
      const here = remaining(shelf, wanted, branch.limits.most);
      for (const rule of at === undefined ? DIVE_RULES : [DIVE_RULES[count % 2]!]) {
        best = withShare(effort, DIVE_EFFORT, (share) =>
          dived(here, generated, knapsack, masterOf, best, wholeUnits(branch.least, steps), rule, share),
        );
      }
      if (isClosed(branch)) continue;
    }
    if (at === undefined) {
      searchBranch(branch, generated);
      continue;
    }
    open.push(...split(branch, at));
  }
  return provenBy(top, best, steps);
};
