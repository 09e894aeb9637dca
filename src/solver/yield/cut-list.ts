import { type Length } from "../length/length";
import { type CuttingJob } from "./cutting-job";
import { type CuttingPlan } from "./cutting-plan";

export interface CutRow {
  /** Sticks are numbered from 1 in cutting order. */
  readonly stick: number;
  /** The stock's label, or its length where it has none. */
  readonly stock: string | number | Length;
  readonly position: Length;
  readonly label: string | number;
  readonly length: Length;
  /** Of the whole stick, the same on each of its rows. */
  readonly leftOver: Length;
}

/** One row per piece, in cutting order; positions are from the end of the stick to the start of the piece. */
export const cutList = (job: CuttingJob, plan: CuttingPlan): CutRow[] =>
  plan.sticks.flatMap((stick, index) => {
    const stock = job.stock[stick.stock]!;
    return stick.pieces.map(({ position, label, length }) => ({
      stick: index + 1,
      stock: stock.label === "" ? stock.length : stock.label,
      position,
      label,
      length,
      leftOver: stick.leftOver,
    }));
  });
