import * as fc from "fast-check";
import { bid } from "../../../src/solver/bid/bid";
import type { Cost } from "../../../src/solver/bid/cost";
import { priceShares } from "../../../src/solver/bid/price-shares";
import { quote, type QuoteRow } from "../../../src/solver/bid/quote";
import type { Terms } from "../../../src/solver/bid/terms";
import { Exact } from "../../../src/solver/length/exact";
import { isProblem } from "../../../src/solver/problem";
import { anyCosts, anyTerms } from "./any-bid";

const shares = (amount: number | string, ...weights: number[]): number[] =>
  priceShares(new Exact(amount), weights.map((weight) => new Exact(weight))).map((share) => share.plus(0).toNumber());

const quoted = (costs: readonly Cost[], terms: Terms): readonly QuoteRow[] => {
  const rows = quote(costs, terms);
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows;
};

const figureOf = (label: string, costs: readonly Cost[], terms: Terms, option = ""): number => {
  const rows = bid(costs, terms, option);
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows.find((row) => row.label === label)?.cost.plus(0).toNumber() ?? NaN;
};

const sum = (amounts: readonly Exact[]): number => amounts.reduce((all, each) => all.plus(each), new Exact(0)).plus(0).toNumber();

describe("a price over its parts", () => {
  test("the cents left over go to the largest remainders, of equal ones to the earlier", () => {
    // A published case of freight by weight: 3.125, 3.75, 5.625 are 3.13, 3.75, 5.62. By hand: 33.333 each.
    expect(shares(12.5, 50, 60, 90)).toEqual([3.13, 3.75, 5.62]);
    expect(shares(100, 1, 1, 1)).toEqual([33.34, 33.33, 33.33]);
    // Tax of two lines of 45.30 at 5 % and 33.45 at 10 % is 5.61 on the total; rounded line by line it would be 5.62.
    expect(shares("5.61", 2.265, 3.345)).toEqual([2.27, 3.34]);
  });

  test("a part that is a credit has its own share, and a bid of credits is shared as one of charges", () => {
    // By hand: 10 x 3 / 2, 10 x -1 / 2; 25 x 1,070, 266.04, 171.50 / 1,507.54 = 17.744, 4.412, 2.844.
    expect(shares(10, 3, -1)).toEqual([15, -5]);
    expect(shares(-25, -1070, -266.04, -171.5)).toEqual([-17.75, -4.41, -2.84]);
    expect(shares(5, 2, -2)).toEqual([5, 0]);
  });

  test("shares sum to the price, each within cents of exact", () => {
    const weighed = fc.array(fc.integer({ min: -1000, max: 1e5 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(fc.integer({ min: -1e7, max: 1e7 }), weighed, (hundredths, weights) => {
        const amount = new Exact(hundredths).div(100);
        const total = weights.reduce((all, each) => all + each, 0);
        const found = priceShares(amount, weights.map((weight) => new Exact(weight)));
        expect(sum(found)).toBe(amount.plus(0).toNumber());
        if (total === 0) return;
        // A cent of its own, and half a cent of each credit among nine.
        found.forEach((share, place) =>
          expect(share.minus(amount.times(weights[place] ?? 0).div(total)).abs().toNumber()).toBeLessThan(0.055));
      }),
    );
  });
});

describe("a quote", () => {
  test("parts add up to the price and the tax of the bid, and each row to its total", () => {
    fc.assert(
      fc.property(anyCosts, anyTerms, (costs, terms) => {
        const rows = quoted(costs, terms);
        const parts = rows.filter(({ part }) => part !== "total");
        expect(sum(parts.map(({ price }) => price))).toBe(figureOf("price", costs, terms));
        expect(sum(parts.map(({ tax }) => tax))).toBe(figureOf("tax", costs, terms));
        for (const { price, tax, total } of rows) expect(price.plus(tax).eq(total)).toBe(true);
      }),
    );
  });

  test("a part twice as dear is twice the price before cents: parts are linear in the costs", () => {
    const cost = (part: string, amount: number): Cost => ({ item: "oak", row: 1, part, cost: new Exact(amount) });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), anyTerms, (amount, terms) => {
        const [one, two] = quoted([cost("hall", amount), cost("loft", 2 * amount)], terms);
        const off = (two?.price ?? new Exact(NaN)).minus((one?.price ?? new Exact(NaN)).times(2)).abs().toNumber();
        // Each of the two is within a cent of its exact share.
        expect(off).toBeLessThan(0.03);
      }),
    );
  });

  test("an alternate is the bid with it less the bid without it", () => {
    fc.assert(
      fc.property(anyCosts, anyCosts, anyTerms, (costs, own, terms) => {
        const all = [...costs, ...own.map((each) => ({ ...each, option: "oak" }))];
        const row = quoted(all, terms).at(-1);
        expect([row?.option, row?.total.toNumber()]).toEqual([
          "oak", new Exact(figureOf("total", all, terms, "oak")).minus(figureOf("total", all, terms)).toNumber(),
        ]);
      }),
    );
  });
});
