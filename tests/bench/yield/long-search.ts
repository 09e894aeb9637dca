import { existsSync } from "node:fs";
import path from "node:path";
import type { Problem } from "../../../src/solver/problem";
import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import type { CuttingPlan, ImpossibleCutting } from "../../../src/solver/yield/cutting-plan";

export interface LongSearch {
  readonly longPlan: (job: CuttingJob, seconds: number) => Promise<CuttingPlan | Problem<ImpossibleCutting>>;
  readonly closeLongSearch: () => Promise<void>;
}

const FILE = path.resolve(__dirname, "../../../src/long-search/long-plan.ts");

/** Why there is nothing to measure of the long search; nothing where there is. */
export const noLongSearch = (): string | undefined =>
  existsSync(FILE) ? undefined : "src/long-search/long-plan.ts is not there, so the long search is not measured";

/** The long search, loaded only when it is measured. */
export const longSearch = async (): Promise<LongSearch> => {
  const missing = noLongSearch();
  if (missing !== undefined) throw new Error(missing);
  return (await import(FILE)) as LongSearch;
};
