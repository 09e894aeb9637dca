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

/**
 * The search of whole uses by how often one pattern is used. Each branch has a linear plan of its own; its worths, in whole steps and
 * held against every pattern left, prove what the branch costs at least.
 */
export const patternBranched: WholeSearch = (shelf, first, { steps }, patterns, target, masterOf, effort) => {
  let wish = target;
  let best: Candidate | undefined;
  let isOver = false;

  const visit = (left: readonly number[], limits: Limits, allowed: readonly Pattern[], cost: number, uses: readonly Use[]): void => {
    if (isSpent(effort)) isOver = true;
    if (isOver) return;
    if (left.every((count) => count === 0)) {
      if (cost > wish) return;
      best = { cost, uses };
      wish = cost - 1;
      return;
    }
    const here = remaining(shelf, left, limits.most);
    const fitting = allowed.filter(({ stick, kinds }) => limits.most[stick]! > 0 && kinds.some((kind) => left[kind]! > 0));
    const master = masterOf(here, limits);
    for (const pattern of fitting) master.add(pattern);
    const answer = master.solve(effort);
    master.close();
    const worth = Float64Array.from(left, (count, kind) => (count === 0 ? 0 : Math.max(0, Math.floor(answer.worth[kind]! * steps))));
    const held = mostHeld(shelf, fitting, worth);
    effort.left -= 8 * fitting.length;
    const proven = provenLeast(here, limits, steps, worth, held);
    const least = cost + wholeUnits(proven, steps);
    if (least > wish) return;
    if (answer.shortage > TIMES_DUST) {
      isOver = true;
      return;
    }
    const split = mostInPart(answer.uses);
    const fixed = (pattern: Pattern, times: number, patterns: readonly Pattern[]): void => {
      if (times > limits.most[pattern.stick]!) return;
      const rest = [...left];
      for (const [place, kind] of pattern.kinds.entries()) rest[kind] = Math.max(0, rest[kind]! - pattern.counts[place]! * times);
      const fewer = (values: readonly number[]): number[] =>
        values.map((value, stick) => (stick === pattern.stick ? Math.max(0, value - times) : value));
      const more = times === 0 ? uses : [...uses, { pattern, times }];
      visit(
        rest,
        { least: fewer(limits.least), most: fewer(limits.most) },
        patterns,
        cost + times * shelf.sticks[pattern.stick]!.price,
        more,
      );
    };
    if (split === undefined) {
      const whole = wholePlan(shelf, left, answer.uses);
      const price = cost + whole.price;
      if (whole.isSound && price <= wish) {
        best = { cost: price, uses: [...uses, ...whole.uses] };
        wish = price - 1;
      }
      // nothing in this branch is cheaper than a linear plan that is whole, if whole-number worths prove it
      isOver = isOver || !whole.isSound || least < price;
      return;
    }
    const { pattern, times } = split;
    // what a pattern lacks of its stick's price, beyond what may still be lost: it is in no plan of this branch that is wanted
    const slack = (wish - cost) * steps - proven;
    const near = fitting.filter((each) => held[each.stick]!.worth - patternWorth(each, worth) <= slack);
    const others = near.filter((each) => each !== pattern);
    fixed(pattern, Math.ceil(times), near);
    for (let fewer = Math.floor(times); fewer >= 0; fewer -= 1) fixed(pattern, fewer, others);
  };
  visit(shelf.kinds.map((kind) => kind.wanted), first, patterns.map(({ pattern }) => pattern), 0, []);
  return { best, isClosed: !isOver };
};
