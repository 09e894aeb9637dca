import type { MeasuredSample } from "./measured-sample";

/** What is told of a sample. */
export interface Figures {
  readonly jobs: number;
  /** Percent of the jobs, and of the proven ones. */
  readonly proven: number;
  readonly certified: number;
  /** Percent of the cost. */
  readonly meanGap: number;
  readonly mostGap: number;
  readonly median: number;
  readonly p95: number;
  readonly longest: number;
  /** Megabytes. */
  readonly peak: number;
  readonly contradictions: number;
  readonly failed: number;
}

/** The smallest of the numbers that so great a share of them does not exceed. */
export const rank = (numbers: readonly number[], share: number): number => {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? NaN;
};

export const mean = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0) / numbers.length;

export const percentOf = (part: number, all: number): number => (all === 0 ? 0 : (100 * part) / all);

export const figures = ({ jobs, peak }: MeasuredSample): Figures => {
  const proven = jobs.filter(({ isProven }) => isProven);
  const gaps = jobs.map(({ gap }) => gap);
  const times = jobs.map(({ milliseconds }) => milliseconds);
  return {
    jobs: jobs.length,
    proven: percentOf(proven.length, jobs.length),
    certified: percentOf(proven.filter(({ isCertified }) => isCertified).length, proven.length),
    meanGap: mean(gaps),
    mostGap: Math.max(...gaps),
    median: rank(times, 0.5),
    p95: rank(times, 0.95),
    longest: Math.max(...times),
    peak,
    contradictions: jobs.filter(({ contradictions }) => contradictions.length > 0).length,
    failed: jobs.filter(({ failed }) => failed.length > 0).length,
  };
};
