import { shareInCents } from "../../bid/cents";
import { Exact } from "../../length/exact";
import type { Article } from "./article";
import type { Place } from "./place";

export const ZERO = new Exact(0);

/** What there is of an item at a place. It changes row by row as the ledger is reckoned. */
export interface Stock {
  readonly place: Place;
  readonly article: Article;
  quantity: Exact;
  value: Exact;
  /** Of the value, what is freight and tax less credits. */
  charges: Exact;
  scrapped: Exact;
  /** As it was before the last ones went: what one was worth. */
  last: Part;
  /** Whether anything but openings has moved here. */
  hasMoved: boolean;
  /** The row that made it uncertain. */
  badRow?: number;
}

/** Some of an item. */
export interface Part {
  readonly quantity: Exact;
  readonly value: Exact;
  readonly charges: Exact;
}

export const NOTHING: Part = { quantity: ZERO, value: ZERO, charges: ZERO };

/** By place and article: each of them is one object in one ledger. */
export type Stocks = Map<Place, Map<Article, Stock>>;

export const stockAt = (stocks: Stocks, place: Place, article: Article): Stock | undefined => stocks.get(place)?.get(article);

export const openedStock = (stocks: Stocks, place: Place, article: Article): Stock => {
  const there = stocks.get(place) ?? new Map<Article, Stock>();
  stocks.set(place, there);
  const stock = there.get(article) ?? { ...NOTHING, place, article, scrapped: ZERO, last: NOTHING, hasMoved: false };
  there.set(article, stock);
  return stock;
};

/** Quantities read from 15 digits, such as 3 x 1/3, agree to this share. */
const DUST = new Exact("1e-12");

/** Whether so many are all there are. */
export const isAll = ({ quantity }: Part, wanted: Exact): boolean =>
  quantity.eq(wanted) || quantity.minus(wanted).abs().lte(quantity.times(DUST));

/** Whether there are so many. */
export const holds = (stock: Part, wanted: Exact): boolean => stock.quantity.gt(wanted) || isAll(stock, wanted);

/** So many at the average, in cents: the last ones take all that is left, so that no place keeps a stray cent. */
export const atAverage = (stock: Part, wanted: Exact): Part => {
  if (isAll(stock, wanted)) return { quantity: stock.quantity, value: stock.value, charges: stock.charges };
  return {
    quantity: wanted,
    value: shareInCents(stock.value, wanted, stock.quantity),
    charges: shareInCents(stock.charges, wanted, stock.quantity),
  };
};

export const least = (one: Exact, other: Exact): Exact => (other.lt(one) ? other : one);

const changed = (amount: Exact, by: Exact, isOut: boolean): Exact =>
  by.isZero() ? amount : isOut ? amount.minus(by) : amount.plus(by);

/** Puts a part into a stock, or takes it out. Charges are never more than the value they are part of. */
export const change = (stock: Stock, { quantity, value, charges }: Part, isOut: boolean): void => {
  if (isOut && !stock.quantity.isZero()) stock.last = { quantity: stock.quantity, value: stock.value, charges: stock.charges };
  stock.quantity = changed(stock.quantity, quantity, isOut);
  stock.value = changed(stock.value, value, isOut);
  stock.charges = least(changed(stock.charges, charges, isOut), stock.value);
};

export const negated = ({ quantity, value, charges }: Part): Part => ({
  quantity: quantity.negated(), value: value.negated(), charges: charges.negated(),
});
