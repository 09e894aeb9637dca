import { type Length, lengthOf } from "../length/length";

interface Default<Value> {
  readonly value: Value;
  /** Why this value and no other. */
  readonly because: string;
}

const inches = (value: number, because: string): Default<Length> => ({ value: lengthOf(value, "in"), because });

const PRACTICE = "common practice, no source";

/** What stands in for a label that was left out. */
export const STAIR_DEFAULTS = {
  maxRise: inches(7.75, "the greatest rise of the IRC, R311.7.5.1"),
  topTread: { value: "floor", because: "the upper floor serves as the last tread" },
  nosing: inches(1.25, PRACTICE),
  treadThickness: inches(1, PRACTICE),
  riserThickness: inches(0.75, PRACTICE),
  openEnd: { value: "none", because: "skirts at both ends" },
  runPast: inches(0, "risers end at the skirt"),
  lap: inches(0, "risers end on the tread"),
  riserOn: { value: "both", because: "treads were read between finished risers" },
  lowerBuildUp: inches(0, "the lower floor is finished"),
  upperBuildUp: inches(0, "the upper floor is finished"),
  stringers: { value: 3, because: PRACTICE },
  stringerBoard: inches(11.25, "a dry 2x12, PS 20"),
  skirtThickness: inches(0.75, PRACTICE),
  skirtShows: inches(2, PRACTICE),
  skirtFoot: inches(0, "the closed skirt begins under the first nosing"),
  skirtHead: inches(0, "the closed skirt ends at the landing nosing"),
  trimLength: inches(0, "blanks are ordered to size"),
  trimDepth: inches(0, "blanks are ordered to size"),
  landingNosing: { value: true, because: PRACTICE },
} as const;
