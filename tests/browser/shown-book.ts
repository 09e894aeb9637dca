import type { Page } from "playwright-core";
import type { SelectedCell, SheetPage } from "../../src/workbook/page/sheet-page";
import type { CellValue } from "../../src/workbook/workbook";
import type { WorkbookData } from "../../src/workbook/workbook-data";
import type { Opened, OpenedPage } from "./opened-page";

/** The workbook that a page shows, as the page gives it to its tests. */
export type Shown = { readonly treadsheetBook: SheetPage };

/** When the page is ready to be typed into. */
export const ready = async (page: Page): Promise<void> => void (await page.waitForSelector("html[data-ready=yes]"));

/** The live sheet, opened and ready. */
export const openedSheet = async (pages: Opened, options: Parameters<Opened["open"]>[1] = {}): Promise<OpenedPage> => {
  const found = await pages.open("", options);
  await ready(found.page);
  return found;
};

/** Another workbook in the place of the one shown, as by a page that several tests share, so that none sees what another did. */
export const loaded = (page: Page, workbook: WorkbookData): Promise<void> =>
  page.evaluate(async (as) => {
    const book = (globalThis as unknown as Shown).treadsheetBook;
    book.load(as);
    await book.settled();
  }, workbook);

export const value = (page: Page, sheet: string, address: string): Promise<CellValue> =>
  page.evaluate(([name, cell]) => (globalThis as unknown as Shown).treadsheetBook.value(name, cell), [sheet, address] as const);

export const formula = (page: Page, sheet: string, address: string): Promise<string | undefined> =>
  page.evaluate(([name, cell]) => (globalThis as unknown as Shown).treadsheetBook.formula(name, cell), [sheet, address] as const);

export const data = (page: Page): Promise<WorkbookData> =>
  page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.data());

export const goTo = (page: Page, sheet: string, address: string): Promise<void> =>
  page.evaluate(([name, cell]) => (globalThis as unknown as Shown).treadsheetBook.select(name, cell), [sheet, address] as const);

export const settled = (page: Page): Promise<void> => page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.settled());

export const selected = (page: Page): Promise<SelectedCell | undefined> =>
  page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.selected());
