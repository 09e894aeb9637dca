/** An error as a cell holds it. */
export interface ErrorCell {
  readonly code: string;
  readonly message: string;
}

export type ResultCell = string | number | boolean | ErrorCell;
export type Rows = readonly (readonly ResultCell[])[];
/** What a call answered: a value, a spilled table, or the error of the whole call. */
export type Result = ResultCell | Rows;

/** Calls a worksheet function by its id; it answers or throws as a host's function does. */
export type Solve = (id: string, args: readonly unknown[]) => unknown;

export const isErrorCell = (value: unknown): value is ErrorCell =>
  typeof value === "object" && value !== null && "code" in value && "message" in value;

export const isRows = (result: Result | undefined): result is Rows => Array.isArray(result);
