import { Exact } from "../length/exact";

/** The least amount that is paid. */
const CENT = new Exact("0.01");

const sumOf = (amounts: readonly Exact[]): Exact => amounts.reduce((sum, each) => sum.plus(each), new Exact(0));

/** The shares of an amount of no sign: whole cents below each, and the cents left over to the largest remainders. */
const sharesOf = (amount: Exact, weights: readonly Exact[], total: Exact): readonly Exact[] => {
  const exactShares = weights.map((weight) => amount.times(weight).div(total));
  const floors = exactShares.map((share) => share.div(CENT).floor().times(CENT));
  const left = amount.minus(sumOf(floors)).div(CENT).toNumber();
  const byRemainder = exactShares
    .map((share, place) => ({ place, remainder: share.minus(floors[place] ?? share) }))
    .sort((one, other) => other.remainder.cmp(one.remainder) || one.place - other.place);
  const raised = new Set(byRemainder.slice(0, left).map(({ place }) => place));
  return floors.map((share, place) => (raised.has(place) ? share.plus(CENT) : share));
};

/**
 * An amount in whole cents shared by weights, each share in cents and all together the amount: the cents left over go to the largest
 * remainders, of equal ones to the earlier. A credit is shared as a charge is. Where the weights come to nothing the first takes all.
 */
export const allocation = (amount: Exact, weights: readonly Exact[]): readonly Exact[] => {
  const total = sumOf(weights);
  if (total.isZero()) return weights.map((_, place) => (place === 0 ? amount : new Exact(0)));
  if (!amount.isNegative()) return sharesOf(amount, weights, total);
  return sharesOf(amount.neg(), weights, total).map((share) => (share.isZero() ? share : share.neg()));
};
