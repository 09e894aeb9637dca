import { everyPlan } from "../../solver/yield/every-plan";
import { cuttingJob } from "../../solver/yield/job";
import { closeModels } from "../../solver/yield/solved-model";
import { tinyJobs } from "../../solver/yield/tiny-jobs";
import { WORKED_JOBS } from "../../solver/yield/worked-jobs";
import { arcFlowAnswer, arcFlowModel } from "./arc-flow-model";

/** Enough for any job here. */
const SECONDS = 60;

afterAll(closeModels);

describe("the arc-flow model", () => {
  test.each(WORKED_JOBS)("by hand, $name", async ({ job, least }) => {
    expect(await arcFlowAnswer(cuttingJob(job), SECONDS)).toEqual({ cost: least, isProven: true });
  });

  test("finds what laying out every plan of a tiny job finds", async () => {
    for (const job of tinyJobs(7_002, 80)) {
      const best = everyPlan(job);
      expect({ job, ...(await arcFlowAnswer(cuttingJob(job), SECONDS)) }).toEqual({ job, cost: best?.cents ?? Infinity, isProven: true });
    }
  }, 60_000);

  // By hand: longest first from 0, one 3 and two 2 in 5 are cut at 0 (3), 0 and 2 (2), 3 (2). Places 0, 2, 3, 4, 5.
  test("cuts a stick of 5 at the places found by hand", () => {
    const { columns, rows } = arcFlowModel({
      pieces: [
        { width: 3, wanted: 1 },
        { width: 2, wanted: 2 },
      ],
      stock: [{ holds: 5, cents: 100, available: Infinity }],
    });
    expect(columns.map(({ cost, entries }) => [cost, ...entries])).toEqual([
      [0, [0, -1], [2, 1], [5, 1]],
      [0, [0, -1], [1, 1], [6, 1]],
      [0, [1, -1], [3, 1], [6, 1]],
      [0, [2, -1], [4, 1], [6, 1]],
      [0, [1, -1], [2, 1]],
      [0, [2, -1], [3, 1]],
      [0, [3, -1], [4, 1]],
      [100, [0, 1], [4, -1]],
    ]);
    expect(rows.map(({ least, most }) => [least, most])).toEqual([[0, 0], [0, 0], [0, 0], [0, 0], [0, 0], [1, 1], [2, 2]]);
  });
});
