import { dayOfText, dayText, monthText } from "../../../src/solver/books/day";

/** Numbers of dates in a spreadsheet, counted from known ones: 1970-01-01 is 25,569, a year 365 or 366 more (from memory). */
const DAYS: readonly (readonly [string, number])[] = [
  ["1970-01-01", 25_569],
  // 30 years, of which 1972, 76, 80, 84, 88, 92 and 96 leap: 30 x 365 + 7 = 10,957.
  ["2000-01-01", 36_526],
  // 31 days of January and 28 of February later, a leap day; 2000 is one, divisible by 400.
  ["2000-02-29", 36_585],
  ["2000-03-01", 36_586],
  // 26 years, of which 2000, 04, 08, 12, 16, 20 and 24 leap: 26 x 365 + 7 = 9,497.
  ["2026-01-01", 46_023],
  ["2026-02-28", 46_081],
  ["2026-03-31", 46_112],
  ["2026-12-31", 46_387],
];

test.each(DAYS)("%s", (text, day) => {
  expect([dayOfText(text), dayText(day), monthText(day)]).toEqual([day, text, text.slice(0, 7)]);
});

test("days of a century follow one another", () => {
  const first = dayOfText("1999-12-31")!;
  for (let day = first; day < first + 36_525; day += 1) expect(dayOfText(dayText(day))).toBe(day);
});

test("any other text, and a day that no month has, is none", () => {
  for (const text of ["3/4/26", "2026-3-4", "2026-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "4 March 2026", "", "26-03-04"])
    expect([text, dayOfText(text)]).toEqual([text, undefined]);
});
