import { closeModels, solvedModel } from "../solved-model";
import { TINY_COUNT } from "../tiny-count";
import { everySheetPlan } from "./every-sheet-plan";
import { leastCents } from "./job";
import { sheetModel } from "./sheet-model";
import { tinyJobs } from "./tiny-jobs";

const SECONDS = 60;
const COUNT = Math.ceil(TINY_COUNT / 3);
const testTime = 300_000;

afterAll(closeModels);

/** The jobs as drawn, and as many whose edges are trimmed by more or by less than their ends. */
const JOBS = [
  ...tinyJobs(31_001, COUNT),
  ...tinyJobs(31_002, COUNT).map((job, number) => ({ ...job, edges: number % 2 === 0 ? 0 : 1, trim: number % 3 === 0 ? 1 : 0 })),
];

test(`${JOBS.length} tiny seeded jobs of sheets: the solver, every plan there is and the strip model come to one least cost`, async () => {
  let solvable = 0;
  for (const [number, plain] of JOBS.entries()) {
    const least = everySheetPlan(plain);
    const { cost, isProven } = await solvedModel(sheetModel(plain), SECONDS);
    if (least < Infinity) solvable += 1;
    expect({ number, plain, solver: leastCents(plain), model: cost, isProven }).toEqual({
      number, plain, solver: least, model: least, isProven: true,
    });
  }
  // counted, so that the test cannot pass by meeting no job that can be cut
  expect(solvable).toBeGreaterThan(JOBS.length / 3);
}, testTime);
