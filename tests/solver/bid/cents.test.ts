import * as fc from "fast-check";
import { cents, shareInCents } from "../../../src/solver/bid/cents";
import { Exact } from "../../../src/solver/length/exact";

// by hand: half a cent goes away from zero, anything less to the nearer cent
test.each([
  ["95.485", "95.49"],
  ["-95.485", "-95.49"],
  ["1.005", "1.01"],
  ["1.00499999999999999999", "1"],
  ["0.004", "0"],
  ["676", "676"],
])("%s is printed as %s", (amount, printed) => {
  expect(cents(new Exact(amount)).toString()).toBe(new Exact(printed).toString());
});

test("credits round like charges, and never by more than half a cent", () => {
  fc.assert(
    fc.property(fc.integer({ min: -1e9, max: 1e9 }), (tenThousandths) => {
      const amount = new Exact(tenThousandths).div(10000);
      expect(cents(amount.neg()).eq(cents(amount).neg())).toBe(true);
      expect(cents(amount).minus(amount).abs().lte("0.005")).toBe(true);
      expect(cents(amount).times(100).isInteger()).toBe(true);
    }),
  );
});

// by hand: 66.67 / 2 = 33.335; 100 / 3 = 33.333...; 2 / 3 of 1.00 = 0.6667; 0.05 / 10 is half a cent
test.each([
  ["66.67", "1", "2", "33.34"],
  ["-66.67", "1", "2", "-33.34"],
  ["100", "1", "3", "33.33"],
  ["1", "2", "3", "0.67"],
  ["0.05", "1", "10", "0.01"],
  ["0.05", "0.9999999999999999999999", "10", "0"],
  ["0", "1", "3", "0"],
])("%s for %s of %s is %s", (amount, part, whole, printed) => {
  expect(shareInCents(new Exact(amount), new Exact(part), new Exact(whole)).toString()).toBe(printed);
});
