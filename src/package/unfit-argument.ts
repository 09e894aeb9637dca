import { failed, type Failed } from "../functions/cells";
import { TreadsheetError } from "./treadsheet-error";

const isCell = (given: unknown): boolean =>
  given === undefined || given === null || typeof given === "string" || typeof given === "boolean" || Number.isFinite(given) ||
  given instanceof TreadsheetError;

const refused = (name: string, given: unknown): Failed => {
  const what = typeof given === "number" ? String(given) : Array.isArray(given) ? "rows within a row" : `a value of type ${typeof given}`;
  return failed(`${name}: takes text, numbers, true and false, or an array of rows of them, got ${what}`);
};

/** What is wrong with an argument that no sheet could pass; null and undefined are nothing given, or an empty cell. */
export const unfitArgument = (name: string, given: unknown): Failed | undefined => {
  if (isCell(given)) return undefined;
  if (!Array.isArray(given)) return refused(name, given);
  for (const [index, row] of given.entries()) {
    const cells: readonly unknown[] = Array.isArray(row) ? row : [row];
    const place = cells.findIndex((cell) => !isCell(cell));
    if (place >= 0) return refused(`${name}, row ${index + 1}`, cells[place]);
  }
  return undefined;
};
