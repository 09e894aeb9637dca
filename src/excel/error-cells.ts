import type { Block } from "../pane/host";

/** The blocks of a range in which formulas come to errors. */
export const errorCells = async (context: Excel.RequestContext, range: Excel.Range, sheet: string): Promise<readonly Block[]> => {
  const found = range.getSpecialCellsOrNullObject("Formulas", "Errors");
  found.load("isNullObject");
  await context.sync();
  if (found.isNullObject) return [];
  const { areas } = found;
  areas.load("items/rowIndex,items/columnIndex,items/rowCount,items/columnCount");
  await context.sync();
  return areas.items.map(({ rowIndex, columnIndex, rowCount, columnCount }) =>
    ({ sheet, row: rowIndex, column: columnIndex, rows: rowCount, columns: columnCount }));
};
