import { printed, span } from "./printed-figure";
import type { Rule } from "../profile";

/** Handrail of Type II, with a finger recess on each side: depth of the recess first, then where it lies and the width above it, as far as given. */
export const TYPE_TWO_GRIP: Rule = {
  comparator: "every", needs: "first",
  parts: [
    { comparator: "min", of: "gripRecess", min: printed("5/16 in") },
    { comparator: "max", of: "recessStart", max: printed("3/4 in") },
    { comparator: "max", of: "recessReach", max: printed("7/8 in") },
    { comparator: "min", of: "recessHeight", min: printed("3/8 in") },
    { comparator: "min", of: "recessFoot", min: printed("1 3/4 in") },
    { comparator: "range", of: "widthAboveRecess", ...span("1 1/4 to 2 3/4 in") },
  ],
};
