import { Exact, roundedTo } from "../length/exact";

/** The smallest amount that is paid. */
const CENT = new Exact("0.01");

/** An amount of money as it is printed: whole cents, half a cent away from zero, so that a credit rounds like a charge. */
export const cents = (amount: Exact): Exact => roundedTo(amount, CENT);
