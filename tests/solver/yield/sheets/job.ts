import { Exact } from "../../../../src/solver/length/exact";
import { lengthOf, type Unit } from "../../../../src/solver/length/length";
import { isProblem } from "../../../../src/solver/problem";
import type { SheetJob } from "../../../../src/solver/yield/sheets/sheet-job";
import { sheetPlan, type SheetPlan } from "../../../../src/solver/yield/sheets/sheet-plan";
import { faults } from "./sheet-checker";

/** A job of sheets in plain numbers: lengths in the job's unit, prices in cents. */
export interface PlainSheetJob {
  readonly pieces: readonly {
    length: number; width?: number; quantity?: number; label?: string; grade?: string; thickness?: number; free?: boolean;
  }[];
  readonly stock: readonly {
    length: number; width?: number; cents?: number; available?: number; owned?: boolean; label?: string; grade?: string; thickness?: number;
  }[];
  readonly kerf?: number;
  readonly trim?: number;
  /** Off the edges that run along the length, where that is not the trim. */
  readonly edges?: number;
  readonly keep?: readonly [number, number];
  readonly first?: SheetJob["first"];
  readonly unit?: Unit;
}

export const sheetJob = (plain: PlainSheetJob): SheetJob => {
  const unit = plain.unit ?? "in";
  const sizes = ({ width, thickness }: { width?: number; thickness?: number }) => ({
    ...(width === undefined ? {} : { width: lengthOf(width, unit) }),
    ...(thickness === undefined ? {} : { thickness: lengthOf(thickness, unit) }),
  });
  return {
    unit,
    first: plain.first ?? "either",
    kerf: lengthOf(plain.kerf ?? 0, unit),
    trim: lengthOf(plain.trim ?? 0, unit),
    ...(plain.edges === undefined ? {} : { edgeTrim: lengthOf(plain.edges, unit) }),
    ...(plain.keep === undefined ? {} : { keep: { length: lengthOf(plain.keep[0], unit), width: lengthOf(plain.keep[1], unit) } }),
    pieces: plain.pieces.map(({ length, quantity, label, grade, free, ...piece }) => ({
      label: label ?? "", length: lengthOf(length, unit), quantity: quantity ?? 1, grade: grade ?? "", turns: free ?? false,
      ...sizes(piece),
    })),
    stock: plain.stock.map(({ length, cents, available, owned, label, grade, ...sheet }) => ({
      label: label ?? "", length: lengthOf(length, unit), price: new Exact(cents ?? 0).div(100), available: available ?? Infinity,
      owned: owned ?? false, grade: grade ?? "", ...sizes(sheet),
    })),
  };
};

/** The plan of a job that has one, looked over by the checker. */
export const checkedSheets = (plain: PlainSheetJob, effort?: number): SheetPlan => {
  const job = sheetJob(plain);
  const plan = sheetPlan(job, effort);
  if (isProblem(plan)) throw new Error(`no plan: ${plan.problem} ${JSON.stringify(plan.details)}`);
  expect(faults(job, plan)).toEqual([]);
  return plan;
};

/** Cost in cents, Infinity where there is no plan because the sheets do not hold the pieces. */
export const leastCents = (plain: PlainSheetJob): number => {
  const answer = sheetPlan(sheetJob(plain));
  if (isProblem(answer)) {
    if (!["sheets-run-out", "piece-fits-no-sheet", "piece-across-the-grain"].includes(answer.problem)) throw new Error(answer.problem);
    return Infinity;
  }
  expect(faults(sheetJob(plain), answer)).toEqual([]);
  // the words say whether worths alone show it, or a search as well
  expect(["best possible (proven)", "best possible (searched, not certified)"]).toContain(answer.verdict);
  return answer.cost.times(100).toNumber();
};
