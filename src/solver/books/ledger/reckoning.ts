import { shareInCents } from "../../bid/cents";
import type { Exact } from "../../length/exact";
import { isProblem, problem } from "../../problem";
import { dayText } from "../day";
import { type Article, counted, cutFrom, moneyText, quantityText } from "./article";
import { type Charge, chargedOn, namedShares, type PurchaseLine } from "./charges";
import { isLess, type LedgerLine, type Posted, type Posting } from "./ledger-line";
import type { MaybeMove } from "./move";
import type { Ends, Fault } from "./own-fault";
import { type Place, PRICE_DIFFERENCES, RACK, SHRINKAGE, WASTE } from "./place";
import {
  atAverage, change, holds, isAll, least, negated, NOTHING, openedStock, type Part, type Stock, stockAt, type Stocks, ZERO,
} from "./stock";

/** A row with all it is about. */
export interface Row {
  readonly move: MaybeMove<unknown>;
  readonly ends: Ends;
  readonly article: Article | undefined;
  readonly of: Article | undefined;
  /** The quantity without its sign, in the article's measure. */
  readonly quantity: Exact;
}

/** What a row does, short of the facts every line has. */
export type Reckoned = Partial<Pick<LedgerLine<unknown>, "from" | "to" | "charges" | "value" | "note" | "scrapped" | "cost">> & {
  readonly postings: readonly Posting[];
};

/** Names like one that is short, for its sentence. */
export type Hint = (article: Article) => string;

export interface Books {
  readonly stocks: Stocks;
  readonly hint: Hint;
  /** Row and place of the first move of an item at a place, for openings that come too late. */
  readonly firstMoved: Map<Stock, number>;
}

const quantityTaken = (article: Article, { quantity }: Part): string => quantityText(article, quantity);

const WHERE: Readonly<Record<Place["kind"], (place: Place) => string>> = {
  rack: () => "on the rack",
  shop: () => "in the shop",
  job: ({ name }) => `at ${String(name)}`,
  waste: ({ name }) => String(name),
  shrinkage: ({ name }) => String(name),
  "price differences": ({ name }) => String(name),
};

export const whereText = (place: Place): string => WHERE[place.kind](place);

/** Puts a part into a place, or takes it out, and says so as a posting; what the charges truly change by is known only then. */
const posted = (stock: Stock, column: Posted, part: Part, isOut: boolean): Posting => {
  const before = stock.charges;
  change(stock, part, isOut);
  const { place, article } = stock;
  const charges = stock.charges === before ? ZERO : stock.charges.minus(before);
  return { place, article, column, quantity: part.quantity, value: part.value, charges };
};

const ofMoney = (place: Place, column: Posted, value: Exact): Posting => ({ place, column, quantity: ZERO, value, charges: ZERO });

const moved = (stock: Stock, { row }: MaybeMove<unknown>, { firstMoved }: Books): Stock => {
  if (!stock.hasMoved) firstMoved.set(stock, row);
  stock.hasMoved = true;
  return stock;
};

const notOnHand = (stock: Part | undefined, place: Place, article: Article, wanted: Exact, act: string, row: Row, books: Books): Fault =>
  problem("not-on-hand", {
    column: "quantity",
    item: String(article.name),
    wanted: quantityText(article, wanted),
    act,
    date: dayText(row.move.day),
    there: quantityText(article, stock?.quantity ?? ZERO),
    place: whereText(place),
    near: books.hint(article),
  });

/** The stock a row takes so many from, or that there are not so many. */
const taken = (place: Place, article: Article, wanted: Exact, act: string, row: Row, books: Books): Stock | Fault => {
  const stock = stockAt(books.stocks, place, article);
  return stock === undefined || !holds(stock, wanted) ? notOnHand(stock, place, article, wanted, act, row, books) : stock;
};

const goodsOf = ({ article }: Row): Article => article!;

const opening = (row: Row, books: Books): Reckoned | Fault => {
  const { move, ends: { to = RACK }, quantity } = row;
  const article = goodsOf(row);
  const stock = openedStock(books.stocks, to, article);
  if (stock.hasMoved) {
    return problem("opening-after-move", {
      item: String(article.name),
      date: dayText(move.day),
      first: books.firstMoved.get(stock) ?? 0,
      place: whereText(to),
    });
  }
  const value = move.cost ?? ZERO;
  return { postings: [posted(stock, "opening", { quantity, value, charges: ZERO }, false)], value };
};

const purchase = (row: Row, line: PurchaseLine, books: Books): Reckoned => {
  const { move, quantity } = row;
  const stock = moved(openedStock(books.stocks, line.place, line.article), move, books);
  const { freight, tax, credit } = line.shares;
  const value = line.cost.plus(freight).plus(tax).minus(credit);
  const postings = [
    posted(stock, "bought", { quantity, value: line.cost, charges: ZERO }, false),
    ...([["freight", freight], ["tax", tax], ["credited", credit]] as const)
      .filter(([, amount]) => !amount.isZero())
      .map(([column, amount]) => posted(stock, column, { quantity: ZERO, value: amount, charges: amount }, isLess(column))),
  ];
  return { postings, charges: value.minus(line.cost), value };
};

const returned = (row: Row, books: Books): Reckoned | Fault => {
  const { move, ends: { from = RACK }, quantity } = row;
  const article = goodsOf(row);
  const there = stockAt(books.stocks, from, article);
  const facts = { item: String(article.name), place: whereText(from) };
  if (there === undefined) {
    const what = `${quantityText(article, quantity)} of ${facts.item} to take back`;
    return problem("never-there", { ...facts, what, was: "was never any", near: books.hint(article) });
  }
  const stock = taken(from, article, quantity, "return", row, books);
  if (isProblem(stock)) return stock;
  const value = (move.cost ?? ZERO).abs();
  if (value.gt(stock.value))
    return problem("credited-too-much", { ...facts, cost: moneyText(value), value: moneyText(stock.value) });
  moved(stock, move, books);
  const isLast = isAll(stock, quantity);
  const residue = isLast ? stock.value.minus(value) : ZERO;
  const charges = isLast ? stock.charges : ZERO;
  const postings = [posted(stock, "returned", { quantity: isLast ? stock.quantity : quantity, value, charges }, true)];
  if (residue.isZero()) return { postings, value };
  return {
    postings: [
      ...postings,
      posted(stock, "out", { quantity: ZERO, value: residue, charges: ZERO }, true),
      ofMoney(PRICE_DIFFERENCES, "in", residue),
    ],
    value,
    note: `none left: ${moneyText(residue)} to price differences`,
  };
};

const scrappedNote = (stock: Stock): string =>
  stock.quantity.lt(stock.scrapped)
    ? `${quantityText(stock.article, stock.scrapped)} scrapped ${whereText(stock.place)} and ${quantityTaken(stock.article, stock)} left`
    : "";

const carried = (row: Row, act: string, books: Books): Reckoned | Fault => {
  const { move, ends: { from = RACK, to = RACK }, quantity } = row;
  const article = goodsOf(row);
  const stock = taken(from, article, quantity, act, row, books);
  if (isProblem(stock)) return stock;
  moved(stock, move, books);
  const part = atAverage(stock, quantity);
  const there = moved(openedStock(books.stocks, to, article), move, books);
  const postings = [posted(stock, "out", part, true), posted(there, "in", part, false)];
  return { postings, charges: part.charges, value: part.value, note: scrappedNote(stock) };
};

const scrap = (row: Row, books: Books): Reckoned | Fault => {
  const { move, ends: { from = RACK }, quantity } = row;
  const article = goodsOf(row);
  const stock = taken(from, article, quantity, "scrap", row, books);
  if (isProblem(stock)) return stock;
  moved(stock, move, books);
  const part = atAverage(stock, quantity);
  if (from.kind === "rack") {
    const postings = [posted(stock, "out", part, true), ofMoney(WASTE, "in", part.value)];
    return { postings, to: WASTE, charges: part.charges, value: part.value };
  }
  stock.scrapped = stock.scrapped.plus(quantity);
  const note = scrappedNote(stock);
  return {
    postings: [],
    to: from,
    value: part.value,
    scrapped: { place: from, article, quantity, value: part.value },
    note: `stays in the cost of ${from.kind === "shop" ? "the shop" : "the job"}${note === "" ? "" : `; ${note}`}`,
  };
};

const offcut = (row: Row, books: Books): Reckoned | Fault => {
  const { move, ends: { from = RACK, to = RACK }, of, quantity } = row;
  const article = goodsOf(row);
  if (of === undefined) {
    return problem("not-on-hand", {
      column: "of", item: String(move.of),
      wanted: "some", act: "cut offcuts from", date: dayText(move.day), there: "none", place: whereText(from),
      near: "",
    });
  }
  const wanted = cutFrom(of, article, quantity, move.share ?? 0);
  const stock = taken(from, of, wanted, "cut offcuts from", row, books);
  if (isProblem(stock)) return stock;
  const part = atAverage(stock, wanted);
  const worth = move.cost === undefined ? part.value : move.cost;
  if (worth.gt(part.value))
    return problem("offcut-costs-more", { of: String(of.name), cost: moneyText(worth), value: moneyText(part.value) });
  moved(stock, move, books);
  const charges = worth.eq(part.value) ? part.charges : shareInCents(part.charges, worth, part.value);
  const isLast = isAll(stock, wanted);
  const kept = isLast ? stock.value.minus(worth) : ZERO;
  const there = moved(openedStock(books.stocks, to, article), move, books);
  const postings = [
    posted(stock, "out", { quantity: part.quantity, value: worth, charges }, true),
    ...(kept.isZero()
      ? []
      : [
          posted(stock, "out", { quantity: ZERO, value: kept, charges: stock.charges }, true),
          ofMoney(PRICE_DIFFERENCES, "in", kept),
        ]),
    posted(there, "in", { quantity, value: worth, charges }, false),
  ];
  const share = `${counted(of, part.quantity).toFixed(3)} of ${String(of.name)}`;
  const rest = kept.isZero() ? "" : `; none left: ${moneyText(kept)} to price differences`;
  return { postings, charges, value: worth, note: `${share}${rest}` };
};

/** Counts of one item on one day: they add up, and are reckoned at the last of them. */
export interface CountOfDay {
  readonly rows: readonly number[];
  readonly total: Exact;
}

const count = (row: Row, { rows, total }: CountOfDay, books: Books): Reckoned | Fault => {
  const { move } = row;
  const article = goodsOf(row);
  const stock = stockAt(books.stocks, RACK, article);
  if (stock === undefined) return problem("never-bought", { item: String(article.name), near: books.hint(article) });
  const last = rows[rows.length - 1];
  if (last !== move.row) return { postings: [], note: `counted with row ${last ?? 0}` };
  moved(stock, move, books);
  const book = stock.quantity;
  const over = total.minus(book);
  const isOver = over.gt(0) && !isAll(stock, total);
  const short = isOver ? over : over.isNegative() && !isAll(stock, total) ? over.negated() : ZERO;
  // Over what the books have none of: worth what the last ones were.
  const worth = isOver && book.isZero() ? stock.last : stock;
  const part = short.isZero() ? NOTHING : isOver ? valued(worth, short) : atAverage(stock, short);
  const signed = isOver ? negated(part) : part;
  const postings = short.isZero()
    ? []
    : [{ ...posted(stock, "out", signed, true), isShort: true as const }, ofMoney(SHRINKAGE, "in", signed.value)];
  const said = `book ${quantityText(article, book)}, ${isOver ? "over" : "short"} ${quantityText(article, short)}`;
  const several = rows.length > 1 ? `counted ${quantityText(article, total)} in ${rows.length} rows, ` : "";
  return { postings, value: signed.value, note: `${several}${said}`, ...(short.isZero() ? {} : { to: SHRINKAGE }) };
};

/** So many more at what others are worth each. */
const valued = ({ quantity, value, charges }: Part, more: Exact): Part => {
  const share = (amount: Exact): Exact => (quantity.isZero() ? ZERO : shareInCents(amount, more, quantity));
  return { quantity: more, value: share(value), charges: share(charges) };
};

/** What one job sold to a dealer lowers the cost of its goods. */
const scrapSold = (row: Row, books: Books): Reckoned | Fault => {
  const { move, ends: { from = RACK } } = row;
  const { article } = row;
  const value = move.cost ?? ZERO;
  const stock = article === undefined ? undefined : stockAt(books.stocks, from, article);
  const facts = { item: String(article?.name ?? move.item), place: whereText(from), near: "" };
  if (stock === undefined || stock.quantity.isZero())
    return problem("never-there", { ...facts, what: `${moneyText(value)} credited on ${facts.item}`, was: "is none" });
  if (value.gt(stock.value)) return problem("credited-too-much", { ...facts, cost: moneyText(value), value: moneyText(stock.value) });
  return { postings: [posted(moved(stock, move, books), "credited", { quantity: ZERO, value, charges: value }, true)], value };
};

const COLUMN_OF = { freight: "freight", tax: "tax", credit: "credited" } as const;

/** A late share goes to what is left of the goods, as far as it can; the rest is a difference of the later month. */
const lateShare = (charge: Charge, index: number, books: Books): { readonly postings: readonly Posting[]; readonly says: string } => {
  const { article, place, bought, amount } = charge.late[index]!;
  const isCredit = charge.kind === "credit";
  const column = COLUMN_OF[charge.kind];
  const stock = openedStock(books.stocks, place, article);
  const left = place.kind === "rack" ? least(stock.quantity, bought) : bought;
  const whole = stock.quantity.isZero() ? ZERO : left.eq(bought) ? amount : shareInCents(amount, left, bought);
  // Nothing is worth less than nothing: a credit stops there.
  const isLowering = isCredit ? whole.gt(0) : whole.isNegative();
  const part = isLowering && whole.abs().gt(stock.value) ? (isCredit ? stock.value : stock.value.negated()) : whole;
  const rest = amount.minus(part);
  const postings = [
    ...(part.isZero() ? [] : [posted(stock, column, { quantity: ZERO, value: part, charges: part }, isCredit)]),
    ...(rest.isZero() ? [] : [ofMoney(PRICE_DIFFERENCES, column, rest)]),
  ];
  const own = `${String(place.name)} ${String(article.name)} ${moneyText(part)}`;
  return { postings, says: rest.isZero() ? own : `${own}, price differences ${moneyText(rest)}` };
};

const charged = (charge: Charge, books: Books): Reckoned => {
  const late = charge.late.map((_, index) => lateShare(charge, index, books));
  const on = chargedOn(charge);
  const now = charge.now.length === 0 ? "" : `on ${on}: ${namedShares(charge.now, ", ")}`;
  const later = late.length === 0 ? "" : `late for ${on}: ${namedShares(late.map(({ says }) => says), "; ")}`;
  const amount = charge.late.reduce((total, share) => total.plus(share.amount), ZERO);
  return {
    postings: late.flatMap(({ postings }) => postings),
    note: [now, later].filter((text) => text !== "").join("; "),
    ...(late.length === 0 ? {} : { value: amount }),
  };
};

/** What other rows say of one: its line of the invoice, its shares, its count. */
export interface Beside {
  readonly line: PurchaseLine | undefined;
  readonly charge: Charge | undefined;
  readonly count: CountOfDay | undefined;
  readonly total: string | Fault | undefined;
}

/** What a row does to the books, or why it cannot be. */
export const reckoned = (row: Row, { line, charge, count: counts, total }: Beside, books: Books): Reckoned | Fault => {
  if (charge !== undefined) return charged(charge, books);
  if (line !== undefined) return purchase(row, line, books);
  if (total !== undefined) return typeof total === "string" ? { postings: [], note: total } : total;
  switch (row.move.kind) {
    case "opening":
      return opening(row, books);
    case "return":
    case "purchase":
      return returned(row, books);
    case "issue":
    case "transfer":
      return carried(row, row.move.kind, books);
    case "scrap":
      return scrap(row, books);
    case "offcut":
      return offcut(row, books);
    case "count":
      return counts === undefined ? { postings: [] } : count(row, counts, books);
    default:
      return scrapSold(row, books);
  }
};

