import { cuttingPlan } from "../../../src/solver/yield/cutting-plan";
import { assignmentAnswer } from "../../solver/yield/assignment-model";
import { closeModels, readyModels } from "../../solver/yield/solved-model";
import type { ModelAnswer } from "../../solver/yield/whole-model";
import { arcFlowAnswer } from "./arc-flow-model";
import type { BenchJob } from "./bench-jobs";
import { checkedJob, type Measured } from "./checked-job";
import { handCost } from "./hand-plan";
import type { LongSearch } from "./long-search";

/** What one method made of one job. */
export interface Answer {
  readonly method: string;
  /** In cents; Infinity without a plan. */
  readonly cost: number;
  /** No plan costs less, as far as the method says: 0 where it says nothing. */
  readonly bound: number;
  readonly isProven: boolean;
  readonly seconds: number;
  readonly failed: readonly string[];
}

export interface Compared {
  readonly name: string;
  readonly answers: readonly Answer[];
  readonly contradictions: readonly string[];
}

const byHand = (job: BenchJob): Answer => {
  const began = performance.now();
  const cost = handCost(job.job);
  return { method: "by hand", cost, bound: 0, isProven: false, seconds: (performance.now() - began) / 1000, failed: [] };
};

const planned = (method: string, { cost, bound, isProven, milliseconds, failed, contradictions }: Measured): Answer => ({
  method,
  cost,
  bound,
  isProven,
  seconds: milliseconds / 1000,
  failed: [...failed, ...contradictions],
});

const modelled = async (
  method: string,
  job: BenchJob,
  seconds: number,
  answerOf: (job: BenchJob["job"], seconds: number) => Promise<ModelAnswer>,
): Promise<Answer> => {
  await readyModels();
  const began = performance.now();
  // a model too large for the memory of HiGHS ends its thread: that is an answer too
  const { cost, isProven } = await answerOf(job.job, seconds).catch((error: unknown) => {
    console.log(`  ${method}, ${job.name}: ${error instanceof Error ? error.message : String(error)}`);
    return { cost: Infinity, isProven: false };
  });
  return { method, cost, bound: isProven ? cost : 0, isProven, seconds: (performance.now() - began) / 1000, failed: [] };
};

/** Plans that cost less than another method proved possible. */
const contradictionsOf = (answers: readonly Answer[]): string[] => {
  const best = Math.min(...answers.map(({ cost }) => cost));
  return answers
    .filter(({ bound }) => bound > best)
    .map(({ method, bound }) => `${method} proves ${bound}, and there is a plan for ${best}`);
};

/** Every method on every job, each with so many seconds at most; the long search only where there is one. */
export const sideBySide = async (jobs: readonly BenchJob[], seconds: number, long: LongSearch | undefined): Promise<Compared[]> => {
  const compared: Compared[] = [];
  for (const job of jobs) {
    const answers = [byHand(job), planned("in a cell", await checkedJob(job, (each) => cuttingPlan(each)))];
    if (long !== undefined) answers.push(planned("long search", await checkedJob(job, (each) => long.longPlan(each, seconds))));
    answers.push(
      await modelled("assignment model", job, seconds, assignmentAnswer),
      await modelled("arc-flow model", job, seconds, arcFlowAnswer),
    );
    compared.push({ name: job.name, answers, contradictions: contradictionsOf(answers) });
  }
  await closeModels();
  return compared;
};
