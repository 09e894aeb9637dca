import { sortOrder } from "../../src/workbook/sort-order";
import type { CellValue } from "../../src/workbook/workbook";

const sorted = (isUp: boolean, ...values: readonly CellValue[]): readonly CellValue[] =>
  sortOrder(values, isUp).map((place) => values[place] ?? null);

// "Sort data in a range or table": numbers, text, FALSE before TRUE, errors; down the other way round; empty cells last either way.
test("kinds of values come in the order of a spreadsheet, empty ones last", () => {
  const error = { error: "#N/A" };
  expect(sorted(true, null, true, "oak", error, false, -2, 10, 9.5)).toEqual([-2, 9.5, 10, "oak", false, true, error, null]);
  expect(sorted(false, null, true, "oak", error, false, -2, 10, 9.5)).toEqual([error, true, false, "oak", 10, 9.5, -2, null]);
});

test("marks come by their number, whatever their capitals, and equals stay as they were", () => {
  expect(sorted(true, "T10", "t9", "T1", "Ash", "oak")).toEqual(["Ash", "oak", "T1", "t9", "T10"]);
  expect(sortOrder(["oak", 1, "OAK", 1, ""], true)).toEqual([1, 3, 0, 2, 4]);
  expect(sortOrder(["oak", 1, "OAK", 1, ""], false)).toEqual([0, 2, 1, 3, 4]);
});
