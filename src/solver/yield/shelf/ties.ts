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

/**
 * The best of the plans that cost what this one does, as far as the effort goes: least new length, fewest sticks, fewest different
 * patterns, largest end worth keeping, most of them, first in the order of the cut list. Goes through all plans of patterns near the
 * proven cost, each once: the next stick always holds the longest piece left. All of them where the effort lasts.
 */
export const preferred = (shelf: Shelf, limits: Limits, weighed: Weighed, least: number, start: readonly Cut[], effort: Effort): readonly Cut[] => {
  const { kinds, sticks } = shelf;
  const { steps, charges } = weighed;
  let best: readonly Cut[] = inCuttingOrder(shelf, start);
  let merit: Merit = meritOf(shelf, best);
  const slackAtFirst = merit.cash * steps - least;
  const near = nearPatterns(shelf, limits, weighed, slackAtFirst, false, MOST_PATTERNS, effort);
  if (near === undefined) return best;
  const ordered = [...near]
    .sort((a, b) => a.lack - b.lack)
    .map(({ pattern, lack }, id) => ({
      id,
      lack,
      kinds: pattern.kinds,
      counts: pattern.counts,
      width: patternWidth(shelf, pattern),
      cut: { stick: pattern.stick, kinds: pattern.kinds.flatMap((kind, place) => Array.from({ length: pattern.counts[place]! }, () => kind)) },
    }));
  // a pattern stands with its longest kind
  const giving = kinds.map((_, kind) => ordered.filter((each) => each.kinds[0] === kind));
  const longest = Math.max(...sticks.map((stick) => stick.holds));
  const left = Int32Array.from(kinds, (kind) => kind.wanted);
  const used = new Int32Array(sticks.length);
  const times = new Int32Array(ordered.length);
  const chosen: Cut[] = [];
  let patterns = 0;
  let width = kinds.reduce((sum, kind) => sum + kind.width * kind.wanted, 0);
  let newLength = 0;

  const isWorse = (): boolean => {
    if (newLength !== merit.newLength) return newLength > merit.newLength;
    const most = chosen.length + Math.ceil(width / longest);
    if (most !== merit.sticks) return most > merit.sticks;
    return patterns > merit.patterns;
  };

  const visit = (kind: number, from: number, slack: number, cash: number): void => {
    effort.left -= VISIT;
    let next = kind;
    while (next < left.length && left[next] === 0) next += 1;
    if (next === left.length) {
      effort.left -= PLAN;
      if (cash > merit.cash || (cash === merit.cash && isWorse())) return;
      const plan = inCuttingOrder(shelf, chosen);
      const meritOfPlan = meritOf(shelf, plan);
      if (!isPreferred(shelf, plan, best, meritOfPlan, merit)) return;
      best = plan;
      merit = meritOfPlan;
      return;
    }
    if (isWorse()) return;
    const places = giving[next]!;
    for (let at = next === kind ? from : 0; at < places.length && !isSpent(effort); at += 1) {
      const { id, lack, kinds: held, counts, width: wide, cut } = places[at]!;
      const { stick } = cut;
      effort.left -= 2;
      if (lack > slack) break;
      const charge = charges[stick]! > 0 && used[stick]! >= limits.least[stick]! ? charges[stick]! : 0;
      if (lack + charge > slack || used[stick]! >= limits.most[stick]!) continue;
      let place = 0;
      while (place < held.length && counts[place]! <= left[held[place]!]!) place += 1;
      if (place < held.length) continue;
      for (place = 0; place < held.length; place += 1) left[held[place]!]! -= counts[place]!;
      width -= wide;
      used[stick]! += 1;
      newLength += sticks[stick]!.newLength;
      if (times[id] === 0) patterns += 1;
      times[id]! += 1;
      chosen.push(cut);
      visit(next, at, slack - lack - charge, cash + sticks[stick]!.price);
      chosen.pop();
      times[id]! -= 1;
      if (times[id] === 0) patterns -= 1;
      newLength -= sticks[stick]!.newLength;
      used[stick]! -= 1;
      width += wide;
      for (place = 0; place < held.length; place += 1) left[held[place]!]! += counts[place]!;
    }
  };
  visit(0, 0, slackAtFirst, 0);
  return best;
};
