import { Exact } from "../length/exact";
import { type Length, lengthIn } from "../length/length";

/** A board foot is 1 in x 12 in x 12 in, by definition. */
const CUBIC_INCHES_PER_BOARD_FOOT = 144;

/**
 * Board feet of `quantity` boards: thickness x width x length over 144, in inches, exact.
 * Stock under 1 in thick counts as 1 in (US Navy Engineering Aid basic manual, lumber).
 */
export const boardFeet = (thickness: Length, width: Length, length: Length, quantity: number): Exact =>
  Exact.max(1, lengthIn(thickness, "in"))
    .times(lengthIn(width, "in"))
    .times(lengthIn(length, "in"))
    .times(quantity)
    .div(CUBIC_INCHES_PER_BOARD_FOOT);
