import type { CellHost } from "../pane/host";
import { run } from "./run";

const ASKED = { asked: "to say which cell is selected", sheets: [] };

/** The cell selected in Excel, and word of every change of it. */
export const excelSelection: Pick<CellHost, "selected" | "onSelection"> = {
  selected: () =>
    run(ASKED, async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("rowIndex,columnIndex");
      cell.worksheet.load("name");
      await context.sync();
      return { sheet: cell.worksheet.name, row: cell.rowIndex, column: cell.columnIndex };
    }),
  onSelection: (tell) =>
    run(ASKED, async (context) => {
      const changed = async (): Promise<void> => tell();
      context.workbook.onSelectionChanged.add(changed);
      // The value of the cell selected may change while the selection stays.
      context.workbook.worksheets.onCalculated.add(changed);
      await context.sync();
    }),
};
