import type { Exact } from "../length/exact";

/** The next whole so many of an amount, upwards; the amount itself where it is one, or where nothing is given to round to. */
export const roundedUp = (amount: Exact, to: Exact): Exact => (to.isZero() ? amount : amount.div(to).ceil().times(to));
