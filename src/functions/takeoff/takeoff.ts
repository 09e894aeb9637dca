import { resolvedStair } from "../../solver/layout/resolved-stair";
import { isProblem } from "../../solver/problem";
import { takeoff } from "../../solver/takeoff/takeoff";
import { declare, headings } from "../declare";
import { STAIR_PROBLEMS } from "../stair-problems";
import { allowances } from "../tables";

export const TAKEOFF = declare({
  id: "TAKEOFF",
  group: "Takeoff and bid",
  says: "Everything a stair takes, counted, with the fussy details as items of their own.",
  parameters: {
    stair: { kind: "stair", says: "The stair, or the result of LAYOUT with width, open end and run past." },
    allowances: {
      kind: "table",
      table: allowances,
      badRows: "refuse",
      optional: true,
      says: "Shares to add by item.",
      without: "Left out: none.",
    },
    headings,
  },
  result: {
    kind: "table",
    says: "One row per item that there is any of; the items are HOURS' items, and go into HOURS and EXTEND as they stand.",
    columns: {
      item: { kind: "label", says: "Item." },
      quantity: { kind: "number", says: "How many, in the row's unit." },
      unit: { kind: "text", says: "each, ft or sq ft; for a stair in mm each, m or sq m." },
      howItWasCounted: { kind: "text", says: "The count with its numbers, in the unit of the stair." },
      note: { kind: "text", says: "Why a row has no count, or what goes with it." },
    },
  },
  problems: {
    ...STAIR_PROBLEMS,
    "no-total-rise": { cell: "#VALUE!", says: "total rise: is missing, empty or 0; give total rise with risers or max rise" },
    "no-run": { cell: "#VALUE!", says: "run: is missing, empty or 0; give run, total run or available run" },
    "no-width": { cell: "#VALUE!", says: "width: is missing, empty or 0; give width, skirt to skirt" },
    "allowance-for-nothing": { cell: "#N/A", says: 'allowances, item: "{item}" is not a takeoff item{nearest}' },
    "two-allowances": { cell: "#VALUE!", says: "allowances, {item}: has two allowances, {first} and {second}; keep one" },
  },
  examples: [
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 10],
          ["width", 36.75],
          ["open end", "right"],
          ["run past", 0.25],
        ],
      },
      shows: [
        { item: "tread with one return", quantity: 13, unit: "each", howItWasCounted: "13 treads = 13" },
        { item: "screws", quantity: 52, howItWasCounted: "13 treads x 4 = 52; 2 in screws leave 1.25 in in the tread" },
        { item: "mitred return", quantity: 13, howItWasCounted: "13 treads x 1 = 13" },
        { item: "run past riser", quantity: 14 },
        { item: "notch", quantity: 13, howItWasCounted: "(14 risers - 1) x 1 = 13" },
        { item: "cove", quantity: 52, unit: "ft", howItWasCounted: "13 treads x (36.75 + 1 x 11.25) in / 12 = 52 ft" },
        { item: "adhesive bead", quantity: 72.3125, unit: "ft" },
      ],
      from:
        "by hand: 13 treads under a floor that is the last; 4 screws each; no tread runs under the first riser; 13 x 48 / 12; 13 x " +
        "(30 + 36.75) / 12",
    },
    {
      given: {
        stair: [
          ["unit", "mm"],
          ["total rise", 2750],
          ["risers", 15],
          ["run", 250],
          ["nosing", 25],
          ["riser thickness", 18],
          ["width", 920],
          ["open end", "right"],
          ["run past", 6],
        ],
      },
      shows: [
        { item: "tread with one return", quantity: 14 },
        { item: "cove", quantity: 16.73, unit: "m", howItWasCounted: "14 treads x (920 + 1 x 275) mm / 1000 = 16.73 m" },
        { item: "screws", quantity: 56, howItWasCounted: "14 treads x 4 = 56; 50 mm screws leave 32 mm in the tread" },
        { item: "adhesive bead", quantity: 23.38, unit: "m" },
        {
          item: "finish area",
          quantity: 6.072,
          unit: "sq m",
          howItWasCounted: "(14 x 275 + 15 x 183.33) x 920 sq mm / 1000000 = 6.07 sq m",
        },
        { item: "protection sheets", quantity: 3, howItWasCounted: "6.07 sq m / 2.9768 for a sheet of 1220 x 2440 mm, rounded up = 3" },
      ],
      from:
        "by hand: 14 x (920 + 275) = 16,730; 50 - 18; 14 x (750 + 920) = 23,380; (14 x 275 + 2,750) x 920 = 6,072,000; 6.072 / " +
        "2.9768 = 2.04",
    },
    {
      given: {
        stair: [
          ["total rise", 52.5],
          ["risers", 7],
          ["run", 10],
          ["width", 36],
          ["landing tread", 5.5],
        ],
      },
      shows: [
        { item: "tread without return", quantity: 6 },
        { item: "landing tread", quantity: 1, unit: "each", howItWasCounted: "1 at the landing on top of the flight = 1" },
        { item: "riser", quantity: 7 },
      ],
      from: "by hand: six treads and the landing, whose nosing piece is no tread",
    },
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 10],
          ["width", 36.75],
        ],
        allowances: [
          ["item", "allowance"],
          ["screws", 0.1],
        ],
      },
      shows: [
        { item: "screws", quantity: 58, howItWasCounted: "13 treads x 4 = 52; 2 in screws leave 1.25 in in the tread, and 10 % = 58" },
      ],
      from: "by hand: 52 x 1.1 = 57.2, so 58",
    },
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 10],
        ],
        allowances: [
          ["item", "allowance"],
          ["skrews", 0.1],
        ],
      },
      fails: "#N/A",
      says: 'allowances, item: "skrews" is not a takeoff item; nearest is "screws"',
      from: "by hand: one letter from screws",
    },
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 10],
        ],
        allowances: [
          ["item", "allowance"],
          ["screws", 10],
        ],
      },
      fails: "#VALUE!",
      says: "allowance in row 2 (screws): 10 is 1000 %, write 10% or 0.1",
      from: "by hand: ten times as many screws again is no allowance",
    },
  ],
  source:
    "Counts of the trade: common practice, no source, each with its numbers in the row. Pilot holes: US Army EN5155 and Wood " +
    "Handbook, FPL-GTR-190, chapter 8, with 90 % of the root in hardwood from memory. What nails and screws hold in withdrawal is " +
    "out of scope.",
  solve: ({ stair, allowances: shares }) => {
    const resolved = resolvedStair(stair.given);
    if (isProblem(resolved)) return resolved;
    const lines = takeoff(resolved, shares ?? [], stair.unit);
    return isProblem(lines) ? lines : lines.map((line) => ({ ...line }));
  },
});
