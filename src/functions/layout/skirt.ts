import { resolvedStair } from "../../solver/layout/resolved-stair";
import { stairSkirt } from "../../solver/layout/stair-skirt";
import { isProblem } from "../../solver/problem";
import { declare, headings } from "../declare";
import { labelRows } from "../label-rows";
import { STAIR_PROBLEMS } from "../stair-problems";

export const SKIRT = declare({
  id: "SKIRT",
  group: "Layout",
  says: "Boards for the open and the closed skirt: width, length, cuts.",
  parameters: { stair: { kind: "stair", says: "The stair, or the result of LAYOUT." }, headings },
  result: {
    kind: "table",
    says: "One row per label. The closed skirt runs from `skirt foot` before the first nosing to `skirt head` past the landing nosing.",
    columns: {
      label: { kind: "label", says: "What the value is." },
      value: { kind: "value", says: "The value, in the unit beside it." },
      unit: { kind: "text", says: "in, mm or deg." },
    },
  },
  problems: {
    ...STAIR_PROBLEMS,
    "no-total-rise": { cell: "#VALUE!", says: "total rise: is missing, empty or 0; give total rise with risers or max rise" },
    "no-run": { cell: "#VALUE!", says: "run: is missing, empty or 0; give run, total run or available run" },
    "single-rise": { cell: "#VALUE!", says: "risers: {risers} has no flight to skirt; give 2 or more" },
  },
  examples: [
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
          ["run", 8],
          ["nosing", 1],
          ["skirt shows", 2],
        ],
      },
      shows: [
        { label: "open skirt width", value: 11.25, unit: "in" },
        { label: "open skirt length", value: 89.4 },
        { label: "closed skirt width", value: 8.2 },
        { label: "closed skirt length", value: 95.1 },
        { label: "plumb cut", value: 36.86989764584402, unit: "deg" },
      ],
      from:
        "by hand on the 3-4-5 triangle: 6 x 8 / 10 + (11.25 - 4.8); 9 x 10 - 0.6; 2 + (9 x 6 + 1 x 8) / 10 = 8.2; 72 x 10 / 8 + " +
        "6/8 x (2 + 4.8) = 95.1",
    },
    {
      given: {
        stair: [
          ["total rise", 7],
          ["run", 10],
        ],
      },
      fails: "#VALUE!",
      says: "risers: 1 has no flight to skirt; give 2 or more",
      from: "by hand: 7 in is one rise",
    },
  ],
  source: "Coordinates of the nosing line, the lowest back corner of a tread below it, and plumb ends with a level cut on the floor.",
  solve: ({ stair }) => {
    const resolved = resolvedStair(stair.given);
    if (isProblem(resolved)) return resolved;
    const found = stairSkirt(resolved, stair.unit);
    return isProblem(found)
      ? found
      : labelRows(found, {
          openSkirtWidth: "reading",
          openSkirtLength: "reading",
          closedSkirtWidth: "reading",
          closedSkirtLength: "reading",
          plumbCut: "angle",
          levelCut: "angle",
        });
  },
});
