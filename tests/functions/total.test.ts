import fc from "fast-check";
import { answered } from "./answered";

const cost = (...cells: unknown[]): unknown[][] => [["item", "cost"], ...cells.map((cell, index) => [`good ${index + 1}`, cell])];
const EMPTY_ERROR = { code: "#DIV/0!", message: "divided by nothing" };

test("whole cents add up to the cent, whatever their order, and headings said again, blank rows and total rows change nothing", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -10_000_000, max: 10_000_000 }), { minLength: 1, maxLength: 60 }), (amounts) => {
      const rows = amounts.map((amount) => amount / 100);
      // Whole cents are whole numbers: their sum has no rounding in it.
      const sum = amounts.reduce((whole, amount) => whole + amount, 0) / 100;
      expect(answered("TOTAL", cost(...rows), "cost")).toBe(sum === 0 ? 0 : sum);
      expect(answered("TOTAL", [...cost(...rows), ["total", sum]], "cost")).toBe(sum === 0 ? 0 : sum);
      expect(answered("TOTAL", [["", ""], ...cost(...rows), ["", 0], ["Item", "COST"], ["total", sum], ["one more", 1]], "cost")).toBe(
        Math.round(sum * 100 + 100) / 100,
      );
    }),
  );
});

test("one error among the rows is the error of the sum, by the name of its row, and never a lower sum", () => {
  expect(answered("TOTAL", cost(5, EMPTY_ERROR, 7), "cost")).toBe(
    "#DIV/0! cost in row 3 (good 2): the cell given holds #DIV/0!; put that cell right first",
  );
  expect(answered("TOTAL", [[EMPTY_ERROR]], "cost")).toBe("#DIV/0! divided by nothing");
  expect(answered("TOTAL", [...cost(5), ["total", EMPTY_ERROR]], "cost")).toContain("#DIV/0! cost in row 3 (total)");
});

test("text, an empty cell and a column of nothing are named", () => {
  expect(answered("TOTAL", cost(5, "about 6"), "cost")).toBe('#VALUE! cost in row 3 (good 2): must be a number, got "about 6"');
  expect(answered("TOTAL", cost(5, "$1,006.50"), "cost")).toBe(1011.5);
  expect(answered("TOTAL", cost(5, null), "cost")).toBe(
    "#VALUE! cost in row 3 (good 2): is empty; give a number, or 0 where there is nothing to add",
  );
  expect(answered("TOTAL", cost(), "cost")).toBe('#VALUE! table: has no row with a number in "cost"');
  expect(answered("TOTAL", [[1, 2], [3, 4]], "cost")).toBe("#VALUE! table: has no headings; the first row has to name the columns");
  // A year over another column is no text, and no fault of the column asked for: 5 + 6.
  expect(answered("TOTAL", [["cost", 2026], [5, 2], [6, 4]], "cost")).toBe(11);
});

test("our own total rows are left out, and rows that are no parts of a sum are refused", () => {
  const reconciled = answered(
    "RECONCILE",
    [
      ["item", "quantity", "price"],
      ["blank", 13, 52],
      ["riser", 2, 38],
    ],
    [
      ["item", "quantity", "price"],
      ["blank", 14, 53.5],
      ["riser", 3, 38],
    ],
    [
      ["item", "quantity"],
      ["blank", 14],
      ["riser", 2],
    ],
  );
  // 14 x 53.50 + 3 x 38.
  expect(answered("TOTAL", reconciled, "spent")).toBe(863);
  const bid = answered("BID", [["item", "cost"], ["material", 600]], [["overhead on cost", "10%"]]);
  expect(answered("TOTAL", bid, "cost")).toMatch(/^#VALUE! cost in row \d+ \(total\): is 660 where the rows above it come to/);
});

test("subtotals are what the rows since the last one come to, or all since the total; anything else is refused by name", () => {
  const rows = (...last: unknown[][]): unknown[][] => [["item", "cost"], ["a", 1], ["b", 2], ["Subtotal", 3], ["c", 4], ...last];
  expect(answered("TOTAL", rows(["Sub total", 4]), "cost")).toBe(7);
  expect(answered("TOTAL", rows(["sub-total", 7], ["Total", 7], ["d", 5], ["grand total", 12]), "cost")).toBe(12);
  expect(answered("TOTAL", rows(["subtotal", 5]), "cost")).toBe(
    "#VALUE! cost in row 6 (subtotal): is 5 where the rows above it come to 4; these rows are no parts of a sum, or a cell was typed over",
  );
  expect(answered("TOTAL", rows(["Grand total", 6]), "cost")).toContain(
    "cost in row 6 (Grand total): is 6 where the rows above it come to 7;",
  );
  expect(answered("TOTAL", [["item", "verdict"], ["a", "fail"], ["Subtotal", "fail"]], "verdict", "fail")).toBe(1);
  expect(answered("TOTAL", [["item", "kind"], ["a", "total"], ["b", "part"], ["total", "part"]], "kind", "total")).toBe(1);
});

test("a subtotal may stand under any heading and be named for what it adds", () => {
  const rows = (subtotal: number): unknown[][] => [
    ["No.", "Description", "cost"],
    [1, "tread", 1],
    [2, "riser", 2],
    ["", "Subtotal", subtotal],
    [3, "newel", 4],
  ];
  expect(answered("TOTAL", rows(3), "cost")).toBe(7);
  expect(answered("TOTAL", rows(9), "cost")).toBe(
    "#VALUE! cost in row 4 (Subtotal): is 9 where the rows above it come to 3; these rows are no parts of a sum, or a cell was typed over",
  );
  for (const name of ["Treads subtotal", "Total treads", "Sub-total:", "SUM"])
    expect(
      answered(
        "TOTAL",
        [
          ["item", "cost"],
          ["a", 1],
          ["b", 2],
          [name, 3],
          ["c", 4],
        ],
        "cost",
      ),
    ).toBe(7);
  // Words that only hold the letters are goods.
  expect(answered("TOTAL", [["item", "cost"], ["summit ash", 1], ["totally clear oak", 2]], "cost")).toBe(3);
});

test("an amount that is included adds nothing", () => {
  expect(answered("TOTAL", [["item", "cost"], ["a", "included"], ["b", 2]], "cost")).toBe(2);
});

test("a quantity of several units is refused by the units, in one unit under several names it is added", () => {
  const rows = (...units: unknown[]): unknown[][] => [
    ["item", "quantity", "unit"],
    ...units.map((unit, index) => [`good ${index + 1}`, index + 1, unit]),
  ];
  expect(answered("TOTAL", rows("LF", "ft", "lin ft"), "quantity")).toBe(6);
  expect(answered("TOTAL", rows("", null), "quantity")).toBe(3);
  expect(
    answered(
      "TOTAL",
      [
        ["item", "Pcs", "unit"],
        ["a", 14, "each"],
        ["b", 84, "ft"],
        ["c", 3, "sq ft"],
      ],
      "Pcs",
    ),
  ).toMatch(/^#VALUE! Pcs: its rows are in each, ft, sq ft, /);
  expect(answered("TOTAL", rows("ft", "in", "", "ft"), "Qty")).toBe(
    "#VALUE! Qty: its rows are in ft, in, no unit, which do not add up to one number; give the rows of one unit",
  );
  // Nothing of another unit changes no sum.
  expect(answered("TOTAL", [...rows("ft", "ft"), ["none", 0, "each"], ["total", 3, ""]], "quantity")).toBe(3);
  expect(answered("TOTAL", [["item", "cost", "unit"], ["a", 5, "ft"], ["b", 6, "each"]], "cost")).toBe(11);
  const stair = [["total rise", 107.5], ["risers", 14], ["run", 10], ["width", 36]];
  expect(answered("TOTAL", answered("TAKEOFF", answered("LAYOUT", stair)), "quantity")).toMatch(
    /^#VALUE! quantity: its rows are in each, .*which do not add up/,
  );
});

describe("with a word to count", () => {
  const check = [
    ["item", "verdict", "note"],
    ["rise", "fail", ""],
    ["run", "pass", ""],
    ["nosing", "assumed: would fail", ""],
    ["rail", "not given", ""],
    ["guard", "", "caution"],
  ];

  test.each([
    ["fail", 1],
    ["fails", 1],
    ["assumed", 1],
    ["Not-given", 1],
    ["judge", 0],
    ["no limit", 0],
    ["not on file", 0],
    ["assumed: would fail", 1],
    ["assumed: would pass", 0],
  ])("%s: %d", (of, count) => expect(answered("TOTAL", check, "verdict", of)).toBe(count));

  test("a slip of a word is no count of none, and an error in a row is the error of the count", () => {
    expect(answered("TOTAL", check, "verdict", "fial")).toMatch(
      /^#VALUE! of: "fial" is not known; nearest is "fail"; write .*not on file.*no limit/,
    );
    expect(
      answered(
        "TOTAL",
        [
          ["item", "grade"],
          ["a", "select"],
        ],
        "grade",
        "selekt",
      ),
    ).toBe('#VALUE! of: "selekt" is not known; nearest is "select"');
    expect(answered("TOTAL", [["item", "grade"], ["a", "select"]], "grade", "rail")).toBe(0);
    expect(answered("TOTAL", [...check, ["rise 2", "", EMPTY_ERROR]], "verdict", "fail")).toBe(
      "#DIV/0! table, row 7 (rise 2): the cell given holds #DIV/0!; put that cell right first",
    );
    expect(answered("TOTAL", [[EMPTY_ERROR]], "verdict", "fail")).toBe("#DIV/0! divided by nothing");
  });
});
