import type { Page } from "playwright-core";
import { readingsText } from "../../src/readings/readings-text";
import type { ReadingSet, ReadStep } from "../../src/readings/reading-set";
import { demo } from "../../src/sheets/demo/demo";
import { inventedJob } from "../../src/sheets/demo/invented-job";
import { ownJob } from "../../src/sheets/job/own-job";
import { furtherStair, withGathered } from "../../src/sheets/job/started-job";
import type { CellData, SheetData } from "../../src/sheets/sheet-data";
import { openedPages, type Opened } from "./opened-page";
import { seriousFaults } from "./serious-faults";
import { data, loaded, openedSheet, settled, type Shown, value } from "./shown-book";

const browserTime = 400_000;

let pages: Opened;
beforeAll(async () => {
  pages = await openedPages();
}, browserTime);
afterAll(() => pages?.close(), browserTime);

const step = (number: number, read: Readonly<Record<string, number>>, kept = false): ReadStep => ({ step: number, read, kept });

const set = (job: string, treads: readonly ReadStep[], risers: readonly ReadStep[] = []): ReadingSet => ({
  job, unit: "in", tape: 16, taken: "2026-03-04", treads, risers,
});

const dialog = (page: Page) => page.locator("dialog.taking-in");

const asked = async (page: Page): Promise<void> => {
  await page.getByRole("button", { name: "Open …" }).click();
  await page.getByRole("button", { name: "Take in readings …" }).click();
  await dialog(page).waitFor();
};

/** As out of a message: by the clipboard. */
const pasted = async (page: Page, text: string): Promise<void> => {
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
  const area = dialog(page).getByRole("textbox", { name: "Readings as text" });
  await area.focus();
  await page.keyboard.press("ControlOrMeta+A");
  await page.keyboard.press("ControlOrMeta+V");
};

/** The lines of the table of differences, cell by cell. */
const lines = async (page: Page): Promise<readonly (readonly string[])[]> =>
  page.locator("dialog.taking-in tbody tr").evaluateAll((rows) =>
    rows.map((row) => [...row.children].map((cell) => (cell.textContent ?? "").replaceAll("\u00a0", " ").trim())));

/** What the page says once it took the readings in. */
const tookIn = async (page: Page, words: string): Promise<string> => {
  await dialog(page).getByRole("button", { name: words }).click();
  const status = page.locator("#status", { hasText: "Took" });
  await status.waitFor();
  expect(await dialog(page).count()).toBe(0);
  return status.innerText();
};

const typedInto = (page: Page, sheet: string, cells: Readonly<Record<string, string>>): Promise<void> =>
  page.evaluate(async ([name, typed]) => {
    const book = (globalThis as unknown as Shown).treadsheetBook;
    for (const [address, text] of Object.entries(typed)) book.setCell(name, address, text);
    await book.settled();
  }, [sheet, cells] as const);

const spill = (page: Page, sheet: string, address: string): Promise<unknown> =>
  page.evaluate(([name, cell]) => (globalThis as unknown as Shown).treadsheetBook.spill(name, cell), [sheet, address] as const);

const cellsOf = async (page: Page, sheet: string): Promise<SheetData["cells"] | undefined> =>
  (await data(page)).sheets.find(({ name }) => name === sheet)?.cells;

const book = (sheets: readonly SheetData[]) => ({ version: 1 as const, sheets });

// The demo's first tread has 36 3/4 at the back, and 10, 36 5/8, 38 3/16 and 37 7/8 beside it. By hand: 36 7/8 - 36 3/4 = 1/8. There is no
// tread 6, nor a row for one.
const OF_DEMO = set(inventedJob.job, [
  step(1, { run: 10, back: 36.875, front: 36.625, diagonal: 38.1875, secondDiagonal: 37.875 }),
  step(2, { run: 10, back: 36.8125, front: 36.5 }, true),
  step(6, { run: 10, back: 36.75 }),
]);

test(
  "on the demo the differences are shown first, what is ticked is written as if typed, and one undo takes it back",
  async () => {
    const { page, faults } = await openedSheet(pages);
    const before = await cellsOf(page, "Fit");
    const answers = await spill(page, "Fit", "AA8");
    await asked(page);
    expect(await seriousFaults(page, "dialog.taking-in")).toEqual([]);
    await pasted(page, readingsText(OF_DEMO));
    await dialog(page).getByRole("table").waitFor();
    expect(await lines(page)).toEqual([
      ["tread 1", "back", "36 3/4", "36 7/8", "1/8 longer"],
      ["tread 2did not close, kept as read", "front", "36 5/8", "36 1/2", "1/8 shorter"],
      ["tread 6", "2 readings", "–", "run 10, back 36 3/4", "has no row in the sheet; insert one in the table and write the step in it"],
    ]);
    const words = await dialog(page).innerText();
    // Four of the first tread and two of the second stand in the sheet so.
    expect(words).toContain("Of 10 readings 2 differ, 6 are the same and not listed, 2 cannot be taken in.");
    expect(words).toContain("Did not close at the stair, kept as read: tread 2. Read again before cutting.");
    expect(words).not.toContain("this stair is of");
    expect(await seriousFaults(page, "dialog.taking-in")).toEqual([]);
    await dialog(page).getByRole("checkbox", { name: "tread 2" }).uncheck();
    expect(await tookIn(page, "Take in 1 reading")).toBe(
      "Took 1 reading into Fit. Ctrl+Z takes all back. Changed: tread 1, back was 36 3/4, now 36 7/8: 1/8 longer. Left out: tread 2. " +
        "Not taken in: tread 6, run; tread 6, back.",
    );
    expect(await value(page, "Fit", "C9")).toBe(36.875);
    expect(await value(page, "Fit", "D10")).toBe(36.625);
    const [taken, cells] = [await spill(page, "Fit", "AA8"), await cellsOf(page, "Fit")];
    expect(taken).not.toEqual(answers);
    await page.keyboard.press("ControlOrMeta+Z");
    await settled(page);
    expect(await cellsOf(page, "Fit")).toEqual(before);
    expect(await spill(page, "Fit", "AA8")).toEqual(answers);
    await typedInto(page, "Fit", { C9: "36 7/8" });
    expect(await spill(page, "Fit", "AA8")).toEqual(taken);
    expect(await cellsOf(page, "Fit")).toEqual(cells);
    expect(faults).toEqual([]);
  },
  browserTime,
);

const ASKED = { job: "Mine", unit: "in", code: "irc-2021", totalRise: 105, run: 10, width: 24, openEnd: "none" } as const;

/** Sizes that a fit asks for, typed beside their labels on Layout, and the thickness of a tread on Survey. */
const withSizes = (sheets: readonly SheetData[], sizes: Readonly<Record<string, number>>): readonly SheetData[] =>
  sheets.map((sheet) => {
    const typed = Object.entries(sheet.cells).flatMap(([address, { value: label }]): readonly (readonly [string, CellData])[] => {
      const size = typeof label === "string" ? sizes[label] : undefined;
      const beside = address.replace(/^A/, "B").replace(/^H/, "I");
      const cell = sheet.cells[beside];
      const isAsked = size !== undefined && beside !== address && cell !== undefined && cell.formula === undefined;
      return isAsked ? [[beside, { ...cell, value: size }]] : [];
    });
    return typed.length === 0 ? sheet : { ...sheet, cells: { ...sheet.cells, ...Object.fromEntries(typed) } };
  });

const OWN = withSizes(ownJob(ASKED), {
  nosing: 1, "riser thickness": 0.75, overhang: 1, "return width": 1, "tread thickness": 1, "run past": 0, lap: 1, "skirt thickness": 0.75,
});

// By hand: 10, 24 and 26 are twice 5, 12 and 13, so the opening is square, 24 wide, and both diagonals close.
const SQUARE = { run: 10, back: 24, front: 24, diagonal: 26, secondDiagonal: 26 };
// Half a mark of the tape: 24 1/32.
const OF_OWN = set("Mine", [step(1, SQUARE), step(3, { ...SQUARE, back: 24.03125 })], [
  step(2, { height: 7.5, top: 24, bottom: 24 }),
]);

test(
  "a blank job of one's own takes a whole set, which its fits read, and a set taken in twice is the same",
  async () => {
    const { page, faults } = await openedSheet(pages);
    await loaded(page, book(OWN));
    const before = await cellsOf(page, "Fit");
    await asked(page);
    // As a message sends it on.
    await pasted(page, `Hello,\n${readingsText(OF_OWN).replaceAll("\t", "    ").replace(/^/gm, "> ")}\nRegards`);
    await dialog(page).getByRole("table").waitFor();
    expect(await lines(page)).toEqual([
      ["tread 1", "5 readings", "–", "run 10, back 24, front 24, diagonal 26, second diagonal 26", "new"],
      ["tread 3", "5 readings", "–", "run 10, back 24 1/32, front 24, diagonal 26, second diagonal 26", "new"],
      ["riser 2", "3 readings", "–", "height 7 1/2, top 24, bottom 24", "new"],
    ]);
    await tookIn(page, "Take in 13 readings");
    // Rows 9 and 11 hold treads 1 and 3, row 37 riser 2.
    const fitted = (await spill(page, "Fit", "AA8")) as readonly (readonly unknown[])[];
    const column = (heading: string): number => (fitted[0] ?? []).indexOf(heading);
    expect([fitted[1]?.[column("step")], fitted[1]?.[column("length")], fitted[1]?.[column("closure")]]).toEqual([1, 24, 0]);
    expect(await value(page, "Fit", "C11")).toBe(24.03125);
    const [taken, cells, risers] = [fitted, await cellsOf(page, "Fit"), await spill(page, "Fit", "AA40")];
    await page.keyboard.press("ControlOrMeta+Z");
    await settled(page);
    expect(await cellsOf(page, "Fit")).toEqual(before);
    await typedInto(page, "Fit", {
      B9: "10", C9: "24", D9: "24", E9: "26", F9: "26", B11: "10", C11: "24 1/32", D11: "24", E11: "26", F11: "26",
      B37: "7 1/2", C37: "24", D37: "24",
    });
    expect(await cellsOf(page, "Fit")).toEqual(cells);
    expect(await spill(page, "Fit", "AA8")).toEqual(taken);
    expect(await spill(page, "Fit", "AA40")).toEqual(risers);
    await asked(page);
    await pasted(page, readingsText(OF_OWN));
    await dialog(page).getByText("All 13 readings are the same and not listed.").waitFor();
    expect(await dialog(page).getByRole("button", { name: "Take in", exact: true }).isDisabled()).toBe(true);
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "what is no set, is in the other unit or of another job is said, and a cancel writes nothing",
  async () => {
    const { page, faults } = await openedSheet(pages);
    await loaded(page, book(OWN));
    const before = await data(page);
    await asked(page);
    const fault = dialog(page).getByRole("alert");
    const takeIn = dialog(page).getByRole("button", { name: /^Take in/ });
    const text = readingsText(OF_OWN);
    await pasted(page, "36 5/8, 36 3/4 and 38");
    expect(await fault.innerText()).toBe(
      'No line reads "Treadsheet readings 1", with which readings begin; paste the whole text as the telephone gave it.',
    );
    await pasted(page, text.replace("24 1/32", "24 1/0"));
    expect(await fault.innerText()).toBe('Line 10: step 3, back: read "24 1/0", a fraction over 0; write the fraction again.');
    const marked = await dialog(page).locator("textarea").evaluate((area: HTMLTextAreaElement) =>
      area.value.slice(area.selectionStart, area.selectionEnd));
    expect(marked).toMatch(/^3\t10\t24 1\/0\t/);
    expect(await takeIn.isDisabled()).toBe(true);
    await pasted(page, readingsText({ ...set("Mine", [step(1, { back: 610 })]), unit: "mm", tape: 1 }));
    expect(await fault.innerText()).toBe(
      "The readings are in millimetres and Fit is in inches: a reading stays as the tape gave it, so choose a stair in millimetres or " +
        "read again.",
    );
    expect(await takeIn.isDisabled()).toBe(true);
    await dialog(page).getByText("Text of the readings").click();
    await pasted(page, text.replace("Mine", "Another"));
    await dialog(page).getByText("The readings are of “Another”, and this stair is of “Mine”.").waitFor();
    expect(await fault.innerText()).toBe("");
    expect(await takeIn.isEnabled()).toBe(true);
    await dialog(page).getByRole("button", { name: "Cancel" }).click();
    expect(await data(page)).toEqual(before);
    await loaded(page, book([{ name: "Mine", cells: {} }]));
    await page.getByRole("button", { name: "Open …" }).click();
    await page.getByRole("button", { name: "Take in readings …" }).click();
    await page.getByText("This workbook has no sheet Fit to take readings into.").waitFor();
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "of two stairs the one of the readings' job is chosen, else the dialog asks; a file that is opened comes there too",
  async () => {
    const { page, faults } = await openedSheet(pages);
    const further = furtherStair(ownJob({ ...ASKED, job: "Back stair" }), OWN.map(({ name }) => name));
    await loaded(page, book([...withGathered(OWN, further.gatherings), ...further.sheets]));
    const upload = (job: string): Promise<void> =>
      page.locator("#file").setInputFiles({
        name: "readings.txt", mimeType: "text/plain", buffer: Buffer.from(readingsText({ ...OF_OWN, job })),
      });
    await upload("Back stair");
    const stair = dialog(page).getByRole("combobox", { name: "Stair" });
    await stair.waitFor();
    expect(await stair.evaluate((select: HTMLSelectElement) => select.selectedOptions[0]?.textContent)).toBe("Fit 2, Back stair");
    await tookIn(page, "Take in 13 readings");
    expect([await value(page, "Fit", "C9"), await value(page, "Fit 2", "C9")]).toEqual([null, 24]);
    await upload("Neither");
    await stair.waitFor();
    expect(await stair.locator("option").allTextContents()).toEqual(["Choose the stair", "Fit, Mine", "Fit 2, Back stair"]);
    expect(await dialog(page).getByRole("table").count()).toBe(0);
    await stair.selectOption("Fit, Mine");
    await dialog(page).getByText("All 13 readings are new.").waitFor();
    await dialog(page).getByRole("button", { name: "Cancel" }).click();
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "on a telephone the dialog has room, and takes a file dropped on it",
  async () => {
    const { page, faults } = await openedSheet(pages, { viewport: { width: 390, height: 844 }, hasTouch: true });
    await loaded(page, book(demo));
    await asked(page);
    await page.evaluate((text) => {
      const dropped = new DataTransfer();
      dropped.items.add(new File([text], "readings.txt", { type: "text/plain" }));
      document.querySelector("dialog")?.dispatchEvent(new DragEvent("drop", { bubbles: true, cancelable: true, dataTransfer: dropped }));
    }, readingsText(OF_DEMO));
    await dialog(page).getByRole("table").waitFor();
    const box = await dialog(page).boundingBox();
    expect([(box?.x ?? -1) >= 0, (box?.width ?? 999) <= 390, (box?.height ?? 999) <= 844]).toEqual([true, true, true]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    expect(faults).toEqual([]);
  },
  browserTime,
);
