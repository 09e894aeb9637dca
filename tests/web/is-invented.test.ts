import { demo } from "../../src/sheets/demo/demo";
import { isInvented } from "../../src/web/is-invented";
import { DATA_VERSION, type WorkbookData } from "../../src/workbook/workbook-data";

const book = (sheets: WorkbookData["sheets"]): WorkbookData => ({ version: DATA_VERSION, sheets });

test("the demo is invented, and so is a workbook with its first sheet among others", () => {
  expect(isInvented(book(demo))).toBe(true);
  expect(isInvented(book([{ name: "Stairs", cells: {} }, ...demo.slice(0, 1)]))).toBe(true);
});

test("a workbook of one's own is not", () => {
  expect(isInvented(book([]))).toBe(false);
  const cells = { A1: { value: "Kitchen stair" }, A2: { value: 14 }, A3: { formula: "=A2" } };
  expect(isInvented(book([{ name: "Stairs", cells }]))).toBe(false);
});
