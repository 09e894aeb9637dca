import { type Exact, exact } from "../length/exact";
import type { Problem } from "../problem";
import { cents } from "./cents";
import { type Price, priceList, type Unreadable } from "./price-list";
import { isPrice, type NoUnitPrice, unitPrice } from "./unit-price";

export interface Quantity {
  readonly item: string | number;
  /** A return is negative. */
  readonly quantity: number;
  readonly unit: string;
}

/** A quantity with its price and cost, or with what is wrong with it. */
export interface ExtendedRow<Bad> {
  readonly item: string | number;
  readonly quantity?: number;
  readonly unit?: string;
  readonly price?: Exact;
  readonly cost?: Exact;
  readonly bad?: Bad | Problem<NoUnitPrice>;
}

/** Every quantity times its price, to the cent, row by row; a row without a price or that could not be read keeps its reason. */
export const extension = <Bad>(
  quantities: readonly (Quantity | Unreadable<Bad>)[],
  prices: readonly (Price | Unreadable<Bad>)[],
): readonly ExtendedRow<Bad>[] => {
  const list = priceList(prices);
  return quantities.map((row) => {
    if ("bad" in row) return { item: row.label, bad: row.bad };
    const { item, quantity, unit } = row;
    const found = unitPrice(list, item, unit);
    if (!isPrice(found)) return { item, quantity, unit, bad: found };
    return { item, quantity, unit: unit || found.unit, price: found.price, cost: cents(exact(quantity).times(found.price)) };
  });
};
