import type { Parameter } from "./declare";

/** What the readings of a fit were read to. */
export const tapeDivisions = {
  kind: "count",
  sign: "positive",
  most: 64,
  optional: true,
  says: "Divisions of the unit on the tape used; diagonals may disagree by two divisions, or by 3/32 in (2.4 mm) where that is more.",
  without: "Left out: 16 of an inch, 1 of a millimetre.",
} as const satisfies Parameter;
