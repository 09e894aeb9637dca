import type { CellData, PlainValue, SheetData } from "../sheets/sheet-data";
import { cellPlace, columnPlace } from "../sheets/cell-address";
import { cellLooks, isStyleName } from "../sheets/cell-looks";
import { formulaFault } from "./formula-limits";

export type { CellData, PlainValue, SheetData } from "../sheets/sheet-data";

/** The version this program writes; it reads every version up to it. */
export const DATA_VERSION = 1;

/** A workbook as it is stored, whatever engine shows it: sheets in order, what was typed into them, and no results. */
export interface WorkbookData {
  readonly version: typeof DATA_VERSION;
  readonly sheets: readonly SheetData[];
}

const COLUMN_NAME = /^[A-Z]{1,3}$/;
const ADDRESS = /^[A-Z]{1,3}[1-9]\d{0,6}$/;
const NAME_LENGTH = 31;
/** Rows and columns of a sheet ("Excel specifications and limits"). */
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;
const LAST_CELL = "XFD1048576";
/** Pixels of a column that no screen shows whole. */
const WIDEST = 10_000;
/** What is quoted of a wrong value. */
const MOST_QUOTED = 60;
const NOT_IN_NAME = /[\\/?*[\]:]/;

/** A wrong value as it stands in a sentence; of a long one the beginning. */
const quoted = (value: unknown): string => {
  const text = String(JSON.stringify(value));
  return text.length > MOST_QUOTED ? `${text.slice(0, MOST_QUOTED)} …` : text;
};

type Bag = Readonly<Record<string, unknown>>;

const isBag = (value: unknown): value is Bag => typeof value === "object" && value !== null && !Array.isArray(value);

const bag = (where: string, value: unknown): Bag => {
  if (!isBag(value)) throw new Error(`${where}: must be an object, got ${quoted(value)}`);
  return value;
};

const onlyKnown = (where: string, given: Bag, known: readonly string[]): void => {
  const unknown = Object.keys(given).find((key) => !known.includes(key));
  if (unknown !== undefined) throw new Error(`${where}: has no ${quoted(unknown)}; it may have ${known.join(", ")}`);
};

const isPlain = (value: unknown): value is PlainValue =>
  typeof value === "string" || typeof value === "boolean" || (typeof value === "number" && Number.isFinite(value));

const cell = (where: string, raw: unknown): CellData => {
  const given = bag(where, raw);
  onlyKnown(where, given, ["value", "formula", "format", "style"]);
  const { value, formula, format, style } = given;
  if (value !== undefined && formula !== undefined) throw new Error(`${where}: has a value and a formula; it may have one of them`);
  if (value !== undefined && !isPlain(value))
    throw new Error(`${where}, value: must be text, a number, true or false, got ${quoted(value)}`);
  if (formula !== undefined && (typeof formula !== "string" || !formula.startsWith("="))) {
    throw new Error(`${where}, formula: must be text that starts with =, got ${quoted(formula)}`);
  }
  if (format !== undefined && typeof format !== "string") throw new Error(`${where}, format: must be text, got ${quoted(format)}`);
  const fault = formula === undefined ? undefined : formulaFault(formula);
  if (fault !== undefined) throw new Error(`${where}, formula: ${fault}`);
  if (style !== undefined && !isStyleName(style)) {
    throw new Error(`${where}, style: must be one of ${Object.keys(cellLooks).join(", ")}, got ${quoted(style)}`);
  }
  return {
    ...(value === undefined ? {} : { value }),
    ...(formula === undefined ? {} : { formula }),
    ...(format === undefined ? {} : { format }),
    ...(style === undefined ? {} : { style }),
  };
};

const widths = (where: string, raw: unknown): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(bag(where, raw)).map(([column, width]) => {
      if (!COLUMN_NAME.test(column) || columnPlace(column) >= MOST_COLUMNS)
        throw new Error(`${where}: a column is written A to XFD, in capitals, got ${quoted(column)}`);
      if (typeof width !== "number" || !(width > 0 && width <= WIDEST))
        throw new Error(`${where}, ${column}: must be a number of pixels over 0 and up to ${WIDEST}, got ${quoted(width)}`);
      return [column, width];
    }),
  );

const sheetName = (where: string, name: unknown): string => {
  if (typeof name !== "string" || name.trim() === "" || name.length > NAME_LENGTH || NOT_IN_NAME.test(name)) {
    throw new Error(`${where}, name: must be 1 to ${NAME_LENGTH} characters without \\ / ? * [ ] :, got ${quoted(name)}`);
  }
  return name;
};

const address = (where: string, given: string): void => {
  const place = ADDRESS.test(given) ? cellPlace(given) : undefined;
  if (place === undefined || place.row >= MOST_ROWS || place.column >= MOST_COLUMNS)
    throw new Error(`${where}, cells: an address is written A1 to ${LAST_CELL}, in capitals, got ${quoted(given)}`);
};

const sheet = (raw: unknown, index: number): SheetData => {
  const given = bag(`sheet ${index + 1}`, raw);
  const name = sheetName(`sheet ${index + 1}`, given["name"]);
  const where = `sheet "${name}"`;
  onlyKnown(where, given, ["name", "cells", "columnWidths", "frozenRows"]);
  const { columnWidths, frozenRows } = given;
  const cells: Record<string, CellData> = {};
  for (const [at, stored] of Object.entries(bag(`${where}, cells`, given["cells"]))) {
    address(where, at);
    cells[at] = cell(`${where}, ${at}`, stored);
  }
  if (frozenRows !== undefined && !(Number.isInteger(frozenRows) && Number(frozenRows) >= 0 && Number(frozenRows) < MOST_ROWS)) {
    throw new Error(`${where}, frozenRows: must be a whole number from 0 up and below ${MOST_ROWS}, got ${quoted(frozenRows)}`);
  }
  return {
    name,
    cells,
    ...(columnWidths === undefined ? {} : { columnWidths: widths(`${where}, columnWidths`, columnWidths) }),
    ...(frozenRows === undefined ? {} : { frozenRows: Number(frozenRows) }),
  };
};

/** Stored workbook data read from anywhere, or an error that names the place and says what would do. */
export const workbookData = (raw: unknown): WorkbookData => {
  const given = bag("workbook", raw);
  onlyKnown("workbook", given, ["version", "sheets"]);
  const { version, sheets } = given;
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    throw new Error(`workbook, version: must be a whole number from 1 up, got ${quoted(version)}`);
  }
  if (version > DATA_VERSION) {
    throw new Error(
      `workbook, version: this program reads workbooks up to version ${DATA_VERSION}, this one is version ${version}; take a newer program`,
    );
  }
  if (!Array.isArray(sheets) || sheets.length === 0) throw new Error("workbook, sheets: must be a list of one sheet or more");
  const read = sheets.map(sheet);
  const names = read.map(({ name }) => name.toLowerCase());
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined) throw new Error(`workbook, sheets: two sheets are named "${twice}"`);
  return { version: DATA_VERSION, sheets: read };
};
