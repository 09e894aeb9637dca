import * as fc from "fast-check";
import { BID } from "../../../src/functions/bid/bid";
import { EXTEND } from "../../../src/functions/bid/extend";
import { call } from "../../../src/functions/call";
import { bid, type Cost, type Terms } from "../../../src/solver/bid/bid";
import { Exact } from "../../../src/solver/length/exact";
import { isProblem } from "../../../src/solver/problem";

const NOTHING: Terms = { overhead: new Exact(0), profit: new Exact(0), basis: "markup", tax: new Exact(0), taxBasis: "price" };

const cost = (amount: number | string | Exact, taxed = true): Cost => ({ item: "goods", row: 1, cost: new Exact(amount), taxed });

const figures = (costs: readonly Cost[], terms: Partial<Terms>): Record<string, number> => {
  const rows = bid(costs, { ...NOTHING, ...terms });
  if (isProblem(rows)) throw new Error(rows.problem);
  return Object.fromEntries(rows.map((row) => [row.label, row.cost.toNumber()]));
};

const share = (rate: number): Exact => new Exact(rate);

// I. P. Hicks, The Builders' Guide, Estimating Labor for Carpentry Work.
test("bid 900 with labor 750 is a profit of 150; bid 800 with labor 600 is a profit of 200", () => {
  // 150 is a fifth of 750; 200 is a fourth of the price of 800
  expect(figures([cost(750)], { profit: share(0.2) })).toMatchObject({ profit: 150, price: 900, total: 900 });
  expect(figures([cost(600)], { profit: share(0.25), basis: "margin" })).toMatchObject({ profit: 200, price: 800, total: 800 });
});

test("Markup and Gross Profit: 20 % of the price on 200,000 is a price of 250,000", () => {
  expect(figures([cost(200000)], { profit: share(0.2), basis: "margin" })).toMatchObject({ profit: 50000, price: 250000 });
});

test("change order clause: overhead 10 % and profit 5 % compound, because profit is on both", () => {
  // the clause leaves it open; by hand: 1,000 + 100 = 1,100, 5 % is 55
  expect(figures([cost(1000)], { overhead: share(0.1), profit: share(0.05) })).toMatchObject({ overhead: 100, profit: 55, price: 1155 });
});

test("rates are shares of cost by markup, and only profit is a share of the price by margin", () => {
  // by hand: 1,000 x 1.32 = 1,320, x 1.1 = 1,452; 1,320 / 0.9 = 1,466.67; 1,000 x 1.12 x 1.1 = 1,232
  expect(figures([cost(1000)], { overhead: share(0.32), profit: share(0.1) }).price).toBe(1452);
  expect(figures([cost(1000)], { overhead: share(0.32), profit: share(0.1), basis: "margin" })).toMatchObject({
    profit: 146.67,
    price: 1466.67,
  });
  expect(figures([cost(1000)], { overhead: share(0.12), profit: share(0.1) }).price).toBe(1232);
});

// Marion County (Oregon) change order letter: 15 % on labor, 10 % on materials
test("classes of cost with rates of their own are bids of their own, and add up", () => {
  // by hand: 400 x 1.15 = 460, 600 x 1.1 = 660
  expect(figures([cost(400)], { overhead: share(0.15) }).total).toBe(460);
  expect(figures([cost(600)], { overhead: share(0.1) }).total).toBe(660);
});

test("tax falls on the price, or on the cost of the taxed rows alone", () => {
  const costs = [cost(600), cost(450, false), cost(-50)];
  const terms = { overhead: share(0.1), profit: share(0.2), tax: share(0.07) };
  // by hand: 1,000, 100, 220; 7 % of 1,320 = 92.40; taxed 600 - 50 = 550, 7 % = 38.50
  expect(figures(costs, terms)).toEqual({ direct: 1000, overhead: 100, profit: 220, price: 1320, tax: 92.4, total: 1412.4 });
  expect(figures(costs, { ...terms, taxBasis: "items" })).toEqual({
    direct: 1000,
    overhead: 100,
    profit: 220,
    price: 1320,
    tax: 38.5,
    total: 1358.5,
  });
});

test("several profit rates stand side by side by calling again, markup m beside margin m / (1 + m)", () => {
  // By hand: 1,000 and 10 % overhead are 1,100; a tenth, a fifth and a fourth of it on top.
  expect([0.1, 0.2, 0.25].map((rate) => figures([cost(1000)], { overhead: share(0.1), profit: share(rate) }).price)).toEqual([
    1210, 1320, 1375,
  ]);
  expect(
    [share(0.1).div("1.1"), share(0.2).div("1.2"), share(0.2)].map(
      (rate) => figures([cost(1000)], { overhead: share(0.1), profit: rate, basis: "margin" }).price,
    ),
  ).toEqual([1210, 1320, 1375]);
});

const amounts = fc.integer({ min: -1e7, max: 1e7 }).map((hundredths) => new Exact(hundredths).div(100));
const rates = fc.integer({ min: 0, max: 400 }).map((thousandths) => new Exact(thousandths).div(1000));
const terms = fc.record({
  overhead: rates, profit: rates, tax: rates,
  basis: fc.constantFrom("markup" as const, "margin" as const), taxBasis: fc.constantFrom("price" as const, "items" as const),
});
const costs = fc.array(fc.record({ item: fc.constant("goods"), row: fc.constant(1), cost: amounts, taxed: fc.boolean() }), {
  minLength: 1,
  maxLength: 8,
});

test("printed totals add printed rows, to the cent", () => {
  fc.assert(
    fc.property(costs, terms, (rows, given) => {
      const found = figures(rows, given);
      const add = (...labels: string[]): number => labels.reduce((sum, label) => sum.plus(found[label] ?? NaN), new Exact(0)).toNumber();
      expect(add("direct", "overhead", "profit")).toBe(found["price"]);
      expect(add("price", "tax")).toBe(found["total"]);
      for (const figure of Object.values(found)) expect(new Exact(figure).times(100).isInteger()).toBe(true);
    }),
  );
});

test("a row is in cents before it is added: one of three at 38.005 is 114.02, three of one are 114.03", () => {
  // By hand: 114.015 and 38.005, half a cent away from zero.
  expect(figures([cost("114.015")], {})).toMatchObject({ direct: 114.02, total: 114.02 });
  expect(figures([cost("38.005"), cost("38.005"), cost("38.005")], {})).toMatchObject({ direct: 114.03, total: 114.03 });
  // Tax on the rows as they are added: 10 % of 114.03 is 11.403.
  expect(figures([cost("38.005"), cost("38.005"), cost("38.005")], { tax: share(0.1), taxBasis: "items" })).toMatchObject({
    tax: 11.4,
    total: 125.43,
  });
});

test("a cost split over two rows changes nothing, whatever the cents", () => {
  fc.assert(
    fc.property(costs, terms, fc.integer({ min: -1e5, max: 1e5 }), (rows, given, hundredths) => {
      const [first, ...rest] = rows;
      if (first === undefined) return;
      const part = new Exact(hundredths).div(100);
      const split = [{ ...first, cost: part }, ...rest, { ...first, cost: first.cost.minus(part) }];
      expect(figures(split, given)).toEqual(figures(rows, given));
    }),
  );
});

test("credits round like charges: a bid of credits is the bid of the charges with its sign turned", () => {
  fc.assert(
    fc.property(costs, terms, (rows, given) => {
      const charges = figures(rows, given);
      const credits = figures(rows.map((row) => ({ ...row, cost: row.cost.neg() })), given);
      for (const [label, figure] of Object.entries(charges)) expect(credits[label]).toBeCloseTo(-figure, 9);
    }),
  );
});

test("profit by a margin of m / (1 + m) is profit by a markup of m", () => {
  fc.assert(
    fc.property(costs, rates, rates, (rows, overhead, markup) => {
      const byMargin = figures(rows, { overhead, profit: markup.div(markup.plus(1)), basis: "margin" });
      const byMarkup = figures(rows, { overhead, profit: markup });
      // m / (1 + m) is rounded in its 60th digit, so a price that falls on half a cent may go either way
      expect(Math.abs((byMargin["price"] ?? NaN) - (byMarkup["price"] ?? NaN))).toBeLessThan(0.0101);
    }),
  );
});

describe("in a sheet", () => {
  test("extended quantities go into a bid as they stand", () => {
    const quantities = [["item", "quantity", "unit"], ["blank", 13, "each"], ["cove", 6, "each"]];
    const prices = [["item", "price", "unit"], ["blank", 52, "each"], ["cove", 6.6, "each"]];
    // by hand: 13 x 52 = 676, 6 x 6.60 = 39.60, together 715.60; 10 % is 71.56
    expect(call(BID, [call(EXTEND, [quantities, prices]), 0.1])).toEqual([
      ["label", "cost", "note"],
      ["direct", 715.6, ""],
      ["overhead", 71.56, ""],
      ["profit", 0, ""],
      ["price", 787.16, ""],
      ["tax", 0, ""],
      ["total", 787.16, ""],
    ]);
  });

  test("a cost that is 0 or empty is named beside the direct cost", () => {
    const note = (...costs: unknown[]): unknown =>
      (call(BID, [[["item", "cost"], ...costs.map((each, index) => [`good ${index + 1}`, each])]]) as unknown[][])[1]?.[2];
    expect(note(5, null, 7)).toBe("cost is 0 or empty in row 3 (good 2)");
    expect(note("", 0, 10, 0)).toBe("cost is 0 or empty in row 2 (good 1) and 2 more");
    expect(note(5, -5)).toBe("");
  });

  test("an item without a price stops the bid and is named", () => {
    const extended = call(EXTEND, [[["item", "quantity"], ["blank", 13], ["cove", 6]], [["blank", 52], ["riser", 9]]]);
    expect(call(BID, [extended])).toEqual({
      failed: "#N/A",
      says: "cost in row 3 (cove): the cell given holds #N/A; put that cell right first",
    });
  });

  test("rows without a word about tax are taxed, and headings can be left out", () => {
    // by hand: 100 + 50 - 25 = 125; taxed 75, 8 % is 6
    const rows = [["item", "cost", "taxed"], ["wood", 100, ""], ["labour", 50, "no"], ["credit", -25, null]];
    expect(call(BID, [rows, 0, 0, "markup", 0.08, "items", false])).toEqual([
      ["direct", 125, ""], ["overhead", 0, ""], ["profit", 0, ""], ["price", 125, ""], ["tax", 6, ""], ["total", 131, ""],
    ]);
  });

  test.each([
    [
      [
        [
          ["item", "cost"],
          ["wood", 100],
        ],
        10,
      ],
      "overhead: 10 is 1000 %, write 10% or 0.1",
    ],
    [
      [
        [
          ["item", "cost"],
          ["wood", 100],
        ],
        0,
        1,
        "margin",
      ],
      "profit: a margin of 100 % leaves no cost; write less than 100 %",
    ],
    [
      [
        [
          ["item", "cost"],
          ["wood", 100],
        ],
        0,
        0,
        "markup",
        8.25,
      ],
      "tax: 8.25 is 825 %, write 8.25% or 0.0825",
    ],
    [
      [
        [
          ["item", "cost"],
          ["wood", 100],
        ],
        0,
        0,
        "markup",
        0.08,
        "itms",
      ],
      'taxBasis: "itms" is not known; nearest is "items"; write price or items',
    ],
    [
      [
        [
          ["item", "costt"],
          ["wood", 100],
        ],
      ],
      'costs: heading "costt" is not known; did you mean "cost"?',
    ],
    [
      [
        [
          ["item", "cost", "taxed"],
          ["wood", 100, "maybe"],
        ],
      ],
      'taxed in row 2 (wood): must be yes or no, got "maybe"',
    ],
  ])("%j is refused in words", (cells, says) => {
    expect(call(BID, cells)).toEqual({ failed: "#VALUE!", says });
  });
});
