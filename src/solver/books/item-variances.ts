import { cents } from "../bid/cents";
import type { Exact } from "../length/exact";
import { type Item, ZERO } from "./goods-items";

export interface ItemVariances {
  readonly priceVariance: Exact;
  readonly usageVariance: Exact;
  readonly scope: Exact;
  readonly onTheRack: Exact;
  /** Of the usage variance, what was wasted over what the plan allows. */
  readonly waste: Exact;
}

/** Whether an item stands in the plan with a quantity and a price. */
export const isPlanned = ({ isPriced, planned }: Item): boolean => isPriced && !planned.isZero();

/** Whether none of it was bought or used. */
export const isUntouched = ({ bought, used }: Item): boolean => bought.isZero() && used.isZero();

/**
 * Where the difference between the plan of goods and what they cost went, charges apart: differences between amounts in cents, so that
 * they tie to the cent. What was not planned is counted at the price paid, what was planned at the planned price.
 */
export const itemVariances = (item: Item): ItemVariances => {
  const { planned, plannedCost, bought, goodsCost, used } = item;
  const none = { priceVariance: ZERO, usageVariance: ZERO, scope: ZERO, onTheRack: ZERO, waste: ZERO };
  if (!isPlanned(item)) {
    const onTheRack = bought.isZero() ? ZERO : goodsCost.minus(cents(used.times(goodsCost).div(bought)));
    return { ...none, scope: goodsCost.minus(onTheRack), onTheRack };
  }
  if (isUntouched(item)) return { ...none, priceVariance: goodsCost, scope: plannedCost.negated() };
  const atPlan = (quantity: Exact): Exact => cents(quantity.times(plannedCost).div(planned));
  const [boughtAtPlan, usedAtPlan] = [atPlan(bought), atPlan(used)];
  return {
    priceVariance: goodsCost.minus(boughtAtPlan),
    usageVariance: usedAtPlan.minus(plannedCost),
    scope: ZERO,
    onTheRack: boughtAtPlan.minus(usedAtPlan),
    waste: atPlan(item.wasted.minus(item.allowed)),
  };
};
