import { type ErrorCell, isErrorCell } from "../answer";
import type { SheetFunctions, WorkedCell, WorkedRows } from "./worked-out";

type Given = readonly (WorkedRows | undefined)[];

const error = (code: string): ErrorCell => ({ code, message: "" });

const numberOf = (rows: WorkedRows | undefined): number | undefined => {
  const cell = rows?.[0]?.[0];
  return typeof cell === "number" ? Math.trunc(cell) : undefined;
};

const cellsOf = (given: Given): readonly WorkedCell[] => given.flatMap((rows) => rows?.flat() ?? []);

const anError = (given: Given): WorkedCell | undefined => cellsOf(given).find(isErrorCell);

const numbersOf = (given: Given): readonly number[] => cellsOf(given).filter((cell): cell is number => typeof cell === "number");

/** One value out of all numbers given; the first error where there is one. */
const ofNumbers = (value: (numbers: readonly number[]) => number) => (given: Given): WorkedRows =>
  [[anError(given) ?? value(numbersOf(given))]];

const across = (rows: WorkedRows): WorkedRows =>
  Array.from({ length: rows[0]?.length ?? 0 }, (_, column) => rows.map((row) => row[column] ?? null));

/** A table of nothing is an error in a spreadsheet. */
const orNothing = (rows: WorkedRows): WorkedRows => (rows.length === 0 || rows[0]?.length === 0 ? [[error("#CALC!")]] : rows);

type Cut = (rows: WorkedRows, count: number) => WorkedRows;

const taken: Cut = (rows, count) => (count < 0 ? rows.slice(count) : rows.slice(0, count));
const dropped: Cut = (rows, count) => (count < 0 ? rows.slice(0, count) : rows.slice(count));

/** Rows and columns cut off by count, either of them left out. */
const cut = (by: Cut) => ([rows, down, right]: Given): WorkedRows | undefined => {
  const [lines, columns] = [numberOf(down), numberOf(right)];
  if (rows === undefined || (down !== undefined && lines === undefined) || (right !== undefined && columns === undefined)) return undefined;
  const some = lines === undefined ? rows : by(rows, lines);
  return orNothing(columns === undefined ? some : across(by(across(some), columns)));
};

/** Rows by their numbers, from the end where below 0. */
const chosen = (rows: WorkedRows, places: Given): WorkedRows | undefined => {
  const numbers = numbersOf(places).map(Math.trunc);
  if (numbers.length !== cellsOf(places).length) return undefined;
  const found = numbers.map((place) => rows[place < 0 ? rows.length + place : place - 1]);
  return found.every((row): row is WorkedRows[number] => row !== undefined) ? found : [[error("#VALUE!")]];
};

/** Tables one under another; where one is narrower its row is filled up as a spreadsheet does. */
const stacked = (given: Given): WorkedRows | undefined => {
  const tables = given.filter((rows): rows is WorkedRows => rows !== undefined);
  if (tables.length !== given.length || tables.length === 0) return undefined;
  const width = Math.max(...tables.map((rows) => rows[0]?.length ?? 0));
  const filled = (row: WorkedRows[number]): WorkedRows[number] =>
    Array.from({ length: width }, (_, column) => (column < row.length ? (row[column] ?? null) : error("#N/A")));
  return tables.flat().map(filled);
};

/** The rows, or the columns, whose mark holds. */
const filtered = ([rows, marks, instead]: Given): WorkedRows | undefined => {
  if (rows === undefined || marks === undefined) return undefined;
  const bad = anError([marks]);
  if (bad !== undefined) return [[bad]];
  const isAcross = marks.length === 1 && marks[0]?.length === rows[0]?.length && rows.length !== 1;
  const [lines, kept] = isAcross ? [across(rows), marks[0] ?? []] : [rows, marks.map(([mark]) => mark ?? null)];
  if (kept.length !== lines.length || kept.some((mark) => typeof mark === "string")) return [[error("#VALUE!")]];
  const found = lines.filter((_, place) => Number(kept[place] ?? 0) !== 0);
  if (found.length === 0) return instead ?? [[error("#CALC!")]];
  return isAcross ? across(found) : found;
};

const text = (cell: WorkedCell): string => (typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell ?? ""));

/** Each cell with one text in place of another wherever it stands; an empty one is nowhere. */
const substituted = ([rows, old, instead, which]: Given): WorkedRows | undefined => {
  const [from, to] = [old?.[0]?.[0], instead?.[0]?.[0]];
  if (rows === undefined || from === undefined || to === undefined || which !== undefined) return undefined;
  if (isErrorCell(from) || isErrorCell(to)) return undefined;
  const changed = (cell: string): string => (text(from) === "" ? cell : cell.split(text(from)).join(text(to)));
  return rows.map((row) => row.map((cell) => (isErrorCell(cell) ? cell : changed(text(cell)))));
};

/** The first letters of each cell. */
const begun = ([rows, count]: Given): WorkedRows | undefined => {
  const wanted = count === undefined ? 1 : numberOf(count);
  if (rows === undefined || wanted === undefined || wanted < 0) return undefined;
  return rows.map((row) => row.map((cell) => (isErrorCell(cell) ? cell : text(cell).slice(0, wanted))));
};

/** What the sheets of a job choose their readings with: the functions of the spreadsheet that are worked out here as it does. */
export const sheetFunctions: SheetFunctions = {
  TAKE: cut(taken),
  DROP: cut(dropped),
  FILTER: filtered,
  CHOOSEROWS: ([rows, ...places]) => (rows === undefined ? undefined : chosen(rows, places)),
  CHOOSECOLS: ([rows, ...places]) => {
    const found = rows === undefined ? undefined : chosen(across(rows), places);
    return found === undefined || isErrorCell(found[0]?.[0]) ? found : across(found);
  },
  VSTACK: stacked,
  HSTACK: (given) => {
    const found = stacked(given.map((rows) => rows && across(rows)));
    return found && across(found);
  },
  TRANSPOSE: ([rows]) => rows && across(rows),
  MAX: ofNumbers((numbers) => (numbers.length === 0 ? 0 : Math.max(...numbers))),
  MIN: ofNumbers((numbers) => (numbers.length === 0 ? 0 : Math.min(...numbers))),
  SUM: ofNumbers((numbers) => numbers.reduce((sum, one) => sum + one, 0)),
  ROWS: ([rows]) => rows && [[rows.length]],
  COLUMNS: ([rows]) => rows && [[rows[0]?.length ?? 0]],
  COUNTA: (given) => [[cellsOf(given).filter((cell) => cell !== null).length]],
  ISNUMBER: ([rows]) => rows?.map((row) => row.map((cell) => typeof cell === "number")),
  LEFT: begun,
  SUBSTITUTE: substituted,
  SEQUENCE: ([count, more]) => {
    const rows = numberOf(count);
    return rows === undefined || rows < 1 || more !== undefined ? undefined : Array.from({ length: rows }, (_, place) => [place + 1]);
  },
};
