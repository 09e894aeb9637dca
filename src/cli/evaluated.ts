import { formulaFault } from "../workbook/formula-limits";
import type { HeadlessWorkbook } from "../workbook/headless-workbook";
import type { CellValue } from "../workbook/workbook";
import { refusal } from "./refusal";

/** What a formula comes to: its rows, and where it is in error the sentence that says why. */
export interface Evaluated {
  readonly rows: readonly (readonly CellValue[])[];
  readonly says: string | undefined;
}

const SHEET = "Sheet1";
const CELL = "A1";

/** Works out one formula by itself. */
export const evaluated = async (formula: string, book: HeadlessWorkbook): Promise<Evaluated> => {
  const fault = formulaFault(formula);
  if (fault !== undefined) throw refusal(`eval: the formula ${fault}`);
  book.load({ version: 1, sheets: [{ name: SHEET, cells: { [CELL]: { formula } } }] });
  await book.settled();
  return { rows: book.spill(SHEET, CELL), says: book.errorMessage(SHEET, CELL) };
};

const cellText = (value: CellValue): string =>
  value === null ? "" : typeof value === "object" ? value.error : typeof value === "boolean" ? String(value).toUpperCase() : String(value);

/** The rows as lines, columns by tabs. */
export const rowsText = ({ rows }: Evaluated): string => rows.map((row) => row.map(cellText).join("\t")).join("\n");

export const isInError = ({ rows }: Evaluated): boolean => {
  const value = rows[0]?.[0];
  return rows.length === 1 && rows[0]?.length === 1 && typeof value === "object" && value !== null;
};
