import { nearestLabel } from "../code/nearest-label";
import { type Problem, problem } from "../problem";
import { itemKey } from "./item-key";
import type { Price, PriceList } from "./price-list";

export type NoUnitPrice =
  | "no-price" | "no-hourly-price" | "no-price-in-unit" | "several-units" | "two-prices" | "two-hourly-prices";

type Found<Bad> = Price | Problem<NoUnitPrice> | Bad;

/** The item and the unit of the price row for all hours that have no price of their own. */
const LABOUR = "labour";
const HOUR = "hour";

/** Whether a look-up found a price, and not a reason why there is none. */
export const isPrice = <Bad>(found: Found<Bad> | undefined): found is Price =>
  typeof found === "object" && found !== null && "price" in found && "item" in found;

/** Prices of an item that fit a unit: its own unit before a price for any. A quantity without a unit takes them as they are. */
const fitting = (prices: readonly Price[], unit: string): readonly Price[] => {
  const forAnyUnit = prices.filter((price) => price.unit === "");
  const forUnit = unit === "" ? [] : prices.filter((price) => itemKey(price.unit) === itemKey(unit));
  if (forUnit.length > 0) return forUnit;
  return unit === "" && forAnyUnit.length === 0 ? prices : forAnyUnit;
};

const unitsOf = (prices: readonly Price[]): string => [...new Set(prices.map(({ unit }) => unit || "any unit"))].join(", ");

/** The one price that several rows for an item agree on. */
const agreed = (prices: readonly Price[], item: string): Price | Problem<NoUnitPrice> | undefined => {
  const [first] = prices;
  if (first === undefined) return undefined;
  if (prices.some(({ unit }) => itemKey(unit) !== itemKey(first.unit))) {
    return problem("several-units", { item, units: unitsOf(prices) });
  }
  const other = prices.find(({ price }) => !price.eq(first.price));
  if (other === undefined) return first;
  return problem("two-prices", { item, unit: unitsOf([first]), first: first.price.toString(), second: other.price.toString() });
};

/** What an hour costs: an item's own price by the hour, or the price of labour; a price without a unit may be meant for either. */
const hourly = <Bad>(item: string, own: Found<Bad> | undefined, labour: Found<Bad> | undefined): Found<Bad> | undefined => {
  if (own === undefined) return labour;
  if (!isPrice(own) || own.unit !== "" || !isPrice(labour) || labour.price.eq(own.price)) return own;
  return problem("two-hourly-prices", { item, own: own.price.toString(), labour: labour.price.toString() });
};

/**
 * The price of one unit of an item. Items and units match by their letters and digits; an hour without a price of its own costs what
 * `labour` costs. Two prices that differ are refused, never chosen between.
 */
export const unitPrice = <Bad>(list: PriceList<Bad>, wanted: string | number, unit: string): Found<Bad> => {
  const item = String(wanted);
  const priced = (name: string): readonly Price[] => list.readable.get(itemKey(name)) ?? [];
  const listed = (name: string): Found<Bad> | undefined =>
    list.unreadable.get(itemKey(name)) ?? agreed(fitting(priced(name), unit), name);
  const byTheHour = itemKey(unit) === HOUR;
  const own = listed(item);
  const found = byTheHour && itemKey(item) !== LABOUR ? hourly(item, own, listed(LABOUR)) : own;
  const nameless = list.unreadable.get("");
  if (found !== undefined) return found;
  if (nameless !== undefined) return nameless;
  if (priced(item).length > 0) return problem("no-price-in-unit", { item, unit, units: unitsOf(priced(item)) });
  return problem(byTheHour ? "no-hourly-price" : "no-price", { item, near: nearestLabel(item, list.names) });
};
