import { Exact } from "../../../src/solver/length/exact";
import { lengthOf, type Unit } from "../../../src/solver/length/length";
import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import { cuttingPlan, type CuttingPlan } from "../../../src/solver/yield/cutting-plan";
import { isProblem } from "../../../src/solver/problem";
import { unproven } from "./certificate-checker";
import { faults } from "./plan-checker";

/** A job in plain numbers: lengths in the job's unit, prices in cents. */
export interface PlainJob {
  readonly pieces: readonly { length: number; quantity?: number; label?: string; grade?: string; width?: number; thickness?: number }[];
  readonly stock: readonly {
    length: number;
    cents?: number;
    available?: number;
    owned?: boolean;
    label?: string;
    grade?: string;
    width?: number;
    thickness?: number;
  }[];
  readonly kerf?: number;
  readonly trim?: number;
  readonly keep?: number;
  readonly unit?: Unit;
}

export const cuttingJob = (plain: PlainJob): CuttingJob => {
  const unit = plain.unit ?? "in";
  return {
    unit,
    kerf: lengthOf(plain.kerf ?? 0, unit),
    trim: lengthOf(plain.trim ?? 0, unit),
    ...(plain.keep === undefined ? {} : { keep: lengthOf(plain.keep, unit) }),
    pieces: plain.pieces.map(({ length, quantity, label, grade, width, thickness }) => ({
      label: label ?? "",
      length: lengthOf(length, unit),
      quantity: quantity ?? 1,
      grade: grade ?? "",
      ...(width === undefined ? {} : { width: lengthOf(width, unit) }),
      ...(thickness === undefined ? {} : { thickness: lengthOf(thickness, unit) }),
    })),
    stock: plain.stock.map(({ length, cents, available, owned, label, grade, width, thickness }) => ({
      label: label ?? "",
      length: lengthOf(length, unit),
      price: new Exact(cents ?? 0).div(100),
      available: available ?? Infinity,
      owned: owned ?? false,
      grade: grade ?? "",
      ...(width === undefined ? {} : { width: lengthOf(width, unit) }),
      ...(thickness === undefined ? {} : { thickness: lengthOf(thickness, unit) }),
    })),
  };
};

/** The plan of a job that has one, looked over by the checkers of plans and certificates. */
export const checkedPlan = (plain: PlainJob): CuttingPlan => {
  const job = cuttingJob(plain);
  const plan = cuttingPlan(job);
  if (isProblem(plan)) throw new Error(`no plan: ${plan.problem} ${JSON.stringify(plan.details)}`);
  expect(faults(job, plan)).toEqual([]);
  expect(unproven(job, plan)).toEqual([]);
  return plan;
};

export const isOptimal = (plan: CuttingPlan): boolean => plan.verdict.startsWith("best possible");

export const cents = (money: Exact): number => money.times(100).toNumber();

/** A seeded generator of whole numbers (mulberry32, public domain, from memory): the same jobs on every run. */
export const seeded = (seed: number): ((below: number) => number) => {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return (((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32 * below) | 0;
  };
};
