import { type Effort } from "../shelf/effort";
import { type SheetShelf } from "./sheet-shelf";
import { type Worths } from "./worths";

export interface CheapestCounts {
  /** How many of each kind of sheet; undefined where no numbers cost less than asked. */
  readonly counts: readonly number[] | undefined;
  readonly cost: number;
  readonly isExact: boolean;
}

const STEP = 4;

export const isWithin = (counts: readonly number[], other: readonly number[]): boolean =>
  counts.every((count, place) => count <= other[place]!);

/**
 * The cheapest numbers of sheets that hold enough by every set of worths and lie within none that was shown too small: whole numbers by
 * branching on one kind of sheet after another.
 */
export const cheapestCounts = (
  { sheets }: SheetShelf, worths: readonly Worths[], tooSmall: readonly (readonly number[])[], tried: ReadonlySet<string>, below: number,
  effort: Effort,
): CheapestCounts => {
  // the cheapest worth first, so that the others are soon too dear
  const order = sheets.flatMap(({ available }, sheet) => (available > 0 ? [sheet] : []));
  const last = worths[worths.length - 1];
  if (last !== undefined) {
    const rate = (sheet: number): number => sheets[sheet]!.cost / Math.max(1, last.most[sheet]!);
    order.sort((one, other) => rate(one) - rate(other) || one - other);
  }
  /** For each place of the order, the least cost of a unit of worth among the kinds from there on. */
  const rates = worths.map(({ most }) => {
    const least = order.map((sheet) => (most[sheet]! > 0 ? sheets[sheet]!.cost / most[sheet]! : Infinity));
    for (let place = least.length - 2; place >= 0; place -= 1) least[place] = Math.min(least[place]!, least[place + 1]!);
    return [...least, Infinity];
  });
  const counts = sheets.map(() => 0);
  let best = below;
  let found: number[] | undefined;
  const isCovered = (rest: readonly number[]): boolean => rest.every((each) => each <= 0);
  const atLeast = (place: number, rest: readonly number[]): number =>
    rest.reduce((cost, each, at) => (each > 0 ? Math.max(cost, each * rates[at]![place]!) : cost), 0);
  const visit = (place: number, cost: number, rest: readonly number[]): void => {
    effort.left -= STEP * (rest.length + tooSmall.length + 1);
    if (effort.left <= 0 || cost >= best || Math.ceil(cost + atLeast(place, rest) * (1 - 1e-12)) >= best) return;
    if (isCovered(rest) && !tried.has(counts.join()) && !tooSmall.some((other) => isWithin(counts, other))) {
      best = cost;
      found = [...counts];
      return;
    }
    const sheet = order[place];
    if (sheet === undefined) return;
    const { cost: price, available } = sheets[sheet]!;
    const most = Math.min(available, Math.max(0, Math.ceil((best - cost) / price)));
    // from few to many, each with what the other kinds may add
    for (let count = 0; count <= most && effort.left > 0; count += 1) {
      counts[sheet] = count;
      visit(place + 1, cost + count * price, count === 0 ? rest : rest.map((each, at) => each - count * worths[at]!.most[sheet]!));
    }
    counts[sheet] = 0;
  };
  visit(0, 0, worths.map(({ total }) => total));
  return { counts: found, cost: best, isExact: effort.left > 0 };
};
