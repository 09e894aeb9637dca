import { cellAddress, type CellPlace } from "../../sheets/cell-address";
import { blockAddress, type CellBlock } from "../../sheets/cell-blocks";
import { isDateFormat } from "../../sheets/cell-format";
import type { CellData } from "../../sheets/sheet-data";
import { DAYS_TO_1904 } from "../date-number";
import type { Standing } from "../formula/names-in-place";
import { severalForOne } from "../formula/several-for-one";
import { LONGEST_STORED, type Named, sheetFormula, TOO_LONG } from "../formula/sheet-formula";
import { shiftedFormula } from "../formula/shifted-formula";
import type { FileStyles } from "../look/read-styles";
import { childOf, countOf, isSet, numberOf, spend, type Work, type XmlElement } from "../xml-tree";
import { plainText } from "../xml-text";
import { cellValue, isStoredError, type StoredValue } from "./cell-value";
import { fileBlock } from "./file-block";
import { placedRows } from "./placed-cells";
import type { SharedText } from "./shared-strings";

/** Why a live sheet cannot take a formula, of a cell or of a rule, which has none; undefined for one it can. */
export type Refusing = (formula: string, cell?: { readonly sheet: string; readonly address: string }) => string | undefined;

/** What the cells of a sheet are read with. */
export interface CellReading {
  readonly sheet: string;
  readonly strings: readonly SharedText[];
  readonly styles: FileStyles;
  readonly named: (standing: Standing) => Named;
  readonly countsFrom1904: boolean;
  readonly refuses: Refusing;
  readonly work: Work;
}

/** A formula that stays in the file and shows what it came to when it was last worked out. */
export interface KeptFormula {
  readonly address: string;
  readonly formula: string;
  readonly why: string;
  /** The block of an array formula. */
  readonly cells?: string;
}

export interface ReadCells {
  readonly cells: Readonly<Record<string, CellData>>;
  readonly hiddenRows: readonly number[];
  readonly rowHeights: Readonly<Record<string, number>>;
  /** What formulas came to when the file was saved. */
  readonly stored: Readonly<Record<string, StoredValue>>;
  readonly kept: readonly KeptFormula[];
  readonly hasLooksInTexts: boolean;
  readonly rows: number;
  readonly columns: number;
}

interface SharedFormula extends CellPlace {
  readonly formula: string;
}

interface Growing {
  readonly cells: Record<string, CellData>;
  readonly stored: Record<string, StoredValue>;
  readonly kept: KeptFormula[];
  readonly shared: Map<string, SharedFormula>;
  /** Blocks that spilled by the columns they have cells in; those that ended above a cell are taken out when it is read. */
  readonly spilled: Map<number, CellBlock[]>;
  hasLooksInTexts: boolean;
  rows: number;
  columns: number;
}

/** A pixel is three quarters of a point at the 96 dots an inch that files are measured for (ECMA-376-1, 18.3.1.13). */
export const POINTS = 0.75;
const MOST_PIXELS = 10_000;

/** A character of a formula takes as long as so many of a part. */
export const FORMULA_WORK = 4;

const FUNCTION = /^[A-Z][A-Z0-9.]*$/;

/** Why a formula that is no array formula cannot be worked out here; undefined for one that can. */
const plainFault = (formula: string): string | undefined => {
  const several = severalForOne(formula);
  if (several === undefined) return undefined;
  const taken = FUNCTION.test(several)
    ? `one value alone of those that ${several} comes to`
    : `of ${several} the value in its own row or column alone`;
  return `takes ${taken}, which cannot be worked out here`;
};

type Formula = { readonly text: string } | { readonly why: string; readonly text: string };

const formulaText = (element: XmlElement, { row, column }: CellPlace, shared: Map<string, SharedFormula>): Formula | undefined => {
  const { t: kind, si } = element.attributes;
  const text = plainText(element.text).replace(/^=/, "");
  if (text.length > LONGEST_STORED) return { text: text.slice(0, LONGEST_STORED), why: TOO_LONG };
  if (kind === "dataTable") return { text: "TABLE()", why: "is a what-if table" };
  if (kind !== "shared" || si === undefined) return text === "" ? undefined : { text };
  if (text !== "") shared.set(si, { row, column, formula: text });
  const first = shared.get(si);
  return first && { text: shiftedFormula(first.formula, row - first.row, column - first.column) };
};

const dated = (value: StoredValue | undefined, format: string | undefined, reading: CellReading): StoredValue | undefined =>
  reading.countsFrom1904 && typeof value === "number" && format !== undefined && isDateFormat(format) ? value + DAYS_TO_1904 : value;

const plainCell = (value: StoredValue | undefined): CellData =>
  value === undefined ? {} : isStoredError(value) ? { formula: `=${value.error}` } : { value };

/** What a cell says, without its look. */
const content = (element: XmlElement, place: CellPlace, reading: CellReading, growing: Growing, format: string | undefined): CellData => {
  const value = dated(cellValue(element, reading.strings), format, reading);
  const formula = childOf(element, "f");
  const found = formula && formulaText(formula, place, growing.shared);
  if (formula === undefined || found === undefined) return plainCell(value);
  spend(reading.work, 0, FORMULA_WORK * found.text.length);
  const address = cellAddress(place);
  if (value !== undefined) growing.stored[address] = value;
  const text = "why" in found ? { unshown: found.why } : sheetFormula(found.text, reading.named({ ...place, sheet: reading.sheet }));
  const isArray = formula.attributes["t"] === "array";
  const why = typeof text === "string"
    ? (reading.refuses(`=${text}`, { sheet: reading.sheet, address }) ?? (isArray ? undefined : plainFault(text)))
    : text.unshown;
  const block = isArray ? fileBlock(formula.attributes["ref"] ?? "") : undefined;
  if (why === undefined && block !== undefined && block.rows * block.columns > 1) noteSpilled(block, reading, growing);
  if (why === undefined && typeof text === "string") return { formula: `=${text}` };
  const cells = block !== undefined && block.rows * block.columns > 1 ? { cells: blockAddress(block) } : {};
  growing.kept.push({ address, formula: `=${found.text}`, why: why ?? "", ...cells });
  return plainCell(value);
};

const noteSpilled = (block: CellBlock, { work }: CellReading, { spilled }: Growing): void => {
  spend(work, block.columns);
  for (let column = block.column; column < block.column + block.columns; column += 1) {
    const blocks = spilled.get(column);
    if (blocks === undefined) spilled.set(column, [block]);
    else blocks.push(block);
  }
};

/** Whether a cell shows what a formula in another one came to. */
const isSpilled = ({ row, column }: CellPlace, { work }: CellReading, { spilled }: Growing): boolean => {
  const blocks = spilled.get(column) ?? [];
  spend(work, blocks.length);
  const open = blocks.filter((block) => block.row + block.rows > row);
  if (open.length < blocks.length) spilled.set(column, open);
  return open.some((block) => (row !== block.row || column !== block.column) && row >= block.row);
};

const readCell = (element: XmlElement, place: CellPlace, reading: CellReading, growing: Growing): void => {
  const style = reading.styles.cell(countOf(element.attributes["s"]));
  const said = isSpilled(place, reading, growing) ? {} : content(element, place, reading, growing, style.format);
  const cell: CellData = { ...said, ...style };
  const text = element.attributes["t"] === "s" ? countOf(childOf(element, "v")?.text) : undefined;
  if (reading.strings[text ?? -1]?.hasLooks) growing.hasLooksInTexts = true;
  growing.rows = Math.max(growing.rows, place.row + 1);
  growing.columns = Math.max(growing.columns, place.column + 1);
  if (Object.keys(cell).length > 0) growing.cells[cellAddress(place)] = cell;
};

/** The rows of a sheet with their cells. */
export const readCells = (sheetData: XmlElement | undefined, reading: CellReading): ReadCells => {
  const growing: Growing = {
    cells: {}, stored: {}, kept: [], shared: new Map(), spilled: new Map(), hasLooksInTexts: false, rows: 0, columns: 0,
  };
  const hiddenRows = new Set<number>();
  const rowHeights: Record<string, number> = {};
  for (const { number, element, cells: inRow } of placedRows(sheetData)) {
    const { hidden, ht, customHeight } = element.attributes;
    if (isSet(hidden)) hiddenRows.add(number);
    const height = (numberOf(ht) ?? 0) / POINTS;
    if (isSet(customHeight) && height > 0) rowHeights[number] = Math.min(height, MOST_PIXELS);
    for (const { element: cell, ...place } of inRow) readCell(cell, place, reading, growing);
  }
  const { cells, stored, kept, hasLooksInTexts, rows, columns } = growing;
  return { cells, hiddenRows: [...hiddenRows], rowHeights, stored, kept, hasLooksInTexts, rows, columns };
};
