import { type Effort, isSpent } from "./effort";
import { type Shelf } from "./shelf";

/**
 * What worths say of the sticks of every plan: together they hold at least the worth of all pieces, when a stick holds as much as its
 * knapsack. Whole numbers below 2^53.
 */
export interface CountLaw {
  readonly worth: readonly number[];
  /** For each kind of stick the most worth that one holds. */
  readonly held: readonly number[];
  readonly needed: number;
}

export const countLaw = (shelf: Shelf, worth: readonly number[], held: readonly number[]): CountLaw => ({
  worth,
  held,
  needed: worth.reduce((sum, each, kind) => sum + each * shelf.kinds[kind]!.wanted, 0),
});

/** How many sticks of each kind, and what they come to. */
export interface Counts {
  readonly sum: number;
  readonly counts: readonly number[];
}

/** Which numbers of sticks are asked for. */
export interface Asked {
  /** What is to be least in all: for each kind of stick what one comes to; and what all have to stay below. */
  readonly price: readonly number[];
  readonly below: number;
  /** What all may cost besides. */
  readonly cash?: { readonly price: readonly number[]; readonly most: number };
  readonly laws: readonly CountLaw[];
  /** Numbers that give no plan, and so nothing within them does. */
  readonly without: readonly (readonly number[])[];
}

/** Steps of one look, and of one law in it. */
const LOOK_STEPS = 8;
const LAW_STEPS = 3;
/** Keeps a quotient on the safe side of its rounding. */
const SAFE_SHARE = 1 - 1e-12;

/** A stick kind that comes to something: what it holds by each law, and the least that a unit of worth comes to in the kinds after it. */
interface Counted {
  readonly stick: number;
  readonly price: number;
  readonly cash: number;
  readonly available: number;
  readonly held: Float64Array;
  readonly rateAfter: Float64Array;
  readonly cashAfter: Float64Array;
}

interface Search {
  readonly counted: readonly Counted[];
  readonly without: readonly (readonly number[])[];
  readonly counts: number[];
  /** What is still needed by each law when so many kinds of stick are counted. */
  readonly needed: readonly Float64Array[];
  readonly mostCash: number;
  readonly effort: Effort;
  /** Only numbers that come to less are wanted. */
  below: number;
  found?: Counts;
}

/** Dearest first: they come in small numbers, and the cheap ones fill up. */
const countedOf = ({ sticks }: Shelf, { price, cash, laws }: Asked): Counted[] => {
  const ordered = [...sticks.keys()].filter((stick) => price[stick]! > 0).sort((a, b) => price[a]! - price[b]! || b - a);
  let rateAfter = new Float64Array(laws.length).fill(Infinity);
  let cashAfter = rateAfter;
  const counted: Counted[] = [];
  for (const stick of ordered) {
    const paid = cash?.price[stick] ?? 0;
    const held = Float64Array.from(laws, (law) => law.held[stick]!);
    counted.unshift({ stick, price: price[stick]!, cash: paid, available: sticks[stick]!.available, held, rateAfter, cashAfter });
    const better = (rates: Float64Array, each: number): Float64Array<ArrayBuffer> =>
      rates.map((rate, law) => Math.min(rate, held[law]! > 0 ? each / held[law]! : Infinity)) as Float64Array<ArrayBuffer>;
    rateAfter = better(rateAfter, price[stick]!);
    cashAfter = better(cashAfter, paid);
  }
  return counted;
};

/** The least that what is needed comes to in sticks of later kinds: the dearest law counts. */
const leastAfter = (needed: Float64Array, rate: Float64Array): number => {
  let least = 0;
  for (let law = 0; law < needed.length; law += 1) if (needed[law]! > 0) least = Math.max(least, needed[law]! * rate[law]!);
  return least * SAFE_SHARE;
};

const take = (search: Search, sum: number): void => {
  const { counted, without, counts, needed } = search;
  if (sum >= search.below || needed[counted.length]!.some((each) => each > 0)) return;
  if (without.some((each) => counts.every((count, stick) => count <= each[stick]!))) return;
  search.below = sum;
  search.found = { sum, counts: [...counts] };
};

const visit = (search: Search, depth: number, sum: number, cash: number): void => {
  const { counted, counts, needed, mostCash, effort } = search;
  const each = counted[depth];
  if (each === undefined) return take(search, sum);
  const next = needed[depth + 1]!;
  next.set(needed[depth]!);
  let wasNear = false;
  for (let count = 0; count <= each.available && !isSpent(effort); count += 1) {
    const here = sum + count * each.price;
    const paid = cash + count * each.cash;
    effort.left -= LOOK_STEPS + LAW_STEPS * next.length;
    if (here >= search.below || paid > mostCash) break;
    const isNear = here + leastAfter(next, each.rateAfter) <= search.below - 1 && paid + leastAfter(next, each.cashAfter) <= mostCash;
    // what is needed falls and what is spent rises: once it was near enough and is no more, it is never again
    if (wasNear && !isNear) break;
    wasNear = isNear;
    if (isNear) {
      counts[each.stick] = count;
      visit(search, depth + 1, here, paid);
    }
    for (let law = 0; law < next.length; law += 1) next[law]! -= each.held[law]!;
  }
  counts[each.stick] = 0;
};

/**
 * The least numbers of sticks that keep every law. Sticks that come to nothing are all there. Nothing where there are none, or where the
 * effort was spent.
 */
export const leastCounts = (shelf: Shelf, asked: Asked, effort: Effort): Counts | undefined => {
  const { price, below, cash, laws, without } = asked;
  const counted = countedOf(shelf, asked);
  const counts = shelf.sticks.map(({ available }, stick) => (price[stick] === 0 ? available : 0));
  const first = Float64Array.from(laws, ({ needed, held }) => counts.reduce((sum, count, stick) => sum - count * held[stick]!, needed));
  const needed = [first, ...counted.map(() => new Float64Array(laws.length))];
  const search: Search = { counted, without, counts, needed, mostCash: cash?.most ?? Infinity, effort, below };
  visit(search, 0, 0, 0);
  return search.found;
};
