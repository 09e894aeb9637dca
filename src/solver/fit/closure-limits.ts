import { lengthOf, measure, type Unit } from "../length/length";
import type { ClosureLimits } from "./closure-notes";

/** Divisions of the unit a tape usually shows. */
const USUAL_TAPE: Readonly<Record<Unit, number>> = { in: 16, mm: 1 };

/** Honest readings of a 1/16 tape close within 0.073 in 95 times of 100, so twice a division is the most that passes without a word. */
const DIVISIONS_ALLOWED = 2;

/** Closures of one cause lie within this of one another. */
const ALIKE = lengthOf(0.125, "in");

/** What two diagonals may disagree by, read with a tape of `divisions` to the unit. */
export const closureLimits = (divisions: number | undefined, unit: Unit): ClosureLimits => ({
  most: DIVISIONS_ALLOWED / (divisions ?? USUAL_TAPE[unit]),
  alike: measure(ALIKE, unit),
});
