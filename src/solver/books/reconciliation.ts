import { cents } from "../bid/cents";
import { goodsKey } from "../goods/goods-key";
import { converted, EACH, type GoodsUnit, goodsUnit, isBoardFeet, isConvertible } from "../goods/goods-unit";
import { isMoneyItem } from "../goods/money-item";
import { type GoodsName, joinedNotes, type NearName, nearNames, suspectNote } from "../goods/near-names";
import { Exact, exact } from "../length/exact";
import { type Problem, problem } from "../problem";

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

export interface Reconciled {
  readonly item: string;
  readonly unit: string;
  readonly planned?: Exact;
  readonly bought?: Exact;
  readonly used?: Exact;
  readonly plannedCost: Exact;
  readonly spent: Exact;
  readonly priceVariance: Exact;
  readonly usageVariance: Exact;
  readonly scope: Exact;
  readonly onTheRack: Exact;
  readonly net?: Exact;
  readonly gross?: Exact;
  readonly yield?: Exact;
  readonly wasteCost?: Exact;
  readonly note: string;
}

export type ReconcileProblem =
  | "units-differ" | "unit-is-empty" | "bought-without-price" | "planned-half-without-price" | "money-without-quantity" | "quantity-of-money"
  | "planned-nothing-for-money" | "price-and-cost-differ" | "cost-against-quantity";

type TableName = "planned" | "bought" | "used";

const ZERO = new Exact(0);
const HALF_A_CENT = new Exact("0.005");
/** Lengths that went through cells agree to this share. */
const DUST = new Exact("1e-9");

interface Item {
  readonly name: string;
  readonly isMoney: boolean;
  /** As it is printed, and as it is reckoned. */
  readonly unitText: string;
  readonly unit: GoodsUnit | undefined;
  planned: Exact;
  plannedCost: Exact;
  bought: Exact;
  spent: Exact;
  used: Exact;
  net: Exact;
  gross: Exact;
  /** What `net` and `gross` count. */
  measures: ReadonlySet<"board feet" | "length">;
  /** Stands in the plan with money, or without any. */
  isPriced: boolean;
  isUnpriced: boolean;
}

const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((total, amount) => total.plus(amount), ZERO);

const opposed = (quantity: Exact, money: Exact): boolean => quantity.times(money).isNegative() && !quantity.isZero() && !money.isZero();

/** What a row costs in cents; undefined for a row of blanks and zeros. */
const costOf = ({ isMoney }: Item, row: BoughtGoods, table: TableName): Exact | undefined | Problem<ReconcileProblem> => {
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
    return problem("cost-against-quantity", { ...facts, quantity: row.quantity, cost: money.toString(), instead: money.negated().toString() });
  }
  const isOff = !row.cost.isZero() && !row.price.isZero() && priced.minus(row.cost).abs().gt(HALF_A_CENT.times(quantity.abs().plus(1)));
  return isOff ? problem("price-and-cost-differ", { ...facts, price: row.price.toString(), quantity: row.quantity, cost: row.cost.toString() }) : cents(money);
};

const isLineal = (row: PlannedGoods): boolean => {
  if (row.length === undefined || row.gross === undefined || row.gross === 0) return false;
  const gross = exact(row.gross);
  return gross.minus(exact(row.length).times(exact(row.quantity))).abs().lte(gross.times(DUST));
};

const inBoardFeet = (item: Item): boolean => !item.gross.isZero() && !item.measures.has("length");

const planNote = (item: Item): string => {
  if (item.isPriced && !item.planned.isZero()) {
    if (item.bought.isZero() && item.used.isZero()) return "planned, not bought";
    return item.measures.has("length") ? "net and gross are lengths, not board feet" : "";
  }
  const standing = item.isUnpriced ? "planned without a price" : "not planned";
  if (!item.bought.isZero()) return `${standing}: counted at the price paid`;
  if (item.isUnpriced && item.used.isZero()) return `${standing}, not bought`;
  return item.used.isZero() ? standing : "used without a price planned or paid";
};

/** Why goods planned with a net or a gross have no yield. */
const yieldNote = ({ net, gross, planned, bought, used, isPriced }: Item): string => {
  if (!isPriced || planned.isZero() || (net.isZero() && gross.isZero())) return "";
  if (net.isZero() || gross.isZero()) return `no yield: ${net.isZero() ? "net" : "gross"} is 0 or empty in the plan`;
  return used.isZero() && !bought.isZero() ? "no yield: nothing was used" : "";
};

const noteOf = (item: Item): string => {
  if (item.isMoney) return item.plannedCost.isZero() ? "not planned" : item.spent.isZero() ? "planned, not bought" : "";
  const isShort = item.used.gt(item.bought) && (item.isPriced || !item.bought.isZero());
  return joinedNotes(planNote(item), yieldNote(item), isShort ? "used more than bought: from stock, or a name differs" : "");
};

type Variances = Pick<Reconciled, "priceVariance" | "usageVariance" | "scope" | "onTheRack">;

/**
 * Where the difference between plan and money went: differences between amounts in cents, so that they tie to the cent. What was not planned is
 * counted at the price paid, what was planned at the planned price.
 */
const variancesOf = (item: Item): Variances => {
  const { planned, plannedCost, bought, spent, used, isMoney } = item;
  const none = { priceVariance: ZERO, usageVariance: ZERO, scope: ZERO, onTheRack: ZERO };
  if (isMoney) {
    if (plannedCost.isZero()) return { ...none, scope: spent };
    return spent.isZero() ? { ...none, scope: plannedCost.negated() } : { ...none, priceVariance: spent.minus(plannedCost) };
  }
  if (!item.isPriced || planned.isZero()) {
    const onTheRack = bought.isZero() ? ZERO : spent.minus(cents(used.times(spent).div(bought)));
    return { ...none, scope: spent.minus(onTheRack), onTheRack };
  }
  if (bought.isZero() && used.isZero()) return { ...none, priceVariance: spent, scope: plannedCost.negated() };
  const [boughtAtPlan, usedAtPlan] = [bought, used].map((quantity) => cents(quantity.times(plannedCost).div(planned))) as [Exact, Exact];
  return { ...none, priceVariance: spent.minus(boughtAtPlan), usageVariance: usedAtPlan.minus(plannedCost), onTheRack: boughtAtPlan.minus(usedAtPlan) };
};

const reconciled = (item: Item, near: NearName): Reconciled => {
  const { planned, plannedCost, bought, spent, used, net, gross } = item;
  const share = net.isZero() || gross.isZero() || planned.isZero() || !item.isPriced || item.measures.size > 1 ? undefined : net.div(gross);
  return {
    item: item.name,
    unit: item.unitText,
    ...(item.isMoney ? {} : { planned, bought, used }),
    plannedCost,
    spent,
    ...variancesOf(item),
    ...(share === undefined
      ? {}
      : {
          ...(inBoardFeet(item) ? { net: used.times(net).div(planned), gross: used.times(gross).div(planned) } : {}),
          ...(used.isZero() ? {} : { yield: share }),
          wasteCost: cents(used.times(plannedCost).div(planned).times(new Exact(1).minus(share))),
        }),
    note: joinedNotes(noteOf(item), suspectNote(near(item.name))),
  };
};

/** A row with the table it stands in and the key of its item. */
type KeyedRow = { readonly key: string } & (
  | { readonly table: "planned"; readonly goods: PlannedGoods }
  | { readonly table: "bought"; readonly goods: BoughtGoods }
  | { readonly table: "used"; readonly goods: UsedGoods }
);

const keyOf = ({ item }: Goods): { readonly key: string } => ({ key: goodsKey(item) });

const nothingOf = (name: string, unit: string): Item => {
  const isMoney = isMoneyItem(name);
  const unitText = isMoney ? "" : unit;
  return {
    name, isMoney, unitText, unit: unitText === "" ? undefined : goodsUnit(unitText), planned: ZERO, plannedCost: ZERO, bought: ZERO, spent: ZERO, used: ZERO,
    net: ZERO, gross: ZERO, measures: new Set(), isPriced: false, isUnpriced: false,
  };
};

/**
 * Items by key, in the order they first stand in, each in the unit of its first row. A table that gives no unit at all counts pieces; elsewhere an
 * empty unit is one only where every row of the item leaves it empty.
 */
const itemsOf = (rows: readonly KeyedRow[]): ReadonlyMap<string, Item> | Problem<ReconcileProblem> => {
  const withUnits = new Set(rows.flatMap(({ table, goods }) => (goods.unit === "" ? [] : [table])));
  const named = new Map<string, string>();
  for (const { key, goods } of rows) if (goods.unit !== "" && !named.has(key)) named.set(key, goods.unit);
  const items = new Map<string, Item>();
  for (const { key, table, goods } of rows) {
    const other = named.get(key);
    const item = items.get(key) ?? nothingOf(String(goods.item), other === undefined ? "" : goods.unit || EACH.name);
    items.set(key, item);
    if (!item.isMoney && goods.unit === "" && other !== undefined && withUnits.has(table)) {
      return problem("unit-is-empty", { table, item: item.name, row: goods.row, other });
    }
  }
  return items;
};

/** How many of the item's own unit a row is; board feet become pieces by the board feet a planned piece takes. */
const inUnitOf = (item: Item, { quantity, unit: text, row }: Goods, table: TableName): Exact | Problem<ReconcileProblem> => {
  const amount = exact(quantity);
  if (item.isMoney || item.unit === undefined) return amount;
  const unit = text === "" ? EACH : goodsUnit(text);
  if (isConvertible(unit, item.unit)) return converted(amount, unit, item.unit);
  if (table !== "planned" && isBoardFeet(unit) && inBoardFeet(item) && !item.planned.isZero()) {
    return amount.times(unit.size).times(item.planned).div(item.gross);
  }
  return text === ""
    ? problem("unit-is-empty", { table, item: item.name, row, other: item.unitText })
    : problem("units-differ", { table, item: item.name, row, unit: text, other: item.unitText });
};

const addPlanned = (item: Item, row: PlannedGoods): Problem<ReconcileProblem> | undefined => {
  const cost = costOf(item, row, "planned");
  if (cost === undefined) return undefined;
  if ("problem" in cost) return cost;
  const amount = inUnitOf(item, row, "planned");
  if ("problem" in amount) return amount;
  const isPriced = !row.price.isZero() || !row.cost.isZero();
  if (isPriced ? item.isUnpriced : item.isPriced) return problem("planned-half-without-price", { item: item.name, row: row.row });
  Object.assign(item, {
    isPriced, isUnpriced: !isPriced, planned: item.planned.plus(amount), plannedCost: item.plannedCost.plus(cost),
    net: item.net.plus(row.net ?? 0), gross: item.gross.plus(row.gross ?? 0),
    measures: (row.gross ?? 0) === 0 ? item.measures : new Set([...item.measures, isLineal(row) ? "length" : "board feet"]),
  });
  return undefined;
};

const addBought = (item: Item, row: BoughtGoods): Problem<ReconcileProblem> | undefined => {
  const cost = costOf(item, row, "bought");
  if (cost === undefined) return undefined;
  if ("problem" in cost) return cost;
  if (row.price.isZero() && row.cost.isZero()) return problem("bought-without-price", { item: item.name, row: row.row });
  const amount = inUnitOf(item, row, "bought");
  if ("problem" in amount) return amount;
  Object.assign(item, { bought: item.bought.plus(amount), spent: item.spent.plus(cost) });
  return undefined;
};

const addUsed = (item: Item, row: UsedGoods): Problem<ReconcileProblem> | undefined => {
  if (row.quantity === 0) return undefined;
  if (item.isMoney) return problem("quantity-of-money", { table: "used", item: item.name, row: row.row, quantity: row.quantity });
  const amount = inUnitOf(item, row, "used");
  if ("problem" in amount) return amount;
  item.used = item.used.plus(amount);
  return undefined;
};

const added = (item: Item, row: KeyedRow): Problem<ReconcileProblem> | undefined => {
  if (row.table === "planned") return addPlanned(item, row.goods);
  return row.table === "bought" ? addBought(item, row.goods) : addUsed(item, row.goods);
};

/** Adds rows to their items; what is wrong with the first that cannot be added. */
const addAll = (items: ReadonlyMap<string, Item>, rows: readonly KeyedRow[]): Problem<ReconcileProblem> | undefined => {
  for (const row of rows) {
    const item = items.get(row.key);
    const wrong = item === undefined ? undefined : added(item, row);
    if (wrong !== undefined) return wrong;
  }
  return undefined;
};

const totalOf = (rows: readonly Reconciled[]): Reconciled => {
  const total = (amount: (row: Reconciled) => Exact | undefined): Exact => sum(rows.map((row) => amount(row) ?? ZERO));
  const [net, gross] = [total((row) => row.net), total((row) => row.gross)];
  return {
    item: "total",
    unit: "",
    plannedCost: total((row) => row.plannedCost),
    spent: total((row) => row.spent),
    priceVariance: total((row) => row.priceVariance),
    usageVariance: total((row) => row.usageVariance),
    scope: total((row) => row.scope),
    onTheRack: total((row) => row.onTheRack),
    ...(gross.isZero() ? {} : { net, gross, yield: net.div(gross) }),
    ...(rows.some((row) => row.wasteCost !== undefined) ? { wasteCost: total((row) => row.wasteCost) } : {}),
    note: "spent less planned cost is price, usage, scope and rack together",
  };
};

/**
 * Planned, bought and used goods by item: what was spent over plan is price variance on what was bought, usage variance on what was used, scope
 * (what was not planned, or planned and neither bought nor used), and what lies on the rack; the four add up to it exactly, row by row and in the
 * total, with nothing put in to balance. Without `used`, all that was bought was used.
 */
export const reconciliation = (
  planned: readonly PlannedGoods[], bought: readonly BoughtGoods[], used?: readonly UsedGoods[],
): readonly Reconciled[] | Problem<ReconcileProblem> => {
  const plan = planned.map((goods): KeyedRow => ({ table: "planned", goods, ...keyOf(goods) }));
  const moved = [
    ...bought.map((goods): KeyedRow => ({ table: "bought", goods, ...keyOf(goods) })),
    ...(used ?? []).map((goods): KeyedRow => ({ table: "used", goods, ...keyOf(goods) })),
  ];
  const rows = [...plan, ...moved];
  const items = itemsOf(rows);
  if ("problem" in items) return items;
  const wrong = addAll(items, plan);
  if (wrong !== undefined) return wrong;
  for (const { name, isMoney, planned: amount, plannedCost } of items.values()) {
    if (amount.isZero() && !plannedCost.isZero() && !isMoney) return problem("planned-nothing-for-money", { item: name, cost: plannedCost.toString() });
  }
  const wrongLater = addAll(items, moved);
  if (wrongLater !== undefined) return wrongLater;
  if (used === undefined) for (const item of items.values()) item.used = item.bought;
  const near = nearNames(rows.map(({ table, goods: { item, row } }): GoodsName => ({ item, row, table })));
  const isThere = (item: Item): boolean => [item.planned, item.plannedCost, item.bought, item.spent, item.used].some((amount) => !amount.isZero());
  const reconciledRows = [...items.values()].filter(isThere).map((item) => reconciled(item, near));
  return [...reconciledRows, totalOf(reconciledRows)];
};
