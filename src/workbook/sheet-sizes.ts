import { BooleanNumber } from "@univerjs/core";
import { SetWorksheetColWidthMutation, SetWorksheetRowHeightMutation, SetWorksheetRowIsAutoHeightMutation } from "@univerjs/sheets";
import type { OpenBook } from "./open-book";
import type { Workbook } from "./workbook";

type Sizes = Pick<Workbook, "columnWidths" | "setColumnWidths" | "rowHeights" | "setRowHeights">;

/** How wide columns and how high rows are, and giving them another size: no step of its own for undo. */
export const sheetSizes = ({ sheetNamed, onSheet }: OpenBook): Sizes => ({
  columnWidths: (name, first, columns) => {
    const sheet = sheetNamed(name);
    return Array.from({ length: columns }, (_, at) => sheet.getColumnWidth(first + at));
  },
  setColumnWidths: (name, first, widths) => {
    for (const [at, colWidth] of widths.entries()) {
      if (colWidth === undefined) continue;
      const column = first + at;
      const ranges = [{ startRow: 0, endRow: sheetNamed(name).getRowCount() - 1, startColumn: column, endColumn: column }];
      onSheet(SetWorksheetColWidthMutation.id, name, { ranges, colWidth });
    }
  },
  rowHeights: (name, first, rows) => {
    const sheet = sheetNamed(name);
    return Array.from({ length: rows }, (_, at) => sheet.getRowHeight(first + at));
  },
  setRowHeights: (name, first, heights) => {
    for (const [at, rowHeight] of heights.entries()) {
      if (rowHeight === undefined) continue;
      const row = first + at;
      const ranges = [{ startRow: row, endRow: row, startColumn: 0, endColumn: sheetNamed(name).getColumnCount() - 1 }];
      onSheet(SetWorksheetRowHeightMutation.id, name, { ranges, rowHeight });
      // What wraps there is a result, which the engine does not measure.
      onSheet(SetWorksheetRowIsAutoHeightMutation.id, name, { ranges, autoHeightInfo: BooleanNumber.FALSE });
    }
  },
});
