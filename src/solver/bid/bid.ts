import { isIncluded } from "../goods/meant-nothing";
import { Exact } from "../length/exact";
import { isProblem, type Problem, problem } from "../problem";
import { cents } from "./cents";
import { type Cost, costsWith, type DirectCosts, directCosts, taxedWithoutGoods } from "./cost";
import { roundedUp } from "./rounded-up";
import { type TermName, type Terms, termTexts } from "./terms";

export const BID_LABELS = [
  "materials",
  "tax paid on materials",
  "labour",
  "burden",
  "subcontract",
  "direct",
  "contingency",
  "overhead",
  "profit",
  "rounding",
  "price",
  "tax",
  "total",
] as const;
export type BidLabel = (typeof BID_LABELS)[number];

export type BidFigures = Readonly<Record<BidLabel, Exact>>;

export interface BidRow {
  readonly label: BidLabel;
  readonly cost: Exact;
  /** As a share of the rounded price; absent where that is 0. */
  readonly ofPrice?: Exact;
  readonly note: string;
}

export type NoBid = "taxed-without-goods" | "no-such-option" | "no-options" | "nothing-left";

/** The terms that make a row, which its note names. */
const TERMS_OF: Readonly<Partial<Record<BidLabel, readonly TermName[]>>> = {
  "tax paid on materials": ["taxPaidOnMaterials"],
  burden: ["burden"],
  contingency: ["contingency"],
  overhead: ["overheadOnLabour", "overheadOnMaterials", "overheadOnCost", "overheadOfPrice"],
  profit: ["profitOnCost", "profitOfPrice"],
  rounding: ["roundUpTo"],
  tax: ["taxOnPrice", "taxOnMaterials"],
};

/** The terms of a bid that make one of its rows, in words. */
export const termsOf = (label: BidLabel, terms: Terms): string => termTexts(TERMS_OF[label] ?? [], terms).join("; ");

/** What is left of the price for the cost and its markup: 1 - o (1 + p) - g, with o, g shares of the price and p a markup. */
const leftForCost = ({ overheadOfPrice, profitOnCost, profitOfPrice }: Terms): Exact =>
  new Exact(1).minus(overheadOfPrice.times(profitOnCost.plus(1))).minus(profitOfPrice);

/** The price before cents: what covers a base, the cost with what is added to the cost: base (1 + p) / (1 - o (1 + p) - g). */
const priceOver = (base: Exact, terms: Terms): Exact => base.times(terms.profitOnCost.plus(1)).div(leftForCost(terms));

/** Terms that leave no price: they take the whole of it, or more. */
export const nothingLeft = (terms: Terms): Problem<"nothing-left"> | undefined => {
  if (leftForCost(terms).gt(0)) return undefined;
  const rates = termTexts(["overheadOfPrice", "profitOnCost", "profitOfPrice"], terms);
  return problem("nothing-left", { rates: rates.join(" and "), leave: rates.length > 1 ? "leave" : "leaves" });
};

/** Rows between the cost and the price, each put into cents by `paid` where it is first an amount. */
const upToContingency = (costs: DirectCosts, terms: Terms, paid: (amount: Exact) => Exact) => {
  const { materials, taxedMaterials, labour, subcontract } = costs;
  const taxPaid = paid(terms.taxPaidOnMaterials.times(taxedMaterials));
  const burden = paid(terms.burden.times(labour));
  const direct = materials.plus(taxPaid).plus(labour).plus(burden).plus(subcontract);
  const contingency = paid(terms.contingency.times(direct));
  const overheadOn = paid(
    terms.overheadOnLabour
      .times(labour.plus(burden))
      .plus(terms.overheadOnMaterials.times(materials.plus(taxPaid)))
      .plus(terms.overheadOnCost.times(direct.plus(contingency))),
  );
  return { taxPaid, burden, direct, contingency, overheadOn, base: direct.plus(contingency).plus(overheadOn) };
};

/** The price before any cent is fixed. It is linear in the costs: the prices of parts add up to the price of all. */
export const unroundedPrice = (costs: DirectCosts, terms: Terms): Exact =>
  priceOver(upToContingency(costs, terms, (amount) => amount).base, terms);

/**
 * Every row in cents. Overhead of price is taken from the price before cents, profit is what is left of the price in cents, and rounding
 * what is added to make the price a whole so many: rows add.
 */
export const bidFigures = (costs: DirectCosts, terms: Terms): BidFigures => {
  const { materials, taxedMaterials, labour, subcontract } = costs;
  const { taxPaid, burden, direct, contingency, overheadOn, base } = upToContingency(costs, terms, cents);
  const exactPrice = priceOver(base, terms);
  const overhead = overheadOn.plus(cents(terms.overheadOfPrice.times(exactPrice)));
  const unrounded = cents(exactPrice);
  const price = roundedUp(unrounded, terms.roundUpTo);
  const tax = cents(terms.taxOnPrice.times(price).plus(terms.taxOnMaterials.times(taxedMaterials)));
  return {
    materials,
    "tax paid on materials": taxPaid,
    labour,
    burden,
    subcontract,
    direct,
    contingency,
    overhead,
    profit: unrounded.minus(direct).minus(contingency).minus(overhead),
    rounding: price.minus(unrounded),
    price,
    tax,
    total: price.plus(tax),
  };
};

/** How the note on such costs begins, for a sheet that says it in words of its own. */
export const ZERO_COST = "cost is 0 or empty";

/** Costs that a cell left empty may hide: a host may hand over 0 for it. */
export const blankNote = (costs: readonly Cost[]): string => {
  const blank = costs.filter(({ cost, price }) => cost === undefined && !isIncluded(price));
  const [first] = blank;
  if (first === undefined) return "";
  return `${ZERO_COST} in row ${first.row} (${String(first.item)})${blank.length === 1 ? "" : ` and ${blank.length - 1} more`}`;
};

/** The costs of a bid, or why there is none; with an option that alternate's as well. */
export const costsOfBid = (costs: readonly Cost[], terms: Terms, option: string): readonly Cost[] | Problem<NoBid> =>
  taxedWithoutGoods(costs) ?? nothingLeft(terms) ?? costsWith(costs, option);

/** A bid of its costs by its terms, row by row: cost, its share of the price, and the terms that make it. */
export const bid = (costs: readonly Cost[], terms: Terms, option = ""): readonly BidRow[] | Problem<NoBid> => {
  const own = costsOfBid(costs, terms, option);
  if (isProblem(own)) return own;
  const figures = bidFigures(directCosts(own), terms);
  const { price } = figures;
  return BID_LABELS.map((label) => ({
    label,
    cost: figures[label],
    ...(price.isZero() ? {} : { ofPrice: figures[label].div(price) }),
    note: label === "direct" ? blankNote(own) : termsOf(label, terms),
  }));
};
