import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import { cuttingJob } from "../../solver/yield/job";
import { carpenterJob, estimatorJob, type GeneratedJob } from "./generated-jobs";
import { instancesOf } from "./instances";

/** A job that is measured, with the cents between which its least cost is published to lie. */
export interface BenchJob {
  readonly name: string;
  readonly job: CuttingJob;
  readonly least: number;
  readonly most: number;
}

/** Which jobs: plain data, so that another process can be told. */
export interface Sample {
  readonly set: string;
  /** Where the jobs are generated there is no folder. */
  readonly folder?: string;
  /** The first, then every so many, up to so many in all. */
  readonly every: number;
  readonly most: number;
}

/** The generated lengths are whole 64ths of an inch. */
const MARKS_PER_INCH = 64;

const inInches = ({ kerf, trim, pieces, stock }: GeneratedJob): CuttingJob =>
  cuttingJob({
    kerf: kerf / MARKS_PER_INCH,
    trim: trim / MARKS_PER_INCH,
    pieces: pieces.map(({ length, quantity }) => ({ length: length / MARKS_PER_INCH, quantity })),
    stock: stock.map((stick) => ({ ...stick, length: stick.length / MARKS_PER_INCH })),
  });

const GENERATED: Readonly<Record<string, (number: number) => GeneratedJob>> = { carpenter: carpenterJob, estimator: estimatorJob };

/** The jobs of a sample, in their order. */
export const benchJobs = ({ set, folder, every, most }: Sample): BenchJob[] => {
  if (folder !== undefined) {
    return instancesOf(folder, set)
      .filter((_, index) => index % every === 0)
      .slice(0, most)
      .map(({ name, job, least, most: dearest }) => ({ name, job: cuttingJob(job), least, most: dearest }));
  }
  const generated = GENERATED[set];
  if (generated === undefined) throw new Error(`there are no generated jobs called ${set}`);
  return Array.from({ length: most }, (_, index) => {
    const job = generated(1 + index * every);
    return { name: job.name, job: inInches(job), least: 0, most: Infinity };
  });
};
