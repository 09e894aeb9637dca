import {
  ICommandService, type Injector, type IRange, IUniverInstanceService, type Nullable, UniverInstanceType, type Workbook as EngineWorkbook,
  type Worksheet,
} from "@univerjs/core";
import { type BaseFunction, FormulaDataModel } from "@univerjs/engine-formula";
import {
  type IInsertSheetMutationParams, InsertSheetMutation, SetWorksheetColumnCountMutation, SetWorksheetRowCountMutation,
} from "@univerjs/sheets";
import { SHEET_GRID } from "./sheet-grid";

// A sheet has room for what is in it, for what is typed below it, and for what spills.
const LEAST_ROWS = 1000;
const LEAST_COLUMNS = 40;
const SPARE_ROWS = 500;
const SPARE_COLUMNS = 20;

// As far as a sheet grows with what spills: beyond, the engine is too slow to be waited for.
const MOST_ROWS = 20_000;
const MOST_COLUMNS = 500;

/** How many rows and columns a sheet has whose cells take up this many. */
export const roomFor = (rows: number, columns: number): { readonly rowCount: number; readonly columnCount: number } => ({
  rowCount: Math.max(LEAST_ROWS, rows + SPARE_ROWS),
  columnCount: Math.max(LEAST_COLUMNS, columns + SPARE_COLUMNS),
});

/** A sheet added by the + of the page has as much room as any other, and looks as they do; the engine's own ends at column T. */
export const roomForAdded = (injector: Injector): void =>
  void injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id !== InsertSheetMutation.id) return;
    const { sheet } = params as IInsertSheetMutationParams;
    const least = roomFor(0, 0);
    sheet.rowCount = Math.max(sheet.rowCount, least.rowCount);
    sheet.columnCount = Math.max(sheet.columnCount, least.columnCount);
    Object.assign(sheet, SHEET_GRID);
  });

/** SEQUENCE and RANDARRAY ask how large their sheet is, and answer #REF! for more, before it could grow. */
export const withRoomToGrow = (maker: BaseFunction): void => {
  const setCount = maker.setSheetRowColumnCount.bind(maker);
  maker.setSheetRowColumnCount = (rows, columns) => setCount(Math.max(rows, MOST_ROWS), Math.max(columns, MOST_COLUMNS));
};

const growFor = (commands: ICommandService, sheet: Worksheet, { endRow, endColumn }: IRange): boolean => {
  const where = { unitId: sheet.getUnitId(), subUnitId: sheet.getSheetId() };
  if (endRow >= MOST_ROWS || endColumn >= MOST_COLUMNS) return false;
  const { rowCount, columnCount } = roomFor(endRow + 1, endColumn + 1);
  const [isTooShort, isTooNarrow] = [endRow >= sheet.getRowCount(), endColumn >= sheet.getColumnCount()];
  if (isTooShort) commands.syncExecuteCommand(SetWorksheetRowCountMutation.id, { ...where, rowCount });
  if (isTooNarrow) commands.syncExecuteCommand(SetWorksheetColumnCountMutation.id, { ...where, columnCount });
  return isTooShort || isTooNarrow;
};

/** Gives each sheet the rows and columns that a result wants which did not fit; whether there was any. */
export const grownForSpills = (injector: Injector): boolean => {
  const commands = injector.get(ICommandService);
  let hasGrown = false;
  for (const [unit, sheets] of Object.entries(injector.get(FormulaDataModel).getArrayFormulaRange())) {
    const book = injector.get(IUniverInstanceService).getUnit<EngineWorkbook>(unit, UniverInstanceType.UNIVER_SHEET);
    for (const [id, rows] of Object.entries(sheets ?? {})) {
      const sheet = book?.getSheetBySheetId(id);
      if (!sheet) continue;
      for (const range of Object.values(rows ?? {}).flatMap((columns) => Object.values<Nullable<IRange>>(columns ?? {})))
        hasGrown = (range ? growFor(commands, sheet, range) : false) || hasGrown;
    }
  }
  return hasGrown;
};
