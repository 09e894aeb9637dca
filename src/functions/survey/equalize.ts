import { lengthOf } from "../../solver/length/length";
import { equalizedRises } from "../../solver/survey/equalized-rises";
import { declare, headings } from "../declare";
import { LAYERS } from "../survey-arguments";

/** Half of the sixteenth to which a tape is read: common practice, no source. */
const LEAST_LOWERED = lengthOf(-1 / 32, "in");

export const EQUALIZE = declare({
  id: "EQUALIZE",
  group: "Survey",
  says: "Packing under each sub-tread that makes the finished rises equal.",
  parameters: {
    roughRises: {
      kind: "lengths",
      sign: "positive",
      badCells: "refuse",
      plausible: "rise",
      rows: 5_000,
      says: "Rough rises, sub-tread to sub-tread, bottom first; empty cells take no part.",
    },
    ...LAYERS,
    headings,
  },
  result: {
    kind: "table",
    says: "One row per rise from the bottom, then the least spread that packing alone can reach.",
    columns: {
      step: { kind: "label", says: "Rise, and the sub-tread on top of it." },
      asFound: { kind: "length", says: "Finished rise as framed; in the last row empty." },
      packing: {
        kind: "length",
        says: "What goes under the sub-tread; negative where the sub-tread is too high by so much. In the last row the least spread.",
      },
      unit: { kind: "unit", says: "in; mm where all lengths given are metric text." },
      note: { kind: "text", says: "Says what must come down; less than 1/32 in is within what a tape reads and is left." },
    },
  },
  problems: {},
  examples: [
    {
      given: { roughRises: [[7.5], [8], [7.75]], treadThickness: 1 },
      gives: [
        ["step", "as found", "packing", "unit", "note"],
        [1, 8.5, -0.75, "in", "must come down"],
        [2, 8, -1, "in", "must come down"],
        [3, 6.75, "", "in", "ends on the upper floor"],
        ["least spread", "", 1.75, "in", "the best that packing can reach with nothing taken down"],
      ],
      from:
        "by hand: total 23 1/4, rises of 7 3/4; heights 8 1/2 and 16 1/2 against 7 3/4 and 15 1/2; least spread max(7 3/4, 8 1/2, " +
        "8 1/4) - min(7 3/4, 14 3/4 / 2, 6 3/4)",
    },
    {
      given: { roughRises: [[6.75], [7.75], [8.75]], treadThickness: 1 },
      shows: [
        { step: 1, asFound: 7.75, packing: 0, note: "" },
        { step: 2, packing: 0 },
        { step: "least spread", packing: 0 },
      ],
      from: "by hand: finished rises of 7 3/4, 7 3/4, 7 3/4",
    },
    {
      given: { roughRises: [[6.77], [7.79], [8.69]], treadThickness: 1 },
      shows: [{ step: 1, packing: -0.02, note: "" }, { step: 2, packing: -0.06, note: "must come down" }],
      from: "by hand: rises of 23 1/4 / 3 = 7 3/4; heights 7.77 and 15.56 against 7 3/4 and 15 1/2; 0.02 is less than 1/32, 0.06 is not",
    },
    {
      given: { roughRises: [["x"]], treadThickness: 1 },
      fails: "#VALUE!",
      says: 'roughRises, row 1: read "x", which is not a length; write 7 5/8", 9\' 1 1/2" or "2781 mm"',
      from: "by hand: x is no length",
    },
  ],
  source: "Packing k = k x total rise / n less the height of sub-tread k with its tread on.",
  solve: ({ roughRises, treadThickness, lowerBuildUp, upperBuildUp }) => {
    const { steps, leastSpread } = equalizedRises(roughRises, treadThickness, lowerBuildUp, upperBuildUp);
    return [
      ...steps.map(({ step, asFound, packing }) => ({
        step,
        asFound,
        packing,
        note: packing === undefined ? "ends on the upper floor" : packing.lt(LEAST_LOWERED) ? "must come down" : "",
      })),
      { step: "least spread", packing: leastSpread, note: "the best that packing can reach with nothing taken down" },
    ];
  },
});
