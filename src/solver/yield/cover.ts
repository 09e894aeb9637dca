/**
 * The least outlay that buys enough. A stick kind costs `price`, holds `holds`, and there are `available` of them. Kinds with price 0
 * are taken off first by the caller: what they hold at most is no longer needed.
 */
export interface Buyable {
  readonly price: number;
  readonly holds: number;
  readonly available: number;
}

export interface CoverTable {
  readonly unit: number;
  /** The most that can be held for each whole number of units of money. */
  readonly most: Float64Array;
}

/** Cells of a table whose answers are shown or searched with for long. */
export const FINE_CELLS = 250_000;

/**
 * The most that any purchase within `budget` holds, by cost in at most `mostCells` units of money. A unit of more than 1 rounds prices
 * down, which keeps every answer a proven least. Nothing where prices are too far apart for a table.
 */
export const coverTable = (kinds: readonly Buyable[], budget: number, mostCells: number): CoverTable | undefined => {
  const priced = kinds.filter((kind) => kind.price > 0 && kind.holds > 0 && kind.available > 0);
  const unit = Math.max(1, Math.ceil((budget + 1) / mostCells));
  if (priced.some((kind) => kind.price < unit)) return undefined;
  const cells = Math.floor(budget / unit) + 1;
  const most = new Float64Array(cells);
  for (const { price, holds, available } of priced) {
    const cost = Math.floor(price / unit);
    let rest = Math.min(available, Math.floor(cells / cost));
    if (rest === Math.floor(cells / cost)) {
      for (let at = cost; at < cells; at += 1) {
        const held = most[at - cost]! + holds;
        if (held > most[at]!) most[at] = held;
      }
      continue;
    }
    // so many single sticks in bundles of 1, 2, 4, ...: every number up to `available` is a sum of some of them
    for (let bundle = 1; rest > 0; bundle *= 2) {
      const count = Math.min(bundle, rest);
      rest -= count;
      for (let at = cells - 1; at >= cost * count; at -= 1) {
        const held = most[at - cost * count]! + holds * count;
        if (held > most[at]!) most[at] = held;
      }
    }
  }
  return { unit, most };
};

/** The least cost that buys `needed`; Infinity beyond the table's budget. */
export const coverCost = (table: CoverTable, needed: number): number => {
  if (needed <= 0) return 0;
  let low = 0;
  let high = table.most.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (table.most[middle]! >= needed) high = middle;
    else low = middle + 1;
  }
  return low === table.most.length ? Infinity : low * table.unit;
};

/** The most that a purchase of at most `cost` holds. */
export const coverMost = (table: CoverTable, cost: number): number =>
  table.most[Math.min(table.most.length - 1, Math.floor(cost / table.unit))] ?? 0;

/**
 * The least cost of `needed` if sticks could be bought in part, rounded up to a whole unit of money; Infinity where all there is holds
 * less. In whole numbers throughout, so that no rounding can lift it above the truth.
 */
export const fractionalCoverCost = (kinds: readonly Buyable[], needed: number): number => {
  const priced = kinds
    .filter((kind) => kind.price > 0 && kind.holds > 0 && kind.available > 0)
    .map((kind) => ({ price: BigInt(kind.price), holds: BigInt(kind.holds), available: kind.available }))
    .sort((a, b) => {
      const one = a.price * b.holds;
      const other = b.price * a.holds;
      return Number(one > other) - Number(one < other);
    });
  let rest = BigInt(Math.max(0, needed));
  let cost = 0n;
  for (const { price, holds, available } of priced) {
    if (rest === 0n) break;
    const all = available === Infinity ? rest : holds * BigInt(available);
    if (all <= rest && available !== Infinity) {
      rest -= all;
      cost += price * BigInt(available);
      continue;
    }
    cost += (rest * price + holds - 1n) / holds;
    rest = 0n;
  }
  return rest > 0n ? Infinity : Number(cost);
};
