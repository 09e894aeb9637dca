import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { textWidth } from "../../src/drawing/cards/letter-widths";
import { openedPages, type Opened } from "./opened-page";
import { seriousFaults } from "./serious-faults";
import { goTo, openedSheet } from "./shown-book";

const browserTime = 400_000;

let pages: Opened;

beforeAll(async () => {
  pages = await openedPages();
}, browserTime);

afterAll(() => pages?.close(), browserTime);

/** Pages of a PDF as the browser writes it: one object of type Page each. */
const pageCount = (pdf: Buffer): number => (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

const CARDS = "Cut cards, two to a page";

const printCards = async (page: Page, unticked: readonly string[], button = "Print", form = CARDS): Promise<void> => {
  await page.getByRole("button", { name: "Print ▾" }).click();
  await page.getByRole("button", { name: "Shop tickets" }).click();
  const asked = page.getByRole("dialog", { name: "Shop tickets" });
  await asked.getByRole("radio", { name: form }).check();
  expect(await seriousFaults(page, "dialog")).toEqual([]);
  for (const batch of unticked) await asked.getByLabel(batch).uncheck();
  await asked.getByRole("button", { name: button, exact: true }).click();
};

interface Measured {
  readonly text: string;
  readonly size: number;
  readonly isBold: boolean;
  readonly width: number;
}

/** Every text of every card as the browser sets it, in millimetres. */
const measured = (page: Page): Promise<readonly Measured[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<SVGTextElement>(".cut-cards text")].map((each) => ({
      text: each.textContent ?? "",
      size: Number(each.getAttribute("font-size")),
      isBold: each.getAttribute("font-weight") === "700",
      width: each.getComputedTextLength(),
    })),
  );

test(
  "cut cards print two to a page, at Letter and A4, and no letter is wider than it was measured",
  async () => {
    const { page, faults } = await openedSheet(pages, {});
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await printCards(page, []);
    // Five treads and fourteen risers.
    expect(await page.locator(".cut-cards svg").count()).toBe(19);
    expect(await page.locator(".ticket").count()).toBe(0);
    await page.emulateMedia({ media: "print" });
    for (const format of ["Letter", "A4"]) expect(pageCount(await page.pdf({ format }))).toBe(10);
    const sized = await measured(page);
    expect(sized.filter(({ width }) => width > 0).length).toBeGreaterThan(1000);
    // Laid out with no overlap at the measured widths, so with none at narrower ones.
    expect(sized.filter(({ text, size, isBold, width }) => width > textWidth(text, size, isBold) * 1.005)).toEqual([]);
    await page.emulateMedia({ media: null });
    await printCards(page, ["Fit: treads, steps 1 to 5"]);
    expect(await page.locator(".cut-cards svg").count()).toBe(14);
    expect(await page.locator(".cut-cards svg").first().getAttribute("aria-label")).toBe("Cut card: step 1, riser");
    // What each is cut from stands in the demo's cut plan, a riser a board.
    const texts = await page.locator(".cut-cards text").allTextContents();
    expect(texts.filter((text) => /^(poplar|rack) .*, board \d+ of the cut plan$/.test(text))).toHaveLength(14);
    // Steps that are chosen, as cards and as the page of their batch, with the same words under its title.
    const RISERS = ["Fit: risers, step 1", "Fit: risers, steps 2, 3, 4 and 5", "Fit: risers, steps 6 to 10", "Fit: risers, steps 11 to 14"];
    const others = [...RISERS, ...[1, 4, 5].map((step) => `Fit: treads: ${step}`)];
    await printCards(page, others);
    const shown = page.locator(".cut-cards svg");
    expect(await shown.evaluateAll((cards) => cards.map((card) => card.getAttribute("aria-label")))).toEqual([
      "Cut card: step 2, tread", "Cut card: step 3, tread",
    ]);
    const caution = (await page.locator('.cut-cards [data-part="caution"]').first().textContent()) ?? "";
    await printCards(page, others, "Print", "Batch pages, one for each batch");
    expect(await page.locator(".ticket h2").allTextContents()).toEqual(["Fit: treads, steps 2 and 3"]);
    expect(await page.locator(".ticket thead th").allTextContents()).toEqual(["act", "STEP 2", "STEP 3"]);
    expect(caution).not.toBe("");
    expect(await page.locator(".ticket h2 + p").textContent()).toContain(caution);
    // The same cards as a page of its own, for whoever prints elsewhere.
    const saving = page.waitForEvent("download");
    await printCards(page, ["Fit: treads, steps 1 to 5"], "Save as a web page");
    const saved = await page.context().newPage();
    await saved.setContent(readFileSync(await (await saving).path(), "utf8"));
    expect(await saved.locator(".cut-cards svg text").count()).toBeGreaterThan(700);
    for (const format of ["Letter", "A4"]) expect(pageCount(await saved.pdf({ format }))).toBe(7);
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "the pane prints the cut cards of the marks selected, card by card those that the tickets print",
  async () => {
    const { page, faults } = await openedSheet(pages, {});
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    const RISERS = ["Fit: risers, step 1", "Fit: risers, steps 2, 3, 4 and 5", "Fit: risers, steps 6 to 10", "Fit: risers, steps 11 to 14"];
    await printCards(page, RISERS);
    const sections = page.locator("#tickets .cut-cards");
    const tickets = await sections.evaluateAll((all) => all.map((one) => one.innerHTML));
    // Five treads, two to a page.
    expect(tickets).toHaveLength(3);
    await page.evaluate(() => document.querySelector("#tickets")?.replaceChildren());
    await goTo(page, "Fit", "CA8");
    await page.getByRole("tab", { name: "Drawings" }).click();
    await page.getByRole("button", { name: "Print cut cards" }).click();
    expect(await sections.evaluateAll((all) => all.map((one) => one.innerHTML))).toEqual(tickets);
    // Where the page prints there is no need to save it first.
    expect(await page.getByRole("button", { name: "Save cut cards as web page" }).count()).toBe(0);
    expect(faults).toEqual([]);
  },
  browserTime,
);
