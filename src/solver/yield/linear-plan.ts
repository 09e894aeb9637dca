import { type Shelf } from "./shelf";

/** A way to fill one stick kind, and how often the linear plan uses it. */
export interface Pattern {
  readonly stick: number;
  /** How many of each kind of piece. */
  readonly counts: readonly number[];
  readonly times: number;
}

export interface LinearPlan {
  readonly patterns: readonly Pattern[];
  /** What one piece of each kind costs in the linear plan, in units of money. */
  readonly worth: readonly number[];
}

/** Widths are coarsened to so many steps of the longest stick for the choice of patterns; pieces round up, so patterns stay sound. */
const WIDTH_STEPS = 4_000;
/** Steps of the tables that choose patterns, over which the plan is taken as it is. */
const MOST_WORK = 60_000_000;
const MOST_KINDS = 150;
/** Floating-point dust: differences below this share of a price are none. */
const DUST = 1e-9;

interface Column {
  readonly stick: number;
  readonly counts: readonly number[];
  readonly price: number;
}

/**
 * The linear plan: patterns used in part, at least cost, by column generation (Gilmore and Gomory 1961). Limits on stock are passed
 * over and arithmetic is floating, so it only proposes: plans made from it count whole pieces, and bounds are proven from its worths anew.
 */
export const linearPlan = (shelf: Shelf): LinearPlan | undefined => {
  const { kinds } = shelf;
  const size = kinds.length;
  if (size > MOST_KINDS) return undefined;
  const priced = shelf.sticks.map((_, index) => index).filter((index) => shelf.sticks[index]!.price > 0);
  const pieces = kinds.reduce((sum, kind) => sum + kind.wanted, 0);
  const endless = priced.filter((index) => shelf.sticks[index]!.available >= pieces);
  const isLong = (index: number): boolean => shelf.sticks[index]!.holds >= kinds[0]!.width;
  const used = endless.some(isLong) ? endless : priced;
  if (!used.some(isLong)) return undefined;

  const longest = Math.max(...used.map((index) => shelf.sticks[index]!.holds));
  const step = Math.max(1, Math.ceil(longest / WIDTH_STEPS));
  const widths = kinds.map((kind) => Math.ceil(kind.width / step));
  const rooms = used.map((index) => Math.floor(shelf.sticks[index]!.holds / step));
  const prices = used.map((index) => shelf.sticks[index]!.price);
  const most = Math.max(...rooms);

  const basis: Column[] = [];
  for (const [kind, width] of widths.entries()) {
    let best: Column | undefined;
    for (const [place, room] of rooms.entries()) {
      const count = Math.floor(room / width);
      if (count === 0 || (best !== undefined && prices[place]! * best.counts[kind]! >= best.price * count)) continue;
      best = { stick: used[place]!, price: prices[place]!, counts: widths.map((_, each) => (each === kind ? count : 0)) };
    }
    if (best === undefined) return undefined;
    basis.push(best);
  }
  const inverse = basis.map((column, row) => Float64Array.from(widths, (_, kind) => (kind === row ? 1 / column.counts[row]! : 0)));
  const times = basis.map((column, row) => kinds[row]!.wanted / column.counts[row]!);

  const worths = (): number[] => widths.map((_, kind) => basis.reduce((sum, column, row) => sum + column.price * inverse[row]![kind]!, 0));

  const value = new Float64Array(most + 1);
  const last = new Int32Array(most + 1);
  /** The column that gains most for its price, or a column of surplus where a piece is worth less than nothing. */
  const entering = (worth: readonly number[]): Column | undefined => {
    const useless = worth.findIndex((each) => each < -DUST);
    if (useless >= 0) return { stick: -1, price: 0, counts: widths.map((_, kind) => (kind === useless ? -1 : 0)) };
    value.fill(0);
    last.fill(-1);
    for (let kind = 0; kind < size; kind += 1) {
      const width = widths[kind]!;
      const each = worth[kind]!;
      for (let room = width; room <= most; room += 1) {
        const held = value[room - width]! + each;
        if (held <= value[room]!) continue;
        value[room] = held;
        last[room] = kind;
      }
    }
    let chosen = -1;
    let gain = 1 + DUST;
    for (const [place, room] of rooms.entries()) {
      if (value[room]! / prices[place]! <= gain) continue;
      gain = value[room]! / prices[place]!;
      chosen = place;
    }
    if (chosen < 0) return undefined;
    const counts = widths.map(() => 0);
    for (let room = rooms[chosen]!; last[room]! >= 0; room -= widths[last[room]!]!) counts[last[room]!]! += 1;
    return { stick: used[chosen]!, price: prices[chosen]!, counts };
  };

  let worth = worths();
  for (let work = 0; work < MOST_WORK; work += size * (most + size)) {
    const column = entering(worth);
    if (column === undefined) break;
    const rates = inverse.map((row) => column.counts.reduce((sum, count, kind) => (count === 0 ? sum : sum + row[kind]! * count), 0));
    let leaves = -1;
    for (const [row, rate] of rates.entries()) {
      if (rate > DUST && (leaves < 0 || times[row]! * rates[leaves]! < times[leaves]! * rate)) leaves = row;
    }
    if (leaves < 0) break;
    const pivot = inverse[leaves]!;
    for (let kind = 0; kind < size; kind += 1) pivot[kind]! /= rates[leaves]!;
    times[leaves]! /= rates[leaves]!;
    for (const [row, rate] of rates.entries()) {
      if (row === leaves || rate === 0) continue;
      const line = inverse[row]!;
      for (let kind = 0; kind < size; kind += 1) line[kind]! -= rate * pivot[kind]!;
      times[row] = Math.max(0, times[row]! - rate * times[leaves]!);
    }
    basis[leaves] = column;
    worth = worths();
  }
  return {
    worth: worth.map((each) => Math.max(0, each)),
    patterns: basis.flatMap(({ stick, counts }, row) => (stick < 0 ? [] : [{ stick, counts, times: times[row]! }])),
  };
};
