import fc from "fast-check";
import { isProblem } from "../../../../src/solver/problem";
import { rippingPlan } from "../../../../src/solver/yield/ripped/ripping-plan";
import { leastOfAll } from "./every-choice";
import { jobOf, type PlainBoard, type PlainJob, type PlainPiece } from "./plain-job";
import { planFaults } from "./plan-checker";

/** Four shapes at most, twelve pieces, six boards: small enough for every choice there is. */
const pieces: fc.Arbitrary<PlainPiece[]> = fc.array(
  fc.record({
    label: fc.constant("piece"),
    length: fc.integer({ min: 20, max: 90 }).map((halves) => halves / 2),
    width: fc.option(fc.constantFrom(2, 3.5, 5, 7.25), { nil: undefined, freq: 8 }),
    quantity: fc.integer({ min: 1, max: 3 }),
    grade: fc.constantFrom("FAS", "1C"),
    alsoFrom: fc.constantFrom("", "FAS", "any"),
  }).map(({ width, ...rest }) => (width === undefined ? rest : { ...rest, width })),
  { minLength: 1, maxLength: 4 },
);

const boards: fc.Arbitrary<PlainBoard[]> = fc.array(
  fc.record({
    length: fc.integer({ min: 30, max: 110 }),
    width: fc.integer({ min: 24, max: 96 }).map((eighths) => eighths / 8),
    price: fc.integer({ min: 5, max: 60 }),
    grade: fc.constantFrom("FAS", "FAS", "1C"),
    knot: fc.option(fc.integer({ min: 5, max: 25 }), { nil: undefined }),
    owned: fc.constantFrom(false, false, false, true),
    lot: fc.constantFrom(undefined, undefined, "X"),
  }).map(({ knot, lot, price, ...rest }, ): PlainBoard => ({
    ...rest,
    ...(knot === undefined ? {} : { defects: [[knot, knot + 3]] as const }),
    ...(lot === undefined || rest.owned ? { price } : { lot, lotPrice: 40 }),
  })),
  { minLength: 1, maxLength: 6 },
);

export const tinyJobs: fc.Arbitrary<PlainJob> = fc.record({
  pieces, boards,
  kerf: fc.constantFrom(0, 0.125, 0.25),
  trim: fc.constantFrom(0, 0.5),
  first: fc.constantFrom("rip", "crosscut", "either"),
});

describe("tiny jobs", () => {
  test("cost what the cheapest of every choice there is costs, and are proven; what has no plan has none", () => {
    let plans = 0;
    fc.assert(
      fc.property(tinyJobs, (job) => {
        const least = leastOfAll(job);
        const plan = rippingPlan(jobOf(job));
        if (isProblem(plan)) {
          expect(least).toBeUndefined();
          return;
        }
        plans += 1;
        expect(planFaults(job, plan)).toEqual([]);
        expect(plan.cost.toNumber()).toBe(least);
        expect(plan.bound.toNumber()).toBe(least);
      }),
      { numRuns: 150, seed: 20 },
    );
    expect(plans).toBeGreaterThan(60);
  });
});
