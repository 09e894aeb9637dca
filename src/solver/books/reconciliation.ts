import { cents } from "../bid/cents";
import { type GoodsName, joinedNotes, type NearName, nearNames, suspectNote } from "../goods/near-names";
import { Exact } from "../length/exact";
import { isProblem, type Problem } from "../problem";
import {
  type BoughtGoods,
  goodsItems,
  inBoardFeet,
  type Item,
  type PlannedGoods,
  type ReconcileProblem,
  sum,
  type UsedGoods,
  ZERO,
} from "./goods-items";

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
 * Where the difference between plan and money went: differences between amounts in cents, so that they tie to the cent. What was not
 * planned is counted at the price paid, what was planned at the planned price.
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
  return {
    ...none,
    priceVariance: spent.minus(boughtAtPlan),
    usageVariance: usedAtPlan.minus(plannedCost),
    onTheRack: boughtAtPlan.minus(usedAtPlan),
  };
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

/** Columns that every row has and that add up. */
const MONEY = ["plannedCost", "spent", "priceVariance", "usageVariance", "scope", "onTheRack"] as const;

const totalOf = (rows: readonly Reconciled[]): Reconciled => {
  const total = (amount: (row: Reconciled) => Exact | undefined): Exact => sum(rows.map((row) => amount(row) ?? ZERO));
  const [net, gross] = [total((row) => row.net), total((row) => row.gross)];
  return {
    item: "total",
    unit: "",
    ...(Object.fromEntries(MONEY.map((column) => [column, total((row) => row[column])])) as Record<(typeof MONEY)[number], Exact>),
    ...(gross.isZero() ? {} : { net, gross, yield: net.div(gross) }),
    ...(rows.some((row) => row.wasteCost !== undefined) ? { wasteCost: total((row) => row.wasteCost) } : {}),
    note: "spent less planned cost is price, usage, scope and rack together",
  };
};

/**
 * Planned, bought and used goods by item: what was spent over plan is price variance on what was bought, usage variance on what was used,
 * scope (what was not planned, or planned and neither bought nor used), and what lies on the rack; the four add up to it exactly, row by
 * row and in the total, with nothing put in to balance. Without `used`, all that was bought was used.
 */
export const reconciliation = (
  planned: readonly PlannedGoods[], bought: readonly BoughtGoods[], used?: readonly UsedGoods[],
): readonly Reconciled[] | Problem<ReconcileProblem> => {
  const items = goodsItems(planned, bought, used);
  if (isProblem(items)) return items;
  const tables = { planned, bought, used: used ?? [] };
  const near = nearNames(Object.entries(tables).flatMap(([table, rows]) => rows.map(({ item, row }): GoodsName => ({ item, row, table }))));
  const isThere = (item: Item): boolean =>
    [item.planned, item.plannedCost, item.bought, item.spent, item.used].some((amount) => !amount.isZero());
  const rows = items.filter(isThere).map((item) => reconciled(item, near));
  return [...rows, totalOf(rows)];
};
