/** A job as data: steps of named tables and named calls of worksheet functions. It holds no arithmetic of its own. */

export type Cell = string | number | boolean;

/**
 * An argument as a sheet takes it: a constant, nothing, a range, a result, three native ways to put cells together, or a call in a call.
 */
export type Argument = Cell | null | InputRange | ResultRange | Stacked | Beside | Joined | Call;

/** A table of the job, or one column of it without its heading. */
export interface InputRange {
  readonly input: string;
  readonly column?: string;
}

/** What a call above spilled, whole. */
export interface ResultRange {
  readonly result: string;
}

/** One range under another, as VSTACK does. */
export interface Stacked {
  readonly stack: readonly Argument[];
}

/** One range beside another, as HSTACK does. */
export interface Beside {
  readonly beside: readonly Argument[];
}

/** One text out of several cells, as & does. */
export interface Joined {
  readonly join: readonly Argument[];
}

export interface Call {
  readonly id: string;
  readonly args: readonly Argument[];
}

/** A cell of a table: typed, or a formula that takes its value from elsewhere. */
export type InputCell = Cell | ResultRange | Call;

export interface Input {
  readonly name: string;
  readonly says: string;
  readonly headings: readonly string[];
  /** The first column holds labels that belong to the table and are not typed over. */
  readonly labelled?: true;
  readonly rows: readonly (readonly InputCell[])[];
}

export interface NamedCall extends Call {
  readonly name: string;
  readonly says: string;
}

export interface Step {
  readonly title: string;
  readonly says: string;
  readonly inputs: readonly Input[];
  readonly calls: readonly NamedCall[];
}

export interface Job {
  readonly title: string;
  readonly says: string;
  readonly steps: readonly Step[];
}

export const isRange = (cell: Argument): cell is Exclude<Argument, Cell | null> => typeof cell === "object" && cell !== null;

/** One value out of a table, as a formula picks it. */
export const picked = (table: Argument, label: string, heading?: string): Call => ({
  id: "PICK",
  args: heading === undefined ? [table, label] : [table, label, heading],
});
