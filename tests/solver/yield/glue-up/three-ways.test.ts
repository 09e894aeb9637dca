import { isProblem } from "../../../../src/solver/problem";
import { closeModels, solvedModel } from "../solved-model";
import { TINY_COUNT } from "../tiny-count";
import { leastOfEvery } from "./every-glue-up";
import { faultsOf } from "./glue-checker";
import { answered, gapOf, isProven as isShownBest, planned, totalOf } from "./glue-job";
import { glueModel } from "./glue-model";
import { asGlueUp, tinyJob } from "./tiny-jobs";

const SECONDS = 60;
const COUNT = Math.ceil(TINY_COUNT / 10);
/** Past the seeds of the other tests of tiny glue-ups. */
const SEED = 100;
const testTime = 300_000;

afterAll(closeModels);

const name = (isOfOneBoard: boolean): string =>
  `${COUNT} tiny seeded jobs of panels${isOfOneBoard ? ", each of one board" : ""}: ` +
  "every plan there is and the section model come to one least cost, and what the solver says holds";

test.each([[name(false), false], [name(true), true]])("%s", async (_, isOfOneBoard) => {
  let solvable = 0;
  for (let seed = SEED + 1; seed <= SEED + COUNT; seed += 1) {
    const tiny = tinyJob(seed, isOfOneBoard);
    const job = asGlueUp(tiny);
    const least = leastOfEvery(tiny) ?? Infinity;
    const { cost, isProven } = await solvedModel(glueModel(tiny), SECONDS);
    const hasPlan = !isProblem(answered(job));
    const rows = hasPlan ? planned(job) : [];
    const solver = hasPlan ? totalOf(rows).cost! : Infinity;
    expect({ seed, tiny, model: cost, isProven }).toEqual({ seed, tiny, model: least, isProven: true });
    expect({ seed, tiny, solver }).toEqual({ seed, tiny, solver: least });
    if (!hasPlan) continue;
    solvable += 1;
    expect(faultsOf(job, rows)).toEqual([]);
    expect(solver * (1 - gapOf(rows))).toBeLessThanOrEqual(least + 1e-9);
    // so few sections are looked through whole
    expect({ seed, isShownBest: isShownBest(rows) }).toEqual({ seed, isShownBest: true });
  }
  // counted, so that the test cannot pass by meeting no job that can be glued
  expect(solvable).toBeGreaterThan(COUNT / 3);
}, testTime);
