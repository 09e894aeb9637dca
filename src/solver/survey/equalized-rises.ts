import { Exact } from "../length/exact";
import type { Length } from "../length/length";
import { finishedRises } from "./finished-rises";

export interface EqualizedStep {
  readonly step: number;
  /** Finished rise as framed. */
  readonly asFound: Length;
  /** What goes under this sub-tread for equal rises; negative must come down. Undefined for the last rise, which ends on the floor. */
  readonly packing: Length | undefined;
}

export interface EqualizedRises {
  readonly steps: readonly EqualizedStep[];
  readonly unitRise: Length;
  /** Least difference of tallest and lowest rise that packing alone can reach, with nothing taken down. */
  readonly leastSpread: Length;
}

/** Sums from the bottom up to each rise. */
const sums = (lengths: readonly Length[]): readonly Length[] => {
  let total: Length = new Exact(0);
  return lengths.map((length) => (total = total.plus(length)));
};

/** Packing under each sub-tread that makes the finished rises equal, from rough rises measured sub-tread to sub-tread, bottom first. */
export const equalizedRises = (
  rough: readonly Length[],
  treadThickness: Length,
  lowerBuildUp: Length,
  upperBuildUp: Length,
): EqualizedRises => {
  const count = rough.length;
  const levels = sums(rough);
  const totalRise = (levels[count - 1] ?? new Exact(0)).plus(upperBuildUp).minus(lowerBuildUp);
  const unitRise = totalRise.div(count);
  const found = finishedRises(rough, treadThickness, lowerBuildUp, upperBuildUp);
  const heights = levels.slice(0, -1).map((level) => level.plus(treadThickness).minus(lowerBuildUp));
  const steps = rough.map((rise, index): EqualizedStep => {
    const height = heights[index];
    return {
      step: index + 1,
      asFound: found[index] ?? rise,
      packing:
        height === undefined
          ? undefined
          : totalRise
              .times(index + 1)
              .div(count)
              .minus(height),
    };
  });
  const tallest = heights.map((height, index) => height.div(index + 1));
  const lowest = heights.map((height, index) => totalRise.minus(height).div(count - index - 1));
  return { steps, unitRise, leastSpread: Exact.max(unitRise, ...tallest).minus(Exact.min(unitRise, ...lowest)) };
};
