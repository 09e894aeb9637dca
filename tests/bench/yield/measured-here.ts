import { cuttingPlan } from "../../../src/solver/yield/cutting-plan";
import { benchJobs, type Sample } from "./bench-jobs";
import { checkedJob, type Measured } from "./checked-job";
import { longSearch } from "./long-search";

/** A sample, and how long each of its jobs is searched for; as long as a cell takes where nothing is said. */
export interface Measurement {
  readonly sample: Sample;
  readonly seconds?: number;
}

/** Measures job after job in this process and tells each as it is done. */
export const measuredHere = async ({ sample, seconds }: Measurement, tell: (measured: Measured) => void): Promise<void> => {
  const jobs = benchJobs(sample);
  if (seconds === undefined) {
    for (const job of jobs) tell(await checkedJob(job, (each) => cuttingPlan(each)));
    return;
  }
  const { longPlan, closeLongSearch } = await longSearch();
  for (const job of jobs) tell(await checkedJob(job, (each) => longPlan(each, seconds)));
  await closeLongSearch();
};
