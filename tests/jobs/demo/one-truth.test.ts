/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { demo } from "../../../src/sheets/demo/demo";
import { type ActCell, tickets } from "../../../src/sheets/tickets";
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
  const prices = column("Order", "A17", "price");
  return column("Order", "A17", heading).filter((_, row) => typeof prices[row] === "number");
};

const BOUGHT = ["AA8", "AI8"];
const bought = (heading: string): readonly CellValue[] => BOUGHT.flatMap((anchor) => column("Cut plan", anchor, heading));

/** The sticks: stock, stick, piece, length, from the end, left over. */
const sawn = (piece: string): readonly CellValue[] =>
  book.spill("Cut plan", "J8").flatMap((row) => (String(row[2]).startsWith(piece) ? [row[3] ?? null] : []));

/** The length of a piece on the cut list, by its label. */
const cutLength = (label: string): CellValue => sawn(label)[0] ?? null;

/** The story pole: riser, height, mark, rise between marks. */
const pole = (heading: "height" | "mark"): readonly CellValue[] =>
  book.spill("Layout", "I8").map((row) => row[heading === "height" ? 1 : 2] ?? null);

/** A column of the plan, step by step: below its lower floor, above its upper floor and its total. */
const plan = (heading: string): readonly CellValue[] => column("Survey", "AA8", heading).slice(1, 1 + RISERS);

/** What the check found of an item, as framed or as designed. */
const found = (item: string, what: "framed" | "designed"): CellValue =>
  book.spill("Check", "A8").find((row) => row[1] === item)?.[what === "framed" ? 2 : 5] ?? null;

/** A length as the check writes it, with + or - where it lies off the mark. */
const written = (inches: CellValue): string => String([associated().get("TAPE")?.(inches, 16, false, true)].flat(2)[0]);

/** Goods of the plan that Order and Cut plan buy; what else the bid has stands under them. */
const WOODS = 6;

/** A figure of a month at a place, on Register. */
const registered = (month: string, where: string, heading: string): CellValue => {
  const [headings = [], ...rows] = book.spill("Register", "A8");
  return rows.find((row) => row[0] === month && row[1] === where)?.[headings.indexOf(heading)] ?? null;
};

/** Every figure that stands more than once in the demo, and each place it stands at. */
const FIGURES: Readonly<Record<string, () => readonly Figure[]>> = {
  "total rise": () => [
    cell("Survey", "A4"),
    sum(spill("Survey", "C8")),
    sum(spill("Survey", "E8")),
    cell("Layout", "B9"),
    at("Layout", "AA7", "total rise"),
    pole("height")[RISERS - 1] ?? null,
  ],
  "total rise in the check": () => [
    written(cell("Survey", "A4")), found("flight vertical rise", "framed"), found("flight vertical rise", "designed"),
  ],
  "rises as found": () => [spill("Survey", "C8"), plan("as found")],
  "tallest rise as found": () => [
    sorted(spill("Survey", "C8"))[RISERS - 1] ?? null,
    at("Survey", "H21", "largest"),
  ],
  "tallest rise in the check": () => [written(at("Survey", "H21", "largest")), found("riser height", "framed")],
  "spread as found": () => [at("Survey", "H21", "spread"), cell("Survey", "D4")],
  "spread in the check": () => [written(at("Survey", "H21", "spread")), found("riser uniformity", "framed")],
  "rises once packed": () => [
    spill("Survey", "E8"),
    plan("rise"),
    // A rise is a riser and a tread of 1, less the lap of 1/4 that every riser but the first has.
    spill("Fit", "G17").map((height, step) => Number(height) + 1 - (step === 0 ? 0 : 0.25)),
    // A rough rise with its packing, and less that of the one below: what the risers were read over, but for tread and floors.
    typed("Fit", 17, 30, "B").map((height, step) => Number(height) + (step === 0 ? 0.25 : step === RISERS - 1 ? -0.25 : 0)),
  ],
  "packing under each sub-tread": () => [spill("Survey", "D8").slice(0, -1), plan("packing").slice(0, -1)],
  "spread once packed": () => [
    at("Survey", "H29", "spread"), at("Survey", "AA8", "total and spread", "rise"),
    Math.max(...numbers(spill("Survey", "E8"))) - Math.min(...numbers(spill("Survey", "E8"))),
  ],
  "rises as designed": () => [each(RISERS, at("Layout", "AA7", "unit rise")), each(RISERS, pole("height")[0] ?? null)],
  "rise of the design": () => [written(at("Layout", "AA7", "unit rise")), found("riser height", "designed"), cell("Layout", "A4")],
  "number of risers": () => [
    RISERS,
    cell("Layout", "B10"),
    at("Layout", "AA7", "risers"),
    typed("Survey", 8, 21, "B").length,
    pole("mark").length,
    numbers(column("Fit", "AA40", "step")).length,
    sawn("riser").length,
    at("Order", "G8", "riser", "quantity"),
    at("Takeoff", "AA8", "riser", "quantity"),
  ],
  "number of treads": () => [
    at("Layout", "AA7", "treads"),
    at("Order", "G8", "tread", "quantity"),
    at("Order", "G8", "return", "quantity"),
    at("Order", "A17", "oak blank 42", "quantity"),
    at("Takeoff", "AA8", "tread with one return", "quantity"),
    at("Takeoff", "AA8", "mitred return", "quantity"),
    at("Books", "AA8", "oak blank 42", "quantity"),
    at("Books", "AH8", "oak blank 42", "planned"),
  ],
  "riser heights": () => [spill("Fit", "G17"), column("Fit", "AA40", "height")],
  // As designed, with a tread of 1 and a lap of 1/4.
  "height of a riser that is not read": () => [at("Order", "G8", "riser", "width"), Number(at("Layout", "AA7", "unit rise")) - 0.75],
  "riser lengths": () => [sorted(column("Fit", "AA40", "length")), sorted(sawn("riser"))],
  run: () => [
    Number(cell("Layout", "B11")),
    at("Layout", "AA7", "run"),
    cell("Job", "B13"),
  ],
  "run in the check": () => [written(cell("Job", "B13")), found("tread depth", "framed"), found("tread depth", "designed")],
  "depth of a tread": () => [at("Layout", "AA7", "board depth"), at("Order", "G8", "tread", "width")],
  "length of a tread's blank": () => [
    at("Order", "G8", "tread", "length"),
    Number(at("Order", "A17", "oak blank 42", "length")) - Number(at("Order", "A17", "oak blank 42", "cut off")),
  ],
  "open skirt": () => [at("Layout", "N8", "open skirt length"), cell("Cut plan", "E25"), cutLength("open skirt")],
  "closed skirt": () => [at("Layout", "N8", "closed skirt length"), cell("Cut plan", "E26"), cutLength("closed skirt")],
  "widths of the skirts": () => [
    [at("Layout", "N8", "open skirt width"), at("Layout", "N8", "closed skirt width")],
    typed("Cut plan", 25, 26, "F"),
  ],
  rail: () => [at("Layout", "N17", "rail length"), cell("Cut plan", "E27"), cutLength("rail")],
  "gap between balusters": () => [
    cell("Layout", "O28"),
    at("Layout", "AA7", "guard gap"),
  ],
  "gap in the check": () => [written(cell("Layout", "O28")), found("guard opening stair side", "designed")],
  "fall height": () => [
    at("Layout", "AA7", "fall height"),
    pole("height")[RISERS - 2] ?? null,
  ],
  "fall in the check": () => [written(at("Layout", "AA7", "fall height")), found("guard required drop", "designed")],
  "blanks ordered": () => [ordered("item"), column("Books", "AA8", "item").slice(0, 2)],
  "goods planned": () => [
    [...ordered("item"), ...bought("item")],
    column("Books", "AA8", "item"),
    column("Books", "AH8", "item").slice(0, WOODS),
  ],
  "quantities planned": () => [
    [...ordered("quantity"), ...bought("quantity")],
    column("Books", "AA8", "quantity"),
    column("Books", "AH8", "planned").slice(0, WOODS),
  ],
  "prices planned": () => [[...ordered("price"), ...bought("price")], column("Books", "AA8", "price")],
  "cost of the blanks": () => [cell("Order", "C4"), sum(ordered("cost")), sum(column("Takeoff", "AM48", "cost"))],
  "cost of riser boards": () => [
    at("Cut plan", "AA26", "cost"), sum(column("Cut plan", "AA8", "cost")), sum(column("Takeoff", "AM66", "cost")),
  ],
  "cost of skirts and rail": () => [
    at("Cut plan", "AI26", "cost"),
    sum(column("Cut plan", "AI8", "cost")),
    sum(column("Takeoff", "AM84", "cost")),
  ],
  "cost of all that is planned": () => [
    Number(cell("Order", "C4")) + Number(at("Cut plan", "AA26", "cost")) + Number(at("Cut plan", "AI26", "cost")),
    sum(column("Books", "AH8", "planned cost").slice(0, WOODS)),
    sum(["AM48", "AM66", "AM84"].flatMap((anchor) => column("Takeoff", anchor, "cost"))),
  ],
  "board feet planned": () => [sum([...ordered("gross"), ...bought("gross")]), sum(column("Books", "AA8", "gross"))],
  "rip cost": () => [cell("Order", "G4"), sum(ordered("rip cost"))],
  "takeoff, priced": () => [column("Takeoff", "AA8", "quantity"), column("Takeoff", "AM8", "quantity")],
  "hours, priced": () => [column("Takeoff", "AG8", "quantity"), column("Takeoff", "AM28", "quantity")],
  "bead of adhesive": () => [
    cell("Takeoff", "B8"),
    `${String(at("Takeoff", "AA8", "adhesive bead", "quantity"))} ${String(at("Takeoff", "AA8", "adhesive bead", "unit"))}`,
  ],
  cartridges: () => [cell("Takeoff", "B14"), at("Takeoff", "AM102", "adhesive", "quantity")],
  "direct cost": () => [
    at("Bid", "AH8", "direct", "cost"),
    sum(["AM8", "AM28", "AM48", "AM66", "AM84", "AM102"].flatMap((anchor) => column("Takeoff", anchor, "cost"))),
  ],
  "goods of the bid": () => [
    at("Books", "AH8", "total", "planned cost"),
    Number(at("Bid", "AH8", "materials", "cost")),
  ],
  "cost bid": () => [at("Books", "A94", "bid", "amount"), at("Bid", "AH8", "direct", "cost")],
  "spent over plan": () => [
    cell("Books", "C4"),
    sum(column("Books", "CD8", "cost")) - Number(at("Books", "AH8", "total", "planned cost")),
    ["price variance", "usage variance", "scope", "on the rack", "charges"].reduce(
      (total, heading) => total + Number(at("Books", "AH8", "total", heading)),
      0,
    ),
  ],
  "cost of the goods of the job": () => [
    sum(column("Books", "CD8", "cost")), at("Books", "AH8", "total", "spent"), cell("Register", "P4"),
    Number(at("Books", "A94", "actual", "amount")) - Number(cell("Books", "B61")),
  ],
  "value on the rack": () => [at("Books", "A108", "total", "value"), registered("2026-04", "rack", "closing")],
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

/** What a tape at the leaning wall end begins with: its underside is the longer, so an inch is burnt. */
const BURNT = 1;
/** A printed figure is the nearest 1/32, with a word where 1/64 is left: within 1/128. */
const PRINTED = 1 / 128;

const inInches = (figure: string): number => {
  const [, whole = "0", part = "0", of = "1", word] = /^(\d+)?(?: ?(\d+)\/(\d+))?(?: (strong|shy))?$/.exec(figure) ?? [];
  return Number(whole) + Number(part) / Number(of) + (word === "strong" ? 1 / 64 : word === "shy" ? -1 / 64 : 0);
};

test("the ticket that is printed says what the sheet says", () => {
  const [page, ...others] = tickets("Fit", "treads", book.spill("Fit", "CA8") as readonly (readonly ActCell[])[]);
  expect(others).toEqual([]);
  const printed = (act: string): readonly number[] =>
    page?.acts.find((one) => one.act === act)?.cells.map(({ figure }) => inInches(figure)) ?? [];
  const lines: readonly (readonly [act: string, heading: string, burnt: number])[] = [
    ["RIP", "depth", 0], ["MARK RIGHT TOE", "toe", BURNT], ["MARK RIGHT HEEL", "heel at the hook", BURNT],
    ["MARK RIGHT BACK", "return line", BURNT], ["SAW RIGHT RETURN", "return length", 0],
  ];
  for (const [act, heading, burnt] of lines) {
    const fitted = numbers(column("Fit", "AA8", heading));
    expect(printed(act)).toHaveLength(fitted.length);
    for (const [step, figure] of printed(act).entries()) {
      expect(Math.abs(figure - burnt - (fitted[step] ?? NaN))).toBeLessThanOrEqual(PRINTED + 1e-9);
    }
  }
});

test("the depth of the treads fitted is the depth ordered", () => {
  expect(new Set(column("Fit", "AA8", "depth"))).toEqual(new Set([at("Layout", "AA7", "board depth")]));
});

test("packing mends the flight: one shim, and what fails as framed passes once packed", () => {
  expect(numbers(plan("packing")).filter((under) => under !== 0)).toEqual([0.1875]);
  expect([at("Survey", "H21", "verdict"), at("Survey", "H29", "verdict")]).toEqual(["fail", "pass"]);
  expect([book.spill("Check", "A8")[0]?.slice(0, 2), cell("Check", "AA7")]).toEqual([["✗ FAIL", "riser uniformity"], 0]);
});

describe("9 typed for the run", () => {
  beforeAll(async () => {
    book.setCell("Job", "B13", "9");
    await book.settled();
  }, ENGINE_TIME);

  test.each(names)("%s is the same wherever it stands", agree);
});
