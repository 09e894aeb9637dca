import { Exact } from "../length/exact";
import { cents } from "./cents";

const ZERO = new Exact(0);
const CENTS = 100;

/**
 * An amount shared by weights so that the shares add up to it: each is first rounded down to the cent, and the cents left over go to the
 * largest remainders, of equal ones to the earlier (largest remainder method). A negative amount is shared as its mirror. The weights are
 * 0 or more, and one is more than 0.
 */
export const allocation = (amount: Exact, weights: readonly Exact[]): readonly Exact[] => {
  if (weights.length === 1) return [cents(amount)];
  const whole = cents(amount.abs()).times(CENTS);
  const total = weights.reduce((sum, weight) => sum.plus(weight), ZERO);
  const shares = weights.map((weight, place) => {
    // Remainders are compared before they are divided, so that equal ones are equal.
    const part = whole.times(weight);
    const floor = part.divToInt(total);
    return { place, floor, remainder: part.minus(floor.times(total)) };
  });
  const left = whole.minus(shares.reduce((sum, { floor }) => sum.plus(floor), ZERO)).toNumber();
  const byRemainder = [...shares].sort((one, other) => other.remainder.cmp(one.remainder) || one.place - other.place);
  const first = new Set(byRemainder.slice(0, left).map(({ place }) => place));
  return shares.map(({ place, floor }) => {
    const share = (first.has(place) ? floor.plus(1) : floor).div(CENTS);
    return amount.isNegative() && !share.isZero() ? share.negated() : share;
  });
};
