import type { Exact } from "../length/exact";

/** What the cuts leave of a stringer board, square to the slope. */
export const throat = (board: Exact, rise: Exact, run: Exact): Exact =>
  board.minus(rise.times(run).div(rise.pow(2).plus(run.pow(2)).sqrt()));
