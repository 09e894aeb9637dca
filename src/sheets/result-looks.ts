import type { Columns, Table } from "../functions/columns";
import type { Declaration, ResultColumns, ResultKind } from "../functions/declare";
import { words } from "../solver/words";
import { cellAddress, cellPlace } from "./cell-address";
import { ANGLE, MIXED, MILLIMETRES, MONEY, PERCENT, SIXTEENTHS, type Spill, type SpilledHeadings } from "./sheet-builder";

const FORMATS: Readonly<Partial<Record<ResultKind, string>>> = {
  length: SIXTEENTHS,
  reading: SIXTEENTHS,
  angle: ANGLE,
  rate: PERCENT,
  money: MONEY,
  value: MIXED,
};

/** The number format of a kind of result; undefined where it is shown as it comes. */
export const resultFormat = (kind: ResultKind, unit: string): string | undefined =>
  unit === "mm" && FORMATS[kind] === SIXTEENTHS ? MILLIMETRES : FORMATS[kind];

/** The columns of a result by their keys. */
export const columnsOf = ({ id, result }: Declaration): ResultColumns => {
  if (result.kind !== "table" && result.kind !== "row") throw new Error(`the result of ${id} has no columns`);
  return result.columns;
};

/** The places of columns of a result, counted from 1. */
export const placesOf = (declaration: Declaration, ...keys: readonly string[]): readonly number[] =>
  keys.map((key) => {
    const place = Object.keys(columnsOf(declaration)).indexOf(key);
    if (place < 0) throw new Error(`the result of ${declaration.id} has no column ${key}`);
    return place + 1;
  });

/**
 * What a call looks like where it spills: headings, and under them so many rows, each column in the format of its kind or the one given.
 */
export const spillOf = (
  declaration: Declaration, at: string, rows: number, formats: Readonly<Record<string, string>> = {},
): readonly (Spill | SpilledHeadings)[] => {
  const columns = Object.entries(columnsOf(declaration));
  placesOf(declaration, ...Object.keys(formats));
  const { row, column } = cellPlace(at);
  const shown = columns.flatMap(([key, { kind }], place) => {
    const format = formats[key] ?? resultFormat(kind, "in");
    return format === undefined ? [] : [[place, format] as const];
  });
  return [{ at, headings: columns.length }, { at: cellAddress({ row: row + 1, column }), rows, formats: Object.fromEntries(shown) }];
};

/** Headings over columns of a table that a user types. */
export const headingsOf = <C extends Columns>(_table: Table<C>, ...keys: readonly (keyof C & string)[]): readonly string[] =>
  keys.map(words);
