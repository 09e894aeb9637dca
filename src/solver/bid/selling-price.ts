import { type Problem, problem } from "../problem";
import { Exact } from "../length/exact";

/** `markup` is a share of the cost, `margin` a share of the price. */
export type Basis = "markup" | "margin";

const PERCENT = 100;

/**
 * The price, not yet rounded, that covers a cost: cost x (1 + rate) by markup, cost / (1 - rate) by margin; the rate is a share, 0.25 for
 * 25 %.
 * Definitions: markup on cost, OpenStax Prealgebra 2e, mark-up; gross margin on sales, OpenStax Principles of Accounting, Volume 1.
 */
export const sellingPrice = (cost: Exact, rate: Exact, basis: Basis): Exact | Problem<"margin-of-all"> => {
  if (basis === "markup") return cost.times(rate.plus(1));
  return rate.gte(1) ? problem("margin-of-all", { percent: rate.times(PERCENT).toNumber() }) : cost.div(new Exact(1).minus(rate));
};
