import { type CountGround, divedWithin, tried, weighedByCounts } from "./counted";
import { type Effort, isSpent, withShare } from "./effort";
import { downsized } from "./hand-plan";
import { inCuttingOrder, isPreferred, lengthPrices } from "./merit";
import { cutsOf } from "./pattern";
import { type Cut, outlay, type Shelf } from "./shelf";
import { type Asked, leastCounts } from "./stick-counts";
import { preferred } from "./ties";

/** Numbers of sticks of equal cost, new length and sum whose plans are compared, and the share of the effort for each of them. */
const MOST_COMPARED = 12;
const COMPARED_SHARE = 1 / 3;
/** Shares of what is left of the effort for fewer sticks, and for dives. */
const FEWER_SHARE = 0.8;
const DIVED_SHARE = 0.3;

const countsOf = (shelf: Shelf, cuts: readonly Cut[]): number[] => {
  const counts = shelf.sticks.map(() => 0);
  for (const { stick } of cuts) counts[stick]! += 1;
  return counts;
};

const sumOf = (price: readonly number[], counts: readonly number[]): number =>
  counts.reduce((sum, count, stick) => sum + count * price[stick]!, 0);

/** A plan that costs no more with the least new length, then the fewest sticks, as far as the effort goes. */
const withFewer = (ground: CountGround, asked: Omit<Asked, "below">, start: readonly Cut[], effort: Effort): readonly Cut[] => {
  const { shelf, laws } = ground;
  const without: (readonly number[])[] = [];
  let cuts = start;
  while (!isSpent(effort)) {
    const next = leastCounts(shelf, { ...asked, below: sumOf(asked.price, countsOf(shelf, cuts)), without }, effort);
    if (next === undefined) break;
    const found = tried(ground, next.counts, effort);
    if (found === "none" || found === "open") without.push(next.counts);
    else if (!("uses" in found)) laws.push(found);
    else {
      const better = inCuttingOrder(shelf, downsized(shelf, cutsOf(shelf, found.uses)));
      if (isPreferred(shelf, better, cuts)) cuts = better;
      else without.push(next.counts);
    }
  }
  return cuts;
};

/**
 * The best of the plans that cost what this one does, by numbers of sticks: those with the least new length and the fewest sticks first,
 * then all plans of each of those numbers, the plan's own ones first.
 */
export const preferredByCounts = (ground: CountGround, start: readonly Cut[], effort: Effort): readonly Cut[] => {
  const { shelf, laws } = ground;
  const price = lengthPrices(shelf);
  const cash = { price: shelf.sticks.map((stick) => stick.price), most: outlay(shelf, start).cash };
  const asked = { price, cash, laws, without: [] };
  let cuts = withShare(effort, effort.left * FEWER_SHARE, (share) => withFewer(ground, asked, start, share));
  let counts: readonly number[] | undefined = countsOf(shelf, cuts);
  for (const { uses } of withShare(effort, effort.left * DIVED_SHARE, (share) => divedWithin(ground, countsOf(shelf, cuts), share))) {
    const other = inCuttingOrder(shelf, cutsOf(shelf, uses));
    if (isPreferred(shelf, other, cuts)) cuts = other;
  }
  const most = effort.left * COMPARED_SHARE;
  const without: (readonly number[])[] = [];
  const below = sumOf(price, counts) + 1;
  while (counts !== undefined && without.length < MOST_COMPARED && !isSpent(effort)) {
    const { weighed, slack, limits } = weighedByCounts(ground, counts);
    cuts = withShare(effort, most, (share) => preferred(shelf, limits, weighed, slack, cuts, share));
    without.push(counts);
    counts = leastCounts(shelf, { ...asked, below, without }, effort)?.counts;
  }
  return cuts;
};
