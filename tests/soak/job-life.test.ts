/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Workbook } from "../../src/workbook/workbook";
import { builtFunctions } from "../workbook/opened-workbook";
import { jobLife } from "./job-life";

/** One seed for ever: what is found here is found again. `npm run soak -- 1000 [seed] job` takes others. */
const SEED = 6;
const ACTS = 100;
/** For the engine to work a whole job out several times on a busy machine, in milliseconds. */
const TIME = 400_000;

const { openWorkbook } = (globalThis as unknown as {
  readonly sheetEngine: { readonly openWorkbook: (built: ReturnType<typeof builtFunctions>) => Workbook };
}).sheetEngine;

test("a hundred acts on a job's workbook leave every cell as it is in a new one into which all is typed at once", async () => {
  const folder = mkdtempSync(path.join(tmpdir(), "treadsheet-life-"));
  try {
    const lived = await jobLife({ acts: ACTS, seed: SEED, folder, opened: () => openWorkbook(builtFunctions()), tell: () => undefined });
    expect(lived.fault).toBeUndefined();
    expect(Object.keys(lived.counts).sort()).toEqual([
      "clear", "command", "file", "kill", "pause", "readings", "reload", "type", "undo",
    ]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}, TIME);
