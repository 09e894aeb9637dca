/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { demo } from "../../../src/sheets/demo/demo";
import type { CellData } from "../../../src/sheets/sheet-data";
import type { CellValue, Workbook } from "../../../src/workbook/workbook";
import { builtFunctions, closeWorkbooks, openedData } from "../../workbook/opened-workbook";

/** A change of one cell goes through the whole demo, on a machine that may have other work. */
const PATIENCE = 600_000;

let book: Workbook;

beforeAll(async () => {
  book = await openedData({ version: 1, sheets: demo }, builtFunctions());
}, PATIENCE);

afterAll(closeWorkbooks);

const isError = (value: CellValue): boolean => typeof value === "object" && value !== null;

/** A figure of a spilled table, or the error of the table. */
const spilled = (sheet: string, anchor: string, label: string, heading: string): CellValue => {
  const rows = book.spill(sheet, anchor);
  const first = rows[0]?.[0] ?? null;
  if (isError(first)) return first;
  return rows.find(([name]) => name === label)?.[rows[0]?.indexOf(heading) ?? -1] ?? null;
};

/** Figures that someone signs, orders or pays by. */
const figures = (): Readonly<Record<string, CellValue>> => ({
  "total of the bid": spilled("Bid", "A21", "total", "cost"),
  "price of the bid": spilled("Bid", "A21", "price", "cost"),
  "a spare blank": book.value("Bid", "B29"),
  "cost of the blanks": book.value("Order", "B11"),
  "rip cost": book.value("Order", "B12"),
  "cost of the riser boards": spilled("Cut plan", "J27", "cost", "value"),
  "cost of skirts and rail": spilled("Cut plan", "R27", "cost", "value"),
  "total rise": book.value("Survey", "B20"),
  "spent over plan": book.value("Books", "B24"),
  ...Object.fromEntries(
    ["E", "F", "G", "H", "I", "J"].flatMap((column) =>
      [4, 5, 6].map((row) => [`Check ${column}${row}`, book.value("Check", `${column}${row}`)] as const),
    ),
  ),
});

interface Plant {
  readonly sheet: string;
  readonly address: string;
  readonly was: string | number | boolean;
}

const column = (address: string): string => address.replace(/\d+/, "");
const row = (address: string): number => Number(address.replace(/\D+/, ""));
const wasIn = ({ formula, value }: CellData): string | number | boolean => formula ?? value ?? "";

/** Every formula but those that only write a size on the tape, and the last typed cell of each column of each sheet. */
const plants: readonly Plant[] = demo.flatMap(({ name: sheet, cells }) => {
  const entries = Object.entries(cells);
  const formulas = entries.filter(([, { formula }]) => formula !== undefined && !/STAIR\.TAPE|^=ROUND/.test(formula));
  const inputs = entries.filter(([, { style, value }]) => style === "input" && value !== undefined);
  const last = inputs.filter(([address]) => !inputs.some(([other]) => column(other) === column(address) && row(other) > row(address)));
  return [...formulas, ...last].map(([address, cell]) => ({ sheet, address, was: wasIn(cell) }));
});

test("an error anywhere in the demo is an error in every figure it bears on, and never another figure", async () => {
  const sound = figures();
  expect(Object.entries(sound).filter(([, value]) => typeof value !== "number")).toEqual([]);
  expect(plants.length).toBeGreaterThan(80);
  const wrong: string[] = [];
  let errors = 0;
  for (const { sheet, address, was } of plants) {
    book.setCell(sheet, address, "=NA()");
    await book.settled();
    for (const [figure, value] of Object.entries(figures())) {
      if (isError(value)) errors += 1;
      else if (value !== sound[figure])
        wrong.push(`${sheet}!${address} in error: ${figure} is ${String(value)} where it was ${String(sound[figure])}`);
    }
    book.setCell(sheet, address, String(was));
  }
  expect(wrong).toEqual([]);
  expect(errors).toBeGreaterThan(plants.length);
  await book.settled();
  expect(figures()).toEqual(sound);
}, PATIENCE);
