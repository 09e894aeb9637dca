import type { CDPSession, Page } from "playwright-core";
import { openedPages, type Opened } from "./opened-page";
import { loaded, openedSheet, selected, type Shown } from "./shown-book";

const browserTime = 400_000;
/** A telephone, upright. */
const telephone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

let pages: Opened;

beforeAll(async () => {
  pages = await openedPages();
}, browserTime);

afterAll(() => pages?.close(), browserTime);

const rowOf = async (page: Page): Promise<number> => Number(/\d+$/.exec((await selected(page))?.address ?? "")?.[0]);

/** Text in every cell that a finger can come to. */
const ROWS = Object.fromEntries(
  ["A", "B", "C", "D", "E"].flatMap((column) =>
    Array.from({ length: 60 }, (_, row) => [`${column}${row + 1}`, { value: `row ${row + 1}` }] as const)),
);

interface Point {
  readonly x: number;
  readonly y: number;
}

/** One finger goes up the screen in short moves, as a person's does. */
const swipedUp = async (touch: CDPSession, { x, y }: Point, by: number): Promise<void> => {
  await touch.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [{ x, y }] });
  for (let moved = 0; moved <= by; moved += 10)
    await touch.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: [{ x, y: y - moved }] });
  await touch.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
};

test(
  "on a telephone a tap selects, one finger moves the sheet, two taps edit",
  async () => {
    const { page, faults } = await openedSheet(pages, telephone);
    await loaded(page, { version: 1, sheets: [{ name: "Job", cells: ROWS }] });
    const touch = await page.context().newCDPSession(page);
    const box = await page.locator("#sheet").boundingBox();
    const point = { x: 200, y: (box?.y ?? 0) + 300 };
    await page.touchscreen.tap(point.x, point.y);
    await page.waitForFunction(() => (globalThis as unknown as Shown).treadsheetBook.selected()?.address !== "A1");
    const before = await selected(page);
    await swipedUp(touch, point, 200);
    // A finger that moves the sheet selects nothing.
    expect(await selected(page)).toEqual(before);
    const row = await rowOf(page);
    // The same place on the screen is another row now; the sheet may take a moment to be drawn there.
    let [tapped, lastTapped] = [row, row];
    while (tapped <= row || tapped !== lastTapped) {
      await page.touchscreen.tap(point.x, point.y);
      [tapped, lastTapped] = [await rowOf(page), tapped];
    }
    // 200 pixels of rows that are 22 high, from the tenth to the last pixel that the finger went.
    expect(tapped - row).toBeGreaterThanOrEqual(8);
    expect(tapped - row).toBeLessThanOrEqual(10);

    const held = await selected(page);
    // The formula line's own mark for an edit that can be left.
    const leave = page.locator("[data-u-comp=formula-bar] .univer-text-red-600");
    while ((await leave.count()) === 0) {
      await page.touchscreen.tap(point.x, point.y);
      await page.touchscreen.tap(point.x, point.y);
    }
    await page.keyboard.type(" here");
    await page.keyboard.press("Enter");
    const { address = "", value } = held ?? {};
    // An edit begins with what stands in the cell, where a key on a selected one would have begun anew.
    await page.waitForFunction(([cell = "", text]) => {
      const book = (globalThis as unknown as Shown).treadsheetBook;
      return book.value("Job", cell) === text;
    }, [address, `${value} here`]);
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "on a small screen the pane is a drawer with the sheet's answers, and goes when it shows a cell",
  async () => {
    const { page, faults } = await openedSheet(pages, telephone);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(telephone.viewport.width);
    const pane = page.locator("#pane");
    expect(await pane.isVisible()).toBe(false);
    await page.getByRole("button", { name: "Help" }).tap();
    await pane.waitFor();
    // The price of the demo, as by tests/sheets.
    await pane.locator(".shown-answers dt", { hasText: "price" }).waitFor();
    expect(await pane.locator(".shown-answers dt:has-text(\"price\") + dd").textContent()).toBe("3,649.24 $ before tax");
    await pane.getByRole("button", { name: "Show Job B13" }).tap();
    await pane.waitFor({ state: "hidden" });
    expect((await selected(page))?.address).toBe("B13");
    await page.getByRole("button", { name: "Help" }).tap();
    await page.getByRole("button", { name: "Close", exact: true }).tap();
    await pane.waitFor({ state: "hidden" });
    expect(faults).toEqual([]);
  },
  browserTime,
);
