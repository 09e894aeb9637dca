import { rankOf, type TypedMove } from "../solver/books/random-moves";
import { by, type Fraction, fraction, isAtMost, isSame, less, NONE, ofNumber, plus, rounded, times } from "./fraction";

/**
 * The books of a shop as someone keeps them by hand: whole cents and fractions, one row after the other, a pair of numbers (how many, worth
 * what) for each item at each place. Moving weighted average by item and place (IAS 2.25); an amount is shared by largest remainder.
 */
export interface Held {
  many: Fraction;
  cents: bigint;
}

export const FLOWS = ["bought", "freight", "tax", "credited", "returned", "in", "out"] as const;
export type Flow = (typeof FLOWS)[number];

export interface PlainBooks {
  readonly held: ReadonlyMap<string, Held>;
  /** By month, place and flow. */
  readonly flows: ReadonlyMap<string, bigint>;
  readonly openings: ReadonlyMap<string, bigint>;
  readonly scrapped: ReadonlyMap<string, Held>;
}

export const centsOf = (cost: number | string | undefined): bigint => BigInt(Math.round(Number(cost ?? 0) * 100));
export const placeOf = (move: TypedMove): string => String(move.job ?? "rack");
export const monthOf = (move: TypedMove): string => move.date.slice(0, 7);
const key = (...parts: readonly string[]): string => parts.join("|");

/** Largest remainder, the earlier row first among equals. */
export const shared = (amount: bigint, weights: readonly bigint[]): readonly bigint[] => {
  const sum = weights.reduce((all, weight) => all + weight, 0n);
  const sign = amount < 0n ? -1n : 1n;
  const parts = weights.map((weight, place) => ({ place, whole: (amount * sign * weight) / sum, rest: (amount * sign * weight) % sum }));
  const left = amount * sign - parts.reduce((all, { whole }) => all + whole, 0n);
  const first = [...parts].sort((a, b) => (a.rest === b.rest ? a.place - b.place : a.rest > b.rest ? -1 : 1));
  const extra = new Set(first.slice(0, Number(left)).map(({ place }) => place));
  return parts.map(({ place, whole }) => sign * (whole + (extra.has(place) ? 1n : 0n)));
};

const CHARGES = ["freight", "tax", "credit"] as const;
type ChargeKind = (typeof CHARGES)[number];
const isCharge = (kind: string): kind is ChargeKind => (CHARGES as readonly string[]).includes(kind);
const flowOf = (kind: ChargeKind): Flow => (kind === "credit" ? "credited" : kind);

interface Line {
  readonly place: string;
  readonly item: string;
  readonly many: Fraction;
  readonly cents: bigint;
}

/** Goods of one paper, those of one item at one place together, as they first appear. */
const linesOf = (invoice: string, moves: readonly TypedMove[]): readonly Line[] => {
  const lines = new Map<string, Line>();
  for (const move of moves) {
    if (move.kind !== "purchase" || move.invoice !== invoice) continue;
    const [place, item] = [placeOf(move), String(move.item)];
    const before = lines.get(key(place, item));
    lines.set(key(place, item), {
      place, item, many: plus(before?.many ?? NONE, quantityOf(move)), cents: (before?.cents ?? 0n) + centsOf(move.cost),
    });
  }
  return [...lines.values()];
};

/** In the item's own unit: cove is counted in feet here, and some of it is typed in inches. */
const quantityOf = (move: TypedMove): Fraction =>
  move.quantity === "none" || move.quantity === undefined
    ? NONE
    : times(ofNumber(Number(move.quantity)), move.unit === "in" ? fraction(1n, 12n) : fraction(1n));

interface Pages {
  readonly held: Map<string, Held>;
  readonly flows: Map<string, bigint>;
  readonly openings: Map<string, bigint>;
  readonly scrapped: Map<string, Held>;
}

const at = (pages: Pages, place: string, item: string): Held => {
  const found = pages.held.get(key(place, item)) ?? { many: NONE, cents: 0n };
  pages.held.set(key(place, item), found);
  return found;
};

const flow = (pages: Pages, month: string, place: string, which: Flow, cents: bigint): void => {
  const page = key(month, place, which);
  pages.flows.set(page, (pages.flows.get(page) ?? 0n) + cents);
};

const put = (pages: Pages, place: string, item: string, many: Fraction, cents: bigint): void => {
  const held = at(pages, place, item);
  held.many = plus(held.many, many);
  held.cents += cents;
};

/** The last ones take all that is left. */
const worth = (held: Held, many: Fraction): bigint =>
  isSame(many, held.many) ? held.cents : rounded(by(times(many, fraction(held.cents)), held.many));

const take = (pages: Pages, place: string, item: string, many: Fraction): bigint => {
  const held = at(pages, place, item);
  const cents = worth(held, many);
  held.many = less(held.many, many);
  held.cents -= cents;
  return cents;
};

const carry = (pages: Pages, month: string, from: string, to: string, cents: bigint): void => {
  flow(pages, month, from, "out", cents);
  flow(pages, month, to, "in", cents);
};

/** Freight, tax or credit of a later month than its goods: only what is still there takes its share. */
const lateCharge = (pages: Pages, move: TypedMove, kind: ChargeKind, lines: readonly Line[]): void => {
  const month = monthOf(move);
  const sign = kind === "credit" ? -1n : 1n;
  const shares = shared(centsOf(move.cost), lines.map(({ cents }) => cents));
  lines.forEach(({ place, item, many }, index) => {
    const share = shares[index] ?? 0n;
    const held = at(pages, place, item);
    const there = place === "rack" ? (isAtMost(held.many, many) ? held.many : many) : held.many.over === 0n ? NONE : many;
    let own = isSame(there, many) ? share : rounded(by(times(fraction(share), there), many));
    // No place is worth less than nothing.
    if (sign < 0n && own > held.cents) own = held.cents;
    held.cents += sign * own;
    flow(pages, month, place, flowOf(kind), own);
    flow(pages, month, "price differences", flowOf(kind), share - own);
  });
};

/** With the charges of its month. */
const purchases = (pages: Pages, invoice: string, moves: readonly TypedMove[]): void => {
  const lines = linesOf(invoice, moves);
  const month = monthOf(moves.find((move) => move.kind === "purchase" && move.invoice === invoice)!);
  for (const { place, item, many, cents } of lines) {
    put(pages, place, item, many, cents);
    flow(pages, month, place, "bought", cents);
  }
  for (const move of moves) {
    if (move.invoice !== invoice || monthOf(move) !== month || !isCharge(move.kind)) continue;
    const [kind, sign] = [move.kind, move.kind === "credit" ? -1n : 1n];
    const shares = shared(centsOf(move.cost), lines.map(({ cents }) => cents));
    lines.forEach(({ place, item }, index) => {
      at(pages, place, item).cents += sign * (shares[index] ?? 0n);
      flow(pages, month, place, flowOf(kind), shares[index] ?? 0n);
    });
  }
};

const sentBack = (pages: Pages, move: TypedMove): void => {
  const [month, place, item] = [monthOf(move), placeOf(move), String(move.item)];
  const held = at(pages, place, item);
  const credited = centsOf(move.cost);
  held.many = less(held.many, quantityOf(move));
  held.cents -= credited;
  flow(pages, month, place, "returned", credited);
  if (held.many.over !== 0n) return;
  carry(pages, month, place, "price differences", held.cents);
  held.cents = 0n;
};

const counted = (pages: Pages, move: TypedMove): void => {
  const item = String(move.item);
  const held = at(pages, "rack", item);
  const short = less(held.many, quantityOf(move));
  const cents = short.over < 0n ? -worth(held, { over: -short.over, under: short.under }) : worth(held, short);
  held.many = quantityOf(move);
  held.cents -= cents;
  carry(pages, monthOf(move), "rack", "shrinkage", cents);
};

const follow = (pages: Pages, move: TypedMove, moves: readonly TypedMove[], seen: Set<string>): void => {
  const [month, from, item, many] = [monthOf(move), placeOf(move), String(move.item), quantityOf(move)];
  const pass = (source: string, to: string, cents: bigint, named = item): void => {
    put(pages, to, named, many, cents);
    carry(pages, month, source, to, cents);
  };
  if (move.kind === "opening") {
    put(pages, from, item, many, centsOf(move.cost));
    pages.openings.set(from, (pages.openings.get(from) ?? 0n) + centsOf(move.cost));
  } else if (move.kind === "purchase") {
    const invoice = String(move.invoice);
    if (!seen.has(invoice)) purchases(pages, invoice, moves);
    seen.add(invoice);
  } else if (isCharge(move.kind)) {
    const bought = moves.find(({ kind, invoice }) => kind === "purchase" && invoice === move.invoice)!;
    if (monthOf(bought) !== month) lateCharge(pages, move, move.kind, linesOf(String(move.invoice), moves));
  } else if (move.kind === "issue") pass("rack", from, take(pages, "rack", item, many));
  else if (move.kind === "transfer") pass(from, String(move.to), take(pages, from, item, many));
  else if (move.kind === "offcut")
    pass(from, String(move.to), take(pages, from, String(move.of), times(many, ofNumber(Number(move.share)))));
  else if (move.kind === "return") sentBack(pages, move);
  else if (move.kind === "count") counted(pages, move);
  else if (move.kind === "scrap" && from === "rack") carry(pages, month, "rack", "waste", take(pages, "rack", item, many));
  else if (move.kind === "scrap") {
    const before = pages.scrapped.get(key(from, item)) ?? { many: NONE, cents: 0n };
    const cents = worth(at(pages, from, item), many);
    pages.scrapped.set(key(from, item), { many: plus(before.many, many), cents: before.cents + cents });
  }
};

/** Rows in the order of the days, and of one day by their rank. */
export const plainBooks = (moves: readonly TypedMove[]): PlainBooks => {
  const inOrder = moves
    .map((move, place) => ({ move, place }))
    .sort((a, b) => a.move.date.localeCompare(b.move.date) || rankOf(a.move) - rankOf(b.move) || a.place - b.place)
    .map(({ move }) => move);
  const pages: Pages = { held: new Map(), flows: new Map(), openings: new Map(), scrapped: new Map() };
  const seen = new Set<string>();
  for (const move of inOrder) follow(pages, move, inOrder, seen);
  return pages;
};
