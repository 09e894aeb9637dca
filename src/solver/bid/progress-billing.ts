import { Exact, exact } from "../length/exact";
import { isProblem, type Problem, problem } from "../problem";
import { cents } from "./cents";

/** A row of the schedule of values. */
export interface ScheduledWork {
  readonly item: string | number;
  readonly row: number;
  /** A deduct is negative. Absent: 0 or empty, which a host may not tell apart. 0: included elsewhere, in words. */
  readonly value?: Exact;
  /** A share, up to 1: 0.6 for 60 %. */
  readonly done: number;
  /** Cost of goods on site that are not yet built in. */
  readonly stored: Exact;
  readonly change: boolean;
}

/** Retainage is a share, up to 1; paid and deposit are money that came before this bill. */
export interface BillingTerms {
  readonly retainage: Exact;
  readonly paid: Exact;
  readonly deposit: Exact;
}

export interface BilledRow {
  readonly item: string | number;
  readonly value?: Exact;
  readonly done?: number;
  readonly earned?: Exact;
  readonly balance?: Exact;
}

export type BillingProblem = "no-value" | "earned-over-value" | "deposit-over-value";

const ZERO = new Exact(0);

const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((all, each) => all.plus(each), ZERO);

interface Earned {
  readonly item: string | number;
  readonly value: Exact;
  readonly done: number;
  readonly earned: Exact;
  readonly change: boolean;
}

const earnedOf = ({ item, row, value, done, stored, change }: ScheduledWork): Earned | Problem<BillingProblem> => {
  const facts = { item: String(item), row };
  if (value === undefined) return problem("no-value", facts);
  const worth = cents(value);
  const earned = cents(worth.times(exact(done))).plus(cents(stored));
  // Of a deduct, too, no more is earned than it is worth, and nothing on the other side of 0.
  const isOver = worth.isNegative() ? earned.lt(worth) || earned.gt(0) : earned.gt(worth);
  return isOver
    ? problem("earned-over-value", { ...facts, earned: earned.toString(), value: worth.toString() })
    : { item, value: worth, done, earned, change };
};

/**
 * What is due now under a schedule of values: what is earned, less the retainage, less the deposit in step with the work, less what was
 * paid. All amounts are in cents, so that all draws and the deposit come to contract and changes once all is done and nothing retained.
 */
export const progressBilling = (
  schedule: readonly ScheduledWork[], terms: BillingTerms,
): readonly BilledRow[] | Problem<BillingProblem> => {
  const rows: Earned[] = [];
  for (const work of schedule) {
    const row = earnedOf(work);
    if (isProblem(row)) return row;
    rows.push(row);
  }
  const worth = (isChange: boolean): Exact => sum(rows.filter(({ change }) => change === isChange).map(({ value }) => value));
  const [contract, changes] = [worth(false), worth(true)];
  const value = contract.plus(changes);
  const [paid, deposit] = [cents(terms.paid), cents(terms.deposit)];
  if (deposit.gt(0) && deposit.gt(value)) return problem("deposit-over-value", { deposit: deposit.toString(), value: value.toString() });
  const earned = sum(rows.map((row) => row.earned));
  const retained = cents(earned.times(terms.retainage));
  const credited = deposit.isZero() ? ZERO : cents(deposit.times(earned).div(value));
  return [
    ...rows.map((row) => ({ item: row.item, value: row.value, done: row.done, earned: row.earned, balance: row.value.minus(row.earned) })),
    { item: "contract", value: contract },
    { item: "changes", value: changes },
    { item: "earned", value, earned, balance: value.minus(earned) },
    { item: "retainage", earned: ZERO.minus(retained) },
    { item: "deposit credited", earned: ZERO.minus(credited) },
    { item: "paid", earned: ZERO.minus(paid) },
    { item: "due", earned: earned.minus(retained).minus(credited).minus(paid) },
  ];
};
