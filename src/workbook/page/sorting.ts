import { type Injector, IUniverInstanceService, UniverInstanceType, type Workbook as EngineWorkbook } from "@univerjs/core";
import { SheetsSelectionsService } from "@univerjs/preset-sheets-core";
import {
  SortRangeAscCommand, SortRangeAscInCtxMenuCommand, SortRangeDescCommand, SortRangeDescInCtxMenuCommand,
} from "@univerjs/sheets-sort-ui";
import { columnName } from "../../sheets/cell-address";
import { sortRows } from "../sorted-rows";
import type { Workbook } from "../workbook";
import { saying } from "./saying";
import { sortedTable } from "./sorted-table";

/**
 * Sort finds the table and its headings itself and says what it did. The engine's own sort takes headings for entries, compares typed
 * marks as if they were numbers, and leaves formulas reading the row that they came from.
 */
export const sorting = (injector: Injector, workbook: Workbook): void => {
  const tell = saying(injector);
  const say = (content: string): true => {
    tell(content);
    return true;
  };
  const sort = (isUp: boolean): boolean => {
    const book = injector.get(IUniverInstanceService).getCurrentUnitOfType<EngineWorkbook>(UniverInstanceType.UNIVER_SHEET);
    const sheet = book?.getActiveSheet();
    const selected = injector.get(SheetsSelectionsService).getCurrentLastSelection();
    if (!book || !sheet || !selected?.primary) return false;
    const { actualRow: row, actualColumn: column } = selected.primary;
    const table = sortedTable(sheet, workbook, selected.range, { row, column });
    if (typeof table === "string") return say(table);
    const torn = sortRows(injector, workbook, sheet, table.range, column, isUp);
    return say(torn ?? `Sorted ${table.says}, by column ${columnName(column)}.`);
  };
  for (const command of [SortRangeAscCommand, SortRangeAscInCtxMenuCommand]) command.handler = () => sort(true);
  for (const command of [SortRangeDescCommand, SortRangeDescInCtxMenuCommand]) command.handler = () => sort(false);
};
