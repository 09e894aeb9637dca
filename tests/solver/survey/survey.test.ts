import fc from "fast-check";
import { type Length, lengthOf, measure } from "../../../src/solver/length/length";
import { equalizedRises } from "../../../src/solver/survey/equalized-rises";
import { lean } from "../../../src/solver/survey/lean";
import { packing } from "../../../src/solver/survey/packing";
import { uniformity } from "../../../src/solver/survey/uniformity";

const inches = (value: number): Length => lengthOf(value, "in");
const sixteenths = fc.integer({ min: 96, max: 140 });
const rises = fc.array(sixteenths, { minLength: 1, maxLength: 16 });

describe("equal rises by packing", () => {
  const equalized = (rough: readonly number[], tread: number, lower: number, upper: number) =>
    equalizedRises(rough.map((rise) => inches(rise / 16)), inches(tread / 16), inches(lower / 16), inches(upper / 16));

  test("with the packing in, every finished rise is the same", () => {
    fc.assert(
      fc.property(
        rises,
        fc.integer({ min: 12, max: 20 }),
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: 0, max: 12 }),
        (rough, tread, lower, upper) => {
          const { steps, unitRise } = equalized(rough, tread, lower, upper);
          // Finished levels, built up from the rough floor: sub-tread, its packing, its tread; then the upper floor.
          let level = 0;
          const levels = rough.map((rise, index) => {
            level += rise / 16;
            const packed = steps[index]?.packing;
            return packed === undefined ? level + upper / 16 : level + measure(packed, "in") + tread / 16;
          });
          const floor = lower / 16;
          for (const [index, finished] of levels.entries()) {
            expect(finished - (index === 0 ? floor : (levels[index - 1] ?? 0))).toBeCloseTo(measure(unitRise, "in"), 9);
          }
        },
      ),
    );
  });

  test("no packing can make the rises more alike than the least spread says, and some packing reaches it", () => {
    // Against brute force: three sub-treads packed by 0 to 2 in in eighths.
    const rough = [118, 126, 120];
    const { leastSpread } = equalized(rough, 16, 8, 12);
    const total = (118 + 126 + 120 - 8 + 12) / 16;
    let best = Infinity;
    for (let first = 0; first <= 256; first++) {
      for (let second = 0; second <= 256; second++) {
        const one = (118 + 16 - 8) / 16 + first / 128;
        const two = (118 + 126 + 16 - 8) / 16 + second / 128;
        const found = [one, two - one, total - two];
        best = Math.min(best, Math.max(...found) - Math.min(...found));
      }
    }
    expect(measure(leastSpread, "in")).toBeLessThanOrEqual(best + 1e-9);
    // The grid is a 128th, so its best lies within two grid steps.
    expect(best - measure(leastSpread, "in")).toBeLessThanOrEqual(2 / 128);
  });

  test("a stair that comes out even takes nothing", () => {
    // By hand: rough 6 3/4, 7 3/4, 8 3/4 with 1 in treads and finished floors: 7 3/4 each.
    const { steps, leastSpread } = equalized([108, 124, 140], 16, 0, 0);
    expect(steps.map(({ packing: under }) => under && measure(under, "in"))).toEqual([0, 0, undefined]);
    expect(measure(leastSpread, "in")).toBe(0);
  });
});

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
