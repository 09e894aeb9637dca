import type { GivenDay } from "../solver/books/day";
import type { Exact } from "../solver/length/exact";
import type { Length } from "../solver/length/length";

/** What a number may be; it also decides what an empty cell is: 0 where 0 is possible, otherwise nothing. */
export type Sign = "positive" | "not negative" | "any";

interface Explained {
  readonly says: string;
  readonly required?: true;
  /** Words that stand for a value: `any` for no limit, `square` for a measured zero. */
  readonly words?: Readonly<Record<string, number>>;
  /** Read only under its heading: a table without headings has no such column. */
  readonly onlyHeaded?: true;
}

/**
 * One column of a table, or one label of the stair table. The kind fixes what is read:
 * `length` is exact, `reading` a number in the unit of the call, `flag` is yes or no.
 */
export type Column =
  | (Explained & {
      readonly kind: "length";
      readonly sign: Sign;
      readonly zero?: "not given";
      readonly plausible?: Plausible;
      readonly default?: string;
    })
  | (Explained & { readonly kind: "reading"; readonly sign: Sign; readonly zero?: "not given"; readonly plausible?: Plausible })
  | (Explained & { readonly kind: "angle"; readonly zero?: "not given"; readonly default?: number })
  | (Explained & { readonly kind: "count"; readonly sign: Sign; readonly zero?: "not given"; readonly default?: number })
  | (Explained & { readonly kind: "number"; readonly sign: Sign; readonly zero?: "not given"; readonly default?: number })
  | (Explained & { readonly kind: "money"; readonly sign: Sign; readonly zero?: "not given" })
  | (Explained & { readonly kind: "rate"; readonly sign: "not negative"; readonly of: RateOf })
  | (Explained & { readonly kind: "date" })
  | (Explained & { readonly kind: "label"; readonly zero?: "not given" })
  | (Explained & { readonly kind: "text"; readonly default?: string })
  | (Explained & { readonly kind: "choice"; readonly options: readonly string[]; readonly default?: string })
  | (Explained & { readonly kind: "flag"; readonly default?: boolean });

/** Quantities with a size beyond which the unit, or the cell, is wrong. */
export type Plausible = "total rise" | "rise" | "floor" | "run" | "board length" | "board width";

/** What a rate is a share of; it decides how large a bare number can be meant. */
export type RateOf = "the cost" | "the price" | "the cost or of the price" | "what it falls on" | "the quantity" | "the whole";

export type Columns = Readonly<Record<string, Column>>;

export interface Table<C extends Columns = Columns> {
  readonly name: string;
  readonly says: string;
  readonly columns: C;
  /** What is asked where so many columns without headings could be read in two ways. */
  readonly ambiguous?: (columns: number) => string | undefined;
  /** Functions whose result may stand as this table, whole or in part: their other headings are passed over. */
  readonly takes: readonly string[];
  /** Rows called total or the like are about other rows and are passed over; so they are where the table takes ORDER. */
  readonly hasTotals?: true;
}

export interface ColumnValueOf {
  readonly length: Length;
  readonly reading: number;
  readonly angle: number;
  readonly count: number;
  readonly number: number;
  readonly money: Exact;
  readonly rate: number;
  readonly date: GivenDay;
  readonly label: string | number;
  readonly text: string;
  readonly flag: boolean;
  readonly choice: string;
}

type ColumnValue<C extends Column> = C extends { readonly kind: "choice"; readonly options: readonly (infer O)[] }
  ? O
  : ColumnValueOf[C["kind"]];

/** A column is always there in a row when it has a default, is required and its cells too, or reads an empty cell as 0. */
type Present<C extends Column> = C extends { readonly default: unknown }
  ? true
  : C extends { readonly zero: "not given" }
    ? false
    : C extends { readonly required: true }
      ? true
      : C extends { readonly kind: "angle" } | { readonly sign: "any" | "not negative" }
        ? true
        : false;

type Simplified<T> = { [K in keyof T]: T[K] };

/** A row as a solver gets it: an optional column that holds nothing is absent. */
export type RowOf<C extends Columns> = Simplified<
  { readonly [K in keyof C as Present<C[K]> extends true ? K : never]: ColumnValue<C[K]> } & {
    readonly [K in keyof C as Present<C[K]> extends true ? never : K]?: ColumnValue<C[K]>;
  }
>;

export const table = <const C extends Columns>(
  name: string,
  says: string,
  columns: C,
  further: Partial<Pick<Table, "ambiguous" | "takes" | "hasTotals">> = {},
): Table<C> => ({ name, says, columns, takes: [], ...further });
