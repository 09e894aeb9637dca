import { middleAndSpread, wrongSigns } from "../../../../src/solver/fit/skirt-surface/lean-signs";

test("the middle of a few degrees, and how far they are from it", () => {
  // By hand: middle of 1, 1.2, 1.4, 2 is 1.3; off by 0.3, 0.1, 0.1, 0.7: middle 0.2, times 1.48.
  const found = middleAndSpread([1, 2, 1.2, 1.4]);
  expect(found.middle).toBeCloseTo(1.3, 12);
  expect(found.spread).toBeCloseTo(0.296, 12);
  // All alike: a gauge is not finer than 0.2.
  expect(middleAndSpread([1, 1, 1]).spread).toBe(0.2);
});

test("a lean with the other sign than its flight is wrong", () => {
  expect(wrongSigns([1.2, 1.1, -1.2, 1.3, 1.2])).toEqual([2]);
});

test("leans near 0 may have either sign", () => {
  // By hand: middle 0.2; -0.3 is 0.5 from it, within 3 x 0.2.
  expect(wrongSigns([0.2, 0.3, -0.3, 0.2, 0.1])).toEqual([]);
});

test("a lean that is far off either way is no matter of sign", () => {
  // By hand: 3 is far from -1.2's middle of 1.2 both as 3 and as -3.
  expect(wrongSigns([1.2, 1.1, 3, 1.3, 1.2])).toEqual([]);
});

test("0 was not read, and three leans are no flight", () => {
  expect(wrongSigns([1.2, 0, 1.3, 1.1, 1.2])).toEqual([]);
  expect(wrongSigns([1.2, -1.2, 1.3, 0])).toEqual([]);
});
