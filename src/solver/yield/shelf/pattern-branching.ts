import { provenLeast, wholeUnits } from "./certificate";
import { type Candidate } from "./dive";
import { type Effort, isSpent } from "./effort";
import { type Limits, type MasterMaker } from "./master";
import { type NearPattern, type Weighed } from "./near-patterns";
import { type Pattern, patternWorth, type Use } from "./pattern";
import { remaining, type Shelf } from "./shelf";

export interface WholePlan {
  readonly best: Candidate | undefined;
  /** Every plan of the patterns was looked at, or proven to cost more than the target or the best one. */
  readonly isClosed: boolean;
}

/** Looks for the cheapest plan of at most `target` that is made of the patterns given, in whole uses. */
export type WholeSearch = (
  shelf: Shelf,
  limits: Limits,
  weighed: Weighed,
  patterns: readonly NearPattern[],
  target: number,
  masterOf: MasterMaker,
  effort: Effort,
) => WholePlan;

/** Uses this close to a whole number are whole. */
const WHOLE = 1e-6;
const TIMES_DUST = 1e-6;

/** The use that is farthest from a whole number, undefined where all are whole. */
const mostInPart = (uses: readonly Use[]): Use | undefined => {
  let split: Use | undefined;
  let farthest = WHOLE;
  for (const use of uses) {
    const part = use.times - Math.floor(use.times);
    const far = Math.min(part, 1 - part);
    if (far <= farthest) continue;
    farthest = far;
    split = use;
  }
  return split;
};

/** For each kind of stick the most worth that one of the patterns holds. */
const mostHeld = (shelf: Shelf, patterns: readonly Pattern[], worth: ArrayLike<number>): { readonly worth: number }[] => {
  const held = shelf.sticks.map(() => ({ worth: 0 }));
  for (const pattern of patterns) {
    const sum = patternWorth(pattern, worth);
    if (sum > held[pattern.stick]!.worth) held[pattern.stick] = { worth: sum };
  }
  return held;
};

/** A linear plan whose uses are whole, but for dust, and whether it gives every piece left. */
const wholePlan = (
  shelf: Shelf,
  left: readonly number[],
  uses: readonly Use[],
): { readonly uses: Use[]; readonly price: number; readonly isSound: boolean } => {
  const whole = uses.map((use) => ({ ...use, times: Math.round(use.times) })).filter((use) => use.times > 0);
  const given = left.map((_, kind) =>
    whole.reduce((sum, { pattern, times }) => sum + times * (pattern.counts[pattern.kinds.indexOf(kind)] ?? 0), 0),
  );
  return {
    uses: whole,
    price: whole.reduce((sum, use) => sum + use.times * shelf.sticks[use.pattern.stick]!.price, 0),
    isSound: given.every((count, kind) => count >= left[kind]!),
  };
};

/** A branch of the search: what is still to be cut, from which patterns, and what was settled before. */
interface Branch {
  readonly left: readonly number[];
  readonly limits: Limits;
  readonly allowed: readonly Pattern[];
  readonly cost: number;
  readonly uses: readonly Use[];
}

/** The branch in which a pattern is used so often and no other number of times, if there are sticks for it. */
const withUse = (shelf: Shelf, branch: Branch, pattern: Pattern, times: number, allowed: readonly Pattern[]): Branch | undefined => {
  const { left, limits, cost, uses } = branch;
  if (times > limits.most[pattern.stick]!) return undefined;
  const rest = [...left];
  for (const [place, kind] of pattern.kinds.entries()) rest[kind] = Math.max(0, rest[kind]! - pattern.counts[place]! * times);
  const fewer = (values: readonly number[]): number[] =>
    values.map((value, stick) => (stick === pattern.stick ? Math.max(0, value - times) : value));
  return {
    left: rest,
    limits: { least: fewer(limits.least), most: fewer(limits.most) },
    allowed,
    cost: cost + times * shelf.sticks[pattern.stick]!.price,
    uses: times === 0 ? uses : [...uses, { pattern, times }],
  };
};

/** The linear plan of a branch, and what its worths in whole steps prove. */
const linearPlan = (shelf: Shelf, { left, limits, allowed }: Branch, steps: number, masterOf: MasterMaker, effort: Effort) => {
  const here = remaining(shelf, left, limits.most);
  const fitting = allowed.filter(({ stick, kinds }) => limits.most[stick]! > 0 && kinds.some((kind) => left[kind]! > 0));
  const master = masterOf(here, limits);
  for (const pattern of fitting) master.add(pattern);
  const answer = master.solve(effort);
  master.close();
  const worth = Float64Array.from(left, (count, kind) => (count === 0 ? 0 : Math.max(0, Math.floor(answer.worth[kind]! * steps))));
  const held = mostHeld(shelf, fitting, worth);
  effort.left -= 8 * fitting.length;
  return { fitting, answer, worth, held, proven: provenLeast(here, limits, steps, worth, held) };
};

/**
 * The search of whole uses by how often one pattern is used. Each branch has a linear plan of its own; its worths, in whole steps and
 * compared with every pattern left, prove what the branch costs at least.
 */
export const patternBranched: WholeSearch = (shelf, first, { steps }, patterns, target, masterOf, effort) => {
  let wish = target;
  let best: Candidate | undefined;
  let isOver = false;
  const take = (cost: number, uses: readonly Use[]): void => {
    if (cost > wish) return;
    best = { cost, uses };
    wish = cost - 1;
  };

  const visit = (branch: Branch | undefined): void => {
    if (branch === undefined) return;
    const { left, cost, uses } = branch;
    if (isSpent(effort)) isOver = true;
    if (isOver) return;
    if (left.every((count) => count === 0)) return take(cost, uses);
    const { fitting, answer, worth, held, proven } = linearPlan(shelf, branch, steps, masterOf, effort);
    const least = cost + wholeUnits(proven, steps);
    if (least > wish) return;
    if (answer.shortage > TIMES_DUST) {
      isOver = true;
      return;
    }
    const split = mostInPart(answer.uses);
    if (split === undefined) {
      const whole = wholePlan(shelf, left, answer.uses);
      const price = cost + whole.price;
      if (whole.isSound) take(price, [...uses, ...whole.uses]);
      // nothing in this branch is cheaper than a linear plan that is whole, if whole-number worths prove it
      isOver = isOver || !whole.isSound || least < price;
      return;
    }
    const { pattern, times } = split;
    // what a pattern lacks of its stick's price, beyond what may still be lost: it is in no plan of this branch that is wanted
    const slack = (wish - cost) * steps - proven;
    const near = fitting.filter((each) => held[each.stick]!.worth - patternWorth(each, worth) <= slack);
    const others = near.filter((each) => each !== pattern);
    visit(withUse(shelf, branch, pattern, Math.ceil(times), near));
    for (let fewer = Math.floor(times); fewer >= 0; fewer -= 1) visit(withUse(shelf, branch, pattern, fewer, others));
  };
  const left = shelf.kinds.map((kind) => kind.wanted);
  visit({ left, limits: first, allowed: patterns.map(({ pattern }) => pattern), cost: 0, uses: [] });
  return { best, isClosed: !isOver };
};
