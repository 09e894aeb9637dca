import fc from "fast-check";
import { isProblem } from "../../../../src/solver/problem";
import { rippingPlan } from "../../../../src/solver/yield/ripped/ripping-plan";
import { leastOfAll } from "./every-choice";
import { jobOf } from "./plain-job";
import { planFaults } from "./plan-checker";
import { tinyJobs } from "./tiny-jobs";

describe("tiny jobs", () => {
  test("cost what the cheapest of every choice there is costs, and are proven; what has no plan has none", () => {
    let plans = 0;
    fc.assert(
      fc.property(tinyJobs, (job) => {
        const least = leastOfAll(job);
        const plan = rippingPlan(jobOf(job));
        if (isProblem(plan)) {
          expect(least).toBeUndefined();
          return;
        }
        plans += 1;
        expect(planFaults(job, plan)).toEqual([]);
        expect(plan.cost.toNumber()).toBe(least);
        expect(plan.bound.toNumber()).toBe(least);
      }),
      { numRuns: 150, seed: 20 },
    );
    expect(plans).toBeGreaterThan(60);
  });
});
