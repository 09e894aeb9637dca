/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { demo } from "../../src/sheets/demo/demo";
import type { AskedJob } from "../../src/sheets/job/own-job";
import { canGather, gathering, startedJob } from "../../src/sheets/job/started-job";
import type { SheetData } from "../../src/sheets/sheet-data";
import type { CellValue, Workbook } from "../../src/workbook/workbook";
import { workbookData } from "../../src/workbook/workbook-data";
import { closeWorkbooks, openedData } from "../workbook/opened-workbook";

/** For the engine to work a whole job out on a busy machine, in milliseconds. */
const ENGINE_TIME = 120_000;

afterAll(closeWorkbooks);

const ASKED: AskedJob = { job: "Hall stair", unit: "in", code: "irc-2021", totalRise: 106.125, run: 10, width: 36.75, openEnd: "right" };
const METRIC: AskedJob = { job: "Hall stair", unit: "mm", code: "uk-adk-private", totalRise: 2700, run: 250, width: 900, openEnd: "left" };

const inputs = (sheets: readonly SheetData[]) =>
  sheets.flatMap(({ name, cells }) =>
    Object.entries(cells).flatMap(([address, cell]) =>
      cell.style === "input" || cell.style === "inputText" ? [{ name, address, value: cell.value }] : [],
    ),
  );

const spilled = (book: Workbook, sheet: string, anchor: string, label: string, heading: string): CellValue => {
  const [headings = [], ...rows] = book.spill(sheet, anchor);
  return rows.find(([first]) => first === label)?.[headings.indexOf(heading)] ?? null;
};

describe.each([["inches", ASKED], ["millimetres", METRIC]])("a job of one's own, in %s", (_unit, asked) => {
  const { sheets, gatherings } = startedJob(asked, [], false);

  test("is a workbook of the ten sheets, with the job's name and what was asked", () => {
    expect(workbookData({ version: 1, sheets }).sheets.map(({ name }) => name)).toEqual(demo.map(({ name }) => name));
    expect(gatherings).toEqual([]);
    const [job] = sheets;
    expect(["B8", "B10", "B11", "B13", "B14", "B15"].map((address) => job?.cells[address]?.value)).toEqual([
      asked.job, asked.code, asked.totalRise, asked.run, asked.width, asked.openEnd,
    ]);
  });

  test("has no invented number: what is typed is what was asked, and the numbers of the steps", () => {
    const numbers = inputs(sheets).filter(({ value }) => typeof value === "number");
    const steps = numbers.filter(({ name, address }) => name === "Fit" && address.startsWith("A"));
    expect(numbers.filter((one) => !steps.includes(one)).map(({ value }) => value)).toEqual([asked.totalRise, asked.run, asked.width]);
    expect(JSON.stringify(sheets)).not.toContain("invented");
  });

  test("has no cell in error, and asks for what is to be typed", async () => {
    const book = await openedData({ version: 1, sheets });
    const shown = sheets.flatMap(({ name, cells }) =>
      Object.entries(cells).flatMap(
        ([address, { formula }]) => (formula === undefined ? [] : [{ name, address, block: book.spill(name, address).flat() }])
      ),
    );
    expect(
      shown
        .filter(({ block }) => block.some((cell) => typeof cell === "object" && cell !== null))
        .map(({ name, address }) => [name, address]),
    ).toEqual([]);
    expect(book.value("Order", "A17")).toBe("– type the blanks the yard has above");
    expect([book.value("Job", "G4"), book.value("Job", "G5")]).toEqual(["–", "see Bid!A14"]);
    // 106 1/8 / 7 3/4 = 13.7 and 2700 / 220 = 12.3: the greatest rises of IRC R311.7.5.1 and of Approved Document K, Table 1.1.
    expect(book.value("Job", "B12")).toBe(asked.unit === "in" ? 14 : 13);
    expect(book.value("Layout", "D4")).toBe(asked.unit === "in" ? 130 : 3000);
  }, ENGINE_TIME);
});

test("names that are taken are not used again, and formulas and links follow", () => {
  const { sheets } = startedJob(ASKED, ["job", "Check"], false);
  expect(sheets.map(({ name }) => name)).toEqual([
    "Job 2", "Survey", "Layout", "Check 2", "Order", "Cut plan", "Fit", "Takeoff", "Bid", "Books",
  ]);
  expect(sheets[0]?.cells["D10"]?.formula).toBe('=HYPERLINK("#\'Check 2\'!A1","Check 2 ›")');
  expect(sheets[3]?.cells["A1"]?.formula).toBe("=\"Code check: \"&'Job 2'!B10");
});

test("one more stair has linked sheets of its own, and Bid and Books gather both", async () => {
  const book = await openedData({ version: 1, sheets: demo });
  const { sheets, gatherings } = startedJob(ASKED, book.sheetNames(), true);
  expect(sheets.map(({ name }) => name)).toEqual([
    "Job 2", "Survey 2", "Layout 2", "Check 2", "Order 2", "Cut plan 2", "Fit 2", "Takeoff 2",
  ]);
  book.addSheets(sheets);
  for (const { sheet, address, adds } of gatherings) {
    const formula = book.formula(sheet, address);
    expect([sheet, canGather(formula)]).toEqual([sheet, true]);
    book.setCell(sheet, address, gathering(formula ?? "", adds));
  }
  await book.settled();
  // Nothing priced yet: the bid has no answer rather than the price of one stair.
  expect(book.value("Bid", "A4")).toBe("–");
  // The second stair is the first over again, its risers as designed: 14 of 37 in, five to a board of 16 ft, three to one of 10, one off
  // the rack, so the same boards.
  const alike = new Map(sheets.map(({ name, cells }) => [name, cells]));
  for (const { name, address, value } of inputs(demo)) {
    const cell = alike.get(`${name} 2`)?.[address];
    if (name === "Fit" || value === undefined || cell === undefined) continue;
    book.put(`${name} 2`, { [address]: { value } });
  }
  await book.settled();
  // 2 x 2,769.51 and 2 x 1,091.90, by hand in the tests of the demo; 5539.02 x 1.12 / 0.85 = 7298.47.
  expect(spilled(book, "Bid", "AH8", "direct", "cost")).toBeCloseTo(5539.02, 4);
  expect(book.value("Bid", "A4")).toBeCloseTo(7298.47, 4);
  expect(spilled(book, "Books", "AH8", "total", "planned cost")).toBeCloseTo(2183.8, 4);
  expect(book.value("Takeoff 2", "A4")).toBeCloseTo(2769.51, 4);
}, ENGINE_TIME);
