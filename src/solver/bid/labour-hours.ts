import { converted, goodsUnit, isTime } from "../goods/goods-unit";
import { Exact, exact } from "../length/exact";
import { type Cost, kindOf } from "./cost";
import type { CountedCost } from "./price-change";

const HOUR = goodsUnit("hour");

export interface LabourHours {
  readonly hours: Exact;
  /** Rows that say hours. */
  readonly counted: number;
  /** Labour that costs something and does not say how many hours it is. */
  readonly uncounted: readonly Cost[];
}

const hoursOf = ({ quantity, unit = "" }: CountedCost): Exact | undefined => {
  const time = goodsUnit(unit);
  return quantity === undefined || !isTime(time) ? undefined : converted(exact(quantity), time, HOUR);
};

/** The hours of the labour of a bid, by its rows with a quantity in a unit of time. */
export const labourHours = (costs: readonly CountedCost[]): LabourHours => {
  const labour = costs.filter((row) => kindOf(row) === "labour");
  const counted = labour.flatMap((row) => hoursOf(row) ?? []);
  return {
    hours: counted.reduce((sum, each) => sum.plus(each), new Exact(0)),
    counted: counted.length,
    uncounted: labour.filter((row) => hoursOf(row) === undefined && row.cost !== undefined && !row.cost.isZero()),
  };
};
