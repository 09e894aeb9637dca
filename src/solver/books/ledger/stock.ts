import { cents } from "../../bid/cents";
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

export type Stocks = Map<string, Stock>;

const stockKey = (place: Place, article: Article): string => `${place.key}\n${article.key}`;

export const stockAt = (stocks: Stocks, place: Place, article: Article): Stock | undefined => stocks.get(stockKey(place, article));

export const openedStock = (stocks: Stocks, place: Place, article: Article): Stock => {
  const key = stockKey(place, article);
  const stock = stocks.get(key) ?? { ...NOTHING, place, article, scrapped: ZERO, last: NOTHING, hasMoved: false };
  stocks.set(key, stock);
  return stock;
};

/** Quantities read from 15 digits, such as 3 x 1/3, agree to this share. */
const DUST = new Exact("1e-12");

/** Whether so many are all there are. */
export const isAll = ({ quantity }: Part, wanted: Exact): boolean => quantity.minus(wanted).abs().lte(quantity.times(DUST));

/** Whether there are so many. */
export const holds = (stock: Part, wanted: Exact): boolean => isAll(stock, wanted) || stock.quantity.gt(wanted);

/** So many at the average, in cents: the last ones take all that is left, so that no place keeps a stray cent. */
export const atAverage = (stock: Part, wanted: Exact): Part => {
  if (isAll(stock, wanted)) return { quantity: stock.quantity, value: stock.value, charges: stock.charges };
  const share = (amount: Exact): Exact => cents(wanted.times(amount).div(stock.quantity));
  return { quantity: wanted, value: share(stock.value), charges: share(stock.charges) };
};

export const least = (one: Exact, other: Exact): Exact => (one.lt(other) ? one : other);

/** A stock with a part more; taken out, with its mirror. */
export const addTo = (stock: Stock, { quantity, value, charges }: Part): void => {
  if (!stock.quantity.isZero()) stock.last = { quantity: stock.quantity, value: stock.value, charges: stock.charges };
  stock.quantity = stock.quantity.plus(quantity);
  stock.value = stock.value.plus(value);
  stock.charges = least(stock.charges.plus(charges), stock.value);
};

export const negated = ({ quantity, value, charges }: Part): Part => ({
  quantity: quantity.negated(), value: value.negated(), charges: charges.negated(),
});
