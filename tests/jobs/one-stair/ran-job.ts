import { associated } from "../../host/stand-in";
import type { Job } from "./job";
import { isRows, jobRun, type JobRun, type Result } from "./job-run";

const functions = associated();

export interface Called {
  readonly id: string;
  readonly args: readonly unknown[];
  readonly answer: unknown;
}

export interface RanJob extends JobRun {
  readonly calls: readonly Called[];
}

/** The job through the built functions.js, with every call kept. */
export const ran = (job: Job): RanJob => {
  const calls: Called[] = [];
  const run = jobRun(job, (id, args) => {
    const solve = functions.get(id);
    if (solve === undefined) throw new Error(`functions.js has no ${id}`);
    const answer = solve(...args);
    calls.push({ id, args, answer });
    return answer;
  });
  return { ...run, calls };
};

export const rowsOf = (run: RanJob, name: string): readonly (readonly unknown[])[] => {
  const result: Result | undefined = run.results.get(name);
  if (!isRows(result)) throw new Error(`"${name}" is no table: ${JSON.stringify(result)}`);
  return result;
};

/** One cell of a result by the label in its first column and its heading; the second column without one. */
export const cell = (run: RanJob, name: string, label: unknown, heading?: string): unknown => {
  const [headings = [], ...rows] = rowsOf(run, name);
  return rows.find(([first]) => first === label)?.[heading === undefined ? 1 : headings.indexOf(heading)];
};
