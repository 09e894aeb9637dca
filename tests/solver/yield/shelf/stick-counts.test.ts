import { leastCounts, type CountLaw } from "../../../../src/solver/yield/shelf/stick-counts";
import { areAllDear } from "../counts-checker";
import { seeded } from "../job";
import { seededShelves } from "./shelves";

/** Every number of sticks there is. */
const everyCounts = (available: readonly number[]): number[][] =>
  available.reduce<number[][]>(
    (all, most) => all.flatMap((counts) => Array.from({ length: most + 1 }, (_, count) => [...counts, count])),
    [[]],
  );

test("300 seeded shelves: the cheapest numbers of sticks are those of all there are, and the checker finds the same", () => {
  const draw = seeded(9_201);
  let found = 0;
  for (const shelf of seededShelves(9_202, 300)) {
    const laws: CountLaw[] = Array.from({ length: 1 + draw(3) }, () => ({
      worth: [], held: shelf.sticks.map(() => draw(20)), needed: 5 + draw(60),
    }));
    const price = shelf.sticks.map((stick) => stick.price);
    const isKept = (counts: readonly number[]): boolean =>
      laws.every(({ held, needed }) => counts.reduce((sum, count, stick) => sum + count * held[stick]!, 0) >= needed);
    const costOf = (counts: readonly number[]): number => counts.reduce((sum, count, stick) => sum + count * price[stick]!, 0);
    const kept = everyCounts(shelf.sticks.map(({ available }) => available)).filter(isKept);
    const least = Math.min(...kept.map(costOf));
    const answer = leastCounts(shelf, { price, below: 1_000, laws, without: [] }, { left: Infinity });
    expect(answer?.sum ?? Infinity).toBe(least);
    const most = shelf.sticks.map(({ available }) => available);
    const checked = laws.map(({ held, needed }) => ({ held, needed: BigInt(needed) }));
    const isDear = (claimed: number): boolean => areAllDear(price.map(BigInt), most, checked, BigInt(claimed));
    expect(isDear(Math.min(least, 1_000))).toBe(true);
    if (answer === undefined) continue;
    found += 1;
    expect([isKept(answer.counts), costOf(answer.counts), isDear(least + 1)]).toEqual([true, least, false]);
    // the next ones where these give no plan: any that are not within them
    const others = kept.filter((counts) => counts.some((count, stick) => count > answer.counts[stick]!));
    const next = leastCounts(shelf, { price, below: 1_000, laws, without: [answer.counts] }, { left: Infinity });
    expect(next?.sum ?? Infinity).toBe(Math.min(...others.map(costOf)));
  }
  // counted, so that the test cannot pass by meeting no shelf that has enough
  expect(found).toBeGreaterThan(100);
});
