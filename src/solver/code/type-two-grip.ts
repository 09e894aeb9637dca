import { inches } from "./limit-row";
import type { Rule } from "./profile";

/** Handrail of Type II, with a finger recess on each side: depth of the recess first, then where it lies and the width above it, as far as given. */
export const TYPE_TWO_GRIP: Rule = {
  comparator: "every", needs: "first",
  parts: [
    { comparator: "min", of: "gripRecess", min: inches("0.3125") },
    { comparator: "max", of: "recessStart", max: inches("0.75") },
    { comparator: "max", of: "recessReach", max: inches("0.875") },
    { comparator: "min", of: "recessHeight", min: inches("0.375") },
    { comparator: "min", of: "recessFoot", min: inches("1.75") },
    { comparator: "range", of: "widthAboveRecess", min: inches("1.25"), max: inches("2.75") },
  ],
};
