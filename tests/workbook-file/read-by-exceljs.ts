import { type Cell, Workbook } from "exceljs";

/** A cell as another library reads it. */
export interface OtherCell {
  readonly value: string | number | boolean | null | { readonly error: string };
  readonly formula?: string;
}

const MILLISECONDS_OF_A_DAY = 86_400_000;
/** 1 January 1970 as the number of a cell, in the 1900 date system. */
const DAYS_TO_1970 = 25_569;

const plain = (value: unknown): OtherCell["value"] => {
  if (typeof value === "string" || typeof value === "number" || typeof value === "boolean") return value;
  if (typeof value !== "object" || value === null) return null;
  // A day of the sheet comes as one of UTC; the number of the cell counts from 30 December 1899 (the 1900 date system of ECMA-376).
  if (value instanceof Date) return value.getTime() / MILLISECONDS_OF_A_DAY + DAYS_TO_1970;
  if ("error" in value) return { error: String(value.error) };
  if ("richText" in value) return (value.richText as readonly { readonly text: string }[]).map(({ text }) => text).join("");
  return null;
};

/** Of merged cells the library answers the first one's value for all, and of a formula it leaves a result of 0 out of the value. */
export const otherCell = (cell: Cell | undefined): OtherCell => {
  if (cell === undefined || (cell.isMerged && cell.master.address !== cell.address)) return { value: null };
  const { value } = cell;
  return typeof value === "object" && value !== null && ("formula" in value || "sharedFormula" in value)
    ? { value: plain(cell.result), formula: cell.formula }
    : { value: plain(value) };
};

/** A file as exceljs reads it. */
export const readByExceljs = async (bytes: Uint8Array): Promise<Workbook> => {
  const book = new Workbook();
  await book.xlsx.load(Buffer.from(bytes) as unknown as ArrayBuffer);
  return book;
};
