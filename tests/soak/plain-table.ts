import { cellAddress, cellPlace, columnName, columnPlace } from "../../src/sheets/cell-address";
import type { CellData, RowFilter, SheetData } from "../../src/workbook/workbook-data";

/** A sheet of typed values with looks by rule, lists and a filter, in which rows come, go and are sorted: cell by cell. */
export interface PlainTable {
  readonly cells: Readonly<Record<string, CellData>>;
  /** Cells over which each rule and each list is, by the fill or the options of it. */
  readonly over: Readonly<Record<string, readonly string[]>>;
  readonly filter?: RowFilter;
}

export const LAST_ROW = 12;
/** The first row is headings. */
export const SORTED = `A2:D${LAST_ROW}`;
export const FILTERED = `A1:D${LAST_ROW}`;
const LAST_COLUMN = columnPlace("D");

const RULED = [
  { cells: `A2:A${LAST_ROW}`, fill: "#e4f1e3" }, { cells: "C3:C5", fill: "#fbe3df" }, { cells: "D4", fill: "#eeeeee" },
] as const;
const LISTED = [{ cells: `B2:B${LAST_ROW}`, options: ["ash", "oak"] }, { cells: "C7:D8", options: ["maple"] }] as const;

/** A rule of the table reads the cell that it is over. */
const when = (cells: string): string => `=${cells.split(":")[0]}>5`;

const cellsIn = (block: string): readonly string[] => {
  const [first = "A1", last = first] = block.split(":");
  const [from, to] = [cellPlace(first), cellPlace(last)];
  const found: string[] = [];
  for (let row = from.row; row <= to.row; row += 1)
    for (let column = from.column; column <= to.column; column += 1) found.push(cellAddress({ row, column }));
  return found;
};

/** What a table is added with. */
export const tableData = (name: string): SheetData => ({
  name,
  cells: { A1: { value: "mark" }, A3: { value: 7 }, A5: { value: "oak" } },
  rules: RULED.map(({ cells, fill }) => ({ cells, when: when(cells), look: { fill } })),
  lists: LISTED,
});

const isList = (key: string): boolean => LISTED.some(({ options }) => options.join() === key);

const sorted = (over: PlainTable["over"]): PlainTable["over"] =>
  Object.fromEntries(Object.entries(over).filter(([, cells]) => cells.length > 0).map(([key, cells]) => [key, [...cells].sort()]).sort());

/** What is stored of a sheet beside its cells, cell by cell; a rule that no longer reads its own cell by its formula. */
export const tableOf = ({ cells, rules = [], lists = [], filter }: SheetData): PlainTable => {
  const over: Record<string, string[]> = {};
  for (const rule of rules) (over[rule.when === when(rule.cells) ? String(rule.look.fill) : rule.when] ??= []).push(...cellsIn(rule.cells));
  for (const list of lists) (over[list.options.join()] ??= []).push(...cellsIn(list.cells));
  return { cells, over: sorted(over), ...(filter === undefined ? {} : { filter }) };
};

/** A table once each row has come to another place; undefined for one that is gone. */
const rowsMoved = ({ cells, over }: PlainTable, to: (row: number) => number | undefined): Omit<PlainTable, "filter"> => {
  const moved = (address: string): readonly string[] => {
    const { row, column } = cellPlace(address);
    const at = to(row + 1);
    return at === undefined ? [] : [cellAddress({ row: at - 1, column })];
  };
  return {
    cells: Object.fromEntries(Object.entries(cells).flatMap(([at, cell]) => moved(at).map((next) => [next, cell]))),
    over: sorted(Object.fromEntries(Object.entries(over).map(([key, all]) => [key, all.flatMap(moved)]))),
  };
};

const filterRows = (cells: string): readonly [number, number] => {
  const [from = "", to = ""] = cells.split(":");
  return [cellPlace(from).row + 1, cellPlace(to).row + 1];
};

const filterOver = (filter: RowFilter, from: number, to: number, hides: readonly number[]): RowFilter => ({
  ...filter, cells: `A${from}:D${to}`, hides: [...hides].sort((one, other) => one - other),
});

/**
 * Empty rows in a table, before one: a list of the row above goes on in them, at the top of the sheet that of the first row, and a look
 * that is over the rows on both sides.
 */
export const rowsInserted = (table: PlainTable, before: number, count: number): PlainTable => {
  const to = (row: number): number => (row >= before ? row + count : row);
  const next = rowsMoved(table, to);
  const isOver = (cells: readonly string[], column: number, row: number): boolean => cells.includes(cellAddress({ row: row - 1, column }));
  const grown = Object.fromEntries(Object.entries(table.over).map(([key, cells]) => {
    const added: string[] = [];
    for (let column = 0; column <= LAST_COLUMN; column += 1)
      if (isList(key) ? isOver(cells, column, Math.max(before - 1, 1)) : isOver(cells, column, before - 1) && isOver(cells, column, before))
        for (let row = before; row < before + count; row += 1) added.push(cellAddress({ row: row - 1, column }));
    return [key, [...(next.over[key] ?? []), ...added]];
  }));
  const { filter } = table;
  if (filter === undefined) return { ...next, over: sorted(grown) };
  const [from, last] = filterRows(filter.cells);
  return { ...next, over: sorted(grown), filter: filterOver(filter, to(from), to(last), filter.hides.map(to)) };
};

/** A table without some rows; those that the filter hides stay. Undefined where nothing goes. */
export const rowsRemoved = (table: PlainTable, from: number, count: number): PlainTable | undefined => {
  const { filter } = table;
  const goes = (row: number): boolean => row >= from && row < from + count && !filter?.hides.includes(row);
  const gone = Array.from({ length: count }, (_, down) => from + down).filter(goes);
  if (gone.length === 0) return undefined;
  const place = (row: number): number => row - gone.filter((one) => one < row).length;
  const next = rowsMoved(table, (row) => (goes(row) ? undefined : place(row)));
  if (filter === undefined) return next;
  const [first, last] = filterRows(filter.cells);
  const end = goes(last) ? place(last) - 1 : place(last);
  if (goes(first) || end <= place(first)) return next;
  return { ...next, filter: filterOver(filter, place(first), end, filter.hides.map(place)) };
};

const textAt = ({ cells }: PlainTable, row: number, column: string): string => String(cells[`${column}${row}`]?.value ?? "");

/** A table of which only the rows with one of the texts in a column are shown. */
export const rowsFiltered = (table: PlainTable, column: string, texts: readonly string[]): PlainTable => {
  const rows = Array.from({ length: LAST_ROW - 1 }, (_, down) => down + 2);
  const hides = rows.filter((row) => !texts.includes(textAt(table, row, column)));
  // An empty cell is named last.
  const keeps = [...texts.filter((text) => text !== ""), ...texts.filter((text) => text === "")];
  return { ...table, filter: { cells: FILTERED, keeps: { [column]: keeps }, hides } };
};

/** Numbers first, then texts; turned round where it goes down, and what is empty is last either way. */
const isBefore = (one: CellData["value"], other: CellData["value"], isUp: boolean): boolean => {
  if (one === undefined || other === undefined) return one !== undefined && other === undefined;
  const kinds = Number(typeof one === "string") - Number(typeof other === "string");
  const difference = kinds !== 0 ? kinds : one < other ? -1 : Number(one > other);
  return isUp ? difference < 0 : difference > 0;
};

/** A table with its rows by the values of a column, hidden ones where they are. Undefined where nothing moves. */
export const rowsSorted = (table: PlainTable, column: string, isUp: boolean): PlainTable | undefined => {
  const rows = Array.from({ length: LAST_ROW - 1 }, (_, down) => down + 2).filter((row) => !table.filter?.hides.includes(row));
  const order: number[] = [];
  for (const row of rows) {
    const value = table.cells[`${column}${row}`]?.value;
    const at = order.findIndex((other) => isBefore(value, table.cells[`${column}${other}`]?.value, isUp));
    order.splice(at === -1 ? order.length : at, 0, row);
  }
  const places = new Map(order.map((row, index) => [row, rows[index] ?? row]));
  if ([...places].every(([from, to]) => from === to)) return undefined;
  const isInside = (address: string): boolean => cellPlace(address).column <= LAST_COLUMN;
  if (!Object.keys(table.cells).every(isInside)) throw new Error(`a table beyond ${columnName(LAST_COLUMN)}`);
  const next = rowsMoved(table, (row) => places.get(row) ?? row);
  return table.filter === undefined ? next : { ...next, filter: table.filter };
};
