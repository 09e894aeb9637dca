import { type Problem } from "../problem";
import { type CuttingJob } from "./cutting-job";
import { cuttingPlan, type CuttingPlan, type ImpossibleCutting } from "./cutting-plan";

/** A sheet asks for the cut list, the goods and the summary of a few jobs at a time. */
const MOST_REMEMBERED = 6;

const remembered = new Map<string, CuttingPlan | Problem<ImpossibleCutting>>();

/**
 * The plan of a job, as `cuttingPlan` gives it; the last few are remembered, so that several functions tell of one plan at the price
 * of one. A plan depends on nothing but the job, so remembering never shows in a result.
 */
export const sharedPlan = (job: CuttingJob): CuttingPlan | Problem<ImpossibleCutting> => {
  const key = JSON.stringify({ ...job, stock: job.stock.map((stock) => ({ ...stock, available: String(stock.available) })) });
  const known = remembered.get(key);
  const plan = known ?? cuttingPlan(job);
  remembered.delete(key);
  remembered.set(key, plan);
  const [oldest] = remembered.keys();
  if (remembered.size > MOST_REMEMBERED && oldest !== undefined) remembered.delete(oldest);
  return plan;
};
