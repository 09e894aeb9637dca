import * as fc from "fast-check";
import { cents } from "../../../src/solver/bid/cents";
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
