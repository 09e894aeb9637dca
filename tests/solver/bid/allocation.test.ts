import fc from "fast-check";
import { allocation } from "../../../src/solver/bid/allocation";
import { exact } from "../../../src/solver/length/exact";

const shared = (amount: number, ...weights: readonly number[]): readonly number[] =>
  allocation(exact(amount), weights.map(exact)).map((share) => share.toNumber());

/** [where from, amount, weights, shares]; by hand: rounded down to the cent, the cents left over to the largest remainders. */
const CASES: readonly (readonly [string, number, readonly number[], readonly number[]])[] = [
  [
    "an enterprise software manual, Allocating Freight Costs by Item for Inbound Transactions (the page goes on with 3.74 for the " +
      "second, where its table has 3.75): 3.125, 3.75, 5.625, two remainders of half a cent, the earlier gets it",
    12.5, [50, 60, 90], [3.13, 3.75, 5.62],
  ],
  ["by hand: 85 / 1,507.54 x 1,070 = 60.3301, 266.04: 15.0002, 171.50: 9.6697", 85, [1070, 266.04, 171.5], [60.33, 15, 9.67]],
  ["by hand: 97.99 / 1,507.54 x 1,070 = 69.5501, 17.2925, 11.1474", 97.99, [1070, 266.04, 171.5], [69.55, 17.29, 11.15]],
  ["by hand: 17.7441, 4.4118, 2.8440, and its mirror", -25, [1070, 266.04, 171.5], [-17.75, -4.41, -2.84]],
  ["by hand: 5 cents by three are 1 2/3 each, two get the cents", 0.05, [1, 1, 1], [0.02, 0.02, 0.01]],
  ["by hand: a cent left over goes to the first of equals", 100, [1, 1, 1], [33.34, 33.33, 33.33]],
  ["by hand: 750 / 7,250 = 0.1034483: 103.4483, 232.7586, 413.7931", 750, [1000, 2250, 4000], [103.45, 232.76, 413.79]],
  [
    "invoicing interface reference, Calculations and rounding: tax of 45.30 at 5 % and 33.45 at 10 %; 2.265 + 3.345 = 5.61 on the total, " +
      "where the source rounds each line and has 5.62; 5.61 by 2.265 and 3.345",
    5.61, [2.265, 3.345], [2.27, 3.34],
  ],
  ["by hand: what weighs nothing gets nothing", 1, [0, 3, 0], [0, 1, 0]],
];

test.each(CASES)("%s", (_, amount, weights, shares) => {
  expect(shared(amount, ...weights)).toEqual(shares);
});

const weights = fc
  .array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 1, maxLength: 30 })
  .filter((all) => all.some((weight) => weight > 0))
  .map((all) => all.map((weight) => weight / 100));
const amounts = fc.integer({ min: -10_000_000, max: 10_000_000 }).map((cents) => cents / 100);

test("shares add up to the amount, each within a cent of the exact one, and mirror for a negative amount", () => {
  fc.assert(
    fc.property(amounts, weights, (amount, all) => {
      const shares = shared(amount, ...all);
      const inCents = shares.map((share) => Math.round(share * 100));
      expect(inCents.reduce((sum, share) => sum + share, 0)).toBe(Math.round(amount * 100));
      const total = all.reduce((sum, weight) => sum + Math.round(weight * 100), 0);
      shares.forEach((share, place) => {
        expect(Math.abs(share * 100 - (amount * 100 * Math.round(all[place]! * 100)) / total)).toBeLessThan(1 + 1e-6);
      });
      expect(shared(-amount, ...all)).toEqual(shares.map((share) => 0 - share));
    }),
    { seed: 20260331, numRuns: 500 },
  );
});
