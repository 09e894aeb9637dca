/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { demo } from "../../src/sheets/demo/demo";
import type { AskedJob } from "../../src/sheets/job/own-job";
import { canGather, gathering, startedJob } from "../../src/sheets/job/started-job";
import type { SheetData } from "../../src/sheets/sheet-data";
import { nextCell } from "../../src/web/next-cell";
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

  test("is a workbook of the fourteen sheets, with the job's name and what was asked", () => {
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

  test("has its money in the money of its code", () => {
    const said = JSON.stringify(sheets);
    expect([/\$(?= |,|"| each)/.test(said), said.includes("£ before tax"), said.includes("$ before tax")]).toEqual(
      asked.code.startsWith("uk") ? [false, true, false] : [true, false, true],
    );
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
    expect(book.value("Order", "A17")).toBe("– type in Order A9");
    expect([book.value("Job", "G4"), book.value("Job", "G5")]).toEqual(["–", "type in Bid K9"]);
    // 106 1/8 / 7 3/4 = 13.7 and 2700 / 220 = 12.3: the greatest rises of IRC R311.7.5.1 and of Approved Document K, Table 1.1.
    expect(book.value("Job", "B12")).toBe(asked.unit === "in" ? 14 : 13);
    expect(book.value("Layout", "D4")).toBe(asked.unit === "in" ? 130 : 3000);
  }, ENGINE_TIME);
});

test("a code printed in millimetres has its unit behind each figure in a job in inches", async () => {
  const book = await openedData({ version: 1, sheets: startedJob({ ...ASKED, code: "nbc-ca-2020" }, [], false).sheets });
  const row = (item: string) => book.spill("Check", "A8").find(([, found]) => found === item)?.slice(2, 6);
  // By hand: 106 1/8 in / 14 = 192.541 mm; NBC 2020 Table 9.8.4.1: 125 to 200 mm; 200 - 192.541 = 7.459.
  expect(row("riser height")).toEqual(["192.5 mm", "125 to 200 mm", "7.46 mm", "192.5 mm"]);
  // 10 in is 254 mm; Table 9.8.4.2: 255 to 355 mm.
  expect(row("run")).toEqual(["254.0 mm", "255 to 355 mm", "-1 mm", "254.0 mm"]);
}, ENGINE_TIME);

test("names that are taken are not used again, and formulas and links follow", () => {
  const { sheets } = startedJob(ASKED, ["job", "Check"], false);
  expect(sheets.map(({ name }) => name)).toEqual([
    "Job 2", "Survey", "Layout", "Check 2", "Order", "Cut plan", "Boards", "Yard order", "Fit", "Takeoff", "Bid", "Quote", "Books",
    "Register",
  ]);
  expect(sheets[0]?.cells["D10"]?.formula).toBe('=HYPERLINK("#\'Check 2\'!A1","Check 2 ›")');
  expect(sheets[3]?.cells["A1"]?.formula).toBe("=\"Code check: \"&'Job 2'!B10");
});

test("one more stair has linked sheets of its own, and Bid and Books gather both", async () => {
  const book = await openedData({ version: 1, sheets: demo });
  const { sheets, gatherings } = startedJob(ASKED, book.sheetNames(), true);
  expect(sheets.map(({ name }) => name)).toEqual([
    "Job 2", "Survey 2", "Layout 2", "Check 2", "Order 2", "Cut plan 2", "Boards 2", "Fit 2", "Takeoff 2",
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
  expect(book.value("Order 2", "A17")).toBe("– type in Order 2 A9");
  expect([book.value("Yard order", "A4"), book.value("Yard order", "B4")]).toEqual(["–", "–"]);
  // The second stair is the first over again, its risers as designed: 14 of 37 in, five to a board of 16 ft, three to one of 10, one off
  // the rack, so the same boards.
  const alike = new Map(sheets.map(({ name, cells }) => [name, cells]));
  for (const { name, address, value } of inputs(demo)) {
    const cell = alike.get(`${name} 2`)?.[address];
    if (name === "Fit" || value === undefined || cell === undefined) continue;
    book.put(`${name} 2`, { [address]: { value } });
  }
  await book.settled();
  // 2 x 2,769.51 and 2 x 1,331.69, by hand in the tests of the demo; 5539.02 x 1.12 / 0.85 = 7298.47.
  expect(spilled(book, "Bid", "AH8", "direct", "cost")).toBeCloseTo(5539.02, 4);
  expect(book.value("Bid", "A4")).toBeCloseTo(7298.47, 4);
  expect(spilled(book, "Books", "AH8", "total", "planned cost")).toBeCloseTo(2663.38, 4);
  expect(book.value("Takeoff 2", "A4")).toBeCloseTo(2769.51, 4);
  // The six kinds of goods of one stair, 20 pieces of them, by hand in tests/jobs/demo/yard-order.test.ts.
  expect([book.value("Yard order", "A4"), book.value("Yard order", "B4")]).toEqual([6, 40]);
}, ENGINE_TIME);

describe("what a job of one's own waits for", () => {
  const filledIn = async (typed: Readonly<Record<string, Readonly<Record<string, number | string>>>>): Promise<Workbook> => {
    const book = await openedData({ version: 1, sheets: startedJob(ASKED, [], false).sheets });
    for (const [sheet, cells] of Object.entries(typed)) {
      book.put(sheet, Object.fromEntries(Object.entries(cells).map(([address, value]) => [address, { value }])));
    }
    await book.settled();
    return book;
  };
  const waited = (book: Workbook) => {
    const { asks = [] } = nextCell(book.data().sheets, (sheet, address) => book.value(sheet, address), undefined);
    return asks.map(({ at, says }) => `${at.sheet} ${at.address}: ${says}`);
  };
  const SAW = { B25: 0.125, B26: 0.25, B27: 12 };
  const POPLAR = { A9: "poplar", B9: 96, C9: 7.25, D9: 0.75, E9: 18 };
  const SKIRT = { A10: "skirt", B10: 192, C10: 11.25, D10: 0.75, E10: 88, H10: "skirt" };
  const STRIP = { A11: "strip", B11: 96, C11: 1.25, D11: 1, E11: 8, F11: 2, H11: "return" };

  test("is named sheet after sheet, and nothing optional with it", async () => {
    expect(waited(await filledIn({}))).toEqual([
      "Survey B8: rough rise, in, row 1", "Layout B24: skirt thickness", "Layout O25: width of one, in", "Order A9: Blanks to be had",
      "Cut plan A9: Boards to be had", "Fit C9: Treads as taped: back, row 1", "Fit C36: top, row 1", "Bid K9: hours, tread without return",
      "Books A9: Moves of goods",
    ]);
  }, ENGINE_TIME);

  test("follows what is typed: the next step below the floor, the tread thickness, a board of each wood that is cut", async () => {
    const book = await filledIn({
      Survey: { B8: 7.5, B9: 7.5 },
      "Cut plan": { ...SAW, ...POPLAR },
    });
    expect(waited(book)).toEqual(expect.arrayContaining([
      "Survey I8: tread thickness", "Cut plan A10: a board of grade skirt and one of grade rail and one of grade return",
    ]));
    book.put("Survey", { I8: { value: 1 } });
    await book.settled();
    expect(waited(book)).toContain("Survey B10: rough rise, in, row 3");
    book.put("Survey", { B11: { value: 7.5 } });
    await book.settled();
    expect(waited(book)).toContain("Survey B10: rough rise, in, row 3");
  }, ENGINE_TIME);

  test("stands where it is shown once its sheet goes by another name, and a full table of boards is said to be full", async () => {
    const { sheets } = startedJob(ASKED, [], false);
    const renamed = sheets.map((sheet) => (sheet.name === "Bid" ? { ...sheet, name: "Offer" } : sheet));
    const shown = (sheet: string, address: string) => (sheet === "Takeoff" && address === "AG8" ? "– type in Bid K9" : null);
    expect(nextCell(renamed, shown, undefined).asks).toEqual([{ at: { sheet: "Takeoff", address: "AG8" }, says: "Bid K9" }]);
    const full = Object.fromEntries(Array.from({ length: 14 }, (_, row) => [[`B${9 + row}`, 96], [`C${9 + row}`, 7.25]]).flat());
    expect(waited(await filledIn({ "Cut plan": { ...SAW, ...full } }))).toContain(
      "Cut plan A22: every row is taken; in the place of a board that is not cut, one of grade skirt and one of grade rail and one of " +
        "grade return",
    );
  }, ENGINE_TIME);

  test("a stair open on both sides with two rails has two open skirts, two rails and no closed skirt", async () => {
    const book = await openedData({ version: 1, sheets: startedJob({ ...ASKED, openEnd: "both" }, [], false).sheets });
    book.put("Job", { B16: { value: "both" } });
    book.put("Cut plan", Object.fromEntries(Object.entries({
      ...SAW, ...POPLAR, ...SKIRT, ...STRIP, F11: "any", A12: "rail", B12: 168, C12: 2.25, D12: 2.5, E12: 96, H12: "rail",
    }).map(([address, value]) => [address, { value }])));
    await book.settled();
    expect([25, 26, 27, 28].map((row) => book.value("Cut plan", `H${row}`))).toEqual([2, 0, 2, 26]);
    expect(book.value("Cut plan", "E26")).toBe("");
    const cut = book.spill("Cut plan", "J8").map((row) => row[2]);
    const count = (piece: string): number => cut.filter((one) => one === piece).length;
    expect(["open skirt", "closed skirt", "rail", "return"].map(count)).toEqual([2, 0, 2, 26]);
  }, ENGINE_TIME);

  test("a board without a number is to be had in any, and returns are cut and paid for", async () => {
    const book = await filledIn({
      Job: { B16: "none" },
      "Cut plan": { ...SAW, ...POPLAR, ...SKIRT, ...STRIP },
      Order: { A9: "oak", B9: 42, C9: 11.5, D9: 1, E9: 54, A10: "nosing", B10: 48, C10: 3.5, D10: 1, E10: 19.5 },
    });
    // By hand: 96 - 2 x 1/4 holds two risers of 37 and seven returns of 12 1/2 with their kerfs, so 7 boards for 14 risers and 2 strips
    // for 13 returns; the two skirts are longer than half of 16 ft: 7 x 18 + 2 x 88 + 2 x 8.
    expect(book.value("Cut plan", "A4")).toBe(318);
    const cut = book.spill("Cut plan", "J8");
    expect(cut.filter((row) => row[2] === "return").map((row) => row[3])).toEqual(Array.from({ length: 13 }, () => 12.5));
    expect(book.spill("Cut plan", "BK8").map((row) => row.slice(0, 2))).toEqual(expect.arrayContaining([["strip", 2]]));
  }, ENGINE_TIME);

  test("where the code has no one figure for how alike rises are, Survey says what it took", async () => {
    // Approved Document K 1.3: alike, without a figure.
    const survey = { B8: 7.5, B9: 7.5, B10: 7.5, I8: 1, I9: 1, I10: 1 };
    const book = await filledIn({ Job: { B10: "uk-adk-private", B11: 22.5 }, Survey: survey });
    const assumed = 'Within 3/8" is assumed: the code has no one figure for it, see Check; type another in I13.';
    expect(book.value("Survey", "H14")).toBe(`The plan: within 3/8"; nothing to pack. ${assumed}`);
    // A limit in words is no length.
    expect(book.spill("Check", "A8").find(([, item]) => item === "riser uniformity")?.[3]).toBe("alike, no figure");
    book.put("Survey", { I13: { value: 0.25 } });
    await book.settled();
    expect(book.value("Survey", "H14")).toBe('The plan: within 1/4"; nothing to pack.');
  }, ENGINE_TIME);

  test("a step that cannot be read is no step that closes", async () => {
    const book = await filledIn({ Job: { B15: "none" }, Fit: { A9: 1, B9: 10, C9: 36.75, D9: 36.75, E9: 38.0875, F9: 38.0875 } });
    expect([book.value("Fit", "D4"), book.value("Job", "H4")]).toEqual(["✓ they close", "✓ they close"]);
    book.put("Fit", { B9: { value: "about 10" } });
    await book.settled();
    expect([book.value("Fit", "D4"), book.value("Job", "H4")]).toEqual(["✗ 1 in error", "✗ 1 in error"]);
  }, ENGINE_TIME);

  test("a run taped with only the riser behind on makes the tread deeper by the riser in front", async () => {
    const read = { A9: 1, B9: 10, C9: 36.75, D9: 36.75, E9: 38.0875, F9: 38.0875 };
    const depth = async (layout: Readonly<Record<string, string>>): Promise<unknown> => {
      const book = await filledIn({ Job: { B15: "none" }, Fit: read, Layout: layout });
      const [headings = [], row = []] = book.spill("Fit", "AA8");
      return row[headings.indexOf("depth")];
    };
    const { cells = {} } = startedJob(ASKED, [], false).sheets.find(({ name }) => name === "Layout") ?? {};
    const free = Array.from({ length: 60 }, (_, row) => row + 9).find((row) => cells[`A${row}`]?.style?.startsWith("input") === true);
    // By hand: 10 and a nosing of 1 1/4, and with it the riser of 3/4 that was not on yet.
    expect([await depth({}), await depth({ [`A${String(free)}`]: "riser on", [`B${String(free)}`]: "behind" })]).toEqual([11.25, 12]);
  }, ENGINE_TIME);

  test("returns side by side on a wide board are listed with where each lies across it, and which cut comes first", async () => {
    const book = await filledIn({
      Job: { B16: "none" },
      "Cut plan": { ...SAW, ...POPLAR, ...SKIRT, ...STRIP, C11: 2.75 },
      Order: { A9: "oak", B9: 42, C9: 11.5, D9: 1, E9: 54, A10: "nosing", B10: 48, C10: 3.5, D10: 1, E10: 19.5 },
    });
    const cut = book.spill("Cut plan", "J8");
    const returns = cut.filter((row) => row[2] === "return").map(([stock, board, , length, along, across, width, left]) =>
      ({ stock, board, length, along: Number(along), across: Number(across), width, left }));
    // By hand: a trim of 1/4 off the ends leaves 95 1/2 x 2 3/4; seven of 12 1/2 and a kerf of 1/8 are 88 3/8 long, two of 1 1/4 are 2 5/8
    // across: all 13 come out of one strip, 8 less than from two. What lies under the seventh return is left.
    expect(book.value("Cut plan", "A4")).toBe(310);
    expect(new Set(returns.map(({ stock, board, length, width }) => [stock, board, length, width].join()))).toEqual(
      new Set([expect.stringMatching(/^strip, (rip|crosscut) first,\d+,12.5,1.25$/)]),
    );
    const places = returns.map(({ along, across }) => `${along} ${across}`).sort();
    const grid = Array.from({ length: 7 }, (_, at) => 0.25 + at * 12.625).flatMap((along) => [`${along} 0`, `${along} 1.375`]);
    expect(new Set(places).size).toBe(13);
    expect(grid).toEqual(expect.arrayContaining(places));
    // Risers are one across their boards: no place across, no width of their own.
    expect([...new Set(cut.filter((row) => row[2] === "riser").flatMap((row) => [row[5], row[6]]))]).toEqual([""]);
    expect(cut.filter((row) => row[2] === "open skirt").map((row) => [row[5], Number(row[6]) > 0])).toEqual([[0, true]]);
    expect([book.value("Cut plan", "J4"), book.value("Job", "H12")]).toEqual(["✓ no, proven", "✓ none cheaper"]);
    expect(book.value("Cut plan", "M5")).toBe("pieces");
  }, ENGINE_TIME);
});
