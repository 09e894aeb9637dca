import type { Cells } from "../functions/printed-rows";

export type Row = Readonly<Record<string, unknown>>;

/** Rows by heading. */
export const rowsOf = ([headings = [], ...rows]: Cells): readonly Row[] =>
  rows.map((row) => Object.fromEntries(headings.map((heading, column) => [String(heading), row[column]])));

/** Whole cents of a money cell, which a double holds. */
export const cents = (cell: unknown): number => Math.round(Number(cell) * 100);

export const sumOf = (rows: readonly Row[], heading: string): number => rows.reduce((sum, row) => sum + cents(row[heading]), 0);

export const rowNamed = (rows: readonly Row[], heading: string, name: string): Row => {
  const found = rows.find((row) => row[heading] === name);
  if (found === undefined) throw new Error(`no row ${name}`);
  return found;
};
