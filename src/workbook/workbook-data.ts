import type { CellData, PlainValue, SheetData } from "../sheets/sheet-data";
import { cellPlace } from "../sheets/cell-address";
import { cellLooks, isStyleName } from "../sheets/cell-looks";

export type { CellData, PlainValue, SheetData } from "../sheets/sheet-data";

/** The version this program writes; it reads every version up to it. */
export const DATA_VERSION = 1;

/** A workbook as it is stored, whatever engine shows it: sheets in order, what was typed into them, and no results. */
export interface WorkbookData {
  readonly version: typeof DATA_VERSION;
  readonly sheets: readonly SheetData[];
}

const COLUMN_NAME = /^[A-Z]{1,3}$/;
const NAME_LENGTH = 31;
const NOT_IN_NAME = /[\\/?*[\]:]/;

type Bag = Readonly<Record<string, unknown>>;

const isBag = (value: unknown): value is Bag => typeof value === "object" && value !== null && !Array.isArray(value);

const bag = (where: string, value: unknown): Bag => {
  if (!isBag(value)) throw new Error(`${where}: must be an object, got ${JSON.stringify(value)}`);
  return value;
};

const onlyKnown = (where: string, given: Bag, known: readonly string[]): void => {
  const unknown = Object.keys(given).find((key) => !known.includes(key));
  if (unknown !== undefined) throw new Error(`${where}: has no "${unknown}"; it may have ${known.join(", ")}`);
};

const isPlain = (value: unknown): value is PlainValue =>
  typeof value === "string" || typeof value === "boolean" || (typeof value === "number" && Number.isFinite(value));

const cell = (where: string, raw: unknown): CellData => {
  const given = bag(where, raw);
  onlyKnown(where, given, ["value", "formula", "format", "style"]);
  const { value, formula, format, style } = given;
  if (value !== undefined && formula !== undefined) throw new Error(`${where}: has a value and a formula; it may have one of them`);
  if (value !== undefined && !isPlain(value))
    throw new Error(`${where}, value: must be text, a number, true or false, got ${JSON.stringify(value)}`);
  if (formula !== undefined && (typeof formula !== "string" || !formula.startsWith("="))) {
    throw new Error(`${where}, formula: must be text that starts with =, got ${JSON.stringify(formula)}`);
  }
  if (format !== undefined && typeof format !== "string") throw new Error(`${where}, format: must be text, got ${JSON.stringify(format)}`);
  if (style !== undefined && !isStyleName(style)) {
    throw new Error(`${where}, style: must be one of ${Object.keys(cellLooks).join(", ")}, got ${JSON.stringify(style)}`);
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
      if (!COLUMN_NAME.test(column)) throw new Error(`${where}: a column is written A or AB, got "${column}"`);
      if (typeof width !== "number" || !(width > 0))
        throw new Error(`${where}, ${column}: must be a number of pixels over 0, got ${JSON.stringify(width)}`);
      return [column, width];
    }),
  );

const sheetName = (where: string, name: unknown): string => {
  if (typeof name !== "string" || name.trim() === "" || name.length > NAME_LENGTH || NOT_IN_NAME.test(name)) {
    throw new Error(`${where}, name: must be 1 to ${NAME_LENGTH} characters without \\ / ? * [ ] :, got ${JSON.stringify(name)}`);
  }
  return name;
};

const sheet = (raw: unknown, index: number): SheetData => {
  const given = bag(`sheet ${index + 1}`, raw);
  const name = sheetName(`sheet ${index + 1}`, given["name"]);
  const where = `sheet "${name}"`;
  onlyKnown(where, given, ["name", "cells", "columnWidths", "frozenRows"]);
  const { columnWidths, frozenRows } = given;
  const cells: Record<string, CellData> = {};
  for (const [address, stored] of Object.entries(bag(`${where}, cells`, given["cells"]))) {
    cellPlace(address);
    cells[address] = cell(`${where}, ${address}`, stored);
  }
  if (frozenRows !== undefined && !(Number.isInteger(frozenRows) && Number(frozenRows) >= 0)) {
    throw new Error(`${where}, frozenRows: must be a whole number, got ${JSON.stringify(frozenRows)}`);
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
    throw new Error(`workbook, version: must be a whole number from 1 up, got ${JSON.stringify(version)}`);
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
