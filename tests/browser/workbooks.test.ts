import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { unzipSync } from "fflate";
import type { BrowserContext, Page } from "playwright-core";
import type { CellValue } from "../../src/workbook/workbook";
import type { WorkbookData } from "../../src/workbook/workbook-data";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { excelFile } from "../workbook-file/as-excel-saves";
import { chosenFromMenu } from "./chosen-from-menu";
import { openedPages, type Opened, type OpenedPage } from "./opened-page";
import { seriousFaults } from "./serious-faults";
import { goTo, openedSheet, type Shown, value } from "./shown-book";

const browserTime = 400_000;
const built = path.resolve(__dirname, "../../dist/workbooks");

let pages: Opened;

beforeAll(async () => {
  pages = await openedPages();
}, browserTime);

afterAll(() => pages?.close(), browserTime);

const opened = (context: BrowserContext): Promise<OpenedPage> => openedSheet(pages, { context });

/** Ends the page's process, as a crash does: nothing of the page runs any more. */
const killed = async (page: Page): Promise<void> => {
  const session = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent("crash");
  void session.send("Page.crash").catch(() => undefined);
  await crashed;
  await page.close();
};

const ROWS = 25;

/** The first rows of a column, as the page has them. */
const rows = (page: Page, column: string): Promise<readonly CellValue[]> =>
  page.evaluate(
    ([letter, count]) => {
      const { treadsheetBook } = globalThis as unknown as Shown;
      return Array.from({ length: count }, (_, index) => treadsheetBook.value("Books", `${letter}${index + 1}`));
    },
    [column, ROWS] as const,
  );

test(
  "each of 25 rows entered without a pause is there after the tab was killed at the last one",
  async () => {
    const context = await pages.context();
    const { page } = await opened(context);
    await goTo(page, "Books", "T1");
    for (let row = 1; row <= ROWS; row += 1) {
      await page.keyboard.type(String(row * 7));
      await page.keyboard.press("Enter");
    }
    const typedRows = await rows(page, "T");
    await page.evaluate((count) => {
      const { treadsheetBook } = globalThis as unknown as Shown;
      for (let row = 1; row <= count; row += 1) treadsheetBook.setCell("Books", `U${row}`, row * 11);
    }, ROWS);
    await goTo(page, "Books", "T1");
    for (const key of ["b", "i", "u"]) await page.keyboard.press(`ControlOrMeta+${key}`);
    await page.waitForFunction(() => (globalThis as unknown as Shown).treadsheetBook.stored("Books", "T1")?.look?.underline === true);
    // What nothing stores is not offered.
    const buttons = page.locator("#sheet [data-u-command]");
    const offered = await buttons.evaluateAll((all) => all.map((one) => one.getAttribute("data-u-command")));
    expect(offered).toContain("sheet.command.set-range-bold");
    expect(offered.filter((one) => one?.includes("protection"))).toEqual([]);
    // What is selected is sorted as one, whatever stands beside it on the sheet.
    const box = page.locator("[data-u-comp=defined-name] input");
    await box.fill(`T1:U${ROWS}`);
    await box.press("Enter");
    const sort = page.locator("[data-u-command='sheet.menu.sheets-sort']:visible");
    await chosenFromMenu(() => sort.click(), page.getByText("Down: 9 to 1, Z to A"));
    await page.getByText(`Sorted T1:U${ROWS}, by column T.`).waitFor();
    await page.evaluate((last) => {
      (globalThis as unknown as Shown).treadsheetBook.filter("Books", `T1:U${last}`, { U: ["11"] });
    }, ROWS);
    await killed(page);
    const again = await opened(context);
    // Of the rows under the first only the last one is shown, in which 11 stands now.
    const filtered = await again.page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.filtered("Books"));
    expect(filtered).toMatchObject({ cells: `T1:U${ROWS}`, rows: ROWS - 1, shown: 1 });
    // By hand: 11 stood beside the first row, which the sort puts last.
    const sorted = typedRows.map((held, index) => [held, (index + 1) * 11] as const).sort(([one], [other]) => Number(other) - Number(one));
    const first = `T${sorted.findIndex(([, beside]) => beside === 11) + 1}`;
    const stored = await again.page.evaluate((at) => (globalThis as unknown as Shown).treadsheetBook.stored("Books", at), first);
    // A label is bold: src/sheets/cell-looks.ts.
    expect(stored).toMatchObject({ style: "label", look: { italic: true, underline: true } });
    // Whether every key arrives is another test's.
    expect(typedRows).toContain(ROWS * 7);
    expect(await rows(again.page, "T")).toEqual(sorted.map(([held]) => held));
    expect(await rows(again.page, "U")).toEqual(sorted.map(([, beside]) => beside));
    expect(again.faults).toEqual([]);
    await context.close();
  },
  browserTime,
);

const settled = (page: Page): Promise<void> => page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.settled());

const typed = async (page: Page, sheet: string, address: string, text: string): Promise<void> => {
  await goTo(page, sheet, address);
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
  await page.waitForFunction(
    ([name, cell, wanted]) => String((globalThis as unknown as Shown).treadsheetBook.value(name ?? "", cell ?? "")) === wanted,
    [sheet, address, text],
  );
  await settled(page);
};

/** Takes a name out of the list of workbooks by its button. */
const fromList = async (page: Page, ...pressed: readonly string[]): Promise<void> => {
  await page.getByRole("button", { name: "Open …" }).click();
  await page.getByRole("button", { name: "Workbooks", exact: true }).click();
  for (const name of pressed) await page.getByRole("dialog").getByRole("button", { name, exact: true }).click();
};

const named = (page: Page, name: string): Promise<void> =>
  page.waitForFunction((wanted) => document.querySelector("#name")?.textContent === wanted, name).then(() => undefined);

test(
  "a tab that another overtook says so until it is dealt with, and nothing of either is lost",
  async () => {
    const context = await pages.context();
    const { page } = await opened(context);
    expect(await page.textContent("#status")).toBe("The demo. What you change is kept in this browser.");
    await typed(page, "Job", "B13", "9");
    await page.getByText("Kept in this browser.", { exact: true }).waitFor();
    const second = await opened(context);
    expect(await value(second.page, "Job", "B13")).toBe(9);
    expect(await second.page.textContent("#status")).toBe("Your sheets, as you left them in this browser.");
    await typed(second.page, "Job", "B13", "9.5");
    await typed(page, "Job", "B13", "11");
    const notice = page.getByRole("alert");
    await notice.getByText("Another tab has changed “Demo”.").waitFor();
    expect(await notice.textContent()).toContain("What was typed in this tab is kept as “Demo 2”; nothing of either is lost.");
    // It stays while one goes on, and what one goes on with is kept.
    await typed(page, "Job", "B13", "12");
    expect(await notice.count()).toBe(1);
    expect(await seriousFaults(page, "#notices")).toEqual([]);
    await killed(page);

    const third = await opened(context);
    await fromList(third.page, "Demo 2");
    await named(third.page, "Demo 2");
    expect(await value(third.page, "Job", "B13")).toBe(12);
    await fromList(third.page, "Demo");
    await named(third.page, "Demo");
    expect(await value(third.page, "Job", "B13")).toBe(9.5);
    await context.close();
  },
  browserTime,
);

test(
  "an overtaken tab takes the other's version or keeps its own as a copy",
  async () => {
    const context = await pages.context();
    const [mine, theirs] = [await opened(context), await opened(context)];
    await typed(theirs.page, "Job", "B13", "9");
    await theirs.page.getByText("Kept in this browser.", { exact: true }).waitFor();
    await typed(mine.page, "Job", "B13", "11");
    await mine.page.getByRole("button", { name: "Take the other tab's version" }).click();
    await named(mine.page, "Demo");
    expect(await value(mine.page, "Job", "B13")).toBe(9);
    await mine.page.getByRole("alert").waitFor({ state: "detached" });
    // What was given up is among the deleted, and comes back.
    await fromList(mine.page, "Put back Demo 2", "Demo 2");
    await named(mine.page, "Demo 2");
    expect(await value(mine.page, "Job", "B13")).toBe(11);

    await fromList(mine.page, "Demo");
    await named(mine.page, "Demo");
    await typed(mine.page, "Job", "B13", "8");
    await mine.page.getByText("Kept in this browser.", { exact: true }).waitFor();
    await typed(theirs.page, "Job", "B13", "13");
    await theirs.page.getByRole("button", { name: "Keep mine as a copy" }).click();
    await theirs.page.getByRole("alert").waitFor({ state: "detached" });
    expect([await theirs.page.textContent("#name"), await value(theirs.page, "Job", "B13")]).toEqual(["Demo 3", 13]);
    expect([...mine.faults, ...theirs.faults]).toEqual([]);
    await context.close();
  },
  browserTime,
);

/** Puts a record where the first version kept its only workbook. */
const putAsFirstVersion = async (context: BrowserContext, record: unknown): Promise<void> => {
  const { page } = await pages.open("functions.json", { context });
  await page.evaluate(
    (kept) =>
      new Promise<void>((resolve) => {
        const request = indexedDB.open("treadsheet", 1);
        request.onupgradeneeded = () => request.result.createObjectStore("sheets");
        request.onsuccess = () => {
          const transaction = request.result.transaction("sheets", "readwrite");
          transaction.objectStore("sheets").put(kept, "workbook");
          transaction.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
    record,
  );
};

test(
  "sheets kept by an older program open; what cannot be read stays where it is and is said",
  async () => {
    const older = await pages.context();
    // Format version 1 with nothing but what it cannot do without, as the first program wrote it.
    await putAsFirstVersion(older, {
      revision: 7,
      data: { version: 1, sheets: [{ name: "Mine", cells: { A1: { value: "7 5/8" }, B1: { formula: "=STAIR.TOINCHES(A1)" } } }] },
    });
    expect(await value((await opened(older)).page, "Mine", "B1")).toBe(7.625);
    await older.close();

    const newer = await pages.context();
    await putAsFirstVersion(newer, { revision: 8, data: { version: 99, sheets: [] } });
    const { page } = await opened(newer);
    expect(await page.getByRole("alert").textContent()).toContain(
      "“My sheets” cannot be opened, and stays in this browser: workbook, version: this program reads workbooks up to version 1, " +
        "this one is version 99",
    );
    expect(await page.textContent("#name")).toBe("Demo");
    await newer.close();
  },
  browserTime,
);

test(
  "a browser whose store never answers: the page opens, says so, and a file saved then is a file opened",
  async () => {
    const context = await pages.context();
    await context.addInitScript(() => {
      IDBFactory.prototype.open = () => ({}) as IDBOpenDBRequest;
    });
    const { page, faults } = await opened(context);
    const sentence =
      "This browser's store cannot be used: it does not answer. The page works, but what you type is gone when it is closed or reloaded: " +
      "save it as a file.";
    expect(await page.getByRole("alert").textContent()).toBe(sentence);
    await typed(page, "Job", "B13", "9.25");
    expect(await page.textContent("#status")).toBe("Not kept in this browser.");
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save ▾" }).click();
    await page.getByRole("button", { name: "File for this page" }).click();
    const saved = await download;
    expect(saved.suggestedFilename()).toMatch(/^Demo \d{4}-\d{2}-\d{2}\.json$/);
    await page.setInputFiles("#file", { name: "Kitchen.json", mimeType: "application/json", buffer: readFileSync(await saved.path()) });
    await page.getByText("Opened Kitchen.json as “Kitchen”.").waitFor();
    // What the engine calls a word by is never shown in its place.
    expect(await page.locator("body").innerText()).not.toMatch(/\b(sheets|docs|ui)(-[a-z]+)*\.[a-z]/);
    expect(await value(page, "Job", "B13")).toBe(9.25);
    expect(await page.getByRole("alert").textContent()).toBe(sentence);
    expect(faults).toEqual([]);
    await context.close();
  },
  browserTime,
);

const asFile = (name: string, text: string) => ({ name, mimeType: "application/json", buffer: Buffer.from(text) });
const oneCell = (cells: unknown): string => JSON.stringify({ version: 1, sheets: [{ name: "Job", cells }] });

test(
  "several workbooks: a file and the demo become ones of their own; renamed, duplicated, deleted, put back, saved as one and opened",
  async () => {
    const context = await pages.context();
    const { page, faults } = await opened(context);
    await typed(page, "Job", "B13", "9");
    await page.setInputFiles("#file", asFile("Barn 2026-11-29.json", oneCell({ A1: { value: "barn" } })));
    await named(page, "Barn");
    // One's own numbers are not called invented, the demo's are.
    const invented = page.getByText("Demo: job, people and prices are invented.");
    expect(await invented.isVisible()).toBe(false);
    await page.getByRole("button", { name: "Open …" }).click();
    await page.getByRole("button", { name: "Open demo" }).click();
    await named(page, "Demo 2");
    expect(await invented.isVisible()).toBe(true);
    expect(await value(page, "Job", "B13")).toBe(10);
    await fromList(page, "Demo");
    await named(page, "Demo");
    expect(await value(page, "Job", "B13")).toBe(9);

    await fromList(page, "Rename Barn");
    const dialog = page.getByRole("dialog");
    await page.keyboard.type("Barn stair");
    await page.keyboard.press("Enter");
    await dialog.getByText("Renamed to “Barn stair”.").waitFor();
    await dialog.getByRole("button", { name: "Duplicate Barn stair", exact: true }).click();
    await dialog.getByText("Duplicated as “Barn stair 2”.").waitFor();
    await dialog.getByRole("button", { name: "Delete Barn stair", exact: true }).click();
    await dialog.getByText("Deleted “Barn stair”. It can be put back for 30 days.").waitFor();
    expect(await seriousFaults(page, "dialog")).toEqual([]);
    await dialog.getByRole("button", { name: "Put back Barn stair", exact: true }).click();
    await dialog.getByText("“Barn stair” is back.").waitFor();
    const download = page.waitForEvent("download");
    await dialog.getByRole("button", { name: "Save all as one file" }).click();
    const backup = await download;
    expect(backup.suggestedFilename()).toMatch(/^Treadsheet workbooks \d{4}-\d{2}-\d{2}\.json$/);
    // A workbook that is shown can be deleted too: another one is shown then.
    await dialog.getByRole("button", { name: "Delete Demo", exact: true }).click();
    await dialog.getByText("Deleted “Demo”.").waitFor();
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "hidden" });
    await page.reload();
    await page.waitForSelector("html[data-ready=yes]");
    expect(await page.textContent("#name")).not.toBe("Demo");

    const another = await pages.context();
    const fresh = await opened(another);
    await fresh.page.setInputFiles("#file", asFile("all.json", readFileSync(await backup.path(), "utf8")));
    await fresh.page.getByText("Opened 4 workbooks from all.json.").waitFor();
    await fromList(fresh.page, "Barn stair 2");
    await named(fresh.page, "Barn stair 2");
    expect(await value(fresh.page, "Job", "A1")).toBe("barn");
    await another.close();
    expect(faults).toEqual([]);
    await context.close();
  },
  browserTime,
);

test(
  "a file that no sheet can bear is refused by what is wrong and where, and a formula pasted that would stop the page stays text",
  async () => {
    const context = await pages.context({ permissions: ["clipboard-read", "clipboard-write"] });
    const { page, faults } = await opened(context);
    const nested = `=${"ABS(".repeat(30_000)}1${")".repeat(30_000)}`;
    for (const [cells, says] of [
      [{ A1: { wrong: 1 } }, 'sheet "Job", A1: has no "wrong"'],
      [{ ZZZ1: { value: 1 } }, 'sheet "Job", cells: an address is written A1 to XFD1048576, in capitals, got "ZZZ1"'],
      [{ B7: { formula: nested } }, 'sheet "Job", B7, formula: must have at most 8,192 characters, as in Excel, this one has 150,002'],
    ] as const) {
      await page.setInputFiles("#file", asFile("hostile.json", oneCell(cells)));
      await page.getByText(says).waitFor();
      expect(await page.textContent("#status")).toContain("hostile.json cannot be opened:");
    }
    const deep = `=${"ABS(".repeat(65)}1${")".repeat(65)}`;
    await page.evaluate((text) => navigator.clipboard.writeText(`${text}\t5`), deep);
    await goTo(page, "Books", "T1");
    await page.keyboard.press("ControlOrMeta+v");
    await page.waitForFunction(() => (globalThis as unknown as Shown).treadsheetBook.value("Books", "U1") === 5);
    expect((await value(page, "Books", "T1")) === deep).toBe(true);
    expect(await page.textContent("#name")).toBe("Demo");
    expect(faults).toEqual([]);
    await context.close();
  },
  browserTime,
);

test(
  "Start my job asks what it needs, makes a workbook of its own without an invented number, and offers one more stair there",
  async () => {
    const context = await pages.context();
    const { page, faults } = await opened(context);
    const dialog = page.getByRole("dialog");
    const start = dialog.getByRole("button", { name: "Start", exact: true });
    await page.getByRole("button", { name: "Start my job" }).click();
    // The demo is not a job to add a stair to.
    expect(await dialog.getByLabel("Goes into").count()).toBe(0);
    await dialog.getByLabel("Name of the job").fill("Hall stair");
    await dialog.getByLabel("Total rise").fill("8' 14\"");
    await start.click();
    // Nothing is begun while a length cannot be read, and each fault stands beside its field.
    await dialog.getByText("inches after feet stay under 12").waitFor();
    expect(await dialog.getByRole("alert").filter({ hasText: "is empty; type a length" }).count()).toBe(2);
    expect(await seriousFaults(page, "dialog")).toEqual([]);
    await dialog.getByLabel("Total rise").fill("8' 10 1/8\"");
    await dialog.getByLabel("Run", { exact: true }).fill("10");
    await dialog.getByLabel("Width").fill("36 3/4");
    await dialog.getByLabel("Open side").selectOption("right");
    await dialog.getByLabel("Code").selectOption("irc-2021");
    await start.click();
    await named(page, "Hall stair");
    await settled(page);
    // By hand: 8 x 12 + 10 1/8; 106.125 / 7.75 = 13.7, so 14; 13 x 10.
    const shown = [await value(page, "Job", "B11"), await value(page, "Job", "B12"), await value(page, "Layout", "D4")];
    expect(shown).toEqual([106.125, 14, 130]);
    expect(await page.locator("#invented").isVisible()).toBe(false);
    await page.getByRole("button", { name: "Start my job" }).click();
    expect(await dialog.getByLabel("Goes into").locator("option").count()).toBe(2);
    await dialog.getByRole("button", { name: "Cancel" }).click();
    expect(faults).toEqual([]);
    await context.close();
  },
  browserTime,
);

const chosen = (page: Page, name: string, buffer: Buffer): Promise<void> =>
  page.setInputFiles("#file", { name, mimeType: "application/octet-stream", buffer });

/** What one of the buttons under Save gives. */
const savedBy = async (page: Page, button: string): Promise<{ readonly name: string; readonly path: string; readonly bytes: Buffer }> => {
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save ▾" }).click();
  await page.getByRole("button", { name: button }).click();
  const saved = await download;
  const kept = await saved.path();
  return { name: saved.suggestedFilename(), path: kept, bytes: readFileSync(kept) };
};

const allOf = (page: Page): Promise<WorkbookData> => page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.data());
const status = (page: Page, text: string): Promise<void> => page.locator("#status").getByText(text).waitFor();

test(
  "Excel workbooks go out with their formulas and as values, and come in beside tables as text, chosen or dropped",
  async () => {
    const context = await pages.context();
    const { page, faults } = await opened(context);
    const [before, price] = [await allOf(page), await value(page, "Bid", "A4")];
    const excel = await savedBy(page, "Excel, with formulas");
    expect(excel.name).toMatch(/^Demo \d{4}-\d{2}-\d{2}\.xlsx$/);
    const values = await savedBy(page, "Excel, values for anyone");
    expect(values.name).toMatch(/^Demo \d{4}-\d{2}-\d{2} values\.xlsx$/);
    // Worked out again without a browser, every cell comes to what the browser saved.
    const recalc = path.resolve(__dirname, "../../dist/tools/treadsheet.cjs");
    const { status: ends, stdout } = spawnSync(process.execPath, [recalc, "recalc", excel.path, "--check", "--json"], { encoding: "utf8" });
    expect(JSON.parse(stdout)).toMatchObject({ changed: [], kept: [], inError: [] });
    expect(ends).toBe(0);

    await chosen(page, "Shop.xlsx", excel.bytes);
    await status(page, "Opened Shop.xlsx as “Shop”.");
    expect(await allOf(page)).toEqual(before);
    expect(await value(page, "Bid", "A4")).toBe(price);
    await chosen(page, "For anyone.xlsx", values.bytes);
    await status(page, "Opened For anyone.xlsx as “For anyone”.");
    expect(await value(page, "Bid", "A4")).toBe(price);
    const { sheets } = await allOf(page);
    expect(sheets.flatMap(({ cells }) => Object.values(cells).flatMap(({ formula = [] }) => formula))).toEqual([]);

    await page.evaluate(() => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File(["item;cost\noak;54,50\n"], "prices.csv"));
      const sheet = document.querySelector("#sheet canvas");
      for (const kind of ["dragover", "drop"])
        sheet?.dispatchEvent(new DragEvent(kind, { dataTransfer, bubbles: true, cancelable: true }));
    });
    await status(page, "Opened prices.csv as “prices”.");
    expect(await value(page, "Sheet1", "B2")).toBe(54.5);

    await chosen(page, "bid.xlsx", Buffer.from("hello"));
    await status(page, "bid.xlsx was not opened. This is not an Excel workbook. Choose a file whose name ends in .xlsx.");
    await chosen(page, "photo.png", Buffer.from([0x89, 0x50, 0, 1]));
    await status(page, "photo.png cannot be opened: it is neither a workbook nor a table as text. Choose an Excel workbook (.xlsx)");
    expect(await page.textContent("#name")).toBe("prices");

    await chosen(page, "Charted.xlsx", Buffer.from(excelFile()));
    const asking = page.getByRole("dialog", { name: /^Charted\.xlsx has what a sheet here does not show: .*1 chart/ });
    await asking.waitFor();
    await page.getByRole("button", { name: "Leave it" }).click();
    await status(page, "Charted.xlsx was not opened.");
    await chosen(page, "Charted.xlsx", Buffer.from(excelFile()));
    await page.getByRole("button", { name: "Open it" }).click();
    await status(page, "Opened Charted.xlsx as “Charted”.");
    expect(await value(page, "Bid", "B2")).toBe(109.5);
    await page.reload();
    await page.waitForSelector("html[data-ready=yes]");
    expect([await page.textContent("#name"), await value(page, "Bid", "B2")]).toEqual(["Charted", 109.5]);

    // What stands for a chart, a comment and a table is in the file that is saved back, byte for byte; the total rise is the one typed.
    await page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.setCell("Bid", "B2", 117));
    const charted = await savedBy(page, "Back into Charted.xlsx");
    expect(charted.name).toBe("Charted.xlsx");
    const [was, is] = [unzipSync(excelFile()), unzipSync(charted.bytes)];
    const other = Object.keys(is).filter((part) => Buffer.compare(Buffer.from(is[part] ?? []), Buffer.from(was[part] ?? [])) !== 0);
    expect([other, Object.keys(was).filter((part) => !(part in is))]).toEqual([["xl/worksheets/sheet1.xml"], []]);
    const again = readWorkbookFile(charted.bytes);
    // 117 / 15 = 7.8 and 117 / 16 = 7.31 in a rise: 16 risers of at most 7 3/4.
    expect([again.sheets[0]?.cells["B2"]?.value, again.stored["Bid"]?.["B3"]]).toEqual([117, 16]);
    expect(faults).toEqual([]);
    await context.close();
  },
  browserTime,
);

test(
  "a ready workbook is saved as the file that the build writes, or opens as a workbook of its own, and the one shown stays as it was",
  async () => {
    const context = await pages.context();
    const { page, faults } = await opened(context);
    const before = await allOf(page);
    const dialog = page.getByRole("dialog", { name: "Ready workbooks" });
    const choose = async (): Promise<void> => {
      await page.getByRole("button", { name: "Open …" }).click();
      await page.getByRole("button", { name: "Ready workbooks" }).click();
      await dialog.waitFor();
    };
    await choose();
    expect(await seriousFaults(page, "dialog")).toEqual([]);
    const download = page.waitForEvent("download");
    await dialog.getByRole("button", { name: "Blank job in inches: Excel, with formulas" }).click();
    const [saved, file] = [await download, "blank-stair-job-inches.xlsx"];
    expect(saved.suggestedFilename()).toBe(file);
    // Where readings are worked out, two engines of the language may differ in the last digit of a sine; here nothing is read yet.
    expect(Buffer.compare(readFileSync(await saved.path()), readFileSync(path.join(built, file)))).toBe(0);
    await status(page, `Saved as ${file}`);
    expect(await allOf(page)).toEqual(before);

    await choose();
    await dialog.getByRole("button", { name: "Demo job in millimetres: Open here" }).click();
    await named(page, "Demo job in millimetres");
    await settled(page);
    // By hand in tests/jobs/metric-stair.
    expect(await value(page, "Bid", "B32")).toBe(3122.33);
    expect(await page.locator("#invented").isVisible()).toBe(true);
    await page.locator("#pane").getByRole("tab", { name: "Job" }).click();
    // What the demo in inches has to try is not true of this one, which waits for its invoices.
    await page.locator("#pane").getByText("Sheets wait for what is to be typed").waitFor();
    expect(await page.locator("#pane").getByText("Try it: type 9 in Job").count()).toBe(0);
    await page.locator("#pane").getByRole("tab", { name: "Sheets" }).click();
    await page.locator("#pane").getByRole("button", { name: "Demo L-shaped stair in millimetres: Open here" }).click();
    await named(page, "Demo L-shaped stair in millimetres");
    await settled(page);
    // By hand in tests/jobs/turned-stair: one bid for both flights.
    expect([await value(page, "Bid", "B32"), await value(page, "Job 2", "B11")]).toEqual([4388.79, 1267]);
    await page.locator("#pane").getByRole("tab", { name: "Sheets" }).click();
    await page.locator("#pane").getByRole("button", { name: "Blank job in inches: Open here" }).click();
    await named(page, "Blank job in inches");
    await settled(page);
    expect([await value(page, "Layout", "AA7"), await page.locator("#invented").isVisible()]).toEqual(["– type in Job B11", false]);
    expect(faults).toEqual([]);
    await context.close();
  },
  browserTime,
);
