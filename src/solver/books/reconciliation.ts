import { cents } from "../bid/cents";
import { itemKey } from "../bid/item-key";
import { Exact, exact } from "../length/exact";
import { type Problem, problem } from "../problem";

/**
 * Goods planned: several rows of an item add up. `net` and `gross` are board feet of the row; as BUY gives them for stock without width and
 * thickness they are lengths, and `gross` is then quantity x `length`.
 */
export interface PlannedGoods {
  readonly item: string | number;
  readonly quantity: number;
  readonly unit: string;
  readonly price: Exact;
  readonly cost: Exact;
  readonly net?: number;
  readonly gross?: number;
  readonly length?: number;
}

/** Goods bought: a return has a negative quantity. */
export interface BoughtGoods {
  readonly item: string | number;
  readonly quantity: number;
  readonly unit: string;
  readonly price: Exact;
  readonly cost: Exact;
}

export interface UsedGoods {
  readonly item: string | number;
  readonly quantity: number;
  readonly unit: string;
}

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
  readonly onTheRack: Exact;
  readonly net?: Exact;
  readonly gross?: Exact;
  readonly yield?: Exact;
  readonly wasteCost?: Exact;
  readonly note: string;
}

export type ReconcileProblem = "units-differ" | "bought-without-price" | "planned-nothing-for-money" | "price-and-cost-differ" | "cost-against-quantity";

const BOARD_FEET: readonly string[] = ["bf", "boardfeet", "boardfoot", "bdft"];
const HALF_A_CENT = new Exact("0.005");
/** Lengths that went through cells agree to this share. */
const DUST = new Exact("1e-9");

interface Item {
  readonly name: string;
  unit: string;
  planned: Exact;
  plannedCost: Exact;
  bought: Exact;
  spent: Exact;
  used: Exact;
  net: Exact;
  gross: Exact;
  /** What `net` and `gross` count. */
  measures: ReadonlySet<"board feet" | "length">;
  /** Planned price of one, for an item whose planned quantities come to 0. */
  listPrice?: Exact;
  isPlanned: boolean;
  /** Stands in the plan without a price. */
  isUnpriced: boolean;
}

const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((total, amount) => total.plus(amount), new Exact(0));

const costOf = (row: PlannedGoods | BoughtGoods): Exact | Problem<ReconcileProblem> => {
  const quantity = exact(row.quantity);
  const priced = row.price.times(quantity);
  if (row.cost.times(quantity).isNegative() && !row.cost.isZero() && !quantity.isZero()) {
    return problem("cost-against-quantity", { item: String(row.item), quantity: row.quantity, cost: row.cost.toString(), instead: row.cost.negated().toString() });
  }
  if (row.cost.isZero()) return priced;
  const isOff = !row.price.isZero() && priced.minus(row.cost).abs().gt(HALF_A_CENT.times(quantity.abs().plus(1)));
  return isOff ? problem("price-and-cost-differ", { item: String(row.item), price: row.price.toString(), quantity: row.quantity, cost: row.cost.toString() }) : row.cost;
};

const isLineal = (row: PlannedGoods): boolean => {
  if (row.length === undefined || row.gross === undefined || row.gross === 0) return false;
  const gross = exact(row.gross);
  return gross.minus(exact(row.length).times(exact(row.quantity))).abs().lte(gross.times(DUST));
};

const inBoardFeet = (item: Item): boolean => !item.gross.isZero() && !item.measures.has("length");

/** How many of the item's own unit a row of another unit is: board feet become pieces by the board feet a planned piece takes. */
const inUnitOf = (item: Item, quantity: number, unit: string, table: string): Exact | Problem<ReconcileProblem> => {
  const amount = exact(quantity);
  if (unit === "" || itemKey(unit) === itemKey(item.unit)) return amount;
  if (item.unit === "" && !(BOARD_FEET.includes(itemKey(unit)) && inBoardFeet(item))) {
    item.unit = unit;
    return amount;
  }
  if (BOARD_FEET.includes(itemKey(unit)) && inBoardFeet(item) && !item.planned.isZero()) return amount.times(item.planned).div(item.gross);
  return problem("units-differ", { item: item.name, unit: item.unit, other: unit, table });
};

const noteOf = (item: Item): string => {
  if (item.isPlanned) {
    if (item.bought.isZero() && item.spent.isZero()) return "planned, not bought";
    return item.measures.has("length") ? "net and gross are lengths, not board feet" : "";
  }
  if (!item.bought.isZero()) return item.isUnpriced ? "planned without a price: counted at the price paid" : "not planned: counted at the price paid";
  return item.spent.isZero() ? "used without a price planned or paid" : "not planned: money without a quantity is price variance";
};

/** The price one is counted at: planned, or paid where none was planned. */
const standardPrice = (item: Item): Exact => {
  if (!item.planned.isZero()) return item.plannedCost.div(item.planned);
  if (item.listPrice !== undefined) return item.listPrice;
  return item.bought.isZero() ? new Exact(0) : item.spent.div(item.bought);
};

const reconciled = (item: Item): Reconciled => {
  const price = standardPrice(item);
  // Cents fall on the four costs, never on their differences: so the variances of a row tie to the cent, and printed totals add printed rows.
  const [plannedCost, spent] = [cents(item.plannedCost), cents(item.spent)];
  const [usedAtPlan, boughtAtPlan] = [cents(item.used.times(price)), cents(item.bought.times(price))];
  const share = item.gross.isZero() || item.planned.isZero() || item.measures.size > 1 ? undefined : item.net.div(item.gross);
  const boardFeet = share !== undefined && inBoardFeet(item);
  return {
    item: item.name,
    unit: item.unit,
    planned: item.planned,
    bought: item.bought,
    used: item.used,
    plannedCost,
    spent,
    priceVariance: spent.minus(boughtAtPlan),
    usageVariance: usedAtPlan.minus(plannedCost),
    onTheRack: boughtAtPlan.minus(usedAtPlan),
    ...(share === undefined
      ? {}
      : {
          ...(boardFeet ? { net: item.used.times(item.net).div(item.planned), gross: item.used.times(item.gross).div(item.planned) } : {}),
          yield: share,
          wasteCost: cents(item.used.times(price).times(new Exact(1).minus(share))),
        }),
    note: noteOf(item),
  };
};

/**
 * Planned, bought and used goods by item: what was spent over plan is price variance on what was bought, usage variance on what was used,
 * and what lies on the rack, all at the planned price; the three add up to it exactly, row by row and in the total, with nothing put in to balance.
 */
export const reconciliation = (
  planned: readonly PlannedGoods[], bought: readonly BoughtGoods[], used: readonly UsedGoods[],
): readonly Reconciled[] | Problem<ReconcileProblem> => {
  const items = new Map<string, Item>();
  const unpriced = new Set<string>();
  const itemOf = (name: string | number, unit: string): Item => {
    const key = itemKey(String(name));
    const zero = new Exact(0);
    const found = items.get(key) ?? { name: String(name), unit, planned: zero, plannedCost: zero, bought: zero, spent: zero, used: zero, net: zero, gross: zero, measures: new Set(), isPlanned: false, isUnpriced: unpriced.has(key) };
    items.set(key, found);
    return found;
  };
  for (const row of planned) {
    // Rows of an order that no blank fills have no price: they are cut from sticks that stand in rows of their own.
    if (row.price.isZero() && row.cost.isZero()) {
      unpriced.add(itemKey(String(row.item)));
      continue;
    }
    const cost = costOf(row);
    if ("problem" in cost) return cost;
    const item = itemOf(row.item, row.unit);
    const amount = inUnitOf(item, row.quantity, row.unit, "planned");
    if ("problem" in amount) return amount;
    Object.assign(item, {
      isPlanned: true, planned: item.planned.plus(amount), plannedCost: item.plannedCost.plus(cost),
      net: item.net.plus(row.net ?? 0), gross: item.gross.plus(row.gross ?? 0),
      measures: (row.gross ?? 0) === 0 ? item.measures : new Set([...item.measures, isLineal(row) ? "length" : "board feet"]),
      listPrice: row.price.isZero() ? (item.listPrice ?? (row.quantity === 0 ? undefined : cost.div(exact(row.quantity)))) : row.price,
    });
  }
  for (const item of items.values()) {
    if (item.planned.isZero() && !item.plannedCost.isZero()) return problem("planned-nothing-for-money", { item: item.name, cost: item.plannedCost.toString() });
  }
  for (const row of bought) {
    if (row.price.isZero() && row.cost.isZero()) return problem("bought-without-price", { item: String(row.item) });
    const cost = costOf(row);
    if ("problem" in cost) return cost;
    const item = itemOf(row.item, row.unit);
    const amount = inUnitOf(item, row.quantity, row.unit, "bought");
    if ("problem" in amount) return amount;
    Object.assign(item, { bought: item.bought.plus(amount), spent: item.spent.plus(cost) });
  }
  for (const row of used) {
    const item = itemOf(row.item, row.unit);
    const amount = inUnitOf(item, row.quantity, row.unit, "used");
    if ("problem" in amount) return amount;
    item.used = item.used.plus(amount);
  }
  const isThere = (item: Item): boolean => [item.planned, item.bought, item.spent, item.used].some((amount) => !amount.isZero());
  const rows = [...items.values()].filter(isThere).map(reconciled);
  const total = (amount: (row: Reconciled) => Exact | undefined): Exact => sum(rows.map((row) => amount(row) ?? new Exact(0)));
  const [net, gross] = [total((row) => row.net), total((row) => row.gross)];
  return [
    ...rows,
    {
      item: "total",
      unit: "",
      plannedCost: total((row) => row.plannedCost),
      spent: total((row) => row.spent),
      priceVariance: total((row) => row.priceVariance),
      usageVariance: total((row) => row.usageVariance),
      onTheRack: total((row) => row.onTheRack),
      ...(gross.isZero() ? {} : { net, gross, yield: net.div(gross) }),
      ...(rows.some((row) => row.wasteCost !== undefined) ? { wasteCost: total((row) => row.wasteCost) } : {}),
      note: "spent less planned cost is price, usage and rack together",
    },
  ];
};
