import { pitch } from "../../solver/layout/pitch";
import { declare } from "../declare";

export const PITCH = declare({
  id: "PITCH",
  group: "Layout",
  says: "Angle of a stair in degrees.",
  parameters: {
    rise: { kind: "reading", sign: "positive", each: true, says: "Rise of one step, or of the whole flight." },
    run: { kind: "reading", sign: "positive", each: true, says: "Run of one step, or of the whole flight, in the same unit." },
  },
  result: { kind: "angle", says: "Degrees from level." },
  problems: {},
  examples: [
    {
      given: { rise: 8.75, run: 8.75 },
      gives: 45,
      from: "Washington Administrative Code 296-24-76511 Table D-1: 8 3/4 over 8 3/4 is 45 deg 00 min",
    },
    {
      given: { rise: 3, run: 4 },
      gives: 36.86989764584402,
      from: "by hand: atan(3/4) = 36.8698976 deg, the 3-4-5 triangle (Vitruvius IX.0.8)",
    },
    { given: { rise: "180 mm", run: "280 mm" }, gives: 32.73522627210761, from: "by hand: atan(180/280) = atan(9/14) = 32.7352 deg" },
    {
      given: { rise: 180, run: "280 mm" },
      fails: "#VALUE!",
      says:
        'rise: 180 has no unit and counts as inches, but run is metric, "280 mm"; write all lengths in one unit, here "180 mm" if ' +
        "it is millimetres",
      from: "by definition: 180 in over 280 mm would be 86.5 deg, a wall",
    },
    {
      given: { rise: -7, run: 10 },
      fails: "#VALUE!",
      says: "rise: must be more than 0, got -7",
      from: "common practice, no source: a rise is more than 0",
    },
  ],
  source: "Pitch = atan(rise / run).",
  solve: ({ rise, run }) => pitch(rise, run),
});
