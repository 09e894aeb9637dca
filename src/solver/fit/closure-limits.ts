import { lengthOf, measure, type Unit } from "../length/length";
import { USUAL_TAPE } from "../length/usual-tape";
import type { ClosureLimits } from "./closure-notes";

/**
 * Honest readings of a 1/16 tape close within 0.073 in in 95 of 100 steps, by trial on made-up flights, so twice a division passes without
 * a word.
 */
const DIVISIONS_ALLOWED = 2;
/** A hand does not get finer with the tape: under this, one honest step in 30 would be flagged, by the same trial. */
const FINEST_HAND = lengthOf(0.09375, "in");

/** Closures of one cause lie within this of one another. */
const ALIKE = lengthOf(0.125, "in");

/** What readings of a step may disagree by, read with a tape of `divisions` to the unit. */
export const closureLimits = (divisions: number | undefined, unit: Unit): ClosureLimits => {
  const division = 1 / (divisions ?? USUAL_TAPE[unit]);
  return { most: Math.max(DIVISIONS_ALLOWED * division, measure(FINEST_HAND, unit)), alike: measure(ALIKE, unit), division };
};
