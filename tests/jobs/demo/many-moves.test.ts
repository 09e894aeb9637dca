/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { demo } from "../../../src/sheets/demo/demo";
import type { CellValue, Workbook } from "../../../src/workbook/workbook";
import { closeWorkbooks, openedData } from "../../workbook/opened-workbook";

/** For the engine to work the demo out several times on a busy machine, in milliseconds. */
const ENGINE_TIME = 400_000;

let book: Workbook;

beforeAll(async () => {
  book = await openedData({ version: 1, sheets: demo });
}, ENGINE_TIME);
afterAll(closeWorkbooks);

/** The demo's moves stand in rows 9 to 36; 48 rows are ready, to row 56. */
const FIRST_FREE = 37;
const LAST_READY = 56;
const INSERTED = 20;
const MORE = 40;

const cell = (sheet: string, anchor: string, label: string, heading: string): CellValue => {
  const [headings = [], ...rows] = book.spill(sheet, anchor);
  return rows.find(([first]) => first === label)?.[headings.indexOf(heading)] ?? null;
};

test("rows inserted among the moves of Books are read as the others are, on Books and on Register", async () => {
  expect(cell("Books", "A108", "total", "value")).toBe(70.72);
  book.insertRows("Books", 40, INSERTED);
  await book.settled();
  // What stood below stands so much lower and says the same.
  expect(cell("Books", "A128", "total", "value")).toBe(70.72);
  // 68 moves: of each of the further forty days from 2026-04-03 on, which is 46115, one shim at 1.00 for the rack.
  const shims = Array.from({ length: MORE }, (_, day) => Object.entries({
    A: 46115 + day, C: "shim", D: 1, E: "each", F: 1, G: "purchase", I: `S-${day}`,
  }).map(([column, value]) => [`${column}${FIRST_FREE + day}`, { value }] as const)).flat();
  book.put("Books", Object.fromEntries(shims));
  await book.settled();
  expect(FIRST_FREE + MORE - 1).toBe(LAST_READY + INSERTED);
  expect(["quantity", "value"].map((heading) => cell("Books", "A128", "shim", heading))).toEqual([40, 40]);
  // 70.72 + 40.
  expect(cell("Books", "A128", "total", "value")).toBe(110.72);
  // Beside the last row: worth 1, and forty of them on the rack.
  expect(["L76", "M76"].map((address) => book.value("Books", address))).toEqual([1, 40]);
  // March is as it was; of 46115 to 46154 the first 28 days are April's, beside the late freight of 12.
  expect(book.value("Register", "B4")).toBe(1398.3);
  const [headings = [], ...rows] = book.spill("Register", "A8");
  const bought = rows.find(([month, where]) => month === "2026-04" && where === "total")?.[headings.indexOf("bought")];
  expect(bought).toBe(28);
  // A kind is chosen there from the same list.
  expect(book.data().sheets.find(({ name }) => name === "Books")?.lists?.map(({ cells }) => cells)).toEqual(["G9:G76"]);
}, ENGINE_TIME);
