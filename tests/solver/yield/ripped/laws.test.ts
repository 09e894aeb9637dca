import fc from "fast-check";
import { isProblem } from "../../../../src/solver/problem";
import { cuttingPlan } from "../../../../src/solver/yield/cutting-plan";
import { rippingPlan } from "../../../../src/solver/yield/ripped/ripping-plan";
import { exact } from "../../../../src/solver/length/exact";
import { lengthOf } from "../../../../src/solver/length/length";
import { jobOf, type PlainBoard, type PlainJob } from "./plain-job";
import { planFaults } from "./plan-checker";
import { tinyJobs } from "./tiny-jobs";

/** What a job costs, Infinity where it has no plan; each plan goes through the checker. */
const costOf = (job: PlainJob): number => {
  const plan = rippingPlan(jobOf(job));
  if (isProblem(plan)) return Infinity;
  expect(planFaults(job, plan)).toEqual([]);
  return plan.cost.toNumber();
};

const RUNS = { numRuns: 20, seed: 9 };

const law = (
  name: string, change: (job: PlainJob) => PlainJob, isKept: (before: number, after: number) => boolean,
  begun: (job: PlainJob) => PlainJob = (job) => job,
): void => {
  test(name, () => {
    let changed = 0;
    fc.assert(fc.property(tinyJobs, (job) => {
      const before = costOf(begun(job));
      const after = costOf(change(begun(job)));
      if (before < Infinity) changed += 1;
      expect(isKept(before, after)).toBe(true);
    }), RUNS);
    expect(changed).toBeGreaterThan(3);
  });
};

const neverDearer = (before: number, after: number): boolean => after <= before;
const alike = (before: number, after: number): boolean => after === before;

describe("never dearer", () => {
  law("where boards are wider", (job) => ({
    ...job, boards: job.boards.map((board) => ({ ...board, width: board.width + 1 })),
  }), neverDearer);
  law("where boards are longer", (job) => ({
    ...job, boards: job.boards.map((board) => ({ ...board, length: board.length + 5 })),
  }), neverDearer);
  law("without defects", (job) => ({ ...job, boards: job.boards.map(({ defects: _, ...board }) => board) }), neverDearer);
  law("where another grade will do too", (job) => ({
    ...job, pieces: job.pieces.map((piece) => ({ ...piece, alsoFrom: "any" })),
  }), neverDearer);
  law("with a thinner kerf", (job) => ({ ...job, kerf: job.kerf / 2 }), neverDearer);
  law("either way round", (job) => ({ ...job, first: "either" }), neverDearer);
});

describe("the same cost", () => {
  law("in another order of rows", (job) => ({ ...job, pieces: [...job.pieces].reverse(), boards: [...job.boards].reverse() }), alike);
  law("of a row of several as several rows", (job) => ({
    ...job, pieces: job.pieces.flatMap((piece) => Array.from({ length: piece.quantity ?? 1 }, () => ({ ...piece, quantity: 1 }))),
  }), alike);
  law("of a board cut in two at its knot, sold as a lot", (job) => ({
    ...job,
    boards: job.boards.flatMap((board, at): PlainBoard[] => {
      const { defects: [knot] = [], price = 0, ...rest } = board;
      if (knot === undefined || board.owned === true || board.lot !== undefined) return [board];
      const half = { ...rest, lot: `halves ${at}`, lotPrice: price };
      return [{ ...half, length: knot[0] }, { ...half, length: board.length - knot[1] }];
    }),
    // a board of two halves has four ends, so none is trimmed
  }), alike, (job) => ({ ...job, trim: 0 }));
});

// CUTS plans one piece across each board; without widths a piece takes its board whole, so both are the same job
test("pieces that take the whole width cost what sticks cost", () => {
  const sizes = fc.record({
    length: fc.integer({ min: 20, max: 180 }).map((quarters) => quarters / 4), quantity: fc.integer({ min: 1, max: 3 }),
  });
  const sticks = fc.record({ length: fc.integer({ min: 30, max: 110 }), price: fc.integer({ min: 5, max: 60 }) });
  let plans = 0;
  const few = { minLength: 1, maxLength: 5 };
  fc.assert(fc.property(fc.array(sizes, few), fc.array(sticks, few), (wanted, stock) => {
    const job: PlainJob = {
      pieces: wanted.map((size) => ({ label: "piece", ...size })), boards: stock.map((stick) => ({ ...stick, width: 6 })),
      kerf: 0.125, trim: 0.5, first: "crosscut",
    };
    const inch = (value: number) => lengthOf(value, "in");
    const plan = cuttingPlan({
      pieces: wanted.map(({ length, quantity }) => ({ label: "", length: inch(length), quantity, grade: "" })),
      stock: stock.map(({ length, price }) =>
        ({ label: "", length: inch(length), price: exact(price), available: 1, owned: false, grade: "" })),
      kerf: inch(0.125), trim: inch(0.5), unit: "in",
    });
    if (!isProblem(plan)) plans += 1;
    expect(costOf(job)).toBe(isProblem(plan) ? Infinity : plan.cost.toNumber());
  }), RUNS);
  expect(plans).toBeGreaterThan(3);
});
