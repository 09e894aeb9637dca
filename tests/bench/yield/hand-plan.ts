import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import { wholeJobs, type WholeJob } from "../../solver/yield/whole-job";

/** A stick in work: its row of the stock and how much of it is taken. */
interface Stick {
  row: number;
  taken: number;
}

/** Rows of the stock with a stick left that holds so much, cheapest first; among equals the shorter, then the earlier. */
const cheapestOf = ({ stock }: WholeJob, left: readonly number[], room: number): number[] =>
  stock
    .map((_, row) => row)
    .filter((row) => left[row]! > 0 && stock[row]!.holds >= room)
    .sort((a, b) => stock[a]!.cents - stock[b]!.cents || stock[a]!.holds - stock[b]!.holds || a - b);

/**
 * Longest piece first, each into the first stick with room, or into a new one of the row opened; of another row only where that is too
 * short or used up.
 */
const firstFit = (job: WholeJob, opened: number, left: number[]): Stick[] | undefined => {
  const sticks: Stick[] = [];
  for (const { width, wanted } of job.pieces) {
    for (let piece = 0; piece < wanted; piece += 1) {
      let stick = sticks.find(({ row, taken }) => taken + width <= job.stock[row]!.holds);
      if (stick === undefined) {
        const rows = cheapestOf(job, left, width);
        const row = rows.includes(opened) ? opened : rows[0];
        if (row === undefined) return undefined;
        left[row]! -= 1;
        stick = { row, taken: 0 };
        sticks.push(stick);
      }
      stick.taken += width;
    }
  }
  return sticks;
};

/** Each stick changed for the cheapest one left that holds its cuts, in the order they were opened. */
const changed = (job: WholeJob, sticks: readonly Stick[], left: number[]): void => {
  for (const stick of sticks) {
    left[stick.row]! += 1;
    stick.row = cheapestOf(job, left, stick.taken)[0]!;
    left[stick.row]! -= 1;
  }
};

/**
 * What a job costs in cents when it is planned by hand: first fit decreasing, tried with each row of the stock as the one opened, each
 * stick then changed for the cheapest that holds its cuts; the cheapest of these. Infinity where no try comes out.
 */
export const handCost = (job: CuttingJob): number =>
  wholeJobs(job).reduce((sum, grade) => {
    const tries = grade.stock.map((_, opened) => {
      const left = grade.stock.map(({ available }) => available);
      const sticks = firstFit(grade, opened, left);
      if (sticks === undefined) return Infinity;
      changed(grade, sticks, left);
      return sticks.reduce((cents, { row }) => cents + grade.stock[row]!.cents, 0);
    });
    return sum + Math.min(...tries);
  }, 0);
