import { type Effort, isSpent, withShare } from "../shelf/effort";
import { type BoardCosts, boardCosts, costOfSet } from "./board-costs";
import { type BoardSet, setsBetween } from "./board-sets";
import { isFull } from "./filled-layout";
import { greedyBoards } from "./greedy-boards";
import { isRefutedBy, type Options, type Refutation } from "./refutation";
import { rootWorths } from "./root-worths";
import { noPatterns, type Patterns, setSearch, shortages } from "./set-search";
import { optionsOf } from "./view";
import type { Layout, Yard } from "./yard";

export interface CheapestBoards {
  /** Undefined where none was found. */
  readonly layout: Layout | undefined;
  readonly cost: number;
  /** No plan costs less. */
  readonly bound: number;
  /** Sets of boards that would cost less and were shown too small. */
  readonly refuted: number;
  /** All boards together are shown to hold too little. */
  readonly isImpossible: boolean;
  /** Where there is no layout, a kind of which a piece was left without a place. */
  readonly unplaced: number;
  readonly refutations: readonly Refutation[];
  /** The options that the refutations speak of. */
  readonly options: Options;
  readonly moneyStep: number;
}

/** Cases of a set looked into at first, and at most. */
const FIRST_CASES = 24;
const MOST_CASES = 3_000;
/** Sets listed at a time; a slice of cost with more is halved, one with few doubled. */
const MOST_SETS = 400;
const FEW_SETS = 20;
const FIRST_SLICE = 0.002;
/** The linear program of all boards takes no more of the work than this. */
const ROOT_SHARE = 0.6;
/** Sums of parts of boards are rounded: so much of a bound is not relied on. */
const BOUND_DUST = 1e-9;

/** A search under way. */
interface Search {
  readonly yard: Yard;
  readonly options: Options;
  readonly costs: BoardCosts;
  readonly patterns: Patterns;
  readonly effort: Effort;
  readonly refutations: Refutation[];
  best: { readonly layout: Layout | undefined; readonly cost: number };
  /** No set that costs less holds all pieces. */
  floor: number;
  refuted: number;
}

const boardsOf = ({ stretches }: Yard, layout: Layout): number[] => [...new Set([...layout.keys()].map((at) => stretches[at]!.board))];

const take = (search: Search, layout: Layout): void => {
  const cost = costOfSet(search.yard, search.costs, boardsOf(search.yard, layout));
  if (cost < search.best.cost) search.best = { layout, cost };
};

const isRefuted = ({ yard, refutations }: Search, { boards }: BoardSet): boolean => {
  const has = yard.boards.map(() => false);
  for (const board of boards) has[board] = true;
  return refutations.some((each) => isRefutedBy(each, has, boards));
};

/** Looks into a set; true where it is settled, by a layout or a refutation. */
const isSettled = (search: Search, { boards }: BoardSet, cases: number): boolean => {
  const { yard, options, patterns, effort } = search;
  const { layout, refutation } = setSearch(yard, options, boards, patterns, { cases }, effort);
  if (layout !== undefined) take(search, layout);
  if (refutation !== undefined) search.refutations.push(refutation);
  return layout !== undefined || refutation !== undefined;
};

/** Shares of worth to spare that sets are first looked for with: with more room a plan is found sooner. */
const SPARE = [0.08, 0.04, 0.02, 0.01];
const SPARE_CASES = 6;
const SPARE_SETS = 3;

/** A plan near the best: the cheapest sets that hold more worth than is needed. */
const withSpare = (search: Search): void => {
  const { yard, costs, effort, refutations } = search;
  for (const spare of SPARE) {
    const single = refutations.flatMap((each) => (each.length === 1 ? each : []));
    const cases = single.map((one) => ({ ...one, needed: one.needed * (1 + spare) }));
    let from = search.floor;
    let slice = FIRST_SLICE;
    let looked = 0;
    while (from < search.best.cost && looked < SPARE_SETS && !isSpent(effort)) {
      const to = Math.min(search.best.cost, Math.max(from + 1, Math.ceil(from * (1 + slice))), Number.MAX_SAFE_INTEGER);
      const sets = setsBetween(yard, costs, cases, from, to, MOST_SETS, effort);
      if (sets === undefined && to === from + 1) break;
      slice *= sets === undefined ? 0.5 : 2;
      if (sets === undefined) continue;
      from = to;
      for (const set of sets.slice(0, SPARE_SETS)) {
        looked += 1;
        if (set.cost < search.best.cost) isSettled(search, set, SPARE_CASES);
      }
    }
  }
};

/** Looks into the sets in the order of their cost, as far as the best known; those that did not settle are returned. */
const inOrder = (search: Search): readonly BoardSet[] => {
  const { yard, costs, effort, refutations } = search;
  const unsettled: BoardSet[] = [];
  const all = [...costs.boards, ...costs.lots].reduce((sum, each) => sum + each, 1);
  let slice = FIRST_SLICE;
  while (search.floor < search.best.cost && search.floor <= all && !isSpent(effort)) {
    const { floor } = search;
    const to = Math.min(search.best.cost, Math.max(floor + 1, Math.ceil(floor * (1 + slice))));
    const single = refutations.flatMap((each) => (each.length === 1 ? each : []));
    const sets = setsBetween(yard, costs, single, floor, to, MOST_SETS, effort);
    if (sets === undefined) {
      if (to === floor + 1) break;
      slice /= 2;
      continue;
    }
    search.floor = to;
    for (const set of sets) {
      if (set.cost >= search.best.cost) break;
      if (isSpent(effort)) {
        search.floor = set.cost;
        break;
      }
      search.refuted += 1;
      if (!isRefuted(search, set) && !isSettled(search, set, FIRST_CASES)) unsettled.push(set);
    }
    if (sets.length < FEW_SETS) slice *= 2;
  }
  return unsettled;
};

/** What is still open after a second, longer look. */
const stillOpen = (search: Search, unsettled: readonly BoardSet[]): readonly BoardSet[] =>
  unsettled.filter((set) => {
    if (set.cost >= search.best.cost || isRefuted(search, set)) return false;
    return isSpent(search.effort) || !isSettled(search, set, MOST_CASES);
  });

const searchOf = (yard: Yard, effort: Effort): Search => ({
  yard, effort,
  options: optionsOf(yard),
  costs: boardCosts(yard),
  patterns: noPatterns(yard),
  refutations: [],
  best: { layout: undefined, cost: Infinity },
  floor: 0,
  refuted: 0,
});

/** The boards that cost least of those that hold all pieces, and how far that is proven; `known` is a layout found another way. */
const searched = (yard: Yard, effort: Effort, known: Layout | undefined): CheapestBoards => {
  const search = searchOf(yard, effort);
  const { options, costs, patterns, refutations } = search;
  if (known !== undefined) take(search, known);
  let unplaced = 0;
  const fill = (worth: ArrayLike<number>, share: Effort): void => {
    const filling = greedyBoards(yard, options, costs, worth, share);
    if (isFull(filling)) take(search, filling.layout);
    else unplaced = filling.left.findIndex((count) => count > 0);
  };
  // a plan first, whatever the rest of the work comes to
  fill(shortages(yard), { left: effort.left });
  const root = withShare(effort, effort.left * ROOT_SHARE, (share) => rootWorths(yard, options, costs, patterns, share));
  refutations.push(...root.cases.map((one) => [one]));
  search.floor = Math.ceil(root.bound * (1 - BOUND_DUST));
  fill(root.worth, effort);
  const answer = (bound: number, isImpossible: boolean, refuted: number): CheapestBoards => ({
    ...search.best, bound, refuted, isImpossible, unplaced, refutations, options, moneyStep: costs.moneyStep,
  });
  if (search.best.layout === undefined) {
    const all = { boards: yard.boards.map((_, board) => board), cost: Infinity };
    if (isSettled(search, all, FIRST_CASES) && search.best.layout === undefined) return answer(Infinity, true, 0);
  }
  withSpare(search);
  const open = stillOpen(search, inOrder(search));
  return answer(Math.min(search.best.cost, search.floor, ...open.map(({ cost }) => cost)), false, search.refuted - open.length);
};

/**
 * The cheapest boards. Either way round: first all one way, then all the other, each with the work it has by itself, so that no plan is
 * dearer than the better of them; then each stretch its own way.
 */
export const cheapestBoards = (yard: Yard, work: number): CheapestBoards => {
  const single = yard.ways.length < 2 ? [] : yard.ways.map((way) => searched({ ...yard, ways: [way] }, { left: work }, undefined));
  const known = single.reduce<CheapestBoards | undefined>(
    (best, each) => (best === undefined || each.cost < best.cost ? each : best), undefined,
  );
  return searched(yard, { left: work }, known?.layout);
};
