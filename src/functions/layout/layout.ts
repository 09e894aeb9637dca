import { isProblem } from "../../solver/problem";
import { stairLayout } from "../../solver/layout/stair-layout";
import { words } from "../../solver/words";
import { declare, headings } from "../declare";
import { STAIR_PROBLEMS } from "../stair-problems";

export const LAYOUT = declare({
  id: "LAYOUT",
  group: "Layout",
  says: "Rises, runs and stringer of a straight flight from what is known of it.",
  parameters: {
    stair: { kind: "stair", says: "Total rise with risers or max rise, and run, total run or available run; further labels as known." },
    headings,
  },
  result: {
    kind: "table",
    says: "One row per label, then every other label given; it goes into functions that take a stair as it stands.",
    columns: {
      label: { kind: "label", says: "What the value is." },
      value: { kind: "value", says: "The value, in the unit beside it." },
      unit: { kind: "text", says: "in, mm or deg." },
      assumed: { kind: "text", says: "What was assumed for it, or what is wanted to find it." },
    },
  },
  problems: {
    ...STAIR_PROBLEMS,
    "no-total-rise": { cell: "#VALUE!", says: "total rise: is missing, empty or 0; give total rise, finish floor to finish floor" },
    "no-run": { cell: "#VALUE!", says: "run: is missing, empty or 0; give run, total run or available run" },
  },
  examples: [
    {
      given: {
        stair: [
          ["total rise", 84],
          ["risers", 12],
          ["total run", 104.5],
        ],
      },
      shows: [
        { label: "unit rise", value: 7, unit: "in", assumed: "" },
        { label: "treads", value: 11 },
        { label: "run", value: 9.5, unit: "in" },
        { label: "nosing", value: 1.25, assumed: "assumed: common practice, no source" },
        { label: "2R+T", value: 23.5 },
      ],
      from:
        "Cyclopedia of Architecture, Carpentry and Building (Hodgson): 84 in in 12 risers is 7 in, 104 1/2 over 11 treads is 9 " +
        "1/2; by hand 2 x 7 + 9.5 = 23.5",
    },
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["run", 10],
        ],
      },
      shows: [
        { label: "risers", value: 14 },
        { label: "total run", value: 130 },
        { label: "board depth", value: 11.25 },
        { label: "drop", value: 1 },
      ],
      from: "by hand: 107.5 / 7.75 = 13.87, so 14; 13 treads x 10; 10 + 1 1/4; tread 1 less floor 0",
    },
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 10],
          ["total run", 126],
        ],
      },
      fails: "#VALUE!",
      says: 'run: 10" disagrees with 9.6923 in, the total run over the treads; they may differ by 1/64" at most',
      from: "by hand: 126 / 13 = 9.6923",
    },
  ],
  source:
    "Plane geometry of a straight flight: unit rise = total rise / risers, total run = run x treads, board depth = run + nosing, " +
    "pitch = atan(unit rise / run), slope length = hypot(unit rise, run), throat = stringer board - unit rise x run / slope length, " +
    "2R+T = 2 x unit rise + run.",
  solve: ({ stair }) => {
    const lines = stairLayout(stair.given, stair.unit);
    return isProblem(lines)
      ? lines
      : lines.map(({ key, kind, value, assumed }) => ({
          label: words(key),
          value: value === undefined ? undefined : { kind, value },
          assumed,
        }));
  },
});
