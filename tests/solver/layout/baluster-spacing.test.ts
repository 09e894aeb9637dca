import fc from "fast-check";
import { type Length, lengthOf, measure } from "../../../src/solver/length/length";
import { balusterSpacing, repeatedSpacing } from "../../../src/solver/layout/baluster-spacing";
import { isProblem } from "../../../src/solver/problem";

const inches = (value: number): Length => lengthOf(value, "in");

const spaced = (solve: typeof balusterSpacing, opening: number, width: number, most: number) => {
  const found = solve(inches(opening), inches(width), inches(most));
  if (isProblem(found)) throw new Error(found.problem);
  return { count: found.count, gap: measure(found.gap, "in"), touches: found.touches };
};

describe("published spacings", () => {
  test("72 in of 1 1/2 balusters: how-to article, 13 with 52 1/2 / 14 = 3 3/4", () => {
    expect(spaced(balusterSpacing, 72, 1.5, 4)).toEqual({ count: 13, gap: 3.75, touches: false });
  });

  test("52 in of 1 1/2 balusters: how-to article; its rule rounds 52 / 5 1/2 = 9.45 up to 10, the fewest is 9", () => {
    expect(Math.ceil(52 / 5.5)).toBe(10);
    expect(spaced(balusterSpacing, 52, 1.5, 4)).toEqual({ count: 9, gap: 3.85, touches: false });
  });

  test("38 3/4 in of 1 1/4 balusters: school algebra lesson, 7 with 3 3/4", () => {
    expect(spaced(balusterSpacing, 38.75, 1.25, 4)).toEqual({ count: 7, gap: 3.75, touches: false });
  });

  test("96 in of 2 1/2 spindles, the end ones standing as posts: Math Central, by clear gaps 16 spindles and 3.733", () => {
    // The clear opening lies between the two end spindles: 96 - 5 = 91; the article sets spindles 3.94 on centre, which is no clear gap.
    const found = spaced(balusterSpacing, 91, 2.5, 4);
    expect(found.count + 2).toBe(16);
    expect(found.gap).toBeCloseTo(3.733, 3);
  });
});

describe("laws", () => {
  const cases = [fc.integer({ min: 32, max: 2000 }), fc.integer({ min: 8, max: 40 }), fc.integer({ min: 16, max: 96 })] as const;

  test("the gaps and balusters fill the opening, no gap is over the greatest, one baluster fewer would be", () => {
    fc.assert(
      fc.property(...cases, (opening, width, most) => {
        fc.pre(opening > width);
        const found = balusterSpacing(inches(opening / 16), inches(width / 16), inches(most / 16));
        fc.pre(!isProblem(found));
        if (isProblem(found)) return;
        const gap = measure(found.gap, "in") * 16;
        expect(found.count * width + (found.count + 1) * gap).toBeCloseTo(opening, 8);
        expect(gap).toBeLessThanOrEqual(most + 1e-9);
        if (found.count > 0) expect(opening - (found.count - 1) * width).toBeGreaterThan(found.count * most);
      }),
    );
  });

  test("a run that repeats has as many gaps as balusters", () => {
    fc.assert(
      fc.property(fc.integer({ min: 128, max: 200 }), fc.integer({ min: 8, max: 40 }), (run, width) => {
        const found = spaced(repeatedSpacing, run / 16, width / 16, 3.9375);
        expect(found.count * (width / 16 + found.gap)).toBeCloseTo(run / 16, 8);
        expect(found.gap).toBeLessThanOrEqual(3.9375 + 1e-9);
      }),
    );
  });
});

test("a gap equal to the ball touches, and more balusters than room is refused", () => {
  expect(spaced(balusterSpacing, 9.5, 1.5, 4)).toEqual({ count: 1, gap: 4, touches: true });
  expect(spaced(balusterSpacing, 3, 1.5, 4)).toEqual({ count: 0, gap: 3, touches: false });
  expect(balusterSpacing(inches(10), inches(20), inches(4))).toMatchObject({ problem: "no-room-for-balusters" });
});
