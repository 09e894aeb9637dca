import type { Page } from "playwright-core";
import type { WorkbookData } from "../../src/workbook/workbook-data";
import type { SheetPage } from "../../src/workbook/page/sheet-page";
import type { CellValue } from "../../src/workbook/workbook";
import { openedPages, type Opened, type OpenedPage } from "./opened-page";
import { seriousFaults } from "./serious-faults";

const browserTime = 400_000;
const FIND = "Find a function by a trade word";

let pages: Opened;

beforeAll(async () => {
  pages = await openedPages();
}, browserTime);

afterAll(() => pages?.close(), browserTime);

type Shown = { readonly treadsheetBook: SheetPage };

/** One page for all, with the demo as it first stood. */
let shared: { readonly opened: OpenedPage; readonly demo: WorkbookData } | undefined;

const opened = async (): Promise<OpenedPage> => {
  if (shared === undefined) {
    const found = await pages.open("");
    await found.page.waitForSelector("html[data-ready=yes]");
    shared = { opened: found, demo: await data(found.page) };
  }
  const { page } = shared.opened;
  await page.evaluate(async (demo) => {
    const book = (globalThis as unknown as Shown).treadsheetBook;
    book.load(demo);
    await book.settled();
  }, shared.demo);
  await page.getByRole("tab", { name: "Functions" }).click();
  await page.getByLabel(FIND).fill("");
  await page.evaluate(() => {
    for (const part of document.querySelectorAll("details")) part.open = false;
  });
  return shared.opened;
};

const value = (page: Page, sheet: string, address: string): Promise<CellValue> =>
  page.evaluate(([name, cell]) => (globalThis as unknown as Shown).treadsheetBook.value(name ?? "", cell ?? ""), [sheet, address]);

const formula = (page: Page, sheet: string, address: string): Promise<string | undefined> =>
  page.evaluate(([name, cell]) => (globalThis as unknown as Shown).treadsheetBook.formula(name ?? "", cell ?? ""), [sheet, address]);

const data = (page: Page): Promise<WorkbookData> => page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.data());

const goTo = (page: Page, sheet: string, address: string): Promise<void> =>
  page.evaluate(([name, cell]) => (globalThis as unknown as Shown).treadsheetBook.select(name ?? "", cell ?? ""), [sheet, address]);

const setCell = (page: Page, sheet: string, address: string, text: string): Promise<void> =>
  page.evaluate(async ([name = "", cell = "", input = ""]) => {
    const book = (globalThis as unknown as Shown).treadsheetBook;
    book.setCell(name, cell, input);
    await book.settled();
  }, [sheet, address, text]);

const said = (page: Page, text: string): Promise<void> => page.locator(".report [role=status]", { hasText: text }).waitFor();

test(
  "a function is found by a trade word, inserted with its arguments laid out, and undone",
  async () => {
    const { page, faults } = await opened();
    await page.getByLabel(FIND).fill("kerf");
    expect(await page.locator("#function-CUTS").isVisible()).toBe(true);
    expect(await page.locator("#function-PITCH").isVisible()).toBe(false);
    await page.getByLabel(FIND).fill("escalator");
    await page.getByText("No function has these words in its help").waitFor();
    await page.getByLabel(FIND).fill("pitch");
    await page.locator("#function-PITCH > summary").click();
    const before = await data(page);
    await goTo(page, "Books", "T3");
    await page.getByRole("button", { name: "Insert PITCH at the selected cell" }).click();
    await said(page, "PITCH inserted at Books T3:U5: its arguments, and the formula in Books U5.");
    expect([await value(page, "Books", "T3"), await value(page, "Books", "T4"), await value(page, "Books", "T5")]).toEqual([
      "rise",
      "run",
      "PITCH",
    ]);
    expect(await formula(page, "Books", "U5")).toBe("=STAIR.PITCH(U3,U4)");
    // The declaration's first example: a rise of 7 on a run of 7.
    expect(await value(page, "Books", "U5")).toBe(45);
    await page.getByRole("button", { name: "Undo insert of PITCH" }).click();
    await said(page, "The insert of PITCH is undone: Books T3:U5 is as it was.");
    expect(await data(page)).toEqual(before);
    expect(await page.getByRole("button", { name: /^Undo insert/ }).isVisible()).toBe(false);
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "what stands in the way is asked about, left when refused by keyboard, and put back by undo when replaced",
  async () => {
    const { page } = await opened();
    await page.getByLabel(FIND).fill("pitch");
    await page.locator("#function-PITCH > summary").click();
    await setCell(page, "Survey", "L30", "mine");
    const before = await data(page);
    await goTo(page, "Survey", "L30");
    const insert = page.getByRole("button", { name: "Insert PITCH at the selected cell" });
    await insert.click();
    await page
      .getByRole("dialog", { name: /^PITCH takes Survey L30:M32\. Survey L30 is not empty\. Replace what stands there\?$/ })
      .waitFor();
    expect(await seriousFaults(page, "dialog")).toEqual([]);
    await page.keyboard.press("Escape");
    await said(page, "PITCH was not inserted: what stands at Survey L30 was left.");
    expect(await data(page)).toEqual(before);
    await insert.click();
    await page.getByRole("button", { name: "Replace it" }).click();
    await said(page, "PITCH inserted at Survey L30:M32");
    expect(await value(page, "Survey", "L32")).toBe("PITCH");
    await page.getByRole("button", { name: "Undo insert of PITCH" }).click();
    await said(page, "is as it was.");
    expect(await data(page)).toEqual(before);
  },
  browserTime,
);

test(
  "a ready sheet is added under a free name beside the user's own, with the sheets it reads, and nothing else changes",
  async () => {
    const { page, faults } = await opened();
    await page.evaluate(async () => {
      const book = (globalThis as unknown as Shown).treadsheetBook;
      book.load({ version: 1, sheets: [{ name: "Layout", cells: { A1: { value: "mine" } } }] });
      await book.settled();
    });
    await page.getByRole("tab", { name: "Sheets" }).click();
    await page.getByRole("button", { name: "Add Order" }).click();
    await said(page, "Added Order, and Job, Survey and Layout 2, which it reads. Its numbers are an invented example");
    const { sheets } = await data(page);
    expect(sheets.map(({ name }) => name)).toEqual(["Layout", "Order", "Job", "Survey", "Layout 2"]);
    expect(sheets[0]?.cells).toEqual({ A1: { value: "mine" } });
    // By hand: 13 blanks at 54 and one nosing at 19.50.
    expect(await value(page, "Order", "C4")).toBe(721.5);
    await page.getByRole("button", { name: "Add Books" }).click();
    await said(page, "Added Books, and Cut plan and Fit, which it reads. They read");
    expect(await value(page, "Books", "AB9")).toBe(13);
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "Why? follows the selection from error to error, and goes when the input is put right",
  async () => {
    const { page } = await opened();
    await setCell(page, "Survey", "I8", "9' 14\"");
    const why = page.locator(".why [role=status]");
    await goTo(page, "Survey", "C8");
    await page.locator(".why .sentence", { hasText: "Survey C8 shows #VALUE!: treadThickness: read \"9' 14\"\"" }).waitFor();
    await goTo(page, "Order", "A17");
    await page.locator(".why .sentence", { hasText: "Order A17 shows #VALUE!" }).waitFor();
    expect(await why.textContent()).toContain("tread thickness: read \"9' 14\"\"");
    await goTo(page, "Survey", "B8");
    await page.locator(".why .quiet", { hasText: "Select a cell with an error" }).waitFor();
    await goTo(page, "Survey", "C8");
    await page.locator(".why .sentence").waitFor();
    await setCell(page, "Survey", "I8", "1");
    await page.locator(".why .quiet").waitFor();
  },
  browserTime,
);

test(
  "Mend says what it found, and Recalculate all works everything out",
  async () => {
    const { page } = await opened();
    await page.getByRole("tab", { name: "Mend" }).click();
    await page.getByRole("button", { name: "Mend cells that show #NAME?" }).click();
    await said(page, "No cell with a function of STAIR shows #NAME?.");
    await setCell(page, "Books", "T3", "=STAIR.RISRES(108)");
    await page.getByRole("button", { name: "Mend cells that show #NAME?" }).click();
    await page.locator(".mended", { hasText: "Still #NAME?: Books T3." }).waitFor();
    await page.getByRole("button", { name: "Recalculate all" }).click();
    await said(page, "Every formula is recalculated.");
    expect(await value(page, "Order", "C4")).toBe(721.5);
  },
  browserTime,
);

test(
  "text of the user's own goes into the pane as text",
  async () => {
    const { page } = await opened();
    await setCell(page, "Survey", "I8", "<img src=x onerror=alert(1)>");
    await goTo(page, "Survey", "C8");
    await page.locator(".why .sentence", { hasText: "<img src=x onerror=alert(1)>" }).waitFor();
    expect(await page.locator("#pane img").count()).toBe(0);
  },
  browserTime,
);

// What is not of color is the same in both.
test.each([["light", "all"], ["dark", "color"]] as const)(
  "beside the sheet the pane has no serious fault for an accessibility checker in %s, by %s of its rules, in every part",
  async (colorScheme, rules) => {
    const { page } = await opened();
    await page.emulateMedia({ colorScheme });
    await setCell(page, "Survey", "I8", "9' 14\"");
    await goTo(page, "Survey", "C8");
    await page.locator(".why .sentence").waitFor();
    for (const tab of ["Functions", "Sheets", "Mend", "About"]) {
      await page.getByRole("tab", { name: tab }).click();
      expect([tab, await seriousFaults(page, "#pane", rules)]).toEqual([tab, []]);
    }
    await page.emulateMedia({ colorScheme: null });
  },
  browserTime,
);

test(
  "at 320 pixels nothing in the pane is wider than the pane, with every part open",
  async () => {
    const { page } = await opened();
    await page.setViewportSize({ width: 320, height: 900 });
    for (const tab of ["Functions", "Sheets", "Mend", "About"]) {
      await page.getByRole("tab", { name: tab }).click();
      const [needed, there] = await page.evaluate(() => {
        for (const part of document.querySelectorAll("details")) part.open = true;
        const part = document.querySelector("#pane");
        return [part?.scrollWidth ?? Infinity, part?.clientWidth ?? 0];
      });
      expect(needed).toBeLessThanOrEqual(there);
      expect(there).toBeLessThanOrEqual(320);
    }
  },
  browserTime,
);
