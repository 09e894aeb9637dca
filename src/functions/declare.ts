import type { Exact } from "../solver/length/exact";
import type { Length, Unit } from "../solver/length/length";
import type { Problem } from "../solver/problem";
import type { ErrorCode, Failed, Given, GivenCells } from "./cells";
import type { ColumnValueOf, Columns, Plausible, RateOf, Sign, Table } from "./columns";
import type { GivenStair } from "./read-stair";
import type { TableRow } from "./read-table";

/**
 * The one place of a worksheet function's facts. From a declaration come functions.json, the argument checks, the help, the reference,
 * the signatures and the example tests.
 */

/** The steps of the job, in the order users meet the functions. */
export const GROUPS = [
  "Notation",
  "Survey",
  "Layout",
  "Code check",
  "Order",
  "Cut plan",
  "Fit",
  "Takeoff and bid",
  "Wood",
  "Books",
] as const;
export type Group = (typeof GROUPS)[number];

interface Explained {
  readonly says: string;
}

/** Left out, an argument takes its default; with neither default nor `optional` it is required. */
interface Omissible<Default> extends Explained {
  readonly default?: Default;
  readonly optional?: true;
  /** Another argument whose value serves when this one is left out. */
  readonly defaultsTo?: string;
  /** What happens when it is left out, in words, where no default says it. */
  readonly without?: string;
}

/** With `each` a range may stand where one value may: the function answers cell by cell, in the shape of the range. */
interface Each {
  readonly each?: true;
}

/** The size an argument is promised for, where it is not that of its kind in MOST_ROWS. */
interface Bounded {
  readonly rows?: number;
}

/** Rows an argument may have, by its kind; what the largest takes, `npm run bench` shows. Empty rows at the end of a table do not count. */
const MOST_ROWS = { table: 20_000, stair: 1_000, lengths: 20_000, numbers: 20_000, cells: 200_000 } as const;

/** Cells a range may have where one value may stand. */
export const MOST_CELLS = 20_000;

/** A table read in place of the usual one where an argument is headed by one of these words. */
interface Instead {
  readonly table: Table;
  readonly argument: string;
  readonly headings: readonly string[];
}

export type Parameter =
  | (Omissible<string | number> &
      Each & {
        readonly kind: "length";
        readonly sign: Sign;
        readonly plausible?: Plausible;
        /** Words that may stand for a length, by which one. */
        readonly words?: Readonly<Record<string, number>>;
        /** Two lengths may stand here as 24 x 3: a size. */
        readonly crossed?: true;
      })
  | (Omissible<string | number> & Each & { readonly kind: "reading"; readonly sign: Sign; readonly plausible?: Plausible })
  | (Omissible<number> & Each & { readonly kind: "count"; readonly sign: Sign; readonly least?: number; readonly most?: number })
  | (Omissible<number> & Each & { readonly kind: "number"; readonly sign: Sign; readonly least?: number; readonly most?: number })
  | (Omissible<number> & Each & { readonly kind: "rate"; readonly of: RateOf })
  | (Omissible<number> & Each & { readonly kind: "money"; readonly sign: Sign })
  | (Omissible<number> & Each & { readonly kind: "angle" })
  | (Omissible<never> & { readonly kind: "date" })
  | (Omissible<string> & Each & { readonly kind: "choice"; readonly options: readonly string[] })
  | (Omissible<boolean> & { readonly kind: "flag" })
  | (Omissible<string> & { readonly kind: "text" })
  | (Omissible<Unit> & { readonly kind: "unit" })
  | (Omissible<never> &
      Bounded & { readonly kind: "table"; readonly table: Table; readonly badRows: "refuse" | "answer"; readonly instead?: Instead })
  | (Omissible<never> & { readonly kind: "stair" })
  /** A column of lengths that are about one another; a bad one fails the call, or is undefined and shows its error in its place. */
  | (Omissible<never> &
      Bounded & { readonly kind: "lengths"; readonly sign: Sign; readonly badCells: "refuse" | "answer"; readonly plausible?: Plausible })
  /** Numbers that are about one another, in any shape; empty cells take no part, and a bad one fails the call. */
  | (Omissible<never> & Bounded & { readonly kind: "numbers"; readonly sign: Sign })
  | (Omissible<never> & Bounded & { readonly kind: "cells" });

export type RangeParameter = Extract<Parameter, { readonly kind: keyof typeof MOST_ROWS }>;

/** An argument of one value. */
export type CellParameter = Exclude<Parameter, RangeParameter>;

/** Whether an argument is read as a range, not cell by cell. */
export const isRange = (parameter: Parameter): parameter is RangeParameter => parameter.kind in MOST_ROWS;

export const mostRows = (parameter: RangeParameter): number =>
  ("rows" in parameter ? parameter.rows : undefined) ?? MOST_ROWS[parameter.kind];

/** Whether a range may stand where the argument takes one value. */
export const takesEach = (parameter: Parameter): parameter is CellParameter & { readonly each: true } =>
  "each" in parameter && parameter.each === true;

export type Parameters = Readonly<Record<string, Parameter>>;

interface ValueOf extends Omit<ColumnValueOf, "rate" | "label" | "choice"> {
  readonly rate: Exact;
  readonly unit: Unit;
  readonly stair: GivenStair;
  readonly lengths: readonly (Length | undefined)[];
  readonly numbers: readonly Exact[];
  readonly cells: GivenCells;
}

type RowsOf<P> = P extends { readonly instead: { readonly table: Table<infer D extends Columns> } }
  ? RowsAsRead<P> | readonly Exclude<TableRow<D>, { readonly bad: Failed }>[]
  : RowsAsRead<P>;

type RowsAsRead<P> = P extends { readonly table: Table<infer C extends Columns>; readonly badRows: infer B }
  ? B extends "answer"
    ? readonly TableRow<C>[]
    : readonly Exclude<TableRow<C>, { readonly bad: Failed }>[]
  : never;

/** A size as it was given: length x width, or one length for both. */
export interface Size {
  readonly length: Length;
  readonly width?: Length;
}

type ParameterValue<P extends Parameter> = P extends { readonly kind: "table" }
  ? RowsOf<P>
  : P extends { readonly crossed: true }
  ? Size
  : P extends { readonly kind: "lengths"; readonly badCells: "refuse" }
  ? readonly Length[]
  : P extends { readonly kind: "choice"; readonly options: readonly (infer O)[] }
    ? O
    : P["kind"] extends keyof ValueOf
      ? ValueOf[P["kind"]]
      : never;

type Filled<P extends Parameters> = {
  readonly [K in keyof P]: P[K] extends { readonly optional: true } ? ParameterValue<P[K]> | undefined : ParameterValue<P[K]>;
};

/**
 * What a cell of a result holds; it fixes the number format. `value` takes its kind from the row, `unit` says what all lengths of the row
 * are in.
 */
export type ResultKind =
  | "length" | "reading" | "count" | "number" | "angle" | "rate" | "money" | "date" | "text" | "label" | "value" | "unit";

export interface ResultColumn extends Explained {
  readonly kind: ResultKind;
  /** Of a row: the cell is left off where there is nothing to say. */
  readonly mayLack?: true;
}

export type ResultColumns = Readonly<Record<string, ResultColumn>>;

/** A value of a `value` column with its kind. */
export interface Measured {
  readonly kind: Exclude<ResultKind, "value" | "label" | "unit">;
  readonly value: number | string | Exact;
}

export type ResultCell<C extends string = string> = number | string | Exact | Measured | Failed | Problem<C> | undefined;

/** A row by column; where a row failed, its number cells show the error and its note the sentence. */
export type ResultRow<C extends string = string> = Readonly<Record<string, ResultCell<C>>> & { readonly bad?: Failed | Problem<C> };

export type Result =
  | (Explained & { readonly kind: Exclude<ResultKind, "value" | "label" | "unit"> })
  /** As many lengths as the argument `shapeOf` holds, in its shape. */
  | (Explained & { readonly kind: "lengths"; readonly shapeOf: string })
  /** As many amounts of money as the argument `shapeOf` holds, in its shape. */
  | (Explained & { readonly kind: "amounts"; readonly shapeOf: string })
  | (Explained & { readonly kind: "row"; readonly columns: ResultColumns })
  | (Explained & { readonly kind: "table"; readonly columns: ResultColumns })
  | (Explained & { readonly kind: "cell" });

type Solved<C extends string> = ResultCell<C> | boolean | readonly (object | undefined)[] | Readonly<Record<string, unknown>> | Problem<C>;

/** Where an example's expected value comes from: a published case, a calculation by hand in words, or common practice. */
interface From {
  readonly from: string;
}

type Example<P extends Parameters> = From & {
  readonly given: { readonly [K in keyof P]?: ExampleCell };
} & (
    | { readonly gives: number | string | boolean | readonly (readonly (number | string | boolean)[])[] }
    /** Some cells of a table result: each entry is a row that stands in it, with the columns named. */
    | { readonly shows: readonly Readonly<Record<string, number | string>>[] }
    | { readonly fails: ErrorCode; readonly says: string }
  );

export type ExampleCell = Exclude<Given, Failed> | readonly (readonly Exclude<Given, Failed>[])[];

export interface Declaration<P extends Parameters = Parameters, C extends string = string> {
  /** The worksheet name without the namespace: upper-case letters only, permanent once released. */
  readonly id: string;
  /** The name as words, where it is of more than one: a script calls it by them. */
  readonly words?: string;
  readonly group: Group;
  readonly says: string;
  readonly parameters: P;
  readonly result: Result;
  /** Every state in which there is no answer: the error code and the sentence, which starts with the name of what is wrong. */
  readonly problems: { readonly [K in C]: { readonly cell: "#VALUE!" | "#N/A"; readonly says: string } };
  readonly examples: readonly [Example<P>, ...Example<P>[]];
  /** Where the method comes from. */
  readonly source: string;
  readonly caution?: string;
  /** Every cell is put into one notation by itself, so metric text may stand beside inches. */
  readonly convertsNotation?: true;
  solve(given: Filled<P>): Solved<C>;
}

export const declare = <const P extends Parameters, const C extends string = never>(declaration: Declaration<P, C>): Declaration<P, C> =>
  declaration;

/** The last arguments of every table function. */
export const unit = { kind: "unit", default: "in", says: "Unit of bare numbers and of the result: in or mm." } as const satisfies Parameter;
export const headings = {
  kind: "flag",
  default: true,
  says: "Whether the result starts with a row of headings.",
} as const satisfies Parameter;
