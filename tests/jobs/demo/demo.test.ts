/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { demo } from "../../../src/sheets/demo/demo";
import type { CellValue, Workbook } from "../../../src/workbook/workbook";
import { workbookData } from "../../../src/workbook/workbook-data";
import { associated } from "../../host/stand-in";
import { builtFunctions, closeWorkbooks, openedData } from "../../workbook/opened-workbook";

/** For the engine to open the demo and work it out on a busy machine, in milliseconds. */
const ENGINE_TIME = 400_000;

let book: Workbook;

beforeAll(async () => {
  book = await openedData({ version: 1, sheets: demo }, builtFunctions());
}, ENGINE_TIME);

afterAll(closeWorkbooks);

/** A cell of a spilled table by the label in its first column and its heading. */
const spilled = (sheet: string, anchor: string, label: string, heading: string): CellValue => {
  const [headings = [], ...rows] = book.spill(sheet, anchor);
  return rows.find(([first]) => first === label)?.[headings.indexOf(heading)] ?? null;
};

const cell = (sheet: string, address: string): CellValue => book.value(sheet, address);

/** Rows of the check by their item. */
const checked = (): readonly (readonly CellValue[])[] => book.spill("Check", "A8");
const asDesigned = (item: string): CellValue => checked().find((row) => row[1] === item)?.[6] ?? null;
const failing = (what: "as framed" | "as designed"): number =>
  checked().filter((row) => String(row[what === "as framed" ? 0 : 6]).startsWith("✗")).length;

/** What is left of the stick from which a piece is cut, by the list of sticks. */
const leftOver = (piece: string): CellValue => book.spill("Cut plan", "J8").find((row) => row[2] === piece)?.[7] ?? null;

const tape = associated().get("TAPE");
const onTape = (inches: CellValue): string => String([tape?.(inches, 16)].flat(2)[0]);

interface Named {
  readonly name: string;
  readonly read: () => CellValue;
  /** On a run of 10 in and of 9 in. */
  readonly ten: number | string;
  readonly nine: number | string;
}

// The rise by hand: 106 1/8 / 14 = 849 / 112 = 7.580357; slopes hypot(7.580357, 10) = 12.548379 and hypot(7.580357, 9) = 11.766980.
const NAMED: readonly Named[] = [
  // 7 5/16 + 1 - 3/4.
  { name: "first finished rise", read: () => cell("Survey", "C8"), ten: 7.5625, nine: 7.5625 },
  // 7 7/8 + 3/4 - 1.
  { name: "last finished rise", read: () => cell("Survey", "C21"), ten: 7.625, nine: 7.625 },
  // In sixteenths: 117 + 4 x 121 + 120 + 4 x 122 + 116 + 124 + 123 + 126 = 1698.
  { name: "total rise", read: () => cell("Survey", "A4"), ten: 106.125, nine: 106.125 },
  { name: "packing under the first sub-tread", read: () => cell("Survey", "D8"), ten: 0, nine: 0 },
  // Within 1/4, as typed: the fifth, 7 1/4, and the sixth, 7 3/4, are mended by one shim between them; the tallest other is 7 11/16, so the
  // fifth comes up to 7 7/16, by 3/16.
  { name: "packing under the fifth sub-tread", read: () => cell("Survey", "D12"), ten: 0.1875, nine: 0.1875 },
  {
    name: "what to do at the fifth",
    read: () => cell("Survey", "F12"),
    ten: 'pack 3/16" under sub-tread 5',
    nine: 'pack 3/16" under sub-tread 5',
  },
  { name: "fifth rise, once packed", read: () => cell("Survey", "E12"), ten: 7.4375, nine: 7.4375 },
  { name: "sixth rise, once packed", read: () => cell("Survey", "E13"), ten: 7.5625, nine: 7.5625 },
  { name: "what the plan comes to", read: () => cell("Survey", "H14"), ten: 'The plan: within 1/4".', nine: 'The plan: within 1/4".' },
  { name: "unit rise", read: () => spilled("Layout", "AA7", "unit rise", "value"), ten: 849 / 112, nine: 849 / 112 },
  // 10 + 1 1/4; 9 + 1 1/4.
  { name: "board depth", read: () => spilled("Layout", "AA7", "board depth", "value"), ten: 11.25, nine: 10.25 },
  // 13 treads.
  { name: "total run", read: () => spilled("Layout", "AA7", "total run", "value"), ten: 130, nine: 117 },
  // 13 slopes less 1/4 x 7.580357 / slope: 163.12893 - 0.15102; 152.97074 - 0.16105.
  { name: "open skirt length", read: () => spilled("Layout", "N8", "open skirt length", "value"), ten: 162.9779, nine: 152.8097 },
  // (130 + 3 + 4) x 12.548379 / 10 + 0.7580357 x (2 + 6.040904 - 1.812273); (117 + 7) x 11.766980 / 9 + 0.8422619 x (2 + 5.797848 -
  // 1.932616).
  { name: "closed skirt length", read: () => spilled("Layout", "N8", "closed skirt length", "value"), ten: 176.6343, nine: 167.0629 },
  { name: "rail length", read: () => spilled("Layout", "N17", "rail length", "value"), ten: 163.1289, nine: 152.9707 },
  // Two balusters of 1 1/4: (10 - 2 1/2) / 2; (9 - 2 1/2) / 2.
  { name: "gap between balusters", read: () => cell("Layout", "O28"), ten: 3.75, nine: 3.25 },
  // IRC 2021 R311.7.5.2: at least 10 in.
  { name: "tread depth in the check", read: () => asDesigned("tread depth"), ten: "✓ pass", nine: "✗ FAIL" },
  { name: "fails, as designed", read: () => failing("as designed"), ten: 0, nine: 1 },
  // 7 3/4 less 7 1/4 is 1/2, over 3/8; on 9 in the tread depth too.
  { name: "fails, as framed", read: () => failing("as framed"), ten: 1, nine: 2 },
  { name: "fails, once packed", read: () => cell("Check", "AA7"), ten: 0, nine: 1 },
  // 13 x 54 + 19.50.
  { name: "cost of the blanks", read: () => cell("Order", "C4"), ten: 721.5, nine: 721.5 },
  // 702 x 1/4 / 11 1/2 and 19.50 x 1 1/2 / 3 1/2 in cents, 15.26 + 8.36; 702 x 1 1/4 / 11 1/2 is 76.30, and 8.36.
  { name: "rip cost", read: () => cell("Order", "G4"), ten: 23.62, nine: 84.66 },
  // Two skirts of 16 ft and a rail of 14: 2 x 88 + 96.
  { name: "skirts and rail", read: () => spilled("Cut plan", "AI26", "cost", "value"), ten: 272, nine: 272 },
  // 192 - 2 x 1/4 - 162 63/64 - 1/8: the open skirt, marked up to a 64th; on 9 in 192 - 2 x 1/4 - 152 13/16 - 1/8.
  { name: "end of a skirt worth keeping", read: () => leftOver("open skirt"), ten: 28.390625, nine: 38.5625 },
  // One riser off the rack, one board of 10 ft, two of 16: 22.40 + 76.
  { name: "riser boards", read: () => spilled("Cut plan", "AA26", "cost", "value"), ten: 98.4, nine: 98.4 },
  // First tread by its diagonals: 38.1146, see the one-stair job; 38 1/8 on the tape.
  { name: "first tread on the ticket", read: () => onTape(cell("Fit", "J9")), ten: '38 1/8"', nine: '38 1/8"' },
  // The treads were read on a run of 10.
  {
    name: "word on the readings of the treads",
    read: () => cell("Fit", "A14"),
    ten: "",
    nine: "Read on another run than Job has: step 1, 2, 3, 4, 5; read again, or mend Job.",
  },
  // 7 9/16 - 1 with no lap; a lap of 1/4 on all others: 7 9/16, and the fifth once packed 7 7/16.
  { name: "first riser height", read: () => cell("Fit", "G17"), ten: 6.5625, nine: 6.5625 },
  { name: "second riser height", read: () => cell("Fit", "G18"), ten: 6.8125, nine: 6.8125 },
  { name: "fifth riser height", read: () => cell("Fit", "G21"), ten: 6.6875, nine: 6.6875 },
  // 13 treads x 4; 14 risers that run past at one end, the first over no tread.
  { name: "screws", read: () => spilled("Takeoff", "AA8", "screws", "quantity"), ten: 52, nine: 52 },
  { name: "notches", read: () => spilled("Takeoff", "AA8", "notch", "quantity"), ten: 13, nine: 13 },
  // (13 x 11 1/4 + 106 1/8) x 36 3/4 / 144 = 64.41 sq ft over 32; on 9 in 61.09.
  { name: "protection sheets", read: () => spilled("Takeoff", "AA8", "protection sheets", "quantity"), ten: 3, nine: 2 },
  // 13 notches x 0.1 h; 13 x (36 3/4 + 11 1/4) / 12 x 0.02 h, with 10 1/4 on 9 in.
  { name: "hours of notching", read: () => spilled("Takeoff", "AG8", "notch", "quantity"), ten: 1.3, nine: 1.3 },
  { name: "hours of cove", read: () => spilled("Takeoff", "AG8", "cove", "quantity"), ten: 1.04, nine: 1.01833 },
  // 13 x (3 x 10 + 36 3/4) / 12; 13 x (27 + 36 3/4) / 12.
  { name: "bead of adhesive", read: () => cell("Takeoff", "B8"), ten: "72.3125 ft", nine: "69.0625 ft" },
  // pi / 4 x (5/16)² x bead x 1.1 / 18.227 = 4.02, so 5; 3.84, so 4.
  { name: "cartridges", read: () => cell("Takeoff", "B14"), ten: 5, nine: 4 },
  // Goods 721.50 + 98.40 + 272, returns 87.75, cove 59.80, screws 5.72, nails 2.52, sheets 42, adhesive 42; 24.79 h x 58 = 1,437.82.
  // On 9 in: adhesive 8.40, a sheet 14 and its 0.1 h 5.80, cove 58.55 and 59.06.
  { name: "direct cost", read: () => spilled("Bid", "AH8", "direct", "cost"), ten: 2769.51, nine: 2738.8 },
  // 332.34 overhead, 3,101.85 / 0.85 = 3,649.24, tax 237.20; 328.66, 3,067.46 / 0.85 = 3,608.78, 234.57.
  { name: "total of the bid", read: () => spilled("Bid", "AH8", "total", "cost"), ten: 3886.44, nine: 3843.35 },
  // 721.50 + 98.40 + 272: blanks, riser boards, skirts and rail; 87.75 returns, 59.80 cove, 5.72 screws, 2.52 nails, 42 sheets and 42
  // adhesive. On 9 in 58.55 cove, 28 sheets, 33.60 adhesive.
  { name: "planned in the books", read: () => spilled("Books", "AH8", "total", "planned cost"), ten: 1331.69, nine: 1308.04 },
  // Blanks 708.50 + 61, freight 28.34 and late 12; nosing 19.50 + 0.78; skirts 176 + 7.04, less the end kept, an eighth of one, 11.44; rail
  // 96 + 3.84; two of the poplar at 38, 21.50; off the rack 5.72, 2.52 and strips 22; 59.80, 42, 42.
  { name: "spent in the books", read: () => spilled("Books", "AH8", "total", "spent"), ten: 1373.1, nine: 1373.1 },
  // 708.50 + 61 - 14 x 54 + 21.50 - 22.40.
  { name: "price variance", read: () => spilled("Books", "AH8", "total", "price variance"), ten: 12.6, nine: 12.6 },
  // (14 - 13) x 54 - 88 / 8; on 9 in cove 59.80 - 58.55, a sheet 14, adhesive 8.40 more.
  { name: "usage variance", read: () => spilled("Books", "AH8", "total", "usage variance"), ten: 43, nine: 66.65 },
  // Strips 22 for returns planned at 87.75.
  { name: "scope", read: () => spilled("Books", "AH8", "total", "scope"), ten: -65.75, nine: -65.75 },
  // 28.34 + 12 + 0.78 + 7.04 x 15 / 16 + 3.84, the sixteenth being half of the eighth of one of two: 0.44.
  { name: "freight of the job", read: () => spilled("Books", "AH8", "total", "charges"), ten: 51.56, nine: 51.56 },
  // 1,373.10 - 1,331.69; 1,373.10 - 1,308.04.
  { name: "spent over plan", read: () => cell("Books", "C4"), ten: 41.41, nine: 65.06 },
  // The direct cost of the bid, and by cause: of the usage a blank of 54 spoiled; 1,550.25 - 26.5 x 58; (26.5 - 24.79) x 58, on 9 in
  // 1,537.00 - 1,430.76 of labour bid.
  { name: "bid to book: bid", read: () => spilled("Books", "A94", "bid", "amount"), ten: 2769.51, nine: 2738.8 },
  { name: "bid to book: price", read: () => spilled("Books", "A94", "price", "amount"), ten: 12.6, nine: 12.6 },
  { name: "bid to book: usage", read: () => spilled("Books", "A94", "usage", "amount"), ten: -11, nine: 12.65 },
  { name: "bid to book: waste", read: () => spilled("Books", "A94", "waste", "amount"), ten: 54, nine: 54 },
  { name: "bid to book: rate", read: () => spilled("Books", "A94", "rate", "amount"), ten: 13.25, nine: 13.25 },
  { name: "bid to book: hours", read: () => spilled("Books", "A94", "hours", "amount"), ten: 99.18, nine: 106.24 },
  { name: "bid to book: freight", read: () => spilled("Books", "A94", "freight and tax", "amount"), ten: 51.56, nine: 51.56 },
  { name: "bid to book: not bid", read: () => spilled("Books", "A94", "not bid", "amount"), ten: 22, nine: 22 },
  { name: "bid to book: not done", read: () => spilled("Books", "A94", "bid, not done", "amount"), ten: -87.75, nine: -87.75 },
  // 1,373.10 + 1,550.25.
  { name: "bid to book: actual", read: () => spilled("Books", "A94", "actual", "amount"), ten: 2923.35, nine: 2923.35 },
  // 80 screws at 0.11, 416 nails at 0.03, a board at 38, an end of a skirt at 183.04 / 16.
  { name: "value of the rack", read: () => spilled("Books", "A108", "total", "value"), ten: 70.72, nine: 70.72 },
  // March: 1,000 + 173.50 + 143.80 + 61 + 18 bought, freight 40, sent back 38; 59 of openings to 70.72 on the rack; 8 screws short.
  { name: "papers of the month", read: () => cell("Register", "B4"), ten: 1398.3, nine: 1398.3 },
  // 1,373.10 less the late freight of April, and 6.60 of another job.
  { name: "cost of jobs in the month", read: () => cell("Register", "D4"), ten: 1367.7, nine: 1367.7 },
  { name: "cost of the shop", read: () => cell("Register", "F4"), ten: 18, nine: 18 },
  { name: "change on the rack", read: () => cell("Register", "H4"), ten: 11.72, nine: 11.72 },
  { name: "short at the count", read: () => cell("Register", "N4"), ten: 0.88, nine: 0.88 },
  { name: "the month ties", read: () => cell("Register", "J4"), ten: "✓ to the cent", nine: "✓ to the cent" },
  { name: "this job to date, by SUMIFS", read: () => cell("Register", "P4"), ten: 1373.1, nine: 1373.1 },
  // The story of the run: 14 blanks of 11 1/2 x 42 x 54.00, of which 11 1/4 x 38 or 10 1/4 x 38 is tread; the count never moves.
  { name: "blanks used", read: () => spilled("Books", "AH8", "oak blank 42", "used"), ten: 14, nine: 14 },
  {
    name: "board feet in the treads",
    read: () => spilled("Books", "AH8", "oak blank 42", "net"),
    ten: (14 * 11.25 * 38) / 144,
    nine: (14 * 10.25 * 38) / 144,
  },
  {
    name: "wood paid for and ripped or cut off",
    read: () => spilled("Books", "AH8", "oak blank 42", "waste cost"),
    ten: 86.87,
    nine: 146.35,
  },
];

const DECIMALS = 4;

const check = (found: CellValue, wanted: number | string): void => {
  if (typeof wanted === "string") expect(found).toBe(wanted);
  else expect(found).toBeCloseTo(wanted, DECIMALS);
};

test("the demo is a workbook as it is stored, and says on every sheet what to type and what comes out", () => {
  expect(workbookData({ version: 1, sheets: demo }).sheets.map(({ name }) => name)).toEqual([
    "Job", "Survey", "Layout", "Check", "Order", "Cut plan", "Boards", "Yard order", "Fit", "Takeoff", "Bid", "Quote", "Books",
    "Register",
  ]);
  for (const { name, cells, frozenRows } of demo) {
    expect(cells["A1"]?.style).toBe("title");
    expect([name, frozenRows]).toEqual([name, 6]);
    if (!["Check", "Yard order", "Quote"].includes(name)) expect(String(cells["A2"]?.value)).toMatch(/^Type /);
  }
  expect(String(demo[0]?.cells["B8"]?.value)).toContain("invented job");
  expect(String(demo[0]?.cells["A2"]?.value)).toContain("invented");
});

test("lengths that are typed are numbers in cells of fractions, so that 1/2 typed over one stays a half", () => {
  const inputs = demo.flatMap(({ cells }) => Object.values(cells).filter(({ style }) => style === "input"));
  const lengths = inputs.filter(({ format }) => format === "# ??/16");
  expect(lengths.filter(({ value }) => typeof value === "number").length).toBeGreaterThan(150);
  // Feet stay text, as a person writes them; a typed number elsewhere is a count, money, hours, a share or an angle.
  for (const { value } of lengths) if (typeof value === "string") expect(value).toMatch(/^\d+'$|^(yes|no|none|one|right)$|fl oz$|^in$/);
});

/** An answer of a strip, in words: its name, what it shows, and what stands under it. */
const strips = (): readonly (readonly [place: string, shown: CellValue, under: CellValue])[] =>
  demo.flatMap(({ name, cells }) =>
    Object.keys(cells).flatMap((address) => {
      const [, letters = "", row = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
      return row === "4" && cells[address]?.formula !== undefined
        ? [[`${name}!${address}`, cell(name, address), cell(name, `${letters}5`)] as const]
        : [];
    }),
  );

test("every sheet answers in its first rows, and every answer says what it is in", () => {
  const shown = strips();
  expect(new Set(shown.map(([place]) => place.split("!")[0])).size).toBe(demo.length);
  for (const [place, answer, under] of shown) {
    expect([place, answer]).not.toEqual([place, "–"]);
    expect([place, String(under ?? "").length > 0]).toEqual([place, true]);
  }
});

test("the quote has the price of the bid, what an alternate adds, and not one cost", () => {
  // By hand: 2,769.51 + 236.80 = 3,006.31; 12 % is 360.76; 3,367.07 / 0.85 = 3,961.26, 312.02 more; 6.5 % of it 257.48, 20.28 more. With
  // 15 risers 2,769.51 + 95.57 + 69.60 = 2,934.68; 12 % is 352.16; 3,286.84 / 0.85 = 3,866.87, 217.63 more; tax 251.35, 14.15 more.
  expect(book.spill("Quote", "A8")).toEqual([
    ["part", "option", "price", "tax", "total"],
    ["Oak stair (invented job)", "", 3649.24, 237.2, 3886.44],
    ["total", "", 3649.24, 237.2, 3886.44],
    ["white oak", "white oak", 312.02, 20.28, 332.3],
    ["15 risers", "15 risers", 217.63, 14.15, 231.78],
  ]);
});

describe("alternates on Bid", () => {
  test("a line under the terms says from which row they stand, also once rows come in between", async () => {
    expect(cell("Bid", "A17")).toBe("Alternates: from row 90");
    expect(cell("Bid", "A90")).toContain("The bid as drawn and its alternates");
    const other = await openedData({ version: 1, sheets: demo });
    other.insertRows("Bid", 60, 2);
    await other.settled();
    expect(other.value("Bid", "A17")).toBe("Alternates: from row 92");
  });

  // By hand, as the quote above; hours 24.79, and 1.2 more. With 15 risers the rise is 106 1/8 / 15 = 7.075, and under the opening of 123
  // there are 123 x 7.075 / 10 - 11 1/4 = 75.77, less than the 80 of IRC 2021 R311.7.2. Riser boards: as drawn 14 on one off the rack, one
  // of 10 ft and two of 16 ft at 98.40; 15 of 37 on that one and two each of 8 and 16 ft at 112; rail 171 1/2, over the 168 of 14 ft.
  test("each stands with its cost, price, hours, verdict and boards, and the code's verdict is the check's own", () => {
    expect(book.spill("Bid", "A91")).toEqual([["option", "cost"], ["as drawn", 2769.51], ["white oak", 3006.31], ["15 risers", 2934.68]]);
    const rounded = (shown: CellValue): CellValue => (typeof shown === "number" ? Number(shown.toFixed(6)) : shown);
    expect(book.spill("Bid", "D91").map((row) => row.map(rounded))).toEqual([
      ["price", "add or deduct", "hours"], [3649.24, 0, 24.79], [3961.26, 312.02, 24.79], [3866.87, 217.63, 25.99],
    ]);
    const settle = String(cell("Check", "E5"));
    expect(book.spill("Bid", "J91").flat()).toEqual([
      "verdict", `✓ none fail; ${settle}`, "as drawn", `✗ fails headroom (R311.7.2); ${settle}`,
    ]);
    expect(book.spill("Bid", "A102")).toEqual([
      ["option", "boards to buy"], ["as drawn", "6: 1 poplar 10 ft, 2 poplar 16 ft, 2 skirt 16 ft, 1 rail 14 ft"],
      ["white oak", "as drawn"], ["15 risers", "7: 2 poplar 8 ft, 2 poplar 16 ft, 2 skirt 16 ft, 1 rail 16 ft"],
    ]);
  });

  test("the boards as drawn are those that Cut plan buys", () => {
    const bought = ["AA8", "AI8"].flatMap((at) => book.spill("Cut plan", at).slice(1));
    const counts = bought.filter((row) => row[2] !== 0).map((row) => `${String(row[2])} ${String(row[0])}`);
    expect(String(book.spill("Bid", "A102")[1]?.[1])).toBe(`6: ${counts.join(", ")}`);
  });

  // By hand: 236.80, and 12 % of 3,006.31 less 332.34; what is left of 312.02 is profit; 20.28 of tax.
  test("what changes the price walks from the bid to the alternate that is typed", () => {
    expect(book.spill("Bid", "A126").filter(([, amount]) => amount !== 0)).toEqual([
      ["cause", "amount"], ["price before", 3649.24], ["new", 236.8], ["overhead", 28.42], ["profit", 46.8], ["price after", 3961.26],
      ["tax before", 237.2], ["tax", 20.28], ["total after", 4218.74],
    ]);
    expect(book.spill("Bid", "D126")[2]).toEqual(["white oak instead of red", ""]);
  });
});

test("the ends worth keeping are the ends of the cut list beside them", () => {
  const ends = new Map(book.spill("Cut plan", "J8").map((row) => [row[1], Number(row[7])]));
  const kept = [...ends.values()].filter((end) => end >= 12).sort((one, other) => one - other);
  const [shown = [], ...rows] = book.spill("Cut plan", "A32");
  const offered = rows.flatMap((row) =>
    Array.from({ length: Number(row[shown.indexOf("available")]) }, () => Number(row[shown.indexOf("length")])),
  );
  expect(kept.length).toBeGreaterThan(0);
  expect(offered.sort((one, other) => one - other)).toEqual(kept);
});

test("returns are cut from the strips on hand: 13 of 12 1/2, seven to a strip of 8 ft, at no cost", () => {
  const strips = book.spill("Cut plan", "J8").filter((row) => row[2] === "return");
  expect(strips.map((row) => [row[0], row[3]])).toEqual(Array.from({ length: 13 }, () => ["strip 8 ft", 12.5]));
  // By hand: 96 - 2 x 1/4 - 7 x (12 1/2 + 1/8) = 7 1/8, and with six 19 3/4.
  expect([...new Set(strips.map((row) => row[7]))].sort()).toEqual([19.75, 7.125]);
  expect(book.spill("Cut plan", "S8").map(([item]) => item)).not.toContain("strip 8 ft");
});

test("a tread longer or deeper than its blank is named on Fit and on Job, and a price that is missing on Bid", async () => {
  const other = await openedData({ version: 1, sheets: demo }, builtFunctions());
  expect([other.value("Fit", "AD70"), other.value("Job", "H11"), other.value("Bid", "A38")]).toEqual(["", "✓ in stock sizes", ""]);
  // Blanks of exactly 11 1/4: the third tread, on a run of 10 1/16 with its nosing of 1 1/4, is 11 5/16 deep.
  for (const address of ["C9", "C10", "C11"]) other.put("Order", { [address]: { value: 11.25 } });
  other.put("Fit", { B11: { value: 10.0625 } });
  other.put("Bid", { L20: { value: "" } });
  await other.settled();
  expect(other.value("Fit", "A14")).toBe("Larger than the blank on Order: step 3; order a larger one.");
  expect(other.value("Job", "H11")).toBe("✗ too small: Fit");
  expect(other.value("Bid", "A38")).toContain("No cost yet: cove. Type its hours or price on the right; included if it costs nothing.");
}, ENGINE_TIME);

test("the counts in the strip of the check are the verdicts that stand under it, failures first", () => {
  for (const [at, place] of [["A", 0], ["E", 6]] as const) {
    const marks = checked().map((row) => String(row[place]).slice(0, 1));
    const count = (mark: string): number => marks.filter((one) => one === mark).length;
    const fails = count("✗");
    expect(cell("Check", `${at}4`)).toBe(fails === 0 ? "✓ none fail" : `✗ ${fails} FAIL`);
    expect(cell("Check", `${at}5`)).toBe(`${count("○")} to settle`);
  }
  const order = checked().map((row) => "✗○✓–".indexOf(String(row[0]).slice(0, 1) || "–"));
  expect(order).toEqual([...order].sort((one, other) => one - other));
});

test.each(NAMED)("$name on a 10 in run", ({ read, ten }) => check(read(), ten));

describe("9 typed for the run", () => {
  beforeAll(async () => {
    book.setCell("Job", "B13", "9");
    await book.settled();
  }, ENGINE_TIME);

  test.each(NAMED)("$name on a 9 in run", ({ read, nine }) => check(read(), nine));
});

test("risers that are not read are cut and paid for as designed, beside those that are", async () => {
  const { cells = {} } = demo.find(({ name }) => name === "Fit") ?? {};
  // Risers stand below the treads, two heading rows between them: what is typed of the third riser and on is taken out.
  const [third = 0] = Object.entries(cells).flatMap(([address, { value }]) =>
    /^A\d+$/.test(address) && value === 3 ? [Number(address.slice(1))] : []).slice(-1);
  const fewer = demo.map((sheet) => (sheet.name !== "Fit" ? sheet : {
    ...sheet,
    cells: Object.fromEntries(Object.entries(sheet.cells).filter(([address, { formula }]) =>
      formula !== undefined || !/^[B-H]\d+$/.test(address) || Number(address.slice(1)) < third)),
  }));
  const twoRead = await openedData({ version: 1, sheets: fewer }, builtFunctions());
  expect(twoRead.value("Cut plan", "C5")).toBe("2 of 14 risers taped");
  const cut = twoRead.spill("Cut plan", "J8").map((row) => row[2]);
  expect(cut.filter((piece) => piece === "riser as designed")).toHaveLength(12);
  expect(cut).toEqual(expect.arrayContaining(["riser 1", "riser 2"]));
  // By hand: 192 - 2 x 1/4 holds five of 37 with four kerfs, so 5 + 5 + 3 + 1: two at 38, one at 22.40, the rack; skirts 2 x 88, rail 96.
  expect(twoRead.value("Cut plan", "A4")).toBeCloseTo(370.4, 9);
  // By hand, with every riser paid for, so at the direct cost accounted for above, 2,769.51: x 1.12 / 0.85.
  expect(twoRead.value("Bid", "A4")).toBe(3649.24);
}, ENGINE_TIME);

test("a stair that packing cannot mend says so, and what a raised floor does", async () => {
  const other = await openedData({ version: 1, sheets: demo }, builtFunctions());
  // Rough rises of 7 11/16 and a last one of 7 9/16, nobody having dropped the stringer: 7 11/16 + 1 - 3/4, and 7 9/16 + 3/4 - 1.
  const type = async (typed: Readonly<Record<string, number | string>>): Promise<void> => {
    other.put("Survey", Object.fromEntries(Object.entries(typed).map(([address, value]) => [address, { value }])));
    await other.settled();
  };
  other.put("Job", { B11: { value: 107.5 } });
  await type({ ...Object.fromEntries(Array.from({ length: 14 }, (_, step) => [`B${8 + step}`, step === 13 ? 7.5625 : 7.6875])), I13: "" });
  const at = (...cells: readonly string[]): readonly CellValue[] => cells.map((address) => other.value("Survey", address));
  expect(at("C8", "C21", "E8", "E21", "F8")).toEqual([7.9375, 7.3125, 7.9375, 7.3125, "too tall"]);
  // No rise over 7 3/4 and within 3/8, IRC R311.7.5.1: 7 15/16 comes down by 1/4 only with the floor below it.
  expect(at("H14")[0]).toBe(
    'The plan: no packing keeps every rise to 7 3/4" and the spread within 3/8"; the least spread is 5/8". To reach it, raise the lower ' +
    'floor by 1/4" (I11).',
  );
  // Riser height and riser uniformity.
  expect(other.value("Check", "AA7")).toBe(2);
  await type({ I11: 0.25 });
  // 7 15/16 - 1/4 = 7 11/16, and 7 11/16 - 7 5/16 is 3/8; nothing goes under a sub-tread. The first riser: 7 11/16 - 1.
  expect(at("E8", "D8", "D9", "E21", "G4", "G5")).toEqual([7.6875, 0, 0, 7.3125, "✓ alike", 'spread 3/8", packing 1/4"']);
  expect([other.value("Check", "AA7"), other.value("Fit", "G17")]).toEqual([0, 6.6875]);
  expect(at("H14")[0]).toBe(
    'The plan: within 3/8". The lower floor comes up by 1/4": add it to the lower build up, and take it off the total rise on Job.',
  );
  // Done as said: 3/4 + 1/4, 107 1/2 - 1/4; what was the plan is then how the stair is framed.
  other.put("Job", { B11: { value: 107.25 } });
  await type({ I9: 1, I11: "" });
  expect(at("C8", "A5", "E4", "H14")).toEqual([7.6875, "in, as on Job", "✓ alike", 'The plan: within 3/8"; nothing to pack.']);
}, ENGINE_TIME);

test("a strip over an error shows a dash and names the cell; nothing says none fail", async () => {
  book.setCell("Layout", "B18", "1 1/4 x");
  await book.settled();
  expect(cell("Layout", "A4")).toBe("–");
  expect(cell("Layout", "A5")).toBe("see D8");
  expect([cell("Check", "A4"), cell("Check", "E4"), cell("Job", "B4")]).toEqual(["–", "–", "–"]);
  expect(cell("Job", "G5")).toBe("see Bid!A19");
  expect(book.errorMessage("Layout", "AA7")).toContain("nosing");
  book.setCell("Layout", "B18", "1 1/4");
  await book.settled();
  expect(cell("Check", "E4")).toBe("✗ 1 FAIL");
}, ENGINE_TIME);

test("no formula of the demo is in error", () => {
  const wrong = demo.flatMap(({ name, cells }) =>
    Object.entries(cells).flatMap(([address, { formula }]) => {
      if (formula === undefined) return [];
      return book
        .spill(name, address)
        .flat()
        .some((value) => typeof value === "object" && value !== null)
        ? [`${name}!${address} ${formula} ${book.errorMessage(name, address) ?? ""}`]
        : [];
    }),
  );
  expect(wrong).toEqual([]);
});
