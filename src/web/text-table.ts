import Papa from "papaparse";
import { cellAddress } from "../sheets/cell-address";
import type { CellData, SheetData } from "../sheets/sheet-data";
import { typedCell } from "../workbook/typed-cell";

/** What can stand between the cells of a line. A comma stands in numbers too, so that the others come first where they part every line. */
const BETWEEN = ["\t", ";", "|", ","];
/** Lines by which that is seen. */
const LINES_SEEN = 50;
/** Rows and cells that a live sheet takes without being slow. */
const MOST_ROWS = 100_000;
const MOST_CELLS = 1_000_000;

/** Numbers with their decimals behind a comma or a point, and those that may be in thousands with points between, or have decimals. */
const COMMA_DECIMALS = /^[+-]?(?:\d{1,3}(?:\.\d{3})+|\d+),\d+$/;
const POINT_DECIMALS = /^[+-]?\d+\.\d+$/;
const POINT_THOUSANDS = /^[+-]?\d{1,3}(?:\.\d{3})+$/;
/** A number as it may stand in a file with decimal commas: with a sign of money, in brackets, as a percentage. */
const IN_COMMAS = /^[+-]?\(?[$€£]?\s?(?:\d{1,3}(?:\.\d{3})+|\d+)(?:,\d+)?\)?\s?[€£]?\s?%?$/;
const DATE = /^(\d{1,2})([/.-])(\d{1,2})\2\d{4}$/;
/** A number of an item, a post code or a telephone: as a number it would lose its zero, its sign or its last digits. */
const CODE = /^(?:0\d+|\+\d+|\d{16,})$/;
const MONTHS = 12;
const DAY_FIRST = "dd/mm/yyyy";
/** No text has it; what holds it is a file of another kind. */
const NUL = "\0";

const marks: readonly (readonly [encoding: string, bytes: readonly number[]])[] = [
  ["utf-8", [0xef, 0xbb, 0xbf]], ["utf-16le", [0xff, 0xfe]], ["utf-16be", [0xfe, 0xff]],
];

/** The text of a file: in the encoding it names, else in UTF-8, else in the one of older Western programs. */
export const textOf = (bytes: Uint8Array): string => {
  const marked = marks.find(([, mark]) => mark.every((byte, place) => bytes[place] === byte));
  if (marked !== undefined) return new TextDecoder(marked[0]).decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
};

/** What parts the most lines into equally many cells: a title, or a line of text, has none of it. */
const betweenIn = (text: string): string => {
  const parted = (delimiter: string): number => {
    const { data } = Papa.parse<readonly string[]>(text, { delimiter, preview: LINES_SEEN, skipEmptyLines: true });
    const lengths = data.map((row) => row.length).filter((length) => length > 1);
    return Math.max(0, ...lengths.map((length) => lengths.filter((other) => other === length).length));
  };
  return BETWEEN.reduce((best, delimiter) => (parted(delimiter) > parted(best) ? delimiter : best));
};

/** How the numbers and dates of a file are written, as far as the file itself shows it. */
interface Written {
  /** undefined: nothing in the file says whether 1.250 is one and a quarter or a thousand. */
  readonly decimalComma: boolean | undefined;
  readonly dayFirst: boolean;
  /** No date of the file says which of its numbers is the month. */
  readonly isDayAssumed: boolean;
}

const writtenIn = (rows: readonly (readonly string[])[], between: string, isDayFirstHere: boolean): Written => {
  let [commas, points, thousands, dates, days, months] = [0, 0, 0, 0, 0, 0];
  for (const cell of rows.flat()) {
    const text = cell.trim();
    if (COMMA_DECIMALS.test(text)) commas += 1;
    if (POINT_THOUSANDS.test(text)) thousands += 1;
    else if (POINT_DECIMALS.test(text)) points += 1;
    const [found, first, , second] = DATE.exec(text) ?? [];
    if (found !== undefined) dates += 1;
    if (Number(first) > MONTHS) days += 1;
    if (Number(second) > MONTHS) months += 1;
  }
  // A semicolon stands between cells where commas are decimal, as a rule. A comma between cells leaves numbers with one in thousands.
  const isUnclear = between === ";" && commas + points === 0 && thousands > 0;
  const isDayAssumed = dates > 0 && days === 0 && months === 0;
  return {
    decimalComma: isUnclear ? undefined : between !== "," && commas > points,
    dayFirst: isDayAssumed ? isDayFirstHere : days > months,
    isDayAssumed,
  };
};

/** The text of a number with its decimals behind a point. */
const withPoint = (text: string): string => text.replaceAll(".", "").replace(",", ".").replaceAll(/[€£]/g, "");

const cellOf = (given: string, { decimalComma, dayFirst }: Written): CellData | undefined => {
  const text = given.trim();
  if (text === "") return undefined;
  const isKept = CODE.test(text) || text.startsWith("=") || text.startsWith("'");
  if (isKept || (decimalComma === undefined && POINT_THOUSANDS.test(text))) return { value: given };
  const isDay = dayFirst && DATE.test(text);
  const typed = typedCell(decimalComma === true && IN_COMMAS.test(text) ? withPoint(text) : text, isDay ? DAY_FIRST : undefined);
  if (typed.kind !== "value") return { value: given };
  const format = isDay && typeof typed.value === "number" ? DAY_FIRST : typed.format;
  return { value: typeof typed.value === "string" ? given : typed.value, ...(format === undefined ? {} : { format }) };
};

/** The sheet in a text file, and what of it could be read in two ways, as sentences. */
export interface TextTable {
  readonly sheet: SheetData;
  readonly says: readonly string[];
}

const saidOf = ({ decimalComma, dayFirst, isDayAssumed }: Written): readonly string[] => [
  ...(decimalComma === undefined ? ["Numbers such as 1.250 stay text: nothing in the file says whether the point parts thousands."] : []),
  ...(isDayAssumed ? [`Dates such as 03/04/2026 are read as ${dayFirst ? "day/month" : "month/day"}/year.`] : []),
];

/**
 * The sheet in a text file of lines and cells. What stands between the cells, the encoding, decimal commas and days before months are
 * seen in the file, the last, where no date shows it, by the language of the browser; nothing in it becomes a formula.
 */
export const textTable = (bytes: Uint8Array, name: string, isDayFirstHere: boolean): TextTable => {
  const text = textOf(bytes);
  if (text.includes(NUL)) throw new Error("it is neither a workbook nor a table as text");
  const between = betweenIn(text);
  const { data: rows, errors } = Papa.parse<readonly string[]>(text, { delimiter: between });
  const torn = errors.find(({ type }) => type === "Quotes");
  if (torn !== undefined) throw new Error(`a quotation mark in row ${(torn.row ?? 0) + 1} opens a cell and is not closed before its end`);
  if (rows.length > MOST_ROWS || rows.reduce((count, row) => count + row.length, 0) > MOST_CELLS)
    throw new Error(`it has ${rows.length} rows, more than a sheet takes here; split it`);
  const written = writtenIn(rows, between, isDayFirstHere);
  const cells = rows.flatMap((row, down) =>
    row.flatMap((given, right): [string, CellData][] => {
      const cell = cellOf(given, written);
      return cell === undefined ? [] : [[cellAddress({ row: down, column: right }), cell]];
    }));
  if (cells.length === 0) throw new Error("there is nothing in it");
  return { sheet: { name, cells: Object.fromEntries(cells) }, says: saidOf(written) };
};
