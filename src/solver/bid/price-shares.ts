import { Exact } from "../length/exact";
import { allocation } from "./allocation";
import { cents } from "./cents";

const ZERO = new Exact(0);

const sumOf = (amounts: readonly Exact[]): Exact => amounts.reduce((sum, each) => sum.plus(each), ZERO);

/**
 * A price or a tax over parts, by what each would be before cents, so that the shares add up to it. A part that is a credit is rounded by
 * itself, and the others share the rest. Where the parts come to nothing together the first takes what there is.
 */
export const priceShares = (amount: Exact, exactPrices: readonly Exact[]): readonly Exact[] => {
  const total = sumOf(exactPrices);
  if (total.isZero()) return exactPrices.map((_, place) => (place === 0 ? amount : ZERO));
  const isAgainst = (price: Exact): boolean => price.isNegative() !== total.isNegative() && !price.isZero();
  const against = exactPrices.map((price) => (isAgainst(price) ? cents(amount.times(price).div(total)) : ZERO));
  const weights = exactPrices.map((price) => (isAgainst(price) ? ZERO : price.abs()));
  const shares = allocation(amount.minus(sumOf(against)), weights);
  return shares.map((share, place) => share.plus(against[place] ?? ZERO));
};
