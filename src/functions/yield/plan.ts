import { isProblem } from "../../solver/problem";
import { planSummary } from "../../solver/yield/plan-summary";
import { rippingSummary } from "../../solver/yield/ripped/ripping-lists";
import { sheetSummary } from "../../solver/yield/sheets/sheet-summary";
import { isFailed } from "../cells";
import { declare } from "../declare";
import { type PlannedWood, plannedWood, WOOD, WOOD_PROBLEMS } from "../planned-wood";

/** The sofa of a published woodworking case, with its lumber prices. */
const SOFA = [[72, 6], [70.75, 1], [70.5, 3], [28.5, 1], [25.5, 10], [12.5, 1]] as const;
const LUMBER = [
  ["length", "price"],
  [36, 1.68], [48, 1.86], [72, 2.57], [84, 2.65], [96, 2.92], [120, 3.67], [144, 4.4], [168, 5.14], [192, 6.92], [216, 8.62], [240, 10.4],
] as const;

/** Pieces and boards of which some are cheaper ripped first and some crosscut first. Invented. */
const MIXED = [["label", "length", "width", "quantity"], ["riser", 40, 7.25, 3], ["skirt", 72, 4, 1], ["block", 20, 3, 2]] as const;
const WIDE = [
  ["label", "length", "width", "price", "available"],
  ["A", 84, 12, 60, 1],
  ["B", 60, 8, 30, 1],
  ["C", 72, 8, 40, 1],
  ["D", 60, 12, 52, 1],
] as const;
const BOTH_WAYS =
  "by hand: A ripped holds two risers, 80 1/8 of 84, and the skirt beside them, 7 1/4 + 1/8 + 4 of 12; C crosscut holds the " +
  "third and two " +
  "blocks of 3 across 8 in a strip of 20, 60 1/8 of 72: 60 + 40; by every way to lay seven pieces on four boards";

const summaryOf = (wood: PlannedWood) => {
  if (wood.of === "boards") return rippingSummary(wood.job, wood.plan);
  return wood.of === "sheets" ? sheetSummary(wood.job, wood.plan) : planSummary(wood.job, wood.plan);
};

export const PLAN = declare({
  id: "PLAN",
  group: "Cut plan",
  says: "What a cutting plan costs, what it wastes, and how good it is proven to be.",
  parameters: WOOD,
  result: {
    kind: "table",
    says:
      "Cost, sticks or sheets, yield, lowest possible cost (no plan costs less), most still to save (the share of the cost a better plan " +
      "could save at most), verdict; offcuts where `keep` is given. Of a tally boards in place of sticks, yield by area, and board " +
      "feet of the boards cut, as measured; pieces from a better grade, those cut from another grade than their own; boards left.",
    columns: {
      label: { kind: "label", says: "What the row tells." },
      value: { kind: "value", says: "Its value; yield and most still to save are rates." },
    },
  },
  problems: WOOD_PROBLEMS,
  examples: [
    {
      given: {
        pieces: [
          [36, 2],
          [20, 1],
        ],
        stock: [[96, 24.5]],
        trim: 0.5,
        keep: 2.5,
      },
      gives: [
        ["label", "value"],
        ["cost", 24.5],
        ["sticks", 1],
        ["yield", 0.9583333333],
        ["lowest possible cost", 24.5],
        ["most still to save", 0],
        ["verdict", "best possible (proven)"],
        ["offcuts kept", 1],
        ["offcut length", 2.625],
      ],
      from: "by hand: one stick is the least there is; 92 / 96 = 0.958333; 95 - 92 - 3/8 = 2 5/8 is more than the 2 1/2 kept",
    },
    {
      given: { pieces: SOFA, stock: LUMBER },
      shows: [{ label: "cost", value: 32.28 }],
      from: "Woodworking: problem data, MO-Book notebook: 32.28 with a kerf of 1/8, printed, and proved to be the least",
    },
    {
      given: { pieces: SOFA, stock: LUMBER, kerf: 0 },
      shows: [{ label: "cost", value: 31.23 }],
      from: "the same case without kerf: 31.23, proved by an integer program over all patterns",
    },
    {
      given: {
        pieces: [
          [7, 3],
          [6, 2],
          [4, 6],
          [3, 1],
        ],
        stock: [
          ["length", "price", "available"],
          [15, 15, 3],
          [10, 10, 3],
        ],
        kerf: 0,
      },
      shows: [
        { label: "cost", value: 60 },
        { label: "yield", value: 1 },
        { label: "verdict", value: "best possible (proven)" },
      ],
      from: "CBE 40455 notebook 05.07 Stock Cutting: 60 of stock for 60 of pieces, no waste, printed",
    },
    {
      given: { pieces: MIXED, stock: WIDE, keep: "10 x 5" },
      shows: [
        { label: "cost", value: 100 },
        { label: "sheets", value: 2 },
        { label: "yield", value: 0.8068181818 },
        { label: "lowest possible cost", value: 100 },
        { label: "verdict", value: "best possible (proven)" },
        { label: "offcuts kept", value: 1 },
      ],
      from:
        `${BOTH_WAYS}; (3 x 290 + 288 + 120) / (1,008 + 576); the end of C, 11 3/4 x 8, is kept, ` +
        "11 7/8 x 4 beside the skirt is too narrow",
    },
    { given: { pieces: MIXED, stock: WIDE, first: "rip" }, shows: [{ label: "cost", value: 112 }], from: BOTH_WAYS },
    { given: { pieces: MIXED, stock: WIDE, first: "crosscut" }, shows: [{ label: "cost", value: 130 }], from: BOTH_WAYS },
    {
      given: {
        pieces: [
          ["label", "length", "width", "quantity", "grade", "also from"],
          ["nosing", 46, 5.5, 1, "FAS", ""], ["riser", 40, 5.5, 4, "1C", "FAS"], ["cleat", 26, 5.5, 1, "1C", "FAS"],
        ],
        stock: [
          ["label", "length", "width", "thickness", "price", "grade", "defects"],
          ["A", 144, 6, "4/4", 50.4, "FAS", ""], ["B", 120, 6, "4/4", 28, "1C", ""], ["C", 144, 6, "4/4", 50.4, "FAS", ""],
          ["D", 96, 6, "4/4", 22.4, "1C", ""], ["E", 144, 6, "4/4", 33.6, "1C", ""],
        ],
        keep: 15,
      },
      shows: [
        { label: "cost", value: 78.4 },
        { label: "boards", value: 2 },
        { label: "yield", value: 0.8055555556 },
        { label: "lowest possible cost", value: 78.4 },
        { label: "most still to save", value: 0 },
        { label: "verdict", value: "best possible (proven)" },
        { label: "board feet", value: 11 },
        { label: "from a better grade", value: 2 },
        { label: "boards left", value: 3 },
        { label: "offcuts kept", value: 1 },
        { label: "offcut length", value: 17.625 },
      ],
      from:
        "by hand: A 46 + 40 + 40 and three kerfs leave 17 5/8, B 40 + 40 + 26 leave 13 5/8, both 5 1/2 wide; 50.40 + 28.00; 232 x " +
        "5 1/2 of 264 x 6; 6 + 5 board feet; two risers from FAS",
    },
    {
      given: {
        pieces: [[20]],
        stock: [
          ["length", "price"],
          [96, 10],
        ],
        kerf: -1,
      },
      fails: "#VALUE!",
      says: "kerf: must be 0 or more, got -1",
      from: "common practice, no source: a blade does not add wood",
    },
  ],
  source:
    "Yield = net length in pieces / gross length used. Cost is the sum of the rows BUY gives, each in whole cents, and of owned " +
    "sticks that have a price; the lowest possible cost, most still to save and the verdict are calculated from the prices as " +
    "they stand. The lowest possible cost is proven in whole numbers, and a plan is called best possible only when its cost is no " +
    "more: proven where worths given to the pieces prove it (weak duality of linear programs: Gilmore and Gomory 1961, from " +
    "memory), searched where all cheaper plans were looked for besides; of boards and sheets, every cheaper choice is too small by " +
    "such worths. The work is counted, not timed, so the same job has the same plan everywhere.",
  solve: (given) => {
    const wood = plannedWood(given);
    if (isFailed(wood) || isProblem(wood)) return wood;
    return summaryOf(wood).map(({ label, kind, value }) => ({ label, value: { kind, value } }));
  },
});
