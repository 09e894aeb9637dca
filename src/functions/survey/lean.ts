import { lean } from "../../solver/survey/lean";
import { declare } from "../declare";

export const LEAN = declare({
  id: "LEAN",
  group: "Survey",
  says: "Lean of a surface in degrees, such as a skirt at the end of a tread.",
  parameters: {
    offset: {
      kind: "reading",
      sign: "any",
      each: true,
      says:
        "How far it is off square to the sub-tread, read along the nose; positive leans away from the piece going up, and leaves " +
        "its face longer.",
    },
    height: { kind: "reading", sign: "positive", each: true, says: "Height over which that was read, in the same unit." },
  },
  result: { kind: "angle", says: "Degrees; positive leans away from the piece going up." },
  problems: {},
  examples: [
    { given: { offset: 3, height: 4 }, gives: 36.86989764584402, from: "by hand: atan(3/4), the 3-4-5 triangle" },
    {
      given: { offset: -0.3, height: 10 },
      gives: -1.7183580016554572,
      from: "by hand: atan(-0.03), the angle of a fall of 0.3 in 10, by a pocket calculator",
    },
    { given: { offset: 1, height: 0 }, fails: "#VALUE!", says: "height: must be more than 0, got 0", from: "by hand: no height, no lean" },
  ],
  source:
    "Lean = atan(offset / height), along the nose. Stand a square on the sub-tread, not a level: where the sub-tread is high on " +
    "its right by some degrees, the right lean is the plumb lean plus them, the left lean less them. Read square to the skirt " +
    "instead of along the nose it is the tilt of the saw.",
  solve: ({ offset, height }) => lean(offset, height),
});
