import { joinedNotes, suspectNote } from "../../goods/near-names";
import type { Exact } from "../../length/exact";
import { type Article, counted, unitName } from "./article";
import type { Ledger } from "./ledger";
import { isLess } from "./ledger-line";
import type { Name } from "./move";
import { ZERO } from "./stock";

export interface RackRow {
  readonly item: Name;
  readonly unit: string;
  readonly opening?: Exact;
  readonly in?: Exact;
  readonly out?: Exact;
  readonly short?: Exact;
  readonly quantity?: Exact;
  readonly average?: Exact;
  readonly value: Exact;
  readonly note: string;
}

interface Held {
  readonly article: Article;
  opening: Exact;
  in: Exact;
  out: Exact;
  short: Exact;
  value: Exact;
}

const rackRow = ({ article, opening, in: into, out, short, value }: Held, quantity: Exact, note: string): RackRow => {
  const inUnit = (measure: Exact): Exact => counted(article, measure);
  return {
    item: article.name,
    unit: unitName(article),
    opening: inUnit(opening),
    in: inUnit(into),
    out: inUnit(out),
    short: inUnit(short),
    quantity: inUnit(quantity),
    ...(quantity.isZero() ? {} : { average: value.div(inUnit(quantity)) }),
    value,
    note,
  };
};

/** Days of a table of the books: from one on, where there is one, to the close of another. */
export interface Days {
  readonly from?: number;
  readonly to?: number;
}

/** What lies on the rack at the close of `to`, and how it came since the beginning of `from`; without `from`, since the openings. */
export const rack = <Bad>({ lines, nearGoods }: Ledger<Bad>, { from = -Infinity, to = Infinity }: Days): readonly RackRow[] => {
  const held = new Map<string, Held>();
  for (const { move, postings } of lines) {
    if (move.day > to) break;
    const isBefore = move.day < from;
    for (const { place, article, column, quantity, value, isShort } of postings) {
      if (place.kind !== "rack" || article === undefined) continue;
      const item = held.get(article.key) ?? { article, opening: ZERO, in: ZERO, out: ZERO, short: ZERO, value: ZERO };
      held.set(article.key, item);
      const less = isLess(column);
      item.value = less ? item.value.minus(value) : item.value.plus(value);
      if (isBefore || column === "opening") item.opening = less ? item.opening.minus(quantity) : item.opening.plus(quantity);
      else if (isShort === true) item.short = item.short.plus(quantity);
      else if (less) item.out = item.out.plus(quantity);
      else item.in = item.in.plus(quantity);
    }
  }
  const rows = [...held.values()].flatMap((item): RackRow[] => {
    const quantity = item.opening.plus(item.in).minus(item.out).minus(item.short);
    const isThere = [item.opening, item.in, item.out, item.short, quantity, item.value].some((amount) => !amount.isZero());
    return isThere ? [rackRow(item, quantity, joinedNotes(suspectNote(nearGoods(item.article.name))))] : [];
  });
  return [...rows, { item: "total", unit: "", value: rows.reduce((sum, { value }) => sum.plus(value), ZERO), note: "" }];
};
