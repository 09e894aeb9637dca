import fc from "fast-check";
import { lengthOf, measure } from "../../../src/solver/length/length";
import { finishedRises } from "../../../src/solver/survey/finished-rises";

const inches = (value: number) => lengthOf(value, "in");
const finished = (rough: readonly number[], tread: number, lower: number, upper: number): (number | undefined)[] =>
  finishedRises(rough.map(inches), inches(tread), inches(lower), inches(upper)).map((rise) => rise && measure(rise, "in"));

test("only the first and the last rise change", () => {
  // By hand, a stringer nobody dropped: 7 11/16 + 1 - 3/4 = 7 15/16, 7 9/16 + 3/4 - 1 = 7 5/16.
  const rough = [...Array.from({ length: 13 }, () => 7.6875), 7.5625];
  expect(finished(rough, 1, 0.75, 0.75)).toEqual([7.9375, ...Array.from({ length: 12 }, () => 7.6875), 7.3125]);
});

test("106 in rough with 1/4 below and 3/4 above is 106 1/2 finished: question-and-answer page", () => {
  const total = finished([50, 56], 1, 0.25, 0.75).reduce<number>((sum, rise) => sum + (rise ?? 0), 0);
  expect(total).toBe(106.5);
});

test("same finish on both floors leaves the total as measured: US Navy Builder 3 & 2", () => {
  expect(finished([8, 8, 8], 1.125, 0.75, 0.75).reduce<number>((sum, rise) => sum + (rise ?? 0), 0)).toBe(24);
});

test("a rise that is not known stays so and the others answer", () => {
  expect(
    finishedRises([inches(7), undefined, inches(7)], inches(1), inches(0), inches(0)).map((rise) => rise && measure(rise, "in")),
  ).toEqual([8, undefined, 6]);
});

test("the finished rises add up to the rough ones and the difference of the floors", () => {
  const sixteenths = fc.integer({ min: 96, max: 140 });
  fc.assert(
    fc.property(
      fc.array(sixteenths, { minLength: 1, maxLength: 20 }),
      fc.integer({ min: 0, max: 24 }),
      fc.integer({ min: 0, max: 24 }),
      fc.integer({ min: 8, max: 24 }),
      (rough, lower, upper, tread) => {
        const rises = finished(
          rough.map((rise) => rise / 16),
          tread / 16,
          lower / 16,
          upper / 16,
        );
        const sum = rises.reduce<number>((total, rise) => total + (rise ?? 0), 0);
        expect(sum * 16).toBe(rough.reduce((total, rise) => total + rise, 0) + upper - lower);
      },
    ),
  );
});
