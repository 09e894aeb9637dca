import { cents } from "../bid/cents";
import { goodsKey } from "../goods/goods-key";
import { converted, EACH, type GoodsUnit, goodsUnit, isBoardFeet, isConvertible } from "../goods/goods-unit";
import { isMoneyItem } from "../goods/money-item";
import { Exact, exact } from "../length/exact";
import { isProblem, type Problem, problem } from "../problem";

interface Goods {
  readonly item: string | number;
  readonly quantity: number;
  readonly unit: string;
  readonly row: number;
}

/** Goods bought: a return has a negative quantity. */
export interface BoughtGoods extends Goods {
  readonly price: Exact;
  readonly cost: Exact;
}

/**
 * Goods planned: several rows of an item add up. `net` and `gross` are board feet of the row; as BUY gives them for stock without width and
 * thickness they are lengths, and `gross` is then quantity x `length`.
 */
export interface PlannedGoods extends BoughtGoods {
  readonly net?: number;
  readonly gross?: number;
  readonly length?: number;
}

export type UsedGoods = Goods;

export type ReconcileProblem =
  | "units-differ"
  | "unit-is-empty"
  | "bought-without-price"
  | "planned-half-without-price"
  | "money-without-quantity"
  | "quantity-of-money"
  | "planned-nothing-for-money"
  | "price-and-cost-differ"
  | "cost-against-quantity";

type TableName = "planned" | "bought" | "used";

export const ZERO = new Exact(0);
const HALF_A_CENT = new Exact("0.005");
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
  readonly spent: Exact;
  readonly used: Exact;
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
  readonly table: TableName;
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

const opposed = (quantity: Exact, money: Exact): boolean => quantity.times(money).isNegative() && !quantity.isZero() && !money.isZero();

/** What a row costs in cents; undefined for a row of blanks and zeros. */
const costOf = ({ isMoney }: Article, row: BoughtGoods, table: TableName): Exact | undefined | Problem<ReconcileProblem> => {
  const quantity = exact(row.quantity);
  const facts = { table, item: String(row.item), row: row.row };
  if (isMoney && ![0, 1].includes(Math.abs(row.quantity))) return problem("quantity-of-money", { ...facts, quantity: row.quantity });
  const priced = row.price.times(isMoney && row.quantity === 0 ? 1 : quantity);
  if (quantity.isZero() && row.price.isZero() && row.cost.isZero()) return undefined;
  if (quantity.isZero() && !isMoney) {
    return problem("money-without-quantity", { ...facts, money: (row.cost.isZero() ? row.price : row.cost).toString() });
  }
  const money = row.cost.isZero() ? priced : row.cost;
  if (opposed(quantity, money)) {
    return problem("cost-against-quantity", {
      ...facts,
      quantity: row.quantity,
      cost: money.toString(),
      instead: money.negated().toString(),
    });
  }
  const isOff = !row.cost.isZero() && !row.price.isZero() && priced.minus(row.cost).abs().gt(HALF_A_CENT.times(quantity.abs().plus(1)));
  return isOff
    ? problem("price-and-cost-differ", { ...facts, price: row.price.toString(), quantity: row.quantity, cost: row.cost.toString() })
    : cents(money);
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
  table: TableName,
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
interface Counted {
  readonly key: string;
  readonly amount: Exact;
  readonly cost: Exact;
}

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
): ReadonlyMap<string, readonly CountedPlan[]> | Problem<ReconcileProblem> => {
  const isPriced = firstBy(rows.flatMap((row) => (row.quantity === 0 && !hasPrice(row) ? [] : [[keyOf(row), hasPrice(row)] as const])));
  return allCounted(rows, (row, key): CountedPlan | undefined | Problem<ReconcileProblem> => {
    const article = articles.get(key)!;
    const cost = costOf(article, row, "planned");
    if (cost === undefined || isProblem(cost)) return cost;
    const amount = inUnitOf(article, row, "planned");
    if (isProblem(amount)) return amount;
    return isPriced.get(key) === hasPrice(row)
      ? { key, amount, cost, row }
      : problem("planned-half-without-price", { item: article.name, row: row.row });
  });
};

const planOf = (rows: readonly CountedPlan[]): Plan => ({
  planned: sum(rows.map(({ amount }) => amount)),
  plannedCost: sum(rows.map(({ cost }) => cost)),
  net: sum(rows.map(({ row }) => exact(row.net ?? 0))),
  gross: sum(rows.map(({ row }) => exact(row.gross ?? 0))),
  measures: new Set(rows.flatMap(({ row }) => ((row.gross ?? 0) === 0 ? [] : [isLineal(row) ? "length" : "board feet"]))),
  isPriced: rows[0] !== undefined && hasPrice(rows[0].row),
  isUnpriced: rows[0] !== undefined && !hasPrice(rows[0].row),
});

type PlannedItem = Article & Plan;

const boughtRow = (item: PlannedItem, row: BoughtGoods, key: string): Counted | undefined | Problem<ReconcileProblem> => {
  const cost = costOf(item, row, "bought");
  if (cost === undefined || isProblem(cost)) return cost;
  if (!hasPrice(row)) return problem("bought-without-price", { item: item.name, row: row.row });
  const amount = inUnitOf(item, row, "bought", item);
  return isProblem(amount) ? amount : { key, amount, cost };
};

const usedRow = (item: PlannedItem, row: UsedGoods, key: string): Counted | undefined | Problem<ReconcileProblem> => {
  if (row.quantity === 0) return undefined;
  if (item.isMoney) return problem("quantity-of-money", { table: "used", item: item.name, row: row.row, quantity: row.quantity });
  const amount = inUnitOf(item, row, "used", item);
  return isProblem(amount) ? amount : { key, amount, cost: ZERO };
};

/**
 * The items of three tables, in the order they first stand in, with the sums of their rows. Without `used`, all that was bought was used.
 * What is wrong with the plan comes first, then with what was bought and used.
 */
export const goodsItems = (
  planned: readonly PlannedGoods[], bought: readonly BoughtGoods[], used: readonly UsedGoods[] | undefined,
): readonly Item[] | Problem<ReconcileProblem> => {
  const articles = articlesOf([
    { table: "planned", rows: planned },
    { table: "bought", rows: bought },
    { table: "used", rows: used ?? [] },
  ]);
  if (isProblem(articles)) return articles;
  const plan = plannedRows(articles, planned);
  if (isProblem(plan)) return plan;
  const items = new Map(
    [...articles].map(([key, article]): [string, PlannedItem] => [key, { ...article, ...planOf(plan.get(key) ?? []) }]),
  );
  const costly = [...items.values()].find((item) => item.planned.isZero() && !item.plannedCost.isZero() && !item.isMoney);
  if (costly !== undefined) return problem("planned-nothing-for-money", { item: costly.name, cost: costly.plannedCost.toString() });
  const boughtRows = allCounted(bought, (row, key) => boughtRow(items.get(key)!, row, key));
  if (isProblem(boughtRows)) return boughtRows;
  const usedRows = used === undefined ? boughtRows : allCounted(used, (row, key) => usedRow(items.get(key)!, row, key));
  if (isProblem(usedRows)) return usedRows;
  return [...items].map(([key, item]): Item => {
    const invoiced = boughtRows.get(key) ?? [];
    const [amount, fitted] = [invoiced, usedRows.get(key) ?? []].map((rows) => sum(rows.map((row) => row.amount))) as [Exact, Exact];
    return { ...item, bought: amount, spent: sum(invoiced.map(({ cost }) => cost)), used: fitted };
  });
};
