import { isProblem } from "../../../src/solver/problem";
import { cuttingPlan } from "../../../src/solver/yield/cutting-plan";
import { assignmentAnswer } from "./assignment-model";
import { unproven } from "./certificate-checker";
import { everyPlan } from "./every-plan";
import { cents, cuttingJob } from "./job";
import { faults } from "./plan-checker";
import { closeModels } from "./solved-model";
import { TINY_COUNT } from "./tiny-count";
import { tinyJobs } from "./tiny-jobs";

const SECONDS = 60;
const testTime = 300_000;

afterAll(closeModels);

/** The solver beside two others that share nothing with it: all plans laid out one by one, and an assignment model in HiGHS. */
test(`${TINY_COUNT} tiny seeded jobs: the solver, every plan there is and the assignment model come to one least cost`, async () => {
  let solvable = 0;
  for (const [number, plain] of tinyJobs(20_001, TINY_COUNT).entries()) {
    const job = cuttingJob(plain);
    const plan = cuttingPlan(job);
    const least = everyPlan(plain)?.cents ?? Infinity;
    const { cost, isProven } = await assignmentAnswer(job, SECONDS);
    expect({ number, solver: isProblem(plan) ? Infinity : cents(plan.cost), model: cost, isProven }).toEqual({
      number,
      solver: least,
      model: least,
      isProven: true,
    });
    if (isProblem(plan)) {
      expect(["piece-fits-no-stock", "no-stock-of-grade", "stock-runs-out"]).toContain(plan.problem);
      continue;
    }
    solvable += 1;
    expect([plan.verdict.startsWith("best possible"), faults(job, plan), unproven(job, plan)]).toEqual([true, [], []]);
  }
  // counted, so that the test cannot pass by meeting no job that can be cut
  expect(solvable).toBeGreaterThan(TINY_COUNT / 2);
}, testTime);
