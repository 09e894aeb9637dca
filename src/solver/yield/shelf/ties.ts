import { type Effort, isSpent } from "./effort";
import { type Limits } from "./master";
import { inCuttingOrder, isPreferred, type Merit, meritOf } from "./merit";
import { nearPatterns, type Weighed } from "./near-patterns";
import { patternWidth } from "./pattern";
import { type Cut, type Shelf } from "./shelf";

/** Patterns beyond which plans of equal cost are not compared. */
const MOST_PATTERNS = 3_000;
const VISIT = 40;
const PLAN = 400;

/** A pattern near the proven cost, as it is put on a stick. */
interface Placed {
  readonly id: number;
  readonly lack: number;
  readonly kinds: readonly number[];
  readonly counts: readonly number[];
  readonly width: number;
  readonly cut: Cut;
}

/** A plan as far as it is made, and the best one so far. */
interface Plans {
  readonly shelf: Shelf;
  readonly limits: Limits;
  readonly charges: readonly number[];
  readonly effort: Effort;
  /** For each kind the patterns whose longest piece it is. */
  readonly giving: readonly (readonly Placed[])[];
  readonly longest: number;
  readonly left: Int32Array;
  readonly used: Int32Array;
  readonly times: Int32Array;
  readonly chosen: Cut[];
  patterns: number;
  width: number;
  newLength: number;
  best: readonly Cut[];
  merit: Merit;
}

const isWorse = ({ newLength, merit, chosen, width, longest, patterns }: Plans): boolean => {
  if (newLength !== merit.newLength) return newLength > merit.newLength;
  const most = chosen.length + Math.ceil(width / longest);
  if (most !== merit.sticks) return most > merit.sticks;
  return patterns > merit.patterns;
};

/** Looks at a plan that gives every piece. */
const weigh = (plans: Plans, cash: number): void => {
  plans.effort.left -= PLAN;
  if (cash > plans.merit.cash || (cash === plans.merit.cash && isWorse(plans))) return;
  const plan = inCuttingOrder(plans.shelf, plans.chosen);
  const merit = meritOf(plans.shelf, plan);
  if (!isPreferred(plans.shelf, plan, plans.best, merit, plans.merit)) return;
  plans.best = plan;
  plans.merit = merit;
};

/** Puts a pattern on one more stick, or takes it off one. */
const put = (plans: Plans, { id, kinds, counts, width, cut: { stick } }: Placed, sticks: 1 | -1): void => {
  const { left, used, times } = plans;
  for (let place = 0; place < kinds.length; place += 1) left[kinds[place]!]! -= sticks * counts[place]!;
  plans.width -= sticks * width;
  used[stick]! += sticks;
  plans.newLength += sticks * plans.shelf.sticks[stick]!.newLength;
  const isNew = times[id] === 0;
  times[id]! += sticks;
  if (isNew) plans.patterns += 1;
  else if (times[id] === 0) plans.patterns -= 1;
};

const fits = ({ left }: Plans, { kinds, counts }: Placed): boolean => {
  let place = 0;
  while (place < kinds.length && counts[place]! <= left[kinds[place]!]!) place += 1;
  return place === kinds.length;
};

const visit = (plans: Plans, kind: number, from: number, slack: number, cash: number): void => {
  const { shelf, limits, charges, effort, left, used, chosen } = plans;
  effort.left -= VISIT;
  let next = kind;
  while (next < left.length && left[next] === 0) next += 1;
  if (next === left.length) return weigh(plans, cash);
  if (isWorse(plans)) return;
  const places = plans.giving[next]!;
  for (let at = next === kind ? from : 0; at < places.length && !isSpent(effort); at += 1) {
    const placed = places[at]!;
    const { lack, cut } = placed;
    const { stick } = cut;
    effort.left -= 2;
    if (lack > slack) break;
    const charge = charges[stick]! > 0 && used[stick]! >= limits.least[stick]! ? charges[stick]! : 0;
    if (lack + charge > slack || used[stick]! >= limits.most[stick]! || !fits(plans, placed)) continue;
    put(plans, placed, 1);
    chosen.push(cut);
    visit(plans, next, at, slack - lack - charge, cash + shelf.sticks[stick]!.price);
    chosen.pop();
    put(plans, placed, -1);
  }
};

/**
 * The best of the plans that cost what this one does and leave so much worth over at most, as far as the effort goes: least new length,
 * fewest sticks, fewest different patterns, largest end worth keeping, most of them, first in the order of the cut list. Goes through all
 * plans of patterns near the proven cost, each once: the next stick always holds the longest piece left. All of them where the effort
 * lasts.
 */
export const preferred = (
  shelf: Shelf,
  limits: Limits,
  weighed: Weighed,
  slack: number,
  start: readonly Cut[],
  effort: Effort,
): readonly Cut[] => {
  const { kinds, sticks } = shelf;
  const best = inCuttingOrder(shelf, start);
  const merit = meritOf(shelf, best);
  const near = nearPatterns(shelf, limits, weighed, slack, false, MOST_PATTERNS, effort);
  if (near === undefined) return best;
  const ordered = [...near]
    .sort((a, b) => a.lack - b.lack)
    .map(({ pattern, lack }, id): Placed => ({
      id,
      lack,
      kinds: pattern.kinds,
      counts: pattern.counts,
      width: patternWidth(shelf, pattern),
      cut: {
        stick: pattern.stick,
        kinds: pattern.kinds.flatMap((kind, place) => Array.from({ length: pattern.counts[place]! }, () => kind)),
      },
    }));
  const plans: Plans = {
    shelf,
    limits,
    effort,
    best,
    merit,
    charges: weighed.charges,
    giving: kinds.map((_, kind) => ordered.filter((each) => each.kinds[0] === kind)),
    longest: Math.max(...sticks.map((stick) => stick.holds)),
    left: Int32Array.from(kinds, (kind) => kind.wanted),
    used: new Int32Array(sticks.length),
    times: new Int32Array(ordered.length),
    chosen: [],
    patterns: 0,
    width: kinds.reduce((sum, kind) => sum + kind.width * kind.wanted, 0),
    newLength: 0,
  };
  visit(plans, 0, 0, slack, 0);
  return plans.best;
};
