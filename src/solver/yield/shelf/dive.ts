import { columnsGenerated, type Generated, meetsLinearCost } from "./column-generation";
import { wholeUnits, worthSteps } from "./certificate";
import { type Effort, isSpent } from "./effort";
import { quickHandPlan } from "./hand-plan";
import { type Knapsack } from "./knapsack";
import { type MasterMaker, wholeShelf } from "./master";
import { type Pattern, patternOf, type Use, usesCost } from "./pattern";
import { type Cut, remaining, type Shelf } from "./shelf";

/** A plan by patterns. */
export interface Candidate {
  readonly cost: number;
  readonly uses: readonly Use[];
}

export const cheaper = (one: Candidate | undefined, other: Candidate | undefined): Candidate | undefined =>
  one === undefined || (other !== undefined && other.cost < one.cost) ? other : one;

/** The plan of these sticks, each its own pattern. */
export const candidateOf = (shelf: Shelf, cuts: readonly Cut[] | undefined): Candidate | undefined => {
  if (cuts === undefined) return undefined;
  const uses = cuts.map((cut) => ({ pattern: patternOf(cut), times: 1 }));
  return { cost: usesCost(shelf, uses), uses };
};

const DUST = 1e-6;
/** Patterns carried from one round to the next. */
const CARRIED = 600;
/** Pieces up to which a rest is also planned by fullest sticks. */
const FULLEST_PIECES = 400;
/**
 * How much more a mark of the longest piece is worth than one of a piece of no length, in thousandths: longer pieces first, a little or
 * more.
 */
const BOWS = [0, 20, 100];
const REST_BOW = 20;
/** Steps of planning a rest by hand for each pair of its pieces: a piece is compared with the sticks begun so far. */
const FIT_STEPS = 0.25;

/** What is still to be cut, from what. */
interface Rest {
  readonly left: number[];
  readonly available: number[];
}

const countLeft = (left: readonly number[]): number => left.reduce((sum, count) => sum + count, 0);

/** How often the pattern can be used on what is left. */
const repeats = ({ stick, kinds, counts }: Pattern, { left, available }: Rest): number => {
  let most = available[stick]!;
  for (const [place, kind] of kinds.entries()) most = Math.min(most, Math.floor(left[kind]! / counts[place]!));
  return most;
};

const take = ({ stick, kinds, counts }: Pattern, times: number, { left, available }: Rest): void => {
  available[stick]! -= times;
  for (const [place, kind] of kinds.entries()) left[kind]! -= counts[place]! * times;
};

/** The pattern without the pieces that are no longer wanted. */
const shrunk = ({ stick, kinds, counts }: Pattern, left: readonly number[]): Pattern => {
  const held = kinds.map((kind, place) => Math.min(left[kind]!, counts[place]!));
  return { stick, kinds: kinds.filter((_, place) => held[place]! > 0), counts: held.filter((count) => count > 0) };
};

/**
 * Stick after stick, each the one that costs least for the worth it holds, as often as it can be repeated. Nothing where the stock
 * runs out or `limit` is reached.
 */
export const fullestPlan = (
  shelf: Shelf,
  knapsack: Knapsack,
  worth: ArrayLike<number>,
  limit: number,
  effort: Effort,
): Candidate | undefined => {
  const rest: Rest = { left: shelf.kinds.map((kind) => kind.wanted), available: shelf.sticks.map((stick) => stick.available) };
  const uses: Use[] = [];
  let cost = 0;
  while (countLeft(rest.left) > 0) {
    const fillings = knapsack.fill(worth, rest.left, effort);
    let best: Pattern | undefined;
    let least = Infinity;
    for (const [stick, { worth: held, kinds, counts }] of fillings.entries()) {
      if (rest.available[stick] === 0 || held === 0) continue;
      const price = shelf.sticks[stick]!.price / held;
      if (price >= least) continue;
      least = price;
      best = { stick, kinds, counts };
    }
    if (best === undefined || isSpent(effort)) return undefined;
    const times = repeats(best, rest);
    take(best, times, rest);
    uses.push({ pattern: best, times });
    cost += times * shelf.sticks[best.stick]!.price;
    if (cost >= limit) return undefined;
  }
  return { cost, uses };
};

const widthWorths = (shelf: Shelf, bow: number): Float64Array =>
  Float64Array.from(shelf.kinds, ({ width }) => width * 1000 + Math.floor((bow * width * width) / shelf.kinds[0]!.width));

/** The cheapest plan below `limit` by fullest sticks, judged by the worths given and by width. */
export const fullestPlans = (
  shelf: Shelf,
  knapsack: Knapsack,
  worth: ArrayLike<number>,
  limit: number,
  effort: Effort,
): Candidate | undefined => {
  let found: Candidate | undefined;
  for (const each of [worth, ...BOWS.map((bow) => widthWorths(shelf, bow))]) {
    found = cheaper(found, fullestPlan(shelf, knapsack, each, found?.cost ?? limit, effort));
  }
  return found;
};

export const DIVE_RULES = ["one at a time", "several at a time"] as const;
export type DiveRule = (typeof DIVE_RULES)[number];

/**
 * Takes the whole part of the linear plan, then rounds up what is largest, and plans the rest anew, until nothing is left; each rest is
 * also finished by hand methods. Keeps the cheapest plan seen.
 */
export const dived = (
  shelf: Shelf,
  first: Generated,
  knapsack: Knapsack,
  masterOf: MasterMaker,
  start: Candidate | undefined,
  least: number,
  rule: DiveRule,
  effort: Effort,
): Candidate | undefined => {
  const rest: Rest = { left: shelf.kinds.map((kind) => kind.wanted), available: shelf.sticks.map((stick) => stick.available) };
  let best = start;
  let cost = 0;
  let generated = first;
  const uses: Use[] = [];
  const fix = (pattern: Pattern, times: number): number => {
    const most = Math.min(times, repeats(pattern, rest));
    if (most <= 0) return 0;
    take(pattern, most, rest);
    uses.push({ pattern, times: most });
    cost += most * shelf.sticks[pattern.stick]!.price;
    return most;
  };
  const consider = (finish: Candidate | undefined): void => {
    if (finish !== undefined) best = cheaper(best, { cost: cost + finish.cost, uses: [...uses, ...finish.uses] });
  };
  for (;;) {
    const linear = generated.answer.uses.map((use, place) => ({ ...use, place })).sort((a, b) => b.times - a.times || a.place - b.place);
    let fixed = 0;
    for (const { pattern, times } of linear) fixed += fix(pattern, Math.floor(times + DUST));
    if (fixed === 0) {
      for (const { pattern, times } of linear) {
        fixed += fix(pattern, 1);
        if (fixed > 0 && (rule === "one at a time" || times < 0.6 || fixed > 4)) break;
      }
    }
    if (fixed === 0) {
      const fitting = linear
        .map(({ pattern }) => shrunk(pattern, rest.left))
        .find((pattern) => pattern.kinds.length > 0 && rest.available[pattern.stick]! > 0);
      if (fitting === undefined) return best;
      fix(fitting, 1);
    }
    const pieces = countLeft(rest.left);
    if (pieces === 0) {
      consider({ cost: 0, uses: [] });
      return best;
    }
    const here = remaining(shelf, rest.left, rest.available);
    consider(candidateOf(here, quickHandPlan(here)));
    effort.left -= FIT_STEPS * pieces * pieces;
    if (pieces <= FULLEST_PIECES)
      consider(fullestPlan(here, knapsack, widthWorths(here, REST_BOW), best === undefined ? Infinity : best.cost - cost, effort));
    if ((best !== undefined && best.cost <= least) || isSpent(effort)) return best;
    const fitting = generated.patterns.filter((pattern) => repeats(pattern, rest) > 0).slice(-CARRIED);
    generated = columnsGenerated(here, wholeShelf(here), knapsack, fitting, masterOf, effort, meetsLinearCost(here));
    const floor = cost + wholeUnits(generated.least, worthSteps(here));
    if ((best !== undefined && floor >= best.cost) || generated.answer.shortage > DUST) return best;
  }
};
