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

/** How many sticks of each kind, and what they cost. */
export interface Counts {
  readonly cost: number;
  readonly counts: readonly number[];
}

/** Steps of one look, and of one law in it. */
const LOOK_STEPS = 8;
const LAW_STEPS = 3;
/** Keeps a quotient on the safe side of its rounding. */
const SAFE_SHARE = 1 - 1e-12;

/** A stick kind that costs something: what it holds by each law, and the least a unit of worth costs in the kinds after it. */
interface Paid {
  readonly stick: number;
  readonly price: number;
  readonly available: number;
  readonly held: Float64Array;
  readonly rateAfter: Float64Array;
}

interface Search {
  readonly paid: readonly Paid[];
  readonly without: readonly (readonly number[])[];
  readonly counts: number[];
  /** What is still needed by each law when so many kinds of stick are counted. */
  readonly needed: readonly Float64Array[];
  readonly effort: Effort;
  /** Only counts that cost less are wanted. */
  below: number;
  found?: Counts;
}

/** Dearest first: they come in small numbers, and the cheap ones fill up. */
const paidOf = ({ sticks }: Shelf, laws: readonly CountLaw[]): Paid[] => {
  const ordered = [...sticks.keys()]
    .filter((stick) => sticks[stick]!.price > 0)
    .sort((a, b) => sticks[b]!.price - sticks[a]!.price || a - b);
  let rateAfter = new Float64Array(laws.length).fill(Infinity);
  const paid: Paid[] = [];
  for (const stick of ordered.reverse()) {
    const { price, available } = sticks[stick]!;
    const held = Float64Array.from(laws, (law) => law.held[stick]!);
    paid.unshift({ stick, price, available, held, rateAfter });
    rateAfter = rateAfter.map((rate, law) => Math.min(rate, held[law]! > 0 ? price / held[law]! : Infinity));
  }
  return paid;
};

/** The least that what is needed costs in sticks of later kinds: the dearest law counts. */
const leastAfter = (needed: Float64Array, rate: Float64Array): number => {
  let least = 0;
  for (let law = 0; law < needed.length; law += 1) if (needed[law]! > 0) least = Math.max(least, needed[law]! * rate[law]!);
  return least * SAFE_SHARE;
};

const take = (search: Search, cost: number): void => {
  const { paid, without, counts, needed } = search;
  if (cost >= search.below || needed[paid.length]!.some((each) => each > 0)) return;
  if (without.some((each) => counts.every((count, stick) => count <= each[stick]!))) return;
  search.below = cost;
  search.found = { cost, counts: [...counts] };
};

const visit = (search: Search, depth: number, cost: number): void => {
  const { paid, counts, needed, effort } = search;
  const each = paid[depth];
  if (each === undefined) return take(search, cost);
  const now = needed[depth]!;
  const next = needed[depth + 1]!;
  next.set(now);
  let wasNear = false;
  for (let count = 0; count <= each.available && !isSpent(effort); count += 1) {
    const here = cost + count * each.price;
    effort.left -= LOOK_STEPS + LAW_STEPS * next.length;
    if (here >= search.below) break;
    // what is needed falls and what is spent rises: once it was near enough and is no more, it is never again
    const isNear = here + leastAfter(next, each.rateAfter) <= search.below - 1;
    if (wasNear && !isNear) break;
    wasNear = isNear;
    if (isNear) {
      counts[each.stick] = count;
      visit(search, depth + 1, here);
    }
    for (let law = 0; law < next.length; law += 1) next[law]! -= each.held[law]!;
  }
  counts[each.stick] = 0;
};

/**
 * The cheapest numbers of sticks below a cost that keep every law and are not within those of `without`, which give no plan. Sticks that
 * cost nothing are all there. Nothing where there are none, or where the effort was spent.
 */
export const cheapestCounts = (
  shelf: Shelf, laws: readonly CountLaw[], without: readonly (readonly number[])[], below: number, effort: Effort,
): Counts | undefined => {
  const paid = paidOf(shelf, laws);
  const counts = shelf.sticks.map(({ price, available }) => (price === 0 ? available : 0));
  const first = Float64Array.from(laws, ({ needed, held }) => counts.reduce((sum, count, stick) => sum - count * held[stick]!, needed));
  const needed = [first, ...paid.map(() => new Float64Array(laws.length))];
  const search: Search = { paid, without, counts, needed, effort, below };
  visit(search, 0, 0);
  return search.found;
};
