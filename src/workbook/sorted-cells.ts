import { AbsoluteRefType, type ICellData, type IRange, Tools, type Worksheet } from "@univerjs/core";
import { type LexerTreeBuilder, serializeRange, serializeRangeWithSheet } from "@univerjs/engine-formula";
import { cellAddress } from "../sheets/cell-address";
import { rewritten } from "./rewritten-formula";
import { sortOrder } from "./sort-order";
import type { Workbook } from "./workbook";

type Cells = Record<number, Record<number, ICellData | null>>;

/** Cells as they are and as they are once sorted. */
export interface SortedCells {
  readonly before: Cells;
  readonly after: Cells;
  readonly emptied: Cells;
  /** Rows that come to another place. */
  readonly moves: readonly RowMove[];
}

export interface RowMove {
  readonly from: number;
  readonly to: number;
}

const isRowFixed = (type: AbsoluteRefType | undefined): boolean => ((type ?? AbsoluteRefType.NONE) & AbsoluteRefType.ROW) !== 0;

/** Whether a range reads some rows of a table and not all; whole columns have no rows. */
const isPartOf = (table: IRange, { startRow, endRow, startColumn, endColumn }: IRange): boolean => {
  const isBeside = startColumn > table.endColumn || endColumn < table.startColumn;
  const isWhole = startRow <= table.startRow && endRow >= table.endRow;
  return startRow <= table.endRow && endRow >= table.startRow && !isBeside && !isWhole;
};

/**
 * A formula of one row as it reads in another. It goes on reading its own row, and all else where it was: cells outside the table, or all
 * rows of it. Undefined where it reads some other row of the table, so that what it means depends on the order.
 */
export const formulaIn = (
  lexer: LexerTreeBuilder, formula: string, sheet: string, table: IRange, from: number, to: number,
): string | undefined => {
  let isOrdered = false;
  const next = rewritten(lexer, formula, (range, sheetName) => {
    if (sheetName !== "" && sheetName.toLowerCase() !== sheet.toLowerCase()) return undefined;
    const { startRow, endRow, startAbsoluteRefType: first, endAbsoluteRefType: last } = range;
    if (startRow === from && endRow === from && !isRowFixed(first) && !isRowFixed(last)) {
      const moved = { ...range, startRow: to, endRow: to };
      return sheetName === "" ? serializeRange(moved) : serializeRangeWithSheet(sheetName, moved);
    }
    isOrdered ||= isPartOf(table, range);
    return undefined;
  });
  return isOrdered ? undefined : next;
};

/** The rows of a table by the values of one of its columns; the sentence of a cell that would mean something else afterwards. */
export const sortedCells = (
  workbook: Workbook, lexer: LexerTreeBuilder, sheet: Worksheet, range: IRange, column: number, isUp: boolean,
): SortedCells | string => {
  const name = sheet.getName();
  const rows: number[] = [];
  // A hidden row stays where it is, as in any spreadsheet.
  for (let row = range.startRow; row <= range.endRow; row += 1) if (sheet.getRowVisible(row)) rows.push(row);
  const order = sortOrder(rows.map((row) => workbook.value(name, cellAddress({ row, column }))), isUp);
  const sorted: { before: Cells; after: Cells; emptied: Cells; moves: RowMove[] } = { before: {}, after: {}, emptied: {}, moves: [] };
  for (const [place, from] of order.entries()) {
    const [source, target] = [rows[from] ?? 0, rows[place] ?? 0];
    if (source === target) continue;
    sorted.moves.push({ from: source, to: target });
    for (let at = range.startColumn; at <= range.endColumn; at += 1) {
      const cell = sheet.getCellRaw(source, at);
      const address = cellAddress({ row: source, column: at });
      const formula = workbook.formula(name, address);
      const moved = formula === undefined ? undefined : formulaIn(lexer, formula, name, range, source, target);
      if (formula !== undefined && moved === undefined)
        return `${address} reads another row of what is to be sorted, so it would come to something else. Nothing is moved.`;
      const { si: _shared, f: _formula, ...rest } = Tools.deepClone(cell ?? {});
      (sorted.before[source] ??= {})[at] = cell ? { ...Tools.deepClone(rest), ...(formula === undefined ? {} : { f: formula }) } : null;
      (sorted.after[target] ??= {})[at] = cell ? { ...rest, ...(moved === undefined ? {} : { f: moved }) } : null;
      (sorted.emptied[source] ??= {})[at] = null;
    }
  }
  return sorted;
};
