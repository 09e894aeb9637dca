import { gap } from "../../solver/fit/gap";
import { declare } from "../declare";

export const GAP = declare({
  id: "GAP",
  group: "Fit",
  says: "Gap at the back and at the front of an end that was cut short or at the wrong angle.",
  parameters: {
    lengthError: { kind: "reading", sign: "any", says: "How much too short the piece was cut; negative = too long." },
    angleError: { kind: "angle", says: "Degrees the end was cut past the wanted angle, positive where the front came out too long." },
    depth: { kind: "reading", sign: "positive", says: "Depth of the piece." },
  },
  result: {
    kind: "row",
    says: "Two cells: gap at the back and at the front; negative = too tight.",
    columns: { back: { kind: "reading", says: "Gap at the back." }, front: { kind: "reading", says: "Gap at the front." } },
  },
  problems: {},
  examples: [
    { given: { lengthError: 0.0625, angleError: 0, depth: 11.25 }, gives: [[0.0625, 0.0625]], from: "by hand: 1/16 short all along" },
    {
      given: { lengthError: 0, angleError: 1, depth: 10 },
      gives: [[0, -0.1745506493]],
      from: "by hand: 10 x tan 1 deg = 0.17455, the front is too tight",
    },
    {
      given: { lengthError: 0, angleError: 1, depth: 0 },
      fails: "#VALUE!",
      says: "depth: must be more than 0, got 0",
      from: "by hand: no depth, no front",
    },
  ],
  source: "Back = length error, front = length error - depth x tan(angle error).",
  solve: ({ lengthError, angleError, depth }) => ({ ...gap(lengthError, angleError, depth) }),
});
