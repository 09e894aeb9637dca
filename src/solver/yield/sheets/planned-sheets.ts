import { type Effort, withShare } from "../shelf/effort";
import { cheapestCounts } from "./cheapest-counts";
import { searchedCounts } from "./counts-search";
import { largerKinds } from "./each-filling";
import { patternKey, type Use } from "../shelf/pattern";
import { firstFit } from "./first-fit";
import { amongWays, type Cut, cutsCost, greedySheets } from "./greedy-sheets";
import { largestKept } from "./largest-kept";
import { keptIn, linearSheets, type Pool, provenBy } from "./linear-sheets";
import { panelArea, type SheetShelf, type Way } from "./sheet-shelf";
import { emptyTables, fillTables, stackCells, stripCells, type StripTables, tableSize } from "./strip-tables";
import { waysOf } from "./ways";
import { lack, leastCostBy, wholeWorths, type Worths } from "./worths";

export interface PlannedSheets {
  readonly ways: readonly Way[];
  /** Undefined where none was found. */
  readonly cuts: readonly Cut[] | undefined;
  /** No plan costs less; Infinity where the sheets do not hold the pieces. */
  readonly proven: number;
  /** What shows it: worths, and numbers of sheets shown too small by a search, which leaves nothing to repeat it by. */
  readonly worths: readonly Worths[];
  readonly tooSmall: readonly (readonly number[])[];
}

/** Pieces up to which numbers of sheets are searched, and the size of tables for it. */
const MOST_SEARCHED = 120;
const MOST_TABLES = 20_000_000;
/** Powers of the area that a piece is worth in plans by hand. */
const POWERS = [1, 1.15, 1.35, 0.9];
/** Steps for the cheapest numbers of sheets, for one search of them, and of all for plans by hand. */
const COUNTS_STEPS = 20_000_000;
const HAND_SHARE = 0.1;
/** Steps of a piece in a plan by hand. */
const FIRST_FIT_STEPS = 200;
const LINEAR_SHARE = 0.4;
const SEARCH_SHARE = 0.25;
const REST_SHARE = 0.3;
/** Floating dust of a whole number of times. */
const WHOLE_DUST = 1e-6;

/** One plan's state while it is looked for. */
interface Work {
  readonly shelf: SheetShelf;
  readonly ways: readonly Way[];
  readonly effort: Effort;
  readonly pool: Pool;
  readonly worths: Worths[];
  readonly tables: (way: Way) => StripTables;
  cuts: readonly Cut[] | undefined;
  cost: number;
  kept: number;
}

/** One pair of tables for all ways, the largest there is: each fills what it reads. */
const sharedTables = (ways: readonly Way[]): ((way: Way) => StripTables) => {
  const known = new Map<Way, StripTables>();
  const most = (size: (way: Way) => number): number => Math.max(...ways.map(size));
  const strips = new Float64Array(most((way) => way.shapes.length * stripCells(way)));
  const stacks = new Float64Array(most((way) => way.shapes.length * stackCells(way)));
  for (const way of ways)
    known.set(way, {
      strips: strips.subarray(0, way.shapes.length * stripCells(way)),
      stacks: stacks.subarray(0, way.shapes.length * stackCells(way)),
    });
  return (way) => known.get(way)!;
};

const better = (work: Work, cuts: readonly Cut[] | undefined): void => {
  if (cuts === undefined) return;
  const cost = cutsCost(work.shelf, work.ways, cuts);
  const kept = largestKept(work.shelf, work.ways, cuts);
  if (cost > work.cost || (cost === work.cost && kept <= work.kept)) return;
  work.cost = cost;
  work.kept = kept;
  work.cuts = cuts;
};

const byHand = (work: Work, worth: ArrayLike<number>): void => {
  const { shelf, ways, tables, pool, effort } = work;
  const cuts = withShare(effort, effort.left * HAND_SHARE, (share) => greedySheets(shelf, ways, tables, worth, work.cost, share));
  for (const { filling } of cuts ?? []) keptIn(pool, shelf, ways, filling);
  better(work, cuts);
};

/** What the area alone proves. */
const areaWorths = ({ shelf, ways, tables, effort }: Work): Worths =>
  provenBy(shelf, ways, tables, wholeWorths(shelf.kinds.map(panelArea), shelf).worth, effort);

const linear = (work: Work, most: readonly number[]): readonly Use[] => {
  const { shelf, ways, tables, pool, effort } = work;
  const limits = { least: shelf.sheets.map(() => 0), most };
  const found = withShare(effort, effort.left * LINEAR_SHARE, (share) => linearSheets(shelf, ways, tables, limits, pool, share));
  work.worths.push(...found.worths);
  return found.uses;
};

/** The linear plan's fillings as often as they are whole, and a plan of its own for the pieces that are left. */
const rounded = (work: Work, uses: readonly Use[]): void => {
  const { shelf, ways, pool, effort } = work;
  const left = shelf.kinds.map(({ wanted }) => wanted);
  const available = shelf.sheets.map((sheet) => sheet.available);
  const cuts: Cut[] = [];
  for (const { pattern, times } of [...uses].sort((one, other) => other.times - one.times)) {
    const fitting = pattern.kinds.map((kind, place) => Math.floor(left[kind]! / pattern.counts[place]!));
    const whole = Math.min(Math.floor(times + WHOLE_DUST), available[pattern.stick]!, ...fitting);
    if (whole <= 0) continue;
    available[pattern.stick]! -= whole;
    for (const [place, kind] of pattern.kinds.entries()) left[kind]! -= whole * pattern.counts[place]!;
    cuts.push({ filling: pool.get(patternKey(pattern))!.filling, times: whole });
  }
  if (cuts.length === 0) return;
  if (left.every((count) => count === 0)) return better(work, cuts);
  const rest: SheetShelf = {
    ...shelf,
    kinds: shelf.kinds.map((kind, place) => ({ ...kind, wanted: left[place]! })),
    sheets: shelf.sheets.map((sheet, place) => ({ ...sheet, available: available[place]! })),
  };
  const hasSheet = (kind: number): boolean =>
    ways.some(({ sheet, shapes }) => available[sheet]! > 0 && shapes.some((shape) => shape.kind === kind));
  if (left.some((count, kind) => count > 0 && !hasSheet(kind))) return;
  const planned = withShare(effort, effort.left * REST_SHARE, (share) => plannedSheets(rest, share));
  if (planned.cuts !== undefined) better(work, [...cuts, ...amongWays(ways, planned.ways, planned.cuts)]);
};

/** The worths by which these numbers of sheets have least to spare stand first. */
const tightestFirst = (worths: readonly Worths[], counts: readonly number[]): Worths[] =>
  [...worths].sort((one, other) => lack(other, counts) / other.total - lack(one, counts) / one.total);

const searched = (work: Work, counts: readonly number[]) => {
  const { shelf, effort } = work;
  const ways = work.ways.filter(({ sheet }) => counts[sheet]! > 0);
  const worths = tightestFirst(work.worths, counts).slice(0, 12);
  const [{ worth }] = worths as [Worths];
  const wanted = shelf.kinds.map((kind) => kind.wanted);
  const tables = ways.map((way) => {
    const table = emptyTables(way);
    fillTables(way, table, worth, wanted, effort);
    return table;
  });
  const side = { shelf, ways, tables, worth, areas: shelf.kinds.map(panelArea), larger: largerKinds(shelf) };
  const answer = withShare(effort, effort.left * SEARCH_SHARE, (share) => searchedCounts(side, counts, worths, share));
  if (typeof answer === "string") return answer;
  return answer.map((filling): Cut => ({ filling: { ...filling, way: work.ways.indexOf(ways[filling.way]!) }, times: 1 }));
};

/** Numbers of sheets in the order of their cost, each shown possible or not. */
const byCounts = (work: Work): Pick<PlannedSheets, "proven" | "tooSmall"> => {
  const { shelf, effort, worths } = work;
  const tooSmall: (readonly number[])[] = [];
  const tried = new Set<string>();
  let proven: number | undefined;
  const pieces = shelf.kinds.reduce((sum, { wanted }) => sum + wanted, 0);
  const isSearched = pieces <= MOST_SEARCHED && work.ways.reduce((sum, way) => sum + tableSize(way), 0) <= MOST_TABLES;
  for (;;) {
    const next = withShare(effort, COUNTS_STEPS, (share) => cheapestCounts(shelf, worths, tooSmall, tried, work.cost, share));
    if (!next.isExact || effort.left <= 0) return { proven: proven ?? boundOf(work), tooSmall };
    if (next.counts === undefined) return { proven: proven ?? work.cost, tooSmall };
    const { counts, cost } = next;
    const before = worths.length;
    linear(work, counts);
    if (worths.slice(before).some((each) => lack(each, counts) > 0)) continue;
    if (!isSearched) return { proven: proven ?? cost, tooSmall };
    const answer = searched(work, counts);
    if (answer === "none") tooSmall.push(counts);
    else if (answer === "open") {
      tried.add(counts.join());
      proven ??= cost;
    } else better(work, answer);
  }
};

/** What the worths prove without whole numbers. */
const boundOf = ({ shelf, worths, cost }: Work): number =>
  Math.min(cost, worths.reduce((bound, each) => Math.max(bound, leastCostBy(shelf, each)), 0));

/**
 * The cheapest plan of a shelf of sheets: plans by hand, the linear plan, then numbers of sheets by rising cost, each shown possible or too
 * small by worths or by a search (Gilmore and Gomory 1965; whole numbers over counts, as Benders 1962: the years from memory).
 */
export const plannedSheets = (shelf: SheetShelf, effort: Effort): PlannedSheets => {
  const ways = waysOf(shelf);
  const work: Work = {
    shelf, ways, effort, pool: new Map(), worths: [], tables: sharedTables(ways), cuts: undefined, cost: Infinity, kept: 0,
  };
  for (const way of ways.keys()) {
    better(work, firstFit(shelf, ways, way));
    effort.left -= FIRST_FIT_STEPS * shelf.kinds.reduce((sum, { wanted }) => sum + wanted, 0);
  }
  work.worths.push(areaWorths(work));
  for (const power of POWERS) byHand(work, shelf.kinds.map((kind) => panelArea(kind) ** power));
  const uses = linear(work, shelf.sheets.map(({ available }) => available));
  const last = work.worths[work.worths.length - 1]!;
  byHand(work, last.worth);
  rounded(work, uses);
  const found = byCounts(work);
  return { ways, cuts: work.cuts, worths: work.worths, ...found };
};
