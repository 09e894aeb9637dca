import type { MendingHost } from "../pane/host";
import { rangeOf } from "./cells";
import { errorCells } from "./error-cells";
import { run } from "./run";

/** What mending needs of Excel beside the cells; `hasSpecial` where it tells which cells come to errors. */
export const excelMending = (hasSpecial: boolean): MendingHost => ({
  uses: () =>
    run({ asked: "to look through the sheets", sheets: [] }, async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name,items/protection/protected");
      await context.sync();
      const found = worksheets.items.map((sheet) => ({ sheet, used: sheet.getUsedRangeOrNullObject(true) }));
      for (const { used } of found) used.load("isNullObject,rowIndex,columnIndex,rowCount,columnCount");
      await context.sync();
      return found.map(({ sheet, used }) => ({
        name: sheet.name,
        isProtected: sheet.protection.protected,
        used: used.isNullObject
          ? undefined
          : { sheet: sheet.name, row: used.rowIndex, column: used.columnIndex, rows: used.rowCount, columns: used.columnCount },
      }));
    }),
  recalculate: () =>
    run({ asked: "to recalculate", sheets: [] }, async (context) => {
      context.workbook.application.calculate("Full");
      await context.sync();
    }),
  ...(hasSpecial ? {
    errors: (block) =>
      run({ asked: `to look through ${block.sheet}`, sheets: [block.sheet] }, (context) =>
        errorCells(context, rangeOf(context, block), block.sheet)),
  } : {}),
});
