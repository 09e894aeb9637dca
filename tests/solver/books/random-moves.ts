import fc from "fast-check";
import { MOVE_KINDS, type Move, type MoveKind } from "../../../src/solver/books/ledger/move";
import { dayOfText, dayText } from "../../../src/solver/books/day";
import { exact } from "../../../src/solver/length/exact";

/** The columns of a row of moves, as a person types them. */
export const MOVE_COLUMNS = ["date", "job", "item", "quantity", "unit", "cost", "kind", "to", "invoice", "of", "share"] as const;

export type TypedMove = { readonly date: string; readonly kind: MoveKind } & Readonly<
  Partial<Record<Exclude<(typeof MOVE_COLUMNS)[number], "date" | "kind">, string | number>>
>;

/** Rows of cells under headings, for a call. */
export const moveCells = (moves: readonly TypedMove[]): (string | number)[][] => [
  [...MOVE_COLUMNS],
  ...moves.map((move) => MOVE_COLUMNS.map((column) => move[column] ?? "")),
];

/** The same rows as a solver gets them; rows are counted from 2, under the headings. */
export const readMoves = (moves: readonly TypedMove[]): readonly Move[] =>
  moves.map(({ date, cost, quantity, unit, share, ...move }, place) => ({
    ...move,
    row: place + 2,
    date: { day: dayOfText(date)!, given: date },
    unit: String(unit ?? ""),
    ...(cost === undefined ? {} : { cost: exact(Number(cost)) }),
    ...(quantity === undefined ? {} : { quantity: quantity === "none" ? 0 : Number(quantity) }),
    ...(share === undefined ? {} : { share: Number(share) }),
  }));

/** The place of a row within its day: openings, purchases, their charges, all else, counts. */
export const rankOf = ({ kind, quantity }: TypedMove): number => {
  if (kind === "opening") return 0;
  if (kind === "purchase" && Number(quantity) > 0) return 1;
  if (["freight", "tax", "credit", "invoice total"].includes(kind)) return 2;
  return kind === "count" ? 4 : 3;
};

/** Goods of an invented shop: their unit, and the parts of one they are counted in. */
const GOODS = [
  { item: "oak blank 42", unit: "each", parts: 1 },
  { item: "poplar 16 ft", unit: "each", parts: 1 },
  { item: "cove", unit: "ft", parts: 4 },
  { item: "walnut 8/4", unit: "bf", parts: 4 },
] as const;
const STICK = GOODS[1];
const OFFCUT = { item: "poplar offcut", unit: "each", parts: 1 } as const;
type Good = (typeof GOODS)[number] | typeof OFFCUT;

const JOBS: readonly string[] = ["Elm 12", "Birch 4", "Ash 9"];
/** Parts of a stick that one offcut is; a binary fraction, so that quantities stay exact in the tests' own numbers. */
const SHARES = [0.25, 0.375, 0.5] as const;

const FIRST_DAY = dayOfText("2026-01-05")!;

/** Rack and shop first, then the jobs. */
const stepAt = (places: number, pause: number) =>
  fc.record({
    what: fc.nat(11), good: fc.nat(3), place: fc.nat(places - 1), other: fc.nat(places - 1), amount: fc.integer({ min: 1, max: 40 }),
    cents: fc.integer({ min: 1, max: 99_999 }), days: fc.nat(pause), of: fc.nat(9),
  });
type Step = ReturnType<typeof stepAt> extends fc.Arbitrary<infer S> ? S : never;

interface Invoice {
  readonly name: string;
  readonly day: number;
  /** Cents of its purchases. */
  bought: number;
  credited: number;
}

/** A shop while its rows are made up: only quantities are followed, so that nothing is taken that is not there. */
interface Shop {
  readonly places: readonly string[];
  readonly rows: TypedMove[];
  readonly held: Map<string, number>;
  /** Scrapped at a job: it stays in the job's goods, and nobody carries it on. */
  readonly spoiled: Map<string, number>;
  readonly invoices: Invoice[];
  /** Cents of purchases, freight and tax, by invoice and month. */
  readonly papers: Map<string, { readonly name: string; readonly date: string; cents: number }>;
  day: number;
}

const money = (cents: number): number => cents / 100;
const placeName = (place: string): Partial<TypedMove> => (place === "rack" ? {} : { job: place });
const keyOf = (place: string, { item }: Good): string => `${place}|${item}`;

const heldAt = ({ held }: Shop, place: string, good: Good): number => held.get(keyOf(place, good)) ?? 0;
const freeAt = (shop: Shop, place: string, good: Good): number => heldAt(shop, place, good) - (shop.spoiled.get(keyOf(place, good)) ?? 0);
const change = (shop: Shop, place: string, good: Good, by: number): void => {
  shop.held.set(keyOf(place, good), heldAt(shop, place, good) + by);
};

const onPaper = (shop: Shop, name: string, cents: number): void => {
  const date = dayText(shop.day);
  const key = `${name}|${date.slice(0, 7)}`;
  const paper = shop.papers.get(key) ?? { name, date, cents: 0 };
  shop.papers.set(key, { name, date, cents: paper.cents + cents });
};

const quantityOf = (good: Good, amount: number): number => amount / good.parts;

const purchase = (shop: Shop, { place, amount, cents, of, days }: Step, good: Good): void => {
  const to = shop.places[place]!;
  const latest = shop.invoices[shop.invoices.length - 1];
  const isSame = of < 5 && latest !== undefined && latest.day === shop.day;
  const invoice = isSame ? latest : { name: `A-${shop.invoices.length + 100}`, day: shop.day, bought: 0, credited: 0 };
  if (!isSame) shop.invoices.push(invoice);
  const cost = cents + amount * 100;
  invoice.bought += cost;
  onPaper(shop, invoice.name, cost);
  change(shop, to, good, quantityOf(good, amount));
  const inInches = good.unit === "ft" && days === 1;
  shop.rows.push({
    date: dayText(shop.day), kind: "purchase", ...placeName(to), item: good.item,
    quantity: quantityOf(good, amount) * (inInches ? 12 : 1), unit: inInches ? "in" : good.unit, cost: money(cost), invoice: invoice.name,
  });
};

const charge = (shop: Shop, { what, of, cents }: Step): void => {
  const invoice = shop.invoices[shop.invoices.length - 1 - (of % Math.max(1, shop.invoices.length))];
  if (invoice === undefined) return;
  const kind = (["freight", "tax", "credit"] as const)[what % 3]!;
  // Credits of an invoice stay under a tenth of it together.
  const most = kind === "credit" ? Math.floor(invoice.bought / 10) - invoice.credited : cents % 20_000;
  const amount = kind === "credit" ? Math.min(cents, most) : most;
  if (amount <= 0) return;
  if (kind === "credit") invoice.credited += amount;
  else onPaper(shop, invoice.name, amount);
  shop.rows.push({ date: dayText(shop.day), kind, cost: money(amount), invoice: invoice.name });
};

const part = (there: number, amount: number, { parts }: Good): number => Math.min(there, Math.ceil((there * parts * amount) / 40) / parts);

const taken = (shop: Shop, from: string, to: string | undefined, good: Good, quantity: number): void => {
  change(shop, from, good, -quantity);
  if (to !== undefined) change(shop, to, good, quantity);
};

/** Goods that can be taken by one kind of row, and where from. */
const takeable = (shop: Shop, what: number): readonly (readonly [place: string, good: Good])[] => {
  const places = shop.places.filter((place) => (what === 5 || what === 6 ? place === "rack" : what !== 7 || place !== "rack"));
  const goods: readonly Good[] = what === 10 ? [STICK] : [...GOODS, OFFCUT];
  return places.flatMap((place) => goods.filter((good) => freeAt(shop, place, good) > 0).map((good) => [place, good] as const));
};

const goodsRow = (shop: Shop, made: Step): void => {
  const { what, place, other, amount, of } = made;
  const date = dayText(shop.day);
  const all = takeable(shop, what);
  const [from, good] = all[(place * 7 + of) % Math.max(1, all.length)] ?? [];
  if (from === undefined || good === undefined) return;
  const there = freeAt(shop, from, good);
  const quantity = part(there, amount, good);
  const goods = { date, item: good.item, quantity, unit: good.unit };
  if (what === 5 || what === 6) {
    const to = shop.places[1 + (other % (shop.places.length - 1))]!;
    taken(shop, from, to, good, quantity);
    shop.rows.push({ ...goods, kind: "issue", job: to });
  } else if (what === 7) {
    const to = shop.places[other]!;
    if (to === from) return;
    taken(shop, from, to, good, quantity);
    shop.rows.push({ ...goods, kind: "transfer", job: from, to });
  } else if (what === 8) {
    // A cent for one is less than anything here stands at.
    taken(shop, from, undefined, good, quantity);
    shop.rows.push({ ...goods, kind: "return", ...placeName(from), cost: Math.max(0.01, Math.floor(quantity) / 100) });
  } else if (what === 9) {
    if (from === "rack") taken(shop, from, undefined, good, quantity);
    else shop.spoiled.set(keyOf(from, good), (shop.spoiled.get(keyOf(from, good)) ?? 0) + quantity);
    shop.rows.push({ ...goods, kind: "scrap", ...placeName(from) });
  } else if (what === 10 && good === STICK) {
    const share = SHARES[of % SHARES.length]!;
    const offcuts = Math.floor(there / share);
    if (offcuts < 1) return;
    const many = 1 + (amount % offcuts);
    change(shop, from, good, -many * share);
    change(shop, "rack", OFFCUT, many);
    shop.rows.push({
      date, kind: "offcut", ...placeName(from), item: OFFCUT.item, quantity: many, unit: "each", to: "rack", of: good.item, share,
    });
  }
};

const count = (shop: Shop, { amount }: Step, good: Good): void => {
  const there = heldAt(shop, "rack", good);
  if (there <= 0) return;
  const counted = amount % 4 === 0 ? there : Math.max(0, Math.floor(there) + (amount % 5) - 2);
  shop.held.set(keyOf("rack", good), counted);
  shop.rows.push({
    date: dayText(shop.day), kind: "count", item: good.item, quantity: counted === 0 ? "none" : counted, unit: good.unit,
  });
  // What is counted is what there is at the close of the day.
  shop.day += 1;
};

const opened = (shop: Shop, { place, amount, cents }: Step, good: Good): void => {
  const to = shop.places[place]!;
  change(shop, to, good, quantityOf(good, amount));
  shop.rows.push({
    date: dayText(FIRST_DAY - 1), kind: "opening", ...placeName(to), item: good.item, quantity: quantityOf(good, amount), unit: good.unit,
    cost: money(cents + amount * 100),
  });
};

const shopOf = (jobs: readonly string[], openings: readonly Step[], steps: readonly Step[]): readonly TypedMove[] => {
  const shop: Shop = {
    places: ["rack", "shop", ...jobs], rows: [], held: new Map(), spoiled: new Map(), invoices: [], papers: new Map(), day: FIRST_DAY,
  };
  for (const made of openings) opened(shop, made, GOODS[made.good]!);
  for (const made of steps) {
    shop.day += made.days;
    const good: Good = made.of === 9 ? OFFCUT : GOODS[made.good]!;
    if (made.what <= 1) purchase(shop, made, GOODS[made.good]!);
    else if (made.what <= 4) charge(shop, made);
    else if (made.what === 11) count(shop, made, good);
    else goodsRow(shop, made);
  }
  const totals = [...shop.papers.values()].map(({ name, date, cents }): TypedMove => ({
    date, kind: "invoice total", invoice: name, cost: money(cents),
  }));
  return [...shop.rows, ...totals];
};

interface Days {
  readonly jobs: readonly string[];
  readonly fewest: number;
  readonly most: number;
  /** Longest pause between two steps, in days. */
  readonly pause: number;
}

const shopOver = ({ jobs, fewest, most, pause }: Days): fc.Arbitrary<readonly TypedMove[]> => {
  const step = stepAt(jobs.length + 2, pause);
  return fc
    .tuple(fc.array(step, { maxLength: 4 }), fc.array(step, { minLength: fewest, maxLength: most, size: "max" }), step)
    .map(([openings, steps, last]) => shopOf(jobs, openings, [{ ...last, what: 0 }, ...steps]));
};

/** Rows of a valid shop of several months, by day; each row is one a person could have typed. */
export const randomMoves: fc.Arbitrary<readonly TypedMove[]> = shopOver({ jobs: JOBS, fewest: 1, most: 60, pause: 4 });

/** A year of a shop with so many jobs: steps of half a day on average, some of which leave no row. */
export const randomYear = (jobs: readonly string[]): fc.Arbitrary<readonly TypedMove[]> =>
  shopOver({ jobs, fewest: 500, most: 700, pause: 1 });

/** How often each kind is met in some shops: a law over rows that never come is none. */
export const kindsMet = (shops: readonly (readonly TypedMove[])[]): ReadonlyMap<MoveKind, number> =>
  new Map(MOVE_KINDS.map((kind) => [kind, shops.flat().filter((move) => move.kind === kind).length]));
