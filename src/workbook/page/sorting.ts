import {
  ICommandService, type IMutationInfo, type Injector, IUndoRedoService, IUniverInstanceService, UniverInstanceType,
  type Workbook as EngineWorkbook,
} from "@univerjs/core";
import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { IMessageService, SheetsSelectionsService } from "@univerjs/preset-sheets-core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import {
  SortRangeAscCommand, SortRangeAscInCtxMenuCommand, SortRangeDescCommand, SortRangeDescInCtxMenuCommand,
} from "@univerjs/sheets-sort-ui";
import { columnName } from "../../sheets/cell-address";
import { type SortedCells, sortedCells } from "../sorted-cells";
import type { Workbook } from "../workbook";
import { sortedTable } from "./sorted-table";

/** Milliseconds that a sentence stays on the screen. */
const READ_IN = 6000;

/** Puts cells in their new places, as one step that undo takes back. Emptied first: the engine would mix the looks of old and new. */
const move = (injector: Injector, unitId: string, subUnitId: string, { before, after, emptied }: SortedCells): void => {
  const steps = (cells: SortedCells["after"]): IMutationInfo[] =>
    [emptied, cells].map((cellValue) => ({ id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue } }));
  const [redoMutations, undoMutations] = [steps(after), steps(before)];
  for (const { id, params } of redoMutations) injector.get(ICommandService).syncExecuteCommand(id, params);
  injector.get(IUndoRedoService).pushUndoRedo({ unitID: unitId, redoMutations, undoMutations });
};

/**
 * Sort finds the table and its headings itself and says what it did. The engine's own sort takes headings for entries, compares typed
 * marks as if they were numbers, and leaves formulas reading the row that they came from.
 */
export const sorting = (injector: Injector, workbook: Workbook): void => {
  const say = (content: string): true => {
    injector.get(IMessageService).show({ content, duration: READ_IN });
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
    const cells = sortedCells(workbook, injector.get(LexerTreeBuilder), sheet, table.range, column, isUp);
    if (typeof cells === "string") return say(cells);
    if (Object.keys(cells.after).length > 0) move(injector, book.getUnitId(), sheet.getSheetId(), cells);
    return say(`Sorted ${table.says}, by column ${columnName(column)}.`);
  };
  for (const command of [SortRangeAscCommand, SortRangeAscInCtxMenuCommand]) command.handler = () => sort(true);
  for (const command of [SortRangeDescCommand, SortRangeDescInCtxMenuCommand]) command.handler = () => sort(false);
};
