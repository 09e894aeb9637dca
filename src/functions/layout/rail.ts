import { measure } from "../../solver/length/length";
import { rail } from "../../solver/layout/rail";
import { resolvedStair } from "../../solver/layout/resolved-stair";
import { flight } from "../../solver/layout/stair-skirt";
import { isProblem } from "../../solver/problem";
import { CAUTION } from "../caution";
import { declare, headings } from "../declare";
import { labelRows } from "../label-rows";
import { STAIR_PROBLEMS } from "../stair-problems";

const WANTS_HEIGHT = "give handrail height";

export const RAIL = declare({
  id: "RAIL",
  group: "Layout",
  says: "Handrail on the rake: length, cut angle, heights.",
  parameters: { stair: { kind: "stair", says: "The stair, or the result of LAYOUT; with `handrail height` for the heights." }, headings },
  result: {
    kind: "table",
    says: "One row per label, from the first nosing to the landing nosing.",
    columns: {
      label: { kind: "label", says: "What the value is." },
      value: { kind: "value", says: "The value, in the unit beside it." },
      unit: { kind: "text", says: "in, mm or deg." },
      note: { kind: "text", says: "What is wanted to find it." },
    },
  },
  problems: {
    ...STAIR_PROBLEMS,
    "no-total-rise": { cell: "#VALUE!", says: "total rise: is missing, empty or 0; give total rise with risers or max rise" },
    "no-run": { cell: "#VALUE!", says: "run: is missing, empty or 0; give run, total run or available run" },
    "single-rise": { cell: "#VALUE!", says: "risers: {risers} has no rake for a rail; give 2 or more" },
  },
  examples: [
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
          ["run", 8],
          ["handrail height", 35],
        ],
      },
      gives: [
        ["label", "value", "unit", "note"],
        ["rail length", 90, "in", ""],
        ["cut angle", 36.86989764584402, "deg", ""],
        ["height over the nosings", 35, "in", ""],
        ["square height", 28, "in", ""],
        ["height over the lower floor at the first nosing", 41, "in", ""],
        ["height over the upper floor at the landing nosing", 35, "in", ""],
      ],
      from: "by hand on the 3-4-5 triangle: 9 x 10; atan(6/8); 35; 35 x 8 / 10; 35 + 6 of the first rise; 35",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
          ["run", 8],
        ],
      },
      shows: [
        { label: "rail length", value: 90 },
        { label: "square height", value: "", note: "give handrail height" },
      ],
      from: "by hand: 9 x 10; no height is given",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
        ],
      },
      fails: "#VALUE!",
      says: "run: is missing, empty or 0; give run, total run or available run",
      from: "by hand: no run, no rake",
    },
  ],
  source: "The rail lies parallel to the line of the nosings: (risers - 1) x hypot(rise, run), cut at the pitch.",
  caution: CAUTION,
  solve: ({ stair }) => {
    const resolved = resolvedStair(stair.given);
    if (isProblem(resolved)) return resolved;
    const found = flight(resolved, stair.unit);
    if (isProblem(found)) return found;
    const height = resolved.handrailHeight && measure(resolved.handrailHeight, stair.unit);
    return labelRows(
      rail(found.rise, found.run, found.risers, height),
      {
        railLength: "reading",
        cutAngle: "angle",
        heightOverTheNosings: "reading",
        squareHeight: "reading",
        heightOverTheLowerFloorAtTheFirstNosing: "reading",
        heightOverTheUpperFloorAtTheLandingNosing: "reading",
      },
      {
        heightOverTheNosings: WANTS_HEIGHT,
        squareHeight: WANTS_HEIGHT,
        heightOverTheLowerFloorAtTheFirstNosing: WANTS_HEIGHT,
        heightOverTheUpperFloorAtTheLandingNosing: WANTS_HEIGHT,
      },
    );
  },
});
