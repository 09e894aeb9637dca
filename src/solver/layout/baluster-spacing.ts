import { ceilingOfQuotient, type Exact } from "../length/exact";
import type { Length } from "../length/length";
import { type Problem, problem } from "../problem";

/** The widest clear gap where nobody gave one, as a user would type it in inches: a 4 in ball does not pass. Common practice, no source. */
export const USUAL_GAP = "3 15/16";

export interface BalusterSpacing {
  readonly count: number;
  readonly gap: Length;
  /** The gap is the greatest allowed: a ball of that size touches, and whether it passes depends on whether anything gives. */
  readonly touches: boolean;
}

const spacing = (count: number, gap: Length, maxGap: Length): BalusterSpacing => ({ count, gap, touches: gap.eq(maxGap) });

const atLeast = (whole: Exact, each: Exact, least: number): number =>
  whole.lte(0) ? least : Math.max(least, ceilingOfQuotient(whole, each));

/** Fewest balusters in a clear opening with equal gaps, none over `maxGap`; a gap at either end. */
export const balusterSpacing = (opening: Length, width: Length, maxGap: Length): BalusterSpacing | Problem<"no-room-for-balusters"> => {
  const count = atLeast(opening.minus(maxGap), width.plus(maxGap), 0);
  const left = opening.minus(width.times(count));
  return left.gt(0) ? spacing(count, left.div(count + 1), maxGap) : problem("no-room-for-balusters", { count, width, opening });
};

/** Fewest balusters to each run of a stair that goes on, so many gaps as balusters. */
export const repeatedSpacing = (run: Length, width: Length, maxGap: Length): BalusterSpacing | Problem<"no-room-for-balusters"> => {
  const count = atLeast(run, width.plus(maxGap), 1);
  const left = run.minus(width.times(count));
  return left.gt(0) ? spacing(count, left.div(count), maxGap) : problem("no-room-for-balusters", { count, width, opening: run });
};
