import type { CellData } from "../../src/sheets/sheet-data";
import { workbookFile } from "../../src/workbook-file/write-workbook-file";
import { estimatorJob } from "../bench/yield/generated-jobs";

const MARKS = 64;
const CENTS = 100;

/** Pieces of sixty lengths from eight lengths of stock, some 900 sticks of it: more than a cell proves. */
const { pieces, stock, kerf, trim } = estimatorJob(1);

/** A table of two columns from row 1 down. */
export const twoColumns = (
  left: string, right: string, rows: readonly (readonly [string | number, string | number])[],
): Readonly<Record<string, CellData>> =>
  Object.fromEntries(rows.flatMap(([one, other], row) =>
    [[`${left}${row + 1}`, { value: one }], [`${right}${row + 1}`, { value: other }]]));

const PLAN = `STAIR.PLAN(A1:B${pieces.length + 1},D1:E${stock.length + 1},${kerf / MARKS},${trim / MARKS})`;

/** The job with the cost of its plan in G1, what no plan can cost less than in G2, twice the cost in G3, and in G4 what is none of it. */
export const UNPROVEN_CUT: Readonly<Record<string, CellData>> = {
  ...twoColumns("A", "B", [["length", "quantity"], ...pieces.map(({ length, quantity }) => [length / MARKS, quantity] as const)]),
  ...twoColumns("D", "E", [["length", "price"], ...stock.map(({ length, cents }) => [length / MARKS, cents / CENTS] as const)]),
  G1: { formula: `=STAIR.PICK(${PLAN},"cost")` }, G2: { formula: `=STAIR.PICK(${PLAN},"lowest possible cost")` },
  G3: { formula: "=G1*2" }, G4: { formula: "=1+1" },
};

/** A workbook of one sheet, Cut, that nothing has worked out yet. */
export const cutWorkbook = (cells: Readonly<Record<string, CellData>>): Uint8Array =>
  workbookFile([{ name: "Cut", cells }], { calculated: { value: () => 0, spill: () => [[0]] } });
