import fc from "fast-check";
import { type Length, lengthOf, measure } from "../../../src/solver/length/length";
import { lean } from "../../../src/solver/survey/lean";
import { packing } from "../../../src/solver/survey/packing";
import { uniformity } from "../../../src/solver/survey/uniformity";

const inches = (value: number): Length => lengthOf(value, "in");
const sixteenths = fc.integer({ min: 96, max: 140 });

describe("uniformity", () => {
  const of = (values: readonly number[], tolerance = 0.375) => uniformity(values.map(inches), inches(tolerance));

  test("IRC 2021 R311.7.5.1: 3/8 passes, 7/16 does not", () => {
    expect(of([7.375, 7.5, 7.75]).verdict).toBe("pass");
    const short = of([...Array.from({ length: 14 }, () => 7.5), 7.0625]);
    expect([short.verdict, measure(short.spread, "in"), short.smallestAt]).toEqual(["fail", 0.4375, 15]);
  });

  test("float dust does not fail a spread at the boundary", () => {
    expect(0.1 + 0.2 - 0.2).not.toBe(0.1);
    expect(uniformity([inches(7.1), inches(7.1 + 0.1 + 0.2 - 0.2 + 0.275)], inches(0.375)).verdict).toBe("pass");
  });

  test("order changes neither spread nor verdict; neighbours never differ by more than the spread", () => {
    fc.assert(
      fc.property(fc.array(sixteenths, { minLength: 2, maxLength: 16 }), (values) => {
        const found = of(values.map((value) => value / 16));
        const turned = of([...values].reverse().map((value) => value / 16));
        expect(measure(turned.spread, "in")).toBe(measure(found.spread, "in"));
        expect(measure(found.neighbours?.difference ?? inches(0), "in")).toBeLessThanOrEqual(measure(found.spread, "in"));
      }),
    );
  });
});

describe("packing", () => {
  test("packed points lie in one line, the ends on it and the others set back, and none is negative", () => {
    const readings = fc.array(fc.integer({ min: 0, max: 32 }), { minLength: 2, maxLength: 7 });
    fc.assert(
      fc.property(readings, fc.constantFrom("gap", "height"), fc.integer({ min: 0, max: 4 }), (read, kind, setback) => {
        const under = packing(
          read.map((value) => inches(value / 16)),
          kind as "gap" | "height",
          inches(setback / 16),
        ).map((value) => measure(value, "in") * 16);
        const tops = read.map((value, index) => (kind === "gap" ? -value : value) + (under[index] ?? 0));
        const line = tops[0] ?? 0;
        for (const [index, top] of tops.entries()) expect(top).toBe(index === 0 || index === read.length - 1 ? line : line - setback);
        expect(Math.min(...under)).toBe(0);
      }),
    );
  });
});

test("a lean is positive away from the piece", () => {
  // By hand: 1 in 1 is 45 degrees.
  expect(lean(1, 1)).toBeCloseTo(45, 12);
  expect(lean(-1, 1)).toBeCloseTo(-45, 12);
  expect(lean(0, 30)).toBe(0);
});
