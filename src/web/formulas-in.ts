import type { WorkbookData } from "../workbook/workbook-data";
import type { FormulaAt } from "./wood-of-pieces";

/** Every formula of a workbook with its place. */
export const formulasIn = ({ sheets }: Pick<WorkbookData, "sheets">): readonly FormulaAt[] =>
  sheets.flatMap(({ name, cells }) =>
    Object.entries(cells).flatMap(([address, { formula }]) => (formula === undefined ? [] : [{ sheet: name, address, formula }])));
