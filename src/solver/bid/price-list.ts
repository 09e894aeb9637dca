import type { Exact } from "../length/exact";
import { itemKey } from "./item-key";

export interface Price {
  readonly item: string | number;
  readonly price: Exact;
  /** Empty: the price fits any unit. */
  readonly unit: string;
}

/** A row that could not be read, with what is wrong with it and the item it is about, if that was read. */
export interface Unreadable<Bad> {
  readonly bad: Bad;
  readonly label: string | number;
}

export interface PriceList<Bad> {
  /** As they are written, for naming the nearest. */
  readonly names: readonly string[];
  readonly readable: ReadonlyMap<string, readonly Price[]>;
  readonly unreadable: ReadonlyMap<string, Bad>;
}

/** Price rows found by item, in the order given. */
export const priceList = <Bad>(rows: readonly (Price | Unreadable<Bad>)[]): PriceList<Bad> => {
  const readable = new Map<string, Price[]>();
  const unreadable = new Map<string, Bad>();
  const names: string[] = [];
  for (const row of rows) {
    const name = String("bad" in row ? row.label : row.item);
    const key = itemKey(name);
    if (name !== "") names.push(name);
    if ("bad" in row) unreadable.set(key, row.bad);
    else readable.set(key, [...(readable.get(key) ?? []), row]);
  }
  return { names, readable, unreadable };
};
