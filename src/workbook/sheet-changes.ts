import { Direction, ICommandService, IUndoRedoService } from "@univerjs/core";
import {
  CopySheetCommand, InsertRowByRangeCommand, InsertSheetCommand, RemoveRowByRangeCommand, RemoveSheetCommand, SetWorksheetActiveOperation,
  SetWorksheetNameCommand,
} from "@univerjs/sheets";
import { hasLook, styleOf } from "./engine-look";
import { sheetSnapshot } from "./engine-snapshot";
import type { OpenBook } from "./open-book";
import { addRules } from "./rules-kept";
import { setFilter } from "./set-filter";
import type { Workbook } from "./workbook";
import { DATA_VERSION, workbookData } from "./workbook-data";

type Changes = Pick<
  Workbook, "sheetNames" | "addSheets" | "renameSheet" | "removeSheet" | "duplicateSheet" | "insertRows" | "removeRows"
>;

/** The sheets of a workbook: which there are, added, renamed, taken away. */
export const sheetChanges = ({ injector, current, sheetNamed, newSheetId, onSheet }: OpenBook): Changes => {
  const change = (command: string, name: string, params: object): void => {
    if (!onSheet(command, name, params)) throw new Error(`${name}: the sheet does not take this`);
  };
  // The engine moves formulas and rules by the sheet that is shown.
  const rows = (command: string, name: string, from: number, count: number): void => {
    change(SetWorksheetActiveOperation.id, name, {});
    const range = { startRow: from - 1, endRow: from + count - 2, startColumn: 0, endColumn: sheetNamed(name).getColumnCount() - 1 };
    // New rows take after the one above, where there is one.
    change(command, name, { range, direction: from === 1 ? Direction.UP : Direction.DOWN });
  };
  return {
    sheetNames: () =>
      current()
        .getSheets()
        .map((sheet) => sheet.getName()),
    addSheets: (sheets) => {
      const { sheets: checked } = workbookData({ version: DATA_VERSION, sheets });
      const unitId = current().getUnitId();
      const index = current().getSheets().length;
      // The last one first: a formula finds the sheets after its own when it comes.
      const asOne = injector.get(IUndoRedoService).__tempBatchingUndoRedo(unitId);
      for (const sheet of [...checked].reverse()) {
        const id = newSheetId();
        const snapshot = sheetSnapshot(id, sheet, (cell) => (hasLook(cell) ? styleOf(cell) : undefined));
        injector.get(ICommandService).syncExecuteCommand(InsertSheetCommand.id, { unitId, index, sheet: snapshot });
        addRules(injector, unitId, id, sheet);
        if (sheet.filter !== undefined) setFilter(injector, unitId, id, sheet.filter);
      }
      asOne.dispose();
    },
    renameSheet: (name, to) => change(SetWorksheetNameCommand.id, name, { name: to }),
    removeSheet: (name) => change(RemoveSheetCommand.id, name, {}),
    duplicateSheet: (name) => change(CopySheetCommand.id, name, {}),
    insertRows: (name, before, count) => rows(InsertRowByRangeCommand.id, name, before, count),
    removeRows: (name, from, count) => rows(RemoveRowByRangeCommand.id, name, from, count),
  };
};
