import { type Buyable, coverCost, coverTable, FINE_CELLS, fractionalCoverCost } from "./cover";
import { type Shelf } from "./shelf";
import { type Weighing } from "./weighing";

export const buyable = (shelf: Shelf, weighing: Weighing): Buyable[] =>
  shelf.sticks.map(({ price, available }, index) => ({ price, available, holds: weighing.holds[index]! }));

/** What is still needed of the weighing's worth after free sticks have held all they can. */
export const neededWorth = (shelf: Shelf, { worth, holds }: Weighing): number => {
  const wanted = shelf.kinds.reduce((sum, kind, index) => sum + worth[index]! * kind.wanted, 0);
  const free = shelf.sticks.reduce(
    (sum, stick, index) => (stick.price === 0 ? sum + holds[index]! * stick.available : sum),
    0,
  );
  return Math.max(0, wanted - free);
};

/** The least any plan can cost by this weighing: proven, in whole units of money. Infinity where the stock cannot hold the pieces. */
export const leastCost = (shelf: Shelf, weighing: Weighing, dearest: number): number => {
  const needed = neededWorth(shelf, weighing);
  const kinds = buyable(shelf, weighing);
  const inPart = fractionalCoverCost(kinds, needed);
  if (inPart === Infinity || dearest === Infinity) return inPart;
  const table = coverTable(kinds, dearest, FINE_CELLS);
  if (table === undefined) return inPart;
  // a plan at `dearest` is known, so a table that ends there proves at least that much
  return Math.max(inPart, Math.min(dearest, coverCost(table, needed)));
};
