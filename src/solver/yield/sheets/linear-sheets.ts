import { type Effort } from "../shelf/effort";
import { type Limits } from "../shelf/master";
import { type Pattern, patternKey, type Use } from "../shelf/pattern";
import { type Shelf } from "../shelf/shelf";
import { simplexMaster } from "../shelf/simplex-master";
import { type Filling, type SheetShelf, type Way } from "./sheet-shelf";
import { type StripTables } from "./strip-tables";
import { BEST_STEPS, bestFillings, GOOD_STEPS, mostOf, totalWorth, wholeWorths, type Worths } from "./worths";
import { countsOf } from "./ways";

/** Fillings found so far, by what they hold. */
export type Pool = Map<string, { readonly pattern: Pattern; readonly filling: Filling }>;

/** Floating dust of a floor, on the side that proves less. */
const DUST = 1 + 1e-9;
const MOST_ROUNDS = 400;

/** What the dearest sheet costs in the linear program, whose floating dust is made for cents. */
const DEAREST = 10_000;

/** The linear program of the cutting stock, of which only numbers, prices and limits are asked. */
const asShelf = ({ kinds, sheets }: SheetShelf, prices: readonly number[]): Shelf => ({
  kinds: kinds.map(({ wanted }) => ({ width: 1, wanted })),
  sticks: sheets.map(({ available }, sheet) => ({ section: 0, holds: 1, usable: 1, price: prices[sheet]!, newLength: 0, available })),
  takes: [kinds.map(() => true)],
  marks: 1,
  keep: 0,
});

export const keptIn = (pool: Pool, shelf: SheetShelf, ways: readonly Way[], filling: Filling): Pattern | undefined => {
  const counts = countsOf(shelf.kinds.length, ways, filling);
  const kinds = counts.flatMap((count, kind) => (count > 0 ? [kind] : []));
  const pattern = { stick: ways[filling.way]!.sheet, kinds, counts: kinds.map((kind) => counts[kind]!) };
  const key = patternKey(pattern);
  if (pool.has(key)) return undefined;
  pool.set(key, { pattern, filling });
  return pattern;
};

export interface LinearSheets {
  readonly worths: readonly Worths[];
  readonly uses: readonly Use[];
}

/** Steps for what worths prove where the linear plan is not complete. */
const LAST_STEPS = 5_000_000;

/** What these worths prove of any number of sheets. */
export const provenBy = (
  shelf: SheetShelf, ways: readonly Way[], tables: (way: Way) => StripTables, worth: readonly number[], effort: Effort,
): Worths => {
  const wanted = shelf.kinds.map((kind) => kind.wanted);
  const none = shelf.sheets.map(() => 0);
  const most = mostOf(shelf, ways, bestFillings(ways, tables, worth, wanted, none, effort), none);
  return { worth, total: totalWorth(worth, wanted), most };
};

/**
 * The linear plan within limits on each kind of sheet, by generating fillings (Gilmore and Gomory 1965, from memory). What it proves is
 * only its worths: with what a sheet can hold of them at most, in whole numbers.
 */
export const linearSheets = (
  shelf: SheetShelf, ways: readonly Way[], tables: (way: Way) => StripTables, limits: Limits, pool: Pool, effort: Effort,
): LinearSheets => {
  const dearest = Math.max(...shelf.sheets.map(({ cost }) => cost));
  const prices = shelf.sheets.map(({ cost }) => (cost / dearest) * DEAREST);
  const master = simplexMaster(asShelf(shelf, prices), limits);
  for (const { pattern } of pool.values()) master.add(pattern);
  const wanted = shelf.kinds.map((kind) => kind.wanted);
  const open = shelf.sheets.map((_, sheet) => limits.most[sheet]! > 0);
  let last: readonly number[] | undefined;
  for (let round = 0; round < MOST_ROUNDS && effort.left > 0; round += 1) {
    const { worth: found, stickWorth, uses } = master.solve(effort);
    const { worth, scale } = wholeWorths(found, shelf);
    const floors = shelf.sheets.map((_, sheet) =>
      open[sheet]! ? Math.max(0, Math.ceil((prices[sheet]! - stickWorth[sheet]!) * scale * DUST)) : Infinity,
    );
    // good fillings do while there are any
    const isNew = [GOOD_STEPS, BEST_STEPS].some((steps) => {
      const before = pool.size;
      for (const [way, { strips }] of bestFillings(ways, tables, worth, wanted, floors, effort, steps).entries()) {
        const pattern = strips === undefined ? undefined : keptIn(pool, shelf, ways, { way, strips });
        if (pattern !== undefined) master.add(pattern);
      }
      return pool.size > before;
    });
    last = worth;
    if (isNew) continue;
    // a kind of sheet that is not in use may hold less than its price is worth
    return { worths: [provenBy(shelf, ways, tables, worth, effort)], uses };
  }
  // worths on the way prove something, too
  const worths = last === undefined ? [] : [provenBy(shelf, ways, tables, last, { left: LAST_STEPS })];
  return { worths, uses: master.solve({ left: 0 }).uses };
};
