import { goodsKey } from "../goods/goods-key";
import { converted, EACH, type GoodsUnit, goodsUnit, isBoardFeet, isConvertible } from "../goods/goods-unit";
import { isMoneyItem } from "../goods/money-item";
import { Exact, exact } from "../length/exact";
import { isProblem, type Problem, problem } from "../problem";
import { type RowCost, rowCost, type RowCostProblem } from "./row-cost";

interface Goods {
  readonly item: string | number;
  readonly quantity: number;
  readonly unit: string;
  readonly row: number;
}

/** Goods with their money; how many of them are waste. */
interface PricedGoods extends Goods {
  readonly price: Exact;
  readonly cost: Exact;
  readonly waste?: number;
}

/** Goods bought: a return has a negative quantity. Freight, tax and credits that lie on them are part of the cost and none of the price. */
export interface BoughtGoods extends PricedGoods {
  readonly charges?: Exact;
}

/**
 * Goods planned: several rows of an item add up. `net` and `gross` are board feet of the row; as BUY gives them for stock without width and
 * thickness they are lengths, and `gross` is then quantity x `length`.
 */
export interface PlannedGoods extends PricedGoods {
  readonly net?: number;
  readonly gross?: number;
  readonly length?: number;
}

export type UsedGoods = Goods;

export type ReconcileProblem =
  | RowCostProblem
  | "units-differ"
  | "unit-is-empty"
  | "bought-without-price"
  | "planned-half-without-price"
  | "planned-nothing-for-money"
  | "waste-over-quantity";

/** What the tables are called in sentences: by the arguments they stand in. */
export interface TableNames {
  readonly planned: string;
  readonly bought: string;
  readonly used: string;
}

export const ZERO = new Exact(0);
/** Lengths that went through cells agree to this share. */
const DUST = new Exact("1e-9");

/** What the rows of one item share. */
interface Article {
  readonly name: string;
  readonly isMoney: boolean;
  /** As it is printed, and as it is calculated with. */
  readonly unitText: string;
  readonly unit: GoodsUnit | undefined;
}

/** What the plan says of an item: the sums of its rows. */
interface Plan {
  readonly planned: Exact;
  readonly plannedCost: Exact;
  /** How many of them may be wasted. */
  readonly allowed: Exact;
  readonly net: Exact;
  readonly gross: Exact;
  /** What `net` and `gross` count. */
  readonly measures: ReadonlySet<"board feet" | "length">;
  /** Stands in the plan with money, or without any. */
  readonly isPriced: boolean;
  readonly isUnpriced: boolean;
}

/** An item with all that was planned, bought and used of it. */
export interface Item extends Article, Plan {
  readonly bought: Exact;
  /** On the goods themselves, and on freight, tax and credits that lie on them. */
  readonly goodsCost: Exact;
  readonly charges: Exact;
  readonly used: Exact;
  readonly wasted: Exact;
}

export const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((total, amount) => total.plus(amount), ZERO);

/** Whether net and gross of an item are board feet. */
export const inBoardFeet = ({ gross, measures }: Plan): boolean => !gross.isZero() && !measures.has("length");

/** By key, of several under one the first. */
const firstBy = <Value>(entries: readonly (readonly [string, Value])[]): ReadonlyMap<string, Value> => new Map([...entries].reverse());

const keyOf = ({ item }: Goods): string => goodsKey(item);

const articleOf = (name: string, unit: string): Article => {
  const isMoney = isMoneyItem(name);
  const unitText = isMoney ? "" : unit;
  return { name, isMoney, unitText, unit: unitText === "" ? undefined : goodsUnit(unitText) };
};

/** The rows of one table. */
interface GoodsTable<Row extends Goods> {
  readonly table: string;
  readonly rows: readonly Row[];
}

type Articles = ReadonlyMap<string, Article>;

/**
 * Items by key, each in the unit of its first row. A table that gives no unit at all counts pieces; elsewhere an empty unit is one only
 * where every row of the item leaves it empty.
 */
const articlesOf = (tables: readonly GoodsTable<Goods>[]): Articles | Problem<ReconcileProblem> => {
  const rows = tables.flatMap((table) => {
    const hasUnits = table.rows.some(({ unit }) => unit !== "");
    return table.rows.map((row) => ({ ...row, key: keyOf(row), table: table.table, hasUnits }));
  });
  const units = firstBy(rows.flatMap(({ key, unit }) => (unit === "" ? [] : [[key, unit] as const])));
  const articles = firstBy(
    rows.map(({ key, item, unit }) => [key, articleOf(String(item), units.has(key) ? unit || EACH.name : "")] as const),
  );
  const inOrder = new Map(rows.map(({ key }) => [key, articles.get(key)!]));
  const unitless = rows.find(({ key, unit, hasUnits }) => unit === "" && hasUnits && units.has(key) && !articles.get(key)!.isMoney);
  return unitless === undefined
    ? inOrder
    : problem("unit-is-empty", {
        table: unitless.table,
        item: articles.get(unitless.key)!.name,
        row: unitless.row,
        other: units.get(unitless.key)!,
      });
};

const isLineal = (row: PlannedGoods): boolean => {
  if (row.length === undefined || row.gross === undefined || row.gross === 0) return false;
  const gross = exact(row.gross);
  return gross.minus(exact(row.length).times(exact(row.quantity))).abs().lte(gross.times(DUST));
};

/** How many of the item's own unit a row is; board feet become pieces by the board feet a planned piece takes. */
const inUnitOf = (
  article: Article,
  { quantity, unit: text, row }: Goods,
  table: string,
  plan?: Plan,
): Exact | Problem<ReconcileProblem> => {
  const amount = exact(quantity);
  if (article.isMoney || article.unit === undefined) return amount;
  const unit = text === "" ? EACH : goodsUnit(text);
  if (isConvertible(unit, article.unit)) return converted(amount, unit, article.unit);
  if (plan !== undefined && isBoardFeet(unit) && inBoardFeet(plan) && !plan.planned.isZero())
    return amount.times(unit.size).times(plan.planned).div(plan.gross);
  return text === ""
    ? problem("unit-is-empty", { table, item: article.name, row, other: article.unitText })
    : problem("units-differ", { table, item: article.name, row, unit: text, other: article.unitText });
};

/** A row as it counts, in the unit of its item. */
interface Counted extends RowCost {
  readonly key: string;
  readonly amount: Exact;
  readonly waste: Exact;
}

/** How many of the item's unit a row is, and how many of them are waste. */
const amountsOf = (
  article: Article, row: PricedGoods, table: string, plan?: Plan,
): Pick<Counted, "amount" | "waste"> | Problem<ReconcileProblem> => {
  const amount = inUnitOf(article, row, table, plan);
  if (isProblem(amount)) return amount;
  const { waste = 0, quantity } = row;
  if (waste === 0) return { amount, waste: ZERO };
  return waste > quantity
    ? problem("waste-over-quantity", { table, item: article.name, row: row.row, waste, quantity })
    : { amount, waste: amount.times(exact(waste)).div(exact(quantity)) };
};

/** Every row as it counts, those of blanks and zeros left out; what is wrong with the first that cannot be counted. */
const allCounted = <Row extends Goods, Of extends Counted>(
  rows: readonly Row[], counted: (row: Row, key: string) => Of | undefined | Problem<ReconcileProblem>,
): ReadonlyMap<string, readonly Of[]> | Problem<ReconcileProblem> => {
  const byKey = new Map<string, Of[]>();
  for (const row of rows) {
    const one = counted(row, keyOf(row));
    if (one === undefined) continue;
    if ("problem" in one) return one;
    byKey.set(one.key, [...(byKey.get(one.key) ?? []), one]);
  }
  return byKey;
};

const hasPrice = ({ price, cost }: BoughtGoods): boolean => !price.isZero() || !cost.isZero();

interface CountedPlan extends Counted {
  readonly row: PlannedGoods;
}

const plannedRows = (
  articles: Articles,
  rows: readonly PlannedGoods[],
  table: string,
): ReadonlyMap<string, readonly CountedPlan[]> | Problem<ReconcileProblem> => {
  const isPriced = firstBy(rows.flatMap((row) => (row.quantity === 0 && !hasPrice(row) ? [] : [[keyOf(row), hasPrice(row)] as const])));
  return allCounted(rows, (row, key): CountedPlan | undefined | Problem<ReconcileProblem> => {
    const article = articles.get(key)!;
    const cost = rowCost(article.isMoney, row, table);
    if (cost === undefined || isProblem(cost)) return cost;
    const amounts = amountsOf(article, row, table);
    if (isProblem(amounts)) return amounts;
    return isPriced.get(key) === hasPrice(row)
      ? { key, ...amounts, ...cost, row }
      : problem("planned-half-without-price", { table, item: article.name, row: row.row });
  });
};

const planOf = (rows: readonly CountedPlan[]): Plan => ({
  planned: sum(rows.map(({ amount }) => amount)),
  plannedCost: sum(rows.map(({ goods, charges }) => goods.plus(charges))),
  allowed: sum(rows.map(({ waste }) => waste)),
  net: sum(rows.map(({ row }) => exact(row.net ?? 0))),
  gross: sum(rows.map(({ row }) => exact(row.gross ?? 0))),
  measures: new Set(rows.flatMap(({ row }) => ((row.gross ?? 0) === 0 ? [] : [isLineal(row) ? "length" : "board feet"]))),
  isPriced: rows[0] !== undefined && hasPrice(rows[0].row),
  isUnpriced: rows[0] !== undefined && !hasPrice(rows[0].row),
});

type PlannedItem = Article & Plan;

const boughtRow = (item: PlannedItem, row: BoughtGoods, key: string, table: string): Counted | undefined | Problem<ReconcileProblem> => {
  const cost = rowCost(item.isMoney, row, table);
  if (cost === undefined || isProblem(cost)) return cost;
  if (!hasPrice(row) && row.quantity !== 0) return problem("bought-without-price", { table, item: item.name, row: row.row });
  const amounts = amountsOf(item, row, table, item);
  return isProblem(amounts) ? amounts : { key, ...amounts, ...cost };
};

const usedRow = (item: PlannedItem, row: UsedGoods, key: string, table: string): Counted | undefined | Problem<ReconcileProblem> => {
  if (row.quantity === 0) return undefined;
  if (item.isMoney) return problem("quantity-of-money", { table, item: item.name, row: row.row, quantity: row.quantity });
  const amount = inUnitOf(item, row, table, item);
  return isProblem(amount) ? amount : { key, amount, goods: ZERO, charges: ZERO, waste: ZERO };
};

const AS_IN_RECONCILE: TableNames = { planned: "planned", bought: "bought", used: "used" };

/**
 * The items of three tables, in the order they first stand in, with the sums of their rows. Without `used`, all that was bought was used.
 * What is wrong with the plan comes first, then with what was bought and used.
 */
export const goodsItems = (
  planned: readonly PlannedGoods[], bought: readonly BoughtGoods[], used: readonly UsedGoods[] | undefined,
  names: TableNames = AS_IN_RECONCILE,
): readonly Item[] | Problem<ReconcileProblem> => {
  const articles = articlesOf([
    { table: names.planned, rows: planned },
    { table: names.bought, rows: bought },
    { table: names.used, rows: used ?? [] },
  ]);
  if (isProblem(articles)) return articles;
  const plan = plannedRows(articles, planned, names.planned);
  if (isProblem(plan)) return plan;
  const items = new Map(
    [...articles].map(([key, article]): [string, PlannedItem] => [key, { ...article, ...planOf(plan.get(key) ?? []) }]),
  );
  const costly = [...items.values()].find((item) => item.planned.isZero() && !item.plannedCost.isZero() && !item.isMoney);
  if (costly !== undefined)
    return problem("planned-nothing-for-money", { table: names.planned, item: costly.name, cost: costly.plannedCost.toString() });
  const boughtRows = allCounted(bought, (row, key) => boughtRow(items.get(key)!, row, key, names.bought));
  if (isProblem(boughtRows)) return boughtRows;
  const usedRows = used === undefined ? boughtRows : allCounted(used, (row, key) => usedRow(items.get(key)!, row, key, names.used));
  if (isProblem(usedRows)) return usedRows;
  return [...items].map(([key, item]): Item => {
    const invoiced = boughtRows.get(key) ?? [];
    const total = (of: (row: Counted) => Exact, rows: readonly Counted[] = invoiced): Exact => sum(rows.map(of));
    return {
      ...item,
      bought: total(({ amount }) => amount),
      goodsCost: total(({ goods }) => goods),
      charges: total(({ charges }) => charges),
      used: total(({ amount }) => amount, usedRows.get(key) ?? []),
      wasted: total(({ waste }) => waste),
    };
  });
};
