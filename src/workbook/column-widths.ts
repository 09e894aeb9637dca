import { SetWorksheetColWidthMutation } from "@univerjs/sheets";
import type { OpenBook } from "./open-book";
import type { Workbook } from "./workbook";

/** How wide columns are, and making them wider or narrower: no step of its own for undo. */
export const columnWidths = ({ sheetNamed, onSheet }: OpenBook): Pick<Workbook, "columnWidths" | "setColumnWidths"> => ({
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
});
