import type { CellHost, HeldCell, SheetsHost } from "../../src/pane/host";
import { jobOfSheet } from "../../src/pane/job-of-sheet";

const held = (value: HeldCell["value"]): HeldCell => ({ formula: undefined, value, format: "General" });

/** A workbook of sheets named Job, each with these names beside its label, and others. */
const job = (jobs: Readonly<Record<string, string | null>>, of: string): Promise<string | undefined> => {
  const cells = {
    read: async ([block]: readonly { readonly sheet: string }[]) =>
      [[[held("What is known"), held(null)], [held("job"), held(jobs[block?.sheet ?? ""] ?? null)]]],
  } as unknown as CellHost;
  const sheets = { names: async () => ["Fit", ...Object.keys(jobs), "Job notes"] } as unknown as SheetsHost;
  return jobOfSheet(of, cells, sheets);
};

test.each([
  ["the one there is", { Job: "Oak stair" }, "Marks of my own", "Oak stair"],
  ["of two the one of the same number", { Job: "Oak stair", "Job 2": "Loft stair" }, "Fit 2", "Loft stair"],
  ["of two the first with none", { Job: "Oak stair", "Job 2": "Loft stair" }, "Upper Fit", "Oak stair"],
  ["none where no number is the same", { Job: "Oak stair", "Job 2": "Loft stair" }, "Fit 3", undefined],
  ["none where nothing is typed", { Job: null }, "Fit", undefined],
  ["none where there is no Job", {}, "Fit", undefined],
])("the job of a sheet: %s", async (_, jobs, of, expected) => {
  expect(await job(jobs, of)).toBe(expected);
});
