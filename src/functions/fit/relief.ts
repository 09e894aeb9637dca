import { relief } from "../../solver/fit/back-bevel";
import { SAW_CAUTION } from "../caution";
import { declare } from "../declare";

export const RELIEF = declare({
  id: "RELIEF",
  group: "Fit",
  says: "Opening a back bevel leaves at the back of a piece, for adhesive.",
  parameters: {
    thickness: { kind: "reading", sign: "positive", each: true, says: "Thickness of the piece." },
    bevel: { kind: "angle", each: true, says: "Back bevel in degrees." },
  },
  result: { kind: "reading", says: "Opening at the back, in the unit of the thickness." },
  problems: {},
  examples: [
    { given: { thickness: 0.75, bevel: 45 }, gives: 0.75, from: "by hand: tan 45 deg = 1" },
    {
      given: { thickness: 0.75, bevel: 4 },
      gives: 0.05244510895763281,
      from: "by hand: 0.75 x tan 4 deg = 0.75 x 0.06992681, within the common 3 to 5 degrees",
    },
    {
      given: { thickness: 0.75, bevel: 95 },
      fails: "#VALUE!",
      says: "bevel: must be less than 90 degrees either way, got 95",
      from: "by hand: a bevel of 90 degrees has no end",
    },
  ],
  source: "Opening = thickness x tan(bevel).",
  caution: SAW_CAUTION,
  solve: ({ thickness, bevel }) => relief(thickness, bevel),
});
