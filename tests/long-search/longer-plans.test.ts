import { longerPlans } from "../../src/long-search/longer-plans";
import { received, sent } from "../../src/solver/length/sent";
import { cuttingPlan } from "../../src/solver/yield/cutting-plan";
import type { CuttingAnswer } from "../../src/solver/yield/shared-plan";
import { cuttingJob } from "../solver/yield/job";

/** Two treads of 36 in from sticks at a price: two fit one stick of 96, so one stick is the least. */
const jobAt = (cents: number) => cuttingJob({ pieces: [{ length: 36, quantity: 2, label: "tread" }], stock: [{ length: 96, cents }] });
const planAt = (cents: number): CuttingAnswer => cuttingPlan(jobAt(cents));

/** A plan as a cell may leave it: dearer than need be, and not proven. */
const unproven = (cents: number): CuttingAnswer => {
  const plan = planAt(cents);
  if ("problem" in plan) throw new Error("no plan");
  return { ...plan, gap: plan.cost.minus(1).div(plan.cost), bound: plan.bound.times(0), sticksUsed: 2 };
};

const never = (): never => {
  throw new Error("asked again");
};

test("a job has the plan of a cell until a longer search has found a better one, of which both costs are told", async () => {
  const asked: number[] = [];
  const plans = longerPlans((_, seconds) => {
    asked.push(seconds);
    return Promise.resolve(planAt(2000));
  });
  const job = sent(jobAt(2450));
  expect(plans.plan(job, () => sent(unproven(2450)))).toEqual(sent(unproven(2450)));
  expect(plans.better()).toEqual([]);
  expect(await plans.search(30)).toBe(true);
  expect(asked.map((seconds) => seconds > 0 && seconds <= 30)).toEqual([true]);
  expect(received(plans.plan(job, never))).toEqual(planAt(2000));
  expect(plans.better()).toEqual([{ cost: [24.5, 20], sticks: [2, 1], verdict: "best possible (proven)" }]);
  // Each job is searched once.
  expect([await plans.search(30), asked.length]).toEqual([false, 1]);
});

test("what is proven already, or cannot be planned, is not searched; what is found dearer is not taken", async () => {
  const searched: unknown[] = [];
  const plans = longerPlans((job) => {
    searched.push(job);
    return Promise.resolve(planAt(9000));
  });
  const long = cuttingJob({ pieces: [{ length: 100, label: "skirt" }], stock: [{ length: 96, cents: 500 }] });
  plans.plan(sent(jobAt(1000)), () => sent(planAt(1000)));
  plans.plan(sent(long), () => sent(cuttingPlan(long)));
  plans.plan(sent(jobAt(2450)), () => sent(unproven(2450)));
  expect(await plans.search(30)).toBe(false);
  expect(searched).toEqual([jobAt(2450)]);
  expect(received(plans.plan(sent(jobAt(2450)), never))).toEqual(unproven(2450));
});

test("without time nothing is searched", async () => {
  const plans = longerPlans(never);
  plans.plan(sent(jobAt(2450)), () => sent(unproven(2450)));
  expect([await plans.search(0), await plans.search(-5)]).toEqual([false, false]);
});
