import { Exact } from "../length/exact";
import { type CuttingJob } from "./cutting-job";
import { type CuttingPlan } from "./cutting-plan";

export interface SummaryRow {
  readonly label: string;
  readonly kind: "money" | "count" | "rate" | "length" | "text";
  readonly value: Exact | number | string;
}

/** What a plan costs, how much of the wood it uses, and how good it is proven to be; with `keep`, the ends worth keeping. */
export const planSummary = (job: CuttingJob, plan: CuttingPlan): SummaryRow[] => {
  const { keep } = job;
  const kept = keep === undefined ? [] : plan.sticks.map((stick) => stick.leftOver).filter((end) => end.gt(0) && end.gte(keep));
  const offcuts: SummaryRow[] = [
    { label: "offcuts kept", kind: "count", value: kept.length },
    { label: "offcut length", kind: "length", value: kept.reduce((sum, end) => sum.plus(end), new Exact(0)) },
  ];
  return [
    { label: "cost", kind: "money", value: plan.cost },
    { label: "sticks", kind: "count", value: plan.sticksUsed },
    { label: "yield", kind: "rate", value: plan.yield },
    { label: "bound", kind: "money", value: plan.bound },
    { label: "gap", kind: "rate", value: plan.gap },
    { label: "verdict", kind: "text", value: plan.verdict },
    ...(keep === undefined ? [] : offcuts),
    ...(plan.notes.length === 0 ? [] : [{ label: "note", kind: "text", value: plan.notes.join("; ") } as const]),
  ];
};
