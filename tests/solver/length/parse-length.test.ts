import fc from "fast-check";
import { exact } from "../../../src/solver/length/exact";
import { lengthIn, measure, type Unit } from "../../../src/solver/length/length";
import { parseLength } from "../../../src/solver/length/parse-length";
import { tapeText } from "../../../src/solver/length/tape-text";
import { isProblem } from "../../../src/solver/problem";

const read = (text: string, unit: Unit = "in"): number | string => {
  const length = parseLength(text, unit);
  return isProblem(length) ? length.problem : measure(length, "in");
};

describe("every way of writing a length is read exactly", () => {
  // By hand: 9 ft 1 1/2 in = 109.5 in; 2,781 mm = 2781 / 25.4 in; the rest are the same lengths in other signs.
  const CASES: readonly (readonly [string, number])[] = [
    ["9' 1 1/2\"", 109.5],
    ["9'-1 1/2\"", 109.5],
    ["9'1-1/2\"", 109.5],
    ["109 1/2", 109.5],
    ['109-1/2"', 109.5],
    ["109.5", 109.5],
    ["109.5 in", 109.5],
    ["9 ft 1 1/2 in", 109.5],
    ["9 feet 1.5 inches", 109.5],
    ["9’ 1 1/2”", 109.5],
    ["9′ 1 1/2″", 109.5],
    ["9' 1½\"", 109.5],
    ["9'–1 1⁄2\"", 109.5],
    ["9′ 1 1⁄2″", 109.5],
    ["7-5/8", 7.625],
    ["7 5/8", 7.625],
    ["7⅝", 7.625],
    ['7 ⅝"', 7.625],
    ["3/16", 0.1875],
    ["¾", 0.75],
    ["10'", 120],
    ["10 ft", 120],
    ["10' 0\"", 120],
    ["1/2'", 6],
    ['-1/2"', -0.5],
    ["−1/2", -0.5],
    ["+1/2", 0.5],
    ["- 7 5/8", -7.625],
    [".5", 0.5],
    ["12''", 12],
    ["0", 0],
    // As TAPE writes a length that is longer than its mark or shy of it: the mark is what is read.
    ['7 5/8" +', 7.625],
    ['7 5/8"+', 7.625],
    ['7 5/8"−', 7.625],
    ['7 5/8" \u2212', 7.625],
    ["8' 11 3/8\"-", 107.375],
    ['-7 5/8"+', -7.625],
    ["7 5/8+", 7.625],
    // By hand: 8 ft 11 3/8 in = 96 + 11.375.
    ["8-11-3/8", 107.375],
    ['8-11-3/8"', 107.375],
    ["8 - 11 - 3/8", 107.375],
    ["8'11\"3/8", 107.375],
    ['8\' 11" 3/8"', 107.375],
    ["8'-11\"-3/8", 107.375],
    ['11"3/8', 11.375],
    ["2781 mm", 2781 / 25.4],
    ["278.1cm", 2781 / 25.4],
    ["2.781 m", 2781 / 25.4],
    ["2781MM", 2781 / 25.4],
    ["25.4 mm", 1],
    ["1/2 m", 500 / 25.4],
  ];
  test.each(CASES)("%s is %d in", (text, inches) => {
    expect(read(text)).toBe(inches);
  });

  test("a bare number is in the unit of the call, a text with its own unit is not", () => {
    expect(read("254", "mm")).toBe(10);
    expect(read("10\"", "mm")).toBe(10);
    expect(read("254 mm", "in")).toBe(10);
  });
});

describe("a malformed length is told apart by what is wrong with it", () => {
  const CASES: readonly (readonly [string, string])[] = [
    ["1/0", "zero-denominator"],
    ["7 5/0", "zero-denominator"],
    ["9' 14\"", "too-many-inches"],
    ["9' 12\"", "too-many-inches"],
    ["7 5/8 3/4", "two-fractions"],
    ["9' 100 mm", "two-units"],
    ["7,5", "decimal-comma"],
    ["2,781 m", "decimal-comma"],
    ["9 1/2' 3\"", "fractional-feet-and-inches"],
    ["8-11", "feet-or-inches"],
    ['8-11"', "feet-or-inches"],
    ["8-12", "not-a-length"],
    ["8-13-3/8", "too-many-inches"],
    ["8-11-3/0", "zero-denominator"],
    ['9 1/2" 3/8', "two-fractions"],
    ["7 5/8-", "not-a-length"],
    ["7-", "not-a-length"],
    ["180 mm +", "not-a-length"],
    ["", "no-length"],
    ["   ", "no-length"],
    ["tread", "not-a-length"],
    ["7 x 5", "not-a-length"],
    ["1e3", "not-a-length"],
    ["7..5", "not-a-length"],
    ["--7", "not-a-length"],
    ["9'' 1'", "not-a-length"],
  ];
  test.each(CASES)("%s: %s", (text, problem) => {
    expect(read(text)).toBe(problem);
  });
});

describe("published conversions", () => {
  // Decimal/fraction/metric conversion table, every seen row.
  const SIXTEENTHS = [1.5875, 3.175, 4.7625, 6.35, 7.9375, 9.525, 11.1125, 12.7, 14.2875, 15.875, 17.4625, 19.05, 20.6375, 22.225, 23.8125];
  test("sixteenths of an inch in millimetres", () => {
    for (const [index, millimetres] of SIXTEENTHS.entries()) {
      const length = parseLength(`${index + 1}/16`, "in");
      if (isProblem(length)) throw new Error("a fraction is a length");
      expect(measure(length, "mm")).toBe(millimetres);
    }
  });

  // Decimal/fraction/metric conversion table, nearest 1/16 as printed but for 1 mm, which the table prints as 0 and which is 0.63 of a
  // sixteenth.
  const NEAREST = ['1/16"', '1/16"', '1/8"', '3/16"', '3/16"', '1/4"', '1/4"', '5/16"', '3/8"', '3/8"'];
  test("whole millimetres to the nearest sixteenth", () => {
    for (const [index, text] of NEAREST.entries()) {
      const length = parseLength(`${index + 1} mm`, "in");
      if (isProblem(length)) throw new Error("millimetres are a length");
      expect(tapeText(lengthIn(length, "in"), { denominator: 16, feet: false, strong: false })).toBe(text);
    }
  });

  // Adult basic education handout, OpenStax Prealgebra 2e.
  const SUMS: readonly (readonly [readonly string[], string])[] = [
    [["8'-9\"", "32'-11\"", "104'-6\""], "146' 2\""],
    [["8 ft 7 in", "12 ft 11 in"], "21' 6\""],
    [["6 ft 4 in", "6 ft 4 in", "6 ft 4 in", "6 ft 4 in"], "25' 4\""],
    [["6 ft 4 in", "2 ft 10 in"], "9' 2\""],
    [["6 ft 6 in", "3 ft 8 in"], "10' 2\""],
    // Treatise on Architecture and Building Construction 3, Double Winders: two flights of 34 in and an 8 in cylinder are 6 ft 4 in.
    [["34", "8", "34"], "6' 4\""],
    [["75\""], "6' 3\""],
    [["60\""], "5' 0\""],
  ];
  test.each(SUMS)("%s add up to %s", (lengths, sum) => {
    const total = lengths.reduce((whole, text) => {
      const length = parseLength(text, "in");
      if (isProblem(length)) throw new Error(text);
      return whole.plus(lengthIn(length, "in"));
    }, exact(0));
    expect(tapeText(total, { denominator: 16, feet: true, strong: false })).toBe(sum);
  });
});

describe("tape text", () => {
  const text = (inches: number, denominator = 16, feet = false, strong = false): string =>
    tapeText(exact(inches), { denominator, feet, strong });

  // By hand; ties away from zero, reduced, + when the length is longer than the mark, − when shy of it.
  test.each([
    [7.8125, 16, '7 13/16"'],
    [7.03125, 16, '7 1/16"'],
    [-7.03125, 16, '-7 1/16"'],
    [7.99, 16, '8"'],
    [0, 16, '0"'],
    [0.01, 16, '0"'],
    [-0.01, 16, '0"'],
    [0.5, 2, '1/2"'],
    [11.96875, 16, '12"'],
    [7.3, 64, '7 19/64"'],
    [7.5, 4, '7 1/2"'],
  ])("%d in to 1/%d is %s", (inches, denominator, expected) => {
    expect(text(inches, denominator)).toBe(expected);
  });

  test("feet begin at twelve inches", () => {
    expect(text(11.9, 16, true)).toBe('11 7/8"');
    expect(text(109.5, 16, true)).toBe("9' 1 1/2\"");
    expect(text(11.98, 16, true)).toBe("1' 0\"");
    expect(text(108.0625, 16, true)).toBe("9' 0 1/16\"");
  });

  test("strong says which side of the mark the length lies", () => {
    expect(text(7.69, 16, false, true)).toBe('7 11/16"+');
    expect(text(7.68, 16, false, true)).toBe('7 11/16"−');
    expect(text(7.6875, 16, false, true)).toBe('7 11/16"');
  });

  test("what TAPE writes is read back as the mark, whatever its style", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -4000, max: 40000 }),
        fc.constantFrom(2, 4, 8, 16, 32, 64),
        fc.boolean(),
        fc.boolean(),
        (thousandths, denominator, feet, strong) => {
          const written = (style: boolean) => tapeText(exact(thousandths / 100), { denominator, feet, strong: style });
          expect(read(written(strong))).toBe(read(written(false)));
          expect(Math.abs(Number(read(written(strong))) - thousandths / 100)).toBeLessThanOrEqual(0.5 / denominator + 1e-12);
        },
      ),
    );
  });

  test("what is written on the tape's grid reads back the same", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -40000, max: 40000 }),
        fc.constantFrom(2, 4, 8, 16, 32, 64),
        fc.boolean(),
        (parts, denominator, feet) => {
          const inches = parts / denominator;
          expect(read(text(inches, denominator, feet))).toBe(inches === 0 ? 0 : inches);
        },
      ),
    );
  });

  test("the text is never further than half a division from the length", () => {
    fc.assert(
      fc.property(fc.double({ min: -400, max: 400, noNaN: true }), fc.constantFrom(2, 4, 8, 16, 32, 64), (inches, denominator) => {
        const back = read(text(inches, denominator));
        expect(Math.abs(Number(back) - inches)).toBeLessThanOrEqual(0.5 / denominator + 1e-12);
      }),
    );
  });
});
