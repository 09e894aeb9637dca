import type { SheetData } from "../sheets/sheet-data";

/** The ready sheets are in pixels, 96 to the inch; Excel's widths and heights are in points, 72 to the inch. */
export const POINTS_A_PIXEL = 72 / 96;

const frozen = (sheet: Excel.Worksheet, rows: number, columns: number): void => {
  const { freezePanes } = sheet;
  if (rows > 0 && columns > 0) freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, rows, columns));
  else if (rows > 0) freezePanes.freezeRows(rows);
  else if (columns > 0) freezePanes.freezeColumns(columns);
};

/** What a sheet has besides its cells: sizes, what is hidden, merged and frozen, its lines and its tab. */
export const setUp = (sheet: Excel.Worksheet, data: SheetData): void => {
  const { columnWidths = {}, rowHeights = {}, hiddenRows = [], hiddenColumns = [], merged = [] } = data;
  for (const [column, pixels] of Object.entries(columnWidths))
    sheet.getRange(`${column}:${column}`).format.columnWidth = pixels * POINTS_A_PIXEL;
  for (const [row, pixels] of Object.entries(rowHeights)) sheet.getRange(`${row}:${row}`).format.rowHeight = pixels * POINTS_A_PIXEL;
  for (const row of hiddenRows) sheet.getRange(`${row}:${row}`).rowHidden = true;
  for (const column of hiddenColumns) sheet.getRange(`${column}:${column}`).columnHidden = true;
  for (const block of merged) sheet.getRange(block).merge();
  frozen(sheet, data.frozenRows ?? 0, data.frozenColumns ?? 0);
  if (data.hidesGridLines) sheet.showGridlines = false;
  if (data.tabColour !== undefined) sheet.tabColor = data.tabColour;
  if (data.isHidden) sheet.visibility = "Hidden";
};
