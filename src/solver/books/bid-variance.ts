import { goodsKey, LABOUR } from "../goods/goods-key";
import { isTime } from "../goods/goods-unit";
import type { Exact } from "../length/exact";
import { isProblem, type Problem } from "../problem";
import { type BoughtGoods, goodsItems, type Item, type PlannedGoods, type ReconcileProblem, sum, type TableNames } from "./goods-items";
import { isPlanned, isUntouched, type ItemVariances, itemVariances } from "./item-variances";

export const CAUSES = [
  "bid", "price", "usage", "waste", "rate", "hours", "freight and tax", "not bid", "bid, not done", "actual",
] as const;

export interface BidVarianceRow {
  readonly cause: (typeof CAUSES)[number];
  readonly amount: Exact;
}

const NAMES: TableNames = { planned: "planned", bought: "actual", used: "actual" };

/** Work is bid by a rate and hours, goods by a price and a quantity. */
const isLabour = ({ name, unit }: Item): boolean => (unit === undefined ? false : isTime(unit)) || goodsKey(name) === LABOUR;

/**
 * From what was bid to what a job cost, cause by cause: each is a difference of amounts in cents, so that bid and causes add up to actual
 * exactly. Overhead and profit are no causes: only costs are compared.
 */
export const bidVariance = (
  planned: readonly PlannedGoods[], actual: readonly BoughtGoods[],
): readonly BidVarianceRow[] | Problem<ReconcileProblem> => {
  const items = goodsItems(planned, actual, undefined, NAMES);
  if (isProblem(items)) return items;
  const goods = items.filter(({ isMoney }) => !isMoney).map((item) => ({ item, variances: itemVariances(item) }));
  const money = items.filter(({ isMoney }) => isMoney);
  const total = (of: (variances: ItemVariances) => Exact, isOfCause: (item: Item) => boolean): Exact =>
    sum(goods.filter(({ item }) => isOfCause(item)).map(({ variances }) => of(variances)));
  const isOfGoods = (item: Item): boolean => !isLabour(item);
  const price = ({ priceVariance }: ItemVariances): Exact => priceVariance;
  const quantity = ({ usageVariance, waste }: ItemVariances): Exact => usageVariance.minus(waste);
  const scope = (variances: ItemVariances): Exact => variances.scope;
  const charges = sum(items.map((item) => item.charges));
  const amounts: Readonly<Record<BidVarianceRow["cause"], Exact>> = {
    bid: sum(items.map(({ plannedCost }) => plannedCost)),
    price: total(price, isOfGoods),
    usage: total(quantity, isOfGoods),
    waste: total(({ waste }) => waste, () => true),
    rate: total(price, isLabour),
    hours: total(quantity, isLabour),
    "freight and tax": charges.minus(sum(money.map(({ plannedCost }) => plannedCost))),
    "not bid": total(scope, (item) => !isPlanned(item)),
    "bid, not done": total(scope, (item) => isPlanned(item) && isUntouched(item)),
    actual: sum(items.map(({ goodsCost }) => goodsCost)).plus(charges),
  };
  return CAUSES.map((cause) => ({ cause, amount: amounts[cause] }));
};
