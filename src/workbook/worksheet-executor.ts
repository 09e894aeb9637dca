import type { Nullable } from "@univerjs/core";
import {
  type ArrayValueObject,
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { blockOf } from "./engine-block";
import { cellObject, errorObject } from "./error-sentence";
import { type FunctionMetadata, worksheetName } from "./function-metadata";
import type { StandIn, WorksheetFunction } from "./stand-in";

const isFailure = (value: unknown): value is { readonly code: string; readonly message?: unknown } =>
  typeof value === "object" && value !== null && "code" in value && typeof value.code === "string";

const messageOf = (error: unknown): string =>
  typeof error === "object" && error !== null && "message" in error && typeof error.message === "string" ? error.message : String(error);

const cellOf = (value: unknown): BaseValueObject => {
  if (typeof value === "number") {
    return Number.isFinite(value) ? NumberValueObject.create(value) : errorObject(ErrorType.NUM, "the function gave no finite number");
  }
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (isFailure(value)) return errorObject(value.code, messageOf(value));
  return StringValueObject.create(value === null || value === undefined ? "" : String(value));
};

const rowsOf = (answer: readonly unknown[]): BaseValueObject[][] => {
  const rows = answer.map((row) => (Array.isArray(row) ? (row as unknown[]) : [row]));
  const width = Math.max(1, ...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: width }, (_, column) => cellOf(row[column])));
};

const resultOf = (answer: unknown): BaseValueObject => {
  if (!Array.isArray(answer)) return cellOf(answer);
  return answer.length === 0 ? errorObject(ErrorType.VALUE, "the function gave an empty table") : blockOf(rowsOf(answer));
};

type Rows = readonly (readonly unknown[])[];

const ONE_CELL = 1;
const isOneCell = (rows: Rows): boolean => rows.length === ONE_CELL && rows[0]?.length === ONE_CELL;

/** Makes the engine run one of the built functions, as Excel does: values and errors go in and out as they are. */
class WorksheetExecutor extends BaseFunction {
  // The built function itself says in a sentence what is missing.
  override minParams = 0;
  override needsReferenceObject = true;

  constructor(
    private readonly metadata: FunctionMetadata,
    private readonly solve: WorksheetFunction,
    private readonly error: StandIn["error"],
  ) {
    super(worksheetName(metadata));
    this.maxParams = metadata.parameters.length;
  }

  override isArgumentsIgnoreNumberPattern(): boolean {
    return true;
  }

  override calculate(...given: BaseValueObject[]): BaseValueObject {
    try {
      return this.answer(given.map((argument) => this.cells(argument)));
    } catch (error) {
      // An error that leaves here ends the whole program.
      return errorObject(isFailure(error) ? error.code : ErrorType.VALUE, messageOf(error));
    }
  }

  private answer(given: readonly Rows[]): BaseValueObject {
    const { parameters } = this.metadata;
    const isRange = (place: number): boolean => parameters[place]?.dimensionality === "matrix";
    const spread = given.filter((rows, place) => !isRange(place) && !isOneCell(rows));
    const call = (row: number, column: number): unknown =>
      this.solve(
        ...parameters.map((_, place) => {
          const rows = given[place];
          if (rows === undefined) return null;
          if (isRange(place))
            return isOneCell(rows) && rows[0]?.[0] === undefined ? null : rows.map((cells) => cells.map((cell) => cell ?? null));
          return (
            (isOneCell(rows) ? rows[0]?.[0] : rows[rows.length === ONE_CELL ? 0 : row]?.[rows[0]?.length === ONE_CELL ? 0 : column]) ?? null
          );
        }),
      );
    if (spread.length === 0) return resultOf(call(0, 0));
    // As in Excel, a range where one value is asked for answers value by value.
    const height = Math.max(...spread.map((rows) => rows.length));
    const width = Math.max(...spread.map((rows) => rows[0]?.length ?? 0));
    return blockOf(
      Array.from({ length: height }, (_, row) => Array.from({ length: width }, (__, column) => this.firstCell(() => call(row, column)))),
    );
  }

  private firstCell(call: () => unknown): BaseValueObject {
    try {
      const answer = call();
      return cellOf(Array.isArray(answer) ? (answer.flat() as unknown[])[0] : answer);
    } catch (error) {
      return errorObject(isFailure(error) ? error.code : ErrorType.VALUE, messageOf(error));
    }
  }

  /** An argument as rows of cells: null for an empty cell, undefined for an argument left out. */
  private cells(given: BaseValueObject): Rows {
    if (given.isReferenceObject()) {
      const reference = given as unknown as BaseReferenceObject;
      const { startRow, startColumn, endRow, endColumn } = reference.getRangePosition();
      return Array.from({ length: endRow - startRow + 1 }, (_, row) =>
        Array.from({ length: endColumn - startColumn + 1 }, (__, column) =>
          this.plain(cellObject(reference, startRow + row, startColumn + column)),
        ),
      );
    }
    if (given.isArray()) return (given as ArrayValueObject).getArrayValue().map((row) => row.map((cell) => this.plain(cell)));
    return [[given.isNull() ? undefined : this.plain(given)]];
  }

  private plain(value: Nullable<BaseValueObject>): unknown {
    if (!value || value.isNull()) return null;
    if (!value.isError()) return value.getValue();
    const failed = value as ErrorValueObject;
    return this.error(failed.getErrorType(), failed.getErrorContent() || undefined);
  }
}

/** One executor for every function that the built file associates and its metadata describes. */
export const worksheetExecutors = (functions: readonly FunctionMetadata[], { functions: associated, error }: StandIn): BaseFunction[] =>
  functions.map((metadata) => {
    const solve = associated.get(metadata.id.toUpperCase());
    if (solve === undefined) throw new Error(`functions.json describes ${metadata.id}, but the built functions do not associate it`);
    return new WorksheetExecutor(metadata, solve, error);
  });
