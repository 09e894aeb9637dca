import { type Length, lengthOf, measure } from "../../../src/solver/length/length";
import { bevel, relief } from "../../../src/solver/fit/back-bevel";
import { gap } from "../../../src/solver/fit/gap";
import { riserHeights } from "../../../src/solver/fit/riser-height";
import { actualSize } from "../../../src/solver/notation/actual-size";
import { isProblem } from "../../../src/solver/problem";

const inches = (value: number): Length => lengthOf(value, "in");

test("riser heights: the first laps nothing, one taller than the board says what lap would fit", () => {
  const heights = riserHeights([inches(7.75), undefined, inches(7.75), inches(8.5)], inches(1), inches(0.25), inches(7.25), undefined);
  if (isProblem(heights)) throw new Error(heights.problem);
  // By hand: 7 3/4 - 1; 7 3/4 - 1 + 1/4 = 7; 8 1/2 - 1 = 7 1/2 is over 7 1/4 with no lap at all.
  expect(
    heights.map((height) => (height === undefined ? undefined : isProblem(height) ? height.details["most"] : measure(height, "in"))),
  ).toEqual([6.75, undefined, 7, "none"]);
  expect(riserHeights([inches(7.75)], inches(1), inches(1.25), undefined, 1)).toMatchObject({ problem: "lap-over-tread" });
});

test("a rise alone with a lap is not guessed at; told which riser it is, it answers", () => {
  const height = (first: number | undefined, lap = 0.25, rises = [7.75]) => {
    const found = riserHeights(rises.map(inches), inches(1), inches(lap), undefined, first);
    return isProblem(found) ? found.problem : found.map((one) => (one === undefined || isProblem(one) ? one : measure(one, "in")));
  };
  // By hand: 7 3/4 - 1 without a lap for riser 1, 7 3/4 - 1 + 1/4 for any other; without a lap they are the same.
  expect([height(undefined), height(1), height(2), height(9), height(undefined, 0)]).toEqual(["which-riser", [6.75], [7], [7], [6.75]]);
  // A rise that is no length is shown as that in its place, not asked which riser it is.
  expect(riserHeights([undefined], inches(1), inches(0.25), undefined, undefined)).toEqual([undefined]);
  expect([height(undefined, 0.25, [7.75, 7.75]), height(4, 0.25, [7.75, 7.75])]).toEqual([[6.75, 7], [7, 7]]);
});

test("common practice, no source: a back bevel of 3 to 5 degrees opens a 3/4 riser by 1/25 to 1/15 in, and the bevel comes back", () => {
  for (const degrees of [3, 4, 5]) {
    expect(relief(0.75, degrees)).toBeGreaterThan(1 / 26);
    expect(relief(0.75, degrees)).toBeLessThan(1 / 15);
    expect(bevel(0.75, relief(0.75, degrees))).toBeCloseTo(degrees, 10);
  }
});

test("an end cut too open binds at the front, one cut short gapes all along", () => {
  // By points: the edge cut runs from (0, 0) out to depth x tan(error) at the front.
  const found = gap(0.0625, 0.5, 11.25);
  expect(found.back).toBe(0.0625);
  expect(found.back - found.front).toBeCloseTo(11.25 * Math.tan((0.5 * Math.PI) / 180), 12);
});

test("nominal sizes: American Softwood Lumber Standard, and what is not in the table", () => {
  const TABLE: readonly (readonly [string, number, number])[] = [
    ["1x8", 0.75, 7.25],
    ["1x10", 0.75, 9.25],
    ["1x12", 0.75, 11.25],
    ["2x10", 1.5, 9.25],
    ["2x12", 1.5, 11.25],
    ["2x4", 1.5, 3.5],
    ["5/4x6", 1, 5.5],
    ["4 X 6", 3.5, 5.5],
    ['2" x 7"', 1.5, 6.5],
  ];
  for (const [nominal, thickness, width] of TABLE) {
    const size = actualSize(nominal);
    if (isProblem(size)) throw new Error(`${nominal}: ${size.problem}`);
    expect([measure(size.thickness, "in"), measure(size.width, "in")]).toEqual([thickness, width]);
  }
  expect(actualSize("1x13")).toMatchObject({ problem: "size-not-listed" });
  for (const wrong of ["8", "1x8x12", "one by eight", ""]) expect(actualSize(wrong)).toMatchObject({ problem: "not-a-nominal-size" });
});
