import { fork } from "node:child_process";
import path from "node:path";
import type { Measured } from "./checked-job";
import type { Measurement } from "./measured-here";

export interface MeasuredSample {
  readonly jobs: readonly Measured[];
  /** Megabytes of 2^20 bytes that the process held at most, Node itself and the checkers with it. */
  readonly peak: number;
}

/** Measures a sample in a process of its own. */
export const measuredSample = (measurement: Measurement): Promise<MeasuredSample> =>
  new Promise((resolve, reject) => {
    const jobs: Measured[] = [];
    // costs without a plan are Infinity, which plain JSON does not carry
    const child = fork(path.join(__dirname, "sample-child.cjs"), [], { serialization: "advanced" });
    let peak: number | undefined;
    child.on("message", (told: { readonly measured?: Measured; readonly peak?: number }) => {
      if (told.measured !== undefined) jobs.push(told.measured);
      peak ??= told.peak;
    });
    child.once("error", reject);
    child.once("close", (code, signal) => {
      if (peak !== undefined) return resolve({ jobs, peak });
      reject(new Error(`${measurement.sample.set} ended with ${signal ?? `code ${code}`} after ${jobs.length} jobs`));
    });
    child.send(measurement);
  });
