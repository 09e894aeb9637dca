/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { demo } from "../../../src/sheets/demo/demo";
import { inventedMetricJob } from "../../../src/sheets/demo/invented-metric-job";
import { inventedJob } from "../../../src/sheets/demo/invented-job";
import { jobSheets } from "../../../src/sheets/job/job-sheets";
import type { CellValue, Workbook } from "../../../src/workbook/workbook";
import { closeWorkbooks, openedData } from "../../workbook/opened-workbook";

/** For the engine to open a demo and work it out on a busy machine, in milliseconds. */
const ENGINE_TIME = 400_000;

let book: Workbook;

beforeAll(async () => {
  book = await openedData({ version: 1, sheets: demo });
}, ENGINE_TIME);
afterAll(closeWorkbooks);

const SHEET = "Yard order";
const GOODS = "A17";
const WHOLE = "✓ sizes whole";

const rounded = (value: CellValue): CellValue => (typeof value === "number" ? Number(value.toFixed(4)) : value);
const goods = (of: Workbook): readonly (readonly CellValue[])[] => of.spill(SHEET, GOODS).map((row) => row.map(rounded));

/** All that is shown on the page that is sent. */
const page = (): readonly CellValue[] =>
  Object.keys(demo.find(({ name }) => name === SHEET)?.cells ?? {})
    .filter((address) => /^[A-Z]\d+$/.test(address))
    .flatMap((address) => book.spill(SHEET, address).flat());

test("the demo's order has what Order and Cut plan buy, with its sizes as typed and its board feet", () => {
  // Pieces by hand in demo.test.ts: 13 blanks and a nosing; a board of 10 ft and two of 16; two skirts of 16 ft, a rail of 14. Board feet,
  // thickness under 1 counted as 1: 13 x 42 x 11.5 / 144; 48 x 3.5 / 144; 7.25 x 120 / 144; 2 x 7.25 x 192 / 144; 2 x 11.25 x 192 / 144;
  // 2.5 x 2.25 x 168 / 144.
  expect(goods(book)).toEqual([
    ["oak blank 42", 42, 11.5, 1, 13, 43.6042], ["oak nosing 48", 48, 3.5, 1, 1, 1.1667], ["poplar 10 ft", 120, 7.25, 0.75, 1, 6.0417],
    ["poplar 16 ft", 192, 7.25, 0.75, 2, 19.3333], ["skirt 16 ft", 192, 11.25, 0.75, 2, 30], ["rail 14 ft", 168, 2.25, 2.5, 1, 6.5625],
  ]);
  // 13 + 1 + 1 + 2 + 2 + 1; the sum of the board feet.
  expect(["A4", "B4", "D4"].map((address) => rounded(book.value(SHEET, address)))).toEqual([6, 20, 106.7083]);
  expect([book.value(SHEET, "A1"), book.value(SHEET, "F4")]).toEqual([
    "Yard order: Oak stair (invented job)", "Oak stair (invented job)",
  ]);
  expect(book.value("Job", "H14")).toBe(WHOLE);
});

test("in millimetres, without board feet", async () => {
  const metric = await openedData({ version: 1, sheets: jobSheets(inventedMetricJob) });
  // Pieces by hand in tests/jobs/metric-stair; a blank typed as 1.1 m stands unbought.
  expect(goods(metric)).toEqual([
    ["oak blank 1000", 1000, 280, 27, 14], ["oak nosing 1000", 1000, 90, 27, 1], ["pine 3.6 m", 3600, 175, 18, 1],
    ["pine 4.2 m", 4200, 175, 18, 3],
  ]);
  expect(metric.value(SHEET, "B4")).toBe(19);
}, ENGINE_TIME);

test("not one price of the shop stands on it, nor does anything on it change with them", async () => {
  const prices = [...inventedJob.blanks, ...inventedJob.boards].flatMap((row) => (typeof row[4] === "number" ? [row[4]] : []));
  const before = page();
  expect(prices.length).toBe(12);
  expect(prices.filter((price) => before.includes(price))).toEqual([]);
  const told = before.filter((value) => typeof value === "string").join(" ");
  expect(told).not.toMatch(/\$|invented customer/);
  // Ten times as dear each, so that the same are bought.
  for (const [sheet, rows] of [["Order", inventedJob.blanks], ["Cut plan", inventedJob.boards]] as const) {
    book.put(sheet, Object.fromEntries(rows.flatMap((row, down) =>
      (typeof row[4] === "number" ? [[`E${9 + down}`, { value: row[4] * 10 }]] : []))));
  }
  await book.settled();
  expect(book.value("Order", "C4")).toBe(7215);
  expect(page()).toEqual(before);
}, ENGINE_TIME);

test("it follows the run, and says of goods whose sizes cannot be told that they are to be named apart", async () => {
  const caution = (): CellValue => book.value(SHEET, "A14");
  expect(caution()).toBe("");
  // A board called as a skirt is, and as long: 7 1/4 or 11 1/4 wide?
  book.put("Cut plan", { A12: { value: "skirt 16 ft" } });
  await book.settled();
  expect(goods(book).filter(([item]) => item === "skirt 16 ft")).toEqual([["skirt 16 ft", 192, "?", 0.75, 4, ""]]);
  expect([String(caution()).slice(0, 25), book.value("Job", "H14")]).toEqual(["Without all its sizes: 1.", "✗ sizes missing"]);
  book.put("Cut plan", { A12: { value: "poplar 16 ft" } });
  await book.settled();
  expect([caution(), book.value("Job", "H14")]).toEqual(["", WHOLE]);
  // Without its thickness nobody knows how many board feet it has.
  book.put("Cut plan", { D14: { value: "" } });
  await book.settled();
  expect(goods(book)[4]).toEqual(["skirt 16 ft", 192, 11.25, "", 2, ""]);
  expect(String(caution()).slice(0, 25)).toBe("Without all its sizes: 1.");
  book.put("Cut plan", { D14: { value: 0.75 } });
  // 15 risers have 14 treads.
  book.put("Job", { B12: { value: 15 } });
  await book.settled();
  expect(goods(book)[0]?.[4]).toBe(14);
}, ENGINE_TIME);
