import { printed } from "./printed-figure";
import type { LimitException, Rule } from "../profile";
import { IN_DWELLING } from "./stair-conditions";

const LEAST_OF_END_RISER: Rule = {
  comparator: "either",
  parts: [
    { comparator: "min", of: "riserHeight", min: printed("4 in") },
    { comparator: "person", sense: "a riser under 4 in is allowed only where it meets the sloping ground" },
  ],
};

/** Exceptions that stand alike in several editions of the International Building Code. */
export const SLOPING_END_RISER: LimitException = {
  when: { given: "endRiserSlope" },
  words: "a bottom or top riser at sloping ground may run out under 4 in; none is over 7 in",
  then: {
    comparator: "every", needs: "first",
    parts: [
      { comparator: "max", of: "riserHeight", max: printed("7 in") },
      { comparator: "min", of: { inner: "riserHeight" }, min: printed("4 in") },
      LEAST_OF_END_RISER,
    ],
  },
};

const IN_A_DWELLING = "inside, or only for, one dwelling the greatest riser has a row of its own; the least of 4 in stays";

/** Exception 3 of 1011.5.2 changes the greatest riser and the least tread of a dwelling, and leaves the least riser as it is. */
export const DWELLING_LEAST_RISER: LimitException = {
  when: { all: [IN_DWELLING, { not: { given: "endRiserSlope" } }] },
  words: IN_A_DWELLING,
  then: { comparator: "min", of: "riserHeight", min: printed("4 in") },
};

export const DWELLING_LEAST_RISER_ON_SLOPE: LimitException = {
  when: { all: [IN_DWELLING, { given: "endRiserSlope" }] },
  words: IN_A_DWELLING,
  then: {
    comparator: "every",
    needs: "any",
    parts: [{ comparator: "min", of: { inner: "riserHeight" }, min: printed("4 in") }, LEAST_OF_END_RISER],
  },
};
