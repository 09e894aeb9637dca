import type { ICellData, Nullable } from "@univerjs/core";
import {
  type BaseReferenceObject,
  type BaseValueObject,
  ERROR_TYPE_SET,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
} from "@univerjs/engine-formula";

const isErrorCode = (code: unknown): code is ErrorType => ERROR_TYPE_SET.has(code as ErrorType);

const SPILL_SENTENCE = "the result does not fit: clear the cells below and to the right that it needs";

/** An error for a cell. Its sentence goes with it into the cell, as the custom data the engine stores beside a value. */
export const errorObject = (code: unknown, says: string): ErrorValueObject => {
  const error = ErrorValueObject.create(isErrorCode(code) ? code : ErrorType.VALUE, says);
  error.withCustomData({ says });
  return error;
};

export const errorCode = (cell: Nullable<ICellData>): string | undefined => (isErrorCode(cell?.v) ? cell.v : undefined);

/** The sentence of an error cell, undefined where the cell holds no error or one of the engine's own. */
export const errorSentence = (cell: Nullable<ICellData>): string | undefined => {
  const code = errorCode(cell);
  if (code === undefined) return undefined;
  const says: unknown = cell?.custom?.["says"];
  if (typeof says === "string") return says;
  return code === ErrorType.SPILL ? SPILL_SENTENCE : undefined;
};

/** A cell a formula refers to, an error with its sentence. */
export const cellObject = (reference: BaseReferenceObject, row: number, column: number): BaseValueObject => {
  const cell = reference.getCellData(row, column);
  // The text of a link is in a document of its own.
  if (!cell || ((cell.v === undefined || cell.v === null) && !cell.p)) return NullValueObject.create();
  const says = errorSentence(cell);
  return says === undefined ? reference.getCellValueObject(cell) : errorObject(cell.v, says);
};
