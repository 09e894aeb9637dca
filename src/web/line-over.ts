import { cellAddress, cellPlace } from "../sheets/cell-address";
import type { Workbook } from "../workbook/workbook";

/** The first range of a formula: of a fit, its readings with their headings. */
const RANGE = /(?<![!\w'])\$?([A-Z]{1,3})\$?(\d+):/;

/** What a sheet says over the readings of a fit, such as where the heights come from; undefined where nothing stands there. */
export const lineOver = (book: Pick<Workbook, "value">, sheet: string, formula: string): string | undefined => {
  const [, column, row] = RANGE.exec(formula) ?? [];
  if (column === undefined || row === undefined) return undefined;
  const headings = cellPlace(`${column}${row}`);
  if (headings.row === 0) return undefined;
  const said = book.value(sheet, cellAddress({ ...headings, row: headings.row - 1 }));
  return typeof said === "string" && said !== "" ? said : undefined;
};
