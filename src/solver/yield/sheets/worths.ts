import { type Effort, withShare } from "../shelf/effort";
import { bestFilling, type BestFilling } from "./best-filling";
import { type SheetShelf, type Way } from "./sheet-shelf";
import { fillTables, type StripTables } from "./strip-tables";

/** What pieces are worth, in whole numbers, and the most worth that each kind of sheet holds: sheets that hold less than all do not do. */
export interface Worths {
  readonly worth: readonly number[];
  readonly total: number;
  readonly most: readonly number[];
}

/** All pieces together are worth about so much: fine enough, and every sum exact. */
const ALL_WORTH = 2 ** 30;

/** Worths in whole numbers from any others. */
export const wholeWorths = (worth: ArrayLike<number>, shelf: SheetShelf): { readonly worth: number[]; readonly scale: number } => {
  const sum = shelf.kinds.reduce((all, { wanted }, kind) => all + wanted * Math.max(0, worth[kind]!), 0);
  const scale = sum > 0 ? ALL_WORTH / sum : 0;
  return { worth: shelf.kinds.map((_, kind) => Math.floor(Math.max(0, worth[kind]!) * scale)), scale };
};

export const totalWorth = (worth: readonly number[], left: ArrayLike<number>): number =>
  worth.reduce((sum, each, kind) => sum + each * left[kind]!, 0);

/** Steps for the best filling of one sheet one way round, and for a good one; more is left to the tables' bound. */
export const BEST_STEPS = 1_500_000;
export const GOOD_STEPS = 15_000;

/** The best filling each way round, above a floor for each kind of sheet. */
export const bestFillings = (
  ways: readonly Way[], tables: (way: Way) => StripTables, worth: readonly number[], left: ArrayLike<number>,
  floors: readonly number[], effort: Effort, steps = BEST_STEPS,
): BestFilling[] =>
  ways.map((way) => {
    const table = tables(way);
    fillTables(way, table, worth, left, effort);
    return withShare(effort, steps, (share) => bestFilling(way, table, worth, left, floors[way.sheet]!, share));
  });

/** The most that each kind of sheet holds, of the best fillings of its ways round. */
export const mostOf = (shelf: SheetShelf, ways: readonly Way[], best: readonly BestFilling[], floors: readonly number[]): number[] =>
  shelf.sheets.map((_, sheet) =>
    ways.reduce((most, way, place) => (way.sheet === sheet ? Math.max(most, best[place]!.most) : most), floors[sheet]!),
  );

/** What a number of each kind of sheet lacks; more than 0 where they cannot hold all pieces. */
export const lack = ({ total, most }: Worths, counts: readonly number[]): number =>
  counts.reduce((rest, count, sheet) => rest - (count === 0 ? 0 : count * most[sheet]!), total);

/** What any plan costs at least by these worths, without whole numbers of sheets. */
export const leastCostBy = ({ sheets }: SheetShelf, { most, total }: Worths): number => {
  const rates = sheets.map(({ available, cost }, sheet) => (available > 0 && most[sheet]! > 0 ? cost / most[sheet]! : Infinity));
  return Math.ceil(total * Math.min(...rates) * (1 - 1e-9));
};
