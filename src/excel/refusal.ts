/** What is known of the place where Excel refused something. */
export interface Where {
  /** What was asked, as a sentence goes on: "to write to Layout". */
  readonly asked: string;
  /** Protected sheets among those it was asked of. */
  readonly protectedSheets: readonly string[];
  readonly isReadOnly: boolean;
}

const LATER = "Wait until Excel is idle and try again.";

/**
 * Codes of Excel.ErrorCodes and OfficeExtension.ErrorCodes, with what would do: error handling with the application-specific JavaScript
 * APIs.
 */
const WORDS: Readonly<Record<string, string>> = {
  InvalidOperationInCellEditMode: "a cell is being edited. Press Enter or Esc in the sheet, then try again.",
  InactiveWorkbook: "another workbook is in front. Click into this workbook and try again.",
  ItemNotFound: "the sheet or the cell is not there any more. Select a cell and try again.",
  ItemAlreadyExists: "a sheet of that name is there already. Try again, and another name is taken.",
  InvalidReference: "the cells named are not there any more. Select a cell and try again.",
  InvalidSelection: "several ranges or a picture are selected. Select one cell and try again.",
  InvalidBinding: "the cells named are not there any more. Select a cell and try again.",
  MergedRangeConflict: "a table, merged cells or a pivot table are in the way. Select cells away from them.",
  FilteredRangeConflict: "a filter hides some of the cells. Clear the filter (Data, Clear) and try again.",
  PivotTableRangeConflict: "a pivot table is in the way. Select cells away from it.",
  UnsupportedSheet: "this is a chart or macro sheet. Go to a worksheet and try again.",
  RangeExceedsLimit: "there are too many cells at once. Select fewer.",
  OperationCellsExceedLimit: "there are too many cells at once. Select fewer.",
  RequestPayloadSizeLimitExceeded: "there is too much to write at once. Do it in smaller parts.",
  ResponsePayloadSizeLimitExceeded: "there is too much to read at once. Do it in smaller parts.",
  FormulaLengthExceedsLimit: "the formula is too long for Excel. Split it over several cells.",
  ActivityLimitReached: `too much is under way. ${LATER}`,
  MemoryLimitReached: "Excel is out of memory. Close other workbooks and try again.",
  RequestAborted: `it was broken off. ${LATER}`,
  Conflict: `something else changed the workbook meanwhile. ${LATER}`,
  ServiceNotAvailable: "Excel's service does not answer. Try again later.",
  ApiNotFound: "this Excel is too old for it. Update Excel, or type the formula yourself.",
  ApiNotAvailable: "this Excel does not offer it. Type the formula yourself, or use Excel on a computer.",
  NotImplemented: "this Excel does not offer it. Type the formula yourself, or use Excel on a computer.",
  UnsupportedOperation: "this Excel does not offer it here. Type the formula yourself.",
};

/** Codes with which a protected sheet or a workbook open for reading answers. */
const GUARDED: readonly string[] = ["AccessDenied", "GeneralException", "InvalidOperation", "InvalidArgument", "InvalidRequest"];

/** The code that Excel refuses with; empty where there is none. */
export const codeOf = (error: unknown): string =>
  typeof error === "object" && error !== null && "code" in error && typeof error.code === "string" ? error.code : "";

/** Whether a refusal may come from a protection, so that it is worth asking for. */
export const mayBeGuarded = (error: unknown): boolean => GUARDED.includes(codeOf(error));

/** What Excel refused, why, and what would do, in a plain sentence. */
export const refusal = (error: unknown, { asked, protectedSheets, isReadOnly }: Where): string => {
  const code = codeOf(error);
  const refused = `Excel refused ${asked}: `;
  if (GUARDED.includes(code) && protectedSheets.length > 0) {
    return (
      `${refused}${protectedSheets.join(", ")} ${protectedSheets.length === 1 ? "is" : "are"} protected. Unprotect (Review, ` +
      `Unprotect Sheet), or go to a sheet that is not.`
    );
  }
  if (GUARDED.includes(code) && isReadOnly)
    return `${refused}the workbook is open for reading only. Save a copy or choose Edit, and try again.`;
  if (code === "AccessDenied")
    return (
      `${refused}the sheet or the workbook is protected or open for reading only. Take the protection off (Review), or save a ` +
      `copy, and try again.`
    );
  return (
    refused +
    (WORDS[code] ??
      `it gave no reason that we know (${code === "" ? String(error instanceof Error ? error.message : error) : code}). Select ` +
        `an empty cell of a plain sheet and try again.`)
  );
};
