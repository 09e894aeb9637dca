/** What a takeoff counts, in the order of the work, each in its unit. HOURS prices the same items. */
export const TAKEOFF_ITEMS = {
  treadWithoutReturn: { unit: "each", rule: "treads between two skirts" },
  treadWithOneReturn: { unit: "each", rule: "treads with one open end" },
  treadWithTwoReturns: { unit: "each", rule: "treads with two open ends" },
  landingNosing: { unit: "each", rule: "one where the upper floor is the last tread" },
  riser: { unit: "each", rule: "risers" },
  openSkirt: { unit: "each", rule: "one a side that is open" },
  closedSkirt: { unit: "each", rule: "one a side that is closed" },
  mitredReturn: { unit: "each", rule: "treads x open ends" },
  runPastRiser: { unit: "each", rule: "risers x open ends, where risers run past the skirt" },
  notch: { unit: "each", rule: "risers that run past and stand over a tread, all but the first, one at each open end" },
  scribedEnd: { unit: "each", rule: "treads x closed ends, each scribed to its skirt" },
  cove: { unit: "ft", rule: "under every tread, skirt to skirt, and along every return" },
  screws: { unit: "each", rule: "four to a tread through the riser back: common practice, no source" },
  nails: { unit: "each", rule: "six to a riser: common practice, no source" },
  adhesiveBead: { unit: "ft", rule: "along every stringer under a tread and along its back" },
  finishArea: { unit: "sq ft", rule: "tops and noses of treads, faces of risers" },
  protectionSheets: { unit: "each", rule: "finish area by sheets of 4 x 8 ft" },
} as const;

export type TakeoffItem = keyof typeof TAKEOFF_ITEMS;
