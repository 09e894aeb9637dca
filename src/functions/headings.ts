import { nearestWord } from "../solver/nearest-word";
import { isOverQuantity, isSlipOfQuantity } from "../solver/word-key";
import { words } from "../solver/words";
import { type Failed, failed, folded, type Given, isEmpty } from "./cells";
import type { Columns, Table } from "./columns";
import { inSight, say, slipOf } from "./say";

/** The table or result that a heading belongs to, and whether others know it too. */
export interface Home {
  readonly name: string;
  readonly isOneOfSeveral: boolean;
}

/** What the tables and results of ours are headed by. */
export interface OwnHeadings {
  /** Undefined for a heading that none of ours knows. */
  readonly homeOf: (heading: string) => Home | undefined;
  /** Whether a function's result has the heading. */
  readonly isOfResult: (heading: string, id: string) => boolean;
}

export type Places = ReadonlyMap<string, number>;

/** What a person writes beside a row is the person's own in every table that does not read it. */
export const OWN_REMARKS: readonly string[] = ["note", "date", "job", "invoice"];
const REMARKS: ReadonlySet<string> = new Set(OWN_REMARKS.map(folded));

const found = new WeakMap<Columns, ReadonlyMap<string, string>>();

/** The columns of a table by their headings as they are matched. */
const columnKeys = (columns: Columns): ReadonlyMap<string, string> => {
  const known = found.get(columns) ?? new Map(Object.keys(columns).map((key) => [folded(words(key)), key]));
  found.set(columns, known);
  return known;
};

/** Whether a heading that this table does not read belongs to another table or result of ours, and to no result that this table takes. */
const isForeign = (heading: string, { takes }: Table, own: OwnHeadings): boolean =>
  !REMARKS.has(folded(heading)) && own.homeOf(heading) !== undefined && !takes.some((id) => own.isOfResult(heading, id));

const HAS_DIGIT = /\p{N}/u;

/** The column of ours that a word for how many may be meant for: stock says it as `available`. */
const quantityMeant = (heading: string, free: readonly string[]): string | undefined => {
  if (free.includes("quantity")) return isSlipOfQuantity(heading) ? "quantity" : undefined;
  return free.includes("available") && (isSlipOfQuantity(heading) || isOverQuantity(heading)) ? "available" : undefined;
};

/** Headings of ours that say one thing in several tables, so that the nearest is not the one most alike in letters. */
const ALIKE: readonly (readonly string[])[] = [
  ["left lean", "left flare"],
  ["right lean", "right flare"],
  ["back", "top"],
  ["front", "bottom"],
  ["height", "rise", "run"],
  ["cut height", "depth", "width"],
  ["board depth", "depth"],
  ["price", "cost"],
  ["planned cost", "cost"],
  ["price each", "price"],
  ["hours each", "hours"],
  ["label", "item", "step"],
  ["available", "quantity", "count"],
].map((group) => group.map(folded));

const nearestHere = (heading: string, { columns }: Table): string | undefined => {
  const here = Object.keys(columns).map(words);
  const alike = ALIKE.filter((group) => group.includes(folded(heading))).flat();
  return here.find((one) => alike.includes(folded(one))) ?? nearestWord(heading, here);
};

const foreign = (argument: string, heading: string, home: Home, table: Table): Failed =>
  failed(say.foreignHeading(argument, heading, home.name, home.isOneOfSeveral, nearestHere(heading, table)));

const isHeading = (cell: Given): cell is string => typeof cell === "string" && !isEmpty(cell);

/**
 * The columns that may stand for the quantity where no heading says so itself: those under a plain word for one, beside a heading of the
 * table.
 */
const plainQuantities = (first: readonly Given[], table: Table, own: OwnHeadings): readonly number[] => {
  if (!("quantity" in table.columns)) return [];
  const keys = first.flatMap((cell) => (isHeading(cell) ? (columnKeys(table.columns).get(folded(cell)) ?? []) : []));
  // Without headings the same words are units in the first row: 5 pcs.
  if (keys.length === 0 || keys.includes("quantity")) return [];
  return first.flatMap((cell, index) =>
    isHeading(cell) && isOverQuantity(cell) && !table.takes.some((id) => own.isOfResult(cell, id)) ? [index] : [],
  );
};

/** Why the column under a plain word for the quantity may hold something else: names, or the numbers of the rows. */
export const noQuantity = (
  argument: string,
  first: readonly Given[],
  rows: readonly { readonly row: readonly Given[]; readonly number: number }[],
  places: Places,
): Failed | undefined => {
  const index = places.get("quantity") ?? -1;
  const heading = first[index] ?? null;
  if (!isHeading(heading) || !isOverQuantity(heading)) return undefined;
  const cells = rows.map(({ row, number }) => ({ cell: row[index] ?? null, number }));
  const named = cells.find(({ cell }) => isHeading(cell) && !HAS_DIGIT.test(cell));
  if (named !== undefined) return failed(say.noQuantity(argument, heading, `row ${named.number} has "${inSight(String(named.cell))}"`));
  const isNumbering = cells.length > 1 && cells.every(({ cell }, place) => !isEmpty(cell) && Number(cell) === place + 1);
  return isNumbering ? failed(say.noQuantity(argument, heading, "its rows are numbered 1, 2, 3 and so on")) : undefined;
};

/**
 * Where each column of the table stands in the first row, or undefined when that row holds no heading. A heading of ours that this table
 * neither reads nor declares to take, and a slip of one it reads, are refused by name; columns that none of ours knows are the user's own.
 */
export const headingPlaces = (argument: string, first: readonly Given[], table: Table, own: OwnHeadings): Places | Failed | undefined => {
  const known = columnKeys(table.columns);
  const [quantity = -1, another = -1] = plainQuantities(first, table, own);
  const places = new Map<string, number>();
  const others: string[] = [];
  for (const [index, cell] of first.entries()) {
    if (typeof cell !== "string" || isEmpty(cell)) continue;
    const key = index === quantity ? "quantity" : known.get(folded(cell));
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
  // A first row of texts may be the first row of data, an item of a takeoff in it; only a row of headings and nothing else is another
  // table's.
  const [stranger] = places.size > 0 || strangers.length === others.length ? strangers : [];
  const home = stranger === undefined ? undefined : own.homeOf(stranger);
  if (another >= 0) return failed(say.twoQuantities(argument, String(first[quantity]), String(first[another])));
  if (stranger !== undefined && home !== undefined) return foreign(argument, stranger, home, table);
  const free = [...known.values()].filter((key) => !places.has(key)).map(words);
  for (const other of others) {
    const near = own.homeOf(other) === undefined ? (quantityMeant(other, free) ?? slipOf(other, free)) : undefined;
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
    if (typeof cell !== "string" || (known.get(folded(cell)) !== key && !(key === "quantity" && isOverQuantity(cell)))) return false;
    isSaid = true;
  }
  return isSaid;
};
