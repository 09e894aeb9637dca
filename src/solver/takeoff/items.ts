import type { Unit } from "../length/length";

/** What a takeoff counts, in the order of the work. HOURS prices the same items. */
export const TAKEOFF_ITEMS = {
  treadWithoutReturn: { counts: "each", rule: "treads between two skirts" },
  treadWithOneReturn: { counts: "each", rule: "treads with one open end" },
  treadWithTwoReturns: { counts: "each", rule: "treads with two open ends" },
  landingNosing: { counts: "each", rule: "one where the upper floor is the last tread" },
  landingTread: { counts: "each", rule: "one where the flight ends on a landing, in place of the landing nosing" },
  riser: { counts: "each", rule: "risers" },
  openSkirt: { counts: "each", rule: "one a side that is open" },
  closedSkirt: { counts: "each", rule: "one a side that is closed" },
  mitredReturn: { counts: "each", rule: "treads x open ends" },
  runPastRiser: { counts: "each", rule: "risers x open ends, where risers run past the skirt" },
  notch: { counts: "each", rule: "risers that run past and stand over a tread, all but the first, one at each open end" },
  scribedEnd: { counts: "each", rule: "treads x closed ends, each scribed to its skirt" },
  cove: { counts: "length", rule: "under every tread, skirt to skirt, and along every return" },
  screws: { counts: "each", rule: "four to a tread, from behind through the riser into the tread: common practice, no source" },
  nails: { counts: "each", rule: "six to a riser: common practice, no source" },
  adhesiveBead: { counts: "length", rule: "along every stringer under a tread and along its back" },
  finishArea: { counts: "area", rule: "tops and noses of treads, faces of risers" },
  protectionSheets: { counts: "each", rule: "finish area by sheets of 4 x 8 ft, in a stair in mm of 1220 x 2440 mm" },
} as const;

export type TakeoffItem = keyof typeof TAKEOFF_ITEMS;

/** The unit of a quantity, by the unit of the stair. */
export const TAKEOFF_UNITS = {
  in: { each: "each", length: "ft", area: "sq ft" },
  mm: { each: "each", length: "m", area: "sq m" },
} as const satisfies Readonly<Record<Unit, Readonly<Record<(typeof TAKEOFF_ITEMS)[TakeoffItem]["counts"], string>>>>;
