import type { Columns, Table } from "../functions/columns";
import type { Declaration, ResultColumns, ResultKind } from "../functions/declare";
import type { Unit } from "../solver/length/length";
import { words } from "../solver/words";
import { cellAddress, cellPlace } from "./cell-address";
import { ANGLE, DECIMALS, MILLIMETRES, MIXED, MONEY, PERCENT, SIXTEENTHS, type Spill, type SpilledHeadings } from "./sheet-builder";
import type { StyleName } from "./sheet-data";

/** A day, as it cannot be misread. */
export const DAY = "yyyy-mm-dd";

const FORMATS: Readonly<Partial<Record<ResultKind, string>>> = {
  length: SIXTEENTHS,
  reading: SIXTEENTHS,
  angle: ANGLE,
  rate: PERCENT,
  money: MONEY,
  date: DAY,
  value: MIXED,
};

const WORDS: readonly ResultKind[] = ["label", "text", "unit"];

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

/** The columns of a spilled result, as a formula. */
export const chosen = (declaration: Declaration, spilled: string, ...keys: readonly string[]): string =>
  `CHOOSECOLS(${spilled},${placesOf(declaration, ...keys).join()})`;

/**
 * What columns of a result look like where they spill: headings, and under them so many rows, each column in the format of its kind or
 * the one given. Numbers stand right, words left.
 */
export const viewOf = (
  declaration: Declaration, keys: readonly string[], at: string, rows: number, unit: Unit = "in",
  formats: Readonly<Record<string, string>> = {},
): readonly (Spill | SpilledHeadings)[] => {
  const columns = columnsOf(declaration);
  placesOf(declaration, ...keys, ...Object.keys(formats));
  const { row, column } = cellPlace(at);
  const kinds = keys.map((key) => columns[key]?.kind ?? "text");
  const shown = keys.flatMap((key, place) => {
    const format = formats[key] ?? resultFormat(kinds[place] ?? "text", unit);
    return format === undefined ? [] : [[place, format] as const];
  });
  const numbers = kinds.flatMap((kind, place) => (WORDS.includes(kind) ? [] : [place]));
  const styles = kinds.flatMap((kind, place): (readonly [number, StyleName])[] => (kind === "value" ? [[place, "right"]] : []));
  return [
    { at, headings: keys.length, numbers },
    { at: cellAddress({ row: row + 1, column }), rows, formats: Object.fromEntries(shown), styles: Object.fromEntries(styles) },
  ];
};

/** The same of a whole result. */
export const spillOf = (
  declaration: Declaration, at: string, rows: number, unit: Unit = "in", formats: Readonly<Record<string, string>> = {},
): readonly (Spill | SpilledHeadings)[] => viewOf(declaration, Object.keys(columnsOf(declaration)), at, rows, unit, formats);

/** Headings over columns of a table that a user types. */
export const headingsOf = <C extends Columns>(_table: Table<C>, ...keys: readonly (keyof C & string)[]): readonly string[] =>
  keys.map(words);

/** Quantities as a person counts them. */
export const COUNTED = { quantity: DECIMALS };
