import * as fc from "fast-check";
import { anyCost, anyTerms } from "./any-bid";
import { bid } from "../../../src/solver/bid/bid";
import { type ChangeRow, type CountedCost, priceChange, type PricedBid } from "../../../src/solver/bid/price-change";
import { termsWith } from "../../../src/solver/bid/terms";
import { Exact } from "../../../src/solver/length/exact";
import { isProblem } from "../../../src/solver/problem";

const anyBid: fc.Arbitrary<PricedBid> = fc.record({
  costs: fc.array(
    fc.tuple(anyCost, fc.option(fc.integer({ min: -20, max: 20 }), { nil: undefined }), fc.constantFrom("ft", "in", "each", "")).map(
      ([cost, quantity, unit]): CountedCost => ({ ...cost, unit, ...(quantity === undefined ? {} : { quantity }) }),
    ),
    { minLength: 1, maxLength: 8 },
  ),
  terms: anyTerms,
  option: fc.constant(""),
});

const changes = (before: PricedBid, after: PricedBid): readonly ChangeRow[] => {
  const rows = priceChange(before, after);
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows;
};

const figure = (label: string, { costs, terms }: PricedBid): Exact => {
  const rows = bid(costs, terms);
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows.find((row) => row.label === label)?.cost ?? new Exact(NaN);
};

const amountOf = (rows: readonly ChangeRow[], cause: string): Exact => rows.find((row) => row.cause === cause)?.amount ?? new Exact(NaN);

/** The rows between the two prices. */
const causesOf = (rows: readonly ChangeRow[]): readonly ChangeRow[] =>
  rows.slice(rows.findIndex(({ cause }) => cause === "price before") + 1, rows.findIndex(({ cause }) => cause === "price after"));

test("causes are cents and sum to the price after less the price before, and the tax to the total", () => {
  fc.assert(
    fc.property(anyBid, anyBid, (before, after) => {
      const rows = changes(before, after);
      const sum = causesOf(rows).reduce((all, { amount }) => all.plus(amount), new Exact(0));
      expect(sum.toNumber()).toBe(figure("price", after).minus(figure("price", before)).toNumber());
      for (const { amount } of rows) expect(amount.times(100).isInteger()).toBe(true);
      expect(amountOf(rows, "price before").eq(figure("price", before))).toBe(true);
      const taxed = amountOf(rows, "price after").plus(amountOf(rows, "tax before")).plus(amountOf(rows, "tax"));
      expect([taxed.toNumber(), amountOf(rows, "total after").toNumber()]).toEqual(Array(2).fill(figure("total", after).toNumber()));
    }),
  );
});

test("a bid against itself changes nothing", () => {
  fc.assert(
    fc.property(anyBid, (one) => {
      const rows = changes(one, one);
      expect(causesOf(rows).map(({ cause }) => cause)).toEqual([
        "tax paid on materials", "burden", "contingency", "overhead", "profit", "rounding",
      ]);
      for (const { amount, note } of [...causesOf(rows), ...rows.filter(({ cause }) => cause === "tax")])
        expect([amount.toNumber(), note]).toEqual([0, ""]);
    }),
  );
});

/** A cause as it reads the other way round. */
const TURNED: Readonly<Record<string, string>> = { new: "dropped", dropped: "new" };

test("the change back is the same with its sign turned", () => {
  const texts = (rows: readonly ChangeRow[], isTurned: boolean): string[] =>
    causesOf(rows)
      .map(({ cause, item, amount }) =>
        isTurned ? [TURNED[cause] ?? cause, item, amount.neg().plus(0)].join(" ") : [cause, item, amount.plus(0)].join(" "))
      .sort();
  fc.assert(
    fc.property(anyBid, anyBid, (before, after) => {
      expect(texts(changes(after, before), true)).toEqual(texts(changes(before, after), false));
    }),
  );
});

test("quantity at the mean of the two prices, price the rest; goods in units that do not convert have one row", () => {
  const one = (quantity: number, unit: string, cost: number): PricedBid => ({
    costs: [{ item: "cove", row: 2, quantity, unit, cost: new Exact(cost) }],
    terms: termsWith({}),
    option: "",
  });
  const short = (rows: readonly ChangeRow[]): unknown[] =>
    causesOf(rows).slice(0, -6).map(({ cause, amount, note }) => [cause, amount.toNumber(), note]);
  // By hand: 10 at 2.00, then 14 at 2.50: 4 x 2.25 = 9.00, of 15.00 6.00 are left, 12 x 0.50.
  expect(short(changes(one(10, "ft", 20), one(14, "ft", 35)))).toEqual([["quantity", 9, "10, now 14 ft"], ["price", 6, "2, now 2.5"]]);
  expect(short(changes(one(10, "ft", 20), one(168, "in", 35)))).toEqual([["quantity", 9, "10, now 14 ft"], ["price", 6, "2, now 2.5"]]);
  expect(short(changes(one(10, "ft", 20), one(3, "each", 35)))).toEqual([["cost", 15, ""]]);
  expect(short(changes(one(10, "ft", 20), one(10, "ft", 25)))).toEqual([["price", 5, "2, now 2.5"]]);
});
