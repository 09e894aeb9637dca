import { assignmentAnswer } from "./assignment-model";
import { everyPlan } from "./every-plan";
import { cuttingJob } from "./job";
import { closeModels, solvedModel } from "./solved-model";
import { tinyJobs } from "./tiny-jobs";
import { brokenLimits, type WholeModel } from "./whole-model";
import { WORKED_JOBS } from "./worked-jobs";

/** Enough for any job here. */
const SECONDS = 60;

afterAll(closeModels);

describe("the assignment model", () => {
  test.each(WORKED_JOBS)("by hand, $name", async ({ job, least }) => {
    expect(await assignmentAnswer(cuttingJob(job), SECONDS)).toEqual({ cost: least, isProven: true });
  });

  test("finds what laying out every plan of a tiny job finds", async () => {
    for (const job of tinyJobs(7_001, 80)) {
      const best = everyPlan(job);
      expect({ job, ...(await assignmentAnswer(cuttingJob(job), SECONDS)) }).toEqual({
        job,
        cost: best?.cents ?? Infinity,
        isProven: true,
      });
    }
  }, 60_000);

  // 300 pieces, each of 300 sticks as good as any other: far more than a hundredth of a second proves
  test("is stopped from outside, without a claim, and the next is solved as ever", async () => {
    const lengths = Array.from({ length: 30 }, (_, index) => ({ length: 20 + index, quantity: 10 }));
    const large = cuttingJob({ pieces: lengths, stock: [{ length: 96, cents: 700 }, { length: 120, cents: 950 }] });
    expect((await assignmentAnswer(large, 0.01)).isProven).toBe(false);
    expect(await assignmentAnswer(cuttingJob(WORKED_JOBS[0]!.job), SECONDS)).toEqual({ cost: WORKED_JOBS[0]!.least, isProven: true });
  }, 60_000);
});

describe("a whole-number model", () => {
  // By hand: 2a + b at least 7, a and b at most 5, 3a + 2b least: 3 and 1 cost 11; 2 and 3 cost 12; 4 and 0 cost 12; one 2 and 2 is short.
  const model: WholeModel = {
    columns: [{ cost: 3, most: 5, entries: [[0, 2]] }, { cost: 2, most: 5, entries: [[0, 1]] }],
    rows: [{ least: 7, most: Infinity }],
  };

  test("is solved as by hand", async () => {
    expect(await solvedModel(model, SECONDS)).toEqual({ cost: 11, isProven: true });
  });

  test("keeps to its limits", () => {
    expect(brokenLimits(model, [3, 1])).toEqual([]);
    expect(brokenLimits(model, [2, 2])).toEqual(["row 0 is 6, from 7 to Infinity"]);
    expect(brokenLimits(model, [6, -1])).toEqual(["column 0 is 6, at most 5", "column 1 is -1, at most 5"]);
  });
});
