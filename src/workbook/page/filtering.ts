import { ICommandService, type Injector, IUniverInstanceService, UniverInstanceType, type Workbook as EngineWorkbook } from "@univerjs/core";
import { ScrollToCellCommand, SheetsRenderService, SheetsSelectionsService } from "@univerjs/preset-sheets-core";
import { SmartToggleSheetsFilterCommand } from "@univerjs/sheets-filter";
import { OpenFilterPanelOperation } from "@univerjs/sheets-filter-ui";
import { blockOfRange, rangeOf } from "../cell-range";
import { storedFilter } from "../engine-filter";
import { setFilter, SetFilterMutation } from "../set-filter";
import { saying } from "./saying";
import { filteredTable } from "./sorted-table";

/**
 * Filter finds the table itself and opens the choices of the column selected. The engine's own takes the cells over a table for its
 * headings where rows are frozen, and the first press shows only marks that are to be pressed next.
 */
export const filtering = (injector: Injector): void => {
  // Rows that come to be hidden or shown are drawn.
  injector.get(SheetsRenderService).registerSkeletonChangingMutations(SetFilterMutation.id);
  const say = saying(injector);
  SmartToggleSheetsFilterCommand.handler = async () => {
    const book = injector.get(IUniverInstanceService).getCurrentUnitOfType<EngineWorkbook>(UniverInstanceType.UNIVER_SHEET);
    const sheet = book?.getActiveSheet();
    const selected = injector.get(SheetsSelectionsService).getCurrentLastSelection();
    if (!book || !sheet || !selected?.primary) return false;
    const { actualRow: row, actualColumn: col } = selected.primary;
    const [unitId, subUnitId] = [book.getUnitId(), sheet.getSheetId()];
    const before = storedFilter(injector, unitId, subUnitId);
    const { startRow, endRow, startColumn, endColumn } = before ? rangeOf(before.cells) : { ...selected.range, endRow: -1 };
    if (row < startRow || row > endRow || col < startColumn || col > endColumn) {
      const table = filteredTable(sheet, selected.range, { row, column: col });
      if (typeof table === "string") {
        say(table);
        return true;
      }
      setFilter(injector, unitId, subUnitId, { cells: blockOfRange(table), keeps: {}, hides: [] });
      if (before) say(`A sheet has one filter: all rows of ${before.cells} are shown again.`);
    }
    const commands = injector.get(ICommandService);
    const headings = rangeOf(storedFilter(injector, unitId, subUnitId)?.cells ?? "A1").startRow;
    // The choices open beside the heading of their column, where it is to be seen.
    await commands.executeCommand(ScrollToCellCommand.id, {
      range: { startRow: headings, endRow: headings, startColumn: col, endColumn: col },
    });
    return commands.executeCommand(OpenFilterPanelOperation.id, { unitId, subUnitId, col });
  };
};
