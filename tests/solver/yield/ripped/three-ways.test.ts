import fc from "fast-check";
import { isProblem } from "../../../../src/solver/problem";
import { rippingPlan } from "../../../../src/solver/yield/ripped/ripping-plan";
import { closeModels, solvedModel } from "../solved-model";
import { TINY_COUNT } from "../tiny-count";
import { leastOfAll } from "./every-choice";
import { jobOf } from "./plain-job";
import { planFaults } from "./plan-checker";
import { tallyModel } from "./tally-model";
import { tinyJobs } from "./tiny-jobs";

const SECONDS = 60;
const COUNT = Math.ceil(TINY_COUNT / 3);
const testTime = 300_000;

afterAll(closeModels);

test(`${COUNT} tiny seeded jobs of boards: the solver, every plan there is and the strip model come to one least cost`, async () => {
  let solvable = 0;
  for (const [number, job] of fc.sample(tinyJobs, { numRuns: COUNT, seed: 31 }).entries()) {
    const least = leastOfAll(job) ?? Infinity;
    const { cost, isProven } = await solvedModel(tallyModel(job), SECONDS);
    const plan = rippingPlan(jobOf(job));
    const solver = isProblem(plan) ? Infinity : plan.cost.toNumber();
    expect({ number, job, solver, model: cost / 100, isProven }).toEqual({ number, job, solver: least, model: least, isProven: true });
    if (isProblem(plan)) continue;
    solvable += 1;
    expect([plan.bound.toNumber(), planFaults(job, plan)]).toEqual([least, []]);
  }
  // counted, so that the test cannot pass by meeting no job that can be cut
  expect(solvable).toBeGreaterThan(COUNT / 3);
}, testTime);
