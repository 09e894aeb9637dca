import type { Page } from "playwright-core";
import { chosenFromMenu } from "../browser/chosen-from-menu";
import { openedPages, type Opened, type OpenedPage } from "../browser/opened-page";
import { seriousFaults } from "../browser/serious-faults";
import type { Shown } from "../browser/shown-book";

const browserTime = 400_000;
const sixteenths = { format: "# ?/16" };
const data = {
  version: 1,
  sheets: [
    {
      name: "Bench",
      cells: {
        A1: { value: "12" },
        A2: { value: "1/2" },
        B1: sixteenths,
        B2: sixteenths,
        B3: { value: 7.96, ...sixteenths },
        C1: { formula: "=ISTEXT(A1)" },
        E1: { format: "@" },
        F30: { format: "@" },
        G31: sixteenths,
        A10: { formula: '=VSTACK("✗ FAIL","✓ pass")' },
        C10: { value: "left" },
        R110: { value: "newel post" },
        R112: { value: "newel" },
        R114: { value: "Newels" },
        B5: { formula: '=HYPERLINK("#Bench!D9","there")' },
        B6: { formula: '=HYPERLINK("#\'Long gone\'!A1","nowhere")' },
        B7: { formula: '=HYPERLINK("https://example.com/","out")' },
        B8: { formula: '=IMAGE("https://example.com/a.png")' },
      },
      rules: [{ cells: "A10:A19", when: '=LEFT(A10,1)="✗"', look: { fill: "#fbe3df" } }],
      lists: [{ cells: "C10:C11", options: ["left", "right"] }],
    },
  ],
};

let pages: Opened;
let opened: OpenedPage;

beforeAll(async () => {
  pages = await openedPages();
  opened = await pages.open("", { permissions: ["clipboard-read", "clipboard-write"] });
  await opened.page.waitForSelector("html[data-ready=yes]");
  await opened.page.evaluate(async (book) => {
    const { treadsheetBook } = globalThis as unknown as Shown;
    treadsheetBook.load(book as never);
    await treadsheetBook.settled();
  }, data);
}, browserTime);

afterAll(() => pages?.close(), browserTime);

const cell = async (page: Page, address: string) => {
  const stored = await page.evaluate((at) => {
    const { treadsheetBook } = globalThis as unknown as Shown;
    return { value: treadsheetBook.value("Bench", at), shown: treadsheetBook.shown("Bench", at).trim() };
  }, address);
  return stored;
};

const typed = async (page: Page, address: string, ...keys: readonly string[]) => {
  await page.evaluate((at) => (globalThis as unknown as Shown).treadsheetBook.select("Bench", at), address);
  for (const key of keys) await (key.startsWith("<") ? page.keyboard.press(key.slice(1, -1)) : page.keyboard.type(key));
  await page.keyboard.press("Enter");
  await page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.settled());
};

// Hand: 7 5/8 = 7.625, 3/32 = 0.09375, 7.96 x 16 = 127.36, so 7 15/16.
test.each([
  ["1/2 in a plain cell is half an inch", "D1", ["1/2"], 0.5, "1/2"],
  ["7 3/32 in a plain cell is a length in 32nds", "D5", ["7 3/32"], 7.09375, "7 3/32"],
  ['36 5/8" in a plain cell is a length', "D6", ['36 5/8"'], 36.625, "36 5/8"],
  ["a length typed in a plain cell and looked at stays what it is", "D5", ["<F2>"], 7.09375, "7 3/32"],
  ["feet and inches stay text", "D7", ["3' 4\""], "3' 4\"", "3' 4\""],
  ["boards 5/4 thick stay text", "D8", ["5/4"], "5/4", "5/4"],
  ["1/2 in a cell of text stays text", "E1", ["1/2"], "1/2", "1/2"],
  ["12 in a plain cell is a number", "D2", ["12"], 12, "12"],
  ["an apostrophe makes text of 12", "D3", ["'12"], "12", "12"],
  ["1/2 in a cell of sixteenths is half an inch", "B1", ["1/2"], 0.5, "1/2"],
  ["7-5/8 in a cell of sixteenths is a length", "B2", ["7-5/8"], 7.625, "7 5/8"],
  ["a length looked at stays what it is", "B2", ["<F2>"], 7.625, "7 5/8"],
  ["a length near the next inch is shown under it", "B3", ["<F2>"], 7.96, "7 15/16"],
  ["text that looks like a number, looked at, stays text", "A1", ["<F2>"], "12", "12"],
  ["text that looks like a date, looked at, stays text", "A2", ["<F2>"], "1/2", "1/2"],
  ["text after an apostrophe, looked at, stays text", "D3", ["<F2>"], "12", "12"],
  ["25% is a quarter", "D4", ["25%"], 0.25, "25%"],
  ["15 in a cell of percentages is 15 %", "D4", ["15"], 0.15, "15%"],
  ["150 in a cell of percentages is 150 %", "D4", ["150"], 1.5, "150%"],
  ["a percentage looked at stays what it is", "D4", ["<F2>"], 1.5, "150%"],
  // A column is 88 pixels wide: by hand (88 - 8) / 8.15 is 9 digits, the point among them.
  ["a long number shows what fits", "D9", ["64.40820312"], 64.40820312, "64.408203"],
  ["a long number looked at stays what it is", "D9", ["<F2>"], 64.40820312, "64.408203"],
  ["a formula shows what fits of a long number", "D10", ["=D9/2"], 32.20410156, "32.204102"],
])(
  "by keyboard, %s",
  async (_, address, keys, value, shown) => {
    await typed(opened.page, address, ...keys);
    expect(await cell(opened.page, address)).toEqual({ value, shown });
  },
  browserTime,
);

test(
  "pasted, 1/2 and 3-4 are no dates",
  async () => {
    const { page } = opened;
    await page.evaluate(() => navigator.clipboard.writeText("1/2\t3-4\t12"));
    await page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.select("Bench", "F1"));
    await page.keyboard.press("ControlOrMeta+v");
    await page.waitForFunction(() => (globalThis as unknown as Shown).treadsheetBook.value("Bench", "H1") !== null);
    expect([await cell(page, "F1"), await cell(page, "G1"), await cell(page, "H1")]).toEqual([
      { value: 0.5, shown: "1/2" },
      { value: "3-4", shown: "3-4" },
      { value: 12, shown: "12" },
    ]);
  },
  browserTime,
);

test(
  "pasted lines of Windows leave no space, a line break stays in its cell, and what looks like a mark of HTML stays text",
  async () => {
    const { page } = opened;
    await page.evaluate(() => navigator.clipboard.writeText('\toak\r\n"tread,\nclear"\t<14>\r\n'));
    await stand(page, "F20");
    await page.keyboard.press("ControlOrMeta+v");
    await page.waitForFunction(() => (globalThis as unknown as Shown).treadsheetBook.value("Bench", "G21") !== null);
    const held = await Promise.all(["F20", "G20", "F21", "G21", "F22"].map((at) => cell(page, at)));
    expect(held.map(({ value }) => value)).toEqual(["", "oak", "tread,\nclear", "<14>", null]);
  },
  browserTime,
);

const ENTERED = ["9' 14\"", "8-11-3/8", '=STAIR.TOINCHES("7 5/8")', "total rise", "=SUM(1,2)*2", "12.5", "=STAIR.STORYPOLE(31,4,,,,FALSE)"];

/** What was entered into a cell, as text. */
const entered = (page: Page, address: string): Promise<string> =>
  page.evaluate((at) => {
    const { treadsheetBook } = globalThis as unknown as Shown;
    return treadsheetBook.formula("Bench", at) ?? String(treadsheetBook.value("Bench", at));
  }, address);

const stand = (page: Page, address: string): Promise<void> =>
  page.evaluate((at) => (globalThis as unknown as Shown).treadsheetBook.select("Bench", at), address);

test(
  "Ctrl+F finds what cells show, spilled ones too, from the selected one on, and selects it; nothing is offered to be replaced",
  async () => {
    const { page, faults } = opened;
    const dialog = page.locator("[data-u-comp=find-replace-dialog]");
    const isSelected = (address: string): Promise<unknown> =>
      page.waitForFunction((at) => (globalThis as unknown as Shown).treadsheetBook.selected()?.address === at, address);
    await stand(page, "R111");
    await page.keyboard.press("ControlOrMeta+f");
    await dialog.waitFor();
    await page.keyboard.type("newel");
    await isSelected("R112");
    await page.keyboard.press("Enter");
    await isSelected("R114");
    await page.keyboard.press("Enter");
    await isSelected("R110");
    await page.keyboard.press("Shift+Enter");
    await isSelected("R114");
    await dialog.locator("input").fill("pass");
    await isSelected("A11");
    await dialog.getByText("1/1").waitFor();
    await dialog.locator("input").fill("balustrade");
    await dialog.getByText("Not found").waitFor();
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "hidden" });
    await stand(page, "C9");
    await page.keyboard.press("ControlOrMeta+h");
    await dialog.waitFor();
    expect([await dialog.locator("input").count(), await dialog.getByText("Replace").isVisible()]).toEqual([1, false]);
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "hidden" });
    await page.locator("[data-u-command='ui.operation.open-find-dialog']:visible").click();
    await dialog.waitFor();
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "hidden" });
    expect(faults).toEqual([]);
  },
  browserTime,
);

const TABLE = {
  R90: { value: "mark", look: { bold: true } },
  S90: { value: "run", look: { bold: true } },
  T90: { value: "twice", look: { bold: true } },
  R91: { value: "T10", look: { italic: true } },
  S91: { value: 3 },
  T91: { formula: "=S91*2" },
  R92: { value: "T2" },
  S92: { value: 1.5, format: "# ?/2" },
  T92: { formula: "=S92*2" },
  R93: { value: "t1" },
  S93: { value: 2 },
  T93: { formula: "=S93*$S$90" },
  // What reads a sorted cell from outside reads its place.
  V90: { formula: "=R91" },
  R96: { value: 1 },
  S96: { value: 5 },
  R97: { value: 2 },
  S97: { formula: "=S96+R97" },
  R100: { value: "b" },
  S100: { formula: '=VSTACK("x","y")' },
  R101: { value: "a" },
};

const sorted = async (page: Page, address: string, way: string): Promise<void> => {
  await stand(page, address);
  await chosenFromMenu(() => page.locator("[data-u-command='sheet.menu.sheets-sort']:visible").click(), page.getByText(way));
};

test(
  "Sort moves the rows of a table under its headings with their looks and formulas, is undone, and refuses what it would tear",
  async () => {
    const { page, faults } = opened;
    const before = await page.evaluate(async (cells) => {
      const { treadsheetBook } = globalThis as unknown as Shown;
      const known = treadsheetBook.data();
      treadsheetBook.load({ ...known, sheets: known.sheets.map((sheet) => ({ ...sheet, cells: { ...sheet.cells, ...cells } })) } as never);
      await treadsheetBook.settled();
      return treadsheetBook.data();
    }, TABLE);
    const stored = (): Promise<unknown> => page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.data());
    const up = "Up: 1 to 9, A to Z";
    await sorted(page, "R92", up);
    await page.getByText("Sorted R91:T93, under its headings, by column R.").waitFor();
    const cells = {
      ...before.sheets[0]?.cells,
      R91: TABLE.R93,
      S91: TABLE.S93,
      T91: { formula: "=S91*$S$90" },
      R93: TABLE.R91,
      S93: TABLE.S91,
      T93: { formula: "=S93*2" },
    };
    expect(await stored()).toEqual({ ...before, sheets: [{ ...before.sheets[0], cells }, ...before.sheets.slice(1)] });
    await page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.settled());
    // By hand: 3 x 2.
    expect([(await cell(page, "T93")).value, (await cell(page, "V90")).value]).toEqual([6, "t1"]);
    await page.keyboard.press("ControlOrMeta+z");
    await page.waitForFunction(() => (globalThis as unknown as Shown).treadsheetBook.value("Bench", "R91") === "T10");
    expect(await stored()).toEqual(before);
    await sorted(page, "R97", "Down: 9 to 1, Z to A");
    await page.getByText("S97 reads another row of what is to be sorted, so it would come to something else.").waitFor();
    await sorted(page, "R101", up);
    await page.getByText("R100:S101 holds cells that the formula in S100 fills; only typed cells can be sorted.").waitFor();
    expect(await stored()).toEqual(before);
    expect(faults).toEqual([]);
  },
  browserTime,
);

const ROWS_TO_FILTER = {
  R120: { value: "mark" },
  S120: { value: "species" },
  R121: { value: "post 1" },
  S121: { value: "oak" },
  R122: { value: "post 2" },
  S122: { value: "maple" },
  R123: { value: "post 3" },
  S123: { value: "oak" },
};

test(
  "Filter shows the rows with what is chosen of a column, says so until all are shown again, prints so, and is undone",
  async () => {
    const { page, faults } = opened;
    await page.evaluate(async (cells) => {
      const { treadsheetBook } = globalThis as unknown as Shown;
      const known = treadsheetBook.data();
      treadsheetBook.load({ ...known, sheets: known.sheets.map((sheet) => ({ ...sheet, cells: { ...sheet.cells, ...cells } })) } as never);
      await treadsheetBook.settled();
      Object.assign(window, { print: () => undefined });
    }, ROWS_TO_FILTER);
    await stand(page, "S122");
    await page.locator("[data-u-command='sheet.command.smart-toggle-filter']:visible").click({ position: { x: 10, y: 12 } });
    const panel = page.locator("[data-u-comp=sheets-filter-panel]").first();
    await panel.getByText("maple").waitFor();
    // Only what is stored is offered.
    for (const other of ["By Colors", "By Conditions", "Ascending"]) expect(await panel.getByText(other).isVisible()).toBe(false);
    await panel.getByText("oak").hover();
    await panel.getByText("Only this").last().click();
    await panel.getByRole("button", { name: "Show these" }).click();
    const line = page.locator("#filtered");
    const sentence = "Filtered: 2 of 3 rows shown, by species = oak.";
    await line.getByText(`${sentence} SUM counts the hidden rows too, SUBTOTAL does not. S122, selected, is in a hidden row.`).waitFor();
    const filter = (): Promise<unknown> =>
      page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.data().sheets[0]?.filter);
    expect(await filter()).toEqual({ cells: "R120:S123", keeps: { S: ["oak"] }, hides: [122] });
    expect(await seriousFaults(page, "#filtered")).toEqual([]);
    await page.getByRole("button", { name: "Print ▾" }).click();
    await page.getByRole("button", { name: "This sheet", exact: true }).click();
    const printed = (await page.locator("#tickets .sheet-page").first().textContent()) ?? "";
    expect([sentence, "post 1", "post 2", "post 3"].map((text) => printed.includes(text))).toEqual([true, true, false, true]);
    await stand(page, "S121");
    await page.keyboard.type("ash");
    await page.keyboard.press("Enter");
    await line.getByText("1 row has changed since.").waitFor();
    await line.getByRole("button", { name: "Apply again" }).click();
    await line.getByText("Filtered: 1 of 3 rows shown, by species = oak.").waitFor();
    await line.getByRole("button", { name: "Show all" }).click();
    await line.waitFor({ state: "hidden" });
    expect(await filter()).toBeUndefined();
    for (let step = 0; step < 3; step += 1) await page.keyboard.press("ControlOrMeta+z");
    await line.getByText(`${sentence} SUM counts`).waitFor();
    for (let step = 0; step < 2; step += 1) await page.keyboard.press("ControlOrMeta+z");
    await line.waitFor({ state: "hidden" });
    expect(await filter()).toBeUndefined();
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "a sheet added by + has room to the right of column T",
  async () => {
    const { page } = opened;
    await page.locator("[data-u-comp=sheet-bar-append-button]").first().click({ timeout: 10_000 });
    await page.waitForFunction(() => (globalThis as unknown as Shown).treadsheetBook.sheetNames().length > 1);
    const added = await page.evaluate(async () => {
      const { treadsheetBook: book } = globalThis as unknown as Shown;
      const name = book.sheetNames().find((one) => one !== "Bench") ?? "";
      await book.select(name, "AN9");
      return name;
    });
    await page.keyboard.type("5");
    await page.keyboard.press("Enter");
    expect(await page.evaluate((name) => (globalThis as unknown as Shown).treadsheetBook.value(name, "AN9"), added)).toBe(5);
    await stand(page, "A1");
  },
  browserTime,
);

/** #fbe3df */
const FAIL_FILL = [0xfb, 0xe3, 0xdf] as const;

/** Whether a colour is to be seen on the sheet. */
const isSeen = (page: Page, colour: readonly [number, number, number], is: boolean) =>
  page.waitForFunction(
    ([[red, green, blue], wanted]) => {
      // The others are those of the editors.
      const [canvas] = [...document.querySelectorAll<HTMLCanvasElement>("#sheet canvas")].sort((one, other) => other.height - one.height);
      const { data: pixels } = canvas?.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height) ?? { data: [] };
      let is = false;
      for (let at = 0; at < pixels.length && !is; at += 4)
        is = pixels[at] === red && pixels[at + 1] === green && pixels[at + 2] === blue;
      return is === wanted;
    },
    [colour, is] as const,
  );

test(
  "what spilled takes on the look of its rule as soon as it is true",
  async () => {
    const { page } = opened;
    await stand(page, "A10");
    await isSeen(page, FAIL_FILL, true);
    await typed(page, "A10", '=VSTACK("✓ pass","✓ pass")');
    await isSeen(page, FAIL_FILL, false);
    await typed(page, "A10", '=VSTACK("✓ pass","✗ FAIL")');
    await isSeen(page, FAIL_FILL, true);
  },
  browserTime,
);

test(
  "an entry that is none of the choices is refused by a sentence that names them, then keys go to the cell; Escape closes a list",
  async () => {
    const { page } = opened;
    await stand(page, "C10");
    await page.keyboard.type("middle");
    await page.keyboard.press("Enter");
    await page.getByText("This cell takes one of these: “left”, “right”. The arrow in the cell shows them.").waitFor();
    expect((await cell(page, "C10")).value).toBe("left");
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.activeElement?.id.startsWith("__editor_"));
    await page.keyboard.type("right");
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => (globalThis as unknown as Shown).treadsheetBook.value("Bench", "C10") === "right");
    await stand(page, "C11");
    await page.keyboard.press("F2");
    await page.locator("[data-u-comp=sheets-dropdown-list]").waitFor();
    await page.keyboard.press("Escape");
    await page.locator("[data-u-comp=sheets-dropdown-list]").waitFor({ state: "hidden" });
  },
  browserTime,
);

test(
  "the sheet is dark where the page is, also when that changes",
  async () => {
    const { page } = opened;
    await stand(page, "A10");
    for (const colorScheme of ["light", "dark", "light"] as const) {
      await page.emulateMedia({ colorScheme });
      await isSeen(page, FAIL_FILL, colorScheme === "light");
    }
  },
  browserTime,
);

/** Clicks on a cell near the top left of a sheet whose columns and rows are as they come. */
const click = async (page: Page, column: number, row: number): Promise<void> => {
  const canvases = await page.locator("#sheet canvas").all();
  const boxes = await Promise.all(canvases.map((canvas) => canvas.boundingBox()));
  const [sheet] = boxes.sort((one, other) => (other?.height ?? 0) - (one?.height ?? 0));
  // 46 and 20 px of headings, 88 px a column, 22 px a row.
  await page.mouse.click((sheet?.x ?? 0) + 46 + 88 * column + 40, (sheet?.y ?? 0) + 20 + 22 * row + 11);
};

test(
  "a click on a link goes to its place; one that leads nowhere, or out, says so and asks for nothing",
  async () => {
    const { page } = opened;
    await stand(page, "A1");
    await click(page, 1, 4);
    await page.waitForFunction(() => {
      let address: string | undefined;
      (globalThis as unknown as Shown).treadsheetBook.onSelection((cell) => (address = cell?.address))();
      return address === "D9";
    });
    await click(page, 1, 5);
    await page.getByText("There is no sheet “Long gone” in this workbook: the link leads nowhere.").waitFor();
    await click(page, 1, 6);
    await page.getByText("“https://example.com/” is no place in this workbook, and addresses outside it are not opened here.").waitFor();
    expect((await cell(page, "B8")).value).toEqual({ error: "#VALUE!" });
    expect([opened.faults, page.context().pages().length]).toEqual([[], 1]);
  },
  browserTime,
);

test(
  "an arrow at once after Enter moves on from the next cell",
  async () => {
    const { page } = opened;
    await stand(page, "J50");
    for (const keys of ["5", "<Enter>", "<ArrowRight>", "6", "<Enter>"])
      await (keys.startsWith("<") ? page.keyboard.press(keys.slice(1, -1)) : page.keyboard.type(keys));
    expect([await entered(page, "J50"), await entered(page, "K51")]).toEqual(["5", "6"]);
  },
  browserTime,
);

test(
  "cells typed one after the other without a pause, down by Enter and across by Tab, come whole, each into its own",
  async () => {
    const { page } = opened;
    for (const [key, first, address] of [
      ["Enter", "J1", (index: number) => `J${index + 1}`],
      ["Tab", "J30", (index: number) => `${String.fromCharCode("J".charCodeAt(0) + index)}30`],
    ] as const) {
      await stand(page, first);
      for (const text of ENTERED) {
        await page.keyboard.type(text);
        await page.keyboard.press(key);
      }
      expect(await Promise.all(ENTERED.map((_, index) => entered(page, address(index))))).toEqual(ENTERED);
    }
  },
  browserTime,
);

test(
  "Enter after a chain of Tabs goes under its first cell, and where another cell was selected meanwhile, under that one",
  async () => {
    const { page } = opened;
    const press = async (...keys: readonly string[]): Promise<void> => {
      for (const key of keys) await (key.startsWith("<") ? page.keyboard.press(key.slice(1, -1)) : page.keyboard.type(key));
    };
    await stand(page, "J70");
    await press("1", "<Tab>", "2", "<Tab>", "3", "<Enter>", "4", "<Tab>", "5", "<Tab>");
    expect(await Promise.all(["J70", "K70", "L70", "J71", "K71"].map((address) => entered(page, address)))).toEqual([
      "1",
      "2",
      "3",
      "4",
      "5",
    ]);
    await stand(page, "P80");
    await press("77", "<Enter>", "88", "<Enter>");
    expect(await Promise.all(["P80", "P81", "J72"].map((address) => entered(page, address)))).toEqual(["77", "88", "null"]);
  },
  browserTime,
);

test(
  "names that are offered while a formula is typed take no key meant for the cell: Enter enters what was typed, Tab takes the name",
  async () => {
    const { page } = opened;
    await stand(page, "J60");
    await page.keyboard.type("=STA");
    await page.getByText("STANDARDIZE", { exact: true }).first().waitFor();
    await page.keyboard.type('IR.TOINCHES("7 5/8")');
    await page.keyboard.press("Enter");
    expect(await entered(page, "J60")).toBe('=STAIR.TOINCHES("7 5/8")');
    await stand(page, "J61");
    await page.keyboard.type("=STAIR.TOI");
    await page.getByText("STAIR.TOINCHES", { exact: true }).first().waitFor();
    await page.keyboard.press("Tab");
    await page.getByText("STAIR.TOINCHES", { exact: true }).first().waitFor({ state: "hidden" });
    await page.keyboard.press("Enter");
    expect(await entered(page, "J61")).toMatch(/^=STAIR\.TOINCHES\(/);
  },
  browserTime,
);

type AtReady = { readonly atReady: { readonly empty: readonly string[]; readonly focused: string | undefined } };

test(
  "when the page says it is ready every formula has its value, and keys go to the selected cell",
  async () => {
    const context = await pages.context();
    await context.addInitScript(() => {
      new MutationObserver(() => {
        if (document.documentElement.dataset["ready"] !== "yes") return;
        const { treadsheetBook: book } = globalThis as unknown as Shown;
        const formulas = book
          .data()
          .sheets.flatMap(({ name, cells }) =>
            Object.entries(cells).flatMap(([address, { formula }]) => (formula === undefined ? [] : [{ name, address }])),
          );
        Object.assign(globalThis, {
          atReady: {
            empty: formulas
              .filter(({ name, address }) => book.value(name, address) === null)
              .map(({ name, address }) => `${name} ${address}`),
            focused: document.activeElement?.id,
          },
        });
      }).observe(document, { attributes: true, attributeFilter: ["data-ready"], subtree: true });
    });
    const { page } = await pages.open("", { context });
    await page.waitForFunction(() => (globalThis as unknown as Partial<AtReady>).atReady !== undefined);
    expect(await page.evaluate(() => (globalThis as unknown as AtReady).atReady)).toEqual({
      empty: [],
      focused: "__editor___INTERNAL_EDITOR__DOCS_NORMAL",
    });
    await page.keyboard.type("9' 14\"");
    await page.keyboard.press("Enter");
    expect(
      await page.evaluate(() => {
        const { treadsheetBook: book } = globalThis as unknown as Shown;
        return book.value(book.sheetNames()[0] ?? "", "A1");
      }),
    ).toBe("9' 14\"");
    await context.close();
  },
  browserTime,
);

test(
  "what spills shows what fits too, and is copied whole",
  async () => {
    const { page } = opened;
    await typed(page, "M1", "=SEQUENCE(2,1,64.40820312)");
    expect(await cell(page, "M2")).toEqual({ value: 65.40820312, shown: "65.408203" });
    expect(await page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.copied("Bench", "M1", "M2"))).toBe(
      "64.40820312\n65.40820312",
    );
  },
  browserTime,
);

test(
  "lengths pasted as texts are numbers as when they are typed, into a cell of text they stay texts, and undo leaves nothing of them",
  async () => {
    const { page } = opened;
    const pasted = async (text: string, at: string, last: string) => {
      await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
      await stand(page, at);
      await page.keyboard.press("ControlOrMeta+v");
      await page.waitForFunction((cell) => (globalThis as unknown as Shown).treadsheetBook.value("Bench", cell) !== null, last);
    };
    await pasted("7 9/16\t7-5/8\n3' 4\"\t3/32\n", "F30", "G31");
    // By hand: 5/8 = 0.625, 3/32 = 0.09375. F30 is a cell of text, G31 one of sixteenths.
    expect(await Promise.all(["F30", "G30", "F31", "G31"].map((at) => cell(page, at)))).toEqual([
      { value: "7 9/16", shown: "7 9/16" },
      { value: 7.625, shown: "7 5/8" },
      { value: "3' 4\"", shown: "3' 4\"" },
      { value: 0.09375, shown: "3/32" },
    ]);
    await pasted("7 9/16", "F40", "F40");
    expect(await cell(page, "F40")).toEqual({ value: 7.5625, shown: "7 9/16" });
    await page.keyboard.press("ControlOrMeta+z");
    await page.waitForFunction(() => (globalThis as unknown as Shown).treadsheetBook.value("Bench", "F40") === null);
    expect(await page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.format("Bench", "F40"))).toBe("General");
  },
  browserTime,
);

test("all of it, and taking one workbook for another, happens without a fault of the page", () => {
  expect(opened.faults).toEqual([]);
});
