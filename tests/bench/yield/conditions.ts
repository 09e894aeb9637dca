import type { BenchJob } from "./bench-jobs";
import { mean, percentOf } from "./figures";
import { handCost } from "./hand-plan";
import { linearCost } from "./linear-cost";

/** What makes the jobs worth a search: figures in percent, over the jobs whose least cost is proven. */
export interface Conditions {
  readonly jobs: number;
  /** By how much the hand plan is dearer. */
  readonly handDearer: number;
  /** By how much the plain linear bound is low. */
  readonly boundLow: number;
}

/** Least costs in cents by the name of the job. */
export const conditions = (jobs: readonly BenchJob[], leastCosts: ReadonlyMap<string, number>): Conditions => {
  const known = jobs.flatMap(({ name, job }) => {
    const least = leastCosts.get(name);
    return least === undefined ? [] : [{ job, least }];
  });
  return {
    jobs: known.length,
    handDearer: mean(known.map(({ job, least }) => percentOf(handCost(job) - least, least))),
    boundLow: mean(known.map(({ job, least }) => percentOf(least - linearCost(job), least))),
  };
};
