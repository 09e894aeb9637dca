/** @jest-environment ./tests/workbook/engine-environment.cjs */
import type { Page } from "playwright-core";
import { demo } from "../../src/sheets/demo/demo";
import type { CellValue, Workbook } from "../../src/workbook/workbook";
import { closeWorkbooks, openedData } from "../workbook/opened-workbook";
import { openedPages, type Opened } from "./opened-page";
import { openedSheet, type Shown } from "./shown-book";

const browserTime = 400_000;
/** The engine keeps twelve significant digits. */
const RELATIVE = 1e-11;

type Place = readonly [sheet: string, address: string];

const formulas: readonly Place[] = demo.flatMap(({ name, cells }) =>
  Object.entries(cells).flatMap(([address, { formula }]): Place[] => (formula === undefined ? [] : [[name, address]])),
);

let pages: Opened;
let page: Page;
let book: Workbook;

beforeAll(async () => {
  pages = await openedPages();
  ({ page } = await openedSheet(pages));
  book = await openedData({ version: 1, sheets: demo });
}, browserTime);

afterAll(async () => {
  closeWorkbooks();
  await pages?.close();
}, browserTime);

const inPage = (): Promise<CellValue[][][]> =>
  page.evaluate(
    (places) =>
      places.map(([sheet, address]) => (globalThis as unknown as Shown).treadsheetBook.spill(sheet, address).map((row) => [...row])),
    formulas.map(([sheet, address]) => [sheet, address] as [string, string]),
  );

const headless = (): CellValue[][][] => formulas.map(([sheet, address]) => book.spill(sheet, address).map((row) => [...row]));

const expectSame = (one: CellValue[][][], other: CellValue[][][]): void => {
  for (const [index, rows] of one.entries()) {
    const cells = other[index]?.flat() ?? [];
    expect(rows.flat()).toHaveLength(cells.length);
    for (const [place, cell] of rows.flat().entries()) {
      const twin = cells[place];
      if (typeof cell === "number" && typeof twin === "number")
        expect(Math.abs(cell - twin)).toBeLessThanOrEqual(RELATIVE * Math.max(1, Math.abs(twin)));
      else expect(cell).toEqual(twin);
    }
  }
};

test("the demo has the same values in the page and without one", async () => {
  expect(formulas.length).toBeGreaterThan(100);
  expectSame(await inPage(), headless());
}, browserTime);

test("and the same again with a 9 in run, and with fifteen risers", async () => {
  for (const [address, text] of [["B13", "9"], ["B12", "15"]] as const) {
    book.setCell("Job", address, text);
    await book.settled();
    await page.evaluate(([cell, typed]) => (globalThis as unknown as Shown).treadsheetBook.setCell("Job", cell, typed), [
      address,
      text,
    ] as const);
    await page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.settled());
    expectSame(await inPage(), headless());
  }
}, browserTime);
