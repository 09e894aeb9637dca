import { notch } from "../../solver/fit/notch";
import { CAUTION, SAW_CAUTION } from "../caution";
import { declare } from "../declare";

export const NOTCH = declare({
  id: "NOTCH",
  group: "Fit",
  says: "Notch in a riser's lower corner at the open end, so that the tread and its return run back under it.",
  parameters: {
    skirtThickness: { kind: "length", sign: "not negative", says: "Thickness of the open skirt; 0 where only the return runs back." },
    runPast: { kind: "length", sign: "not negative", says: "How far the riser runs past the skirt." },
    lap: { kind: "length", sign: "not negative", says: "How far the riser laps below the top of the tread." },
    clearance: {
      kind: "length",
      sign: "not negative",
      default: 0,
      says: "Room for the tread, added once to the width and once to the height.",
    },
  },
  result: {
    kind: "row",
    says: "Two cells: width and height of the notch.",
    columns: {
      width: { kind: "length", says: "Along the riser, from its end." },
      height: { kind: "length", says: "From the riser's lower edge." },
    },
  },
  problems: {},
  examples: [
    { given: { skirtThickness: 0.75, runPast: 0.25, lap: 0.25 }, gives: [[1, 0.25]], from: "by hand: 3/4 + 1/4 = 1 wide, 1/4 high" },
    {
      given: { skirtThickness: 0, runPast: "1/4", lap: "1/4", clearance: "1/32" },
      gives: [[0.28125, 0.28125]],
      from: "by hand: 1/4 + 1/32 = 9/32 both ways",
    },
    {
      given: { skirtThickness: 0.75, runPast: -0.25, lap: 0.25 },
      fails: "#VALUE!",
      says: "runPast: must be 0 or more, got -0.25",
      from: "common practice, no source: a riser that stops short has no notch",
    },
  ],
  source: "Width = skirt thickness + run past + clearance, height = lap + clearance.",
  caution: `${CAUTION} ${SAW_CAUTION}`,
  solve: ({ skirtThickness, runPast, lap, clearance }) => ({ ...notch(skirtThickness, runPast, lap, clearance) }),
});
