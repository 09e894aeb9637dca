import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { associated } from "../host/stand-in";
import { openedPages, type Opened } from "./opened-page";
import { seriousFaults } from "./serious-faults";

const browserTime = 400_000;

let pages: Opened;
beforeAll(async () => {
  pages = await openedPages();
}, browserTime);
afterAll(() => pages?.close(), browserTime);

type Cells = readonly (readonly unknown[])[];

/** What stands on the sheet Mine: what is typed from A1 on, and, where there is one, a formula in the first row with what it spills. */
interface Standing {
  readonly typed: Cells;
  readonly spilled?: { readonly column: number; readonly formula: string; readonly rows: Cells };
}

const STAIR: Standing = { typed: [["total rise", 98], ["risers", 14], ["run", 9.5]] };

const shownRows = ({ typed, spilled }: Standing): Cells =>
  Array.from({ length: Math.max(typed.length, spilled?.rows.length ?? 0) }, (_, row) => {
    const own = typed[row] ?? [];
    const between = Array<string>(Math.max(0, (spilled?.column ?? 0) - own.length)).fill("");
    return spilled === undefined ? own : [...own, ...between, ...(spilled.rows[row] ?? [])];
  });

/** Excel on a platform with these cells; the spilled one selected, or A1; as far as the pane asks it for drawings. */
const inExcel = (platform: string, standing: Standing): { readonly script: string } => ({
  script: `
    const rows = ${JSON.stringify(shownRows(standing))};
    const spilled = ${JSON.stringify(standing.spilled ?? null)};
    const isAnchor = (row, column) => spilled !== null && row === 0 && column === spilled.column;
    globalThis.placed = [];
    globalThis.CustomFunctions = { associate: () => undefined, Error: class extends Error {}, ErrorCode: {} };
    globalThis.Office = {
      HostType: { Excel: "Excel" },
      PlatformType: { PC: "PC", OfficeOnline: "OfficeOnline", Mac: "Mac" },
      context: { platform: "${platform}", requirements: { isSetSupported: (set) => set === "ExcelApi" } },
      onReady: (ready) => Promise.resolve({ host: "Excel" }).then(ready),
    };
    const load = () => undefined;
    const none = () => ({ load, isNullObject: true, getSpillingToRangeOrNullObject: none });
    const range = (row, column, down, right) => {
      const line = (y, make) =>
        Array.from({ length: right }, (_, x) => make(rows[row + y]?.[column + x] ?? "", isAnchor(row + y, column + x)));
      const cells = (make) => Array.from({ length: down }, (_, y) => line(y, make));
      return {
        load, rowIndex: row, columnIndex: column, rowCount: down, columnCount: right,
        left: column * 48, top: row * 15, hasSpill: false,
        formulas: cells((one, isFormula) => (isFormula ? spilled.formula : one)), values: cells((one) => one),
        numberFormat: cells(() => "General"),
        valueTypes: cells((one) => (one === "" ? "Empty" : typeof one === "number" ? "Double" : "String")),
        getSpillParentOrNullObject: none,
        getSpillingToRangeOrNullObject: () =>
          (isAnchor(row, column) ? range(row, column, spilled.rows.length, spilled.rows[0].length) : none()),
      };
    };
    const shapes = {
      load, items: globalThis.placed,
      addImage: (png) => {
        const shape = { png, delete: () => void placed.splice(placed.indexOf(shape), 1) };
        placed.push(shape);
        return shape;
      },
    };
    const sheet = { load, name: "Mine", getRangeByIndexes: range, shapes, visibility: "Visible" };
    const on = { add: () => undefined };
    const workbook = {
      load, worksheets: { load, items: [sheet], getItem: () => sheet, onCalculated: on }, onSelectionChanged: on,
      getActiveCell: () => ({ ...range(0, spilled?.column ?? 0, 1, 1), worksheet: sheet }),
    };
    globalThis.Excel = { run: (work) => work({ workbook, sync: async () => undefined }) };`,
});

const shownDrawings = async (platform: string, standing = STAIR, caption = "Stringer"): Promise<Page> => {
  const viewport = { width: 320, height: 700 };
  const { page } = await pages.open("taskpane.html", { viewport, platform: inExcel(platform, standing) });
  await page.getByRole("tab", { name: "Drawings" }).click();
  await page.locator("#part-drawings figcaption", { hasText: caption }).first().waitFor();
  return page;
};

interface Placed {
  readonly name: string;
  readonly png: string;
  readonly altTextDescription: string;
  readonly left: number;
  readonly width: number;
  readonly height: number;
}
const placed = (page: Page): Promise<readonly Placed[]> =>
  page.evaluate(() => (globalThis as unknown as { readonly placed: readonly Placed[] }).placed.map((one) => ({ ...one })));

test(
  "in Excel a drawing is placed as a picture of its own size, black on white, and in its own stead the next time",
  async () => {
    const page = await shownDrawings("PC");
    const button = page.locator("#part-drawings figure").first().getByRole("button", { name: "Place as picture" });
    await button.click();
    await page.getByText("Placed on Mine: Treadsheet A1 elevation.").waitFor();
    const [first] = await placed(page);
    // By hand: column C is 2 x 48 points from the left, and 12 of room.
    expect(first).toMatchObject({ name: "Treadsheet A1 elevation", left: 108 });
    expect(first?.altTextDescription).toContain("14 rises");
    const seen = await page.evaluate(async (png) => {
      const image = new Image();
      image.src = `data:image/png;base64,${png}`;
      await image.decode();
      const canvas = Object.assign(document.createElement("canvas"), { width: image.width, height: image.height });
      const pen = canvas.getContext("2d");
      if (pen === null) throw new Error("no canvas");
      pen.drawImage(image, 0, 0);
      const { data } = pen.getImageData(0, 0, image.width, image.height);
      let [dark, white, clear, coloured] = [0, 0, 0, 0];
      for (let at = 0; at < data.length; at += 4) {
        const [red = 0, green = 0, blue = 0, opaque = 0] = data.slice(at, at + 4);
        if (opaque < 255) clear += 1;
        if (Math.max(red, green, blue) - Math.min(red, green, blue) > 8) coloured += 1;
        if (red < 64) dark += 1;
        if (red === 255) white += 1;
      }
      return { width: image.width, height: image.height, dark, clear, coloured, mostlyWhite: white > data.length / 4 / 2 };
    }, first?.png ?? "");
    // 240 dots to the 72 points of an inch, a dot of rounding.
    expect(Math.abs(seen.width - ((first?.width ?? 0) * 240) / 72)).toBeLessThan(1);
    expect(Math.abs(seen.height - ((first?.height ?? 0) * 240) / 72)).toBeLessThan(1);
    expect(seen.dark).toBeGreaterThan(1000);
    expect([seen.clear, seen.coloured, seen.mostlyWhite]).toEqual([0, 0, true]);
    await button.click();
    await page.getByText("Placed anew on Mine: Treadsheet A1 elevation.").waitFor();
    expect((await placed(page)).map(({ name }) => name)).toEqual(["Treadsheet A1 elevation"]);
    expect(await seriousFaults(page, "#part-drawings")).toEqual([]);
  },
  browserTime,
);

test(
  "in Excel on Windows drawings are saved, one as SVG or all of a table as a page, a sheet of paper each",
  async () => {
    const page = await shownDrawings("PC");
    const svg = page.waitForEvent("download");
    await page.locator("#part-drawings figure").nth(1).getByRole("button", { name: "Save SVG" }).click();
    expect((await svg).suggestedFilename()).toBe("Mine A1 stringer.svg");
    const saved = page.waitForEvent("download");
    await page.locator("#part-drawings").getByRole("button", { name: "Save as web page" }).click();
    const file = await saved;
    expect(file.suggestedFilename()).toBe("Mine A1 drawings.html");
    const html = readFileSync(await file.path(), "utf8");
    const printed = await page.context().newPage();
    await printed.setContent(html);
    expect(await printed.locator("section svg.draft").count()).toBe(4);
    for (const format of ["Letter", "A4"]) {
      const pdf = (await printed.pdf({ format, preferCSSPageSize: false, landscape: true })).toString("latin1");
      // A page each, by the PDF's own count of its pages.
      expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(4);
    }
    expect(await page.locator("#part-drawings").getByRole("button", { name: "Print" }).count()).toBe(0);
  },
  browserTime,
);

/** Five treads between walls: 10 by 36 and square, so with diagonals of 37.363; one diagonal of the third cannot be. */
const TAPED: Cells = [
  ["step", "run", "back", "front", "diagonal", "second diagonal"],
  ...[1, 2, 3, 4, 5].map((step) => [step, 10, 36, 36, step === 3 ? 40 : Math.hypot(10, 36), Math.hypot(10, 36)]),
];

const markedTreads = (): Standing => {
  const marks = associated().get("MARKS");
  if (marks === undefined) throw new Error("no MARKS");
  return { typed: TAPED, spilled: { column: 7, formula: "=STAIR.MARKS(A1:F6)", rows: marks(TAPED) as Cells } };
};

test(
  "in Excel on Windows the cut cards of the marks selected are saved as one page, two to a sheet of paper",
  async () => {
    const page = await shownDrawings("PC", markedTreads(), "Tread");
    const part = page.locator("#part-drawings");
    const saved = page.waitForEvent("download");
    await part.getByRole("button", { name: "Save cut cards as web page" }).click();
    const file = await saved;
    expect(file.suggestedFilename()).toBe("Mine H1 cut cards.html");
    await page.getByText("Handed over as Mine H1 cut cards.html.").waitFor();
    const printed = await page.context().newPage();
    await printed.setContent(readFileSync(await file.path(), "utf8"));
    const cards = printed.locator("section svg");
    expect(await cards.evaluateAll((all) => all.map((card) => card.getAttribute("aria-label")))).toEqual(
      [1, 2, 3, 4, 5].map((step) => `Cut card: step ${step}, tread`),
    );
    expect(await printed.locator("section").evaluateAll((all) => all.map((one) => one.querySelectorAll("svg").length))).toEqual([2, 2, 1]);
    expect(await printed.locator('[data-part="caution"]').allTextContents()).toEqual(
      Array<string>(5).fill("Test cut in scrap. Guards on. Eye, ear and dust protection."),
    );
    // The third to be read again, and no other; nothing on the sheet says whose job it is.
    expect(await cards.filter({ hasText: "READ AGAIN" }).evaluateAll((all) => all.map((card) => card.getAttribute("aria-label")))).toEqual([
      "Cut card: step 3, tread",
    ]);
    expect(await cards.filter({ hasText: "job ____________" }).count()).toBe(5);
    for (const format of ["Letter", "A4"]) {
      const pdf = (await printed.pdf({ format, preferCSSPageSize: false })).toString("latin1");
      expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(3);
    }
    expect(await part.getByRole("button", { name: /^Print/ }).count()).toBe(0);
    expect(await seriousFaults(page, "#part-drawings")).toEqual([]);
  },
  browserTime,
);

test(
  "in Excel for Mac, where a pane saves nothing, the pane says what to do instead",
  async () => {
    const page = await shownDrawings("Mac");
    const part = page.locator("#part-drawings");
    expect(await part.getByRole("button", { name: /^Save/ }).count()).toBe(0);
    expect(await part.getByRole("button", { name: "Place as picture" }).count()).toBe(4);
    await part.getByText("saves no files and does not print: place the drawing as a picture, then print the sheet.").waitFor();
    expect(await part.getByText(/^Cut cards/).count()).toBe(0);
    const withMarks = (await shownDrawings("Mac", markedTreads(), "Tread")).locator("#part-drawings");
    expect(await withMarks.getByRole("button", { name: /cut cards/ }).count()).toBe(0);
    await withMarks.getByText("Cut cards are saved from Excel on Windows and on the web: open the workbook there.").waitFor();
  },
  browserTime,
);
