import type { CutPiece } from "../../src/drawing/cards/pieces";
import { cellPlace } from "../../src/sheets/cell-address";
import { type FormulaAt, withWood } from "../../src/web/wood-of-pieces";
import type { CellValue } from "../../src/workbook/workbook";
import { riserOf, treadOf } from "../drawing/cards/jobs";

/** Cells of a made-up workbook: each table by its sheet and first cell, headings and all. */
type Tables = Readonly<Record<string, readonly (readonly CellValue[])[]>>;

/** A book in which a table has spilled from the cell under its headings, or from the cell of its headings. */
const bookOf = (tables: Tables) => ({
  spill: (sheet: string, address: string) => tables[`${sheet} ${address}`] ?? [],
  value: (sheet: string, address: string): CellValue => {
    const { row, column } = cellPlace(address);
    return tables[`${sheet} above`]?.[row]?.[column] ?? null;
  },
});

const FIT: FormulaAt = { sheet: "Fit", address: "CN8", formula: "=STAIR.RISERMARKS(A16:H30,STAIR.PICK(Layout!AA7#,\"run past\"))" };
const TREADS: FormulaAt = { sheet: "Fit", address: "CA8", formula: "=STAIR.MARKS(A8:G13,STAIR.PICK(Layout!AA7#,\"nosing\"))" };
const READS_FIT: FormulaAt = { sheet: "Cut plan", address: "AQ8", formula: "=DROP(Fit!AA40#,1)" };
const PLAN: FormulaAt = { sheet: "Cut plan", address: "A2", formula: "=LET(r,STAIR.CUTS(AQ8#,BR8#),r)" };
const ORDER: FormulaAt = { sheet: "Order", address: "A17", formula: "=STAIR.ORDER(Layout!AA7#,A8:E14)" };

const OPENING = { depth: 7, back: 36, left: 0, right: 0, leftLean: 0, rightLean: 0 };
const riser = (step: string): CutPiece => ({ ...riserOf(OPENING, "none", 0), step });
const woods = (tables: Tables, formulas: readonly FormulaAt[], at: FormulaAt, pieces: readonly CutPiece[]) =>
  withWood(bookOf(tables), formulas, at, pieces).map(({ wood }) => wood);

const CUT: Tables = {
  "Cut plan above": [["stock", "board", "piece", "length, in"]],
  "Cut plan A2": [
    ["poplar 16 ft", 1, "riser 4", 37], ["poplar 16 ft", 2, "riser 5", 37], ["rack 5 ft", 3, "riser 6", 36.5],
    ["rail 14 ft", 4, "rail", 160],
  ],
};

test("a riser is cut from the board on which the plan of its sheet has it, by the headings over the plan", () => {
  expect(woods(CUT, [FIT, READS_FIT, PLAN], FIT, [riser("4"), riser("5"), riser("6"), riser("7")])).toEqual([
    "poplar 16 ft, board 1 of the cut plan", "poplar 16 ft, board 2 of the cut plan", "rack 5 ft, board 3 of the cut plan", undefined,
  ]);
});

test("what is cut first on a board that is ripped is no part of its name", () => {
  const rows = [["poplar 1x12, rip first", 1, "riser 4", 37], ["poplar 1x12, crosscut first", 2, "riser 5", 37]];
  const ripped: Tables = { ...CUT, "Cut plan A2": rows };
  expect(woods(ripped, [FIT, READS_FIT, PLAN], FIT, [riser("4"), riser("5")])).toEqual([
    "poplar 1x12, board 1 of the cut plan", "poplar 1x12, board 2 of the cut plan",
  ]);
});

test("a table with headings of its own is read by them, and a step on two boards is said to be on either", () => {
  const own: FormulaAt = { sheet: "Fit", address: "ZA1", formula: "=STAIR.CUTS(A1:C9,D1:F3)" };
  const tables: Tables = { "Fit ZA1": [["stick", "stock", "run", "label"], [2, "1x8", 1, 4], [3, "1x8", 1, 4], [1, "1x8", 1, 5]] };
  expect(woods(tables, [FIT, own], FIT, [riser("4"), riser("5")])).toEqual([
    "1x8, board 2 or 3 of the cut plan", "1x8, board 1 of the cut plan",
  ]);
});

test.each([
  ["in error", { ...CUT, "Cut plan A2": [[{ error: "#N/A" }]] }, [FIT, READS_FIT, PLAN]],
  ["of another stair", CUT, [FIT, { ...READS_FIT, formula: "=DROP('Fit 2'!AA40#,1)" }, PLAN]],
  ["one of two that read the sheet", CUT, [FIT, READS_FIT, PLAN, { ...PLAN, address: "A40" }]],
  ["not there", CUT, [FIT]],
] as const)("where the cut plan is %s no board is named", (_, tables, formulas) => {
  expect(woods(tables as Tables, formulas, FIT, [riser("4")])).toEqual([undefined]);
});

describe("treads", () => {
  const tread = treadOf({ ...OPENING, depth: 10 }, "none");
  const order = (length: number, width: number): Tables => ({
    "Order A17": [
      ["item", "length", "width", "quantity", "note"],
      ["oak blank 42", length, width, 13, "for each tread; 2.2 % of the width is ripped off"],
      ["oak nosing 48", 48, 3.5, 1, "for the landing nosing"], ["total", "", "", "", ""],
    ],
  });

  test("are cut from the blank that the order of their stair has for each tread", () => {
    expect(woods(order(42, 11.5), [TREADS, ORDER], TREADS, [tread])).toEqual(["oak blank 42, any of 13"]);
    expect(woods(order(42, 11.5), [TREADS, { ...ORDER, formula: "=STAIR.ORDER('Layout 2'!AA7#,A8:E14)" }], TREADS, [tread])).toEqual([
      undefined,
    ]);
  });

  // By hand: 36 long, 10 and 1 1/4 of nosing deep.
  test.each([[35.5, 11.5], [42, 11]])("a blank of %f x %f is too small for one that was taped at 36 x 11 1/4", (length, width) => {
    expect(woods(order(length, width), [TREADS, ORDER], TREADS, [tread])).toEqual(["oak blank 42: TOO SMALL"]);
  });
});
