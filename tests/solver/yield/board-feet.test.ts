import fc from "fast-check";
import { lengthOf } from "../../../src/solver/length/length";
import { boardFeet } from "../../../src/solver/yield/board-feet";

const inches = (value: number) => lengthOf(value, "in");
const feetOf = (thickness: number, width: number, length: number, quantity = 1) =>
  boardFeet(inches(thickness), inches(width), inches(length), quantity);

const ARMY = "US Army Engineer School, EN5155 Carpentry I, lesson 2";
const HANDOUT = "Lumber measure handout, figuring board feet";
const QUIZ = "Board foot quiz with answers";
const POCKETBOOK = "Building Trades Pocketbook, carpentry: estimating quantities";
const TREATISE = "Treatise on Architecture and Building Construction vol. 4, estimating the carpentry and framing work";

describe("published board measure, printed answers", () => {
  test.each<[string, number, number, number, number, number]>([
    [ARMY, 2, 12, 16 * 12, 1, 32],
    ["Board foot computation notes", 2, 6, 14 * 12, 5, 70],
    [HANDOUT, 3, 6, 17 * 12, 1, 25.5],
    ["University TED 126 lecture, calculating board feet", 1, 6, 24, 1, 1],
    [HANDOUT, 2, 6, 12, 1, 1],
    ["Wood Technology & Processes, self-check math quiz 13", 1, 8, 12 * 12, 15, 120],
    [QUIZ, 1.25, 6, 8 * 12, 1, 5],
    ["School arithmetic, Board measure, Example 2, page 116", 2, 4, 18 * 12, 1, 12],
    [POCKETBOOK, 2, 6, 26 * 12, 1, 26],
    [POCKETBOOK, 2, 10, 18 * 12, 1, 30],
  ])("%s: %s x %s x %s in, %s of them", (_, thickness, width, length, quantity, expected) => {
    expect(feetOf(thickness, width, length, quantity).toNumber()).toBe(expected);
  });

  test.each<[string, number, number, number, number, number]>([
    // printed 37 1/3, 8 4/12: as thirds
    ["US Army EN5155, Essex table", 4, 8, 14 * 12, 112, 3],
    ["US Navy Builder 3 & 2 Vol. 1, NAVEDTRA 14044", 1, 10, 10 * 12, 25, 3],
  ])("%s: thirds of a board foot", (_, thickness, width, length, thirds, over) => {
    expect(feetOf(thickness, width, length, over).toNumber()).toBeCloseTo(thirds, 12);
  });

  // Inputs and rule seen in the source, answers worked by hand: 2 x 10 x 72 / 144 = 10; ten of them 100; 2 x 10 x 18 / 144 = 2 1/2; 2 x 4 x
  // 168 / 144 = 9 1/3; 960 / 144 = 6 2/3.
  test.each<[string, number, number, number, number, number]>([
    ["US Army EN5155, sample problem 1, board foot computation", 2, 10, 72, 1, 10],
    [ARMY, 2, 10, 72, 10, 100],
    [ARMY, 2, 10, 18, 1, 2.5],
    ["Three times: Math Central, University of Regina, questions of September 2007", 2, 4, 120, 3, 20],
    ["Three times: US Navy Engineering Aid basic manual, lumber", 2, 4, 168, 3, 28],
  ])("%s: worked from the printed rule", (_, thickness, width, length, quantity, expected) => {
    expect(feetOf(thickness, width, length, quantity).toNumber()).toBeCloseTo(expected, 12);
  });

  // The rule kept here is that of the US Navy Engineering Aid basic manual: under 1 in counts as 1 in. The quiz follows it; another
  // of the same collection counts 3/4 stock as 3/4, the opposite rule, and is left aside.
  test.each<[string, number, number, number, number, number]>([
    ["3/4 x 10 in x 6 ft counts as 5", 0.75, 10, 72, 1, 5],
    ["1/2 x 8 x 72 in counts as 4 (13.40 at 3.35)", 0.5, 8, 72, 1, 4],
    ["three times 3/4 x 8 x 60 in counts as 3 1/3 (printed 3.3)", 0.75, 8, 60, 3, 10],
  ])(`stock under 1 in counts as 1 in: %s (${QUIZ})`, (_, thickness, width, length, quantity, expected) => {
    expect(feetOf(thickness, width, length, quantity).toNumber()).toBeCloseTo(expected, 12);
  });

  test(`${TREATISE}: the takeoff list of 3 x 10 joists is 731.875, which the book cuts to 731.87`, () => {
    const list: [number, number][] = [[2, 8.75], [2, 6], [5, 9.75], [11, 19.5]];
    const total = list.map(([count, feet]) => feetOf(3, 10, feet * 12, count)).reduce((sum, each) => sum.plus(each));
    expect(total.toNumber()).toBe(731.875);
  });
});

describe("laws of board measure", () => {
  const size = fc.integer({ min: 1, max: 4000 }).map((marks) => marks / 64);
  test("cutting a board in two keeps its board feet", () => {
    fc.assert(
      fc.property(size, size, size, size, (thickness, width, one, other) => {
        const whole = feetOf(thickness, width, one + other);
        const parts = feetOf(thickness, width, one).plus(feetOf(thickness, width, other));
        expect(whole.minus(parts).abs().toNumber()).toBeLessThan(1e-40);
      }),
    );
  });

  test("a millimetre board is the same wood: 25.4 x 304.8 x 304.8 mm is one board foot", () => {
    expect(boardFeet(lengthOf(25.4, "mm"), lengthOf(304.8, "mm"), lengthOf(304.8, "mm"), 1).toNumber()).toBe(1);
  });
});
