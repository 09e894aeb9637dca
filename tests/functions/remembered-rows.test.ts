import type { Given } from "../../src/functions/cells";
import type { TableRow } from "../../src/functions/read-table";
import { readTable } from "../../src/functions/read-table";
import { alternatePieces, pieces } from "../../src/functions/tables";
import type { Unit } from "../../src/solver/length/length";
import { ownHeadings } from "../../src/functions/own-headings";

const OWN = ownHeadings("CUTS");
const MANY = 600;

type Row = TableRow<typeof pieces.columns>;

const read = (cells: readonly (readonly Given[])[], unit: Unit = "in"): readonly Row[] => {
  const rows = readTable("pieces", pieces, cells, unit, OWN);
  if ("failed" in rows) throw new Error(rows.says);
  return rows;
};

const table = (headings: readonly string[], rows = MANY): Given[][] => [
  [...headings], ...Array.from({ length: rows }, (_, row): Given[] => [10 + row, 1 + (row % 3)]),
];
const HEADINGS = ["length", "quantity"] as const;

/** A length in whole millimetres, and how many. */
const first = (rows: readonly Row[]): readonly unknown[] => {
  const [row] = rows;
  return row === undefined || "bad" in row ? [] : [row.length.toString(), row.quantity];
};

test("a large table with the same cells is read once, whoever passes them", () => {
  expect(read(table(HEADINGS))).toBe(read(table(HEADINGS)));
  expect(read(table(HEADINGS, 10))).not.toBe(read(table(HEADINGS, 10)));
  expect(read(table(HEADINGS, 10))).toEqual(read(table(HEADINGS)).slice(0, 10));
});

test("one cell of another value or kind, another unit or another order of columns is another table", () => {
  const known = read(table(HEADINGS));
  // 10 x 25.4.
  expect(first(known)).toEqual(["254", 1]);
  const edited = table(HEADINGS);
  edited[1] = [11, 1];
  expect(first(read(edited))).toEqual(["279.4", 1]);
  const asText = table(HEADINGS);
  asText[1] = ["10 mm", 1];
  expect(first(read(asText))).toEqual(["10", 1]);
  expect(first(read(table(HEADINGS), "mm"))).toEqual(["10", 1]);
  expect(first(read(table(["quantity", "length"])))).toEqual(["25.4", 10]);
  // What was read before still is.
  expect(read(table(HEADINGS))).toBe(known);
  expect(read(table(HEADINGS), "mm")).not.toBe(known);
});

test("the same cells are read anew as another table", () => {
  const known = read(table(HEADINGS));
  const rows = readTable("pieces", alternatePieces, table(HEADINGS), "in", OWN);
  expect(rows).not.toBe(known);
  // Pieces of an alternate have an option, empty where there is none.
  expect([known[0], "failed" in rows ? rows : rows[0]].map((row) => row !== undefined && "option" in row)).toEqual([false, true]);
});

test("a bad row keeps its own sentence, and is bad again when it is remembered", () => {
  const cells = table(HEADINGS);
  cells[5] = ["ten", 1];
  const says = (rows: readonly Row[]): readonly string[] => rows.flatMap((row) => ("bad" in row ? [row.bad.says] : []));
  expect(says(read(cells))).toEqual([expect.stringContaining("row 6")]);
  expect(says(read(cells.map((row) => [...row])))).toEqual(says(read(cells)));
});

test("as many rows are remembered as two of the largest tables have, and what was read longest ago is forgotten first", () => {
  const [one, other, third] = [20_000, 19_999, 19_998].map((rows) => table(HEADINGS, rows));
  const [first, second] = [read(one!), read(other!)];
  expect([read(one!) === first, read(other!) === second]).toEqual([true, true]);
  // The first was asked for last: the second goes.
  expect(read(one!)).toBe(first);
  const last = read(third!);
  expect([read(third!) === last, read(one!) === first]).toEqual([true, true]);
  expect(read(other!)).not.toBe(second);
});
