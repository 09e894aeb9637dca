import { packing } from "../../solver/survey/packing";
import { declare, headings } from "../declare";

export const PACKING = declare({
  id: "PACKING",
  group: "Survey",
  says: "Packing that brings low or hollow points up to one line.",
  parameters: {
    readings: {
      kind: "lengths",
      sign: "any",
      badCells: "refuse",
      says: "Gaps under a straightedge, or heights over any level, one a stringer from left to right; an empty cell is a reading of 0.",
    },
    kind: { kind: "choice", options: ["gap", "height"], default: "gap", says: "What the readings are." },
    setback: {
      kind: "length",
      sign: "not negative",
      default: 0,
      says: "How much lower the points between the ends are left, so that a middle stringer never holds a piece proud.",
    },
    headings,
  },
  result: {
    kind: "table",
    says: "One row per reading.",
    columns: {
      point: { kind: "count", says: "Reading, counted from the first." },
      reading: { kind: "length", says: "The reading." },
      packing: { kind: "length", says: "What goes under it." },
      unit: { kind: "unit", says: "in; mm where all lengths given are metric text." },
    },
  },
  problems: {},
  examples: [
    {
      given: { readings: [[0], [0.25], [0.125]] },
      gives: [
        ["point", "reading", "packing", "unit"],
        [1, 0, 0, "in"],
        [2, 0.25, 0.25, "in"],
        [3, 0.125, 0.125, "in"],
      ],
      from: "by hand: the straightedge rests on the first point, the gaps are the packing",
    },
    {
      given: { readings: [[3], [3.25], [3.0625]], kind: "height", setback: 0.0625, headings: false },
      gives: [
        [1, 3, 0.3125, "in"],
        [2, 3.25, 0, "in"],
        [3, 3.0625, 0.25, "in"],
      ],
      from: "by hand: the middle point counts 3 1/4 + 1/16 = 3 5/16; 3 5/16 - 3, 3 5/16 - 3 5/16, 3 5/16 - 3 1/16",
    },
    {
      given: { readings: [["0 mm"], ["6 mm"], ["3 mm"]], setback: "1 mm", headings: false },
      gives: [
        [1, 0, 0, "mm"],
        [2, 6, 5, "mm"],
        [3, 3, 3, "mm"],
      ],
      from: "by hand: the ends stand at 0 and -3, the middle point counts -6 + 1 = -5; the line is the highest, 0",
    },
    {
      given: { readings: [[0]], kind: "slope" },
      fails: "#VALUE!",
      says: 'kind: "slope" is not known; write gap or height',
      from: "by hand: slope is no slip of gap or height",
    },
  ],
  source:
    "The line is the highest of the ends and of the others with their setback; packing is what a point lies under it. The middle " +
    "stringer stands slightly back: common practice, no source.",
  solve: ({ readings, kind, setback }) =>
    packing(readings, kind, setback).map((under, index) => ({ point: index + 1, reading: readings[index], packing: under })),
});
