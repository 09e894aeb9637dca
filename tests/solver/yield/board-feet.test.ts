import fc from "fast-check";
import { lengthOf } from "../../../src/solver/length/length";
import { boardFeet } from "../../../src/solver/yield/board-feet";

const inches = (value: number) => lengthOf(value, "in");
const feetOf = (thickness: number, width: number, length: number, quantity = 1) =>
  boardFeet(inches(thickness), inches(width), inches(length), quantity);

const ARMY = "US Army EN5155 Carpentry I, http://www.sweethaven.com/sweethaven/BldgConst/Carpentry01/lessonMain.asp?iNum=010203";
const HANDOUT = "Lumber measure handout, https://5y1.org/info/figuring-board-feet-worksheet_1_16dcb2.html";
const QUIZ = "Board foot quiz with answers, https://issuu.com/ashockley/docs/board_foot_quiz_with_answers";
const POCKETBOOK = "Building Trades Pocketbook, https://chestofbooks.com/architecture/Building-Trades-Pocketbook/Carpentry-Estimating-Quantities.html";
const TREATISE = "Treatise on Architecture and Building Construction vol. 4, https://chestofbooks.com/architecture/Building-Construction-V4/Estimating-the-Carpentry-and-Framing-Work.html";

describe("published board measure, printed answers", () => {
  test.each<[string, string, number, number, number, number, number]>([
    ["bf-01", ARMY, 2, 12, 16 * 12, 1, 32],
    ["bf-07", "Board foot computation notes, https://www.scribd.com/document/338545228/Board-Foot-Computation", 2, 6, 14 * 12, 5, 70],
    ["bf-11", HANDOUT, 3, 6, 17 * 12, 1, 25.5],
    ["bf-14", "University TED 126 lecture, http://workforce.calu.edu/nowak/ted126/Lecture/Calculating%20Board%20Feet.ppt", 1, 6, 24, 1, 1],
    ["bf-15", HANDOUT, 2, 6, 12, 1, 1],
    ["x-bf-03", "Wood Technology & Processes, self-check math quiz 13, http://glencoe.mcgraw-hill.com/sites/007894094x/student_view0/self-check_math_quizzes/math_quiz_13.html", 1, 8, 12 * 12, 15, 120],
    ["x-bf-08", QUIZ, 1.25, 6, 8 * 12, 1, 5],
    ["x-bf-18", "School arithmetic, Board measure, Example 2, https://books.google.gr/books?id=-t5EAAAAIAAJ&pg=PA116&output=html_text", 2, 4, 18 * 12, 1, 12],
    ["x-bf-22", POCKETBOOK, 2, 6, 26 * 12, 1, 26],
    ["x-bf-23", POCKETBOOK, 2, 10, 18 * 12, 1, 30],
  ])("%s (%s): %s x %s x %s in, %s of them", (_, __, thickness, width, length, quantity, expected) => {
    expect(feetOf(thickness, width, length, quantity).toNumber()).toBe(expected);
  });

  test.each<[string, string, number, number, number, number, number]>([
    // printed 37 1/3, 8 4/12: as thirds
    ["bf-02", "US Army EN5155, Essex table, http://armyengineer.tpub.com/EN5155/EN51550039.htm", 4, 8, 14 * 12, 112, 3],
    ["x-bf-01", "US Navy Builder 3 & 2 Vol. 1, http://constructionmanuals.tpub.com/14044/css/Designs-62.htm", 1, 10, 10 * 12, 25, 3],
  ])("%s (%s): thirds of a board foot", (_, __, thickness, width, length, thirds, over) => {
    expect(feetOf(thickness, width, length, over).toNumber()).toBeCloseTo(thirds, 12);
  });

  // Inputs and rule seen in the source, answers worked by hand: 2 x 10 x 72 / 144 = 10; ten of them 100; 2 x 10 x 18 / 144 = 2 1/2; 2 x 4 x 168 / 144 = 9 1/3; 960 / 144 = 6 2/3.
  test.each<[string, string, number, number, number, number, number]>([
    ["bf-03", "US Army EN5155, sample problem 1, http://armyengineer.tpub.com/EN5155/Bf-Computation-36.htm", 2, 10, 72, 1, 10],
    ["bf-04", ARMY, 2, 10, 72, 10, 100],
    ["bf-05", ARMY, 2, 10, 18, 1, 2.5],
    ["x-bf-29 three times", "Math Central, http://mathcentral.uregina.ca/QQ/database/QQ.09.07/h/carolyn3.html", 2, 4, 120, 3, 20],
    ["bf-06 three times", "US Navy Engineering Aid basic manual, http://www.tpub.com/engbas/6-3.htm", 2, 4, 168, 3, 28],
  ])("%s (%s): worked from the printed rule", (_, __, thickness, width, length, quantity, expected) => {
    expect(feetOf(thickness, width, length, quantity).toNumber()).toBeCloseTo(expected, 12);
  });

  // The rule kept here is that of the US Navy Engineering Aid basic manual: under 1 in counts as 1 in. The quiz follows it; x-bf-15
  // of the same collection counts 3/4 stock as 3/4, the opposite rule, and is left aside.
  test.each<[string, number, number, number, number, number]>([
    ["x-bf-07, 3/4 x 10 in x 6 ft counts as 5", 0.75, 10, 72, 1, 5],
    ["x-bf-10, 1/2 x 8 x 72 in counts as 4 (13.40 at 3.35)", 0.5, 8, 72, 1, 4],
    ["x-bf-06 three times, 3/4 x 8 x 60 in counts as 3 1/3 (printed 3.3)", 0.75, 8, 60, 3, 10],
  ])(`stock under 1 in counts as 1 in: %s (${QUIZ})`, (_, thickness, width, length, quantity, expected) => {
    expect(feetOf(thickness, width, length, quantity).toNumber()).toBeCloseTo(expected, 12);
  });

  test(`x-bf-26 (${TREATISE}): the takeoff list of 3 x 10 joists is 731.875, which the book cuts to 731.87`, () => {
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
