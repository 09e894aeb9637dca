import { cellPlace, columnName } from "../../sheets/cell-address";
import { sheetPrefix } from "./sheet-prefix";

/** A table of a sheet: its rows and columns counted from 0. */
export interface Table {
  readonly sheet: string;
  readonly name: string;
  readonly fromRow: number;
  readonly toRow: number;
  readonly fromColumn: number;
  readonly columns: number;
  /** The place of a column by its title in lower case. */
  readonly places: ReadonlyMap<string, number>;
  readonly headings: number;
  readonly totals: number;
}

interface Asked {
  readonly parts: readonly string[];
  readonly columns: readonly string[];
}

const ITEM = /\[((?:'.|[^[\]'])*)\]/g;
const unescaped = (text: string): string => text.replaceAll(/'(.)/g, "$1");

/** What stands between the brackets behind a table's name: parts such as #Headers, and columns from the one to the other. */
const asked = (bracket: string): Asked => {
  const inner = bracket.slice(1, -1).trim();
  const isOfRow = inner.startsWith("@");
  const rest = isOfRow ? inner.slice(1).trim() : inner;
  const items = rest.startsWith("[") ? [...rest.matchAll(ITEM)].map(([, item = ""]) => item) : [rest].filter((item) => item !== "");
  const isPart = (item: string): boolean => item.startsWith("#");
  return {
    parts: [...items.filter(isPart).map((item) => item.toLowerCase()), ...(isOfRow ? ["#this row"] : [])],
    columns: items.filter((item) => !isPart(item)).map(unescaped),
  };
};

/** The rows of a table that a part stands for (ECMA-376-1, 18.17.2.4, structure references). */
const rowsOf = ({ fromRow, toRow, headings, totals }: Table, part: string, row: number): readonly [number, number] | undefined => {
  const [first, last] = [fromRow + headings, toRow - totals];
  if (part === "#all") return [fromRow, toRow];
  if (part === "#data") return [first, last];
  if (part === "#headers") return headings > 0 ? [fromRow, first - 1] : undefined;
  if (part === "#totals") return totals > 0 ? [last + 1, toRow] : undefined;
  return part === "#this row" && row >= first && row <= last ? [row, row] : undefined;
};

/** The cells that a formula in a row asks a table for, as a live sheet takes them; undefined where the table has none such. */
export const tableCells = (table: Table, bracket: string, sheet: string, row: number): string | undefined => {
  const { parts, columns } = asked(bracket);
  const rows = (parts.length === 0 ? ["#data"] : parts).map((part) => rowsOf(table, part, row));
  const places = columns.map((name) => table.places.get(name.toLowerCase()) ?? -1);
  const [left = 0, right = columns.length === 0 ? table.columns - 1 : left] = places;
  if (left < 0 || right < left) return undefined;
  let [top, bottom] = [Number.POSITIVE_INFINITY, -1];
  for (const one of rows) {
    if (one === undefined) return undefined;
    [top, bottom] = [Math.min(top, one[0]), Math.max(bottom, one[1])];
  }
  const corner = (at: number, column: number): string => `$${columnName(table.fromColumn + column)}$${at + 1}`;
  const [from, to] = [corner(top, left), corner(bottom, right)];
  return (table.sheet === sheet ? "" : sheetPrefix(table.sheet)) + (from === to ? from : `${from}:${to}`);
};

/** A table by what its part says. */
export const tableOf = (
  sheet: string, name: string, cells: string, columns: readonly string[], headings: number, totals: number,
): Table => {
  const [from = "A1", to = from] = cells.split(":");
  const [first, last] = [cellPlace(from), cellPlace(to)];
  const places = new Map(columns.map((title, place) => [title.toLowerCase(), place]));
  return { sheet, name, fromRow: first.row, toRow: last.row, fromColumn: first.column, columns: columns.length, places, headings, totals };
};
