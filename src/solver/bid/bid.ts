import { isIncluded } from "../goods/meant-nothing";
import { Exact } from "../length/exact";
import { isProblem, type Problem } from "../problem";
import { cents } from "./cents";
import { type Basis, sellingPrice } from "./selling-price";

export interface Cost {
  readonly item: string | number;
  readonly row: number;
  /** A credit is negative. Absent: 0 or empty, which a host may not tell apart. 0: included elsewhere, in words. */
  readonly cost?: Exact;
  /** As an extension gives it: `included` says that a cost of 0 is meant. */
  readonly price?: string | number;
  readonly taxed: boolean;
}

/** Rates are shares: 0.1 for 10 %. */
export interface Terms {
  readonly overhead: Exact;
  readonly profit: Exact;
  readonly basis: Basis;
  readonly tax: Exact;
  /** What tax falls on: the price, or the cost of the taxed rows alone. */
  readonly taxBasis: "price" | "items";
}

export interface BidRow {
  readonly label: "direct" | "overhead" | "profit" | "price" | "tax" | "total";
  readonly cost: Exact;
  readonly note?: string;
}

const NOTHING = new Exact(0);

const sum = (costs: readonly Cost[]): Exact =>
  costs.reduce((total, { cost }) => (cost === undefined ? total : total.plus(cents(cost))), NOTHING);

/** How the note on such costs begins, for a sheet that says it in words of its own. */
export const ZERO_COST = "cost is 0 or empty";

/** Costs that a cell left empty may hide: a host may hand over 0 for it. */
const blankNote = (costs: readonly Cost[]): string => {
  const blank = costs.filter(({ cost, price }) => cost === undefined && !isIncluded(price));
  const [first] = blank;
  if (first === undefined) return "";
  return `${ZERO_COST} in row ${first.row} (${String(first.item)})${blank.length === 1 ? "" : ` and ${blank.length - 1} more`}`;
};

/**
 * A bid from its direct costs: overhead on direct cost, profit on direct cost and overhead together, then tax. Each cost is
 * in cents, and so is each row, calculated from the rows printed above it, so that printed totals add printed rows.
 */
export const bid = (costs: readonly Cost[], terms: Terms): readonly BidRow[] | Problem<"margin-of-all"> => {
  const direct = sum(costs);
  const overhead = cents(direct.times(terms.overhead));
  const covered = direct.plus(overhead);
  const sold = sellingPrice(covered, terms.profit, terms.basis);
  if (isProblem(sold)) return sold;
  const price = cents(sold);
  const taxable = terms.taxBasis === "price" ? price : sum(costs.filter(({ taxed }) => taxed));
  const tax = cents(taxable.times(terms.tax));
  return [
    { label: "direct", cost: direct, note: blankNote(costs) },
    { label: "overhead", cost: overhead },
    { label: "profit", cost: price.minus(covered) },
    { label: "price", cost: price },
    { label: "tax", cost: tax },
    { label: "total", cost: price.plus(tax) },
  ];
};
