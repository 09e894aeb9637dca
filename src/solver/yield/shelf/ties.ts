import { type Effort, isSpent } from "./effort";
import { type Limits } from "./master";
import { inCuttingOrder, isPreferred, type Merit, meritOf } from "./merit";
import { nearPatterns, type Weighed } from "./near-patterns";
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
  const ordered = [...near].sort((a, b) => a.lack - b.lack);
  // a pattern stands with its longest kind
  const giving = kinds.map((_, kind) => ordered.filter(({ pattern }) => pattern.kinds[0] === kind));
  const longest = Math.max(...sticks.map((stick) => stick.holds));
  const left = kinds.map((kind) => kind.wanted);
  const used = sticks.map(() => 0);
  const chosen: Cut[] = [];
  const isMine = new Map<string, number>();
  let width = kinds.reduce((sum, kind) => sum + kind.width * kind.wanted, 0);
  let newLength = 0;

  const isWorse = (): boolean => {
    if (newLength !== merit.newLength) return newLength > merit.newLength;
    const most = chosen.length + Math.ceil(width / longest);
    if (most !== merit.sticks) return most > merit.sticks;
    return isMine.size > merit.patterns;
  };

  const visit = (kind: number, from: number, slack: number, cash: number): void => {
    effort.left -= VISIT;
    let next = kind;
    while (next < left.length && left[next] === 0) next += 1;
    if (next === left.length) {
      effort.left -= PLAN;
      if (cash > merit.cash) return;
      const plan = inCuttingOrder(shelf, chosen);
      if (!isPreferred(shelf, plan, best)) return;
      best = plan;
      merit = meritOf(shelf, plan);
      return;
    }
    if (isWorse()) return;
    const places = giving[next]!;
    for (let at = next === kind ? from : 0; at < places.length && !isSpent(effort); at += 1) {
      const { pattern, lack } = places[at]!;
      const { stick, kinds: held, counts } = pattern;
      effort.left -= 2;
      if (lack > slack) break;
      const charge = charges[stick]! > 0 && used[stick]! >= limits.least[stick]! ? charges[stick]! : 0;
      if (lack + charge > slack || used[stick]! >= limits.most[stick]! || held.some((each, place) => counts[place]! > left[each]!)) continue;
      const key = `${next}:${at}`;
      for (const [place, each] of held.entries()) left[each]! -= counts[place]!;
      const wide = held.reduce((sum, each, place) => sum + kinds[each]!.width * counts[place]!, 0);
      width -= wide;
      used[stick]! += 1;
      newLength += sticks[stick]!.newLength;
      isMine.set(key, (isMine.get(key) ?? 0) + 1);
      chosen.push({ stick, kinds: held.flatMap((each, place) => Array.from({ length: counts[place]! }, () => each)) });
      visit(next, at, slack - lack - charge, cash + sticks[stick]!.price);
      chosen.pop();
      if (isMine.get(key) === 1) isMine.delete(key);
      else isMine.set(key, isMine.get(key)! - 1);
      newLength -= sticks[stick]!.newLength;
      used[stick]! -= 1;
      width += wide;
      for (const [place, each] of held.entries()) left[each]! += counts[place]!;
    }
  };
  visit(0, 0, slackAtFirst, 0);
  return best;
};
