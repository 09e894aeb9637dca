import { ICommandService } from "@univerjs/core";
import { InsertSheetCommand, RemoveSheetCommand, SetWorksheetNameCommand } from "@univerjs/sheets";
import { hasLook, styleOf } from "./engine-look";
import { sheetSnapshot } from "./engine-snapshot";
import type { OpenBook } from "./open-book";
import type { Workbook } from "./workbook";
import { DATA_VERSION, workbookData } from "./workbook-data";

type Changes = Pick<Workbook, "sheetNames" | "addSheets" | "renameSheet" | "removeSheet">;

/** The sheets of a workbook: which there are, added, renamed, taken away. */
export const sheetChanges = ({ injector, current, newSheetId, onSheet }: OpenBook): Changes => {
  const change = (command: string, name: string, params: object): void => {
    if (!onSheet(command, name, params)) throw new Error(`${name}: the sheet does not take this`);
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
      for (const sheet of [...checked].reverse()) {
        const snapshot = sheetSnapshot(newSheetId(), sheet, (cell) => (hasLook(cell) ? styleOf(cell) : undefined));
        injector.get(ICommandService).syncExecuteCommand(InsertSheetCommand.id, { unitId, index, sheet: snapshot });
      }
    },
    renameSheet: (name, to) => change(SetWorksheetNameCommand.id, name, { name: to }),
    removeSheet: (name) => change(RemoveSheetCommand.id, name, {}),
  };
};
