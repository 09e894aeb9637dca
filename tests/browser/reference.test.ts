import { catalogue } from "../../src/functions/catalogue";
import { PROFILES } from "../../src/solver/code/profiles";
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
    const rows = await page.evaluate(() => {
      const found: Record<string, number> = {};
      let code = "";
      for (const part of document.querySelectorAll("h2, tbody tr")) {
        if (part.tagName === "H2") code = part.id;
        else found[code] = (found[code] ?? 0) + 1;
      }
      return found;
    });
    for (const { id, limits, outOfScope } of PROFILES) expect([id, rows[id]]).toEqual([id, limits.length + outOfScope.length]);
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
