import { cellAddress, cellPlace } from "../sheets/cell-address";
import type { CellData, SheetData } from "../sheets/sheet-data";
import type { Workbook } from "../workbook/workbook";
import type { PrintedCell } from "./printed-regions";

/** From column AA on stands what other sheets read, and what the first columns show a view of. */
const IN_FULL = 26;
const LINES: ReadonlySet<string> = new Set(["title", "says", "caution"]);
/** What a letter takes up at the usual size, and a column whose width nobody has set, in pixels. */
const LETTER = 6.6;
const USUAL_WIDTH = 88;

/** A cell that is printed, with what it is made of. */
export interface SheetCell extends PrintedCell {
  readonly isNumber: boolean;
  readonly stored: CellData | undefined;
}

const letters = (column: number): string => cellAddress({ row: 0, column }).replace(/\d+$/, "");

/** How many columns belong to a merged block, by the address of its first cell. */
const mergedOf = ({ merged = [] }: SheetData): ReadonlyMap<string, number> =>
  new Map(merged.map((block) => {
    const [from = "A1", to = from] = block.split(":");
    return [from, cellPlace(to).column - cellPlace(from).column + 1];
  }));

type Texts = Map<number, Map<number, { readonly text: string; readonly isNumber: boolean }>>;

/** Addresses that a merged block covers, but for its first. */
const coveredBy = ({ merged = [] }: SheetData): ReadonlySet<string> =>
  new Set(merged.flatMap((block) => {
    const [from = "A1", to = from] = block.split(":");
    const [first, last] = [cellPlace(from), cellPlace(to)];
    const found: string[] = [];
    for (let { row } = first; row <= last.row; row += 1)
      for (let { column } = first; column <= last.column; column += 1) found.push(cellAddress({ row, column }));
    return found.slice(1);
  }));

/** Lines to write on are printed empty, beside what else stands in their rows. */
const withLines = (texts: Texts, sheet: SheetData, isShown: (row: number, column: number) => boolean): Texts => {
  const covered = coveredBy(sheet);
  for (const [address, { style }] of Object.entries(sheet.cells)) {
    const { row, column } = cellPlace(address);
    const cells = texts.get(row);
    if (style !== "byHand" || cells === undefined || cells.has(column) || covered.has(address) || !isShown(row, column)) continue;
    cells.set(column, { text: "", isNumber: false });
  }
  return texts;
};

const textsOf = (book: Pick<Workbook, "shown" | "value" | "spills">, sheet: SheetData): Texts => {
  const hiddenColumns = new Set(sheet.hiddenColumns ?? []);
  const hiddenRows = new Set([...(sheet.hiddenRows ?? []), ...(sheet.filter?.hides ?? [])]);
  const isShown = (row: number, column: number): boolean =>
    column < IN_FULL && !hiddenRows.has(row + 1) && !hiddenColumns.has(letters(column));
  const texts: Texts = new Map();
  const add = (row: number, column: number): void => {
    if (!isShown(row, column)) return;
    const address = cellAddress({ row, column });
    const value = book.value(sheet.name, address);
    const text = typeof value === "object" && value !== null ? value.error : book.shown(sheet.name, address).trim();
    if (text === "") return;
    const cells = texts.get(row) ?? new Map();
    texts.set(row, cells.set(column, { text, isNumber: typeof value === "number" }));
  };
  for (const address of Object.keys(sheet.cells)) {
    const { row, column } = cellPlace(address);
    add(row, column);
  }
  for (const block of book.spills(sheet.name)) {
    for (let row = block.row; row < block.row + block.rows; row += 1)
      for (let column = block.column; column < block.column + block.columns; column += 1) add(row, column);
  }
  return withLines(texts, sheet, isShown);
};

/** The cells of a sheet that are printed: what they show, how far they run on, and whether they are a line or a heading. */
export const printedCells = (
  book: Pick<Workbook, "shown" | "value" | "spills">, sheet: SheetData,
): ReadonlyMap<number, ReadonlyMap<number, SheetCell>> => {
  const texts = textsOf(book, sheet);
  const merged = mergedOf(sheet);
  const widthOf = (column: number): number => sheet.columnWidths?.[letters(column)] ?? USUAL_WIDTH;
  const coversOf = (row: number, column: number, text: string, stays: boolean): number => {
    const own = merged.get(cellAddress({ row, column }));
    if (own !== undefined) return own;
    let room = widthOf(column);
    let covers = 1;
    while (!stays && room < text.length * LETTER && column + covers < IN_FULL && !texts.get(row)?.has(column + covers)) {
      room += widthOf(column + covers);
      covers += 1;
    }
    return covers;
  };
  return new Map([...texts].map(([row, cells]) => [
    row,
    new Map([...cells].map(([column, { text, isNumber }]): [number, SheetCell] => {
      const stored = sheet.cells[cellAddress({ row, column })];
      const style: string = stored?.style ?? "";
      return [column, {
        text,
        isNumber,
        stored,
        // A heading stays over its own column, or two tables beside one another would be one.
        covers: coversOf(row, column, text, isNumber || style.startsWith("heading")),
        isLine: LINES.has(style),
        isHeading: style.startsWith("heading") || style === "name",
      }];
    })),
  ]));
};
