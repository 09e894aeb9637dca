import { cents } from "../bid/cents";
import { Exact } from "../length/exact";
import { buyList, sticksByRow } from "./buy-list";
import { type CuttingJob } from "./cutting-job";
import { type CuttingPlan } from "./cutting-plan";

export interface SummaryRow {
  readonly label: string;
  readonly kind: "money" | "count" | "number" | "rate" | "length" | "text";
  readonly value: Exact | number | string;
}

const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((all, each) => all.plus(each), new Exact(0));

/** What owned sticks with a price cost, row by row in cents as what is bought. */
const ownedCost = (job: CuttingJob, plan: CuttingPlan): Exact =>
  sum(
    sticksByRow(job, plan).flatMap((sticks, row) => {
      const { owned, price } = job.stock[row]!;
      return owned && price !== undefined ? [cents(price.times(sticks.length))] : [];
    }),
  );

/**
 * What a plan costs, how much of the wood it uses, and how good it is proven to be; with `keep`, the ends worth keeping. The cost is the
 * sum of what is bought, in cents, and of owned sticks that have a price; what is proven of it is proven of the prices as they stand.
 */
export const planSummary = (job: CuttingJob, plan: CuttingPlan): SummaryRow[] => {
  const { keep } = job;
  const kept = keep === undefined ? [] : plan.sticks.map((stick) => stick.leftOver).filter((end) => end.gt(0) && end.gte(keep));
  const offcuts: SummaryRow[] = [
    { label: "offcuts kept", kind: "count", value: kept.length },
    { label: "offcut length", kind: "length", value: kept.reduce((all, end) => all.plus(end), new Exact(0)) },
  ];
  const owned = ownedCost(job, plan);
  const notes = [...(owned.isZero() ? [] : [`${owned.toFixed(2)} of the cost is owned stock, which BUY leaves out`]), ...plan.notes];
  return [
    { label: "cost", kind: "money", value: sum(buyList(job, plan).map(({ cost }) => cost)).plus(owned) },
    { label: "sticks", kind: "count", value: plan.sticksUsed },
    { label: "yield", kind: "rate", value: plan.yield },
    { label: "lowest possible cost", kind: "money", value: plan.bound },
    { label: "most still to save", kind: "rate", value: plan.gap },
    { label: "verdict", kind: "text", value: plan.verdict },
    ...(keep === undefined ? [] : offcuts),
    ...(notes.length === 0 ? [] : [{ label: "note", kind: "text", value: notes.join("; ") } as const]),
  ];
};
