import type { IRange, Nullable } from "@univerjs/core";
import { columnName, columnPlace } from "../sheets/cell-address";
import { blockOfRange, rangeOf } from "./cell-range";
import type { RowFilter } from "./workbook-data";

/** A filter once rows or columns of its sheet have come, gone or moved; undefined where its headings are gone. */
export const movedFilter = ({ cells, keeps, hides }: RowFilter, moved: (range: IRange) => Nullable<IRange>): RowFilter | undefined => {
  const was = rangeOf(cells);
  const is = moved(was);
  const headings = moved({ ...was, endRow: was.startRow });
  if (!is || !headings || is.startRow >= is.endRow) return undefined;
  const columns = Object.entries(keeps).flatMap(([column, texts]) => {
    const at = moved({ ...was, startColumn: columnPlace(column), endColumn: columnPlace(column) })?.startColumn;
    return at === undefined || at < is.startColumn || at > is.endColumn ? [] : [[columnName(at), texts] as const];
  });
  const rows = hides.flatMap((row) => {
    const at = moved({ ...was, startRow: row - 1, endRow: row - 1 })?.startRow;
    return at === undefined || at <= is.startRow || at > is.endRow ? [] : [at + 1];
  });
  return {
    cells: blockOfRange(is), keeps: Object.fromEntries(columns),
    // A row is hidden by a condition; with the last one of them gone all are shown.
    hides: columns.length === 0 ? [] : rows.sort((one, other) => one - other),
  };
};
