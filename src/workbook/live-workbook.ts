import { ICommandService, IUndoRedoService, IUniverInstanceService, UndoCommand, type Univer } from "@univerjs/core";
import { SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { columnPlace } from "../sheets/cell-address";
import { rangeOf } from "./cell-range";
import { cellsRead } from "./cells-read";
import { cellsWritten } from "./cells-written";
import { filteredRows } from "./filtered-rows";
import { filtersKept, filtersTold } from "./filter-kept";
import { openBook } from "./open-book";
import { rulesKept } from "./rules-kept";
import { refuseFormulas } from "./refused-formulas";
import { settling } from "./settle-rule";
import { sheetSizes } from "./sheet-sizes";
import { sheetChanges } from "./sheet-changes";
import { roomForAdded } from "./sheet-room";
import { sortRows } from "./sorted-rows";
import { storedBook } from "./stored-book";
import { touchedCells } from "./touched-cells";
import type { Workbook } from "./workbook";

/** Our workbook on an engine that has been taught our functions. */
export const liveWorkbook = (univer: Univer): Workbook => {
  const book = openBook(univer);
  const commands = book.injector.get(ICommandService);
  const rule = settling(book.injector);
  filtersTold(book.injector);
  refuseFormulas(book.injector);
  roomForAdded(book.injector);

  // The engine makes what it keeps of rules with its first workbook.
  let isSetUp = false;

  const reads = cellsRead(book);
  const workbook: Workbook = {
    load: (data) => {
      book.load(data);
      if (!isSetUp) {
        rulesKept(book.injector);
        filtersKept(book.injector);
      }
      isSetUp = true;
      rule.begin();
    },
    ...cellsWritten(book),
    ...sheetSizes(book),
    ...sheetChanges(book),
    ...reads,
    ...filteredRows(book, reads),
    sort: (name, cells, column, isUp) =>
      sortRows(book.injector, workbook, book.sheetNamed(name), rangeOf(cells), columnPlace(column), isUp),
    ...storedBook(book),
    undo: () => {
      // Without a page nothing else says which workbook is meant, nor asks for what can be undone before there is something.
      book.injector.get(IUndoRedoService);
      book.injector.get(IUniverInstanceService).focusUnit(book.current().getUnitId());
      commands.syncExecuteCommand(UndoCommand.id);
    },
    recalculate: () => {
      const everything = { commands: [], forceCalculation: true };
      void commands.executeCommand(SetTriggerFormulaCalculationStartMutation.id, everything, { onlyLocal: true });
    },
    settled: async () => {
      book.current();
      await rule.settled();
    },
    onChange: (tell) =>
      void commands.onCommandExecuted((command, options) => {
        const touched = touchedCells(command, options, book.nameOf);
        if (touched !== undefined) tell(touched);
      }),
    dispose: () => {
      rule.dispose();
      univer.dispose();
    },
  };
  return workbook;
};
