import { printed, slope } from "./printed-figure";
import type { LimitException } from "../profile";
import { OPEN_RISERS } from "./stair-conditions";

export const OPENING_OVERLAPS: LimitException = {
  when: { all: [{ given: "openingOverlap" }, { fact: "openingOverlap", atMost: printed("4 3/4 in") }] },
  words: "the edge of the floor opening may stand in over the side of the stair by up to 4 3/4 in",
  then: "does not apply",
};

export const NOSING_OVER_OPEN_RISERS: LimitException = {
  when: OPEN_RISERS,
  words: "over open risers the projection may be more than 1 1/4 in, and is at least 3/4 in",
  then: { comparator: "min", of: "nosing", min: printed("3/4 in") },
};

export const EXTERIOR_DOOR: LimitException = {
  when: {
    all: [
      { fact: "landing", is: ["exterior door"], otherwise: "straight" },
      { fact: "risers", atMost: printed("2 risers") },
      { fact: "doorSwing", is: ["no"] },
    ],
  },
  words: "an exterior door over at most two risers needs no landing at the top if it does not swing over them",
  then: "does not apply",
};

export const LANDING_DRAINS: LimitException = {
  when: { fact: "landingDrains", is: ["yes"], otherwise: "no" },
  words: "a landing that has to shed water may slope 1:20 in the direction of travel; treads keep 1:48",
  then: {
    comparator: "every", needs: "any",
    parts: [
      { comparator: "slope", of: "landingSlope", ...slope("1:20") },
      { comparator: "slope", of: "treadSlope", ...slope("1:48") },
    ],
  },
};

export const PASSING_NOSING: LimitException = {
  when: { fact: "handrailPassesNosing", is: ["yes"], otherwise: "no" },
  words: "up to 6 1/2 in where the nosing of a landing or of a passing flight takes up the clearance",
  then: { comparator: "max", of: "handrailProjection", max: printed("6 1/2 in") },
};

/** No label holds an area, nor a depth at the walkline of a landing. */
export const LANDING_OF_OTHER_SHAPE: LimitException = {
  when: { fact: "landingShape", is: ["other"], otherwise: "rectangle" },
  words: "a landing that is not a rectangle",
  then: {
    comparator: "person",
    sense: "its depth at the walkline and its area are to be those of a quarter circle at least, with the width of the flight as radius",
  },
};

/**
 * An exception that stands in a later edition only: under an earlier one it excuses where the authority grants it, and is open where
 * nobody gave an answer.
 */
export const ofLaterEdition = (exception: LimitException): LimitException => ({
  ...exception,
  when: { all: [exception.when, { fact: "laterExceptions", is: ["yes"] }] },
  words: `${exception.words} (of the 2024 edition)`,
});
