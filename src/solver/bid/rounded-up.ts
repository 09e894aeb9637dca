import { Exact } from "../length/exact";

/** The next whole so many of an amount, upwards; the amount itself where it is one, or where nothing is given to round to. */
export const roundedUp = (amount: Exact, to: Exact): Exact => {
  if (to.isZero()) return amount;
  const rounded = amount.div(to).ceil().times(to);
  // a cent below nothing comes up to 0, which has no sign
  return rounded.isZero() ? new Exact(0) : rounded;
};
