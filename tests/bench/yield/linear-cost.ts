import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import { columnsGenerated } from "../../../src/solver/yield/shelf/column-generation";
import { knapsackOf } from "../../../src/solver/yield/shelf/knapsack";
import { wholeShelf } from "../../../src/solver/yield/shelf/master";
import type { Shelf } from "../../../src/solver/yield/shelf/shelf";
import { simplexMaster } from "../../../src/solver/yield/shelf/simplex-master";
import { piecesIn, wholeJobs, type WholeJob } from "../../solver/yield/whole-job";

/** Only costs and widths count for the linear program; nothing is worth keeping, and all lengths are new. */
const shelfOf = (job: WholeJob): Shelf => {
  const pieces = piecesIn(job);
  const stock = job.stock.filter(({ holds }) => holds >= job.pieces.at(-1)!.width);
  return {
    kinds: job.pieces,
    sticks: stock.map(({ holds, cents, available }) => ({
      section: 0,
      holds,
      usable: holds,
      price: cents,
      newLength: holds,
      available: Math.min(pieces, available),
    })),
    takes: [job.pieces.map(() => true)],
    marks: 1,
    keep: 0,
  };
};

/** The least cost in cents when patterns may be used in part: the bound of Gilmore and Gomory (1961, from memory), not rounded up. */
export const linearCost = (job: CuttingJob): number =>
  wholeJobs(job).reduce((sum, grade) => {
    const shelf = shelfOf(grade);
    const knapsack = knapsackOf(shelf);
    if (knapsack === undefined) throw new Error("the job is too large for its linear bound");
    const { answer, isComplete } = columnsGenerated(shelf, wholeShelf(shelf), knapsack, [], simplexMaster, { left: Infinity }, () => false);
    if (!isComplete) throw new Error("the linear bound was not reached");
    return sum + answer.cost;
  }, 0);
