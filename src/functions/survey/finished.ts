import { finishedRises } from "../../solver/survey/finished-rises";
import { declare } from "../declare";
import { LAYERS } from "../survey-arguments";

export const FINISHED = declare({
  id: "FINISHED",
  group: "Survey",
  says: "Finished rises from rough ones, after treads and floors go on.",
  parameters: {
    roughRises: {
      kind: "lengths",
      sign: "positive",
      plausible: "rise",
      badCells: "answer",
      says: "Rough rises, sub-tread to sub-tread, bottom first; empty cells take no part.",
    },
    ...LAYERS,
  },
  result: { kind: "lengths", shapeOf: "roughRises", says: "Finished rises, in the shape of the rough ones." },
  problems: {},
  examples: [
    {
      given: { roughRises: [[7.6875], [7.6875], [7.5625]], treadThickness: 1, lowerBuildUp: 0.75, upperBuildUp: 0.75 },
      gives: [[7.9375], [7.6875], [7.3125]],
      from: "by hand: 7 11/16 + 1 - 3/4 = 7 15/16; 7 11/16 stays; 7 9/16 + 3/4 - 1 = 7 5/16",
    },
    {
      given: { roughRises: [[7.5]], treadThickness: 1, upperBuildUp: 0.5 },
      gives: [[8]],
      from: "by hand: a single rise gains the upper floor alone, 7 1/2 + 1 - 1 + 1/2",
    },
    {
      given: { roughRises: [[7.5], [7.5]], treadThickness: -1 },
      fails: "#VALUE!",
      says: "treadThickness: must be 0 or more, got -1",
      from: "common practice, no source: a thickness is not negative",
    },
  ],
  source: "First = rough + tread - lower floor, last = rough + upper floor - tread, the others stay.",
  solve: ({ roughRises, treadThickness, lowerBuildUp, upperBuildUp }) =>
    finishedRises(roughRises, treadThickness, lowerBuildUp, upperBuildUp),
});
