import { type Effort } from "../shelf/effort";
import { type BestFilling } from "./best-filling";
import { type Filling, type Shape, type SheetShelf, type Way } from "./sheet-shelf";
import { type StripTables } from "./strip-tables";
import { countsOf } from "./ways";
import { bestFillings, GOOD_STEPS, wholeWorths } from "./worths";

/** One filling as often as it is cut. */
export interface Cut {
  readonly filling: Filling;
  readonly times: number;
}

export const cutsCost = ({ sheets }: SheetShelf, ways: readonly Way[], cuts: readonly Cut[]): number =>
  cuts.reduce((sum, { filling, times }) => sum + times * sheets[ways[filling.way]!.sheet]!.cost, 0);

/** The same fillings by other ways of the same sheets, which may have more shapes. */
export const amongWays = (ways: readonly Way[], before: readonly Way[], cuts: readonly Cut[]): Cut[] =>
  cuts.map(({ filling, times }) => {
    const { sheet, first, shapes } = before[filling.way]!;
    const way = ways.findIndex((each) => each.sheet === sheet && each.first === first);
    const placeOf = ({ kind, turned }: Shape): number =>
      ways[way]!.shapes.findIndex((shape) => shape.kind === kind && shape.turned === turned);
    return { filling: { way, strips: filling.strips.map((strip) => strip.map((place) => placeOf(shapes[place]!))) }, times };
  });

interface Choice {
  readonly filling: Filling;
  readonly counts: readonly number[];
  readonly cost: number;
  readonly holdsAll: boolean;
  readonly rate: number;
}

/** What ends the job cheapest, unless another filling gives so much worth for its money that it is not dearer. */
const chosen = (choices: readonly Choice[]): Choice | undefined => {
  const least = (of: readonly Choice[], figure: (choice: Choice) => number): Choice | undefined =>
    of.reduce<Choice | undefined>((best, each) => (best === undefined || figure(each) < figure(best) ? each : best), undefined);
  const last = least(choices.filter(({ holdsAll }) => holdsAll), ({ cost }) => cost);
  const best = least(choices, ({ rate }) => rate);
  return last !== undefined && best !== undefined && last.cost <= best.cost ? last : best ?? last;
};

/**
 * A plan sheet after sheet: each time the filling that gives most worth for its money, as often as the pieces last. Undefined where the
 * sheets run out, or the plan would cost no less than `below`.
 */
export const greedySheets = (
  shelf: SheetShelf, ways: readonly Way[], tables: (way: Way) => StripTables, given: ArrayLike<number>, below: number, effort: Effort,
): Cut[] | undefined => {
  const { worth } = wholeWorths(given, shelf);
  // what is worth nothing is still to be cut
  const valued = worth.map((each) => Math.max(1, each));
  const left = shelf.kinds.map(({ wanted }) => wanted);
  const available = shelf.sheets.map((sheet) => sheet.available);
  const none = shelf.sheets.map(() => 0);
  const cuts: Cut[] = [];
  let cost = 0;
  while (left.some((count) => count > 0)) {
    const open = ways.filter(({ sheet }) => available[sheet]! > 0);
    if (open.length === 0 || effort.left <= 0) return undefined;
    const best = bestFillings(open, tables, valued, left, none, effort, GOOD_STEPS);
    const choices = best.flatMap(({ strips, worth: held }: BestFilling, place): Choice[] => {
      if (strips === undefined || held <= 0) return [];
      const filling = { way: ways.indexOf(open[place]!), strips };
      const counts = countsOf(left.length, ways, filling);
      const price = shelf.sheets[open[place]!.sheet]!.cost;
      return [{ filling, counts, cost: price, holdsAll: counts.every((count, kind) => count === left[kind]), rate: price / held }];
    });
    const choice = chosen(choices);
    if (choice === undefined) return undefined;
    const { sheet } = ways[choice.filling.way]!;
    const times = choice.counts.reduce(
      (most, count, kind) => (count > 0 ? Math.min(most, Math.floor(left[kind]! / count)) : most), available[sheet]!,
    );
    cost += times * choice.cost;
    if (cost >= below) return undefined;
    available[sheet]! -= times;
    for (const [kind, count] of choice.counts.entries()) left[kind]! -= times * count;
    cuts.push({ filling: choice.filling, times });
  }
  return cuts;
};
