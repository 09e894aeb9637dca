import type { CellData, ChoiceList, PlainValue, RowFilter, RuleLook, SheetData } from "../sheets/sheet-data";
import { cellPlace, columnPlace } from "../sheets/cell-address";
import { cellLooks, isStyleName } from "../sheets/cell-looks";
import { isColour, lookFault, type OwnLook } from "../sheets/own-look";
import { formulaFault } from "./formula-limits";

export type { CellData, ChoiceList, PlainValue, RowFilter, RuleLook, SheetData } from "../sheets/sheet-data";

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
/** Pixels of a column or a row that no screen shows whole. */
export const WIDEST = 10_000;
/** Each is compared with every other. */
const MOST_MERGED = 10_000;
/** Each is worked out with every calculation. */
const MOST_RULED = 200_000;
/** What is quoted of a wrong value. */
const MOST_QUOTED = 60;
const NOT_IN_NAME = /[\\/?*[\]:]/;

/** A wrong value as it stands in a sentence; of a long one the beginning. */
export const quoted = (value: unknown): string => {
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

const ownLook = (where: string, raw: unknown): OwnLook => {
  const given = bag(where, raw);
  for (const [name, value] of Object.entries(given)) {
    const fault = lookFault(name, value);
    if (fault !== undefined) throw new Error(`${where}: ${fault}, got ${quoted(value)}`);
  }
  return given;
};

const cell = (where: string, raw: unknown): CellData => {
  const given = bag(where, raw);
  onlyKnown(where, given, ["value", "formula", "format", "style", "look"]);
  const { value, formula, format, style, look } = given;
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
    ...(look === undefined ? {} : { look: ownLook(`${where}, look`, look) }),
  };
};

const column = (where: string, name: unknown): string => {
  if (typeof name !== "string" || !COLUMN_NAME.test(name) || columnPlace(name) >= MOST_COLUMNS)
    throw new Error(`${where}: a column is written A to XFD, in capitals, got ${quoted(name)}`);
  return name;
};

const row = (where: string, number: unknown): number => {
  if (typeof number !== "number" || !Number.isInteger(number) || number < 1 || number > MOST_ROWS)
    throw new Error(`${where}: a row is a whole number from 1 to ${MOST_ROWS}, got ${quoted(number)}`);
  return number;
};

const pixels = (where: string, raw: unknown, name: (where: string, given: string) => unknown): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(bag(where, raw)).map(([of, size]) => {
      name(where, of);
      if (typeof size !== "number" || !(size > 0 && size <= WIDEST))
        throw new Error(`${where}, ${of}: must be a number of pixels over 0 and up to ${WIDEST}, got ${quoted(size)}`);
      return [of, size];
    }),
  );

const isTrue = (where: string, raw: unknown): true => {
  if (raw !== true) throw new Error(`${where}: must be true, got ${quoted(raw)}`);
  return raw;
};

const list = <Item>(where: string, raw: unknown, read: (where: string, item: unknown) => Item): readonly Item[] => {
  if (!Array.isArray(raw)) throw new Error(`${where}: must be a list, got ${quoted(raw)}`);
  return raw.map((item) => read(where, item));
};

const frozen = (where: string, raw: unknown, most: number): number => {
  if (typeof raw !== "number" || !Number.isInteger(raw) || raw < 0 || raw >= most)
    throw new Error(`${where}: must be a whole number from 0 up and below ${most}, got ${quoted(raw)}`);
  return raw;
};

const isAddress = (given: string): boolean => {
  const place = ADDRESS.test(given) ? cellPlace(given) : undefined;
  return place !== undefined && place.row < MOST_ROWS && place.column < MOST_COLUMNS;
};

const address = (where: string, given: string): void => {
  if (!isAddress(given)) throw new Error(`${where}, cells: an address is written A1 to ${LAST_CELL}, in capitals, got ${quoted(given)}`);
};

/** Blocks of cells that are one: no two may meet, or neither could be drawn. */
const merged = (where: string, raw: unknown): readonly string[] => {
  const blocks = list(where, raw, (_, item) => {
    const [from, to, more] = typeof item === "string" ? item.split(":") : [];
    if (from === undefined || to === undefined || more !== undefined || !isAddress(from) || !isAddress(to))
      throw new Error(`${where}: a block is written A1:C2, in capitals, got ${quoted(item)}`);
    return { item: `${from}:${to}`, from: cellPlace(from), to: cellPlace(to) };
  });
  if (blocks.length > MOST_MERGED) throw new Error(`${where}: must be at most ${MOST_MERGED} blocks, got ${blocks.length}`);
  for (const [index, { item, from, to }] of blocks.entries()) {
    if (from.row > to.row || from.column > to.column) throw new Error(`${where}: a block begins at its top left, got "${item}"`);
    const other = blocks.slice(0, index).find((one) =>
      one.from.row <= to.row && from.row <= one.to.row && one.from.column <= to.column && from.column <= one.to.column);
    if (other !== undefined) throw new Error(`${where}: "${other.item}" and "${item}" have cells in common`);
  }
  return blocks.map(({ item }) => item);
};

const block = (where: string, raw: unknown): string => {
  const corners = typeof raw === "string" ? raw.split(":") : [];
  if (typeof raw !== "string" || corners.length > 2 || corners.length === 0 || !corners.every(isAddress))
    throw new Error(`${where}: must be cells such as A8:A70, got ${quoted(raw)}`);
  return raw;
};

const text = (where: string, raw: unknown): string => {
  if (typeof raw !== "string" || raw === "") throw new Error(`${where}: must be text, got ${quoted(raw)}`);
  return raw;
};

const ruleLook = (where: string, raw: unknown): RuleLook => {
  const given = bag(where, raw);
  onlyKnown(where, given, ["cells", "when", "look"]);
  const when = text(`${where}, when`, given["when"]);
  if (!when.startsWith("=")) throw new Error(`${where}, when: must be a formula that starts with =, got ${quoted(when)}`);
  const fault = formulaFault(when);
  if (fault !== undefined) throw new Error(`${where}, when: ${fault}`);
  return { cells: block(`${where}, cells`, given["cells"]), when, look: ownLook(`${where}, look`, given["look"]) };
};

const choiceList = (where: string, raw: unknown): ChoiceList => {
  const given = bag(where, raw);
  onlyKnown(where, given, ["cells", "options"]);
  const options = list(`${where}, options`, given["options"], text);
  if (options.length === 0) throw new Error(`${where}, options: must be one or more`);
  const joined = options.find((option) => option.includes(","));
  if (joined !== undefined) throw new Error(`${where}, options: none may hold a comma, got ${quoted(joined)}`);
  return { cells: block(`${where}, cells`, given["cells"]), options };
};

const sizeOf = (cells: string): number => {
  const [from = "", to = from] = cells.split(":");
  const [first, last] = [cellPlace(from), cellPlace(to)];
  return (Math.abs(last.row - first.row) + 1) * (Math.abs(last.column - first.column) + 1);
};

const blocks = <Item extends { readonly cells: string }>(where: string, raw: unknown, read: (where: string, item: unknown) => Item) => {
  const items = list(where, raw, read);
  const count = items.reduce((sum, { cells }) => sum + sizeOf(cells), 0);
  if (count > MOST_RULED) throw new Error(`${where}: must be over at most ${MOST_RULED} cells together, got ${count}`);
  return items;
};

const textOrEmpty = (where: string, raw: unknown): string => {
  if (typeof raw !== "string") throw new Error(`${where}: must be text, got ${quoted(raw)}`);
  return raw;
};

const rowFilter = (where: string, raw: unknown): RowFilter => {
  const given = bag(where, raw);
  onlyKnown(where, given, ["cells", "keeps", "hides"]);
  const cells = block(`${where}, cells`, given["cells"]);
  const [from = "", to = from] = cells.split(":");
  const [first, last] = [cellPlace(from), cellPlace(to)];
  if (first.row >= last.row || first.column > last.column)
    throw new Error(`${where}, cells: must be a row of headings and rows under it, such as A7:F70, got ${quoted(cells)}`);
  const keeps = Object.entries(bag(`${where}, keeps`, given["keeps"])).map(([of, kept]) => {
    const place = columnPlace(column(`${where}, keeps`, of));
    if (place < first.column || place > last.column) throw new Error(`${where}, keeps: ${of} is no column of ${cells}`);
    const texts = list(`${where}, keeps, ${of}`, kept, textOrEmpty);
    if (texts.length === 0) throw new Error(`${where}, keeps, ${of}: must be one text or more`);
    return [of, texts] as const;
  });
  const hides = list(`${where}, hides`, given["hides"], row);
  const outside = hides.find((number) => number - 1 <= first.row || number - 1 > last.row);
  if (outside !== undefined) throw new Error(`${where}, hides: ${outside} is no row under the headings of ${cells}`);
  return { cells, keeps: Object.fromEntries(keeps), hides };
};

const sheetName = (where: string, name: unknown): string => {
  if (typeof name !== "string" || name.trim() === "" || name.length > NAME_LENGTH || NOT_IN_NAME.test(name)) {
    throw new Error(`${where}, name: must be 1 to ${NAME_LENGTH} characters without \\ / ? * [ ] :, got ${quoted(name)}`);
  }
  return name;
};

/** Reads each setting of a sheet. */
const SETTINGS: { readonly [Name in keyof Omit<SheetData, "name" | "cells">]-?: (where: string, raw: unknown) => SheetData[Name] } = {
  columnWidths: (where, raw) => pixels(where, raw, column),
  frozenRows: (where, raw) => frozen(where, raw, MOST_ROWS),
  frozenColumns: (where, raw) => frozen(where, raw, MOST_COLUMNS),
  rowHeights: (where, raw) => pixels(where, raw, (at, number) => row(at, /^[1-9]\d*$/.test(number) ? Number(number) : number)),
  hiddenRows: (where, raw) => list(where, raw, row),
  hiddenColumns: (where, raw) => list(where, raw, column),
  merged,
  rules: (where, raw) => blocks(where, raw, ruleLook),
  lists: (where, raw) => blocks(where, raw, choiceList),
  filter: rowFilter,
  hidesGridLines: isTrue,
  isHidden: isTrue,
  tabColour: (where, raw) => {
    if (!isColour(raw)) throw new Error(`${where}: must be a colour such as #7a4a1e, got ${quoted(raw)}`);
    return raw;
  },
};

const sheet = (raw: unknown, index: number): SheetData => {
  const given = bag(`sheet ${index + 1}`, raw);
  const name = sheetName(`sheet ${index + 1}`, given["name"]);
  const where = `sheet "${name}"`;
  onlyKnown(where, given, ["name", "cells", ...Object.keys(SETTINGS)]);
  const cells: Record<string, CellData> = {};
  for (const [at, stored] of Object.entries(bag(`${where}, cells`, given["cells"]))) {
    address(where, at);
    cells[at] = cell(`${where}, ${at}`, stored);
  }
  const settings = Object.entries(SETTINGS).flatMap(([setting, read]) =>
    given[setting] === undefined ? [] : [[setting, read(`${where}, ${setting}`, given[setting])] as const],
  );
  return { name, cells, ...Object.fromEntries(settings) };
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
  if (read.every(({ isHidden }) => isHidden)) throw new Error("workbook, sheets: every sheet is hidden; one must be shown");
  const names = read.map(({ name }) => name.toLowerCase());
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined) throw new Error(`workbook, sheets: two sheets are named "${twice}"`);
  return { version: DATA_VERSION, sheets: read };
};

/** Whether a sheet by itself, hidden or not, can be shown here. */
export const isSoundSheet = (sheet: SheetData): boolean => {
  try {
    workbookData({ version: DATA_VERSION, sheets: [{ ...sheet, isHidden: undefined }] });
    return true;
  } catch {
    return false;
  }
};
