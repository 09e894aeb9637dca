import { ICommandService, type Injector, IUniverInstanceService, UniverInstanceType, type Workbook as EngineWorkbook } from "@univerjs/core";
import {
  ILayoutService, ScrollToCellCommand, SelectRangeCommand, SetFormulaCalculationResultMutation, SetSelectionsOperation,
  SetWorksheetActivateCommand, SetWorksheetActiveOperation, SetWorksheetNameMutation, SheetsSelectionsService,
} from "@univerjs/preset-sheets-core";
import { cellAddress, cellPlace } from "../../sheets/cell-address";
import type { CellValue, Workbook } from "../workbook";
import { onceSoon } from "./once-soon";

/** The cell a user stands on. */
export interface SelectedCell {
  readonly sheet: string;
  readonly address: string;
  readonly value: CellValue;
  readonly formula: string | undefined;
  readonly error: string | undefined;
}

type Listener = (cell: SelectedCell | undefined) => void;

export interface Selection {
  /** Where the user stands now. */
  readonly selected: () => SelectedCell | undefined;
  /** Calls at once, when another cell is selected, and when the cell selected has another value. Answers how to stop. */
  readonly onSelection: (tell: Listener) => () => void;
  /** Shows a sheet and stands on one of its cells. */
  readonly select: (sheet: string, address: string) => Promise<void>;
  /** Gives the keys to the cell where the user stands, unless something else of the page has them. */
  readonly takeKeys: () => Promise<void>;
  /** Tells those who listen where the user stands now. */
  readonly tell: () => void;
  /** From now on tells them by itself; asked once the first workbook is there. */
  readonly follow: () => void;
}

/**
 * What moves the user, or changes what is said of the cell: a click on a tab and a move by the name box set another selection too, of which
 * the engine's own stream of moves says nothing.
 */
const TELLING: ReadonlySet<string> = new Set(
  [SetFormulaCalculationResultMutation, SetSelectionsOperation, SetWorksheetActiveOperation, SetWorksheetNameMutation].map(({ id }) => id),
);

const bookShown = (injector: Injector) =>
  injector.get(IUniverInstanceService).getCurrentUnitOfType<EngineWorkbook>(UniverInstanceType.UNIVER_SHEET);

const selectedCell = (injector: Injector, workbook: Workbook): SelectedCell | undefined => {
  const sheet = bookShown(injector)?.getActiveSheet().getName();
  const place = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.primary;
  if (sheet === undefined || !place) return undefined;
  const address = cellAddress({ row: place.actualRow, column: place.actualColumn });
  return {
    sheet,
    address,
    value: workbook.value(sheet, address),
    formula: workbook.formula(sheet, address),
    error: workbook.errorMessage(sheet, address),
  };
};

const standOn = async (injector: Injector, name: string, address: string): Promise<void> => {
  const shown = bookShown(injector);
  const sheet = shown?.getSheetBySheetName(name);
  if (!shown || !sheet) throw new Error(`sheet: there is no sheet named "${name}"`);
  const commands = injector.get(ICommandService);
  const { row, column } = cellPlace(address);
  const [unitId, subUnitId] = [shown.getUnitId(), sheet.getSheetId()];
  await commands.executeCommand(SetWorksheetActivateCommand.id, { unitId, subUnitId });
  const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
  await commands.executeCommand(SelectRangeCommand.id, { unitId, subUnit: subUnitId, range });
  injector.get(ILayoutService).focus();
};

/** Where the user stands in the sheet; silent while `isLoading`, when the sheet selects cells of a workbook that is not there yet. */
export const selection = (injector: Injector, workbook: Workbook, isLoading: () => boolean): Selection => {
  const listeners = new Set<Listener>();
  const tell = (): void => {
    if (isLoading()) return;
    const cell = selectedCell(injector, workbook);
    for (const listener of listeners) listener(cell);
  };
  // Once for all steps of one move: between them the sheet is shown and nothing is selected on it yet.
  const tellSoon = onceSoon(tell);
  return {
    selected: () => selectedCell(injector, workbook),
    tell,
    follow: () => {
      injector.get(SheetsSelectionsService).selectionMoveEnd$.subscribe(tell);
      injector.get(ICommandService).onCommandExecuted(({ id }) => {
        if (TELLING.has(id)) tellSoon();
      });
    },
    onSelection: (listener) => {
      listeners.add(listener);
      listener(selectedCell(injector, workbook));
      return () => void listeners.delete(listener);
    },
    select: async (name, address) => {
      await standOn(injector, name, address);
      const { row, column } = cellPlace(address);
      const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
      await injector.get(ICommandService).executeCommand(ScrollToCellCommand.id, { range });
      tell();
    },
    takeKeys: async () => {
      const cell = document.activeElement === document.body ? selectedCell(injector, workbook) : undefined;
      if (cell !== undefined) await standOn(injector, cell.sheet, cell.address);
    },
  };
};
