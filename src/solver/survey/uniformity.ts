import { Exact } from "../length/exact";
import { type Length, lengthOf } from "../length/length";

export interface Uniformity {
  readonly largest: Length;
  readonly largestAt: number;
  readonly smallest: Length;
  readonly smallestAt: number;
  readonly spread: Length;
  /** Greatest difference of neighbours; the first of the two. Undefined for a single value. */
  readonly neighbours: { readonly difference: Length; readonly at: number } | undefined;
  /** In the words of a code check; `assumed` where nobody gave the tolerance. */
  readonly verdict: "pass" | "fail" | "not given" | "assumed: would pass" | "assumed: would fail";
}

/** Greatest spread within a flight: IRC 2021 R311.7.5.1, 3/8 in. */
const USUAL_TOLERANCE = lengthOf("0.375", "in");

/** How alike the rises or runs of a flight are; a spread equal to the tolerance passes. */
export const uniformity = (values: readonly Length[], tolerance?: Length): Uniformity => {
  const largest = Exact.max(...values);
  const smallest = Exact.min(...values);
  const differences = values.slice(1).map((value, index) => value.minus(values[index] ?? value).abs());
  const worst = differences.length === 0 ? undefined : Exact.max(...differences);
  const spread = largest.minus(smallest);
  const word = spread.lte(tolerance ?? USUAL_TOLERANCE) ? "pass" : "fail";
  return {
    largest,
    largestAt: values.findIndex((value) => value.eq(largest)) + 1,
    smallest,
    smallestAt: values.findIndex((value) => value.eq(smallest)) + 1,
    spread,
    neighbours:
      worst === undefined ? undefined : { difference: worst, at: differences.findIndex((difference) => difference.eq(worst)) + 1 },
    verdict: worst === undefined ? "not given" : tolerance === undefined ? `assumed: would ${word}` : word,
  };
};
