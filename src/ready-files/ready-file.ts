import { type FileForm, PRINTED_COLUMNS, type ReadyWorkbook } from "../sheets/ready-workbooks";
import { valuesFile, workbookFile } from "../workbook-file/write-workbook-file";
import type { Workbook } from "../workbook/workbook";
import { DATA_VERSION } from "../workbook/workbook-data";

/** What works the sheets out. */
type Book = Pick<Workbook, "load" | "settled" | "recalculate" | "value" | "spill" | "look">;

/**
 * A ready workbook worked out in this one, whose sheets it takes the place of, to be written as a file in either form. No day stands in a
 * file: the same sheets give the same bytes.
 */
export const readyFile = async (ready: ReadyWorkbook, book: Book): Promise<(form: FileForm) => Uint8Array> => {
  const sheets = ready.sheets();
  book.load({ version: DATA_VERSION, sheets });
  await book.settled();
  // A formula that spilled before what it reads was there leaves its spill standing beside the request it comes to.
  book.recalculate();
  await book.settled();
  const options = { calculated: book, printing: { columns: PRINTED_COLUMNS, ...(ready.job === undefined ? {} : { job: ready.job }) } };
  return (form) => (form === "formulas" ? workbookFile(sheets, options) : valuesFile(sheets, { ...options, look: book.look }));
};
