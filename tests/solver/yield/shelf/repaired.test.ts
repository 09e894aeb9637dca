import { isProblem } from "../../../../src/solver/problem";
import { cuttingPlan } from "../../../../src/solver/yield/cutting-plan";
import { chargeOf, worthSteps } from "../../../../src/solver/yield/shelf/certificate";
import { type Candidate, candidateOf } from "../../../../src/solver/yield/shelf/dive";
import { quickHandPlan } from "../../../../src/solver/yield/shelf/hand-plan";
import { wholeShelf } from "../../../../src/solver/yield/shelf/master";
import { cutsOf } from "../../../../src/solver/yield/shelf/pattern";
import { repaired } from "../../../../src/solver/yield/shelf/repaired";
import { type Shelf, usedWidth } from "../../../../src/solver/yield/shelf/shelf";
import { benchJobs } from "../../../bench/yield/bench-jobs";
import { unproven } from "../certificate-checker";
import { seeded } from "../job";
import { faults } from "../plan-checker";

const testTime = 60_000;

interface Stick { readonly holds: number; readonly price: number; readonly available?: number }

const shelfOf = (widths: readonly number[], sticks: readonly Stick[]): Shelf => {
  const kinds = [...new Set(widths)].sort((a, b) => b - a);
  return {
    kinds: kinds.map((width) => ({ width, wanted: widths.filter((each) => each === width).length })),
    sticks: sticks.map(({ holds, price, available }) => ({
      section: 0, holds, usable: holds, price, newLength: holds, available: available ?? widths.length,
    })),
    takes: [kinds.map(() => true)],
    marks: 1,
    keep: 0,
  };
};

/**
 * Repaired where every piece is worth its width, a unit of money to a mark: a stick of its length's price lacks nothing where it is full,
 * and one that costs less saves the difference.
 */
const repairedByWidth = (shelf: Shelf, least: number, start: Candidate, steps: number): Candidate => {
  const unit = worthSteps(shelf);
  const worth = shelf.kinds.map(({ width }) => width * unit);
  const charges = shelf.sticks.map(({ price, holds }) => Math.min(0, chargeOf(price, unit, holds * unit)));
  return repaired(shelf, wholeShelf(shelf), { worth, steps: unit, charges }, least, start, { left: steps });
};

const one = (stick: number, ...kinds: readonly number[]) => ({ stick, kinds });

// By hand: 6 and 4 on each of four tens, 40 in all, which is the width of all pieces.
test("pieces on sticks of their own are put together", () => {
  const shelf = shelfOf([6, 6, 6, 6, 4, 4, 4, 4], [{ holds: 10, price: 10 }, { holds: 9, price: 9 }]);
  const start = candidateOf(shelf, [one(0, 0), one(0, 0), one(0, 0), one(0, 0), one(0, 1, 1), one(0, 1, 1)])!;
  expect(start.cost).toBe(60);
  expect(repairedByWidth(shelf, 40, start, 5_000_000).cost).toBe(40);
});

// By hand: the free six takes a 6; the others are 6 and 4 on three tens and a 4 on the stick of 4: 34. Without the free stick it is 40.
test("a free stick that lies unused is used, and no more often than it is there", () => {
  const shelf = shelfOf([6, 6, 6, 6, 4, 4, 4, 4], [{ holds: 10, price: 10 }, { holds: 6, price: 0, available: 1 }, { holds: 4, price: 4 }]);
  const start = candidateOf(shelf, [0, 0, 0, 0].map((kind) => one(0, kind, 1)))!;
  const { cost, uses } = repairedByWidth(shelf, 34, start, 5_000_000);
  expect(start.cost).toBe(40);
  expect(cost).toBe(34);
  expect(cutsOf(shelf, uses).filter(({ stick }) => stick === 1)).toHaveLength(1);
});

const SOLD = [1_440, 1_320, 1_200, 1_080, 960, 840, 720];

/** Such sticks sawn up into pieces of 12 widths and a last piece each: the same sticks hold them again, for a unit of money to a mark. */
const sawnUp = (seed: number, count: number): number[] => {
  const draw = seeded(seed);
  const parts = Array.from({ length: 12 }, () => 200 + 8 * draw(50));
  return Array.from({ length: count }).flatMap(() => {
    const widths: number[] = [];
    let room = SOLD[draw(SOLD.length)]!;
    for (let part = parts[draw(12)]!; room - part >= 200; part = parts[draw(12)]!) {
      widths.push(part);
      room -= part;
    }
    return [...widths, room];
  });
};

describe("a large plan", () => {
  const widths = sawnUp(3, 160);
  const least = widths.reduce((sum, width) => sum + width, 0);
  const shelf = shelfOf(widths, SOLD.map((holds) => ({ holds, price: holds })));
  const start = candidateOf(shelf, quickHandPlan(shelf))!;

  // Each step of the way is a plan of all pieces; the width of all pieces is what any plan costs at least.
  test("has all its pieces on sticks that hold them, for less", () => {
    const { cost, uses } = repairedByWidth(shelf, least, start, 100_000_000);
    const cuts = cutsOf(shelf, uses);
    const placed = cuts.flatMap(({ kinds }) => kinds.map((kind) => shelf.kinds[kind]!.width));
    expect(placed.sort((a, b) => a - b)).toEqual([...widths].sort((a, b) => a - b));
    expect(cuts.filter((cut) => usedWidth(shelf, cut) > shelf.sticks[cut.stick]!.holds)).toEqual([]);
    expect(cuts.reduce((sum, { stick }) => sum + shelf.sticks[stick]!.price, 0)).toBe(cost);
    expect(cost).toBeGreaterThanOrEqual(least);
    expect(cost).toBeLessThan(start.cost);
  }, testTime);

  test("is the same after the same steps", () => {
    expect(repairedByWidth(shelf, least, start, 20_000_000)).toEqual(repairedByWidth(shelf, least, start, 20_000_000));
  }, testTime);

  test("stays as it is without effort, and where it costs the least", () => {
    expect(repairedByWidth(shelf, least, start, 0).cost).toBe(start.cost);
    expect(repairedByWidth(shelf, start.cost, start, 1_000_000).cost).toBe(start.cost);
  });
});

// 2,000 pieces from eight kinds of stick; a hundredth of a percent is what such a job is to be planned within, with both checkers silent.
test.each([1, 15])("estimator job %i is planned within a hundredth of a percent of what any plan costs", (number) => {
  const { job } = benchJobs({ set: "estimator", every: 1, most: number })[number - 1]!;
  const plan = cuttingPlan(job);
  if (isProblem(plan)) throw new Error(plan.problem);
  expect(plan.gap.toNumber()).toBeLessThanOrEqual(0.0001);
  expect([...faults(job, plan), ...unproven(job, plan)]).toEqual([]);
}, testTime);
