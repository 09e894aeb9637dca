import { FOOTAGE_RULES } from "../../solver/yield/tally/footage";
import { lumberOrder } from "../../solver/yield/tally/lumber-order";
import { declare, headings } from "../declare";
import { lumberAllowances, lumberPieces } from "../tables";
import { FOOTAGE_RULE_SAYS } from "../tally-problems";

const PIECES = [
  ["label", "quantity", "length", "width", "thickness", "grade"],
  ["riser", 13, 40, 7.25, 0.75, "1C"],
  ["skirt", 2, 132, 9.25, 0.75, "FAS"],
  ["tread", 13, 43, 11.5, 1, "FAS"],
] as const;

const NET = "by hand: 13 x 40 x 7.25 / 144 = 26.181; 2 x 132 x 9.25 / 144 = 16.958; 13 x 43 x 11.5 x 1.25 / 144 = 55.803";
const ASSUMED = (grade: string, clear: string): string =>
  `allowance: a ${grade} face is at least ${clear} clear; a rule for a phone call, a tally beats it`;

export const LUMBERORDER = declare({
  id: "LUMBERORDER",
  words: "lumber order",
  group: "Cut plan",
  says: "Board feet to order for pieces, by thickness, grade and species, with an allowance; EXTEND prices it.",
  parameters: {
    pieces: { kind: "table", table: lumberPieces, rows: 2_000, badRows: "refuse", says: "Finished pieces; bare numbers are inches." },
    allowances: {
      kind: "table", table: lumberAllowances, rows: 500, badRows: "refuse", optional: true,
      says: "Shares added to the net by grade, or thickness and grade.",
      without:
        "Left out, or of a grade without a row: what the least clear face of FAS, F1F, Selects, No. 1 Common or No. 2A Common leaves.",
    },
    rule: {
      kind: "choice", options: FOOTAGE_RULES, default: "exact",
      says: "How board feet are counted: exact, surface measure or end tally.",
    },
    headings,
  },
  result: {
    kind: "table",
    says: "One row per thickness, grade and species, in the order of the pieces. May stand as the quantities of EXTEND.",
    columns: {
      item: { kind: "label", says: "Thickness, grade and species: 4/4 FAS red oak." },
      quantity: { kind: "number", says: "Board feet to order: the net with its allowance, or the least sold, up to the next whole." },
      unit: { kind: "text", says: "bf." },
      thickness: { kind: "text", says: "Rough: the least that dresses on both faces to the finished one." },
      grade: { kind: "text", says: "As given." },
      species: { kind: "text", says: "As given." },
      pieces: { kind: "count", says: "How many pieces." },
      net: { kind: "number", says: "Board feet in the finished pieces at the rough thickness." },
      allowance: { kind: "rate", says: "Share added to the net." },
      boardFeet: { kind: "number", says: "Net with its allowance." },
      assumed: { kind: "text", says: "What stands in for an allowance of your own; whether the least sold counts." },
    },
  },
  problems: {
    "piece-without-width": { cell: "#VALUE!", says: "width: piece {piece} has none; board feet need it" },
    "piece-without-thickness": { cell: "#VALUE!", says: "thickness: piece {piece} has none; give the finished thickness" },
    "piece-without-grade": { cell: "#VALUE!", says: "grade: piece {piece} has none; give the grade it is made of, such as FAS" },
    "too-thick": {
      cell: "#N/A",
      says: "thickness: piece {piece} is {thickness} thick, more than {rough} dresses to ({dressed}); laminate it, or order it by itself",
    },
    "no-allowance": {
      cell: "#N/A",
      says: "allowances: none for piece {piece} of grade {grade}; give one under item {grade} or {item}",
    },
    "two-allowances": { cell: "#VALUE!", says: "allowances: {item} has two, in rows {first} and {second}; keep one" },
  },
  examples: [
    {
      given: { pieces: PIECES, allowances: [["1C", "30%"], ["FAS", 0.15]] },
      gives: [
        ["item", "quantity", "unit", "thickness", "grade", "species", "pieces", "net", "allowance", "board feet", "assumed"],
        ["4/4 1C", 35, "bf", "4/4", "1C", "", 13, 26.180555556, 0.3, 34.034722222, ""],
        ["4/4 FAS", 20, "bf", "4/4", "FAS", "", 2, 16.958333333, 0.15, 19.502083333, ""],
        ["5/4 FAS", 65, "bf", "5/4", "FAS", "", 13, 55.802951389, 0.15, 64.173394097, ""],
      ],
      from: `${NET}; times 1.30, 1.15 and 1.15, up to the next whole`,
    },
    {
      given: { pieces: PIECES, headings: false },
      gives: [
        ["4/4 1C", 40, "bf", "4/4", "1C", "", 13, 26.180555556, 0.5, 39.270833333, ASSUMED("1C", "66 2/3 %")],
        ["4/4 FAS", 21, "bf", "4/4", "FAS", "", 2, 16.958333333, 0.2, 20.35, ASSUMED("FAS", "83 1/3 %")],
        ["5/4 FAS", 67, "bf", "5/4", "FAS", "", 13, 55.802951389, 0.2, 66.963541667, ASSUMED("FAS", "83 1/3 %")],
      ],
      from: `${NET}; what 66 2/3 % and 83 1/3 % leave is made good by 50 and 20 % more`,
    },
    {
      given: {
        pieces: [
          ["item", "length", "depth", "thickness", "grade", "species", "quantity"],
          ["tread", 48, 12, 1.25, "Selects", "red oak", 3],
          ["cleat", 12, 6, 0.75, "2A", "ash", 2],
          ["tread", 24, 12, 1.25, "Selects", "Red Oak", 2],
        ],
        allowances: [["item", "allowance", "least"], ["Selects", 0.5, ""], ["6/4 Selects", 0.25, ""], ["2A", 0.5, 20]],
      },
      shows: [
        { item: "6/4 Selects red oak", quantity: 30, pieces: 5, net: 24, allowance: 0.25, boardFeet: 30, species: "red oak", assumed: "" },
        { item: "4/4 2A ash", quantity: 20, pieces: 2, net: 1, boardFeet: 1.5, assumed: "raised to the least sold" },
      ],
      from: "by hand: 1 1/4 takes 6/4: (3 x 4 + 2 x 2) square feet x 1 1/2 = 24, + 25 % = 30; 2 x 1/2 = 1, + 50 % = 1.5, under 20",
    },
    {
      given: {
        pieces: [["step", "length", "height", "thickness", "grade"], [1, 36, 6, 0.75, "FAS"], [2, 36, 8, 0.75, "fas"]],
        allowances: [["FAS", 1]],
      },
      shows: [{ item: "4/4 FAS", net: 3.5, boardFeet: 7, quantity: 7, pieces: 2 }],
      from: "by hand: 36 x 6 / 144 + 36 x 8 / 144 = 1.5 + 2, and as much again",
    },
    {
      given: { pieces: [["length", "width", "thickness", "grade"], [102, 5.25, 0.75, "FAS"]], rule: "end tally" },
      shows: [{ item: "4/4 FAS", net: 3.333333333, quantity: 4 }],
      from: "American Hardwood Export Council, Measurement: 5 1/4 x 8 1/2 ft is tallied as 5 x 8 ft; by hand 40 / 12 x 1.2 = 4",
    },
    {
      given: { pieces: [["label", "length", "width", "thickness"], ["riser", 40, 7.25, 0.75]] },
      fails: "#VALUE!",
      says: "grade: piece riser has none; give the grade it is made of, such as FAS",
      from: "by hand: without a grade nothing says what a board leaves",
    },
    {
      given: { pieces: [["label", "length", "width", "thickness", "grade"], ["newel", 48, 3.5, 3.5, "FAS"]] },
      fails: "#N/A",
      says: 'thickness: piece newel is 3 1/2" thick, more than 12/4 dresses to (2 3/4"); laminate it, or order it by itself',
      from: "by hand: 3 1/2 is more than 2 3/4",
    },
  ],
  source:
    "Net at the least rough thickness that dresses to the piece: 4/4 to 13/16, 5/4 to 1 1/16, 8/4 to 1 3/4 (hardwood thickness table of " +
    "an extension service), 6/4 to 1 5/16, 10/4 to 2 1/4, 12/4 to 2 3/4 (from memory). An allowance is added to the net: 50 % added is " +
    "33 1/3 % of what is bought. Assumed: what is missing on the least clear face over what is left, 20 % for FAS, F1F and Selects, 50 % " +
    "for No. 1 Common, 100 % for No. 2A Common (Purdue University, Cassens 2016, after the NHLA Rules). " +
    `Names of grades match mark by mark but for case and spaces. ${FOOTAGE_RULE_SAYS}`,
  solve: ({ pieces, allowances = [], rule }) =>
    lumberOrder(
      pieces.map(({ row, label, item, step, width, depth, height, ...piece }) => {
        const across = width ?? depth ?? height;
        return { ...piece, name: String(label ?? item ?? step ?? `in row ${row}`), ...(across === undefined ? {} : { width: across }) };
      }),
      allowances,
      rule,
    ),
});
