import type { BadRow } from "../solver/bad-row";
import { lengthOf, type Unit } from "../solver/length/length";
import { Exact } from "../solver/length/exact";
import { type Failed, failed, folded, type Given, type GivenCells, isEmptyOrZero, isFailed } from "./cells";
import type { Column, Columns, RowOf, Table } from "./columns";
import { headingPlaces, isHeadingRow, noQuantity, type OwnHeadings, type Places } from "./headings";
import { defaultOf, readCell } from "./kinds";
import { type PlacedRow, rememberedRows } from "./remembered-rows";
import { say, inSight } from "./say";
import { words } from "../solver/words";

/** A row that was read, and its place in the cells given, counted from 1. */
type GoodRow<C extends Columns> = RowOf<C> & { readonly row: number };

export type TableRow<C extends Columns> = GoodRow<C> | BadRow<Failed>;

const zeroIsPossible = (column: Column): boolean => "sign" in column && column.sign !== "positive" && !("zero" in column);

/** What an empty cell, which desktop hosts send as 0, stands for in this column. */
const emptyMeans = (name: string, column: Column, unit: Unit | undefined): unknown => {
  if (zeroIsPossible(column)) {
    if (column.kind === "length") return lengthOf(0, unit ?? "in");
    return column.kind === "money" ? new Exact(0) : 0;
  }
  const standIn = defaultOf(column, unit);
  if (standIn !== undefined) return standIn;
  return column.required && !("zero" in column) ? failed(say.emptyOrZero(name)) : undefined;
};

const wordMeans = (cell: Given, column: Column): number | Exact | undefined => {
  if (typeof cell !== "string" || column.words === undefined) return undefined;
  const found = Object.entries(column.words).find(([word]) => folded(word) === folded(cell));
  return found !== undefined && (column.kind === "money" || column.kind === "length") ? new Exact(found[1]) : found?.[1];
};

/** The value of one cell as its column says, undefined where the cell holds nothing that counts. */
export const readColumn = (name: string, cell: Given, column: Column, unit: Unit | undefined): unknown => {
  const word = wordMeans(cell, column);
  if (word !== undefined) return Number(word) === 0 && !("zero" in column) && !zeroIsPossible(column) ? undefined : word;
  if (isEmptyOrZero(cell)) return emptyMeans(name, column, unit);
  const read = readCell(name, cell, column, unit);
  if (isFailed(read)) return read;
  if (column.kind === "rate") return (read as Exact).toNumber();
  const isNothing = "zero" in column && ((column.kind === "number" && read === 0) || (column.kind === "money" && (read as Exact).isZero()));
  return isNothing ? undefined : read;
};

/** Columns up to the last that holds anything. */
const widthOf = (rows: readonly (readonly Given[])[]): number =>
  rows.reduce(
    (widest, row) => row.reduce((last: number, cell, index) => (isEmptyOrZero(cell) ? last : Math.max(last, index + 1)), widest),
    0,
  );

/** Rows that are about other rows, of ORDER or of the user's own: where a table goes on into another they are no goods. */
const SUMMARIES: readonly string[] = ["total", "saving", "subtotal", "grand total"].map(folded);

const isSummary = (row: readonly Given[], places: Places, { takes, hasTotals }: Table): boolean => {
  const item = row[places.get("item") ?? (hasTotals === true ? places.get("label") : undefined) ?? -1] ?? null;
  return (hasTotals === true || takes.includes("ORDER")) && typeof item === "string" && SUMMARIES.includes(folded(item));
};

const LABELS: readonly string[] = ["step", "label", "item"];

/** How the user knows the row: its step, its item, or its place. */
const rowName = (row: readonly Given[], places: Places, number: number): { label: string | number; says: string } => {
  for (const key of LABELS) {
    const cell = row[places.get(key) ?? -1] ?? null;
    if (isEmptyOrZero(cell) || isFailed(cell) || typeof cell === "boolean" || cell === null) continue;
    const name = inSight(String(cell));
    return { label: cell, says: key === "step" ? `step ${name}` : `row ${number} (${name})` };
  }
  return { label: "", says: `row ${number}` };
};

/** The rows of a table argument, each read, or bad with its sentence; a table without usable headings fails as a whole. */
export const readTable = <C extends Columns>(
  argument: string,
  table: Table<C>,
  cells: GivenCells,
  unit: Unit | undefined,
  own: OwnHeadings,
): readonly TableRow<C>[] | Failed => {
  const { columns } = table;
  const keys = Object.keys(columns);
  const required = keys.filter((key) => columns[key]?.required === true);
  const filled = cells.map((row, index) => ({ row, number: index + 1 })).filter(({ row }) => !row.every(isEmptyOrZero));
  const [first] = filled;
  const nothing = failed(say.emptyTable(argument, required.map(words)));
  if (first === undefined) return nothing;
  const headed = headingPlaces(argument, first.row, table, own);
  if (isFailed(headed)) return headed;
  const ambiguous = headed === undefined ? table.ambiguous?.(widthOf(filled.map(({ row }) => row))) : undefined;
  if (ambiguous !== undefined) return failed(say.ambiguousColumns(argument, ambiguous));
  const inOrder = keys.filter((key) => columns[key]?.onlyHeaded !== true);
  const places = headed ?? new Map(inOrder.slice(0, first.row.length).map((key, index) => [key, index]));
  const absent = required.find((key) => !places.has(key));
  if (absent !== undefined) {
    const bare = `${first.row.length} ${first.row.length === 1 ? "column" : "columns"} without headings`;
    const found = headed === undefined ? [bare] : [...places.keys()].map(words);
    return failed(say.missingHeading(argument, words(absent), found));
  }
  const data = (headed === undefined ? filled : filled.filter(({ row }) => !isHeadingRow(row, places, columns))).filter(
    ({ row }) => !isSummary(row, places, table),
  );
  if (data.length === 0) return nothing;
  const misread = headed === undefined ? undefined : noQuantity(argument, first.row, data, places);
  if (misread !== undefined) return misread;
  const read = Object.entries(columns).map(([key, column]) => ({ key, column, heading: words(key), index: places.get(key) }));
  const rowOf = ({ row, number }: PlacedRow): TableRow<C> => {
    const { label, says } = rowName(row, places, number);
    const values: Record<string, unknown> = { row: number };
    let bad: Failed | undefined;
    for (const { key, column, heading, index } of read) {
      const name = `${heading} in ${says}`;
      const value = index === undefined ? defaultOf(column, unit) : readColumn(name, row[index] ?? null, column, unit);
      if (isFailed(value)) bad ??= value;
      else if (value !== undefined) values[key] = value;
      else if (index === undefined && zeroIsPossible(column)) values[key] = emptyMeans(name, column, unit);
    }
    return bad === undefined ? (values as GoodRow<C>) : { bad, label, row: number, read: values };
  };
  return rememberedRows(columns, places, unit, data, () => data.map(rowOf));
};
