import { readdirSync } from "node:fs";
import path from "node:path";
import type { Page } from "playwright-core";
import { FIGURES } from "../../src/drawing/figures";
import { DRAWN } from "../../src/drawing/plans/drawn-call";
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

const documents = readdirSync(path.resolve(__dirname, "../../docs")).filter((name) => name.endsWith(".md"));
const generated = ["reference.html", "codes.html", ...documents.map((name) => name.replace(/[.]md$/, ".html"))];

/** Backticks, words on two lines, pictures that cannot be read or are cut, and how far the page reaches to the right. */
const looked = (page: Page) =>
  page.evaluate((longestName) => {
    const [ticks, broken, pictures]: [string[], string[], string[]] = [[], [], []];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const range = document.createRange();
    let words = 0;
    for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
      const text = node.nodeValue ?? "";
      if (text.includes("`") && node.parentElement?.closest("pre, code") === null) ticks.push(text);
      // In a cell a word as long as the name of a code is one with its hyphens; what is longer, and a sentence's compound, part at them.
      const isCell = node.parentElement?.closest("td, th") !== null;
      for (const { 0: joined, index: start } of text.matchAll(/[\p{L}\p{N}][\p{L}\p{N}.'-]*/gu)) {
        for (const { 0: word, index } of joined.matchAll(isCell && joined.length <= longestName ? /.+/g : /[^-]+/g)) {
          range.setStart(node, start + index);
          range.setEnd(node, start + index + word.length);
          words += 1;
          if (new Set([...range.getClientRects()].map(({ top }) => top)).size > 1) broken.push(`${word} in ${text}`);
        }
      }
    }
    const isInside = (inner: DOMRect, outer: DOMRect): boolean =>
      inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom;
    for (const drawn of document.querySelectorAll("svg")) {
      const says = drawn.getAttribute("aria-label") ?? "";
      const box = drawn.getBoundingClientRect();
      if (drawn.getAttribute("role") !== "img" || says === "") pictures.push(`no words: ${drawn.outerHTML.slice(0, 80)}`);
      if (box.left < 0 || box.right > document.documentElement.clientWidth) pictures.push(`beyond the page: ${says}`);
      if (getComputedStyle(drawn).stroke !== getComputedStyle(document.body).color) pictures.push(`not in the page's ink: ${says}`);
      for (const word of drawn.querySelectorAll("text"))
        if (!isInside(word.getBoundingClientRect(), box)) pictures.push(`cut: ${word.textContent} in ${says}`);
    }
    return { words, ticks, broken, pictures, width: document.documentElement.scrollWidth };
  }, Math.max(...PROFILES.map(({ id }) => id.length)));

test.each([
  [1366, 768, "light"],
  [390, 844, "dark"],
] as const)(
  "at %i by %i, %s, no page shows a backtick, parts a word, cuts a picture or is wider than the screen",
  async (width, height, colorScheme) => {
    const context = await pages.context({ viewport: { width, height }, colorScheme });
    for (const file of generated) {
      const { page } = await pages.open(file, { context });
      const { words, ...faults } = await looked(page);
      expect(words).toBeGreaterThan(100);
      expect([file, faults]).toEqual([file, { ticks: [], broken: [], pictures: [], width }]);
      await page.close();
    }
    await context.close();
  },
  browserTime,
);

/** What 12 mm margins leave of the smaller sheet, A4 upright and Letter lying, at 96 dots to the inch: 186 mm and 255 mm. */
const UPRIGHT = 703;
const LYING = 965;

test.each([
  ["reference.html", UPRIGHT],
  ["codes.html", LYING],
])(
  "%s printed fits its sheet, with no word parted and no picture cut",
  async (file, width) => {
    const { page } = await pages.open(file, { viewport: { width, height: 900 }, colorScheme: "dark" });
    await page.emulateMedia({ media: "print" });
    const { words, ...faults } = await looked(page);
    expect(words).toBeGreaterThan(100);
    expect(faults).toEqual({ ticks: [], broken: [], pictures: [], width });
    const orientation = await page.evaluate(() => getComputedStyle(document.querySelector("main") as Element).getPropertyValue("page"));
    expect(orientation).toBe(width === LYING ? "lying" : "auto");
  },
  browserTime,
);

test(
  "a function that has pictures shows them in its part, each with its words below it",
  async () => {
    const { page } = await pages.open("reference.html");
    const shown = await page.evaluate(() => {
      const found: Record<string, (string | null)[]> = {};
      let part = "";
      for (const each of document.querySelectorAll("h2, h3, figcaption")) {
        if (each.tagName !== "FIGCAPTION") part = each.id;
        else (found[part] ??= []).push(each.textContent);
      }
      return found;
    });
    const drawn = (id: string): readonly (string | null)[] => (shown[id] ?? []).filter((says) => says?.startsWith("Drawing of the "));
    const figures = Object.entries(shown).map(([id, says]) => [id, says.filter((one) => !drawn(id).includes(one))]);
    expect(Object.fromEntries(figures.filter(([, says]) => (says ?? []).length > 0)))
      .toEqual(Object.fromEntries(Object.entries(FIGURES).map(([id, all]) => [id, all.map(({ says }) => says)])));
    // Every function that has drawings shows some, of its first example that has them.
    expect(Object.keys(shown).filter((id) => drawn(id).length > 0).sort()).toEqual([...DRAWN].sort());
    expect(drawn("LAYOUT")).toEqual(
      ["Stair elevation", "Stringer", "Closed skirt", "Open skirt"].map((title) => `Drawing of the first example: ${title}.`),
    );
  },
  browserTime,
);
