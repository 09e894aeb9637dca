import { Exact } from "../length/exact";

/** Decimals of the smallest amount that is paid. */
const DECIMALS = 2;

/** An amount of money as it is printed: whole cents, half a cent away from zero, so that a credit rounds like a charge. */
export const cents = (amount: Exact): Exact => amount.toDecimalPlaces(DECIMALS, Exact.ROUND_HALF_UP);

const IN_CENTS = 100;

/** A part of a whole amount in whole cents, as `cents` rounds: reckoned in whole numbers, so that no quotient is rounded before. */
export const shareInCents = (amount: Exact, part: Exact, whole: Exact): Exact => {
  if (amount.isZero()) return amount;
  const rounded = part.times(amount.abs()).times(2 * IN_CENTS).plus(whole).divToInt(whole.times(2)).div(IN_CENTS);
  return amount.isNegative() ? rounded.negated() : rounded;
};

export const isWholeCents = (amount: Exact): boolean => amount.decimalPlaces() <= DECIMALS;
