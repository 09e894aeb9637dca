import { inches } from "./limit-row";
import type { LimitException } from "./profile";

/** Exceptions that stand alike in several editions of the International Building Code. */
export const SLOPING_END_RISER: LimitException = {
  when: { given: "endRiserSlope" },
  words: "a bottom or top riser at sloping ground may run out under 4 in",
  then: {
    comparator: "every", needs: "first",
    parts: [
      { comparator: "max", of: "riserHeight", max: inches("7") },
      { comparator: "min", of: { inner: "riserHeight" }, min: inches("4") },
      {
        comparator: "either",
        parts: [
          { comparator: "min", of: "riserHeight", min: inches("4") },
          { comparator: "person", sense: "a riser under 4 in is allowed only where it meets the sloping ground" },
        ],
      },
    ],
  },
};
