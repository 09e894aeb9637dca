import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import { isFailed } from "../../src/functions/cells";

/** Calls of goods and money that once gave a number that looked right and was not, each with its right answer by hand. */

type Row = Readonly<Record<string, unknown>>;

const called = (id: string, ...given: readonly unknown[]): unknown => {
  const declaration = catalogue.find((each) => each.id === id);
  if (declaration === undefined) throw new Error(id);
  return call(declaration, given);
};

/** The rows of a table by their headings. */
const rowsOf = (id: string, ...given: readonly unknown[]): readonly Row[] => {
  const answer = called(id, ...given);
  if (!Array.isArray(answer)) throw new Error(`${id}: ${isFailed(answer) ? answer.says : String(answer)}`);
  const [headings = [], ...rows] = answer as unknown[][];
  return rows.map((row) => Object.fromEntries(headings.map((heading, index) => [String(heading), row[index]])));
};

const says = (id: string, ...given: readonly unknown[]): string => {
  const answer = called(id, ...given);
  return isFailed(answer) ? answer.says : "answered";
};

const named = (rows: readonly Row[], item: string): Row | undefined => rows.find((row) => row["item"] === item);

const NO_TERMS = [["burden", 0]];

/** The direct row of a bid without terms. */
const direct = (costs: unknown): Row | undefined => rowsOf("BID", costs, NO_TERMS).find(({ label }) => label === "direct");

const PRICED = ["item", "quantity", "price"] as const;
const COUNTED = ["item", "quantity"] as const;

test("oak 4/4 and oak 44 are two goods, and each note names the other", () => {
  const bought = [PRICED, ["oak 4/4", 10, 5], ["oak 44", 2, 300]];
  const rows = rowsOf("RECONCILE", [PRICED, ["oak 4/4", 10, 5]], bought);
  expect(named(rows, "oak 4/4")).toMatchObject({ bought: 10, spent: 50, scope: 0, note: 'like "oak 44" in row 3 of bought: same goods?' });
  expect(named(rows, "oak 44")).toMatchObject({
    bought: 2,
    spent: 600,
    scope: 600,
    note: 'not planned: counted at the price paid; like "oak 4/4" in row 2 of planned: same goods?',
  });
  expect(named(rows, "total")).toMatchObject({ "planned cost": 50, spent: 650 });
});

test("oak 1 1/4 and oak 11/4 have each their own price", () => {
  const rows = rowsOf("EXTEND", [COUNTED, ["oak 1 1/4", 2], ["oak 11/4", 2]], [["oak 1 1/4", 9], ["oak 11/4", 12]]);
  expect(rows.map(({ cost }) => cost)).toEqual([18, 24]);
});

test("four columns without headings are refused: price or cost?", () => {
  const plan = [PRICED, ["cove", 7, 6.6]];
  const question = "is the fourth column price or cost? give headings";
  expect(says("RECONCILE", plan, [["cove", 7, "each", 46.2]])).toBe(`bought: ${question}`);
  // A column that is empty to its end, or 0 as desktop hosts send it, is no column.
  for (const nothing of ["", null, 0]) expect(says("RECONCILE", plan, [["cove", 7, "each", 46.2, nothing]])).toBe(`bought: ${question}`);
  expect(says("RECONCILE", [["cove", 7, "each", 6.6]], [PRICED, ["cove", 7, 6.6]])).toBe(`planned: ${question}`);
  // With all five it is plain: 46.20 of cost.
  expect(named(rowsOf("RECONCILE", plan, [["cove", 7, "", "", 46.2]]), "cove")).toMatchObject({ spent: 46.2 });
  expect(says("BID", called("EXTEND", [["cove", 7]], [["cove", 6.6]], false), NO_TERMS)).toBe(
    "costs: which of the columns is the cost? give headings",
  );
});

test("a unit that is empty beside a plan in board feet is refused with its row", () => {
  const plan = [["item", "quantity", "unit", "price"], ["oak", 40, "bf", 9]];
  expect(
    says("RECONCILE", plan, [
      ["item", "quantity", "unit", "price"],
      ["oak", 3, "", 120],
    ]),
  ).toBe('bought, oak: unit is empty in row 2; other rows of "oak" are in bf; give the unit');
  expect(
    says("RECONCILE", plan, [
      ["item", "quantity", "price"],
      ["oak", 3, 120],
    ]),
  ).toBe('bought, oak: unit is empty in row 2; other rows of "oak" are in bf; give the unit');
});

test("an invoice in pieces goes with an order that gives no unit, and board feet by what a planned piece takes", () => {
  // By hand: 2 blanks of 3.5 board feet; 7 bf at 15 are 105 for 2 planned at 52: 1.00 over.
  const plan = [["item", "quantity", "price", "net", "gross"], ["oak blank", 2, 52, 6, 7]];
  expect(
    named(
      rowsOf("RECONCILE", plan, [
        ["item", "quantity", "unit", "price"],
        ["oak blank", 2, "pcs", 52.5],
      ]),
      "oak blank",
    ),
  ).toMatchObject({ unit: "each", bought: 2, "price variance": 1 });
  expect(
    named(
      rowsOf("RECONCILE", plan, [
        ["item", "quantity", "unit", "price"],
        ["oak blank", 7, "BF", 15],
      ]),
      "oak blank",
    ),
  ).toMatchObject({ bought: 2, "price variance": 1 });
  expect(
    named(
      rowsOf("RECONCILE", plan, [
        ["item", "quantity", "unit", "price"],
        ["oak blank", 0.007, "MBF", 15000],
      ]),
      "oak blank",
    ),
  ).toMatchObject({ bought: 2, "price variance": 1 });
});

test("a price or a cost without a quantity is refused with its row", () => {
  const plan = [PRICED, ["oak", 4, 9]];
  expect(says("RECONCILE", plan, [PRICED, ["oak", 4, 9], ["oak", "", 9]])).toBe(
    "bought, oak: quantity is empty or 0 in row 3, beside money of 9; give the quantity",
  );
  expect(
    says("RECONCILE", plan, [
      ["item", "quantity", "cost"],
      ["oak", "", 36],
    ]),
  ).toBe("bought, oak: quantity is empty or 0 in row 2, beside money of 36; give the quantity");
});

test("a slip of the pen is named in both rows, and the total alone would hide it", () => {
  const rows = rowsOf("RECONCILE", [PRICED, ["oak blank", 10, 30]], [PRICED, ["oak blnak", 10, 30]], [COUNTED, ["oak blank", 10]]);
  expect(named(rows, "oak blank")).toMatchObject({
    "on the rack": -300,
    note: 'used more than bought: from stock, or a name differs; like "oak blnak" in row 2 of bought: same goods?',
  });
  expect(named(rows, "oak blnak")).toMatchObject({
    "on the rack": 300,
    note: 'not planned: counted at the price paid; like "oak blank" in row 2 of planned: same goods?',
  });
  expect(named(rows, "total")).toMatchObject({ "on the rack": 0 });
});

test("LF is ft and ea is each, an invoice in inches is feet", () => {
  const headings = ["item", "quantity", "unit", "price"];
  const rows = rowsOf(
    "RECONCILE",
    [headings, ["cove", 100, "LF", 1.13], ["cap", 4, "each", 2]],
    [headings, ["cove", 90, "ft", 1.2], ["cove", 120, "in", 0.1], ["cap", 4, "ea.", 2]],
  );
  // By hand: 90 x 1.20 + 120 x 0.10 = 120 for 100 ft, planned 113.
  expect(named(rows, "cove")).toMatchObject({ unit: "LF", bought: 100, spent: 120, "price variance": 7, "usage variance": 0 });
  expect(named(rows, "cap")).toMatchObject({ bought: 4, "price variance": 0 });
  expect(says("RECONCILE", [headings, ["cove", 100, "LF", 1.13]], [headings, ["cove", 4, "box", 30]])).toBe(
    'bought, cove: is in "box" in row 2, other rows are in "LF", which does not convert; give one unit, or board feet where the ' +
      "plan has gross",
  );
});

test.each([["ea", "each"], ["pcs.", "no"], ["LF", "ft"], ["Each", "EA"]])("a price for %s is one for %s", (unit, of) => {
  // By hand: 4 x 2.
  const list = [["item", "price", "unit"], ["cap", 2, of], ["cap", 3, "box"]];
  const rows = rowsOf("EXTEND", [["item", "quantity", "unit"], ["cap", 4, unit]], list);
  expect(rows[0]).toMatchObject({ price: 2, cost: 8, note: "" });
});

test("three boards at 38.005 are 114.02 in a row and 114.03 in three, planned, bought and bid", () => {
  const one = [PRICED, ["oak", 3, 38.005]];
  const three = [PRICED, ["oak", 1, 38.005], ["oak", 1, 38.005], ["oak", 1, 38.005]];
  expect(named(rowsOf("RECONCILE", one, one), "total")).toMatchObject({ "planned cost": 114.02, spent: 114.02, "price variance": 0 });
  expect(named(rowsOf("RECONCILE", three, three), "total")).toMatchObject({ "planned cost": 114.03, spent: 114.03, "price variance": 0 });
  // Two different papers: a cent of price.
  expect(named(rowsOf("RECONCILE", one, three), "total")).toMatchObject({
    "planned cost": 114.02,
    spent: 114.03,
    "price variance": 0.01,
    "usage variance": 0,
  });
  const costs = ["item", "cost"];
  expect(direct([costs, ["oak", 114.015]])).toMatchObject({ cost: 114.02 });
  expect(direct([costs, ["oak", 38.005], ["oak", 38.005], ["oak", 38.005]])).toMatchObject({ cost: 114.03 });
});

test("one job against its plan, every item", () => {
  const plan = [
    PRICED,
    ["oak blank 42", 13, 52],
    ["poplar 16 ft", 4, 38],
    ["maple newel", 2, 85],
    ["skirt board", 1, 84],
    ["freight", "", 60],
  ];
  const bought = [
    ["item", "quantity", "cost"],
    ["oak blank 42", 11, 583.43],
    ["poplar 16 ft", 3.25, 123.03],
    ["maple newel", 2, 171.5],
    ["freight", "", 74.48],
  ];
  const rows = rowsOf("RECONCILE", plan, bought);
  // By hand: 583.43 - 11 x 52 = 11.43, (11 - 13) x 52 = -104; 123.03 - 3.25 x 38 = -0.47, (3.25 - 4) x 38 = -28.50; 171.50 - 170 = 1.50;
  // the skirt board was not bought; freight 74.48 - 60 = 14.48. 952.44 - 1,142 = -189.56 = 12.46 - 132.50 - 84 + 14.48.
  const variances = (item: string): unknown[] =>
    ["price variance", "usage variance", "scope", "on the rack", "charges"].map((heading) => named(rows, item)?.[heading]);
  expect(variances("oak blank 42")).toEqual([11.43, -104, 0, 0, 0]);
  expect(variances("poplar 16 ft")).toEqual([-0.47, -28.5, 0, 0, 0]);
  expect(variances("maple newel")).toEqual([1.5, 0, 0, 0, 0]);
  expect(variances("skirt board")).toEqual([0, 0, -84, 0, 0]);
  expect(variances("freight and tax")).toEqual([0, 0, 0, 0, 14.48]);
  expect(variances("total")).toEqual([12.46, -132.5, -84, 0, 14.48]);
  expect(named(rows, "total")).toMatchObject({ "planned cost": 1142, spent: 952.44 });
  expect(named(rows, "skirt board")?.["note"]).toBe("planned, not bought");
});

test("more rows than promised are refused in words", () => {
  const many = (rows: number, row: readonly unknown[]): unknown[][] => Array.from({ length: rows }, () => [...row]);
  expect(says("EXTEND", many(5001, ["oak", 1]), [["oak", 5]])).toBe("quantities: is 5,001 rows; this function takes up to 5,000");
  expect(says("EXTEND", [["item", "quantity"], ...many(5001, ["oak", 1])], [["oak", 5]])).toBe(
    "quantities: is 5,001 rows; this function takes up to 5,000",
  );
  // The headings are none of the rows.
  expect(rowsOf("EXTEND", [["item", "quantity"], ...many(5000, ["oak", 1])], [["item", "price"], ["oak", 5]])).toHaveLength(5000);
  expect(says("RECONCILE", many(2001, ["oak", 1, "each"]), [PRICED, ["oak", 1, 5]])).toBe(
    "planned: is 2,001 rows; this function takes up to 2,000",
  );
});

test("goods planned with net and gross and neither bought nor used have no yield", () => {
  const plan = [["item", "quantity", "cost", "net", "gross"], ["oak", 2, 100, 14.1, 20], ["ash", 1, 10, 3, 4]];
  const rows = rowsOf("RECONCILE", plan, [["item", "quantity", "cost"], ["ash", 1, 10]]);
  expect(named(rows, "oak")).toMatchObject({ net: 0, gross: 0, yield: "", "waste cost": 0, scope: -100 });
  // By hand: 3 of 4 board feet; the oak was not cut and weighs nothing in the total.
  expect(named(rows, "ash")).toMatchObject({ net: 3, gross: 4, yield: 0.75 });
  expect(named(rows, "total")).toMatchObject({ net: 3, gross: 4, yield: 0.75 });
});

test("a yield without its net, its gross or any use is none, and said", () => {
  const plan = [
    ["item", "quantity", "cost", "net", "gross"],
    ["oak", 2, 100, "", 20],
    ["ash", 1, 10, 3, 0],
    ["elm", 1, 10, 3, 4],
    ["fir", 1, 10, "", ""],
  ];
  const invoice = [["item", "quantity", "cost"], ["oak", 2, 100], ["ash", 1, 10], ["elm", 1, 10], ["fir", 1, 10]];
  const rows = rowsOf("RECONCILE", plan, invoice, [["item", "quantity"], ["oak", 2], ["ash", 1], ["fir", 1]]);
  const none = { net: "", gross: "", yield: "", "waste cost": "" };
  expect(named(rows, "oak")).toMatchObject({ ...none, note: "no yield: net is 0 or empty in the plan" });
  expect(named(rows, "ash")).toMatchObject({ ...none, note: "no yield: gross is 0 or empty in the plan" });
  expect(named(rows, "elm")).toMatchObject({ net: 0, gross: 0, yield: "", "waste cost": 0, note: "no yield: nothing was used" });
  expect(named(rows, "fir")).toMatchObject({ ...none, note: "" });
  expect(named(rows, "total")).toMatchObject({ net: "", gross: "", yield: "" });
});

test("a price, a rate or a quantity that is 0 or empty is told from one that is included", () => {
  const notes = (id: string, heading: string, of: unknown[][], per: unknown[][]): unknown[] =>
    rowsOf(id, [["item", "quantity"], ...of], [["item", heading], ...per]).map(({ note }) => note);
  const rates = [["a", 0], ["b", ""], ["c", "Included"], ["d", 5]];
  const wanted = [["a", 1], ["b", 1], ["c", 1], ["d", 1], ["d", ""], ["d", 0], ["c", 0], ["a", 0], ["d", "included"]];
  const price = "price is 0 or empty: costs nothing here";
  const quantity = "quantity is 0 or empty: costs nothing here";
  const both = "quantity and price are 0 or empty: costs nothing here";
  expect(notes("EXTEND", "price", wanted, rates)).toEqual([price, price, "", "", quantity, quantity, "", both, ""]);
  const hours = "hours are 0 or empty: no hours here";
  const work = "quantity is 0 or empty: no hours here";
  const neither = "quantity and hours are 0 or empty: no hours here";
  expect(notes("HOURS", "hours", wanted, rates)).toEqual([hours, hours, "", "", work, work, "", neither, ""]);
  // Nothing written out, as text or in a currency, is a 0 like any other.
  expect(notes("EXTEND", "price", [["a", 1]], [["a", "0.00"]])).toEqual([price]);
  expect(says("EXTEND", [["item", "quantity"], ["a", 1]], [["item"], ["a"]])).toBe('prices: heading "price" is missing; found item');
});

test("subtotals among the costs of a bid are not counted again, as a total is not", () => {
  const costs = [["item", "cost"], ["wood", 100], ["Sub-total", 100], ["labour", 50], ["Grand total", 150]];
  expect(direct(costs)).toMatchObject({ cost: 150, note: "" });
});

test("what is included goes on as included from hours through their price into the bid", () => {
  const work = [["item", "quantity"], ["screws", 90], ["newel", 2], ["cap", "included"]];
  const worked = called("HOURS", work, [["item", "hours"], ["screws", "included"], ["newel", 3], ["cap", 1]]);
  const extended = called("EXTEND", worked, [["labour", 50, "hour"]]);
  // By hand: 2 newels x 3 hours x 50.
  expect(extended).toEqual([
    ["item", "quantity", "unit", "price", "cost", "note"],
    ["screws", 0, "hour", "included", 0, ""], ["newel", 6, "hour", 50, 300, ""], ["cap", 0, "hour", "included", 0, ""],
  ]);
  expect(direct(extended)).toMatchObject({ cost: 300, note: "" });
  expect(called("TOTAL", extended, "cost")).toBe(300);
  // Its own result as a list of prices says the same of its goods.
  expect(
    rowsOf(
      "EXTEND",
      [
        ["item", "quantity", "unit"],
        ["screws", 4, "hour"],
      ],
      extended,
    )[0],
  ).toMatchObject({ price: "included", cost: 0, note: "" });
  expect(direct([["item", "cost", "taxed"], ["a", "included", "no"], ["b", 5, "no"]])).toMatchObject({ cost: 5, note: "" });
});
