/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { closeWorkbooks, openedWorkbook } from "../workbook/opened-workbook";
import { soak } from "./soak";

afterEach(closeWorkbooks);

// A thousand steps and more: npm run soak -- 1000.
test.each([1, 2, 3])("after each of 120 random steps, with reloads and kills, the sheets are what was typed (seed %d)", async (seed) => {
  const book = await openedWorkbook({ Sheet: { A1: 1 } });
  expect(await soak(book, 120, seed)).toBeUndefined();
});
