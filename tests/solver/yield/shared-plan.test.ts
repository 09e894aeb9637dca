import { cuttingPlan } from "../../../src/solver/yield/cutting-plan";
import { planBy, sharedPlan } from "../../../src/solver/yield/shared-plan";
import { cuttingJob, type PlainJob } from "./job";

const stair: PlainJob = {
  pieces: [{ length: 36, quantity: 2, label: "tread" }],
  stock: [{ length: 96, cents: 2450, available: 2 }],
  kerf: 0.125,
};

/** Jobs that differ in one thing each; a memory that overlooked it would mix them up. */
const others: readonly [string, PlainJob][] = [
  ["a label", { ...stair, pieces: [{ ...stair.pieces[0]!, label: "riser" }] }],
  ["a grade", { ...stair, pieces: [{ ...stair.pieces[0]!, grade: "clear" }] }],
  ["a quantity", { ...stair, pieces: [{ ...stair.pieces[0]!, quantity: 3 }] }],
  ["a price", { ...stair, stock: [{ ...stair.stock[0]!, cents: 2451 }] }],
  ["no limit on the stock", { ...stair, stock: [{ length: 96, cents: 2450 }] }],
  ["an owned stick", { ...stair, stock: [{ ...stair.stock[0]!, owned: true }] }],
  ["the kerf", { ...stair, kerf: 0.25 }],
  ["the trim", { ...stair, trim: 1 }],
];

describe("one plan for several functions", () => {
  test("the remembered plan is the plan, first time and later", () => {
    const plan = JSON.stringify(cuttingPlan(cuttingJob(stair)));
    expect(JSON.stringify(sharedPlan(cuttingJob(stair)))).toBe(plan);
    expect(JSON.stringify(sharedPlan(cuttingJob(stair)))).toBe(plan);
    expect(sharedPlan(cuttingJob(stair))).toBe(sharedPlan(cuttingJob(stair)));
  });

  test.each(others)("a job that differs in %s has its own plan", (_, other) => {
    sharedPlan(cuttingJob(stair));
    expect(JSON.stringify(sharedPlan(cuttingJob(other)))).toBe(JSON.stringify(cuttingPlan(cuttingJob(other))));
  });

  test("a plan that had to make room is made anew, the same", () => {
    const first = JSON.stringify(sharedPlan(cuttingJob(stair)));
    for (const [, other] of others) sharedPlan(cuttingJob(other));
    expect(JSON.stringify(sharedPlan(cuttingJob(stair)))).toBe(first);
  });

  test("whoever has another plan gives it from then on, and what was remembered is forgotten", () => {
    const own = JSON.stringify(sharedPlan(cuttingJob(stair)));
    const given = cuttingPlan(cuttingJob(others[3]![1]));
    const asked: string[] = [];
    planBy((job, inACell) => {
      asked.push(JSON.stringify(inACell()));
      return job.pieces[0]!.label === "tread" ? given : inACell();
    });
    expect([sharedPlan(cuttingJob(stair)), sharedPlan(cuttingJob(stair))]).toEqual([given, given]);
    expect(asked).toEqual([own]);
    planBy((_job, inACell) => inACell());
    expect(JSON.stringify(sharedPlan(cuttingJob(stair)))).toBe(own);
  });
});
