import { type Effort, isSpent } from "../shelf/effort";
import type { Offer } from "./glue-work";
import type { WidthRow } from "./width-rows";

/** Offers that meet every row. */
export interface OfferSet {
  readonly offers: readonly number[];
  readonly weight: number;
}

export interface SetsInOrder {
  /** The next set by weight; undefined where there is none, or the effort is spent. */
  readonly next: (effort: Effort) => OfferSet | undefined;
  /** No set that is still to come weighs less. */
  readonly least: () => number;
}

/** Offers chosen, and those before `depth` that are not for ever out. */
interface Branch {
  readonly depth: number;
  readonly chosen: Chosen | undefined;
  readonly weight: number;
  readonly lacks: readonly number[];
  readonly bound: number;
  readonly isSet: boolean;
}

interface Chosen {
  readonly place: number;
  readonly before: Chosen | undefined;
}

const isLess = (one: Branch, other: Branch): boolean =>
  one.bound === other.bound
    ? Number(one.isSet) - Number(other.isSet) > 0 || (one.isSet === other.isSet && one.depth > other.depth)
    : one.bound < other.bound;

const push = (heap: Branch[], branch: Branch): void => {
  let at = heap.length;
  heap.push(branch);
  while (at > 0) {
    const up = (at - 1) >> 1;
    if (!isLess(branch, heap[up]!)) break;
    heap[at] = heap[up]!;
    at = up;
  }
  heap[at] = branch;
};

const pop = (heap: Branch[]): Branch => {
  const top = heap[0]!;
  const last = heap.pop()!;
  const { length } = heap;
  if (length === 0) return top;
  let at = 0;
  for (;;) {
    let down = 2 * at + 1;
    if (down + 1 < length && isLess(heap[down + 1]!, heap[down]!)) down += 1;
    if (down >= length || !isLess(heap[down]!, last)) break;
    heap[at] = heap[down]!;
    at = down;
  }
  heap[at] = last;
  return top;
};

const chosenPlaces = (chosen: Chosen | undefined): number[] => {
  const found: number[] = [];
  for (let one = chosen; one !== undefined; one = one.before) found.push(one.place);
  return found;
};

/** Offers, cheapest by what they give first, offers alike beside one another. */
const inTurn = (offers: readonly Offer[], rows: readonly WidthRow[]): readonly number[] => {
  const worth = offers.map((_, offer) => rows.reduce((sum, { gives, need }) => sum + Math.min(1, gives[offer]! / need), 0));
  const cost = offers.map(({ weight }, offer) => (worth[offer] === 0 ? Infinity : weight / worth[offer]!));
  return offers
    .map((_, offer) => offer)
    .filter((offer) => worth[offer]! > 0)
    .sort((one, other) => cost[one]! - cost[other]! || offers[one]!.alike - offers[other]!.alike || one - other);
};

/**
 * Sets of offers that meet every row, in order of weight, best bound first: what a branch lacks is bought by the part, row by row, and the
 * dearest row bounds it.
 */
export const setsInOrder = (offers: readonly Offer[], rows: readonly WidthRow[]): SetsInOrder => {
  const turn = inTurn(offers, rows);
  const weights = turn.map((offer) => offers[offer]!.weight);
  const gives = rows.map((row) => turn.map((offer) => row.gives[offer]!));
  const byRow = gives.map((given) =>
    turn.map((_, place) => place).filter((place) => given[place]! > 0).sort((a, b) => weights[a]! / given[a]! - weights[b]! / given[b]!),
  );
  const heap: Branch[] = [];
  const missing = (row: number, lack: number, depth: number): number => {
    let left = lack;
    let paid = 0;
    for (const place of byRow[row]!) {
      if (left <= 0) break;
      if (place < depth) continue;
      const given = gives[row]![place]!;
      paid += left >= given ? weights[place]! : (weights[place]! * left) / given;
      left -= given;
    }
    return left > 0 ? Infinity : paid;
  };
  const branch = (depth: number, chosen: Chosen | undefined, weight: number, lacks: readonly number[]): void => {
    const isSet = lacks.every((lack) => lack <= 0);
    const bound = isSet ? weight : weight + Math.max(...lacks.map((lack, row) => missing(row, lack, depth)));
    if (bound < Infinity) push(heap, { depth, chosen, weight, lacks, bound, isSet });
  };
  const taken = ({ chosen, weight, lacks }: Branch, place: number): void =>
    branch(place + 1, { place, before: chosen }, weight + weights[place]!, lacks.map((lack, row) => lack - gives[row]![place]!));
  /** The first place past those that are alike: who passes one by passes all. */
  const past = (place: number): number => {
    let next = place + 1;
    while (next < turn.length && offers[turn[next]!]!.alike === offers[turn[place]!]!.alike) next += 1;
    return next;
  };
  branch(0, undefined, 0, rows.map(({ need }) => need));
  const next = (effort: Effort): OfferSet | undefined => {
    while (heap.length > 0 && !isSpent(effort)) {
      const top = pop(heap);
      effort.left -= rows.length * (turn.length - top.depth) + 1;
      if (top.isSet) {
        for (let place = top.depth; place < turn.length; place = past(place)) taken(top, place);
        return { offers: chosenPlaces(top.chosen).map((place) => turn[place]!), weight: top.weight };
      }
      if (top.depth >= turn.length) continue;
      taken(top, top.depth);
      branch(past(top.depth), top.chosen, top.weight, top.lacks);
    }
    return undefined;
  };
  return { next, least: () => heap[0]?.bound ?? Infinity };
};

/** Offers in turn until every row is met, less those that were not needed, the dearest first: a set, and no more is said of it. */
export const someSet = (offers: readonly Offer[], rows: readonly WidthRow[]): readonly number[] | undefined => {
  const lacks = rows.map(({ need }) => need);
  const chosen: number[] = [];
  for (const offer of inTurn(offers, rows)) {
    if (lacks.every((lack) => lack <= 0)) break;
    if (!rows.some(({ gives }, row) => lacks[row]! > 0 && gives[offer]! > 0)) continue;
    chosen.push(offer);
    rows.forEach(({ gives }, row) => {
      lacks[row] = lacks[row]! - gives[offer]!;
    });
  }
  if (lacks.some((lack) => lack > 0)) return undefined;
  return [...chosen].sort((one, other) => offers[other]!.weight - offers[one]!.weight).reduce((kept, offer) => {
    if (!rows.every(({ gives }, row) => lacks[row]! + gives[offer]! <= 0)) return kept;
    rows.forEach(({ gives }, row) => {
      lacks[row] = lacks[row]! + gives[offer]!;
    });
    return kept.filter((one) => one !== offer);
  }, chosen);
};
