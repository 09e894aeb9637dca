import { type Effort } from "./effort";
import { betterOf, type Cut, piecesWanted, type Shelf, takesCut, takesKind, usedWidth } from "./shelf";

type Fit = "first" | "best";

interface OpenStick {
  readonly stick: number;
  readonly kinds: number[];
  room: number;
}

/** The kind that found no stick. */
interface Unplaced {
  readonly unplaced: number;
}

/** Stick kinds by price for what they hold; free ones first, and among equals the longer, then the earlier. */
const cheapestFirst = (shelf: Shelf): number[] =>
  shelf.sticks
    .map((_, index) => index)
    .sort((a, b) => {
      const one = shelf.sticks[a]!;
      const other = shelf.sticks[b]!;
      return one.price / one.holds - other.price / other.holds || other.holds - one.holds || a - b;
    });

/** Pieces longest first, each into an open stick with room, or into a new one: the first kind in `order` that holds it. */
const filled = (shelf: Shelf, order: readonly number[], fit: Fit): Cut[] | Unplaced => {
  const available = shelf.sticks.map((stick) => stick.available);
  const open: OpenStick[] = [];
  for (const [index, kind] of shelf.kinds.entries()) {
    for (let piece = 0; piece < kind.wanted; piece += 1) {
      let into: OpenStick | undefined;
      for (const stick of open) {
        if (stick.room < kind.width || !takesKind(shelf, stick.stick, index)) continue;
        if (into === undefined || stick.room < into.room) into = stick;
        if (fit === "first") break;
      }
      if (into === undefined) {
        const stick = order.find(
          (each) => available[each]! > 0 && shelf.sticks[each]!.holds >= kind.width && takesKind(shelf, each, index),
        );
        if (stick === undefined) return { unplaced: index };
        available[stick]! -= 1;
        into = { stick, kinds: [], room: shelf.sticks[stick]!.holds };
        open.push(into);
      }
      into.kinds.push(index);
      into.room -= kind.width;
    }
  }
  return open.map(({ stick, kinds }) => ({ stick, kinds }));
};

/** Looks at a stick kind, over which sticks are no longer changed for cheaper ones. */
const MOST_CHANGE_WORK = 20_000_000;

/** Every stick changed for the cheapest one left that still holds its cuts, until nothing changes. */
export const downsized = (shelf: Shelf, cuts: readonly Cut[]): Cut[] => {
  const available = shelf.sticks.map((stick) => stick.available);
  for (const cut of cuts) available[cut.stick]! -= 1;
  const result = [...cuts];
  const cheapest = shelf.sticks
    .map((_, index) => index)
    .sort((a, b) => {
      const one = shelf.sticks[a]!;
      const other = shelf.sticks[b]!;
      return one.price - other.price || one.newLength - other.newLength || one.holds - other.holds || a - b;
    });
  const rank = cheapest.reduce<number[]>((ranks, stick, place) => ((ranks[stick] = place), ranks), []);
  let changed = true;
  let work = 0;
  while (changed && work < MOST_CHANGE_WORK) {
    changed = false;
    for (const [index, cut] of result.entries()) {
      const used = usedWidth(shelf, cut);
      const place = cheapest.findIndex((each) => available[each]! > 0 && shelf.sticks[each]!.holds >= used && takesCut(shelf, each, cut));
      const stick = cheapest[place];
      work += place;
      if (stick === undefined || rank[stick]! >= rank[cut.stick]!) continue;
      available[stick]! -= 1;
      available[cut.stick]! += 1;
      result[index] = { ...cut, stick };
      changed = true;
    }
  }
  return result;
};

/** Steps of a fullest-stick table, over which the method is left out, and the share of the effort they may come to. */
const MOST_FILL_WORK = 25_000_000;
const FILL_SHARE = 1 / 20;

/**
 * Stick after stick, each as full as it can be with the longest piece left in it, from the stick kind that costs least for what is
 * then in it. A filling is repeated as often as pieces and sticks allow.
 */
const fullestSticks = (shelf: Shelf, order: readonly number[], most: number): Cut[] | undefined => {
  const left = shelf.kinds.map((kind) => kind.wanted);
  const available = shelf.sticks.map((stick) => stick.available);
  const longest = Math.max(...shelf.sticks.map((stick) => stick.holds));
  const cuts: Cut[] = [];
  let work = 0;
  for (let first = left.findIndex((count) => count > 0); first >= 0; first = left.findIndex((count) => count > 0)) {
    const width = shelf.kinds[first]!.width;
    let chosen = -1;
    let chosenFill = 0;
    let added: readonly number[] = [];
    for (const [section, takes] of shelf.takes.entries()) {
      if (!takes[first]!) continue;
      const fitting = order.filter(
        (each) => shelf.sticks[each]!.section === section && available[each]! > 0 && shelf.sticks[each]!.holds >= width,
      );
      if (fitting.length === 0) continue;
      work += longest * (left.length - first) + order.length;
      if (work > most) return undefined;
      const room = Math.max(...fitting.map((each) => shelf.sticks[each]!.holds - width));
      // reached[w]: the kind last added to come to exactly w beside the first piece; longer kinds are used before shorter ones
      const reached = new Int32Array(room + 1).fill(-1);
      const copies = new Int32Array(room + 1);
      reached[0] = left.length;
      for (let kind = first; kind < left.length; kind += 1) {
        const spare = left[kind]! - (kind === first ? 1 : 0);
        const each = shelf.kinds[kind]!.width;
        if (spare === 0 || !takes[kind]!) continue;
        copies.fill(0);
        for (let sum = each; sum <= room; sum += 1) {
          if (reached[sum]! >= 0 || reached[sum - each]! < 0) continue;
          const count = copies[sum - each]! + 1;
          if (count > spare) continue;
          reached[sum] = kind;
          copies[sum] = count;
        }
      }
      for (const each of fitting) {
        const stick = shelf.sticks[each]!;
        let fill = stick.holds - width;
        while (reached[fill]! < 0) fill -= 1;
        const better = chosen < 0 || stick.price * (chosenFill + width) < shelf.sticks[chosen]!.price * (fill + width);
        if (!better) continue;
        chosen = each;
        chosenFill = fill;
        added = [];
        for (let sum = fill; sum > 0; sum -= shelf.kinds[reached[sum]!]!.width) added = [...added, reached[sum]!];
      }
    }
    if (chosen < 0) return undefined;
    const kinds = [first, ...added].sort((a, b) => a - b);
    const counts = new Map<number, number>();
    for (const kind of kinds) counts.set(kind, (counts.get(kind) ?? 0) + 1);
    let times = available[chosen]!;
    for (const [kind, count] of counts) times = Math.min(times, Math.floor(left[kind]! / count));
    for (const [kind, count] of counts) left[kind]! -= count * times;
    available[chosen]! -= times;
    for (let time = 0; time < times; time += 1) cuts.push({ stick: chosen, kinds });
  }
  return cuts;
};

/** Steps of all opening orders tried, one taking about pieces x (pieces + stick kinds); the cheapest order is always tried. */
const MOST_FIT_WORK = 16_000_000;
const FIT_SHARE = 1 / 30;

/**
 * The best plan found by hand methods: first fit and best fit, longest piece first, opening each stick kind in turn, each stick then
 * changed for the cheapest that holds its cuts; and the fullest sticks one by one. Nothing where none of them places every piece. A part of
 * a job that has little of the effort is tried in fewer ways; what is tried is not taken off it.
 */
export const handPlan = (shelf: Shelf, { left }: Effort): readonly Cut[] | undefined => {
  const cheapest = cheapestFirst(shelf);
  const free = cheapest.filter((stick) => shelf.sticks[stick]!.price === 0);
  const pieces = piecesWanted(shelf);
  const most = Math.max(1, Math.floor(Math.min(MOST_FIT_WORK, left * FIT_SHARE) / (pieces * (pieces + shelf.sticks.length))));
  const orders: number[][] = [cheapest];
  for (const opened of cheapest.slice(free.length)) {
    if (orders.length >= most) break;
    orders.push([...free, opened, ...cheapest]);
    if (free.length > 0) orders.push([opened, ...cheapest]);
  }
  orders.length = Math.min(orders.length, most);
  let best: readonly Cut[] | undefined;
  for (const order of orders) {
    for (const fit of ["first", "best"] as const) {
      const cuts = filled(shelf, order, fit);
      if (!("unplaced" in cuts)) best = betterOf(shelf, best, downsized(shelf, cuts));
    }
  }
  const full = fullestSticks(shelf, cheapest, Math.min(MOST_FILL_WORK, left * FILL_SHARE));
  return full === undefined ? best : betterOf(shelf, best, downsized(shelf, full));
};

/** First fit and best fit in one order only, for rests that are planned many times. */
export const quickHandPlan = (shelf: Shelf): readonly Cut[] | undefined => {
  const order = cheapestFirst(shelf);
  let best: readonly Cut[] | undefined;
  for (const fit of ["first", "best"] as const) {
    const cuts = filled(shelf, order, fit);
    if (!("unplaced" in cuts)) best = betterOf(shelf, best, downsized(shelf, cuts));
  }
  return best;
};

/** The kind of the longest piece for which first fit finds no stick; the longest kind where it places all. */
export const longestUnplaced = (shelf: Shelf): number => {
  const cuts = filled(shelf, cheapestFirst(shelf), "first");
  return "unplaced" in cuts ? cuts.unplaced : 0;
};
