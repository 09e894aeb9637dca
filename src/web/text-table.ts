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

/** A number with its decimals behind a comma, and one with them behind a point. */
const COMMA_NUMBER = /^[+-]?(?:\d{1,3}(?:\.\d{3})+|\d+),\d+$/;
const POINT_NUMBER = /^[+-]?\d+\.\d+$/;
const DATE = /^(\d{1,2})([/.-])(\d{1,2})\2\d{4}$/;
/** A number for an item or a post code, which would lose its zero. */
const CODE = /^0\d+$/;
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

const betweenIn = (text: string): string => {
  const partsAll = (delimiter: string): boolean => {
    const { data } = Papa.parse<readonly string[]>(text, { delimiter, preview: LINES_SEEN, skipEmptyLines: true });
    return data.length > 0 && data.every((row) => row.length > 1 && row.length === data[0]?.length);
  };
  return BETWEEN.find(partsAll) ?? Papa.parse(text, { delimitersToGuess: BETWEEN, preview: LINES_SEEN }).meta.delimiter;
};

/** How the numbers and dates of a file are written, as far as the file itself shows it. */
interface Written {
  readonly decimalComma: boolean;
  readonly dayFirst: boolean;
}

const writtenIn = (rows: readonly (readonly string[])[], between: string): Written => {
  let [commas, points, days, months] = [0, 0, 0, 0];
  for (const cell of rows.flat()) {
    const text = cell.trim();
    if (COMMA_NUMBER.test(text)) commas += 1;
    if (POINT_NUMBER.test(text)) points += 1;
    const [, first, , second] = DATE.exec(text) ?? [];
    if (Number(first) > MONTHS) days += 1;
    if (Number(second) > MONTHS) months += 1;
  }
  // Where commas stand between the cells, a number with one in it is a number in thousands.
  return { decimalComma: between !== "," && commas > points, dayFirst: days > months };
};

const cellOf = (given: string, { decimalComma, dayFirst }: Written): CellData | undefined => {
  const text = given.trim();
  if (text === "") return undefined;
  if (CODE.test(text) || text.startsWith("=") || text.startsWith("'")) return { value: given };
  if (decimalComma && COMMA_NUMBER.test(text)) return { value: Number(text.replaceAll(".", "").replace(",", ".")) };
  const isDay = dayFirst && DATE.test(text);
  const typed = typedCell(text, isDay ? DAY_FIRST : undefined);
  if (typed.kind !== "value") return { value: given };
  const format = isDay && typeof typed.value === "number" ? DAY_FIRST : typed.format;
  return { value: typeof typed.value === "string" ? given : typed.value, ...(format === undefined ? {} : { format }) };
};

/**
 * The sheet in a text file of lines and cells. What stands between the cells, the encoding, decimal commas and days before months are
 * seen in the file; nothing in it becomes a formula.
 */
export const textTable = (bytes: Uint8Array, name: string): SheetData => {
  const text = textOf(bytes);
  if (text.includes(NUL)) throw new Error("it is neither a workbook nor a table as text");
  const between = betweenIn(text);
  const { data: rows } = Papa.parse<readonly string[]>(text, { delimiter: between });
  if (rows.length > MOST_ROWS || rows.reduce((count, row) => count + row.length, 0) > MOST_CELLS)
    throw new Error(`it has ${rows.length} rows, more than a sheet takes here; split it`);
  const written = writtenIn(rows, between);
  const cells = rows.flatMap((row, down) =>
    row.flatMap((given, right): [string, CellData][] => {
      const cell = cellOf(given, written);
      return cell === undefined ? [] : [[cellAddress({ row: down, column: right }), cell]];
    }));
  if (cells.length === 0) throw new Error("there is nothing in it");
  return { name, cells: Object.fromEntries(cells) };
};
