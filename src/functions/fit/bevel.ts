import { bevel } from "../../solver/fit/back-bevel";
import { SAW_CAUTION } from "../caution";
import { declare } from "../declare";

export const BEVEL = declare({
  id: "BEVEL",
  group: "Fit",
  says: "Back bevel that leaves an opening at the back of a piece.",
  parameters: {
    thickness: { kind: "reading", sign: "positive", each: true, says: "Thickness of the piece." },
    opening: { kind: "reading", sign: "not negative", each: true, says: "Opening wanted at the back, in the same unit." },
  },
  result: { kind: "angle", says: "Back bevel in degrees." },
  problems: {},
  examples: [
    { given: { thickness: 0.75, opening: 0.75 }, gives: 45, from: "by hand: atan(1) = 45 deg" },
    { given: { thickness: 4, opening: 3 }, gives: 36.86989764584402, from: "by hand: atan(3/4), the 3-4-5 triangle" },
    {
      given: { thickness: 0, opening: 1 },
      fails: "#VALUE!",
      says: "thickness: must be more than 0, got 0",
      from: "by hand: no thickness, no bevel",
    },
  ],
  source: "Bevel = atan(opening / thickness).",
  caution: SAW_CAUTION,
  solve: ({ thickness, opening }) => bevel(thickness, opening),
});
