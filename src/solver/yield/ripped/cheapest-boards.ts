import { type Effort, isSpent } from "../shelf/effort";
import { boardCosts, costOfSet } from "./board-costs";
import { type BoardSet, setsBetween } from "./board-sets";
import { emptyFilling, fillStretches, isFull } from "./filled-layout";
import { isRefutedBy, type Options, type Refutation } from "./refutation";
import { rootWorths } from "./root-worths";
import { noPatterns, setSearch, shortages } from "./set-search";
import { stretchWorth } from "./stretch-worth";
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
  readonly refutations: readonly Refutation[];
  readonly moneyStep: number;
}

/** Cases of a set looked into at first, and at most. */
const FIRST_CASES = 24;
const MOST_CASES = 3_000;
const MOST_SETS = 400;
const FIRST_SLICE = 0.002;

const boardsOf = (yard: Yard, layout: Layout): number[] => [...new Set([...layout.keys()].map((at) => yard.stretches[at]!.board))];

/** Board after board that holds most worth for its cost, until all pieces lie. */
const greedy = (
  yard: Yard, options: Options, worth: ArrayLike<number>, costOf: (board: number, has: readonly boolean[]) => number, effort: Effort,
): Layout | undefined => {
  const filling = emptyFilling(yard);
  const has = yard.boards.map(() => false);
  while (!isFull(filling)) {
    let chosen = -1;
    let most = 0;
    for (const [board, { stretches }] of yard.boards.entries()) {
      if (has[board]!) continue;
      const rate = stretches.reduce((sum, stretch) => sum + stretchWorth(yard, options[stretch]!, { worth, wanted: filling.left }, stretch, effort).value, 0) / costOf(board, has);
      if (rate <= most) continue;
      most = rate;
      chosen = board;
    }
    if (chosen < 0 || isSpent(effort)) return undefined;
    has[chosen] = true;
    fillStretches(yard, options, filling, yard.boards[chosen]!.stretches, worth, effort);
  }
  return filling.layout;
};

/** The cheapest boards that hold all pieces. */
export const cheapestBoards = (yard: Yard, effort: Effort): CheapestBoards => {
  const options = optionsOf(yard);
  const costs = boardCosts(yard);
  const patterns = noPatterns(yard);
  const root = rootWorths(yard, options, costs, patterns, effort);
  const refutations: Refutation[] = root.cases.map((one) => [one]);
  let best: { layout: Layout | undefined; cost: number } = { layout: undefined, cost: Infinity };
  const take = (layout: Layout | undefined): void => {
    if (layout === undefined) return;
    const cost = costOfSet(yard, costs, boardsOf(yard, layout));
    if (cost < best.cost) best = { layout, cost };
  };
  const costOf = (board: number, has: readonly boolean[]): number => {
    const { lot } = yard.boards[board]!;
    const isBought = lot < 0 || yard.boards.some((other, place) => other.lot === lot && has[place]!);
    return costs.boards[board]! + (isBought ? 0 : costs.lots[lot]!);
  };
  const areas = shortages(yard);
  take(greedy(yard, options, root.worth, costOf, effort));
  take(greedy(yard, options, areas, costOf, effort));
  let isImpossible = false;
  let refuted = 0;
  const test = ({ boards }: BoardSet, cases: number): "holds" | "refuted" | "open" => {
    const { layout, refutation } = setSearch(yard, options, boards, patterns, { cases }, effort);
    take(layout);
    if (refutation !== undefined) refutations.push(refutation);
    return layout !== undefined ? "holds" : refutation !== undefined ? "refuted" : "open";
  };
  if (best.layout === undefined) {
    isImpossible = test({ boards: yard.boards.map((_, board) => board), cost: 0 }, MOST_CASES) === "refuted";
    if (isImpossible) return { ...best, bound: Infinity, refuted, isImpossible, refutations, moneyStep: costs.moneyStep };
  }
  const deferred: BoardSet[] = [];
  let floor = Math.ceil(root.bound * (1 - 1e-9));
  let slice = FIRST_SLICE;
  const total = costs.boards.reduce((sum, each) => sum + each, 1) + costs.lots.reduce((sum, each) => sum + each, 0);
  while (floor < best.cost && floor <= total && !isSpent(effort)) {
    const to = Math.min(best.cost, Math.max(floor + 1, Math.ceil(floor * (1 + slice))));
    const single = refutations.filter((each) => each.length === 1).map(([one]) => one!);
    const sets = setsBetween(yard, costs, single, floor, to, MOST_SETS, effort);
    if (sets === undefined) {
      if (isSpent(effort) || to === floor + 1) break;
      slice /= 2;
      continue;
    }
    let reached = to;
    for (const set of sets) {
      if (set.cost >= best.cost) break;
      if (isSpent(effort)) {
        reached = set.cost;
        break;
      }
      const has = yard.boards.map(() => false);
      for (const board of set.boards) has[board] = true;
      refuted += 1;
      if (refutations.some((each) => isRefutedBy(each, has, set.boards))) continue;
      const found = test(set, FIRST_CASES);
      if (found === "open") deferred.push(set);
    }
    floor = reached;
    if (sets.length < 20) slice *= 2;
  }
  const open: BoardSet[] = [];
  for (const set of deferred) {
    if (set.cost >= best.cost) continue;
    const has = yard.boards.map(() => false);
    for (const board of set.boards) has[board] = true;
    if (refutations.some((each) => isRefutedBy(each, has, set.boards))) continue;
    if (isSpent(effort) || test(set, MOST_CASES) === "open") open.push(set);
  }
  const bound = Math.min(best.cost, floor, ...open.map(({ cost }) => cost));
  return { ...best, bound, refuted: refuted - open.length, isImpossible, refutations, moneyStep: costs.moneyStep };
};
