import { type Problem } from "../problem";
import { type CuttingJob } from "./cutting-job";
import { cuttingPlan, type CuttingPlan, type ImpossibleCutting } from "./cutting-plan";

export type CuttingAnswer = CuttingPlan | Problem<ImpossibleCutting>;

/** Whoever has a plan of a job; what a cell would plan is worked out when it is asked for. */
export type Planner = (job: CuttingJob, inACell: () => CuttingAnswer) => CuttingAnswer;

/** A sheet asks for the cut list, the goods and the summary of a few jobs at a time. */
const MOST_REMEMBERED = 6;

const remembered = new Map<string, CuttingAnswer>();

let planner: Planner = (_job, inACell) => inACell();

/** Takes plans from elsewhere from now on: from a search that has more time than a cell. What was remembered is forgotten. */
export const planBy = (other: Planner): void => {
  planner = other;
  remembered.clear();
};

/**
 * The plan of a job, as `cuttingPlan` gives it where nobody else plans; the last few are remembered, so that several functions tell of one
 * plan at the price of one. A plan depends on nothing but the job, so remembering never shows in a result.
 */
export const sharedPlan = (job: CuttingJob): CuttingAnswer => {
  const key = JSON.stringify({ ...job, stock: job.stock.map((stock) => ({ ...stock, available: String(stock.available) })) });
  const plan = remembered.get(key) ?? planner(job, () => cuttingPlan(job));
  remembered.delete(key);
  remembered.set(key, plan);
  const [oldest] = remembered.keys();
  if (remembered.size > MOST_REMEMBERED && oldest !== undefined) remembered.delete(oldest);
  return plan;
};
