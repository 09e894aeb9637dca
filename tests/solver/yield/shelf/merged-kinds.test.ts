import { cents, checkedPlan } from "../job";

const testTime = 120_000;

/**
 * Pairs of a short and a long piece, no two pieces alike: 30 in and a little with 65 in and a little, 96 in together. A long one is more
 * than half of a 97, so no plan has fewer 97s than pairs; and each holds a pair.
 */
const pairs = (count: number) =>
  Array.from({ length: count }, (_, pair) => 30 + pair / 64).flatMap((short) => [{ length: short }, { length: 96 - short }]);

// By hand: a 97 at 10.00 to a pair; the short ones alone on 49s at 5.20 would come on top of as many 97s.
test.each([130, 400])("%i pairs of pieces that all differ take as many sticks, proven by worths that the checker reckons anew", (count) => {
  const plan = checkedPlan({ pieces: pairs(count), stock: [{ length: 97, cents: 1_000 }, { length: 49, cents: 520 }] });
  expect([cents(plan.cost), cents(plan.bound), plan.verdict]).toEqual([1_000 * count, 1_000 * count, "best possible (proven)"]);
}, testTime);

// By hand: the same in two widths of board, of which the wide ones take all and the narrow ones the narrow pieces only: merged kinds do
// not mix them, or the checker of plans would find a wide piece on a narrow board.
test("kinds that go on different boards are not merged", () => {
  const pieces = pairs(130).map((piece, row) => ({ ...piece, width: row % 4 < 2 ? 5 : 3 }));
  const plan = checkedPlan({ pieces, stock: [{ length: 97, width: 5, cents: 1_000 }, { length: 97, width: 3, cents: 700 }] });
  // 65 pairs of each width: 65 x 10.00 + 65 x 7.00
  expect([cents(plan.cost), cents(plan.bound)]).toEqual([110_500, 110_500]);
}, testTime);
