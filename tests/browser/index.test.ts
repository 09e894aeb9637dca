import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import { catalogue } from "../../src/functions/catalogue";
import { readyWorkbooks } from "../../src/sheets/ready-workbooks";
import type { CellValue } from "../../src/workbook/workbook";
import type { WorkbookData } from "../../src/workbook/workbook-data";
import { openedPages, type Opened, type OpenedPage } from "./opened-page";
import { seriousFaults } from "./serious-faults";
import { data, goTo, loaded, openedSheet, ready, settled, type Shown, value } from "./shown-book";

const browserTime = 400_000;
const dist = path.resolve(__dirname, "../../dist");
const examples = catalogue.reduce((count, declaration) => count + declaration.examples.length, 0);

let pages: Opened;

beforeAll(async () => {
  pages = await openedPages();
}, browserTime);

afterAll(() => pages?.close(), browserTime);

const opened = (context?: BrowserContext): Promise<OpenedPage> => openedSheet(pages, context === undefined ? {} : { context });

/** One page for the tests that need no visit of their own, with the demo as it first stood. */
let shared: { readonly opened: OpenedPage; readonly demo: WorkbookData } | undefined;

const demoPage = async (): Promise<OpenedPage> => {
  if (shared === undefined) {
    const found = await opened();
    shared = { opened: found, demo: await data(found.page) };
    return found;
  }
  await loaded(shared.opened.page, shared.demo);
  return shared.opened;
};

const spilled = (page: Page, sheet: string, anchor: string, label: string, heading: string): Promise<CellValue> =>
  page.evaluate(
    ([name, cell, first, column]) => {
      const [headings = [], ...rows] = (globalThis as unknown as Shown).treadsheetBook.spill(name ?? "", cell ?? "");
      return rows.find((row) => row[0] === first)?.[headings.indexOf(column ?? "")] ?? null;
    },
    [sheet, anchor, label, heading],
  );

const typed = async (page: Page, sheet: string, address: string, text: string, held: string | number = text): Promise<void> => {
  await goTo(page, sheet, address);
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
  // What was typed is there as it was typed, or a key was lost.
  await page.waitForFunction(
    ([name, cell, wanted]) => {
      const book = (globalThis as unknown as Shown).treadsheetBook;
      return (book.formula(name ?? "", cell ?? "") ?? String(book.value(name ?? "", cell ?? ""))) === wanted;
    },
    [sheet, address, String(held)],
  );
  await settled(page);
};

test(
  "the demo opens live, without a fault under its policy and without a request off this machine, and every example comes out as stated",
  async () => {
    const { page, faults } = await demoPage();
    await page.locator("#pane").getByRole("tab", { name: "About" }).click();
    expect(await page.locator(".examples-say").textContent()).toBe(`All ${examples} examples give the expected answer.`);
    await page.locator("#pane").getByRole("tab", { name: "Functions" }).click();
    expect(await page.locator(".function").count()).toBe(catalogue.length);
    expect(await page.locator(".count").count()).toBe(0);
    await page.locator("#pane").getByRole("tab", { name: "Job" }).click();
    expect(await value(page, "Survey", "A4")).toBe(106.125);
    expect(await page.textContent("#status")).toBe("The demo. What you change is kept in this browser.");
    const widthOf = async (selector: string): Promise<number> => (await page.locator(selector).boundingBox())?.width ?? 0;
    // The engine's line for formulas is a header of its own, which styles of the page's header once left 4 pixels.
    expect(await widthOf('#sheet [data-u-comp="formula-bar"]')).toBe(await widthOf("#sheet"));
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "9 typed for the run walks through the sheets, typed lengths are numbers, and nothing becomes a date",
  async () => {
    const { page, faults } = await demoPage();
    await typed(page, "Job", "B13", "9");
    // By hand: 9 + 1 1/4 = 10 1/4; 13 x 54 + 19.50 either way; IRC 2021 R311.7.5.2 wants 10.
    expect(await spilled(page, "Layout", "AA7", "board depth", "value")).toBe(10.25);
    expect(await value(page, "Order", "C4")).toBe(721.5);
    expect(await value(page, "Job", "B4")).toBe("✗ 1 FAIL");
    expect(await value(page, "Check", "E4")).toBe("✗ 1 FAIL");
    await typed(page, "Survey", "I9", "1/2", 0.5);
    // By hand: 7 5/16 + 1 - 1/2 = 7 13/16.
    expect(await value(page, "Survey", "C8")).toBe(7.8125);
    await typed(page, "Survey", "B8", "7-5/8", 7.625);
    // By hand: 7 5/8 + 1/2.
    expect(await value(page, "Survey", "C8")).toBe(8.125);
    expect(faults).toEqual([]);
  },
  browserTime,
);

/** A key of a person who types fast, in milliseconds. */
const KEY = 70;

/** Formulas and lengths row under row, each as it is typed. */
const ROWS_TYPED = ["=SUM(A1:A3)", "=STAIR.RISERS(108)", "7 9/16", "=MAX(1,T2,2)", "hello", "=STAIR.TAPE(7.8125)", "12 1/2"];

test(
  "what is typed at a person's pace stays, row after row, also while results arrive and over a formula that is worked out meanwhile",
  async () => {
    const { page } = await demoPage();
    const texts = (count: number): Promise<readonly string[]> =>
      page.evaluate((rows) => {
        const { treadsheetBook } = globalThis as unknown as Shown;
        const at = (row: number): string => `T${row + 1}`;
        return Array.from({ length: rows }, (_, row) => treadsheetBook.formula("Books", at(row)) ?? treadsheetBook.shown("Books", at(row)));
      }, count);
    await goTo(page, "Books", "T1");
    for (const text of ROWS_TYPED) {
      await page.keyboard.type(text, { delay: KEY });
      await page.keyboard.press("Enter");
    }
    await page.waitForFunction(() => (globalThis as unknown as Shown).treadsheetBook.selected()?.address === "T8");
    await settled(page);
    expect((await texts(ROWS_TYPED.length)).map((text) => text.trim())).toEqual(ROWS_TYPED);

    await goTo(page, "Books", "T4");
    await page.keyboard.type("7 9/", { delay: KEY });
    // The formula's own result is written into the cell that is typed over.
    await page.evaluate(async () => {
      const { treadsheetBook } = globalThis as unknown as Shown;
      treadsheetBook.recalculate();
      await treadsheetBook.settled();
    });
    await page.keyboard.type("16", { delay: KEY });
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => (globalThis as unknown as Shown).treadsheetBook.shown("Books", "T4").trim() === "7 9/16");
  },
  browserTime,
);

test(
  "an error cell shows its sentence in the line and under Why?, and loses it when the input is put right",
  async () => {
    const { page } = await demoPage();
    await typed(page, "Books", "T1", "=STAIR.FINISHED(Survey!B8:B21,Survey!I8)");
    await typed(page, "Survey", "I8", "9' 14\"");
    await goTo(page, "Books", "T1");
    const sentence = "treadThickness: read \"9' 14\"\", with 14 inches after the feet; inches after feet stay under 12";
    await page.locator("#cell").waitFor();
    expect(await page.textContent("#cell")).toContain(sentence);
    expect(await page.textContent(".why")).toContain(sentence);
    await typed(page, "Survey", "I8", "1");
    await goTo(page, "Books", "T1");
    await page.locator("#cell").waitFor({ state: "hidden" });
  },
  browserTime,
);

test(
  "spills grow and shrink under a SUM by keyboard, and one that is blocked says so",
  async () => {
    const { page } = await demoPage();
    await typed(page, "Books", "T1", "4");
    await typed(page, "Books", "T2", "=STAIR.STORYPOLE(31,T1,,,,FALSE)");
    await typed(page, "Books", "Z2", "=SUM(U2:U60)");
    // By hand: 31 / 4 = 7 3/4; 7 3/4 + 15 1/2 + 23 1/4 + 31.
    expect(await value(page, "Books", "Z2")).toBe(77.5);
    await typed(page, "Books", "T1", "6");
    // By hand: 31 / 6 x (1 + 2 + 3 + 4 + 5 + 6).
    expect(await value(page, "Books", "Z2")).toBeCloseTo(108.5, 9);
    await typed(page, "Books", "T1", "2");
    expect(await value(page, "Books", "Z2")).toBe(46.5);
    await typed(page, "Books", "U3", "mine");
    expect(await value(page, "Books", "T2")).toEqual({ error: "#SPILL!" });
    expect(await value(page, "Books", "Z2")).toBe(0);
  },
  browserTime,
);

test(
  "a spill is read by its own mark typed by keyboard, and 7.99 on a tape of sixteenths shows as 8",
  async () => {
    const { page } = await demoPage();
    await typed(page, "Books", "T1", "=STAIR.STORYPOLE(31,4,,,,FALSE)");
    await typed(page, "Books", "Z1", "=ROWS(T1#)");
    expect(await value(page, "Books", "Z1")).toBe(4);
    const shown = await page.evaluate(async () => {
      const book = (globalThis as unknown as Shown).treadsheetBook;
      book.load({
        version: 1,
        sheets: [{ name: "Tape", cells: { A1: { value: 7.99, format: "# ??/16" }, A2: { value: 7.6875, format: "# ??/16" } } }],
      });
      await book.settled();
      return [book.shown("Tape", "A1"), book.shown("Tape", "A2")];
    });
    expect(shown.map((text) => text.trim())).toEqual(["8", "7 11/16"]);
  },
  browserTime,
);

test(
  "names of our functions complete as they are typed, with help for their arguments",
  async () => {
    const { page } = await demoPage();
    await goTo(page, "Books", "T1");
    await page.keyboard.type("=STAIR.RISE");
    await page.getByText("STAIR.RISERS", { exact: true }).first().waitFor();
    expect(await page.getByText("STAIR.RISERHEIGHT", { exact: true }).count()).toBeGreaterThan(0);
    await page.keyboard.type("RS(");
    await page.getByText("totalRise").first().waitFor();
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
  },
  browserTime,
);

test(
  "cells that spilled are copied as they are shown",
  async () => {
    const { page } = await demoPage();
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await goTo(page, "Layout", "E9");
    await page.keyboard.press("Control+C");
    // The total rise as it was taped.
    const wanted = '106 1/8"';
    await page.waitForFunction(async (text) => (await navigator.clipboard.readText()) === text, wanted);
  },
  browserTime,
);

/** Pages of a PDF as the browser writes it: one object of type Page each. */
const pageCount = (pdf: Buffer): number => (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

const JOB_AND_DAY = /^Demo · \d{4}-\d{2}-\d{2}$/;

/** Nine points, as the style sheet's pixels: 96 of them to 72 points. */
const NINE_POINTS = (9 * 96) / 72;

test(
  "shop tickets print one page a batch of five steps, at Letter and A4, in text of nine points or more",
  async () => {
    const { page } = await demoPage();
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await page.getByRole("button", { name: "Print ▾" }).click();
    await page.getByRole("button", { name: "Shop tickets" }).click();
    const asked = page.getByRole("dialog", { name: "Shop tickets" });
    expect(await seriousFaults(page, "dialog")).toEqual([]);
    // A batch that is not chosen is not printed.
    await asked.getByLabel("Fit: risers, steps 6 to 10").uncheck();
    await asked.getByRole("button", { name: "Print", exact: true }).click();
    expect(await page.locator(".ticket h2").allTextContents()).not.toContain("Fit: risers, steps 6 to 10");
    await page.getByRole("button", { name: "Print ▾" }).click();
    await page.getByRole("button", { name: "Shop tickets" }).click();
    await asked.getByRole("button", { name: "Print", exact: true }).click();
    await page.emulateMedia({ media: "print" });
    // Five treads and fourteen risers: one batch and three; the first riser stands on the floor and has no notch.
    expect(await page.locator(".ticket h2").allTextContents()).toEqual([
      "Fit: treads, steps 1 to 5",
      "Fit: risers, step 1",
      "Fit: risers, steps 2, 3, 4 and 5",
      "Fit: risers, steps 6 to 10",
      "Fit: risers, steps 11 to 14",
    ]);
    // By hand, first tread: 10 + 1 1/4 deep; 38.1119 is 0.0131 short of 38 1/8, and so shy of it; its left end 1.3 degrees closed.
    const line = (act: string) => page.locator(".ticket").first().locator("tr", { hasText: act });
    expect(await line("RIP").locator("td").first().textContent()).toBe("11 1/438 1/8 shy long when done");
    expect(await line("SAW LEFT END").locator("td b").first().textContent()).toBe("1.3°");
    expect(await line("SAW LEFT END").locator("th").textContent()).toContain(
      "tilt 1.5°; near end of the cut to the right; top of the blade to the right, over the piece: underside longer",
    );
    for (const format of ["Letter", "A4"]) expect(pageCount(await page.pdf({ format }))).toBe(5);
    expect(await page.locator(".ticket .job").allTextContents()).toEqual(Array(5).fill(expect.stringMatching(JOB_AND_DAY)));
    const sizes = await page.evaluate(() =>
      [...document.querySelectorAll(".ticket h2, .ticket th, .ticket td, .ticket p")].map((each) =>
        parseFloat(getComputedStyle(each).fontSize),
      ),
    );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(NINE_POINTS);
    await page.emulateMedia({ media: null });
  },
  browserTime,
);

/** Between the margins of a Letter page that lies, in pixels: 11 inches less twice 12 mm, 96 pixels to the inch. */
const LYING_PAGE = 965;

/** Texts of the first columns that are not printed, and tables that are wider than a page or have no heading to repeat. */
const unprinted = (page: Page): Promise<{ readonly missing: readonly string[]; readonly faults: readonly (string | null)[] }> =>
  page.evaluate((width) => {
    const { treadsheetBook } = globalThis as unknown as Shown;
    const printed = [...document.querySelectorAll(".sheet-page")].map((one) => one.textContent ?? "");
    const missing = treadsheetBook.data().sheets.flatMap(({ name, cells }, index) =>
      Object.keys(cells)
        .filter((address) => /^[A-Z]\d+$/.test(address))
        .map((address) => treadsheetBook.shown(name, address).trim())
        .filter((text) => !(printed[index] ?? "").includes(text)));
    const faults = [...document.querySelectorAll(".sheet-page table")].flatMap((table) => {
      const isWide = table.getBoundingClientRect().right > width;
      const head = getComputedStyle(table.querySelector("thead") as Element).display;
      return isWide || head !== "table-header-group" ? [table.textContent] : [];
    });
    return { missing, faults };
  }, LYING_PAGE);

test(
  "every sheet prints whole under the job's name and the day: every text of its first columns, no table wider than the page, nine points",
  async () => {
    const { page } = await demoPage();
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await page.getByRole("button", { name: "Print ▾" }).click();
    await page.getByRole("button", { name: "All sheets", exact: true }).click();
    const before = page.viewportSize();
    await page.setViewportSize({ width: LYING_PAGE, height: 700 });
    await page.emulateMedia({ media: "print" });
    const sheets = await page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.sheetNames());
    const sections = page.locator(".sheet-page");
    expect(await sections.count()).toBe(sheets.length);
    expect(await sections.locator(".job").allTextContents()).toEqual(sheets.map(() => expect.stringMatching(JOB_AND_DAY)));
    expect(await unprinted(page)).toEqual({ missing: [], faults: [] });
    const sizes = await page.evaluate(() =>
      [...document.querySelectorAll(".sheet-page th, .sheet-page td, .sheet-page p")].map((each) =>
        parseFloat(getComputedStyle(each).fontSize)));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(NINE_POINTS);
    await page.emulateMedia({ media: null });
    if (before !== null) await page.setViewportSize(before);
    const saving = page.waitForEvent("download");
    await page.getByRole("button", { name: "Print ▾" }).click();
    await page.getByRole("button", { name: "Save this sheet as a web page" }).click();
    const saved = await saving;
    expect(saved.suggestedFilename()).toMatch(/^Demo \d{4}-\d{2}-\d{2}[.]html$/);
    const text = readFileSync(await saved.path(), "utf8");
    expect(text).toMatch(/^<!doctype html>/);
    expect(text).toContain("thead");
    expect(text).not.toMatch(/<script|<link|src=/);
  },
  browserTime,
);

test.each(["demo-stair-job-millimetres", "demo-l-shaped-stair-millimetres"])(
  "so does every sheet of %s, in millimetres",
  async (file) => {
    const { page } = await demoPage();
    const before = page.viewportSize();
    await loaded(page, { version: 1, sheets: readyWorkbooks.find((one) => one.file === file)?.sheets() ?? [] });
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await page.getByRole("button", { name: "Print ▾" }).click();
    await page.getByRole("button", { name: "All sheets", exact: true }).click();
    await page.setViewportSize({ width: LYING_PAGE, height: 700 });
    await page.emulateMedia({ media: "print" });
    const found = await unprinted(page);
    await page.emulateMedia({ media: null });
    if (before !== null) await page.setViewportSize(before);
    expect(found).toEqual({ missing: [], faults: [] });
  },
  browserTime,
);

test(
  "the order to the yard prints upright on one page, at Letter and A4, with a line for every price, remark and field",
  async () => {
    const { page } = await demoPage();
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await goTo(page, "Yard order", "A1");
    await page.getByRole("button", { name: "Print ▾" }).click();
    await page.getByRole("button", { name: "This sheet", exact: true }).click();
    await page.emulateMedia({ media: "print" });
    const order = page.locator(".sheet-page");
    expect(await order.evaluateAll((all) => all.map((one) => one.classList.contains("wide")))).toEqual([false]);
    // Six rows of goods, of two lines each; five fields of ours and five of the yard's, whose lines are longer.
    expect([await order.locator("td.byHand").count(), await order.locator("td.wideLine").count()]).toEqual([6 * 2 + 10, 10]);
    for (const format of ["Letter", "A4"]) expect(pageCount(await page.pdf({ format, preferCSSPageSize: false }))).toBe(1);
    await page.emulateMedia({ media: null });
  },
  browserTime,
);

test(
  "a note of Books is printed under its own row, where the row has no room for it",
  async () => {
    const { page } = await demoPage();
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await goTo(page, "Books", "A1");
    await page.getByRole("button", { name: "Print ▾" }).click();
    await page.getByRole("button", { name: "This sheet", exact: true }).click();
    const rows = await page.locator(".sheet-page table", { hasText: "share" }).first().locator("tbody tr").evaluateAll((all) =>
      all.map((row) => ({ text: [...row.children].map(({ textContent }) => textContent).join(" ").trim(), is: row.className })));
    const note = rows.findIndex(({ text }) => text.startsWith("on A-101: oak blank 42 28.34"));
    expect([rows[note]?.is, rows[note - 1]?.is]).toEqual(["under-row", "over-row"]);
    expect(rows[note - 1]?.text).toMatch(/^2026-03-02 .*40[.]00 freight .*A-101/);
    // The moves stand in one table, each row once.
    expect(rows.filter(({ text, is }) => is !== "under-row" && text.startsWith("2026-")).length).toBe(28);
    expect(await page.locator(".sheet-page table", { hasText: "2026-03-02" }).count()).toBe(1);
  },
  browserTime,
);

test(
  "an example that comes out otherwise is marked, and the sheet's own cells change with the built file",
  async () => {
    const copy = mkdtempSync(path.join(os.tmpdir(), "treadsheet-page-"));
    let altered: Opened | undefined;
    try {
      cpSync(dist, copy, { recursive: true });
      const file = path.join(copy, "functions.js");
      // The copy says 25.5 mm to the inch.
      writeFileSync(file, readFileSync(file, "utf8").replaceAll('"25.4"', '"25.5"'));
      altered = await openedPages(copy);
      const { page } = await altered.open("");
      await ready(page);
      await page.locator("#pane").getByRole("tab", { name: "Functions" }).click();
      expect(await page.locator(".count").textContent()).toMatch(/^\d+ of \d+ examples do(?:es)? not give the expected answer\.$/);
      expect(await page.locator("li.differs").count()).toBeGreaterThan(0);
      await typed(page, "Books", "T1", "=STAIR.TOMM(1)");
      expect(await value(page, "Books", "T1")).toBe(25.5);
    } finally {
      await altered?.close();
      rmSync(copy, { recursive: true, force: true });
    }
  },
  browserTime,
);
