/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { demo } from "../../../src/sheets/demo/demo";
import { ticketTape } from "../../../src/sheets/ticket-tape";
import { type FitCell, tickets } from "../../../src/sheets/tickets";
import type { CellValue, Workbook } from "../../../src/workbook/workbook";
import { associated } from "../../host/stand-in";
import { builtFunctions, closeWorkbooks, openedData } from "../../workbook/opened-workbook";

/** For the engine to open the demo and work it out on a busy machine, in milliseconds. */
const ENGINE_TIME = 60_000;

let book: Workbook;

beforeAll(async () => {
  book = await openedData({ version: 1, sheets: demo }, builtFunctions());
}, ENGINE_TIME);

afterAll(closeWorkbooks);

type Figure = CellValue | readonly CellValue[];

const cell = (sheet: string, address: string): CellValue => book.value(sheet, address);

/** A column of a table, spilled or typed, without its heading. */
const column = (sheet: string, anchor: string, heading: string): readonly CellValue[] => {
  const [headings = [], ...rows] = book.spill(sheet, anchor);
  if (!headings.includes(heading)) throw new Error(`${sheet} ${anchor} has no heading ${heading}: ${headings.join(", ")}`);
  return rows.map((row) => row[headings.indexOf(heading)] ?? null);
};

/** A cell of a spilled table by the label in its first column and its heading. */
const at = (sheet: string, anchor: string, label: string, heading = "value"): CellValue => {
  const [headings = [], ...rows] = book.spill(sheet, anchor);
  const row = rows.find(([first]) => first === label);
  if (row === undefined) throw new Error(`${sheet} ${anchor} has no row ${label}`);
  return row[headings.indexOf(heading)] ?? null;
};

const spill = (sheet: string, anchor: string): readonly CellValue[] => book.spill(sheet, anchor).flat();
const numbers = (figures: readonly CellValue[]): number[] => figures.filter((figure) => typeof figure === "number");
const sum = (figures: readonly CellValue[]): number => numbers(figures).reduce((total, figure) => total + figure, 0);
const sorted = (figures: readonly CellValue[]): number[] => numbers(figures).sort((one, other) => one - other);
const each = (count: number, figure: CellValue): readonly CellValue[] => Array.from({ length: count }, () => figure);
const typed = (sheet: string, from: number, to: number, letter: string): readonly CellValue[] =>
  Array.from({ length: to - from + 1 }, (_, row) => cell(sheet, `${letter}${from + row}`));

const RISERS = 14;

/** Rows with a price in what ORDER answers; the rest is cut from sticks. */
const ordered = (heading: string): readonly CellValue[] => {
  const prices = column("Order", "A15", "price");
  return column("Order", "A15", heading).filter((_, row) => typeof prices[row] === "number");
};

const BOUGHT = ["J22", "R22"];
const bought = (heading: string): readonly CellValue[] => BOUGHT.flatMap((anchor) => column("Cut plan", anchor, heading));

/** A length of a piece on the cut list, by its label. */
const cutLength = (label: string): CellValue =>
  column("Cut plan", "R38", "length")[column("Cut plan", "R38", "label").indexOf(label)] ?? null;

/** Every figure that stands more than once in the demo, and each place it stands at. */
const FIGURES: Readonly<Record<string, () => readonly Figure[]>> = {
  "total rise": () => [
    cell("Survey", "B20"),
    sum(spill("Survey", "H5")),
    sum(spill("Survey", "S5")),
    cell("Layout", "B5"),
    at("Layout", "D4", "total rise"),
    column("Layout", "J4", "height")[RISERS - 1] ?? null,
    at("Check", "A8", "flight vertical rise", "given"),
    at("Check", "J8", "flight vertical rise", "given"),
  ],
  "rises as found": () => [spill("Survey", "H5"), column("Survey", "K4", "as found").slice(0, RISERS)],
  "tallest rise as found": () => [
    sorted(spill("Survey", "H5"))[RISERS - 1] ?? null,
    at("Survey", "D10", "largest"),
    at("Check", "J8", "riser height", "given"),
  ],
  "spread as found": () => [at("Survey", "D10", "spread"), at("Check", "J8", "riser uniformity", "given")],
  "rises once packed": () => [
    spill("Survey", "S5"),
    each(RISERS, at("Layout", "D4", "unit rise")),
    each(RISERS, column("Layout", "J4", "height")[0] ?? null),
  ],
  "rise of the design": () => [at("Layout", "D4", "unit rise"), at("Check", "A8", "riser height", "given")],
  "number of risers": () => [
    RISERS,
    cell("Layout", "B6"),
    at("Layout", "D4", "risers"),
    typed("Survey", 5, 18, "B").length,
    column("Layout", "J4", "mark").length,
    numbers(column("Cut plan", "J4", "step")).length,
    column("Cut plan", "J38", "label").length,
    at("Order", "H4", "riser", "quantity"),
    at("Bid", "E4", "riser", "quantity"),
  ],
  "number of treads": () => [
    at("Layout", "D4", "treads"),
    at("Order", "H4", "tread", "quantity"),
    at("Order", "H4", "return", "quantity"),
    at("Order", "A15", "oak blank 42", "quantity"),
    at("Bid", "E4", "tread with one return", "quantity"),
    at("Bid", "E4", "mitred return", "quantity"),
    at("Books", "A4", "oak blank 42", "quantity"),
    at("Books", "A15", "oak blank 42", "planned"),
  ],
  "riser heights": () => [spill("Cut plan", "G5"), column("Cut plan", "J4", "height"), spill("Fit", "B29")],
  "height of every riser but the first": () => [spill("Cut plan", "G5").slice(1), each(RISERS - 1, at("Order", "H4", "riser", "width"))],
  "riser lengths": () => [sorted(column("Cut plan", "J4", "length")), sorted(column("Cut plan", "J38", "length"))],
  run: () => [
    Number(cell("Layout", "B7")),
    at("Layout", "D4", "run"),
    at("Check", "A8", "tread depth", "given"),
    at("Check", "J8", "tread depth", "given"),
  ],
  "depth of a tread": () => [at("Layout", "D4", "board depth"), at("Order", "H4", "tread", "width")],
  "length of a tread's blank": () => [
    at("Order", "H4", "tread", "length"),
    Number(at("Order", "A15", "oak blank 42", "length")) - Number(at("Order", "A15", "oak blank 42", "cut off")),
  ],
  "open skirt": () => [at("Layout", "P4", "open skirt length"), cell("Cut plan", "E34"), cutLength("open skirt")],
  "closed skirt": () => [at("Layout", "P4", "closed skirt length"), cell("Cut plan", "E35"), cutLength("closed skirt")],
  "widths of the skirts": () => [
    [at("Layout", "P4", "open skirt width"), at("Layout", "P4", "closed skirt width")],
    typed("Cut plan", 34, 35, "F"),
  ],
  rail: () => [at("Layout", "P12", "rail length"), cell("Cut plan", "E36"), cutLength("rail")],
  "gap between balusters": () => [
    cell("Layout", "Q20"),
    at("Layout", "D4", "guard gap"),
    at("Check", "A8", "guard opening stair side", "given"),
  ],
  "fall height": () => [
    at("Layout", "D4", "fall height"),
    column("Layout", "J4", "height")[RISERS - 2] ?? null,
    at("Check", "A8", "guard required drop", "given"),
  ],
  "blanks ordered": () => [ordered("item"), column("Books", "A4", "item").slice(0, 2)],
  "goods planned": () => [
    [...ordered("item"), ...bought("item")],
    column("Books", "A4", "item"),
    column("Books", "A15", "item").slice(0, -1),
  ],
  "quantities planned": () => [
    [...ordered("quantity"), ...bought("quantity")],
    column("Books", "A4", "quantity"),
    column("Books", "A15", "planned").slice(0, -1),
  ],
  "prices planned": () => [[...ordered("price"), ...bought("price")], column("Books", "A4", "price")],
  "cost of the blanks": () => [cell("Order", "B11"), sum(ordered("cost")), sum(column("Bid", "K44", "cost"))],
  "cost of riser boards": () => [at("Cut plan", "J27", "cost"), sum(column("Cut plan", "J22", "cost")), sum(column("Bid", "K52", "cost"))],
  "cost of skirts and rail": () => [
    at("Cut plan", "R27", "cost"),
    sum(column("Cut plan", "R22", "cost")),
    sum(column("Bid", "K59", "cost")),
  ],
  "cost of all that is planned": () => [
    Number(cell("Order", "B11")) + Number(at("Cut plan", "J27", "cost")) + Number(at("Cut plan", "R27", "cost")),
    at("Books", "A15", "total", "planned cost"),
    sum(["K44", "K52", "K59"].flatMap((anchor) => column("Bid", anchor, "cost"))),
  ],
  "board feet planned": () => [sum([...ordered("gross"), ...bought("gross")]), sum(column("Books", "A4", "gross"))],
  "rip cost": () => [cell("Order", "B12"), sum(ordered("rip cost"))],
  "takeoff, priced": () => [column("Bid", "E4", "quantity"), column("Bid", "K25", "quantity")],
  "hours, priced": () => [column("Bid", "E24", "quantity"), column("Bid", "E43", "quantity")],
  "bead of adhesive": () => [
    cell("Bid", "B10"),
    `${String(at("Bid", "E4", "adhesive bead", "quantity"))} ${String(at("Bid", "E4", "adhesive bead", "unit"))}`,
  ],
  cartridges: () => [cell("Bid", "B16"), at("Bid", "E61", "adhesive", "quantity")],
  "direct cost": () => [
    at("Bid", "A21", "direct", "cost"),
    sum(["K25", "E43", "K44", "K52", "K59", "E61"].flatMap((anchor) => column("Bid", anchor, "cost"))),
  ],
  "spent over plan": () => [
    cell("Books", "B24"),
    sum(typed("Books", 5, 12, "I")) - Number(at("Books", "A15", "total", "planned cost")),
    ["price variance", "usage variance", "scope", "on the rack"].reduce(
      (total, heading) => total + Number(at("Books", "A15", "total", heading)),
      0,
    ),
  ],
  used: () => [[...typed("Books", 5, 10, "L")].sort(), [...column("Books", "A15", "used").slice(0, -1)].sort()],
};

const CLOSE = 9;

const agree = (name: string): void => {
  const [first, ...others] = FIGURES[name]?.() ?? [];
  const wanted = (figure: CellValue): unknown => (typeof figure === "number" ? expect.closeTo(figure, CLOSE) : figure);
  expect(others.length).toBeGreaterThan(0);
  for (const other of others) expect(other).toEqual(Array.isArray(first) ? first.map(wanted) : wanted(first as CellValue));
  for (const figure of [first, ...others].flat()) expect(figure).not.toBeNull();
};

const names = Object.keys(FIGURES);

test.each(names)("%s is the same wherever it stands", agree);

test("the ticket that is printed says what the ticket on the sheet says", () => {
  const tape = associated().get("TAPE");
  const printed = tickets(
    "Fit",
    book.spill("Fit", "A12") as readonly (readonly FitCell[])[],
    ticketTape({ unit: "in", divisions: 16 }, (inches, divisions) => String([tape?.(inches, divisions)].flat(2)[0])),
  );
  const [page] = printed;
  expect(printed).toHaveLength(1);
  const onPage = (heading: string): readonly unknown[] => page?.rows.map((row) => row[page.headings.indexOf(heading)]) ?? [];
  for (const heading of ["length", "back", "front", "toe", "heel at the hook", "left set", "right set"]) {
    const place = ["step", "length", "back", "front", "toe", "heel at the hook", "mitre", "left set", "right set"].indexOf(heading);
    expect(onPage(heading)).toEqual(typed("Fit", 22, 26, "ABCDEFGHI"[place] ?? ""));
  }
});

test("the depth of the treads fitted is the depth ordered", () => {
  expect(new Set(column("Fit", "A12", "depth"))).toEqual(new Set([at("Layout", "D4", "board depth")]));
});

test("packing mends the flight: nothing comes down, and what fails as framed passes once packed", () => {
  expect(column("Survey", "K4", "note")).not.toContain("must come down");
  expect(Math.min(...numbers(column("Survey", "K4", "packing")))).toBeGreaterThanOrEqual(0);
  expect([at("Survey", "D10", "verdict"), at("Survey", "D18", "verdict")]).toEqual(["fail", "pass"]);
  expect([at("Check", "J8", "riser uniformity", "verdict"), cell("Check", "E6")]).toEqual(["fail", 0]);
});

describe("9 typed for the run", () => {
  beforeAll(async () => {
    book.setCell("Layout", "B7", "9");
    await book.settled();
  }, ENGINE_TIME);

  test.each(names)("%s is the same wherever it stands", agree);
});
