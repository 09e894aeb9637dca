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

test(`${COUNT} tiny seeded jobs of sheets: the solver, every plan there is and the strip model come to one least cost`, async () => {
  let solvable = 0;
  for (const [number, plain] of tinyJobs(31_001, COUNT).entries()) {
    const least = everySheetPlan(plain);
    const { cost, isProven } = await solvedModel(sheetModel(plain), SECONDS);
    if (least < Infinity) solvable += 1;
    expect({ number, plain, solver: leastCents(plain), model: cost, isProven }).toEqual({
      number, plain, solver: least, model: least, isProven: true,
    });
  }
  // counted, so that the test cannot pass by meeting no job that can be cut
  expect(solvable).toBeGreaterThan(COUNT / 3);
}, testTime);
