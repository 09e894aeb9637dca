import {
  CommandType, ICommandService, type IMutation, type IMutationInfo, type Injector, IUndoRedoService, type Worksheet,
} from "@univerjs/core";
import { IActiveDirtyManagerService } from "@univerjs/engine-formula";
import { FilterModel, SheetsFilterService } from "@univerjs/sheets-filter";
import { columnPlace } from "../sheets/cell-address";
import { rangeOf } from "./cell-range";
import { engineFilter, keptTexts, storedFilter } from "./engine-filter";
import type { RowFilter } from "./workbook-data";

interface FilterToSet {
  readonly unitId: string;
  readonly subUnitId: string;
  /** Undefined for none. */
  readonly filter: RowFilter | undefined;
  /** The tables whose rows come to be seen or hidden. */
  readonly tables: readonly string[];
}

/**
 * Gives a sheet the filter it is to have, with the rows that it hides. The engine's own steps look anew which rows match, so that what undo
 * brings back would not be what was there, and a sheet that comes back would hide rows by formulas that are not worked out yet.
 */
export const SetFilterMutation: IMutation<FilterToSet> = {
  id: "sheet.mutation.set-row-filter",
  type: CommandType.MUTATION,
  handler: (accessor, { unitId, subUnitId, filter }) => {
    const filters = accessor.get(SheetsFilterService);
    filters.removeFilterModel(unitId, subUnitId);
    if (filter === undefined) return true;
    const { ref, filterColumns = [], cachedFilteredOut = [] } = engineFilter(filter);
    const model = filters.ensureFilterModel(unitId, subUnitId);
    model.setRange(ref);
    for (const column of filterColumns) model.setCriteria(column.colId, column, false);
    model.filteredOutRows = new Set(cachedFilteredOut);
    return true;
  },
};

export const filterStep = (
  unitId: string, subUnitId: string, filter: RowFilter | undefined, ...others: readonly (RowFilter | undefined)[]
): IMutationInfo<FilterToSet> => {
  const tables = [filter, ...others].flatMap((one) => (one === undefined ? [] : [one.cells]));
  return { id: SetFilterMutation.id, params: { unitId, subUnitId, filter, tables } };
};

/** Sets a filter as one step that undo takes back. */
export const setFilter = (injector: Injector, unitId: string, subUnitId: string, filter: RowFilter | undefined): void => {
  const before = storedFilter(injector, unitId, subUnitId);
  const redo = filterStep(unitId, subUnitId, filter, before);
  const undo = filterStep(unitId, subUnitId, before, filter);
  injector.get(ICommandService).syncExecuteCommand(redo.id, redo.params);
  injector.get(IUndoRedoService).pushUndoRedo({ unitID: unitId, redoMutations: [redo], undoMutations: [undo] });
};

/** SUBTOTAL and its like leave out what is hidden, so they are worked out again. */
export const workedOutAgain = (injector: Injector): void =>
  injector.get(IActiveDirtyManagerService).register(SetFilterMutation.id, {
    commandId: SetFilterMutation.id,
    getDirtyData: ({ params }) => {
      const { unitId, subUnitId: sheetId, tables } = params as FilterToSet;
      const dirtyRanges = tables.map((cells) => ({ unitId, sheetId, range: rangeOf(cells) }));
      return { dirtyRanges, clearDependencyTreeCache: { [unitId]: { [sheetId]: "1" } } };
    },
  });

/** A filter that hides what does not match now. */
export const filterNow = (sheet: Worksheet, cells: string, keeps: RowFilter["keeps"]): RowFilter => {
  const range = rangeOf(cells);
  const model = new FilterModel(sheet.getUnitId(), sheet.getSheetId(), sheet);
  model.setRange(range);
  for (const [column, texts] of Object.entries(keeps)) model.setCriteria(columnPlace(column), keptTexts(columnPlace(column), texts), true);
  const hides = [...model.filteredOutRows].map((row) => row + 1).sort((one, other) => one - other);
  model.dispose();
  return { cells, keeps, hides };
};
