import { storyPole } from "../../solver/layout/story-pole";
import { declare, headings, unit } from "../declare";

export const STORYPOLE = declare({
  id: "STORYPOLE",
  words: "story pole",
  group: "Layout",
  says: "Marks of a story pole that never accumulate rounding.",
  parameters: {
    totalRise: { kind: "length", sign: "positive", plausible: "total rise", says: "Finish floor to finish floor, measured plumb." },
    risers: { kind: "count", sign: "positive", most: 200, says: "Number of risers." },
    denominator: {
      kind: "count",
      sign: "positive",
      most: 64,
      optional: true,
      says: "Divisions of the unit the marks are rounded to.",
      without: "Left out: 16 of an inch, 1 of a millimetre.",
    },
    below: {
      kind: "length",
      sign: "not negative",
      default: 0,
      says: "How far the marks lie below the finished treads; the tread thickness, to mark sub-treads.",
    },
    unit,
    headings,
  },
  result: {
    kind: "table",
    says: "One row per riser, from the bottom.",
    columns: {
      riser: { kind: "count", says: "Riser, counted from the bottom." },
      height: { kind: "length", says: "Exact height of the finished tread over the lower floor." },
      mark: { kind: "length", says: "Where the pole is marked, rounded from the exact height." },
      riseBetweenMarks: { kind: "length", says: "From the mark below, the first from the floor." },
      note: { kind: "text", says: "With nothing below, says when rounding moves the last mark off the total rise." },
    },
  },
  problems: {
    "mark-below-floor": {
      cell: "#VALUE!",
      says: "below: {below} is as much as a rise of {rise}; the first mark would lie under the floor",
    },
  },
  examples: [
    {
      given: { totalRise: 31, risers: 4 },
      gives: [
        ["riser", "height", "mark", "rise between marks", "note"],
        [1, 7.75, 7.75, 7.75, ""],
        [2, 15.5, 15.5, 7.75, ""],
        [3, 23.25, 23.25, 7.75, ""],
        [4, 31, 31, 7.75, ""],
      ],
      from: "by hand: 31 / 4 = 7.75",
    },
    {
      given: { totalRise: 23, risers: 3, denominator: 8, below: 1, headings: false },
      gives: [
        [1, 7.666666666666667, 6.625, 6.625, ""],
        [2, 15.333333333333334, 14.375, 7.75, ""],
        [3, 23, 22, 7.625, ""],
      ],
      from: "by hand: 23/3 - 1 = 6 2/3, nearest 1/8 is 6 5/8; 46/3 - 1 = 14 1/3, nearest 14 3/8; 23 - 1 = 22",
    },
    {
      given: { totalRise: 31, risers: 4, below: 8 },
      fails: "#VALUE!",
      says: 'below: 8" is as much as a rise of 7 3/4"; the first mark would lie under the floor',
      from: "by hand: 7 3/4 - 8 is under 0",
    },
  ],
  source: "Height = riser x total rise / risers; mark = height - below, rounded once from the exact height.",
  solve: ({ totalRise, risers, denominator, below, unit: used }) => storyPole(totalRise, risers, denominator, below, used),
});
