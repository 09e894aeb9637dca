import { coverCost, coverMost, type CoverTable, coverTable } from "./cover";
import { buyable } from "./least-cost";
import { type Cut, isBetter, type Outlay, outlay, piecesWanted, type Shelf } from "./shelf";
import { type Weighing } from "./weighing";

export interface Search {
  readonly best: readonly Cut[] | undefined;
  /** Every plan was looked at or proven no better, within the budget. */
  readonly closed: boolean;
  readonly work: number;
}

/** What a search may spend: steps, and the cells of its tables. */
export interface Effort {
  readonly steps: number;
  readonly cells: number;
}

/** States remembered, so that memory stays bounded on any job. */
const MOST_REMEMBERED = 100_000;

interface Measured {
  readonly worth: readonly number[];
  readonly holds: readonly number[];
  readonly free: readonly number[];
  readonly table: CoverTable | undefined;
}

/** The stick kinds in the order tried: by price for what they hold, free ones first. */
const triedOrder = (shelf: Shelf, holds: readonly number[]): number[] =>
  shelf.sticks
    .map((_, index) => index)
    .filter((index) => holds[index]! > 0)
    .sort((a, b) => {
      const one = shelf.sticks[a]!;
      const other = shelf.sticks[b]!;
      return one.price * holds[b]! - other.price * holds[a]! || other.holds - one.holds || a - b;
    });

/**
 * Exact depth-first search, stick by stick. The next stick always takes the longest piece left and is full: no further piece left
 * fits. That loses no best plan, as pieces can be moved up from later sticks. Branches end where weighings prove that nothing better
 * is left in them. Counted in steps, never in time. With `ties` plans of equal cash are compared by new length and number of sticks.
 */
export const searched = (
  shelf: Shelf,
  scales: readonly Weighing[],
  start: readonly Cut[] | undefined,
  effort: Effort,
  ties: boolean,
): Search => {
  const { kinds, sticks } = shelf;
  const pieces = piecesWanted(shelf);
  const dearest = (cost: (stick: number) => number): number =>
    sticks.reduce((sum, stick, index) => sum + cost(index) * Math.min(stick.available, pieces), 0);
  let best = start;
  let bestOutlay = start === undefined ? undefined : outlay(shelf, start);
  const mostCash = bestOutlay?.cash ?? dearest((stick) => sticks[stick]!.price);

  const measured: Measured[] = scales.map((scale) => ({
    worth: scale.worth,
    holds: scale.holds,
    free: sticks.flatMap((stick, index) => (stick.price === 0 ? [index] : [])),
    table: coverTable(buyable(shelf, scale), mostCash, effort.cells),
  }));
  const byWidth = measured[0]!;
  const newLengths: Measured = {
    ...byWidth,
    free: sticks.flatMap((stick, index) => (stick.newLength === 0 ? [index] : [])),
    table: ties
      ? coverTable(
          sticks.map(({ newLength, available }, index) => ({ price: newLength, available, holds: byWidth.holds[index]! })),
          bestOutlay?.newLength ?? 0,
          effort.cells,
        )
      : undefined,
  };
  const mostHeld = Math.max(...byWidth.holds);
  const order = triedOrder(shelf, byWidth.holds);
  const limited = sticks.flatMap((stick, index) => (stick.available < pieces ? [index] : []));

  const left = kinds.map((kind) => kind.wanted);
  const available = sticks.map((stick) => stick.available);
  const needed = measured.map(({ worth }) => left.reduce((sum, count, kind) => sum + count * worth[kind]!, 0));
  const chosen: Cut[] = [];
  const remembered = new Map<string, Outlay>();
  let work = 0;
  let spent = false;

  const freeRoom = ({ free, holds }: Measured): number => {
    let room = 0;
    for (const index of free) room += available[index]! * holds[index]!;
    return room;
  };

  const cashStillNeeded = (): number => {
    let most = 0;
    for (const [index, each] of measured.entries()) {
      if (each.table === undefined) continue;
      most = Math.max(most, coverCost(each.table, needed[index]! - freeRoom(each)));
    }
    return most;
  };

  const isHopeless = (cash: number, newLength: number): boolean => {
    const leastCash = cash + cashStillNeeded();
    if (bestOutlay === undefined) return leastCash === Infinity;
    if (leastCash !== bestOutlay.cash) return leastCash > bestOutlay.cash;
    if (!ties) return true;
    const table = newLengths.table;
    const leastNew = newLength + (table === undefined ? 0 : coverCost(table, needed[0]! - freeRoom(newLengths)));
    const leastSticks = chosen.length + Math.ceil(needed[0]! / mostHeld);
    return !isBetter({ cash: leastCash, newLength: leastNew, sticks: leastSticks }, bestOutlay);
  };

  /** True where this state was reached before at no greater outlay. */
  const isKnown = (cash: number, newLength: number): boolean => {
    let key = "";
    for (const count of left) key += String.fromCharCode(count);
    for (const stick of limited) key += String.fromCharCode(available[stick]!);
    const known = remembered.get(key);
    const now = { cash, newLength, sticks: chosen.length };
    if (known !== undefined && (known.cash < cash || (known.cash === cash && (!ties || !isBetter(now, known))))) return true;
    if (known !== undefined || remembered.size < MOST_REMEMBERED) remembered.set(key, now);
    return false;
  };

  const isBoughtCheaper = (stick: number, used: number): boolean => {
    const mine = sticks[stick]!;
    return sticks.some(
      (other, index) =>
        other.available >= pieces &&
        other.holds >= used &&
        (other.price < mine.price ||
          (other.price === mine.price &&
            (other.newLength < mine.newLength || (other.newLength === mine.newLength && index < stick)))),
    );
  };

  const visit = (cash: number, newLength: number): void => {
    work += 1;
    if (work > effort.steps) spent = true;
    if (spent) return;
    const first = left.findIndex((count) => count > 0);
    if (first < 0) {
      const now = { cash, newLength, sticks: chosen.length };
      if (bestOutlay !== undefined && !isBetter(now, bestOutlay)) return;
      best = chosen.map((cut) => cut);
      bestOutlay = now;
      return;
    }
    if (isHopeless(cash, newLength) || isKnown(cash, newLength)) return;
    for (const stick of order) {
      if (spent) return;
      const { holds, price } = sticks[stick]!;
      if (available[stick] === 0 || holds < kinds[first]!.width) continue;
      available[stick]! -= 1;
      const money = (bestOutlay?.cash ?? mostCash) - cash - price - (ties || bestOutlay === undefined ? 0 : 1);
      if (money >= 0) {
        const later = byWidth.table === undefined ? Infinity : coverMost(byWidth.table, money) + freeRoom(byWidth);
        fill(stick, first, first, holds, needed[0]! - later, cash + price, newLength + sticks[stick]!.newLength, []);
      }
      available[stick]! += 1;
    }
  };

  /** Goes on from kind `kind` with `room` left in the stick; at least `least` has to be taken up by the time it is full. */
  const fill = (
    stick: number,
    first: number,
    kind: number,
    room: number,
    least: number,
    cash: number,
    newLength: number,
    taken: readonly number[],
  ): void => {
    work += 1;
    if (work > effort.steps) spent = true;
    if (spent) return;
    let next = kind;
    const used = sticks[stick]!.holds - room;
    let spare = 0;
    for (let each = kind; each < kinds.length && spare < room; each += 1) {
      if (left[each]! > 0 && kinds[each]!.width <= room) spare += left[each]! * kinds[each]!.width;
    }
    if (used + (spare < room ? spare : room) < least) return;
    while (next < kinds.length && (left[next] === 0 || kinds[next]!.width > room)) next += 1;
    if (next === kinds.length) {
      for (let each = first; each < kinds.length; each += 1) if (left[each]! > 0 && kinds[each]!.width <= room) return;
      if (isBoughtCheaper(stick, used)) return;
      for (const [index, { worth }] of measured.entries()) for (const each of taken) needed[index]! -= worth[each]!;
      chosen.push({ stick, kinds: taken });
      visit(cash, newLength);
      chosen.pop();
      for (const [index, { worth }] of measured.entries()) for (const each of taken) needed[index]! += worth[each]!;
      return;
    }
    const { width } = kinds[next]!;
    const most = Math.min(left[next]!, Math.floor(room / width));
    const fewest = next === first && taken.length === 0 ? 1 : 0;
    for (let count = most; count >= fewest; count -= 1) {
      left[next]! -= count;
      const now = count === 0 ? taken : [...taken, ...Array.from({ length: count }, () => next)];
      fill(stick, first, next + 1, room - count * width, least, cash, newLength, now);
      left[next]! += count;
      if (spent) return;
    }
  };

  visit(0, 0);
  return { best, closed: !spent, work };
};

