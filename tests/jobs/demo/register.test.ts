/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { demo } from "../../../src/sheets/demo/demo";
import type { CellValue, Workbook } from "../../../src/workbook/workbook";
import { builtFunctions, closeWorkbooks, openedData } from "../../workbook/opened-workbook";

/** For the engine to open the demo and work it out on a busy machine, in milliseconds. */
const ENGINE_TIME = 240_000;

let book: Workbook;

beforeAll(async () => {
  book = await openedData({ version: 1, sheets: demo }, builtFunctions());
}, ENGINE_TIME);

afterAll(closeWorkbooks);

type Row = Readonly<Record<string, CellValue>>;

const rowsOf = (sheet: string, anchor: string): readonly Row[] => {
  const [headings = [], ...rows] = book.spill(sheet, anchor);
  return rows.map((row) => Object.fromEntries(headings.map((heading, place) => [String(heading), row[place] ?? null])));
};

const sumOf = (rows: readonly Row[], heading: string): number =>
  rows.reduce((total, row) => total + (typeof row[heading] === "number" ? row[heading] : 0), 0);

/** Days of the sheet: 46082 is 2026-03-01, 46113 is 2026-04-01. */
const MONTHS: readonly (readonly [month: string, from: number, before: number])[] = [["2026-03", 46082, 46113], ["2026-04", 46113, 46143]];
const PLACES = ["rack", "Oak stair", "Ash hall", "shop", "shrinkage"];

test.each(MONTHS)("every figure of %s on Register is a sum of rows of the ledger on Books", (month, from, before) => {
  const ledger = rowsOf("Books", "BO8");
  const within = ledger.filter(({ date }) => Number(date) >= from && Number(date) < before);
  const found = rowsOf("Register", "A8").filter((row) => row["month"] === month);
  expect(found.map(({ where }) => where)).toEqual([...PLACES, "total"]);
  for (const place of PLACES) {
    const [row = {}] = found.filter(({ where }) => where === place);
    const purchases = within.filter(({ kind, to }) => kind === "purchase" && to === place);
    const arrived = within.filter(({ kind, to, from: source }) => kind !== "purchase" && to === place && source !== place);
    const gone = within.filter(({ kind, to, from: source }) => kind !== "return" && source === place && to !== place && to !== "");
    // A late freight has its money in the value; the only one is for a blank that went straight to the stair.
    const late = within.filter(({ kind, value }) => kind === "freight" && typeof value === "number" && place === "Oak stair");
    expect(row["bought"]).toBeCloseTo(sumOf(purchases, "cost"), 9);
    expect(row["freight"]).toBeCloseTo(sumOf(purchases, "charges") + sumOf(late, "value"), 9);
    const sentBack = within.filter(({ kind, from: source }) => kind === "return" && source === place);
    expect(row["returned"]).toBeCloseTo(sumOf(sentBack, "value"), 9);
    expect(row["in"]).toBeCloseTo(sumOf(arrived, "value"), 9);
    expect(row["out"]).toBeCloseTo(sumOf(gone, "value"), 9);
  }
});

test("what the goods of a job cost is what the months put there", () => {
  for (const place of ["Oak stair", "Ash hall", "shop"]) {
    const goods = rowsOf("Register", "N8").filter(({ job }) => job === place);
    const months = rowsOf("Register", "A8").filter(({ where }) => where === place);
    expect(goods.length).toBeGreaterThan(0);
    expect(sumOf(goods, "cost")).toBeCloseTo(sumOf(months, "cost"), 9);
  }
});

test("SUMIFS of the spreadsheet's own works on the register, also after a row is typed", async () => {
  book.setCell("Register", "Y1", '=SUMIFS(L9:L60,B9:B60,"Oak stair",A9:A60,"2026-03*")');
  book.setCell("Register", "Y2", '=SUMIFS(S9:S60,N9:N60,"Oak stair",O9:O60,"oak blank 42")');
  await book.settled();
  // By hand: 1,373.10 less the 12 of April; 708.50 + 61 + 28.34 + 12.
  expect(book.value("Register", "Y1")).toBeCloseTo(1361.1, 9);
  expect(book.value("Register", "Y2")).toBeCloseTo(809.84, 9);
  // The first row that is free: ten nails more, 0.30.
  book.put("Books", Object.fromEntries(Object.entries({
    A37: 46112, B37: "Oak stair", C37: "nails", D37: 10, E37: "each", G37: "issue",
  }).map(([address, value]) => [address, { value }])));
  await book.settled();
  expect(book.value("Register", "Y1")).toBeCloseTo(1361.4, 9);
  expect(book.value("Register", "P4")).toBeCloseTo(1373.4, 9);
  expect([book.value("Books", "L37"), book.value("Books", "M37")]).toEqual([0.3, 406]);
}, ENGINE_TIME);

test("a row that cannot be says so beside itself, and no strip shows a sum without it", async () => {
  const other = await openedData({ version: 1, sheets: demo }, builtFunctions());
  // 900 nails of the 500 there are; and a board whose name is a slip.
  other.put("Books", { D22: { value: 900 } });
  await other.settled();
  expect(other.value("Books", "L4")).toBe("✗ 1 bad");
  expect(other.value("Books", "L22")).toBe("✗");
  expect(String(other.value("Books", "N22"))).toMatch(/^quantity: 900 of nails to issue on 2026-03-04 and 500 on the rack/);
  expect(["A4", "C4", "J4"].map((address) => other.value("Books", address))).toEqual(["–", "–", "–"]);
  expect(["A4", "B4", "J4", "P4"].map((address) => other.value("Register", address))).toEqual(["–", "–", "–", "–"]);
  other.put("Books", { D22: { value: 84 }, C29: { value: "oak blnak 42" } });
  await other.settled();
  expect(String(other.value("Books", "L4"))).toMatch(/^○ \d+ alike/);
  expect(String(other.value("Books", "N29"))).toContain("same goods?");
}, ENGINE_TIME);

test("a month that is none of them is no month of zeros, and without one it is the last", async () => {
  const other = await openedData({ version: 1, sheets: demo }, builtFunctions());
  other.put("Books", { B62: { value: "2026-05" } });
  await other.settled();
  expect(["A4", "B4", "J4"].map((address) => other.value("Register", address))).toEqual(["–", "–", "–"]);
  other.put("Books", { B62: { value: "" } });
  await other.settled();
  expect([other.value("Register", "A4"), other.value("Register", "B4")]).toEqual(["2026-04", 12]);
}, ENGINE_TIME);
