import { itemKey } from "../bid/item-key";
import type { Unreadable } from "../bid/price-list";
import { nearestLabel } from "../code/nearest-label";
import { type Exact, exact } from "../length/exact";
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

/** Hours of a piece of work, or what is wrong with it or its rate. */
export interface HoursLine<Bad> {
  readonly item: string;
  readonly quantity?: Exact;
  readonly unit: "hour";
  readonly hoursEach?: Exact;
  readonly bad?: Bad | Problem<HoursProblem>;
}

interface Found<Bad> {
  readonly each?: Exact;
  readonly bad?: Bad | Problem<HoursProblem>;
}

const rateOf = <Bad>(item: string, rates: readonly (Rate | Unreadable<Bad>)[]): Found<Bad> => {
  const nameOf = (row: Rate | Unreadable<Bad>): string => String("bad" in row ? row.label : row.item);
  const fitting = rates.filter((row) => itemKey(nameOf(row)) === itemKey(item));
  const unreadable = fitting.find((row) => "bad" in row) ?? (fitting.length === 0 ? rates.find((row) => "bad" in row && nameOf(row) === "") : undefined);
  if (unreadable !== undefined && "bad" in unreadable) return { bad: unreadable.bad };
  const [first, ...others] = fitting.flatMap((row) => ("bad" in row ? [] : [row.hours]));
  if (first === undefined) return { bad: problem("no-rate", { item, nearest: nearestLabel(item, rates.map(nameOf).filter(Boolean)) }) };
  const other = others.find((hours) => hours !== first);
  return other === undefined ? { each: exact(first) } : { bad: problem("two-rates", { item, hours: first, other }) };
};

/** Hours of every piece of work by the shop's own rates; work without a rate is named in its row, and a rate of 0 is work included elsewhere. */
export const hours = <Bad>(work: readonly (Work | Unreadable<Bad>)[], rates: readonly (Rate | Unreadable<Bad>)[]): readonly HoursLine<Bad>[] =>
  work.map((row): HoursLine<Bad> => {
    if ("bad" in row) return { item: String(row.label), unit: "hour", bad: row.bad };
    const item = String(row.item);
    const { each, bad } = rateOf(item, rates);
    if (each !== undefined) return { item, quantity: each.times(exact(row.quantity)), unit: "hour", hoursEach: each };
    return { item, unit: "hour", ...(bad === undefined ? {} : { bad }) };
  });
