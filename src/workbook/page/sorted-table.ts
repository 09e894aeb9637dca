import { type IRange, type Nullable, RANGE_TYPE, type Worksheet } from "@univerjs/core";
import { expandToContinuousRange } from "@univerjs/sheets";
import { cellAddress, type CellPlace } from "../../sheets/cell-address";
import type { Workbook } from "../workbook";

const EVERY_WAY = { up: true, down: true, left: true, right: true };
const TO_BOTH_SIDES = { left: true, right: true };

const addressOf = ({ startRow, startColumn, endRow, endColumn }: IRange): string =>
  [{ row: startRow, column: startColumn }, { row: endRow, column: endColumn }].map(cellAddress).join(":");

const meet = (one: IRange, other: IRange): boolean =>
  one.startRow <= other.endRow && other.startRow <= one.endRow && one.startColumn <= other.endColumn && other.startColumn <= one.endColumn;

const placesOf = (row: number, { startColumn, endColumn }: IRange): readonly string[] =>
  Array.from({ length: endColumn - startColumn + 1 }, (_, along) => cellAddress({ row, column: startColumn + along }));

/** Whether a row names the columns: all of it text, over a number or, by its look, over entries. */
const isHeadings = (workbook: Workbook, sheet: string, row: number, range: IRange): boolean => {
  const filled = (at: string): boolean => (workbook.value(sheet, at) ?? "") !== "";
  const names = placesOf(row, range).filter(filled);
  if (names.length === 0 || !names.every((at) => typeof workbook.value(sheet, at) === "string")) return false;
  const isBold = (at: string): boolean => workbook.look(sheet, at).bold === true;
  const entries = placesOf(row + 1, range).filter(filled);
  return entries.some((at) => typeof workbook.value(sheet, at) === "number") || (names.every(isBold) && !entries.every(isBold));
};

/** The rows to sort: those selected, with all of the table beside them, or the table around one cell. */
const tableAt = (sheet: Worksheet, selected: IRange, { row, column }: CellPlace): IRange => {
  const { startRow, endRow, startColumn, endColumn, rangeType = RANGE_TYPE.NORMAL } = selected;
  const isRows = startRow < endRow && rangeType === RANGE_TYPE.NORMAL;
  if (isRows && startColumn < endColumn) return { startRow, endRow, startColumn, endColumn };
  const around = isRows
    ? expandToContinuousRange({ startRow, endRow, startColumn, endColumn }, TO_BOTH_SIDES, sheet)
    : expandToContinuousRange({ startRow: row, endRow: row, startColumn: column, endColumn: column }, EVERY_WAY, sheet);
  // What is frozen stays: headings, and the answers over a table.
  const { ySplit, startRow: free } = sheet.getFreeze();
  if (ySplit > 0 && row >= free) return { ...around, startRow: Math.max(around.startRow, free) };
  return around;
};

/** The table to filter, its row of headings first, or the sentence that says why there is none. */
export const filteredTable = (sheet: Worksheet, selected: IRange, primary: CellPlace): IRange | string => {
  const whole = tableAt(sheet, selected, primary);
  const { ySplit, startRow: free } = sheet.getFreeze();
  // Headings may be frozen over their rows.
  const isUnderFrozen = ySplit > 0 && whole.startRow === free;
  const range = { ...whole, startRow: whole.startRow - (isUnderFrozen ? 1 : 0) };
  if (range.startRow < range.endRow) return range;
  return `${addressOf(range)} is one row: there is nothing to filter. Select a cell of a table.`;
};

/** Cells to sort, without the row that names their columns. */
export interface SortedTable {
  readonly range: IRange;
  readonly says: string;
}

/** The table to sort, or the sentence that says why there is none. */
export const sortedTable = (sheet: Worksheet, workbook: Workbook, selected: IRange, primary: CellPlace): SortedTable | string => {
  const name = sheet.getName();
  const whole = tableAt(sheet, selected, primary);
  const { ySplit, startRow: free } = sheet.getFreeze();
  const isUnderFrozen = ySplit > 0 && whole.startRow === free;
  const hasHeadings = !isUnderFrozen && whole.startRow < whole.endRow && isHeadings(workbook, name, whole.startRow, whole);
  const range: IRange = { ...whole, startRow: whole.startRow + (hasHeadings ? 1 : 0) };
  const where = addressOf(range);
  const stays = "Nothing is moved.";
  const spill = workbook.spills(name).find(({ row, column, rows, columns }) =>
    rows * columns > 1 && meet(range, { startRow: row, startColumn: column, endRow: row + rows - 1, endColumn: column + columns - 1 }));
  if (spill !== undefined)
    return `${where} holds cells that the formula in ${cellAddress(spill)} fills; only typed cells can be sorted. ${stays}`;
  const merged: Nullable<IRange> = sheet.getMergeData().find((one) => meet(range, one));
  if (merged) return `${where} holds the merged cells ${addressOf(merged)}, which cannot be sorted. ${stays}`;
  if (range.startRow >= range.endRow) return `${where} is one row: there is nothing to sort. Select a cell of a table.`;
  return { range, says: hasHeadings ? `${where}, under its headings` : where };
};
