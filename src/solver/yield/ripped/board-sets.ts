import { type Effort, isSpent } from "../shelf/effort";
import type { BoardCosts } from "./board-costs";
import type { Case } from "./refutation";
import type { Yard } from "./yard";

/** A set of boards and what it costs. */
export interface BoardSet {
  readonly boards: readonly number[];
  readonly cost: number;
}

/** A lot bought, or a board cut, in the order the search decides them. */
interface Item {
  readonly board: number;
  readonly lot: number;
  readonly cost: number;
  /** Place of the like board that is cut first; -1 for none. */
  readonly like: number;
}

const likeness = (yard: Yard, board: number): string => {
  const { stretches, money, feet, lot } = yard.boards[board]!;
  const sizes = stretches.map((at) => yard.stretches[at]!).map(({ length, width, class: of }) => [length, width, of].join());
  return JSON.stringify([sizes, money, feet, lot]);
};

/** Lots first: what their boards cost hangs on them. Then the boards that give most worth for their cost. */
const itemsOf = (yard: Yard, costs: BoardCosts, leading: Case | undefined): Item[] => {
  const rate = (board: number): number => (leading === undefined ? 0 : leading.holds[board]! / costs.boards[board]!);
  const order = yard.boards.map((_, board) => board).sort((one, other) => rate(other) - rate(one) || one - other);
  const lots = costs.lots.map((cost, lot): Item => ({ board: -1, lot, cost, like: -1 }));
  const lastLike = new Map<string, number>();
  return [
    ...lots,
    ...order.map((board, place): Item => {
      const key = likeness(yard, board);
      const like = lastLike.get(key) ?? -1;
      lastLike.set(key, lots.length + place);
      return { board, lot: yard.boards[board]!.lot, cost: costs.boards[board]!, like };
    }),
  ];
};

/** A worth that every plan needs, as the items hold it: what is left after each place, and the items by worth for cost. */
interface Need {
  readonly holds: Float64Array;
  readonly after: Float64Array;
  readonly byRate: readonly number[];
  readonly needed: number;
}

const needOf = (items: readonly Item[], { holds, needed }: Case): Need => {
  const held = Float64Array.from(items, ({ board }) => (board < 0 ? 0 : Math.min(needed, holds[board]!)));
  const after = new Float64Array(items.length + 1);
  for (let at = items.length - 1; at >= 0; at -= 1) after[at] = after[at + 1]! + held[at]!;
  const byRate = items.map((_, at) => at).filter((at) => held[at]! > 0);
  byRate.sort((one, other) => held[other]! / items[other]!.cost - held[one]! / items[one]!.cost || one - other);
  return { holds: held, after, byRate, needed };
};

/** The least that the items from a place on cost that hold so much, in parts of items. */
const leastCost = (items: readonly Item[], { holds, byRate }: Need, from: number, needed: number): number => {
  let left = needed;
  let cost = 0;
  for (const at of byRate) {
    if (left <= 0) break;
    if (at < from) continue;
    // the last is taken in part; a product of its share would leave dust
    if (left <= holds[at]!) return cost + (left / holds[at]!) * items[at]!.cost;
    cost += items[at]!.cost;
    left -= holds[at]!;
  }
  return left > 0 ? Infinity : cost;
};

/** Needs whose cost is reckoned at each step; the others only stop what can no longer hold enough. */
const LEADING = 4;
/** Room for the rounding of sums of parts. */
const DUST = 1e-6;

/** How dear a set must be at least for one worth alone. */
export const leastCostOf = (yard: Yard, costs: BoardCosts, one: Case): number => {
  const items = itemsOf(yard, costs, one);
  return leastCost(items, needOf(items, one), 0, one.needed);
};

/**
 * The sets of boards that cost `from` or more and less than `to` and hold enough of each worth, the cheapest first; undefined where there
 * are more than `most` or the work runs out. Like boards are taken in order.
 */
export const setsBetween = (
  yard: Yard, costs: BoardCosts, cases: readonly Case[], from: number, to: number, most: number, effort: Effort,
): readonly BoardSet[] | undefined => {
  const ranked = cases.map((one) => ({ one, least: leastCostOf(yard, costs, one) })).sort((one, other) => other.least - one.least);
  const items = itemsOf(yard, costs, ranked[0]?.one);
  const needs = ranked.map(({ one }) => needOf(items, one));
  const leading = needs.slice(0, LEADING);
  const found: BoardSet[] = [];
  const taken: boolean[] = items.map(() => false);
  const lots = costs.lots.map(() => false);
  const got = new Float64Array(needs.length);
  let isCut = false;
  const cutsOff = (place: number, cost: number): boolean => {
    effort.left -= needs.length + 8 * LEADING;
    for (let at = 0; at < needs.length; at += 1) if (needs[at]!.needed - got[at]! > needs[at]!.after[place]!) return true;
    return leading.some((need, at) => cost + leastCost(items, need, place, need.needed - got[at]!) - DUST * to >= to);
  };
  const decide = (place: number, cost: number): void => {
    if (isCut || isSpent(effort)) {
      isCut = true;
      return;
    }
    if (cutsOff(place, cost)) return;
    if (place === items.length) {
      if (cost < from || cost >= to) return;
      const boards = items.flatMap(({ board }, at) => (board >= 0 && taken[at]! ? [board] : [])).sort((one, other) => one - other);
      found.push({ boards, cost });
      isCut = found.length > most;
      return;
    }
    const { board, lot, cost: each, like } = items[place]!;
    if ((board < 0 || lot < 0 || lots[lot]!) && (like < 0 || taken[like]!)) {
      taken[place] = true;
      if (board < 0) lots[lot] = true;
      for (let at = 0; at < needs.length; at += 1) got[at]! += needs[at]!.holds[place]!;
      decide(place + 1, cost + each);
      for (let at = 0; at < needs.length; at += 1) got[at]! -= needs[at]!.holds[place]!;
      if (board < 0) lots[lot] = false;
      taken[place] = false;
    }
    decide(place + 1, cost);
  };
  decide(0, 0);
  return isCut ? undefined : found.sort((one, other) => one.cost - other.cost || (one.boards.join() < other.boards.join() ? -1 : 1));
};
