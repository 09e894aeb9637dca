import { type Given, isFailed } from "../../src/functions/cells";
import type { Plausible, RateOf, Sign } from "../../src/functions/columns";
import {
  readAngle,
  readChoice,
  readCount,
  readDate,
  readExactNumber,
  readFlag,
  readLabel,
  readLength,
  readMoney,
  readNumber,
  readRate,
  readReading,
  readSize,
  readText,
} from "../../src/functions/read-value";
import { Exact } from "../../src/solver/length/exact";
import { type Length, measure, type Unit } from "../../src/solver/length/length";

/** Every kind of cell, at each limit and a hair outside of it. An inch is 25.4 mm by definition. */

/** A value as a plain number, or the sentence that refuses it. */
const plain = (read: unknown): unknown => (isFailed(read) ? read.says : read instanceof Exact ? read.toNumber() : read);

const inches = (read: Length | { readonly failed: string; readonly says: string }): unknown =>
  isFailed(read) ? read.says : measure(read as Length, "in");

const ANY = { sign: "any" } as const;
const DIVIDED = { failed: "#DIV/0!", says: "divided by nothing" } as const;
const REFERENCE = { failed: "#VALUE!", says: "the cell given holds #REF!", held: "#REF!" } as const;
const PASSED_ON = "it: the cell given holds #DIV/0!; put that cell right first";

describe("a length", () => {
  const read = (cell: Given, unit: Unit | undefined = "in", sign: Sign = "any"): unknown => inches(readLength("it", cell, unit, { sign }));

  test.each<[Given, Unit | undefined, number]>([
    [7.5, "in", 7.5], [7.5, undefined, 7.5], [25.4, "mm", 1], ["25.4", "mm", 1], ["25.4 mm", undefined, 1], ["1 in", "mm", 1],
    [0, "in", 0], [20_000, "in", 20_000], [-20_000, "in", -20_000], ["20000 in", "in", 20_000], ["508000 mm", "in", 20_000],
  ])("%p in %s is %d in", (cell, unit, expected) => expect(inches(readLength("it", cell, unit, ANY))).toBeCloseTo(expected, 9));

  test.each<[Given, string]>([
    [null, "it: must be a length, got nothing"],
    [true, "it: must be a length, got TRUE"],
    [false, "it: must be a length, got FALSE"],
    [DIVIDED, PASSED_ON],
    [REFERENCE, "it: the cell given holds #REF!; put that cell right first"],
  ])("%j is none", (cell, says) => expect(read(cell)).toBe(says));

  // Dates of our time are numbers beyond 20,000; a text of so much is no date, and no stair either.
  test.each<[Given]>([[20_000.01], [-20_000.01], [46_085]])("%p may be a date", (cell) => expect(read(cell)).toContain("may hold a date"));
  test.each<[Given]>([["20000.01 in"], ["-20000.01 in"], ["508000.5 mm"], ["1700 ft"]])("%s is longer than any", (cell) =>
    expect(read(cell)).toBe(`it: must be 20,000 in (508 m) or less, got "${String(cell)}"`));

  test.each<[Sign, Given, unknown]>([
    ["positive", 0.001, 0.001],
    ["positive", 0, "it: must be more than 0, got 0"],
    ["positive", "0 in", 'it: must be more than 0, got "0 in"'],
    ["positive", -0.001, "it: must be more than 0, got -0.001"],
    ["not negative", 0, 0],
    ["not negative", "-1/64", 'it: must be 0 or more, got "-1/64"'],
    ["any", -3, -3],
  ])("that is %s: %p", (sign, cell, expected) => expect(read(cell, "in", sign)).toEqual(expected));
});

// Beyond these the unit, or the cell, is wrong: common practice, no source. In mm: each times 25.4.
describe.each<[Plausible, number, number | undefined]>([
  ["total rise", 400, undefined],
  ["rise", 12, undefined],
  ["floor", 48, undefined],
  ["run", 24, 4],
  ["board length", 720, undefined],
  ["board width", 72, undefined],
])("a plausible %s", (plausible, most, least) => {
  const read = (cell: Given, unit: Unit | undefined): unknown => inches(readLength("it", cell, unit, { sign: "positive", plausible }));

  test("is as much as its limit and no hair more, in either unit", () => {
    expect([read(most, "in"), read(most * 25.4, "mm")]).toEqual([most, most]);
    expect(read(most + 0.01, "in")).toBe(`it: ${most + 0.01} in is over ${most} in; if this is millimetres, write "${most + 0.01} mm"`);
    expect(read(most * 25.4 + 0.1, "mm")).toContain(` mm is over ${Math.round(most * 254) / 10} mm; if this is inches, write "`);
    expect(read(`${most + 1} in`, "mm")).toContain("is over");
  });

  test("is as little as its limit and no hair less, where it has one", () => {
    const low = least ?? 0.01;
    expect([read(low, "in"), read(low * 25.4, "mm")]).toEqual([low, expect.closeTo(low, 9)]);
    if (least === undefined) return;
    expect(read(least - 0.01, "in")).toBe(
      `it: ${least - 0.01} in is under ${least} in; if this is millimetres, write "${least - 0.01} mm"`,
    );
    expect(read(101.5, "mm")).toBe('it: 101.5 mm is under 101.6 mm; if this is inches, write "101.5 in" or leave the unit out');
  });

  test("is any where the unit is not known", () => expect(read(most + 1, undefined)).toBe(most + 1));
});

describe("a size", () => {
  const read = (cell: Given, sign: Sign = "not negative"): unknown => {
    const size = readSize("it", cell, "in", { sign });
    return isFailed(size) ? size.says : [measure(size.length, "in"), size.width === undefined ? "none" : measure(size.width, "in")];
  };

  test.each<[Given, unknown]>([
    [24, [24, "none"]],
    ["24", [24, "none"]],
    ["24 x 3", [24, 3]],
    ["24x3", [24, 3]],
    ["24 X 3 1/2", [24, 3.5]],
    ["24 \u00d7 76.2 mm", [24, 3]],
    ["0 x 1/2", [0, 0.5]],
    [null, "it: must be a length, got nothing"],
    ["-1 x 3", 'it: must be 0 or more, got "-1"'],
    ["24 x -3", 'it: must be 0 or more, got "-3"'],
  ])("%j", (cell, expected) => expect(read(cell)).toEqual(expected));

  test("half a size is no length", () => {
    for (const cell of ["24 x", "x 24", "24 x 3 x 1"]) expect(read(cell)).toContain("which is not a length");
  });
});

describe("a reading", () => {
  const read = (cell: Given, unit: Unit | undefined, sign: Sign = "any"): unknown => plain(readReading("it", cell, unit, { sign }));

  test.each<[Given, Unit | undefined, unknown]>([
    [36.5, "in", 36.5],
    [36.5, "mm", 36.5],
    ["36 1/2", undefined, 36.5],
    ["1 in", "mm", 25.4],
    ["25.4 mm", "in", 1],
    ["25.4 mm", undefined, 1],
    [20_000, "in", 20_000],
    [-20_000, "in", -20_000],
    // A spreadsheet keeps 15 digits (Excel specifications and limits): 0.1 + 0.2 is 0.3 there.
    [0.1 + 0.2, "in", 0.3],
    [DIVIDED, "in", PASSED_ON],
  ])("%j in %s", (cell, unit, expected) => expect(read(cell, unit)).toEqual(expected));

  test("is refused as a length is", () => {
    expect([read(20_000.5, "in"), read(-20_000.5, "in")]).toEqual(Array(2).fill(expect.stringContaining("may hold a date")));
    expect(read(0, "in", "positive")).toBe("it: must be more than 0, got 0");
    expect(read(-1, "in", "not negative")).toBe("it: must be 0 or more, got -1");
    expect(plain(readReading("it", 12.5, "in", { sign: "positive", plausible: "rise" }))).toContain("12.5 in is over 12 in");
    expect(plain(readReading("it", 12, "in", { sign: "positive", plausible: "rise" }))).toBe(12);
  });
});

describe("a number", () => {
  // A number beyond 15 digits is not counted in ones any more (Excel specifications and limits).
  const LARGE = "under 1,000,000,000,000,000 either way";

  test.each<[Given, number]>([
    [12, 12], [-0.5, -0.5], [999_999_999_999_999, 999_999_999_999_999], [-999_999_999_999_999, -999_999_999_999_999],
    ["12", 12], [" 12 ", 12], ["-12", -12], ["+12", 12], ["12.", 12], [".5", 0.5], ["-.5", -0.5], ["12.50", 12.5],
    ["1,234", 1234], ["12,345,678.5", 12_345_678.5], ["-1,234", -1234], ["999999999999999", 999_999_999_999_999],
    ["$12", 12], ["$ 12", 12], ["-$12", -12], ["$-12", -12], ["\u20ac5.25", 5.25], ["\u00a35", 5], ["50%", 0.5], ["50 %", 0.5],
    ["-5%", -0.05],
  ])("%j is %d", (cell, expected) => {
    expect(plain(readExactNumber("it", cell, "any"))).toBe(expected);
    expect(plain(readMoney("it", cell, "any"))).toBe(expected);
    expect(readNumber("it", cell, ANY)).toBe(expected);
  });

  test.each<[Given]>([
    ["1,23"], ["12,34,567"], ["1234,567"], ["1,2345"], ["."], ["-"], ["--5"], ["5-"], ["1 2"], ["1e5"], ["x12"], ["12x"], ["%"], ["12%%"],
    ["12$"], [""], [null], [true], [false],
  ])("%j is none", (cell) => {
    expect(plain(readExactNumber("it", cell, "any"))).toContain("it: must be a number, got ");
    expect(plain(readMoney("it", cell, "any"))).toContain("it: must be an amount of money, got ");
    expect(plain(readNumber("it", cell, ANY))).toContain("it: must be a number, got ");
  });

  test.each<[Given]>([[1e15], [-1e15], ["1000000000000000"], ["-1000000000000000"], ["1,000,000,000,000,000"]])("%j is too large", (cell) =>
    expect(plain(readExactNumber("it", cell, "any"))).toContain(`it: must be a number, ${LARGE}, got `));

  test("carries the error of its cell on", () =>
    expect([readExactNumber("it", DIVIDED, "any"), readMoney("it", DIVIDED, "any"), readNumber("it", DIVIDED, ANY)].map(plain)).toEqual(
      Array(3).fill(PASSED_ON),
    ));

  test("has the sign it must have", () => {
    const rule = "it: must be 0 or more, got -0.01";
    expect([readExactNumber("it", -0.01, "not negative"), readMoney("it", -0.01, "not negative")].map(plain)).toEqual([rule, rule]);
    expect([readExactNumber("it", 0, "not negative"), readMoney("it", 0, "not negative")].map(plain)).toEqual([0, 0]);
    expect([readExactNumber("it", 0, "positive"), readMoney("it", 0, "positive")].map(plain)).toEqual(
      Array(2).fill("it: must be more than 0, got 0"),
    );
    expect(plain(readNumber("it", "-1", { sign: "not negative" }))).toBe('it: must be 0 or more, got "-1"');
  });

  test("lies between its least and its most, both among them", () => {
    const rule = { sign: "any", least: 2, most: 64 } as const;
    expect([2, "64", 1.99, 64.01].map((cell) => plain(readNumber("it", cell, rule)))).toEqual([
      2, 64, "it: must be 2 or more, got 1.99", "it: must be 64 or less, got 64.01",
    ]);
    expect([0, 65, 3.5, "3", "3.0", "half"].map((cell) => plain(readCount("it", cell, rule)))).toEqual([
      "it: must be 2 or more, got 0",
      "it: must be 64 or less, got 65",
      "it: must be a whole number, got 3.5",
      3,
      3,
      'it: must be a number, got "half"',
    ]);
  });
});

describe("a rate", () => {
  const read = (cell: Given, of: RateOf): unknown => plain(readRate("it", cell, of));
  const NO_RATE = "must be a rate such as 25% or 0.25, got";

  test.each<[RateOf]>([["the cost"], ["the cost or of the price"]])("of %s is up to 5, as a cell of 250 %% is 2.5", (of) => {
    expect([0, 0.25, 1, 2.5, 5].map((cell) => read(cell, of))).toEqual([0, 0.25, 1, 2.5, 5]);
    expect(read(5.01, of)).toBe("it: 5.01 is 501 %, write 5.01% or 0.0501");
    expect(read(500, of)).toBe("it: 500 is 50000 %, write 500% or 5");
    expect(read(501, of)).toBe(`it: ${NO_RATE} 501`);
  });

  test.each<[RateOf]>([["the price"], ["what it falls on"], ["the quantity"]])("of %s is up to the whole", (of) => {
    expect([0, 0.25, 1].map((cell) => read(cell, of))).toEqual([0, 0.25, 1]);
    expect(read(1.01, of)).toBe('it: 1.01 is 101 %, more than the whole; write "101%" if it is meant, else a share under 1');
    expect(read(5, of)).toContain("it: 5 is 500 %, more than the whole;");
    expect(read(5.5, of)).toBe("it: 5.5 is 550 %, write 5.5% or 0.055");
    expect(read(100, of)).toBe("it: 100 is 10000 %, write 100% or 1");
    expect(read(101, of)).toBe(`it: ${NO_RATE} 101`);
    // What is written with its sign is meant.
    expect([read("150%", of), read(" 1000 % ", of)]).toEqual([1.5, 10]);
    expect(read("1000.5%", of)).toBe('it: must be 1000 % or less, got "1000.5%"');
  });

  test("of the whole is never more than all, however it is written", () => {
    expect([0, 0.5, 1, "100%", "1"].map((cell) => read(cell, "the whole"))).toEqual([0, 0.5, 1, 1, 1]);
    for (const cell of [1.01, 5]) expect(read(cell, "the whole")).toBe(`it: must be 100 % or less, got ${cell}`);
    for (const cell of ["101%", "1.01", "7"]) expect(read(cell, "the whole")).toBe(`it: must be 100 % or less, got "${cell}"`);
    expect(read(5.5, "the whole")).toBe("it: 5.5 is 550 %, write 5.5% or 0.055");
  });

  test("is no less than nothing, no word and no error", () => {
    expect(read(-0.01, "the cost")).toBe("it: must be 0 or more, got -0.01");
    expect(read("half", "the cost")).toBe(`it: ${NO_RATE} "half"`);
    expect(read(DIVIDED, "the cost")).toBe(PASSED_ON);
  });
});

test("an angle is less than a right angle either way", () => {
  const rule = "it: must be less than 90 degrees either way, got";
  expect([0, 89.99, -89.99, "1.5", 90, -90, "square", DIVIDED].map((cell) => plain(readAngle("it", cell)))).toEqual([
    0, 89.99, -89.99, 1.5, `${rule} 90`, `${rule} -90`, 'it: must be an angle in degrees, got "square"', PASSED_ON,
  ]);
});

describe("a date", () => {
  const read = (cell: Given): unknown => plain(readDate("it", cell));
  const NO_DATE = "it: must be a date, or text such as 2026-03-04, got";

  // Day numbers of a spreadsheet: 1 is 1900-01-01, with a 29 February 1900 that there was not. 1950-01-01 is 50 years of 365 days, 12 leap
  // days and that one later: 18,250 + 13 + 1 = 18,264. The last is 9999-12-31, 2,958,465 (Excel specifications and limits).
  test.each<[Given, number]>([[18_264, 18_264], [2_958_465, 2_958_465]])("%j is a day", (cell, day) =>
    expect(read(cell)).toEqual({ day, given: cell }));

  test("text counts as its day", () => {
    // 2026-01-01 is 76 years after 1950-01-01: 27,740 days and 19 leap days on, 46,023; 31 + 28 + 3 days later is 46,085.
    expect(read(" 2026-03-04 ")).toEqual({ day: 46_085, given: "2026-03-04" });
  });

  test.each<[Given, string]>([
    [18_263, `${NO_DATE} 18263`],
    [2_958_466, `${NO_DATE} 2958466`],
    [18_264.5, "it: must be a date without a time of day, got 18264.5"],
    [2_958_464.5, "it: must be a date without a time of day, got 2958464.5"],
    [18_263.5, `${NO_DATE} 18263.5`],
    [2_958_465.5, `${NO_DATE} 2958465.5`],
    [2026, `${NO_DATE} 2026`],
    ["4.3.2026", `${NO_DATE} "4.3.2026"`],
    ["2026-02-30", `${NO_DATE} "2026-02-30"`],
    [true, `${NO_DATE} TRUE`],
    [null, `${NO_DATE} nothing`],
    [DIVIDED, PASSED_ON],
  ])("%j is none", (cell, says) => expect(read(cell)).toBe(says));
});

describe("a choice", () => {
  const read = (cell: Given, options: readonly string[]): unknown => plain(readChoice("it", cell, options));

  test("is found whatever its case, and TRUE and FALSE are yes and no where those are asked for", () => {
    expect([read("Half Left", ["none", "half left"]), read(2, ["1", "2"])]).toEqual(["half left", "2"]);
    expect([read(true, ["yes", "no"]), read(false, ["yes", "no"])]).toEqual(["yes", "no"]);
    // Of two that are read alike the first.
    expect(read("treads", ["tread", "treads"])).toBe("tread");
  });

  test("is refused with what there is", () => {
    expect([null, true, false].map((cell) => read(cell, ["rip", "crosscut"]))).toEqual(
      ["nothing", "TRUE", "FALSE"].map((got) => `it: must be one of rip, crosscut, got ${got}`),
    );
    expect(read("ripp", ["rip", "crosscut"])).toBe('it: "ripp" is not known; nearest is "rip"; write rip or crosscut');
    expect(read(DIVIDED, ["rip"])).toBe(PASSED_ON);
  });
});

test("yes and no are told in words, as TRUE and FALSE, or as 0 and another number", () => {
  const read = (cell: Given): unknown => plain(readFlag("it", cell));
  expect([true, 1, -1, 0.5, "yes", "TRUE", "Y"].map(read)).toEqual(Array(7).fill(true));
  expect([false, 0, "no", "False", "n"].map(read)).toEqual(Array(5).fill(false));
  expect([null, "maybe", DIVIDED].map(read)).toEqual([
    "it: must be yes or no, got nothing", 'it: must be yes or no, got "maybe"', PASSED_ON,
  ]);
});

test("a label is a text or a number, a text is anything but an error", () => {
  expect([7, " tread ", null, true].map((cell) => readLabel("it", cell))).toEqual([7, "tread", "", "true"]);
  expect([7, " tread ", null, "  ", false].map((cell) => readText("it", cell))).toEqual(["7", "tread", "", "", "false"]);
  expect(plain(readText("it", DIVIDED))).toBe(PASSED_ON);
  // Another's sentence may name nothing; one of ours begins with what is wrong.
  expect(readLabel("it", DIVIDED)).toEqual({ failed: "#DIV/0!", says: "it: divided by nothing" });
  expect(readLabel("it", { failed: "#N/A", says: "run: is missing" })).toEqual({ failed: "#N/A", says: "run: is missing" });
  expect(readLabel("it", { failed: "#N/A", says: "the cell given holds #N/A" })).toEqual({
    failed: "#N/A", says: "it: the cell given holds #N/A",
  });
});
