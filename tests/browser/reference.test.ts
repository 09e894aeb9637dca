import { catalogue } from "../../src/functions/catalogue";
import { openedPages, type Opened } from "./opened-page";

const browserTime = 400_000;

let pages: Opened;

beforeAll(async () => {
  pages = await openedPages();
}, browserTime);

afterAll(() => pages?.close(), browserTime);

test(
  "the reference opens under the strict policy, in its own style, with a part for every function",
  async () => {
    const { page, faults } = await pages.open("reference.html");
    for (const { id } of catalogue) expect(await page.locator(`h3#${id}`).count()).toBe(1);
    const lines = await page.evaluate(() => getComputedStyle(document.querySelector("td") as Element).borderBottomStyle);
    expect(lines).toBe("solid");
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "the codes have a page of their own, with a row for every record",
  async () => {
    const { page, faults } = await pages.open("codes.html");
    // 471 records of nineteen codes, see tests/solver/code/limits.test.ts.
    expect(await page.locator("tbody tr").count()).toBe(471);
    expect(await page.locator("h2").count()).toBe(19);
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "the reference fits a narrow screen",
  async () => {
    const viewport = { width: 360, height: 700 };
    const { page } = await pages.open("reference.html", { viewport });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
  },
  browserTime,
);
