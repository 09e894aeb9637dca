import { type Argument, type Cell, type Input, type InputCell, isRange, type Job } from "./job";

/** An error as a cell holds it. */
export interface ErrorCell {
  readonly code: string;
  readonly message: string;
}

export type ResultCell = Cell | ErrorCell;
export type Rows = readonly (readonly ResultCell[])[];
/** What a call answered: a value, a spilled table, or the error of the whole call. */
export type Result = ResultCell | Rows;

/** Calls a worksheet function by its id; it answers or throws as a host's function does. */
export type Solve = (id: string, args: readonly unknown[]) => unknown;

export interface JobRun {
  /** Every result by the name of its call. */
  readonly results: ReadonlyMap<string, Result>;
  /** Every table as it went into the calls, its heading row first, its formulas worked out. */
  readonly inputs: ReadonlyMap<string, Rows>;
}

export const isErrorCell = (value: unknown): value is ErrorCell =>
  typeof value === "object" && value !== null && "code" in value && "message" in value;

export const isRows = (result: Result | undefined): result is Rows => Array.isArray(result);

const rowsOf = (result: Result): Rows => (isRows(result) ? result : [[result]]);

const firstCell = (result: Result): ResultCell => (isRows(result) ? (result[0]?.[0] ?? "") : result);

/** The job from top to bottom. Every result goes into the calls below as it stands. */
export const jobRun = (job: Job, solve: Solve): JobRun => {
  const results = new Map<string, Result>();
  const inputs = new Map<string, Rows>();

  const known = <Value>(from: ReadonlyMap<string, Value>, name: string): Value => {
    const value = from.get(name);
    if (value === undefined) throw new Error(`The job refers to "${name}" above the place where it stands.`);
    return value;
  };

  const columnOf = (name: string, heading: string): Rows => {
    const [headings = [], ...rows] = known(inputs, name);
    const place = headings.indexOf(heading);
    if (place < 0) throw new Error(`The table "${name}" has no column "${heading}".`);
    return rows.map((row) => [row[place] ?? ""]);
  };

  // An error in one part is an error of the whole: nothing is put beside it.
  const together = (parts: readonly Argument[], join: (rows: readonly Rows[]) => Rows): Result => {
    const found = parts.map((part) => valueOf(part) ?? "");
    return found.find(isErrorCell) ?? join(found.map(rowsOf));
  };

  const called = (id: string, args: readonly Argument[]): Result => {
    try {
      return solve(id, args.map((argument) => valueOf(argument))) as Result;
    } catch (error) {
      if (isErrorCell(error)) return error;
      throw error;
    }
  };

  const valueOf = (argument: Argument): Result | undefined => {
    if (argument === null) return undefined;
    if (!isRange(argument)) return argument;
    if ("input" in argument)
      return argument.column === undefined ? known(inputs, argument.input) : columnOf(argument.input, argument.column);
    if ("result" in argument) return known(results, argument.result);
    if ("stack" in argument) return together(argument.stack, (rows) => rows.flat());
    if ("beside" in argument) {
      return together(argument.beside, ([first = [], ...others]) =>
        first.map((row, index) => [...row, ...others.flatMap((rows) => rows[index] ?? [])]),
      );
    }
    if ("join" in argument) return together(argument.join, (rows) => [[rows.map((row) => String(row[0]?.[0] ?? "")).join("")]]);
    return called(argument.id, argument.args);
  };

  const cellOf = (cell: InputCell): ResultCell => firstCell(valueOf(cell) ?? "");
  const inputRows = ({ headings, rows }: Input): Rows => [headings, ...rows.map((row) => row.map(cellOf))];

  for (const step of job.steps) {
    // Formulas in a step's tables look to the steps above it.
    for (const input of step.inputs) inputs.set(input.name, inputRows(input));
    for (const { name, id, args } of step.calls) results.set(name, called(id, args));
  }
  return { results, inputs };
};
