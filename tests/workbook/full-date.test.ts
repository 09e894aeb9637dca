import { parseDate } from "../../src/workbook/full-date";

test.each(["1/2", "3-4", "5-8", "12/25", "5 Mar", "1-2-26", "7/8/26", "7-5/8"])("%s is no date", (text) => {
  expect(parseDate(text)).toBeNull();
});

// Hand: 1 January 2026 is serial 46023 (see typed-cell.test.ts), so 2 January is 46024 and 4 March, 31 + 28 + 3 days after the first,
// 46085.
test.each([
  ["2026-01-02", 46_024],
  ["3/4/2026", 46_085],
])("%s is a date", (text, day) => {
  expect(parseDate(text)).toMatchObject({ v: day });
});
