/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { closeWorkbooks, openedWorkbook } from "./opened-workbook";

afterEach(closeWorkbooks);

test.each([
  ["calls within each other", `=${"ABS(".repeat(3000)}1${")".repeat(3000)}`],
  ["a chain of sums", `=${"1+".repeat(4000)}1`],
])("%s that the engine cannot work out stay as they were typed, and the sheet goes on", async (_, formula) => {
  const book = await openedWorkbook({ Job: { B1: 2, C1: "=B1*2" } });
  book.setCell("Job", "A1", formula);
  book.setCell("Job", "B1", 3);
  await book.settled();
  expect([book.value("Job", "A1"), book.formula("Job", "A1"), book.value("Job", "C1")]).toEqual([formula, undefined, 6]);
  expect(book.stored("Job", "A1")).toEqual({ value: formula });
});
