import { words } from "../solver/words";
import { type Failed, failed, folded, type Given, isEmpty } from "./cells";
import type { Columns, Table } from "./columns";
import { nearest, say, slipOf } from "./say";

/** What the tables and results of ours are headed by. */
export interface OwnHeadings {
  /** The table or result that a heading belongs to; undefined for one that none of ours knows. */
  readonly homeOf: (heading: string) => string | undefined;
  /** Whether a function's result has the heading. */
  readonly isOfResult: (heading: string, id: string) => boolean;
}

export type Places = ReadonlyMap<string, number>;

/** What a person writes beside a row is the person's own in every table. */
const NOTE = folded("note");

const found = new WeakMap<Columns, ReadonlyMap<string, string>>();

/** The columns of a table by their headings as they are matched. */
const columnKeys = (columns: Columns): ReadonlyMap<string, string> => {
  const known = found.get(columns) ?? new Map(Object.keys(columns).map((key) => [folded(words(key)), key]));
  found.set(columns, known);
  return known;
};

/** Whether a heading that this table does not read belongs to another table or result of ours, and to no result that this table takes. */
const isForeign = (heading: string, { takes }: Table, own: OwnHeadings): boolean =>
  folded(heading) !== NOTE && own.homeOf(heading) !== undefined && !takes.some((id) => own.isOfResult(heading, id));

const foreign = (argument: string, heading: string, table: Table, own: OwnHeadings): Failed => {
  const near = nearest(heading, Object.keys(table.columns).map(words)) ?? "";
  return failed(say.foreignHeading(argument, heading, own.homeOf(heading) ?? "", near));
};

/**
 * Where each column of the table stands in the first row, or undefined when that row holds no heading. A heading of ours that this table
 * neither reads nor declares to take, and a slip of one it reads, are refused by name; columns that none of ours knows are the user's own.
 */
export const headingPlaces = (argument: string, first: readonly Given[], table: Table, own: OwnHeadings): Places | Failed | undefined => {
  const known = columnKeys(table.columns);
  const places = new Map<string, number>();
  const others: string[] = [];
  for (const [index, cell] of first.entries()) {
    if (typeof cell !== "string" || isEmpty(cell)) continue;
    const key = known.get(folded(cell));
    if (key === undefined) {
      others.push(cell);
      continue;
    }
    if (places.has(key)) return failed(say.twiceHeading(argument, words(key)));
    places.set(key, index);
  }
  const allText = first.every((cell) => isEmpty(cell) || typeof cell === "string");
  if (places.size === 0 && !allText) return undefined;
  const strangers = others.filter((other) => isForeign(other, table, own));
  // A first row of texts may be the first row of data, an item of a takeoff in it; only a row of headings and nothing else is another table's.
  const [stranger] = places.size > 0 || strangers.length === others.length ? strangers : [];
  if (stranger !== undefined) return foreign(argument, stranger, table, own);
  const free = [...known.values()].filter((key) => !places.has(key)).map(words);
  for (const other of others) {
    const near = own.homeOf(other) === undefined ? slipOf(other, free) : undefined;
    if (near !== undefined) return failed(say.misspeltHeading(argument, other, near));
  }
  return places.size === 0 ? undefined : places;
};

/** Whether a row says the headings again, as stacked tables do, and nothing else. */
export const isHeadingRow = (row: readonly Given[], places: Places, columns: Columns): boolean => {
  const known = columnKeys(columns);
  let isSaid = false;
  for (const [key, index] of places) {
    const cell = row[index] ?? null;
    if (isEmpty(cell)) continue;
    if (typeof cell !== "string" || known.get(folded(cell)) !== key) return false;
    isSaid = true;
  }
  return isSaid;
};
