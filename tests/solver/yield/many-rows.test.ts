import { isProblem } from "../../../src/solver/problem";
import { cuttingPlan } from "../../../src/solver/yield/cutting-plan";
import { unproven } from "./certificate-checker";
import { cents, cuttingJob, isOptimal, type PlainJob, seeded } from "./job";
import { faults } from "./plan-checker";

const problemOf = (plain: PlainJob): unknown => {
  const plan = cuttingPlan(cuttingJob(plain));
  return isProblem(plan) ? [plan.problem, plan.details["count"], plan.details["most"]] : plan.verdict;
};

const planOf = (plain: PlainJob) => {
  const job = cuttingJob(plain);
  const plan = cuttingPlan(job);
  if (isProblem(plan)) throw new Error(plan.problem);
  expect([faults(job, plan), unproven(job, plan)]).toEqual([[], []]);
  return plan;
};

const testTime = 120_000;

const PIECES = [{ length: 36, quantity: 5 }, { length: 30, quantity: 4 }, { length: 22, quantity: 6 }, { length: 14, quantity: 9 }];

/**
 * Many rows, all of them different, of which only three are worth a look: every other one is a little shorter and a little dearer than one
 * of these.
 */
const few = [{ length: 96, cents: 2000 }, { length: 120, cents: 2600 }, { length: 144, cents: 2900 }];
const needless = (count: number) =>
  Array.from({ length: count }, (_, row) => ({
    length: few[row % 3]!.length - 1 - Math.floor(row / 3) / 16,
    cents: few[row % 3]!.cents + 1 + row,
  }));

test("rows that another makes needless change neither the cost nor what is proven", () => {
  const alone = planOf({ pieces: PIECES, stock: few });
  const among = planOf({ pieces: PIECES, stock: [...needless(150), ...few, ...needless(150)] });
  expect([cents(among.cost), cents(among.bound), isOptimal(among)]).toEqual([cents(alone.cost), cents(alone.bound), true]);
}, testTime);

test("hundreds of rows on hand and to buy: every piece is cut, and what is proven is never above the cost", () => {
  const draw = seeded(41_001);
  const rack = Array.from({ length: 200 }, () => ({ length: 12 + draw(600) / 8, cents: 0, available: 1, owned: true }));
  const bought = Array.from({ length: 200 }, () => ({
    length: 60 + draw(800) / 8,
    cents: 900 + draw(3000),
    available: draw(2) === 0 ? Infinity : 1 + draw(3),
  }));
  const pieces = Array.from({ length: 12 }, () => ({ length: 10 + draw(60), quantity: 1 + draw(4) }));
  // the rack holds all of it: nothing is bought
  expect(cents(planOf({ pieces, stock: [...rack, ...bought] }).cost)).toBe(0);
  const plan = planOf({ pieces, stock: bought });
  expect(plan.bound.lte(plan.cost)).toBe(true);
  // what rows without limit cost alone is no less than what is proven of all of them
  for (const row of bought.filter(({ available }) => available === Infinity).slice(0, 5)) {
    const alone = cuttingPlan(cuttingJob({ pieces, stock: [row] }));
    if (!isProblem(alone)) expect(plan.bound.lte(alone.cost)).toBe(true);
  }
}, testTime);

test("more than one plan takes is refused in words, with how many there are", () => {
  const stock = Array.from({ length: 1_001 }, (_, row) => ({ length: 96 + row / 64, cents: 2000 }));
  expect(problemOf({ pieces: PIECES, stock })).toEqual(["too-much-stock", 1_001, 1_000]);
  const graded = (count: number): PlainJob => ({
    pieces: Array.from({ length: count }, (_, row) => ({ length: 20, grade: `grade ${row}` })),
    stock: Array.from({ length: count }, (_, row) => ({ length: 96, cents: 2000, grade: `grade ${row}` })),
  });
  expect(problemOf(graded(201))).toEqual(["too-many-parts", 201, 200]);
  // By hand: a stick of 20.00 for each of two hundred grades.
  expect(cents(planOf(graded(200)).cost)).toBe(400_000);
  const wide = (count: number): PlainJob => ({
    pieces: Array.from({ length: count }, (_, row) => ({ length: 20, width: 2 + row / 64 })),
    stock: [{ length: 96, width: 12, cents: 2000 }],
  });
  expect(problemOf(wide(501))).toEqual(["too-many-sections", 501, 500]);
  // By hand: four pieces of 20 and no kerf to a stick of 96, 125 sticks.
  expect(cents(planOf(wide(500)).cost)).toBe(250_000);
}, testTime);

test("a quantity no plan can have is refused, a number on hand that no job needs is not", () => {
  expect(problemOf({ pieces: [{ length: 20, quantity: 1e15 }], stock: few })).toEqual(["too-many-pieces", 1e15, 5_000]);
  expect(cents(planOf({ pieces: [{ length: 50, quantity: 3 }], stock: [{ length: 96, cents: 2000, available: 1e15 }] }).cost)).toBe(6_000);
});
