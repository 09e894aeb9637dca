import { seeded } from "../job";
import { TINY_COUNT } from "../tiny-count";
import { everySheetPlan } from "./every-sheet-plan";
import { checkedSheets, leastCents, type PlainSheetJob } from "./job";

/** Up to six pieces and three rows of sheets in whole inches. */
const tinyJobs = (seed: number, count: number): PlainSheetJob[] => {
  const draw = seeded(seed);
  return Array.from({ length: count }, () => {
    const some = (most: number) => ({ length: 2 + draw(7), width: 1 + draw(5), quantity: 1 + draw(most), free: draw(3) === 0 });
    const sheet = () => {
      const owned = draw(5) === 0;
      return {
        length: 6 + draw(8), width: 4 + draw(6), cents: owned ? 0 : 10 + draw(40), owned,
        available: owned || draw(2) === 0 ? 1 + draw(3) : Infinity,
      };
    };
    return {
      pieces: [some(3), some(2), some(1)].slice(0, 2 + draw(2)),
      stock: Array.from({ length: 1 + draw(3) }, sheet),
      kerf: draw(2), trim: draw(4) === 0 ? 1 : 0, first: (["either", "rip", "crosscut"] as const)[draw(3)]!,
    };
  });
};

test(`${TINY_COUNT} tiny seeded jobs of sheets: the solver and every plan there is come to one least cost, proven`, () => {
  let solvable = 0;
  for (const [number, plain] of tinyJobs(52_001, TINY_COUNT).entries()) {
    const least = everySheetPlan(plain);
    if (least < Infinity) solvable += 1;
    expect({ number, plain, cents: leastCents(plain) }).toEqual({ number, plain, cents: least });
  }
  expect(solvable).toBeGreaterThan(TINY_COUNT / 3);
}, 300_000);

test("T6", () => {
  const stock = [
    { label: "4 x 8", length: 96, width: 48, cents: 6200, available: 3 },
    { label: "5 x 5", length: 60, width: 60, cents: 5200, available: 3 },
  ];
  const plan = checkedSheets({
    pieces: [{ length: 36, width: 15.5, quantity: 4 }, { length: 20, width: 23.75, quantity: 4 }, { length: 19, width: 7.5, quantity: 3 }],
    stock, kerf: 0.125, first: "rip",
  });
  expect(plan.cost.toNumber()).toBe(104);
});
