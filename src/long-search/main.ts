import { parentPort, workerData } from "node:worker_threads";
import loadHighs from "highs";
import { received, sent } from "../solver/length/sent";
import { isProblem } from "../solver/problem";
import type { CuttingJob } from "../solver/yield/cutting-job";
import { cuttingPlan } from "../solver/yield/cutting-plan";
import { highsMaster } from "./highs-master";
import { highsWholeSearch, STEPS_A_SECOND } from "./highs-whole-search";

/** What the solver may spend of the time there is, so that its last integer program ends before the search is stopped. */
const SHARE = 0.65;
const MOST_PATTERNS = 60_000;

/** The plan of a cell first, then a better one: each is posted, so that whoever waits always has one. */
const search = async (): Promise<void> => {
  const { job, seconds } = received(workerData) as { job: CuttingJob; seconds: number };
  const isDone = (plan: ReturnType<typeof cuttingPlan>): boolean => isProblem(plan) || plan.gap.isZero();
  const post = (plan: ReturnType<typeof cuttingPlan>, isLast: boolean): void => parentPort?.postMessage({ plan: sent(plan), isLast });
  const first = cuttingPlan(job);
  post(first, isDone(first));
  if (isDone(first)) return;
  const highs = await loadHighs();
  const effort = SHARE * seconds * STEPS_A_SECOND;
  post(cuttingPlan(job, { searchWhole: highsWholeSearch(highs), masterOf: highsMaster(highs), effort, mostPatterns: MOST_PATTERNS }), true);
};

void search();
