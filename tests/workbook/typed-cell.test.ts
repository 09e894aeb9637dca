import fc from "fast-check";
import { isFractionFormat } from "../../src/sheets/cell-format";
import { shownFraction } from "../../src/workbook/shown-fraction";
import { typedCell } from "../../src/workbook/typed-cell";

const sixteenths = "# ?/16";
const typed = (value: unknown, format?: string) => ({ kind: "value", value, ...(format === undefined ? {} : { format }) });

// Hand: 7 5/8 = 7.625, 105 7/8 = 105.875.
test.each([
  ["1/2", 0.5],
  ["7 5/8", 7.625],
  ["7-5/8", 7.625],
  ["105 7/8\"", 105.875],
  ["-3/16", -0.1875],
  ["9\"", 9],
  ["7.625", 7.625],
  ["12", 12],
])("in a cell that shows sixteenths, %s is a number of inches", (text, inches) => {
  expect(typedCell(text, sixteenths)).toEqual(typed(inches));
});

// Microsoft, Format numbers as percentages: in empty cells so formatted, 10 and 0.1 both give 10.00 %.
test.each([
  ["10", 0.1], ["0.1", 0.1], ["15", 0.15], ["1", 0.01], ["-15", -0.15], ["15%", 0.15], ["0.5%", 0.005], ["0.99", 0.99], ["150", 1.5],
])("in a cell of percentages %s is %d", (text, share) => {
  for (const format of ["0%", "0.0%", "0.00 %"]) expect(typedCell(text, format)).toEqual(typed(share));
});

test.each(["9' 1 1/2\"", "2781 mm", "1/0", "about 7"])("in a cell that shows sixteenths, %s stays text", (text) => {
  expect(typedCell(text, sixteenths)).toEqual(typed(text));
});

// A fraction alone is a length where a tape has it; else it may be a name, as the boards 5/4 are, or a day that nobody asked for.
test.each(["3-4", "5/4", "8/4", "12/25", "11/3", "1/3", "1/2/3", "2026-13-01", "Mar 4"])(
  "in a plain cell %s becomes no date and no number",
  (text) => {
    expect(typedCell(text)).toEqual(typed(text));
  },
);

// By hand: 9/16 = 0.5625, 3/32 = 0.09375, 63/64 = 0.984375, 10/16 = 5/8.
test.each([
  ["7 9/16", 7.5625, "# ??/16"],
  ["7-9/16", 7.5625, "# ??/16"],
  ["7 - 9/16", 7.5625, "# ??/16"],
  ["1/2", 0.5, "# ??/16"],
  ["-3/16", -0.1875, "# ??/16"],
  ["-7 1/2", -7.5, "# ??/16"],
  ['10"', 10, "# ??/16"],
  ['10.5"', 10.5, "# ??/16"],
  ['36 5/8"', 36.625, "# ??/16"],
  ['5/4"', 1.25, "# ??/16"],
  ["7 10/16", 7.625, "# ??/16"],
  ["7 3/32", 7.09375, "# ??/32"],
  ["7 6/32", 7.1875, "# ??/16"],
  ["63/64", 0.984375, "# ??/64"],
  ["7 1/3", 7 + 1 / 3, "# ?/?"],
  ["7 5/12", 7 + 5 / 12, "# ??/??"],
  ["7½", 7.5, "# ??/16"],
  ["7–5/8”", 7.625, "# ??/16"],
  ["7 5/8''", 7.625, "# ??/16"],
])("in a plain cell %s is a length, shown as it was typed", (text, inches, format) => {
  expect(typedCell(text)).toEqual(typed(inches, format));
  expect(typedCell(text, "General")).toEqual(typed(inches, format));
});

test("inches with a long decimal are shown in decimals", () => {
  expect(typedCell('7.3"')).toEqual(typed(7.3));
});

test.each(["10'", "3' 4\"", "8-11-3/8", "7 9/16+", '7 9/16"+', "any", "about 7", "7/0", "192 mm", "1 1/2 mm", "10 in", "7 5/8 x 10"])(
  "in a plain cell %s stays text",
  (text) => {
    expect(typedCell(text)).toEqual(typed(text));
  },
);

// A cell of decimals may be one of millimetres: with the inch mark the length keeps its unit, without one it is in that of its cell.
const DIGITS = "9".repeat(400);
const TOO_LONG = [`${DIGITS}"`, `${DIGITS}/${DIGITS}`, `7 1/${DIGITS}`, `${DIGITS} 1/2`, `1/${"8".repeat(20)}`];
test.each(TOO_LONG)("%s is no length, and stays text", (text) => {
  expect(typedCell(text, undefined)).toEqual(typed(text));
});

test("in a cell of decimals a fraction is a number, and inches that are marked stay text", () => {
  expect(typedCell("7 9/16", "0.00")).toEqual(typed(7.5625));
  expect(typedCell("1/2", "#,##0.00")).toEqual(typed(0.5));
  expect(typedCell('7 9/16"', "0.0")).toEqual(typed('7 9/16"'));
  expect(typedCell('10"', "0.0")).toEqual(typed('10"'));
  expect(typedCell("5/4", "0.00")).toEqual(typed("5/4"));
});

test("a 32nd typed into a cell of sixteenths is shown as a 32nd, and its cell stays one of sixteenths for what has them", () => {
  expect(typedCell("7 3/32", "# ??/16")).toEqual(typed(7.09375, "# ??/32"));
  expect(typedCell("7 1/64", "# ?/16")).toEqual(typed(7.015625, "# ?/64"));
  expect(typedCell("7 2/32", "# ??/16")).toEqual(typed(7.0625));
  expect(typedCell("7 3/32", "# ??/??")).toEqual(typed(7.09375));
});

test("the red of a format makes no date of it", () => {
  expect(typedCell("1/2", "0.00;[Red]-0.00")).toEqual(typed(0.5));
});

test("whatever fraction of a tape is typed, its number is exact and its cell shows it reduced, as on the tape", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 400 }), fc.constantFrom(2, 4, 8, 16, 32, 64), fc.nat(), fc.boolean(), fc.constantFrom(" ", "-"),
      (whole, parts, at, isMinus, between) => {
        const over = 1 + (at % (parts - 1));
        const text = `${isMinus ? "-" : ""}${whole === 0 ? "" : `${whole}${between}`}${over}/${parts}`;
        const cell = typedCell(text);
        if (cell.kind !== "value") throw new Error(`nothing came of ${text}`);
        expect(cell.value).toBe((isMinus ? -1 : 1) * (whole + over / parts));
        const by = [64, 32, 16, 8, 4, 2, 1].find((one) => over % one === 0 && parts % one === 0) ?? 1;
        expect(shownFraction(cell.format ?? "", Number(cell.value))).toBe(
          `${isMinus ? "-" : ""}${whole === 0 ? "" : `${whole} `}${over / by}/${parts / by}`,
        );
      },
    ),
    { numRuns: 2000 },
  );
});

test("typed as thirds, twelfths and the like, a length is shown as it was typed too", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 99 }), fc.constantFrom(3, 5, 7, 11, 13, 97), fc.nat(), (whole, parts, at) => {
      const over = 1 + (at % (parts - 1));
      const cell = typedCell(`${whole} ${over}/${parts}`);
      if (cell.kind !== "value") throw new Error("nothing came of it");
      expect(shownFraction(cell.format ?? "", Number(cell.value)).replace(/\s+/g, " ").trim()).toBe(`${whole} ${over}/${parts}`);
    }),
  );
});

test.each(["1/2", "12", "007", "=A1", "TRUE", "25%", " x "])("in a text cell %s stays as it was typed", (text) => {
  expect(typedCell(text, "@")).toEqual(typed(text));
});

test("an apostrophe in front makes text of anything", () => {
  expect(typedCell("'12")).toEqual(typed("12"));
  expect(typedCell("'=A1")).toEqual(typed("=A1"));
});

test.each([
  ["12", typed(12)],
  ["-0.5", typed(-0.5)],
  [".5", typed(0.5)],
  ["1,250.5", typed(1250.5)],
  ["1.5e3", typed(1500)],
  ["25%", typed(0.25, "0%")],
  ["8.25%", typed(0.0825, "0.00%")],
  ["$1,250", typed(1250, "$#,##0.00")],
  ["20 %", typed(0.2, "0%")],
  ["(38.00)", typed(-38)],
  ["($1,250.50)", typed(-1250.5, "$#,##0.00")],
  ["(12", typed("(12")],
  ["(-12)", typed("(-12)")],
  ["true", typed(true)],
  ["FALSE", typed(false)],
  ["1,25", typed("1,25")],
  [".", typed(".")],
  ["$", typed("$")],
])("in a plain cell %s is read as any spreadsheet reads it", (text, gives) => {
  expect(typedCell(text)).toEqual(gives);
});

test("a percentage or a dollar sign leaves the format of a cell that has one", () => {
  expect(typedCell("25%", "0.0")).toEqual(typed(0.25));
  expect(typedCell("$3", "0.00")).toEqual(typed(3));
});

// Hand: serial 1 is 1 January 1900 and 60 the 29 February 1900 that never was (ECMA-376 part 1, 18.17.4.1), so 1 January 2026, which
// is 126 x 365 = 45990 days and 31 leap days (1904 to 2024) later, is 1 + 45990 + 31 + the one that never was = 46023.
test("a date needs its full year", () => {
  expect(typedCell("2026-01-01")).toEqual(typed(46_023, "yyyy-mm-dd"));
  expect(typedCell("1/1/2026")).toEqual(typed(46_023, "m/d/yyyy"));
  expect(typedCell("1/1/2026", "d mmm yyyy")).toEqual(typed(46_023));
  expect(typedCell("1/1/2026", sixteenths)).toEqual(typed("1/1/2026"));
  expect(typedCell("11/3", undefined, 2026)).toEqual(typed("11/3"));
});

// Hand: 3 November 2026 is 46023 + 306, the days of January to October with 2 more: 46329. 11 March is 46023 + 69 = 46092.
test.each([
  ["11/3", "m/d/yyyy", 46_329],
  ["11/3", "dd/mm/yyyy", 46_092],
  ["3/11/2026", "dd/mm/yyyy", 46_329],
  ["11/3/26", "m/d/yy", 46_329],
  ["11-3", "yyyy-mm-dd", 46_329],
  ["11/3", "d mmm yyyy", 46_329],
])("in a column of dates %s, by its format %s, is a day of this year or the one said", (text, format, serial) => {
  expect(typedCell(text, format, 2026)).toEqual(typed(serial));
});

test.each(["13/32", "11/3/1", "7 5/8", "2/29"])("in a column of dates %s is no day, and stays text", (text) => {
  expect(typedCell(text, "m/d/yyyy", 2026)).toEqual(typed(text));
});

test("an empty text clears the cell, and a formula is a formula", () => {
  expect(typedCell("", "@")).toEqual({ kind: "nothing" });
  expect(typedCell("=1/2", sixteenths)).toEqual({ kind: "formula", formula: "=1/2" });
  expect(typedCell("=")).toEqual(typed("="));
});

test.each([
  ["# ?/16", true],
  ["# ??/16\\\"", true],
  ["?/?", true],
  ["# ?/??", true],
  ["0.00", false],
  ["m/d/yyyy", false],
  ["0 \"1/16\"", false],
  [undefined, false],
])("the format %s shows fractions: %s", (format, shows) => {
  expect(isFractionFormat(format)).toBe(shows);
});
