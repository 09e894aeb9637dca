import { plainMarks } from "../../goods/plain-marks";
import type { Name } from "./move";

export type PlaceKind = "rack" | "job" | "shop" | "waste" | "shrinkage" | "price differences";

/** Where goods are, or what money became. */
export interface Place {
  readonly kind: PlaceKind;
  readonly key: string;
  readonly name: Name;
}

const own = (kind: Exclude<PlaceKind, "job">): Place => ({ kind, key: kind, name: kind });

export const RACK = own("rack");
export const SHOP = own("shop");
export const WASTE = own("waste");
export const SHRINKAGE = own("shrinkage");
export const PRICE_DIFFERENCES = own("price differences");

/** Names of the books that no job can have. */
const RESERVED: ReadonlySet<string> = new Set(["waste", "shrinkage", "price differences", "total"].map(plainMarks));
const RACK_KEY = plainMarks(RACK.key);
const SHOP_KEY = plainMarks(SHOP.key);

/** Finds the place a cell names; undefined for a name that is the books' own. */
export type PlaceOf = (written: Name | undefined) => Place | undefined;

/** The places of one table: a job is called as it is first asked for. */
export const places = (): PlaceOf => {
  const known = new Map<Name, Place | undefined>();
  const jobs = new Map<string, Place>();
  const found = (written: Name): Place | undefined => {
    const key = plainMarks(String(written));
    if (key === RACK_KEY || key === "") return RACK;
    if (key === SHOP_KEY) return SHOP;
    if (RESERVED.has(key)) return undefined;
    const job = jobs.get(key) ?? { kind: "job", key: `job ${key}`, name: written };
    jobs.set(key, job);
    return job;
  };
  return (written) => {
    if (written === undefined) return RACK;
    if (!known.has(written)) known.set(written, found(written));
    return known.get(written);
  };
};
