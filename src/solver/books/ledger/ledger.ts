import { goodsKey } from "../../goods/goods-key";
import { type NearName, nearNames } from "../../goods/near-names";
import { Exact } from "../../length/exact";
import { isProblem, problem } from "../../problem";
import { monthText } from "../day";
import { type Article, type Articles, articlesOf, measured } from "./article";
import { type Charge, invoiceKey, type PurchaseLine, sharedCharges } from "./charges";
import { invoiceTotals } from "./invoice-totals";
import type { LedgerLine } from "./ledger-line";
import { inOrder, isCharge, isReturned, type MaybeMove, type MoveRow, type Name } from "./move";
import { nameHint } from "./name-hint";
import { endsOf, type Fault, ownFault } from "./own-fault";
import { type Place, type PlaceOf, places, RACK } from "./place";
import { type Books, type CountOfDay, reckoned, type Reckoned, type Row } from "./reckoning";
import { openedStock, stockAt, type Stocks, ZERO } from "./stock";

/** The books: every row in the order it was reckoned in, and what the tables of them need besides. */
export interface Ledger<Bad> {
  readonly lines: readonly LedgerLine<Bad>[];
  readonly articles: Articles;
  /** A name of goods, or of a job, that may mean the same as another. */
  readonly nearGoods: NearName;
  readonly nearJob: NearName;
}

interface Read<Bad> extends Row {
  readonly move: MaybeMove<Bad>;
  readonly fault: Fault | undefined;
}

const NO_AMOUNT = new Exact(0);

const articleNamed = (articles: Articles, name: Name | undefined): Article | undefined =>
  name === undefined ? undefined : articles.get(goodsKey(name));

const read = <Bad>(move: MaybeMove<Bad>, articles: Articles, placeOf: PlaceOf): Read<Bad> => {
  const ends = endsOf(move, placeOf);
  const article = articleNamed(articles, move.item);
  const amount = article === undefined ? NO_AMOUNT : measured(article, move.quantity ?? 0, move.unit);
  const fault =
    move.unread === undefined
      ? ownFault(move, ends, placeOf, articles, amount !== undefined)
      : problem("after-bad-row", { item: String(move.item ?? move.kind ?? ""), first: move.row });
  const quantity = amount?.isNegative() === true ? amount.abs() : (amount ?? NO_AMOUNT);
  return { move, ends, article, of: articleNamed(articles, move.of), quantity, fault };
};

const purchaseLine = ({ move, ends, article, quantity, fault }: Read<unknown>): PurchaseLine | undefined => {
  if (move.kind !== "purchase" || isReturned(move) || article === undefined || ends.to === undefined) return undefined;
  return {
    row: move.row,
    day: move.day,
    month: monthText(move.day),
    article,
    place: ends.to,
    quantity,
    cost: move.cost ?? ZERO,
    invoice: invoiceKey(move.invoice),
    invoiceName: move.invoice,
    shares: { freight: ZERO, tax: ZERO, credit: ZERO },
    ...(fault === undefined ? {} : { badRow: move.row }),
  };
};

const countsOfDays = (rows: readonly Read<unknown>[]): ReadonlyMap<string, CountOfDay> => {
  const counts = new Map<string, { readonly rows: number[]; total: Exact }>();
  for (const { move, article, quantity } of rows) {
    if (move.kind !== "count" || article === undefined) continue;
    const key = `${move.day}\n${article.key}`;
    const ofDay = counts.get(key) ?? { rows: [], total: ZERO };
    ofDay.rows.push(move.row);
    ofDay.total = ofDay.total.plus(quantity);
    counts.set(key, ofDay);
  }
  return counts;
};

/** Which goods a wrong row makes uncertain, and which are: nothing after it is right there. */
interface Doubts {
  readonly spread: (row: Read<unknown>, badRow: number, charge: Charge | undefined) => void;
  readonly find: (row: Row, charge: Charge | undefined) => number | undefined;
}

const doubts = (stocks: Stocks): Doubts => {
  let isAnyWrong = false;
  /** Items of rows that do not even say where they are. */
  const everywhere = new Map<string, number>();
  const touched = ({ ends: { from, to }, article, of, move }: Row): readonly (readonly [Place, Article])[] => {
    if (article === undefined) return [];
    if (move.kind === "count") return [[RACK, article]];
    const taken = move.kind === "offcut" && of !== undefined ? of : article;
    return [...(from === undefined ? [] : [[from, taken] as const]), ...(to === undefined ? [] : [[to, article] as const])];
  };
  const latelyTouched = (charge: Charge | undefined): readonly (readonly [Place, Article])[] => {
    const month = charge === undefined ? "" : monthText(charge.move.day);
    return (charge?.groups ?? []).filter((group) => group.month !== month).map(({ place, article }) => [place, article] as const);
  };
  return {
    spread: (row, badRow, charge) => {
      isAnyWrong = true;
      const { move: { kind }, article: unplaced, fault } = row;
      const isAnywhere = kind === undefined || fault?.problem === "marks-alone";
      if (isAnywhere && unplaced !== undefined && !everywhere.has(unplaced.key)) everywhere.set(unplaced.key, badRow);
      for (const [place, article] of [...touched(row), ...latelyTouched(charge)]) {
        const stock = openedStock(stocks, place, article);
        stock.badRow ??= badRow;
        stock.hasMoved = true;
      }
    },
    find: (row, charge) => {
      if (!isAnyWrong) return undefined;
      for (const [place, article] of [...touched(row), ...latelyTouched(charge)]) {
        const bad = stockAt(stocks, place, article)?.badRow ?? everywhere.get(article.key);
        if (bad !== undefined) return bad;
      }
      return undefined;
    },
  };
};

const factsOf = <Bad>({ move, ends, article, quantity }: Read<Bad>): Omit<LedgerLine<Bad>, "note" | "postings"> => ({
  move,
  kind: move.kind === "purchase" && isReturned(move) ? "return" : (move.kind ?? ""),
  ...(article === undefined ? {} : { article }),
  ...(ends.from === undefined ? {} : { from: ends.from }),
  ...(ends.to === undefined ? {} : { to: ends.to }),
  ...(move.quantity === undefined ? {} : { quantity }),
  ...(move.cost === undefined ? {} : { cost: isReturned(move) ? move.cost.abs() : move.cost }),
});

const badLine = <Bad>(row: Read<Bad>, bad: Bad | Fault): LedgerLine<Bad> => {
  // Its money shows the error.
  const { cost: _cost, ...facts } = factsOf(row);
  return { ...facts, note: "", postings: [], bad };
};

const goodLine = <Bad>(row: Read<Bad>, { postings, note = "", ...found }: Reckoned, stocks: Stocks): LedgerLine<Bad> => {
  const rack = row.article === undefined || isCharge(row.move) ? undefined : stockAt(stocks, RACK, row.article);
  return {
    ...factsOf(row),
    ...found,
    ...(rack === undefined ? {} : { onTheRack: rack.quantity, rackValue: rack.value }),
    note,
    postings,
  };
};

/** Thousands of rows ask about the same names. */
const nearIn = (names: readonly { readonly name: Name; readonly row: number }[]): NearName => {
  const find = nearNames(names.map(({ name, row }) => ({ item: name, row })));
  const found = new Map<Name, ReturnType<NearName>>();
  return (name) => {
    if (!found.has(name)) found.set(name, find(name));
    return found.get(name);
  };
};

const jobsIn = (rows: readonly Read<unknown>[]): readonly { readonly name: Name; readonly row: number }[] => {
  const jobs = new Map<string, { readonly name: Name; readonly row: number }>();
  for (const { ends, move } of rows) {
    for (const place of [ends.from, ends.to])
      if (place?.kind === "job" && !jobs.has(place.key)) jobs.set(place.key, { name: place.name, row: move.row });
  }
  return [...jobs.values()];
};

/**
 * The books of a shop from its moves: a moving weighted average for each item at each place, charges with their goods, every row in cents.
 * Rows dated after a month change nothing of it. A row that cannot be is there with what is wrong with it, and so is all that follows
 * from it.
 */
export const ledger = <Bad>(moves: readonly MoveRow<Bad>[]): Ledger<Bad> => {
  const ordered = inOrder(moves);
  const articles = articlesOf(ordered);
  const placeOf = places();
  const rows = ordered.map((move) => read(move, articles, placeOf));
  const lines = new Map(rows.flatMap((row) => {
    const line = purchaseLine(row);
    return line === undefined ? [] : [[row.move.row, line] as const];
  }));
  const faults = new Map(rows.map(({ move, fault }) => [move.row, fault]));
  const charges = sharedCharges(
    rows.filter(({ move }) => isCharge(move)).map(({ move }) => move), [...lines.values()], ({ row }) => faults.get(row),
    ({ job }) => (job === undefined ? undefined : placeOf(job)),
  );
  const counts = countsOfDays(rows);
  const totals = invoiceTotals(rows);
  const stocks: Stocks = new Map();
  const nearGoods = nearIn([...articles.values()]);
  const books: Books = { stocks, hint: nameHint([...articles.values()], nearGoods), firstMoved: new Map() };
  const uncertain = doubts(stocks);
  const reckonedLine = (row: Read<Bad>): LedgerLine<Bad> => {
    const { move, article } = row;
    const [line, charge] = [lines.get(move.row), charges.get(move.row)];
    const follows = (first: number): Fault => problem("after-bad-row", { item: String(article?.name ?? move.kind ?? ""), first });
    const before = line?.badRow ?? uncertain.find(row, charge);
    const found =
      row.fault ??
      charge?.fault ??
      (before === undefined
        ? reckoned(row, { line, charge, count: counts.get(`${move.day}\n${article?.key ?? ""}`), total: totals.get(move.row) }, books)
        : follows(before));
    if (!isProblem(found)) return goodLine(row, found, stocks);
    const { details } = found;
    uncertain.spread(row, found.problem === "after-bad-row" ? Number(details["first"]) : move.row, charge);
    return badLine(row, move.unread ?? found);
  };
  return { lines: rows.map(reckonedLine), articles, nearGoods, nearJob: nearIn(jobsIn(rows)) };
};
