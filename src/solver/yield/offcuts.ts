import { cents } from "../bid/cents";
import type { Exact } from "../length/exact";
import { type Length } from "../length/length";
import { type Problem, problem } from "../problem";
import { sticksByRow } from "./buy-list";
import { type CuttingJob } from "./cutting-job";
import { type CuttingPlan } from "./cutting-plan";

export interface Offcut {
  readonly length: Length;
  readonly available: number;
  readonly label: string;
  readonly grade: string;
  readonly width?: Length;
  readonly thickness?: Length;
  /** What one is worth in the books: its share of the stick's price, by length. */
  readonly value: Exact;
}

export type OffcutsProblem = "keep-missing";

/**
 * Ends of the plan that are at least `keep` long, as rows of tomorrow's stock: stick by stick of the stock table, longest first, equal ends
 * in one row.
 */
export const offcuts = (job: CuttingJob, plan: CuttingPlan): Offcut[] | Problem<OffcutsProblem> => {
  const { keep } = job;
  if (keep === undefined) return problem("keep-missing");
  return sticksByRow(job, plan).flatMap((sticks, row): Offcut[] => {
    const stock = job.stock[row]!;
    const ends = sticks
      .filter(({ leftOver }) => leftOver.gt(0) && leftOver.gte(keep))
      .map(({ leftOver }) => leftOver)
      .sort((one, other) => other.cmp(one));
    const lengths = ends.filter((end, index) => index === 0 || !end.eq(ends[index - 1] ?? end));
    const { width, thickness, grade } = stock;
    return lengths.map((length) => ({
      length,
      available: ends.filter((end) => end.eq(length)).length,
      label: stock.label === "" ? "offcut" : `offcut of ${stock.label}`,
      grade,
      ...(width === undefined ? {} : { width }),
      ...(thickness === undefined ? {} : { thickness }),
      value: cents(stock.price.times(length).div(stock.length)),
    }));
  });
};
