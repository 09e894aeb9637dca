import fc from "fast-check";
import { FOOTAGE_RULES, footage, type FootageRule, footageTotal } from "../../../../src/solver/yield/tally/footage";
import { Exact } from "../../../../src/solver/length/exact";
import { boards, type Plain } from "./board";

const feetOf = (rule: FootageRule, plain: readonly Plain[]): readonly number[] =>
  footage(rule, boards(plain)).map(({ boardFeet }) => boardFeet.toNumber());
const surfacesOf = (rule: FootageRule, plain: readonly Plain[]): readonly number[] =>
  footage(rule, boards(plain)).map(({ surface }) => surface.toNumber());
const total = (rule: FootageRule, plain: readonly Plain[]): number =>
  footageTotal(rule, footage(rule, boards(plain)).reduce((sum, { boardFeet }) => sum.plus(boardFeet), new Exact(0))).toNumber();

const SIX: readonly Plain[] = [
  { length: 129, width: 6.4375 },
  { length: 96, width: 6.25, thickness: 2 },
  { length: 102, width: 5.25 },
  { length: 144, width: 6.5 },
  { length: 96, width: 6.75 },
  { length: 156, width: 10 },
];

describe("six boards by the three rules", () => {
  test("surface measure", () => {
    // By hand: 10 x 6 7/16 / 12 = 5.36; 8 x 6 1/4 / 12 = 4 1/6; 8 x 5 1/4 / 12 = 3 1/2 up; 12 x 6 1/2 / 12 = 6 1/2 down; 8 x 6 3/4 / 12 = 4
    // 1/2 up; 13 x 10 / 12 = 10 10/12. The second is 2 in thick: 4 x 2.
    expect(surfacesOf("surface measure", SIX)).toEqual([5, 4, 4, 6, 5, 11]);
    expect(feetOf("surface measure", SIX)).toEqual([5, 8, 4, 6, 5, 11]);
    expect(total("surface measure", SIX)).toBe(39);
  });

  test("end tally", () => {
    // By hand: 6 x 10, 6 x 8 x 2, 5 x 8, 7 x 12 (6 1/2 is the first half, up), 7 x 8, 10 x 13, each / 12: 466 / 12 = 38.83.
    const over12 = [60, 96, 40, 84, 56, 130];
    feetOf("end tally", SIX).forEach((feet, place) => expect(feet).toBeCloseTo(over12[place]! / 12, 12));
    expect(total("end tally", SIX)).toBe(39);
  });

  test("exact", () => {
    // By hand: 129 x 6.4375 + 96 x 6.25 x 2 + 102 x 5.25 + 144 x 6.5 + 96 x 6.75 + 156 x 10 = 5,709.9375; / 144 = 39.652.
    expect(total("exact", SIX)).toBeCloseTo(5709.9375 / 144, 12);
  });
});

describe("published counts", () => {
  test("American Hardwood Export Council, Measurement: 2 x 6 1/4 x 8 ft is 4 1/6, surface measure 4, 8 board feet", () => {
    const one = [{ length: 96, width: 6.25, thickness: 2 }];
    expect(surfacesOf("surface measure", one)).toEqual([4]);
    expect(feetOf("surface measure", one)).toEqual([8]);
  });

  test("American Hardwood Export Council, Measurement: 5 1/4 in x 8 1/2 ft is tallied as 5 x 8 ft", () => {
    expect(feetOf("end tally", [{ length: 102, width: 5.25 }])[0]).toBeCloseTo(40 / 12, 12);
  });

  test("an extension-style page on grading: 6 7/16 in x 10 ft 9 in is 5.36, surface measure 5", () => {
    expect(surfacesOf("surface measure", [{ length: 129, width: 6.4375 }])).toEqual([5]);
  });

  test("a page on grading: 6 1/2 x 8 ft is 4 1/3, 4; 8 x 12 ft is 8; 10 x 13 ft is 10 10/12, 11", () => {
    const three = [{ length: 96, width: 6.5 }, { length: 144, width: 8 }, { length: 156, width: 10 }];
    expect(surfacesOf("surface measure", three)).toEqual([4, 8, 11]);
  });

  test("a trade answer on bundles: 48 in wide, 10 ft long, 12 layers of 4/4 are 480 board feet", () => {
    const layers = [{ length: 120, width: 48, quantity: 12 }];
    for (const rule of FOOTAGE_RULES) expect(total(rule, layers)).toBeCloseTo(480, 12);
  });

  test("Wood Technology & Processes, self-check math quiz 13: 15 of 1 x 8 x 12 ft are 120", () => {
    for (const rule of FOOTAGE_RULES) expect(total(rule, [{ length: 144, width: 8, quantity: 15 }])).toBeCloseTo(120, 12);
  });
});

describe("by hand", () => {
  test("under 1 in thick counts as 1 in: 3/4 x 6 x 8 ft is 4, 5/4 of it 5", () => {
    expect(feetOf("exact", [{ length: 96, width: 6, thickness: 0.75 }, { length: 96, width: 6, thickness: 1.25 }])).toEqual([4, 5]);
  });

  test("a board under 1 ft has no whole foot: 11 in count nothing, exact 11 x 6 / 144", () => {
    const short = [{ length: 11, width: 6 }];
    expect(feetOf("surface measure", short)).toEqual([0]);
    expect(feetOf("end tally", short)).toEqual([0]);
    expect(feetOf("exact", short)[0]).toBeCloseTo(66 / 144, 12);
  });

  test("metric sizes have their halves too: 2,438.4 mm are 8 ft, 133.35 mm are 5 1/4 in, 3 1/2", () => {
    const metric = footage("surface measure", boards([{ length: 2438.4, width: 133.35, thickness: 25.4 }], "mm"));
    expect(metric.map(({ surface }) => surface.toNumber())).toEqual([4]);
  });

  test("three like boards of 3 1/2 are 4 + 3 + 4, and the next half goes down", () => {
    expect(surfacesOf("surface measure", [{ length: 102, width: 5.25, quantity: 3 }, { length: 102, width: 5.25 }])).toEqual([11, 3]);
  });

  test("a total of exactly a half goes up: 2 x 5/4 x surface 5 is 12 1/2, 13", () => {
    expect(total("surface measure", [{ length: 120, width: 6, thickness: 1.25, quantity: 2 }])).toBe(13);
  });
});

const sixteenths = (least: number, most: number) => fc.integer({ min: least * 16, max: most * 16 }).map((parts) => parts / 16);
const anyBoard: fc.Arbitrary<Plain> = fc.record({
  length: sixteenths(8, 200),
  width: sixteenths(3, 20),
  thickness: fc.constantFrom(0.75, 1, 1.25, 1.5, 2),
  quantity: fc.integer({ min: 1, max: 5 }),
});
const tallies = fc.array(anyBoard, { minLength: 1, maxLength: 12 });
const rules = fc.constantFrom(...FOOTAGE_RULES);

/** Whether a rule finds exactly a half, which goes up or down by the order of rows. */
const hasHalf = ({ length, width }: Plain): boolean =>
  width % 1 === 0.5 || (Math.floor(length / 12) * width * 16) % (12 * 16) === (12 * 16) / 2;

describe("laws", () => {
  test("rows in another order come to the same, unless a half is among them", () => {
    fc.assert(
      fc.property(rules, tallies.map((all) => all.filter((one) => !hasHalf(one))), (rule, tally) => {
        expect(total(rule, [...tally].reverse())).toBeCloseTo(total(rule, tally), 9);
      }),
    );
  });

  test("halves by turns differ from row to row by no more than one square foot in all", () => {
    fc.assert(
      fc.property(tallies, (tally) => {
        const sum = (all: readonly Plain[]): number => surfacesOf("surface measure", all).reduce((one, other) => one + other, 0);
        expect(Math.abs(sum([...tally].reverse()) - sum(tally))).toBeLessThanOrEqual(1);
      }),
    );
  });

  test("inches and millimetres count alike", () => {
    fc.assert(
      fc.property(rules, tallies, (rule, tally) => {
        const metric = footage(rule, boards(tally, "mm", 25.4)).map(({ boardFeet }) => boardFeet.toNumber());
        feetOf(rule, tally).forEach((feet, place) => expect(metric[place]).toBeCloseTo(feet, 9));
      }),
    );
  });

  test("a row of several boards counts as so many rows of one", () => {
    fc.assert(
      fc.property(rules, tallies, (rule, tally) => {
        const single = tally.flatMap((one) => Array.from({ length: one.quantity ?? 1 }, () => ({ ...one, quantity: 1 })));
        expect(total(rule, single)).toBeCloseTo(total(rule, tally), 9);
      }),
    );
  });

  test("a larger board never has fewer board feet, exact; alone in whole feet neither", () => {
    fc.assert(
      fc.property(rules, anyBoard, sixteenths(0, 5), sixteenths(0, 5), sixteenths(0, 1), (rule, one, longer, wider, thicker) => {
        const larger = { ...one, length: one.length + longer, width: one.width + wider, thickness: (one.thickness ?? 1) + thicker };
        expect(feetOf(rule, [larger])[0]).toBeGreaterThanOrEqual(feetOf(rule, [one])[0]!);
      }),
    );
  });
});
