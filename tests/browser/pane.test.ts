import type { Page } from "playwright-core";
import { readySheets } from "../../src/sheets/ready-sheets";
import type { WorkbookData } from "../../src/workbook/workbook-data";
import { chosenFromMenu } from "./chosen-from-menu";
import { openedPages, type Opened, type OpenedPage } from "./opened-page";
import { seriousFaults } from "./serious-faults";
import { data, formula, goTo, loaded, openedSheet, selected, type Shown, value } from "./shown-book";

const browserTime = 400_000;
const FIND = "Find a function by a trade word";

let pages: Opened;

beforeAll(async () => {
  pages = await openedPages();
}, browserTime);

afterAll(() => pages?.close(), browserTime);

/** One page for all, with the demo as it first stood. */
let shared: { readonly opened: OpenedPage; readonly demo: WorkbookData } | undefined;

const opened = async (): Promise<OpenedPage> => {
  if (shared === undefined) {
    const found = await openedSheet(pages);
    shared = { opened: found, demo: await data(found.page) };
  } else await loaded(shared.opened.page, shared.demo);
  const { page } = shared.opened;
  await page.locator("#pane").getByRole("tab", { name: "Functions" }).click();
  await page.getByLabel(FIND).fill("");
  await page.evaluate(() => {
    for (const part of document.querySelectorAll("details")) part.open = false;
  });
  return shared.opened;
};

const setCell = (page: Page, sheet: string, address: string, text: string): Promise<void> =>
  page.evaluate(async ([name = "", cell = "", input = ""]) => {
    const book = (globalThis as unknown as Shown).treadsheetBook;
    book.setCell(name, cell, input);
    await book.settled();
  }, [sheet, address, text]);

/** A thickness of the treads that cannot be read, and on a free place of its sheet a formula of ours that reads it. */
const broken = async (page: Page, thickness: string): Promise<void> => {
  await setCell(page, "Survey", "I8", thickness);
  await setCell(page, "Survey", "T1", "=STAIR.FINISHED(B8:B21,I8)");
};

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
  "another workbook takes what the pane said of the one before, and the undo of its inserts, away",
  async () => {
    const { page } = await opened();
    await goTo(page, "Books", "T3");
    await page.getByLabel(FIND).fill("pitch");
    await page.locator("#function-PITCH > summary").click();
    await page.getByRole("button", { name: "Insert PITCH at the selected cell" }).click();
    await said(page, "PITCH inserted at Books T3:U5");
    const undo = page.getByRole("button", { name: "Undo insert of PITCH" });
    expect(await undo.isVisible()).toBe(true);
    await page.evaluate(async () => {
      const book = (globalThis as unknown as Shown).treadsheetBook;
      book.load(book.data());
      await book.settled();
    });
    await page.locator(".report").waitFor({ state: "hidden" });
    expect(await page.locator("#pane").getByText("Undo insert of PITCH").count()).toBe(0);
    expect(await page.locator("body").innerText()).not.toMatch(/\b(sheets|docs|ui)(-[a-z]+)*\.[a-z]/);
  },
  browserTime,
);

test(
  "Insert and Why? follow a click on a tab and a move by the name box",
  async () => {
    const { page } = await opened();
    await broken(page, "9' 14\"");
    await page.getByLabel(FIND).fill("pitch");
    await page.locator("#function-PITCH > summary").click();
    await goTo(page, "Books", "T3");
    await goTo(page, "Survey", "T1");
    await page.locator("#cell", { hasText: "Survey T1" }).waitFor();
    await page.locator("[data-u-comp=slide-tab-item]", { hasText: "Books" }).click();
    await page.locator("#cell").waitFor({ state: "hidden" });
    const insert = page.getByRole("button", { name: "Insert PITCH at the selected cell" });
    await insert.click();
    await said(page, "PITCH inserted at Books T3:U5");
    const name = page.locator("[data-u-comp=defined-name] input");
    await name.fill("T9");
    await name.press("Enter");
    await insert.click();
    await said(page, "PITCH inserted at Books T9:U11");
    expect(await value(page, "Books", "T11")).toBe("PITCH");
    await page.locator("[data-u-comp=slide-tab-item]", { hasText: "Survey" }).click();
    await page.locator("#cell", { hasText: "Survey T1" }).waitFor();
    await page.locator("#pane").getByRole("tab", { name: "Job" }).click();
    await page.locator(".why .sentence", { hasText: "Survey T1 shows #VALUE!" }).waitFor();
    await name.fill("B5");
    await name.press("Enter");
    await page.locator(".why .quiet", { hasText: "Select a cell with an error" }).waitFor();
    // A name would be gone when the page is opened again: it is refused in words, and the box says the cell.
    await name.fill("wall_height");
    await name.press("Enter");
    await page.getByText("Names are not kept with a workbook of this page").waitFor();
    expect(await name.inputValue()).toBe("B5");
  },
  browserTime,
);

test(
  "the pane opens on what to do: in the demo a trial that can be shown, then the steps, each of which shows its sheet",
  async () => {
    const { page, faults } = await opened();
    const tabs = ["Job", "Functions", "Drawings", "Sheets", "Mend", "About"];
    expect(await page.locator("#pane").getByRole("tab").allTextContents()).toEqual(tabs);
    await page.locator("#pane").getByRole("tab", { name: "Job" }).click();
    await page.locator("#part-job", { hasText: "Try it: type 9 in" }).waitFor();
    expect(await page.locator("#part-job .steps > li button").allTextContents()).toEqual(readySheets.map(({ name }) => name));
    await page.locator("#part-job .steps").getByRole("button", { name: "Order", exact: true }).click();
    await said(page, "Order is shown.");
    expect((await selected(page))?.sheet).toBe("Order");
    const show = page.locator("#part-job").getByRole("button", { name: /^Show / });
    const where = ((await show.textContent()) ?? "").replace("Show ", "");
    await show.click();
    await said(page, `${where} is selected.`);
    const cell = await selected(page);
    expect(`${cell?.sheet} ${cell?.address}`).toBe(where);
    // What the pane promises is what comes.
    const says = (await page.locator("#part-job").textContent()) ?? "";
    const shown = (sheet: string, address: string): Promise<string> =>
      page.evaluate(([name, at]) => (globalThis as unknown as Shown).treadsheetBook.shown(name ?? "", at ?? ""), [sheet, address]);
    expect(says).toContain(`price goes from ${await shown("Bid", "A4")} to `);
    expect(says).toContain(`instead of ${await shown("Order", "G4")},`);
    await setCell(page, cell?.sheet ?? "", cell?.address ?? "", "9");
    expect(says).toContain(` to ${await shown("Bid", "A4")}.`);
    expect(says).toContain(`cost ${await shown("Order", "C4")}, of which ${await shown("Order", "G4")} is ripped off`);
    expect([await shown("Check", "E4"), await shown("Check", "A4")]).toEqual(["✗ 1 FAIL", "✗ 2 FAIL"]);
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "an empty workbook says what to do first; in one's own job the next yellow cell without an entry is named, by its row and its heading",
  async () => {
    const { page } = await opened();
    await page.locator("#pane").getByRole("tab", { name: "Job" }).click();
    await page.evaluate(() =>
      (globalThis as unknown as Shown).treadsheetBook.load({ version: 1, sheets: [{ name: "Sheet1", cells: {} }] }));
    const part = page.locator("#part-job");
    await part.getByText("This workbook is empty. Add the sheet of a step below").waitFor();
    expect(await part.locator(".steps").getByRole("button", { name: /^Add / }).count()).toBe(readySheets.length);
    await page.evaluate(() =>
      (globalThis as unknown as Shown).treadsheetBook.load({
        version: 1,
        sheets: [{
          name: "Layout 2",
          cells: {
            A1: { value: "step", style: "heading" }, B1: { value: "rise", style: "heading" },
            A2: { value: 1 }, B2: { value: 7.5, style: "input" }, A3: { value: 2 }, B3: { style: "input" },
          },
        }],
      }));
    await part.getByText("Next yellow cell without an entry: Layout 2 B3 (rise, row 2).").waitFor();
    await part.locator(".steps").getByRole("button", { name: "Layout 2" }).waitFor();
    await setCell(page, "Layout 2", "B3", "7.5");
    await part.getByText("Every yellow cell has an entry.").waitFor();
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
    await page.locator("#pane").getByRole("tab", { name: "Sheets" }).click();
    await page.getByRole("button", { name: "Add Order" }).click();
    await said(page, "Added Order, and Job, Survey and Layout 2, which it reads. Its numbers are an invented example");
    const { sheets } = await data(page);
    expect(sheets.map(({ name }) => name)).toEqual(["Layout", "Order", "Job", "Survey", "Layout 2"]);
    expect(sheets[0]?.cells).toEqual({ A1: { value: "mine" } });
    // By hand: 13 blanks at 54 and one nosing at 19.50.
    expect(await value(page, "Order", "C4")).toBe(721.5);
    await page.getByRole("button", { name: "Add Books" }).click();
    await said(page, "Added Books, and Cut plan, Fit, Takeoff and Bid, which it reads. They read");
    expect(await value(page, "Books", "AB9")).toBe(13);
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "Why? follows the selection from error to error, and goes when the input is put right",
  async () => {
    const { page } = await opened();
    await page.locator("#pane").getByRole("tab", { name: "Job" }).click();
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
    await page.locator("#pane").getByRole("tab", { name: "Mend" }).click();
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
    await page.locator("#pane").getByRole("tab", { name: "Job" }).click();
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
    await page.locator("#pane").getByRole("tab", { name: "Job" }).click();
    await setCell(page, "Survey", "I8", "9' 14\"");
    await goTo(page, "Survey", "C8");
    await page.locator(".why .sentence").waitFor();
    for (const tab of ["Job", "Functions", "Drawings", "Sheets", "Mend", "About"]) {
      await page.locator("#pane").getByRole("tab", { name: tab }).click();
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
    const usual = page.viewportSize();
    await page.setViewportSize({ width: 320, height: 900 });
    // So narrow the pane is a drawer.
    await page.getByRole("button", { name: "Help" }).click();
    for (const tab of ["Job", "Functions", "Drawings", "Sheets", "Mend", "About"]) {
      await page.locator("#pane").getByRole("tab", { name: tab }).click();
      const [needed, there] = await page.evaluate(() => {
        for (const part of document.querySelectorAll("details")) part.open = true;
        const part = document.querySelector("#pane");
        return [part?.scrollWidth ?? Infinity, part?.clientWidth ?? 0];
      });
      expect(needed).toBeLessThanOrEqual(there);
      expect(there).toBeLessThanOrEqual(320);
    }
    // The page is the next test's too.
    if (usual !== null) await page.setViewportSize(usual);
  },
  browserTime,
);

test(
  "right-click on a cell, and a button of the pane by keyboard, explain a good answer: steps, clause and source",
  async () => {
    const { page, faults } = await opened();
    await setCell(page, "Books", "T1", "=STAIR.RISERS(108.5)");
    await goTo(page, "Books", "T1");
    const box = await page.locator("canvas[id^=univer-sheet-main-canvas]").boundingBox();
    if (box === null) throw new Error("no sheet");
    const explained = page.locator(".why .explained");
    await page.locator("#pane").getByRole("tab", { name: "Job" }).click();
    const button = page.getByRole("button", { name: "Explain this cell" });
    await button.focus();
    await page.keyboard.press("Enter");
    await explained.getByText("Risers (14) = total rise (108 1/2\") / max rise (7 3/4\")").waitFor();
    expect(await page.locator(".why [role=status]").textContent()).toBe("Books T1 shows 14.");
    // By hand: 14 x 7 3/4 = 108 1/2.
    expect(await explained.locator("dt").allTextContents()).toEqual(["Function", "totalRise", "Left out", "Answer", "Steps", "Source"]);
    expect(await seriousFaults(page, "#pane")).toEqual([]);
    // Another cell takes it away.
    await goTo(page, "Books", "T2");
    await explained.waitFor({ state: "hidden" });
    await page.locator("#pane").getByRole("tab", { name: "Functions" }).click();
    const entry = page.getByText("Explain this cell", { exact: true }).locator("visible=true").last();
    await chosenFromMenu(() => page.mouse.click(box.x + box.width / 2, box.y + box.height / 2, { button: "right" }), entry);
    const at = await selected(page);
    const cell = `${at?.sheet ?? ""} ${at?.address ?? ""}`;
    await page.locator(".why [role=status]", { hasText: new RegExp(`^${cell} `) }).waitFor();
    expect(await page.locator("#pane").getByRole("tab", { name: "Job" }).getAttribute("aria-selected")).toBe("true");
    expect(faults).toEqual([]);
  },
  browserTime,
);
