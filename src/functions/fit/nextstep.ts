import { closureLimits } from "../../solver/fit/closure-limits";
import { nextStep } from "../../solver/fit/next-step";
import { declare } from "../declare";
import { SKIRT_PROBLEMS } from "../skirt-problems";
import { MISREAD } from "./misread";

export const NEXTSTEP = declare({
  id: "NEXTSTEP",
  words: "next step",
  group: "Fit",
  says: "What the next tread will read, before the tape is on it: a reading far from it is asked again, a blank can be chosen ahead.",
  parameters: MISREAD.parameters,
  result: {
    kind: "table",
    says: "One row: the tread over the last one read, on the same lines, with its run and rise taken as the flight's middle ones.",
    columns: {
      step: { kind: "label", says: "The step after the last one." },
      back: { kind: "reading", says: "Along the riser face, skirt to skirt." },
      front: { kind: "reading", says: "Along the front edge of the sub-tread." },
      leftAngle: { kind: "angle", says: "Left end from square, positive where the front is longer." },
      rightAngle: { kind: "angle", says: "Right end, alike." },
      giveOrTake: {
        kind: "reading",
        says: "What 95 in 100 readings of back and front are within, either way; of rough skirts nine in ten.",
      },
      unit: { kind: "unit", says: "Unit of back, front and give or take; the angles are in degrees." },
    },
  },
  problems: SKIRT_PROBLEMS,
  examples: [
    {
      given: {
        treads: [
          ["step", "run", "back", "front", "diagonal", "second diagonal"],
          [1, 12, 35, 35, 37, 37],
          [2, 12, 35, 35, 37, 37],
          [3, 12, 35, 35, 37, 37],
          [4, 12, 35, 35, 37, 37],
        ],
      },
      shows: [{ step: 5, back: 35, front: 35, leftAngle: 0, rightAngle: 0, unit: "in" }],
      from: "by hand: skirts 35 apart and square all the way, 12-35-37",
    },
    {
      given: {
        treads: [
          ["step", "run", "back", "front", "diagonal"],
          [1, 10, 36, 36, "37 3/8"],
        ],
      },
      fails: "#N/A",
      says: "treads: it takes 4 with back, front and a diagonal to tell the next one, got 1",
      from: "by hand: one of four",
    },
  ],
  source:
    "The planes and waves of MISREAD run on by one step (best linear unbiased prediction), over all three grades of skirt; doubtful " +
    "readings put right on paper first.",
  solve: ({ treads, risers, tape, unit: used }) => {
    const found = nextStep({ treads, risers: risers ?? [], unit: used, closure: closureLimits(tape, used) });
    return "problem" in found ? found : [found];
  },
});
