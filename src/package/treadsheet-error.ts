import type { ErrorCode } from "../functions/cells";

/** What a cell in error is to a script: its sentence, and under `code` what the cell shows. Given to a function, it is a cell in error. */
export class TreadsheetError extends Error {
  readonly code: ErrorCode;

  constructor(code: ErrorCode, says: string) {
    super(says);
    this.name = "TreadsheetError";
    this.code = code;
  }
}
