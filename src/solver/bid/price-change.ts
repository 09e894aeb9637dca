import { goodsKey } from "../goods/goods-key";
import { EACH, type GoodsUnit, converted, goodsUnit, isConvertible } from "../goods/goods-unit";
import { type NearName, nearNames, suspectNote } from "../goods/near-names";
import { Exact, exact } from "../length/exact";
import { isProblem, type Problem } from "../problem";
import { bidFigures, type BidLabel, costsOfBid, type NoBid, termsOf } from "./bid";
import { cents } from "./cents";
import { type Cost, directCosts, kindOf } from "./cost";
import type { Terms } from "./terms";

/** A cost with how many of it there are, where it says so. */
export interface CountedCost extends Cost {
  readonly quantity?: number;
}

export type Cause =
  | "price before" | "quantity" | "price" | "cost" | "new" | "dropped"
  | "tax paid on materials" | "burden" | "contingency" | "overhead" | "profit" | "rounding"
  | "price after" | "tax before" | "tax" | "total after";

export interface ChangeRow {
  readonly cause: Cause;
  readonly item: string | number;
  readonly amount: Exact;
  readonly note: string;
}

/** One bid of the two. */
export interface PricedBid {
  readonly costs: readonly CountedCost[];
  readonly terms: Terms;
  readonly option: string;
}

const NOTHING = new Exact(0);
const DECIMALS = 4;

const figureText = (figure: Exact): string => figure.toDecimalPlaces(DECIMALS).toString();

/** One item of one part and kind: what it costs, and how many of it there are where every row says so in units that convert. */
interface Goods {
  readonly item: string | number;
  readonly cost: Exact;
  readonly quantity?: Exact;
  readonly unit: GoodsUnit;
}

const isAlike = (one: GoodsUnit, other: GoodsUnit): boolean => isConvertible(one, other);

const unitOf = ({ unit = "" }: Cost): GoodsUnit => (unit === "" ? EACH : goodsUnit(unit));

const added = (known: Goods | undefined, row: CountedCost): Goods => {
  const unit = known?.unit ?? unitOf(row);
  const cost = (known?.cost ?? NOTHING).plus(cents(row.cost ?? NOTHING));
  const before = known === undefined ? NOTHING : known.quantity;
  const isCounted = before !== undefined && row.quantity !== undefined && isAlike(unitOf(row), unit);
  const quantity = isCounted ? before.plus(converted(exact(row.quantity), unitOf(row), unit)) : undefined;
  return { item: known?.item ?? row.item, cost, unit, ...(quantity === undefined ? {} : { quantity }) };
};

const keyOf = (row: Cost): string => [goodsKey(row.part ?? ""), kindOf(row), goodsKey(row.item)].join("\n");

const goodsOf = (costs: readonly CountedCost[]): ReadonlyMap<string, Goods> => {
  const goods = new Map<string, Goods>();
  for (const row of costs) goods.set(keyOf(row), added(goods.get(keyOf(row)), row));
  return goods;
};

const isCounted = (goods: Goods): goods is Goods & { readonly quantity: Exact } =>
  goods.quantity !== undefined && !goods.quantity.isZero();

/**
 * What more or fewer of an item cost, at the mean of its two prices, and what a dearer or cheaper one costs, which is the rest: back again
 * is the same with its sign turned.
 */
const countedChange = (before: Goods, after: Goods): readonly ChangeRow[] | undefined => {
  if (!isCounted(before) || !isCounted(after) || !isAlike(before.unit, after.unit)) return undefined;
  const now = converted(after.quantity, after.unit, before.unit);
  const [priceBefore, priceNow] = [before.cost.div(before.quantity), after.cost.div(now)];
  const byQuantity = cents(now.minus(before.quantity).times(priceBefore.plus(priceNow)).div(2));
  const byPrice = after.cost.minus(before.cost).minus(byQuantity);
  const { item, unit } = before;
  return [
    { cause: "quantity", item, amount: byQuantity, note: `${figureText(before.quantity)}, now ${figureText(now)} ${unit.name}` },
    { cause: "price", item, amount: byPrice, note: `${figureText(priceBefore)}, now ${figureText(priceNow)}` },
  ];
};

const changeOf = (before: Goods | undefined, after: Goods | undefined, near: NearName): readonly ChangeRow[] => {
  const goods = before ?? after;
  if (goods === undefined) return [];
  const { item } = goods;
  if (before === undefined) return [{ cause: "new", item, amount: goods.cost, note: suspectNote(near(item)) }];
  if (after === undefined) return [{ cause: "dropped", item, amount: goods.cost.neg(), note: suspectNote(near(item)) }];
  return countedChange(before, after) ?? [{ cause: "cost", item, amount: after.cost.minus(before.cost), note: "" }];
};

/** Of every item, in the order of the bid before, then of what is new; an item that costs as before has no row. */
const itemChanges = (before: readonly CountedCost[], after: readonly CountedCost[]): readonly ChangeRow[] => {
  const [was, is] = [goodsOf(before), goodsOf(after)];
  const near = nearNames([
    ...before.map(({ item, row }) => ({ item, row, table: "before" })),
    ...after.map(({ item, row }) => ({ item, row, table: "after" })),
  ]);
  return [...new Set([...was.keys(), ...is.keys()])]
    .flatMap((key) => changeOf(was.get(key), is.get(key), near))
    .filter(({ amount }) => !amount.isZero());
};

/** The rows of a bid between its costs and its price. */
const BETWEEN = ["tax paid on materials", "burden", "contingency", "overhead", "profit", "rounding"] as const satisfies readonly BidLabel[];

const termsNote = (label: BidLabel, before: Terms, after: Terms): string => {
  const [was, is] = [termsOf(label, before), termsOf(label, after)];
  return was === is ? "" : `${was || "none"}, now ${is || "none"}`;
};

/**
 * The walk from the price of one bid to the price of another: what each item changed, then each row of the bid between cost and price. All
 * of them are differences of cents, so they sum to the change of the price; the tax follows.
 */
export const priceChange = (before: PricedBid, after: PricedBid): readonly ChangeRow[] | Problem<NoBid> => {
  const was = costsOfBid(before.costs, before.terms, before.option);
  if (isProblem(was)) return was;
  const is = costsOfBid(after.costs, after.terms, after.option);
  if (isProblem(is)) return is;
  const [figures, now] = [bidFigures(directCosts(was), before.terms), bidFigures(directCosts(is), after.terms)];
  const row = (cause: Cause, amount: Exact, note = ""): ChangeRow => ({ cause, item: "", amount, note });
  const changed = (label: (typeof BETWEEN)[number] | "tax"): ChangeRow =>
    row(label, now[label].minus(figures[label]), termsNote(label, before.terms, after.terms));
  return [
    row("price before", figures.price),
    ...itemChanges(was, is),
    ...BETWEEN.map(changed),
    row("price after", now.price),
    row("tax before", figures.tax),
    changed("tax"),
    row("total after", now.total),
  ];
};
