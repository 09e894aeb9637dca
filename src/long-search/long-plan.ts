import path from "node:path";
import { Worker } from "node:worker_threads";
import { received, sent } from "../solver/length/sent";
import { isProblem, type Problem } from "../solver/problem";
import type { CuttingJob } from "../solver/yield/cutting-job";
import type { CuttingPlan, ImpossibleCutting } from "../solver/yield/cutting-plan";

export type Answer = CuttingPlan | Problem<ImpossibleCutting>;

/** The worker as it is built; the integer programs in it do not keep to their own time, so it is stopped from here. */
const BUILT = path.resolve(__dirname, "../../dist/tools/long-search.js");
const MILLISECONDS = 1_000;

const running = new Set<Worker>();

/** The better of two plans: a cheaper one, or the one that is proven to be closer to the least. */
export const better = (one: Answer | undefined, other: Answer): Answer => {
  if (one === undefined || isProblem(one) || isProblem(other)) return other;
  if (!other.cost.eq(one.cost)) return other.cost.lt(one.cost) ? other : one;
  return other.bound.gt(one.bound) ? other : one;
};

/**
 * The best plan found within so many seconds, with linear and integer programs in HiGHS besides the solver's own means. The plan of a
 * cell is the least it gives, however long that takes; a job that cannot be has the same problems.
 */
export const longPlan = (job: CuttingJob, seconds: number): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(BUILT, { workerData: sent({ job, seconds }) });
    running.add(worker);
    let best: Answer | undefined;
    let isLate = false;
    const end = (): void => {
      clearTimeout(timer);
      running.delete(worker);
      void worker.terminate();
    };
    const answer = (plan: Answer): void => {
      end();
      resolve(plan);
    };
    const timer = setTimeout(() => {
      isLate = true;
      if (best !== undefined) answer(best);
    }, seconds * MILLISECONDS);
    worker.on("message", ({ plan, isLast }: { plan: unknown; isLast: boolean }) => {
      best = better(best, received(plan) as Answer);
      if (isLast || isLate) answer(best);
    });
    worker.on("error", (error) => {
      end();
      reject(error);
    });
  });

/** Stops every search that still runs. */
export const closeLongSearch = async (): Promise<void> => {
  await Promise.all([...running].map((worker) => worker.terminate()));
  running.clear();
};
