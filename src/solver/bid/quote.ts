import { goodsKey } from "../goods/goods-key";
import { Exact } from "../length/exact";
import { isProblem, type Problem } from "../problem";
import { bidFigures, costsOfBid, type NoBid, unroundedPrice } from "./bid";
import { type Cost, costsWith, directCosts, optionsOf } from "./cost";
import { priceShares } from "./price-shares";
import type { Terms } from "./terms";

export interface QuoteRow {
  readonly part: string;
  readonly option: string;
  readonly price: Exact;
  readonly tax: Exact;
  readonly total: Exact;
}

/** What a line of a quote is called whose rows name no part: beside parts, and alone. */
const BESIDE_PARTS = "other work";
const ALONE = "work";

interface Part {
  readonly name: string;
  readonly costs: readonly Cost[];
}

/** The parts in the order in which they are first named; rows without a part are one of their own. */
const partsOf = (costs: readonly Cost[]): readonly Part[] => {
  const parts = new Map<string, { name: string; costs: Cost[] }>();
  for (const cost of costs) {
    const name = cost.part ?? "";
    const known = parts.get(goodsKey(name));
    if (known === undefined) parts.set(goodsKey(name), { name, costs: [cost] });
    else known.costs.push(cost);
  }
  return [...parts.values()].map(({ name, costs: own }) => ({
    name: name || (parts.size === 1 ? ALONE : BESIDE_PARTS),
    costs: own,
  }));
};

/** How an alternate is named in the column of parts: as its rows name it. */
export const partOfOption = (costs: readonly Cost[], option: string): string => {
  const named = costs.filter((cost) => goodsKey(cost.option ?? "") === goodsKey(option) && cost.part !== undefined && cost.part !== "");
  return partsOf(named).map(({ name }) => name).join(", ") || option;
};

const lineOf = (part: string, option: string, price: Exact, tax: Exact): QuoteRow => ({ part, option, price, tax, total: price.plus(tax) });

/**
 * What a customer is asked, without a cost in sight: the rounded price shared over the parts by their prices before cents, the tax by what
 * it falls on, then the total, then each alternate as the price with it less the price without it.
 */
export const quote = (costs: readonly Cost[], terms: Terms): readonly QuoteRow[] | Problem<NoBid> => {
  const always = costsOfBid(costs, terms, "");
  if (isProblem(always)) return always;
  const parts = partsOf(always);
  const sums = parts.map((part) => directCosts(part.costs));
  const whole = bidFigures(directCosts(always), terms);
  const byPrice = sums.map((own) => unroundedPrice(own, terms));
  const prices = priceShares(whole.price, byPrice);
  const taxes = priceShares(whole.tax, terms.taxOnMaterials.isZero() ? byPrice : sums.map(({ taxedMaterials }) => taxedMaterials));
  const options = optionsOf(costs).map((option) => {
    const own = costsWith(costs, option);
    const figures = bidFigures(directCosts(isProblem(own) ? always : own), terms);
    return lineOf(partOfOption(costs, option), option, figures.price.minus(whole.price), figures.tax.minus(whole.tax));
  });
  const none = new Exact(0);
  return [
    ...parts.map(({ name }, place) => lineOf(name, "", prices[place] ?? none, taxes[place] ?? none)),
    lineOf("total", "", whole.price, whole.tax),
    ...options,
  ];
};
