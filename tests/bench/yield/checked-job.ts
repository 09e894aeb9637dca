import { isProblem, type Problem } from "../../../src/solver/problem";
import type { CuttingPlan } from "../../../src/solver/yield/cutting-plan";
import { cents } from "../../solver/yield/job";
import { unproven } from "../../solver/yield/certificate-checker";
import { faults } from "../../solver/yield/plan-checker";
import type { BenchJob } from "./bench-jobs";

/** What came of one job. */
export interface Measured {
  readonly name: string;
  readonly milliseconds: number;
  /** In cents. */
  readonly cost: number;
  readonly bound: number;
  /** Percent of the cost. */
  readonly gap: number;
  readonly isProven: boolean;
  readonly isCertified: boolean;
  readonly failed: readonly string[];
  readonly contradictions: readonly string[];
}

/** What a plan says against the published figures of its job. */
const contradicted = ({ least, most }: BenchJob, cost: number, bound: number): string[] => [
  ...(cost < least ? [`costs ${cost}, and no plan is published to cost less than ${least}`] : []),
  ...(bound > most ? [`is bound to ${bound}, and a plan for ${most} is published`] : []),
];

/** The plan of a job by some search: timed, then looked over by the checkers of plans and certificates. */
export const checkedJob = async (
  named: BenchJob,
  search: (job: BenchJob["job"]) => CuttingPlan | Problem | Promise<CuttingPlan | Problem>,
): Promise<Measured> => {
  const began = performance.now();
  const plan = await search(named.job);
  const milliseconds = performance.now() - began;
  if (isProblem(plan)) {
    const none = { cost: Infinity, bound: 0, gap: 100, isProven: false, isCertified: false, contradictions: [] };
    return { name: named.name, milliseconds, ...none, failed: [`there is no plan: ${plan.problem}`] };
  }
  const [cost, bound] = [cents(plan.cost), cents(plan.bound)];
  return {
    name: named.name,
    milliseconds,
    cost,
    bound,
    gap: plan.gap.times(100).toNumber(),
    isProven: plan.verdict.startsWith("best possible"),
    isCertified: plan.verdict === "best possible (proven)",
    failed: [...faults(named.job, plan), ...unproven(named.job, plan)],
    contradictions: contradicted(named, cost, bound),
  };
};
