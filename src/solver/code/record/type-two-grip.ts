import { printed, span } from "./printed-figure";
import type { RuleRecord } from "./limit-record";

/**
 * Handrail of Type II, with a finger recess on each side: depth of the recess, then where it lies and the width above it, as far as given.
 */
export const TYPE_TWO_GRIP: RuleRecord = {
  comparator: "every", needs: "first",
  parts: [
    { comparator: "min", of: "gripRecess" },
    { comparator: "max", of: "recessStart", max: printed("3/4 in") },
    { comparator: "max", of: "recessReach", max: printed("7/8 in") },
    { comparator: "min", of: "recessHeight", min: printed("3/8 in") },
    { comparator: "min", of: "recessFoot", min: printed("1 3/4 in") },
    { comparator: "range", of: "widthAboveRecess", ...span("1 1/4 to 2 3/4 in") },
  ],
};

/** The figures of that shape in words, for the remark of a record. */
export const TYPE_TWO_GRIP_WORDS =
  "the recess starts within 3/4 in of the top, is full within 7/8 in under the widest part, holds for 3/8 in and down to 1 3/4 in " +
  "under the top; above it the rail is 1 1/4 to 2 3/4 in wide; each is held where its label is given";
