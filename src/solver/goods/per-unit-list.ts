import type { Exact } from "../length/exact";
import { type BadRow, goodRows, isBadRow } from "../bad-row";
import { type Problem, problem } from "../problem";
import { goodsKey } from "./goods-key";
import { converted, EACH, type GoodsUnit, goodsUnit, isConvertible } from "./goods-unit";
import { type GoodsName, type NearName, nearNames } from "./near-names";

/** A figure for one unit of an item: its price, or the hours it takes. */
export interface PerUnit extends GoodsName {
  readonly figure: Exact;
  /** Empty: the figure fits any unit of an item that has no other. */
  readonly unit: string;
  /** 0 because the cell was 0 or empty, not because it says so in words. */
  readonly isBlank: boolean;
}

export type NoFigure = "not-listed" | "not-listed-but-near" | "not-in-unit" | "unit-is-empty" | "several-units" | "two-figures";

/** A figure that was found, and the unit it is for; without one it is for any. */
export interface Listed {
  readonly figure: Exact;
  readonly unit: GoodsUnit | undefined;
  readonly unitText: string;
  readonly isBlank: boolean;
}

/** Figures that must agree: the first, and the first that does not. */
interface Agreed {
  readonly first: Listed;
  readonly other?: Listed;
}

interface Item {
  readonly forAnyUnit: Agreed | undefined;
  readonly byUnit: ReadonlyMap<string, Agreed>;
  readonly byMeasure: ReadonlyMap<string, Agreed>;
  readonly unitTexts: readonly string[];
}

export interface PerUnitList<Bad> {
  readonly items: ReadonlyMap<string, Item>;
  readonly unreadable: ReadonlyMap<string, Bad>;
  readonly near: NearName;
}

/** Units that a sentence names. */
const MOST_NAMED = 5;

const isSameFigure = (one: Listed, other: Listed): boolean =>
  one.unit === undefined || other.unit === undefined
    ? one.figure.eq(other.figure)
    : one.figure.times(other.unit.size).eq(other.figure.times(one.unit.size));

const agreed = (before: Agreed | undefined, listed: Listed): Agreed => {
  if (before === undefined) return { first: listed };
  return before.other !== undefined || isSameFigure(before.first, listed) ? before : { ...before, other: listed };
};

const unitKey = (unit: GoodsUnit): string => `${unit.measures} ${unit.size.toString()}`;

/** Figures found by item and unit, whatever the order and the number of the rows. */
const perUnitList = <Bad>(rows: readonly (PerUnit | BadRow<Bad>)[]): PerUnitList<Bad> => {
  const items = new Map<
    string,
    { forAnyUnit: Agreed | undefined; byUnit: Map<string, Agreed>; byMeasure: Map<string, Agreed>; unitTexts: string[] }
  >();
  const unreadable = new Map<string, Bad>();
  for (const row of rows) {
    if (isBadRow(row)) {
      unreadable.set(goodsKey(row.label), row.bad);
      continue;
    }
    const key = goodsKey(row.item);
    const item = items.get(key) ?? {
      forAnyUnit: undefined,
      byUnit: new Map<string, Agreed>(),
      byMeasure: new Map<string, Agreed>(),
      unitTexts: [],
    };
    items.set(key, item);
    const unit = row.unit === "" ? undefined : goodsUnit(row.unit);
    const listed = { figure: row.figure, unit, unitText: row.unit, isBlank: row.isBlank };
    if (unit === undefined) {
      item.forAnyUnit = agreed(item.forAnyUnit, listed);
      continue;
    }
    if (item.unitTexts.length <= MOST_NAMED && !item.byUnit.has(unitKey(unit))) item.unitTexts.push(row.unit);
    item.byUnit.set(unitKey(unit), agreed(item.byUnit.get(unitKey(unit)), listed));
    item.byMeasure.set(unit.measures, agreed(item.byMeasure.get(unit.measures), listed));
  }
  return { items, unreadable, near: nearNames(goodRows(rows)) };
};

/** What rows that ask for figures are answered with. */
export interface Figures<Bad> {
  readonly list: PerUnitList<Bad>;
  readonly near: NearName;
  /** Whether the rows that ask give no unit anywhere and so count pieces. */
  readonly isOfPieces: boolean;
}

/** The figures of a table for the rows that ask for them; names in either table that may mean the same goods are found. */
export const figuresFor = <Asking extends GoodsName & { readonly unit: string }, Bad>(
  asking: readonly (Asking | BadRow<Bad>)[], figures: readonly (PerUnit | BadRow<Bad>)[], table: string,
): Figures<Bad> => ({
  list: perUnitList(figures),
  near: nearNames([...goodRows(asking), ...goodRows(figures).map(({ item, row }) => ({ item, row, table }))]),
  isOfPieces: goodRows(asking).every(({ unit }) => unit === ""),
});

const named = ({ unitTexts, forAnyUnit }: Item): string => {
  const texts = [
    ...unitTexts.slice(0, MOST_NAMED),
    ...(unitTexts.length > MOST_NAMED ? ["others"] : []),
    ...(forAnyUnit === undefined ? [] : ["no unit"]),
  ];
  return texts.join(", ");
};

const settled = (found: Agreed, differ: (first: Listed, other: Listed) => Problem<NoFigure>): Listed | Problem<NoFigure> =>
  found.other === undefined ? found.first : differ(found.first, found.other);

/** What is asked for: an item, its unit or none, and whether its table gives no unit anywhere and so counts pieces. */
export interface Wanted extends GoodsName {
  readonly unit: string;
  readonly isOfPieces: boolean;
}

/**
 * The figure for an item in a unit: for that unit, or for one that converts into it, or for any unit where the item has no other figure.
 * Two that differ are refused, never chosen between. Undefined where the item is in no row.
 */
const inUnit = (item: Item, { item: name, unit: text, row, isOfPieces }: Wanted): Listed | Problem<NoFigure> => {
  const twoFigures = (first: Listed, other: Listed): Problem<NoFigure> =>
    problem("two-figures", {
      item: String(name),
      unit: first.unitText || "any unit",
      first: first.figure.toString(),
      second: other.figure.toString(),
    });
  const { forAnyUnit, byUnit, byMeasure } = item;
  if (forAnyUnit !== undefined && byUnit.size === 0) return settled(forAnyUnit, twoFigures);
  const unit = text === "" ? (isOfPieces ? EACH : undefined) : goodsUnit(text);
  if (unit !== undefined) {
    const own = byUnit.get(unitKey(unit));
    if (own !== undefined) return settled(own, twoFigures);
    const alike = text === "" ? undefined : byMeasure.get(unit.measures);
    if (alike !== undefined) return settled(alike, () => problem("several-units", { item: String(name), units: named(item) }));
  }
  return problem(text === "" ? "unit-is-empty" : "not-in-unit", { item: String(name), row, unit: text, units: named(item) });
};

/** The figure of an item in a unit, or why there is none: what is wrong with its row, or that it is in none. */
export const listedFigure = <Bad,>(
  { items, unreadable }: PerUnitList<Bad>,
  wanted: Wanted,
): Listed | Problem<NoFigure> | Bad | undefined => {
  const key = goodsKey(wanted.item);
  const bad = unreadable.get(key);
  if (bad !== undefined) return bad;
  const item = items.get(key);
  return item === undefined ? undefined : inUnit(item, wanted);
};

/** Why an item is in no row: a row that lost its name, or that there is none, with a name in the list that may mean it. */
export const notListed = <Bad>({ unreadable, near }: PerUnitList<Bad>, item: string | number): Problem<NoFigure> | Bad => {
  const nameless = unreadable.get("");
  if (nameless !== undefined) return nameless;
  const found = near(item);
  return found === undefined
    ? problem("not-listed", { item: String(item) })
    : problem("not-listed-but-near", { item: String(item), near: String(found.item), row: found.row });
};

export const isListed = <Other>(found: Listed | Other): found is Listed =>
  typeof found === "object" && found !== null && "figure" in found && "unitText" in found;

/** The same amount of a quantity's unit in the unit of a figure: equal where either gives none. */
export const amountFor = (amount: Exact, quantityUnit: string, { unit }: Listed): Exact => {
  if (unit === undefined || quantityUnit === "") return amount;
  const from = goodsUnit(quantityUnit);
  return isConvertible(from, unit) ? converted(amount, from, unit) : amount;
};
