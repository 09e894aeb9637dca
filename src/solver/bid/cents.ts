import { Exact } from "../length/exact";

/** Decimals of the smallest amount that is paid. */
const DECIMALS = 2;

/** An amount of money as it is printed: whole cents, half a cent away from zero, so that a credit rounds like a charge. */
export const cents = (amount: Exact): Exact => amount.toDecimalPlaces(DECIMALS, Exact.ROUND_HALF_UP);

export const isWholeCents = (amount: Exact): boolean => amount.decimalPlaces() <= DECIMALS;
