import { type Effort, withShare } from "../shelf/effort";
import { amongWays, cutsCost } from "./greedy-sheets";
import { type PlannedSheets, plannedSheets } from "./planned-sheets";
import { type SheetShelf } from "./sheet-shelf";
import { waysOf } from "./ways";

/** Steps of one way round, with either or alone: so that either is never dearer than the better of both. */
const ONE_WAY = 1 / 3;

/** The plan of a shelf; where either way round may be first and nothing is proven at once, no dearer than the plan of one way alone. */
export const plannedEitherWay = (shelf: SheetShelf, effort: Effort): PlannedSheets => {
  const share = effort.left * ONE_WAY;
  const oneWay = (firsts: SheetShelf["firsts"]): PlannedSheets =>
    withShare(effort, share, (part) => plannedSheets({ ...shelf, firsts }, part));
  if (shelf.firsts.length === 1) return oneWay(shelf.firsts);
  const both = withShare(effort, share, (part) => plannedSheets(shelf, part));
  if (both.cuts !== undefined && both.proven >= cutsCost(shelf, both.ways, both.cuts)) return both;
  const ways = waysOf(shelf);
  const seeds = shelf.firsts.map((first) => {
    const planned = oneWay([first]);
    return planned.cuts === undefined ? undefined : amongWays(ways, planned.ways, planned.cuts);
  });
  const costOf = (cuts: PlannedSheets["cuts"]): number => (cuts === undefined ? Infinity : cutsCost(shelf, ways, cuts));
  return seeds.reduce<PlannedSheets>((best, cuts) => (costOf(cuts) < costOf(best.cuts) ? { ...best, cuts } : best), both);
};
