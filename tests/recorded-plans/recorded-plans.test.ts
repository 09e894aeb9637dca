import { isFailed } from "../../src/functions/cells";
import { openedPages } from "../browser/opened-page";
import { associated } from "../host/stand-in";
import { hashOf } from "./hashes";
import { inNode } from "./in-node";
import { type CuttingCells, PLAN_FUNCTIONS, recordedJobs } from "./jobs";
import recorded from "./plans.json";

/**
 * The plans of fifty jobs by hash: a record of this solver's plans, to show that every host gives the same, and that none changes
 * unnoticed. It proves nothing about the plans; tests/solver/yield does. `node tests/recorded-plans/record.cjs` writes it anew.
 */
const browserTime = 240_000;

test("fifty different jobs are recorded, and each has a plan", () => {
  expect(recorded).toHaveLength(50);
  expect(new Set(recorded).size).toBe(50);
  for (const job of recordedJobs) for (const answer of inNode(job)) expect(Array.isArray(answer) || !isFailed(answer as never)).toBe(true);
}, browserTime);

test("on plain Node, from the source", () => {
  expect(recordedJobs.map((job) => hashOf(inNode(job)))).toEqual(recorded);
}, browserTime);

test("in the built bundle, where there is nothing but the language", () => {
  const functions = associated();
  const answers = (job: CuttingCells): unknown[] => PLAN_FUNCTIONS.map((id) => functions.get(id)!(...job));
  expect(recordedJobs.map((job) => hashOf(answers(job)))).toEqual(recorded);
}, browserTime);

test("in Chromium, by the bundle of the page", async () => {
  const pages = await openedPages();
  try {
    const { page } = await pages.open("");
    await page.waitForSelector("html[data-ready=yes]");
    const answers = await page.evaluate(
      ([jobs, ids]) => {
        const { treadsheetFunctions } = globalThis as unknown as {
          readonly treadsheetFunctions: ReadonlyMap<string, (...cells: readonly unknown[]) => unknown>;
        };
        return jobs.map((job) => ids.map((id) => treadsheetFunctions.get(id)!(...job)));
      },
      [recordedJobs, PLAN_FUNCTIONS] as const,
    );
    expect(answers.map(hashOf)).toEqual(recorded);
  } finally {
    await pages.close();
  }
}, browserTime);
