import type { Exact } from "../length/exact";

export type VarianceWord = "favourable" | "unfavourable" | "none";

export interface Variance {
  readonly price: Exact;
  readonly usage: Exact;
}

/** What a difference from plan is called: more spent is unfavourable. */
export const varianceWord = (variance: Exact): VarianceWord =>
  variance.isZero() ? "none" : variance.isNegative() ? "favourable" : "unfavourable";

/** Price variance on what was bought, usage variance on what was used, both at the standard price; positive is unfavourable. */
export const variance = (
  standardPrice: Exact,
  standardQuantity: Exact,
  actualPrice: Exact,
  actualBought: Exact,
  actualUsed: Exact,
): Variance => ({
  price: actualPrice.minus(standardPrice).times(actualBought),
  usage: actualUsed.minus(standardQuantity).times(standardPrice),
});
