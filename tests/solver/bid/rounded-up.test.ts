import { Exact } from "../../../src/solver/length/exact";
import { roundedUp } from "../../../src/solver/bid/rounded-up";

// By hand: the next whole multiple, and 0 without a sign.
test.each([[12.01, 5, 15], [15, 5, 15], [-12.01, 5, -10], [0, 5, 0], [7.25, 0, 7.25]])("%d up to %d is %d", (amount, to, up) => {
  expect(roundedUp(new Exact(amount), new Exact(to)).toNumber()).toBe(up);
});

test("a cent below nothing comes up to 0, not to a 0 below nothing", () => {
  const rounded = roundedUp(new Exact(-0.01), new Exact(1));
  expect([Object.is(rounded.toNumber(), 0), rounded.toFixed(2)]).toEqual([true, "0.00"]);
});
