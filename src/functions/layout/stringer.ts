import { stringer } from "../../solver/layout/stringer";
import { STAIR_LABELS } from "../../solver/stair-labels";
import { declare, headings, unit } from "../declare";
import { labelRows } from "../label-rows";

export const STRINGER = declare({
  id: "STRINGER",
  group: "Layout",
  says: "Length, throat, drop and cuts of a cut stringer.",
  parameters: {
    rise: { kind: "reading", sign: "positive", plausible: "rise", says: "Unit rise, finished." },
    run: { kind: "reading", sign: "positive", plausible: "run", says: "Run, nosing to nosing." },
    risers: { kind: "count", sign: "positive", least: 2, says: "Number of risers; a single rise needs no stringer." },
    boardWidth: { kind: "reading", sign: "positive", says: "Actual width of the board." },
    treadThickness: {
      kind: "reading",
      sign: "not negative",
      default: STAIR_LABELS.treadThickness.default.inches,
      says: "Thickness of the finished tread.",
    },
    lowerBuildUp: {
      kind: "reading",
      sign: "not negative",
      default: STAIR_LABELS.lowerBuildUp.default.inches,
      says: "Floor still to be laid at the bottom.",
    },
    upperBuildUp: {
      kind: "reading",
      sign: "not negative",
      default: STAIR_LABELS.upperBuildUp.default.inches,
      says: "Floor still to be laid at the top.",
    },
    unit,
    headings,
  },
  result: {
    kind: "table",
    says: "One row per label; the upper floor serves as the last tread.",
    columns: {
      label: { kind: "label", says: "length, throat, drop, hang, plumb cut, level cut." },
      value: { kind: "value", says: "The value, in the unit beside it." },
      unit: { kind: "text", says: "in, mm or deg." },
    },
  },
  problems: {},
  examples: [
    {
      given: { rise: 6, run: 8, risers: 10, boardWidth: 11.25 },
      gives: [
        ["label", "value", "unit"],
        ["length", 89.4, "in"],
        ["throat", 6.45, "in"],
        ["drop", 1, "in"],
        ["hang", 7, "in"],
        ["plumb cut", 36.86989764584402, "deg"],
        ["level cut", 53.13010235415598, "deg"],
      ],
      from: "by hand on the 3-4-5 triangle (Vitruvius IX.0.8): 9 x 10 - 1 x 6 / 10; 11 1/4 - 6 x 8 / 10; 1 - 0; 6 - 0 + 1; atan(6/8)",
    },
    {
      given: { rise: 7.5, run: 10, risers: 1, boardWidth: 11.25 },
      fails: "#VALUE!",
      says: "risers: must be 2 or more, got 1",
      from: "by hand: one rise has no step to cut",
    },
  ],
  source: "Coordinates of the cuts along the slope; the foot is dropped by tread less floor (The Carpenters' Guide).",
  caution: "What a stringer may carry is for a licensed engineer or the code's tables.",
  solve: ({ rise, run, risers, boardWidth, treadThickness, lowerBuildUp, upperBuildUp }) =>
    labelRows(stringer({ rise, run, risers, boardWidth, treadThickness, lowerBuildUp, upperBuildUp }), {
      length: "reading",
      throat: "reading",
      drop: "reading",
      hang: "reading",
      plumbCut: "angle",
      levelCut: "angle",
    }),
});
