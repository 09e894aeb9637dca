import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import { cuttingJob } from "../../solver/yield/job";
import { carpenterJob, estimatorJob, type GeneratedJob, measuredJobs } from "./generated-jobs";
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

/** The generated lengths are whole marks. */
const MARKS = { in: 64, mm: 10 } as const;

const inUnits = ({ unit, kerf, trim, pieces, stock }: GeneratedJob): CuttingJob =>
  cuttingJob({
    unit,
    kerf: kerf / MARKS[unit],
    trim: trim / MARKS[unit],
    pieces: pieces.map(({ length, quantity }) => ({ length: length / MARKS[unit], quantity })),
    stock: stock.map((stick) => ({ ...stick, length: stick.length / MARKS[unit] })),
  });

const GENERATED: Readonly<Record<string, (number: number) => GeneratedJob>> = {
  carpenter: carpenterJob,
  estimator: estimatorJob,
  "30 lengths, in": measuredJobs("in", 30),
  "30 lengths, mm": measuredJobs("mm", 30),
  "120 lengths, in": measuredJobs("in", 120),
  "120 lengths, mm": measuredJobs("mm", 120),
  "260 lengths, in": measuredJobs("in", 260),
  "260 lengths, mm": measuredJobs("mm", 260),
};

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
    return { name: job.name, job: inUnits(job), least: 0, most: Infinity };
  });
};
