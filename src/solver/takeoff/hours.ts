import { itemKey } from "../bid/item-key";
import { nearestLabel } from "../code/nearest-label";
import { Exact, exact } from "../length/exact";
import { type Problem, problem } from "../problem";

export interface Work {
  readonly item: string | number;
  readonly quantity: number;
}

export interface Rate {
  readonly item: string | number;
  /** Hours for one. */
  readonly hours: number;
}

export type HoursProblem = "no-rate" | "two-rates";

export interface HoursLine {
  readonly item: string;
  readonly quantity: Exact | Problem<HoursProblem>;
  readonly unit: "hour";
  readonly hoursEach: Exact | Problem<HoursProblem>;
}

/** Hours of every piece of work by the shop's own rates; work without a rate is named in its row, and a rate of 0 is work included elsewhere. */
export const hours = (work: readonly Work[], rates: readonly Rate[]): readonly HoursLine[] =>
  work.map(({ item, quantity }): HoursLine => {
    const fitting = rates.filter((rate) => itemKey(rate.item) === itemKey(item));
    const [rate] = fitting;
    const other = fitting.find((one) => one.hours !== rate?.hours);
    const found =
      rate === undefined
        ? problem("no-rate", { item: String(item), nearest: nearestLabel(String(item), rates.map((one) => String(one.item))) })
        : other === undefined ? exact(rate.hours) : problem("two-rates", { item: String(item), hours: rate.hours, other: other.hours });
    return { item: String(item), quantity: found instanceof Exact ? found.times(exact(quantity)) : found, unit: "hour", hoursEach: found } as HoursLine;
  });
