import { type BadRow, besideBadRows, isBadRow } from "../bad-row";
import { goodsKey, LABOUR } from "../goods/goods-key";
import { EACH, goodsUnit, isTime } from "../goods/goods-unit";
import { blankNote, INCLUDED, isIncluded } from "../goods/meant-nothing";
import { joinedNotes, suspectNote } from "../goods/near-names";
import {
  amountFor,
  figuresFor,
  isListed,
  type Listed,
  listedFigure,
  type NoFigure,
  notListed,
  type PerUnitList,
  type Wanted,
} from "../goods/per-unit-list";
import { Exact, exact } from "../length/exact";
import { type Problem, problem } from "../problem";
import { cents } from "./cents";

export interface Quantity {
  readonly item: string | number;
  /** A return is negative. Absent: 0 or empty, which a host may not tell apart. 0: none, in words. */
  readonly quantity?: number;
  /** As hours give it: `included` says that a quantity of 0 is meant. */
  readonly hoursEach?: string | number;
  readonly unit: string;
  readonly row: number;
}

export interface Price {
  readonly item: string | number;
  /** Absent: 0 or empty, which a host may not tell apart. 0: included elsewhere, in words. */
  readonly price?: Exact;
  /** Empty: the price fits any unit. */
  readonly unit: string;
  readonly row: number;
}

export type NoPrice = NoFigure | "no-hourly-price" | "two-hourly-prices";

/** A quantity with its price and cost, or with what is wrong with it. */
export interface ExtendedRow<Bad> {
  readonly item: string | number;
  readonly quantity?: number;
  readonly unit?: string;
  readonly price?: Exact | typeof INCLUDED;
  readonly cost?: Exact;
  readonly note?: string;
  readonly bad?: Bad | Problem<NoPrice>;
}

const isProblemOf = (found: unknown, code: NoPrice): boolean =>
  typeof found === "object" && found !== null && "problem" in found && found.problem === code;

/** What an hour costs: an item's own price for time, or the price of labour; a price without a unit may be meant for either. */
const priceOfTime = <Bad>(list: PerUnitList<Bad>, wanted: Wanted): Listed | Problem<NoPrice> | Bad | undefined => {
  const own = listedFigure(list, wanted);
  if (goodsKey(wanted.item) === LABOUR) return own;
  const labour = listedFigure(list, { ...wanted, item: LABOUR });
  if (own === undefined || isProblemOf(own, "not-in-unit")) return labour ?? own;
  if (!isListed(own) || own.unit !== undefined || !isListed(labour) || labour.figure.eq(own.figure)) return own;
  return problem("two-hourly-prices", { item: String(wanted.item), own: own.figure.toString(), labour: labour.figure.toString() });
};

/** The price of one unit of an item; an hour without a price of its own costs what `labour` costs. */
const unitPrice = <Bad>(list: PerUnitList<Bad>, wanted: Wanted): Listed | Problem<NoPrice> | Bad => {
  const isOfTime = wanted.unit !== "" && isTime(goodsUnit(wanted.unit));
  const found = isOfTime ? priceOfTime(list, wanted) : listedFigure(list, wanted);
  if (found !== undefined) return found;
  const missing = notListed(list, wanted.item);
  return isOfTime && isProblemOf(missing, "not-listed") ? problem("no-hourly-price", { item: String(wanted.item) }) : missing;
};

const NOTHING = new Exact(0);

const noteOfNothing = (quantity: number | undefined, { isBlank }: Listed): string =>
  blankNote([...(quantity === undefined ? ["quantity"] : []), ...(isBlank ? ["price"] : [])], false, "costs nothing here");

/**
 * Every quantity times its price, to the cent, row by row; what is included says so in place of its price; a row without a price or that
 * could not be read keeps its reason.
 */
export const extension = <Bad>(
  quantities: readonly (Quantity | BadRow<Bad>)[],
  prices: readonly (Price | BadRow<Bad>)[],
): readonly ExtendedRow<Bad>[] => {
  const figures = prices.map((row) => (isBadRow(row) ? row : { ...row, figure: row.price ?? NOTHING, isBlank: row.price === undefined }));
  const { list, near, isOfPieces } = figuresFor(quantities, figures, "prices");
  const extended = (row: Quantity): ExtendedRow<Bad> => {
    const { item, quantity, unit } = row;
    const found = unitPrice(list, { ...row, isOfPieces });
    if (!isListed(found)) return { item, quantity: quantity ?? 0, unit, bad: found };
    const isMeant = quantity === 0 || (quantity === undefined && isIncluded(row.hoursEach)) || (found.figure.isZero() && !found.isBlank);
    return {
      item,
      quantity: quantity ?? 0,
      unit: unit || (found.unit === undefined ? "" : EACH.name),
      price: isMeant ? INCLUDED : amountFor(found.figure, unit, found),
      cost: cents(amountFor(exact(quantity ?? 0).times(found.figure), unit, found)),
      note: joinedNotes(isMeant ? "" : noteOfNothing(quantity, found), suspectNote(near(item))),
    };
  };
  return besideBadRows(quantities, (good) => good.map(extended), ({ label, bad }) => ({ item: label, bad }));
};
