import { cellAddress, cellPlace, type CellPlace } from "../../sheets/cell-address";
import { blockAddress } from "../../sheets/cell-blocks";
import type { OwnLook } from "../../sheets/own-look";
import type { CellData, SheetData } from "../../sheets/sheet-data";
import { tapeRules } from "../../sheets/tape-rules";
import { fileFormula } from "../formula/file-formula";
import type { WrittenStyles } from "../look/written-styles";
import { escapedText } from "../xml-text";
import type { Calculated, CalculatedValue } from "./calculated";
import { POINTS } from "./read-cells";
import { valueXml } from "./value-xml";
import type { WrittenStrings } from "./written-strings";

/** What the cells of all sheets are written with. */
export interface CellWriting {
  readonly styles: WrittenStyles;
  readonly strings: WrittenStrings;
  readonly calculated: Calculated;
  readonly hasFormulas: boolean;
  /** The look a cell has, by itself and by the rules over it: where there are no formulas no rule can find it. */
  readonly shownLook?: ((sheet: string, address: string) => OwnLook) | undefined;
  /** Functions of the add-in that were called, as the file names them. */
  readonly added: Set<string>;
  /** The number of the metadata that marks a dynamic array. */
  readonly dynamic: () => number;
}

/** The highest row in points ("Excel specifications and limits"); a higher one is in the extras. */
export const HIGHEST = 409;

interface Written extends CellPlace {
  readonly xml: string;
}

/** Counted from the first cell of a sheet. */
export interface Extent {
  readonly rows: number;
  readonly columns: number;
}

export interface WrittenCells {
  readonly xml: string;
  /** The cells that are there, from the first to the last: A1 where there are none. */
  readonly dimension: string;
  readonly columns: number;
  /** How many rows and columns reach to the last cell in so many columns from the left. */
  readonly within: (columns: number) => Extent;
}

/** A format for a number that will not change: it has the mark of the tape that the number comes to. */
const fixedFormat = (format: string | undefined, value: CalculatedValue): string | undefined =>
  format === undefined || typeof value !== "number"
    ? format
    : (tapeRules(format).find(({ holdsFor }) => holdsFor(value))?.numberFormat ?? format);

/** The formula of a cell as the file has it: a dynamic array where it may come to more than its own cell ([MS-XLSX] 2.2.4.17). */
export const formulaXml = (
  formula: string, cells: string, isSpilled: boolean, { added, dynamic }: Pick<CellWriting, "added" | "dynamic">,
): readonly [attributes: string, xml: string] => {
  const { formula: text, added: called, isArray } = fileFormula(formula);
  for (const name of called) added.add(name);
  const escaped = escapedText(text);
  return isArray || isSpilled ? [` cm="${dynamic()}"`, `<f t="array" ref="${cells}">${escaped}</f>`] : ["", `<f>${escaped}</f>`];
};

const cellXml = (address: string, style: number, attributes: string, content: string): string => {
  const open = `<c r="${address}"${style === 0 ? "" : ` s="${style}"`}${attributes}`;
  return content === "" ? `${open}/>` : `${open}>${content}</c>`;
};

const typed = (type: string): string => (type === "" ? "" : ` t="${type}"`);

/** A text by its place among the texts of all cells; anything else as it is. */
export const plainXml = (value: CalculatedValue, strings: WrittenStrings): readonly [attributes: string, xml: string] => {
  if (typeof value === "string") return [' t="s"', `<v>${strings.place(value)}</v>`];
  const written = valueXml(value);
  return written === undefined ? ["", ""] : [typed(written.type), `<v>${written.text}</v>`];
};

const writer = ({ name, cells }: SheetData, writing: CellWriting) => {
  const { styles, strings, calculated, hasFormulas, shownLook } = writing;
  const found = new Map<string, Written>();
  const styleOf = (address: string, value: CalculatedValue): number => {
    const cell: CellData = cells[address] ?? {};
    if (hasFormulas) return styles.cell(cell);
    const format = fixedFormat(cell.format, value);
    const own = shownLook === undefined ? cell : { look: shownLook(name, address) };
    return styles.cell({ ...own, ...(format === undefined ? {} : { format }) });
  };
  const put = (address: string, value: CalculatedValue, [attributes, xml]: readonly [string, string]): void => {
    found.set(address, { ...cellPlace(address), xml: cellXml(address, styleOf(address, value), attributes, xml) });
  };
  const formula = (address: string, text: string): void => {
    const spilled = calculated.spill(name, address);
    // A formula that leads to an empty cell shows 0 in a spreadsheet; a copy of values shows what the sheet here does.
    const block = hasFormulas ? spilled.map((line) => line.map((one) => one ?? 0)) : spilled;
    const { row, column } = cellPlace(address);
    const [rows, columns] = [Math.max(block.length, 1), Math.max(block[0]?.length ?? 0, 1)];
    const value = block[0]?.[0] ?? calculated.value(name, address);
    if (hasFormulas) {
      const ref = blockAddress({ row, column, rows, columns });
      const [more, xml] = formulaXml(text, ref, rows * columns > 1, writing);
      const written = valueXml(value);
      put(address, value, [typed(written?.type ?? "") + more, xml + (written === undefined ? "" : `<v>${written.text}</v>`)]);
    } else put(address, value, plainXml(value, strings));
    for (const [down, line] of block.entries()) {
      for (const [right, one] of line.entries()) {
        const at = cellAddress({ row: row + down, column: column + right });
        // Texts of a spilled cell stand in it itself, as those of a formula do.
        const written = hasFormulas ? valueXml(one) : undefined;
        if (at !== address) put(at, one, written === undefined ? plainXml(one, strings) : [typed(written.type), `<v>${written.text}</v>`]);
      }
    }
  };
  return { found, put, formula };
};

/** The cells of a sheet, formulas with what they come to beside them, or what they come to alone. */
export const writtenCells = (sheet: SheetData, writing: CellWriting): WrittenCells => {
  const { found, put, formula } = writer(sheet, writing);
  for (const [address, cell] of Object.entries(sheet.cells))
    if (cell.formula === undefined) put(address, cell.value ?? null, plainXml(cell.value ?? null, writing.strings));
  for (const [address, cell] of Object.entries(sheet.cells)) if (cell.formula !== undefined) formula(address, cell.formula);
  const rows = new Map<number, Written[]>();
  const { hiddenRows = [], rowHeights = {} } = sheet;
  for (const number of [...hiddenRows, ...Object.keys(rowHeights).map(Number)]) rows.set(number - 1, []);
  let [firstRow, firstColumn, lastRow, lastColumn] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 0, 0];
  for (const cell of found.values()) {
    const line = rows.get(cell.row) ?? [];
    line.push(cell);
    rows.set(cell.row, line);
    [firstRow, lastRow] = [Math.min(firstRow, cell.row), Math.max(lastRow, cell.row)];
    [firstColumn, lastColumn] = [Math.min(firstColumn, cell.column), Math.max(lastColumn, cell.column)];
  }
  const isHidden = new Set(hiddenRows);
  const lines = [...rows].sort(([one], [other]) => one - other).map(([row, line]) => {
    const height = rowHeights[row + 1];
    const size = height === undefined ? "" : ` ht="${Math.min(height * POINTS, HIGHEST)}" customHeight="1"`;
    const inOrder = line.sort((one, other) => one.column - other.column).map(({ xml }) => xml).join("");
    return `<row r="${row + 1}"${isHidden.has(row + 1) ? ' hidden="1"' : ""}${size}>${inOrder}</row>`;
  });
  const dimension = found.size === 0
    ? "A1"
    : blockAddress({ row: firstRow, column: firstColumn, rows: lastRow - firstRow + 1, columns: lastColumn - firstColumn + 1 });
  const within = (most: number): Extent => {
    const cells = [...found.values()].filter(({ column }) => column < most);
    const last = (of: (cell: CellPlace) => number): number => cells.reduce((far, cell) => Math.max(far, of(cell) + 1), 1);
    return { rows: last(({ row }) => row), columns: last(({ column }) => column) };
  };
  return { xml: `<sheetData>${lines.join("")}</sheetData>`, dimension, columns: lastColumn + 1, within };
};
