import { goodsKey } from "../../goods/goods-key";
import { type GoodsUnit, goodsUnit, isConvertible } from "../../goods/goods-unit";
import { Exact, exact } from "../../length/exact";
import { isOfGoods, type MaybeMove, type Name } from "./move";

const ONE = new Exact(1);

/** Goods of one name, in the unit they were first counted in. */
export interface Article {
  readonly key: string;
  readonly name: Name;
  /** Undefined where no row gives a unit. */
  readonly unit: GoodsUnit | undefined;
  /** The row that first names it. */
  readonly row: number;
}

export type Articles = ReadonlyMap<string, Article>;

/** The items of the rows in the order of reckoning. */
export const articlesOf = (moves: readonly MaybeMove<unknown>[]): Articles => {
  const found = new Map<string, Article>();
  for (const { item, kind, unit: text, row } of moves) {
    if (item === undefined || !isOfGoods(kind)) continue;
    const key = goodsKey(item);
    const known = found.get(key);
    if (known?.unit !== undefined) continue;
    const unit = text === "" ? undefined : unitOf(text);
    if (known === undefined || unit !== undefined) found.set(key, { ...(known ?? { key, name: item, row }), unit });
  }
  return found;
};

const units = new Map<string, GoodsUnit>();
const MOST_KEPT = 1000;

/** The unit a text names, remembered: thousands of rows name a few. */
export const unitOf = (text: string): GoodsUnit => {
  const unit = units.get(text) ?? goodsUnit(text);
  if (units.size >= MOST_KEPT) units.clear();
  units.set(text, unit);
  return unit;
};

/**
 * A quantity of a row in the smallest measure of its unit (a piece, a millimetre), so that feet and inches are exact beside one another.
 * Undefined where the unit does not convert into that of the item.
 */
export const measured = ({ unit }: Article, quantity: number, text: string): Exact | undefined => {
  if (unit === undefined) return exact(quantity);
  const given = unitOf(text);
  if (!isConvertible(given, unit)) return undefined;
  return given.size.eq(ONE) ? exact(quantity) : exact(quantity).times(given.size);
};

/** A measure in the unit of its item. */
export const counted = ({ unit }: Article, measure: Exact): Exact => 
  unit === undefined || unit.size.eq(ONE) ? measure : measure.div(unit.size);

/** One of an item, in its measure: a piece where pieces are counted, also by the dozen; else one of its unit. */
const oneOf = ({ unit }: Article): Exact => (unit === undefined || unit.measures === "count" ? ONE : unit.size);

/** How much of `of` so many offcuts are, each a share of one. */
export const cutFrom = (of: Article, offcut: Article, offcuts: Exact, share: number): Exact => {
  const part = offcuts.times(exact(share));
  const isAlike = of.unit === undefined || offcut.unit === undefined ? of.unit === offcut.unit : isConvertible(of.unit, offcut.unit);
  return isAlike ? part : part.div(oneOf(offcut)).times(oneOf(of));
};

export const unitName = ({ unit }: Article): string => unit?.name ?? "";

const DECIMALS = 4;

/** A quantity in a sentence: with its unit, unless pieces are counted. */
export const quantityText = (article: Article, measure: Exact): string => {
  const text = counted(article, measure).toDecimalPlaces(DECIMALS).toString();
  return ["", "each"].includes(unitName(article)) ? text : `${text} ${unitName(article)}`;
};

export const moneyText = (amount: Exact): string => amount.toFixed(2);
