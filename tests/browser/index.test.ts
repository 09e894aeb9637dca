import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { Page } from "playwright-core";
import { catalogue } from "../../src/functions/catalogue";
import { openedPages, type Opened } from "./opened-page";

const browserTime = 120_000;
const dist = path.resolve(__dirname, "../../dist");
const examples = catalogue.reduce((count, declaration) => count + declaration.examples.length, 0);

let pages: Opened;

beforeAll(async () => {
  pages = await openedPages();
}, browserTime);

afterAll(() => pages?.close(), browserTime);

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const RUN = "The stair as it is planned: run, value";

/** A cell of a result table by the table's name, the first cell of its row, and its heading. */
const shown = (page: Page, caption: string, label: string, heading: string): Promise<string> =>
  page.evaluate(
    ([title, first, column]) => {
      const table = [...document.querySelectorAll("table")].find((each) => each.getAttribute("aria-label") === title);
      const headings = [...(table?.tHead?.rows[0]?.cells ?? [])].map((cell) => cell.textContent);
      const row = [...(table?.tBodies[0]?.rows ?? [])].find((each) => each.cells[0]?.textContent === first);
      return row?.cells[headings.indexOf(column ?? "")]?.textContent ?? `no ${first}, ${column} in ${title}`;
    },
    [caption, label, heading],
  );

const typed = async (page: Page, label: string, text: string): Promise<void> => {
  await field(page, label).click();
  await page.keyboard.press("Control+A");
  await page.keyboard.type(text);
};

test(
  "the page works the job and every example by the built functions, without a fault under its strict policy",
  async () => {
    const { page, faults } = await pages.open("");
    await page.waitForSelector("h1");
    expect(await page.locator(".count").textContent()).toBe(`${examples} examples, all as stated.`);
    expect(await page.locator(".step").count()).toBeGreaterThanOrEqual(8);
    expect(await page.locator(".invented").textContent()).toContain("Invented data");
    expect(await shown(page, "What to order", "oak blank 42", "quantity")).toBe("13");
    expect(await page.locator(".errors").textContent()).toBe("");
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "9 typed for the run moves board depth, rip and code row at once, and the cost of the blanks stays",
  async () => {
    const { page, faults } = await pages.open("");
    const cost = await shown(page, "What to order", "oak blank 42", "cost");
    await typed(page, RUN, "9");
    // By hand: 9 + 1 1/4 = 10 1/4, and 11 1/2 - 10 1/4 = 1 1/4; the code wants 10.
    expect(await shown(page, "The whole flight", "board depth", "value")).toContain("10.25");
    expect(await shown(page, "What to order", "oak blank 42", "ripped off")).toContain("1.25");
    expect(await shown(page, "What to order", "oak blank 42", "cost")).toBe(cost);
    expect(await shown(page, "Plan and finished rises against the code", "tread depth", "verdict")).toBe("fail");
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "a bad reading shows its sentence and marks its field, and putting the demo back asks first",
  async () => {
    const { page, faults } = await pages.open("");
    await typed(page, RUN, "9' 14\"");
    const sentence = "run: read \"9' 14\"\", with 14 inches after the feet; inches after feet stay under 12";
    await page.getByText(sentence).first().waitFor();
    expect(await field(page, RUN).getAttribute("aria-invalid")).toBe("true");
    await page.getByRole("button", { name: "Put the demo back" }).click();
    await page.getByRole("button", { name: "Keep what I typed" }).click();
    expect(await field(page, RUN).inputValue()).toBe("9' 14\"");
    await page.getByRole("button", { name: "Put the demo back" }).click();
    await page.getByRole("button", { name: "Put it back" }).click();
    expect(await field(page, RUN).inputValue()).toBe("10");
    expect(await page.getByText(sentence).count()).toBe(0);
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "an example that comes out otherwise is marked",
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
      await page.waitForSelector("h1");
      expect(await page.locator(".count").textContent()).toMatch(/^\d+ examples, \d+ differs? from what is stated\.$/);
      expect(await page.locator("table.examples .differs, .examples tr.differs").count()).toBeGreaterThan(0);
    } finally {
      await altered?.close();
      rmSync(copy, { recursive: true, force: true });
    }
  },
  browserTime,
);

test.each([[1366, 768], [390, 844]])(
  "at %d x %d nothing runs off the side of the page",
  async (width, height) => {
    const { page } = await pages.open("", { viewport: { width, height } });
    await page.waitForSelector("h1");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  },
  browserTime,
);
