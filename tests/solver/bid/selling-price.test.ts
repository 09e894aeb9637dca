import * as fc from "fast-check";
import { SELLINGPRICE } from "../../../src/functions/bid/sellingprice";
import { call } from "../../../src/functions/call";
import { cents } from "../../../src/solver/bid/cents";
import { type Basis, sellingPrice } from "../../../src/solver/bid/selling-price";
import { Exact } from "../../../src/solver/length/exact";
import { isProblem } from "../../../src/solver/problem";

const price = (cost: Exact | number, rate: Exact | number | string, basis: Basis): Exact => {
  const found = sellingPrice(new Exact(cost), new Exact(rate), basis);
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

const PREALGEBRA =
  "OpenStax Prealgebra 2e, Solve Sales Tax, Commission, and Discount Applications (openstax/osbooks-prealgebra-bundle m81307)";
const PREALGEBRA_TEST = "OpenStax Prealgebra 2e, ch. 6 practice test (openstax/osbooks-prealgebra-bundle m81311)";
const INTERMEDIATE = "OpenStax Intermediate Algebra 2e, Use a Problem Solving Strategy (openstax/osbooks-prealgebra-bundle m81363)";
const TOOLBOX = "Markup and gross profit, engineering handbook page";
const TRANSFER =
  "OpenStax, Principles of Accounting, Volume 2, transfer pricing, cost-plus (openstax/osbooks-principles-accounting-bundle m68079)";

test.each([
  [PREALGEBRA, 250, 0.4, 350],
  [PREALGEBRA, 1200, 0.5, 1800],
  [PREALGEBRA, 16, 0.45, 23.2],
  [PREALGEBRA_TEST, 20, 2.5, 70],
  [INTERMEDIATE, 750, 0.4, 1050],
  [INTERMEDIATE, 8500, 0.35, 11475],
  [TOOLBOX, 200000, 0.25, 250000],
  [`${TRANSFER}, on variable cost`, 10, 0.3, 13],
  [`${TRANSFER}, on full cost`, 12, 0.3, 15.6],
])("%s: cost %d marked up %d sells at %d", (_source, cost, markup, printed) => {
  expect(price(cost, markup, "markup").toNumber()).toBe(printed);
});

test.each([
  ["University retail pricing worksheet (York Univ. ADMS 2200)", 15, 0.25, 20],
  [TOOLBOX, 200000, 0.2, 250000],
  [`${TOOLBOX}, two overheads of 10 % of the price`, 200000, 0.2, 250000],
  ["Overhead and profit, using the figures wrong, printed without cents as 1724; by hand 1,000 / 0.58 = 1,724.1379", 1000, 0.42, 1724.14],
])("%s: cost %d at a margin of %d sells at %d", (_source, cost, margin, printed) => {
  expect(cents(price(cost, margin, "margin")).toNumber()).toBe(printed);
});

test(
  "OpenStax Principles of Accounting, Volume 1, multi-step income statement (m67866): sales 293,500 on goods that cost 180,000 are " +
    "a margin of 39 %",
  () => {
    const margin = new Exact(293500 - 180000).div(293500);
    expect(cents(price(180000, margin, "margin")).toNumber()).toBe(293500);
    expect(margin.times(100).toFixed(0)).toBe("39");
  },
);

// Remodeling magazine, Managing Markups.
test.each([
  [0.5, "33"] as const,
  [0.67, "40"] as const,
])("a markup of %d leaves a gross profit of %s %% of the price", (markup, printed) => {
  const sold = price(1000, markup, "markup");
  const margin = sold.minus(1000).div(sold);
  expect(margin.times(100).toFixed(0)).toBe(printed);
  expect(cents(price(1000, margin, "margin")).eq(cents(sold))).toBe(true);
});

/** Digits the exact arithmetic carries, less a few for the roundings of a division. */
const CLOSE = new Exact("1e-50");

const amounts = fc.integer({ min: 1, max: 1e9 }).map((hundredths) => new Exact(hundredths).div(100));
const rates = fc.integer({ min: 0, max: 1000 }).map((thousandths) => new Exact(thousandths).div(1000));

test("a markup of m and a margin of m / (1 + m) ask the same price", () => {
  fc.assert(
    fc.property(amounts, rates, (cost, markup) => {
      const byMarkup = price(cost, markup, "markup");
      const byMargin = price(cost, markup.div(markup.plus(1)), "margin");
      expect(byMargin.minus(byMarkup).abs().div(byMarkup).lt(CLOSE)).toBe(true);
    }),
  );
});

test("a rate taken as a margin never asks less than the same rate taken as a markup", () => {
  fc.assert(
    fc.property(amounts, rates.filter((rate) => rate.lt(1)), (cost, rate) => {
      expect(price(cost, rate, "margin").gte(price(cost, rate, "markup"))).toBe(true);
    }),
  );
});

test("a margin of everything has no price", () => {
  expect(sellingPrice(new Exact(15), new Exact(1), "margin")).toEqual({ problem: "margin-of-all", details: { percent: 100 } });
});

describe("in a sheet", () => {
  test("a column of costs is priced cell by cell, a bad one in its own place", () => {
    // by hand: 10.01 x 1.5 = 15.015, half a cent away from zero; the credit alike
    expect(call(SELLINGPRICE, [[[10.01], [-10.01], ["ten"]], 0.5])).toEqual([
      [15.02], [-15.02], [{ failed: "#VALUE!", says: 'cost: must be an amount of money, got "ten"' }],
    ]);
  });

  test.each([
    [[15, 25], "rate: 25 is 2500 %, write 25% or 0.25"],
    // A hundredth of each is no rate there: what it would advise is refused, too.
    [[15, 1_000_000], "rate: must be a rate such as 25% or 0.25, got 1000000"],
    [[15, 501], "rate: must be a rate such as 25% or 0.25, got 501"],
    [[15, 500], "rate: 500 is 50000 %, write 500% or 5"],
    [[15, 1, "margin"], "rate: a margin of 100 % leaves no cost; write less than 100 %"],
    [[15, -0.1], "rate: must be 0 or more, got -0.1"],
    [[15, 0.1, "margins"], 'basis: "margins" is not known; nearest is "margin"; write markup or margin'],
    [[15], "rate: is missing; give markup or margin as a share: 25% or 0.25; a markup of 250 % is 250% or 2.5"],
  ])("%j is refused in words", (cells, says) => {
    expect(call(SELLINGPRICE, cells)).toEqual({ failed: "#VALUE!", says });
  });

  test("a markup of exactly 100 % doubles the cost", () => {
    expect(call(SELLINGPRICE, [15, "100%"])).toBe(30);
  });
});
