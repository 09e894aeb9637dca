import { closeLongSearch, longPlan } from "../../src/long-search/long-plan";
import { isProblem } from "../../src/solver/problem";
import { cuttingPlan } from "../../src/solver/yield/cutting-plan";
import { carpenterJob, estimatorJob, type GeneratedJob } from "../bench/yield/generated-jobs";
import { unproven } from "../solver/yield/certificate-checker";
import { cuttingJob, type PlainJob } from "../solver/yield/job";
import { faults } from "../solver/yield/plan-checker";

const MARKS = 64;
const plainJob = ({ kerf, trim, pieces, stock }: GeneratedJob): PlainJob => ({
  kerf: kerf / MARKS,
  trim: trim / MARKS,
  pieces: pieces.map(({ length, quantity }) => ({ length: length / MARKS, quantity })),
  stock: stock.map(({ length, ...rest }) => ({ ...rest, length: length / MARKS })),
});

afterAll(closeLongSearch);

describe("the long search", () => {
  test.each([
    ["a stair", plainJob(carpenterJob(3)), 60],
    ["a house of stairs", plainJob(estimatorJob(2)), 8],
    ["one that is stopped at once", plainJob(estimatorJob(3)), 0.001],
  ])("%s: a sound plan, no dearer than that of a cell, and proven no worse", async (_, plain, seconds) => {
    const job = cuttingJob(plain);
    const inACell = cuttingPlan(job);
    const long = await longPlan(job, seconds);
    if (isProblem(inACell) || isProblem(long)) throw new Error("no plan");
    expect(faults(job, long)).toEqual([]);
    expect(unproven(job, long)).toEqual([]);
    expect(long.cost.lte(inACell.cost)).toBe(true);
    expect(long.gap.lte(inACell.gap)).toBe(true);
  }, 120_000);

  test("a job that cannot be has the problem it has in a cell", async () => {
    const job = cuttingJob({ pieces: [{ length: 100, label: "skirt" }], stock: [{ length: 96, cents: 500 }] });
    expect(JSON.stringify(await longPlan(job, 5))).toBe(JSON.stringify(cuttingPlan(job)));
  });
});
