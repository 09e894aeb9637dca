import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import { down, MARK, up, whole } from "./checker-numbers";

/** One grade of a cutting job in whole marks and cents, for what checks the solver from outside: shares no code with it. */
export interface WholeJob {
  /** A piece is as wide as its length and one kerf. Longest first, no two alike. */
  readonly pieces: readonly { readonly width: number; readonly wanted: number }[];
  /** One for each row of the stock, in the order given; it holds its length less two trims, and one kerf. */
  readonly stock: readonly { readonly holds: number; readonly cents: number; readonly available: number }[];
}

/** `whole` counts a billionth; a hundredth is so many. */
const BILLIONTHS_PER_CENT = 1e7;

export const piecesIn = ({ pieces }: WholeJob): number => pieces.reduce((sum, { wanted }) => sum + wanted, 0);

/** The job's grades, each a job of its own. */
export const wholeJobs = (job: CuttingJob): WholeJob[] => {
  const mark = MARK[job.unit];
  const kerf = up(whole(job.kerf), mark);
  const trim = up(whole(job.trim), mark);
  const sameGrade = (grade: string): string => grade.trim().toLowerCase();
  return [...new Set(job.pieces.map(({ grade }) => sameGrade(grade)))].map((grade) => {
    const wanted = new Map<number, number>();
    for (const piece of job.pieces) {
      if (sameGrade(piece.grade) !== grade) continue;
      const width = Number((up(whole(piece.length), mark) + kerf) / mark);
      wanted.set(width, (wanted.get(width) ?? 0) + piece.quantity);
    }
    return {
      pieces: [...wanted].map(([width, count]) => ({ width, wanted: count })).sort((a, b) => b.width - a.width),
      stock: job.stock
        .filter((stock) => sameGrade(stock.grade) === grade)
        .map(({ length, price, available }) => ({
          holds: Number((down(whole(length), mark) - 2n * trim + kerf) / mark),
          cents: Number(whole(price)) / BILLIONTHS_PER_CENT,
          available,
        })),
    };
  });
};
