import { problem, isProblem } from "../../solver/problem";
import { FOOTAGE_RULES } from "../../solver/yield/tally/footage";
import { tallyList } from "../../solver/yield/tally/tally-list";
import { isFailed } from "../cells";
import { declare, headings } from "../declare";
import { tally as tallyTable } from "../tables";
import { type GivenBoard, tallyBoards } from "../tally-boards";
import { FOOTAGE_RULE_SAYS, TALLY_PROBLEMS } from "../tally-problems";

const SIX = [
  ["label", "length", "width", "thickness", "grade", "board foot price", "quantity"],
  ["a", 129, 6.4375, "4/4", "FAS", 5.6, 1],
  ["b", 96, 6.25, "8/4", "FAS", 8, 1],
  ["c", 102, 5.25, "4/4", "FAS", 5.6, 1],
  ["d", 144, 6.5, "4/4", "FAS", 5.6, 1],
  ["e", 96, 6.75, "4/4", "FAS", 5.6, 1],
  ["f", 156, 10, "4/4", "FAS", 5.6, 1],
] as const;

const LOT = [
  ["label", "length", "width", "thickness", "quantity", "lot", "lot price", "edge", "defects", "species", "owned", "price", "surfaced"],
  [1, 96, 7.5, "4/4", 2, 7, 95, 0.25, "", "red oak", "", "", ""],
  [2, 84, 6, 1, 1, 7, "", "", "31 to 34; 60 1/2 to 64", "red oak", "", "", ""],
  [3, 120, 9, "5/4", 1, "", "", "", "", "ash", "yes", 9, ""],
  [4, 60, 4, 0.75, 2, "", "", "", "", "ash", "", 7.5, "yes"],
] as const;

const yes = (flag: boolean): string | undefined => (flag ? "yes" : undefined);

/** The columns of the tally that the count does not change. */
const asTheyCame = ({ given, quantity, surfaced, species, boardFootPrice, lot, lotPrice, owned, edge }: GivenBoard) => ({
  quantity, species, boardFootPrice, lot, lotPrice,
  surfaced: yes(surfaced),
  owned: yes(owned),
  defects: given.defects,
  clear: given.clear,
  edge: edge.isZero() ? undefined : edge,
});

export const TALLY = declare({
  id: "TALLY",
  group: "Cut plan",
  says: "Board feet and money of measured boards, as a supplier counts them: the invoice checked, and the tally of other functions.",
  parameters: {
    tally: { kind: "table", table: tallyTable, rows: 1_000, badRows: "refuse", says: "The boards; bare numbers are inches." },
    rule: {
      kind: "choice", options: FOOTAGE_RULES, default: "surface measure",
      says: "How board feet are counted: surface measure, end tally or exact.",
    },
    shrinkage: {
      kind: "rate", of: "the whole", default: 0,
      says: "Share a supplier bills for drying on top, as a share of what is billed; 0 where net footage is sold.",
    },
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per board as given, then a row labelled total per thickness, grade, species and price. Costs of boards add up to those " +
      "of the totals. May stand as a tally again: totals are passed over, and the board feet then stand as on the paper.",
    columns: {
      label: { kind: "label", says: "The board; `total` for a total." },
      length: { kind: "length", says: "As given, in inches." },
      width: { kind: "length", says: "As given, in inches." },
      thickness: { kind: "label", says: "As written." },
      grade: { kind: "text", says: "As given." },
      feet: { kind: "number", says: "Feet of length as the rule counts them." },
      surfaceMeasure: { kind: "number", says: "Square feet of the row as the rule counts them." },
      boardFeet: { kind: "number", says: "Board feet of the row that are billed, shrinkage in them; as on the paper where it says so." },
      price: { kind: "money", says: "Price of one board, as given." },
      cost: {
        kind: "money",
        says:
          "Of a total board feet x price, rounded to cents once and shared over its boards by board feet; a lot's price likewise. Empty " +
          "where the tally has no prices.",
      },
      longestClear: { kind: "length", says: "Longest stretch without a defect, in inches, before any trim." },
      quantity: { kind: "count", says: "How many boards." },
      surfaced: { kind: "text", says: "yes where given." },
      species: { kind: "text", says: "As given." },
      boardFootPrice: { kind: "money", says: "As given." },
      lot: { kind: "label", says: "As given." },
      lotPrice: { kind: "money", says: "As given." },
      owned: { kind: "text", says: "yes where given." },
      defects: { kind: "text", says: "As given." },
      clear: { kind: "text", says: "As given." },
      edge: { kind: "length", says: "As given, in inches." },
      note: { kind: "text", says: "What the rule gives where the paper says otherwise; surfaced boards; net before shrinkage." },
    },
  },
  problems: {
    ...TALLY_PROBLEMS,
    "shrinkage-of-all": { cell: "#VALUE!", says: "shrinkage: 100 % leaves no wood; write less, such as 7%" },
  },
  examples: [
    {
      given: { tally: SIX },
      shows: [
        { label: "a", feet: 10, surfaceMeasure: 5, boardFeet: 5, cost: 28, longestClear: 129 },
        { label: "b", thickness: "8/4", feet: 8, surfaceMeasure: 4, boardFeet: 8, cost: 64 },
        { label: "c", feet: 8, surfaceMeasure: 4, boardFeet: 4, cost: 22.4 },
        { label: "d", feet: 12, surfaceMeasure: 6, boardFeet: 6, cost: 33.6 },
        { label: "e", feet: 8, surfaceMeasure: 5, boardFeet: 5, cost: 28 },
        { label: "f", feet: 13, surfaceMeasure: 11, boardFeet: 11, cost: 61.6 },
        { label: "total", thickness: "4/4", grade: "FAS", surfaceMeasure: 31, boardFeet: 31, boardFootPrice: 5.6, cost: 173.6 },
        { label: "total", thickness: "8/4", grade: "FAS", surfaceMeasure: 4, boardFeet: 8, boardFootPrice: 8, cost: 64, quantity: 1 },
      ],
      from:
        "by hand: 10 x 6 7/16 / 12 = 5.36; 8 x 6 1/4 / 12 = 4 1/6, times 2; 3 1/2 up; 6 1/2 down; 4 1/2 up; 10 10/12; 31 x 5.60 and " +
        "8 x 8.00",
    },
    {
      given: { tally: LOT },
      gives: [
        [
          "label", "length", "width", "thickness", "grade", "feet", "surface measure", "board feet", "price", "cost", "longest clear",
          "quantity", "surfaced", "species", "board foot price", "lot", "lot price", "owned", "defects", "clear", "edge", "note",
        ],
        [1, 96, 7.5, "4/4", "", 8, 10, 10, "", 67.86, 96, 2, "", "red oak", "", 7, 95, "", "", "", 0.25, ""],
        [2, 84, 6, 1, "", 7, 4, 4, "", 27.14, 31, 1, "", "red oak", "", 7, "", "", "31 to 34; 60 1/2 to 64", "", "", ""],
        [3, 120, 9, "5/4", "", 10, 7, 8.75, 9, 0, 120, 1, "", "ash", "", "", "", "yes", "", "", "", ""],
        [
          4, 60, 4, 0.75, "", 5, 4, 4, 7.5, 15, 60, 2, "yes", "ash", "", "", "", "", "", "", "",
          "counted at its finished thickness; the paper may count the rough one",
        ],
        ["total", "", "", "4/4", "", "", 14, 14, "", 95, "", 3, "", "red oak", "", 7, "", "", "", "", "", ""],
        ["total", "", "", "5/4", "", "", 7, 9, "", 0, "", 1, "", "ash", "", "", "", "yes", "", "", "", ""],
        ["total", "", "", 0.75, "", "", 4, 4, "", 15, "", 2, "", "ash", "", "", "", "", "", "", "", ""],
      ],
      from:
        "by hand: 8 x 7 1/2 / 12 = 5, two of them; 3 1/2 up; 95 x 10/14 = 67.857; clear 0 to 31, 34 to 60 1/2, 64 to 84; 7 1/2 down, " +
        "7 x 1 1/4 = 8.75, nearest 9; 1 2/3 is 2, two of them, under 1 in counts as 1 in; 2 x 7.50",
    },
    {
      given: {
        tally: [
          ["label", "length", "width", "thickness", "board feet", "board foot price", "clear"],
          [1, 102, 5.25, "4/4", "", 3, ""],
          [2, 144, 6.5, "4/4", "", 3, "2 to 60; 50 to 100"],
          [3, 96, 4.5, "4/4", "", 3, ""],
          [4, 96, 6, "4/4", 5, 3, ""],
        ],
        rule: "end tally",
      },
      shows: [
        { label: 1, feet: 8, surfaceMeasure: 3.333333333, boardFeet: 3.333333333, cost: 10 },
        { label: 2, boardFeet: 7, cost: 21, longestClear: 98, clear: "2 to 60; 50 to 100" },
        { label: 3, boardFeet: 2.666666667, cost: 8 },
        { label: 4, boardFeet: 5, cost: 15, note: "as on the paper; end tally gives 4" },
        { label: "total", boardFeet: 18, cost: 54 },
      ],
      from:
        "American Hardwood Export Council, Measurement: 5 1/4 x 8 1/2 ft is tallied as 5 x 8 ft; by hand 40 / 12; 6 1/2 up to " +
        "7 x 12 / 12, 4 1/2 down to 4 x 8 / 12; 3.33 + 7 + 2.67 + 5 = 18 at 3.00; clear 2 to 100",
    },
    {
      given: {
        tally: [["length", "width", "thickness", "quantity", "board foot price"], [120, 12, "4/4", 100, 1.8]],
        shrinkage: 0.07,
      },
      shows: [
        { surfaceMeasure: 1000, boardFeet: 1075.268817204, cost: 1935.48, quantity: 100 },
        { label: "total", boardFeet: 1075.268817204, cost: 1935.48, note: "1000 net; 7 % for shrinkage is billed on top" },
      ],
      from:
        "a trade article of 2001 on kiln-dried footage: 1,000 board feet at 1,800 a thousand, billed gross at 7 %, are 1,935.48; by hand " +
        "1,000 / 0.93 = 1,075.2688",
    },
    {
      given: { tally: [["label", "length", "width", "thickness"], [7, 132, 6, "4/4"], [8, 96, 6, 46146]] },
      fails: "#VALUE!",
      says: "thickness: board 8: 46146 is over 16 in; the cell may hold a date: write '5/4 as text",
      from: "by hand: a bare 5/4 is the 4th of May in a sheet",
    },
    {
      given: { tally: [["label", "length", "width", "thickness", "defects"], [7, 132, 6, "4/4", "140 to 146"]] },
      fails: "#VALUE!",
      says: 'defects: board 7: 140" to 146" lies past its end (132"); measure again',
      from: "by hand: 146 is more than 132",
    },
    {
      given: { tally: [[1, 96, 6, "4/4"]] },
      fails: "#VALUE!",
      says: "tally: measured boards are not read by their place; give headings",
      from: "common practice, no source: nobody remembers the order of seventeen columns",
    },
  ],
  source:
    `${FOOTAGE_RULE_SAYS} Kiln-dried lumber is sold on net footage, with none added for shrinkage (National Conference on Weights and ` +
    "Measures 1977, as a trade answer quotes it); shrinkage divides by 1 less it, for a supplier who bills gross all the same.",
  solve: ({ tally, rule, shrinkage }) => {
    if (shrinkage.gte(1)) return problem("shrinkage-of-all");
    const boards = tallyBoards(tally);
    if (isFailed(boards)) return boards;
    const list = tallyList(boards, rule, shrinkage);
    if (isProblem(list)) return list;
    return [
      ...list.boards.map(({ board, surface, ...counts }, place) => ({
        ...asTheyCame(boards[place]!),
        label: board.label,
        length: board.length,
        width: board.width,
        thickness: board.written,
        grade: board.grade,
        price: board.price,
        surfaceMeasure: surface,
        ...counts,
      })),
      ...list.totals.map(({ first, boards: quantity, surface, boardFeet, cost, note }) => ({
        label: "total",
        thickness: first.written,
        grade: first.grade,
        surfaceMeasure: surface,
        species: first.species,
        boardFootPrice: first.boardFootPrice,
        lot: first.owned || first.boardFootPrice !== undefined || first.price !== undefined ? undefined : first.lot,
        owned: yes(first.owned),
        quantity, boardFeet, cost, note,
      })),
    ];
  },
});
