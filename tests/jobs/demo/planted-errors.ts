import { demo } from "../../../src/sheets/demo/demo";
import type { CellData } from "../../../src/sheets/sheet-data";
import type { CellValue, Workbook } from "../../../src/workbook/workbook";
import { builtFunctions, closeWorkbooks, openedData } from "../../workbook/opened-workbook";

/** A change of one cell goes through the whole demo, on a machine that may have other work. */
const PATIENCE = 600_000;

let book: Workbook;

/** An error, or a strip that shows there is no answer and names the cell to look at. */
const isError = (value: CellValue): boolean => (typeof value === "object" && value !== null) || /^–$|^see |^– type/.test(String(value));

/** A figure of a spilled table, or the error of the table. */
const spilled = (sheet: string, anchor: string, label: string, heading: string): CellValue => {
  const rows = book.spill(sheet, anchor);
  const first = rows[0]?.[0] ?? null;
  if (isError(first)) return first;
  return rows.find(([name]) => name === label)?.[rows[0]?.indexOf(heading) ?? -1] ?? null;
};

/** Figures that someone signs, orders or pays by. */
const figures = (): Readonly<Record<string, CellValue>> => ({
  "total of the bid": spilled("Bid", "AH8", "total", "cost"),
  "price of the bid": spilled("Bid", "AH8", "price", "cost"),
  "a spare blank": book.value("Bid", "B36"),
  "cost of the blanks": book.value("Order", "C4"),
  "rip cost": book.value("Order", "G4"),
  "cost of the riser boards": spilled("Cut plan", "AA26", "cost", "value"),
  "cost of skirts and rail": spilled("Cut plan", "AI26", "cost", "value"),
  "total rise": book.value("Survey", "A4"),
  "spent over plan": book.value("Books", "C4"),
  "what the job cost": spilled("Books", "A94", "actual", "amount"),
  "value on the rack": spilled("Books", "A108", "total", "value"),
  "cost of jobs in the month": book.value("Register", "D4"),
  "this job so far": book.value("Register", "P4"),
  "treads glued up": book.value("Boards", "A4"),
  "risers and skirts ripped": book.value("Boards", "C4"),
  "risers and skirts from sheets": book.value("Boards", "F4"),
  "the price on Job": book.value("Job", "G4"),
  "the wood to buy on Job": book.value("Job", "F4"),
  ...Object.fromEntries(["A4", "A5", "C4", "E4", "E5"].map((address) => [`Check ${address}`, book.value("Check", address)] as const)),
});

interface Plant {
  readonly sheet: string;
  readonly address: string;
  readonly was: string | number | boolean;
}

const column = (address: string): string => address.replace(/\d+/, "");
const row = (address: string): number => Number(address.replace(/\D+/, ""));
const wasIn = ({ formula, value }: CellData): string | number | boolean => formula ?? value ?? "";

/** The first rows answer, and Job shows what the others answer; nothing is worked out from either. */
const STRIP = 6;

/** Every formula that calls a function of ours or that others read as a block, and the last typed cell of each column of each sheet. */
const plants: readonly Plant[] = demo.flatMap(({ name: sheet, cells }) => {
  const entries = Object.entries(cells);
  const all = demo.flatMap((one) => Object.values(one.cells).flatMap(({ formula }) => formula ?? [])).join();
  const formulas = entries.filter(
    ([address, { formula }]) =>
      formula !== undefined && row(address) > STRIP && (formula.includes("STAIR.") || all.includes(`!${address}#`)),
  );
  const inputs = entries.filter(([, { style, value }]) => (style === "input" || style === "inputText") && value !== undefined);
  const last = inputs.filter(([address]) => !inputs.some(([other]) => column(other) === column(address) && row(other) > row(address)));
  return [...formulas, ...last].map(([address, cell]) => ({ sheet, address, was: wasIn(cell) }));
});

/** How many parts the plants are shared out to, each for a file of its own: they take the longest of all tests. */
const PARTS = 3;

/** Plants an error in every third place of the demo, from `part` on, and sees it in every figure it bears on, and no other figure. */
export const plantErrors = (part: number): void => {
  beforeAll(async () => {
    book = await openedData({ version: 1, sheets: demo }, builtFunctions());
  }, PATIENCE);

  afterAll(closeWorkbooks);

  test("an error anywhere in the demo is an error in every figure it bears on, and never another figure", async () => {
    const sound = figures();
    expect(Object.entries(sound).filter(([, value]) => value === null || isError(value))).toEqual([]);
    const own = plants.filter((_, place) => place % PARTS === part);
    expect(plants.length).toBeGreaterThan(80);
    const wrong: string[] = [];
    let errors = 0;
    for (const { sheet, address, was } of own) {
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
    expect(errors).toBeGreaterThan(own.length);
    await book.settled();
    expect(figures()).toEqual(sound);
  }, PATIENCE);
};
