import { labourHours } from "../../../src/solver/bid/labour-hours";
import type { CountedCost } from "../../../src/solver/bid/price-change";
import { Exact } from "../../../src/solver/length/exact";

const row = (item: string, cost: number | undefined, further: Partial<CountedCost>): CountedCost => ({
  item, row: 2, ...(cost === undefined ? {} : { cost: new Exact(cost) }), ...further,
});

test("hours are of labour alone, in any unit of time, and labour that costs something without them is named", () => {
  const { hours, counted, uncounted } = labourHours([
    row("fitting", 100, { quantity: 2, unit: "hours" }),
    row("sanding", 25, { quantity: 30, unit: "min", kind: "labour" }),
    row("less fitting", -50, { quantity: -1, unit: "h" }),
    row("oak", 300, { quantity: 6, unit: "each" }),
    row("finisher", 80, { quantity: 4, unit: "hour", kind: "subcontract" }),
    row("labour", 40, { quantity: 3, unit: "each" }),
    row("hanging", 60, { kind: "labour" }),
    row("sweeping", undefined, { kind: "labour" }),
    row("cleaning", 0, { kind: "labour" }),
  ]);
  // By hand: 2 + 1/2 - 1.
  expect([hours.toNumber(), counted]).toEqual([1.5, 3]);
  expect(uncounted.map(({ item }) => item)).toEqual(["labour", "hanging"]);
});
