import { cents } from "../bid/cents";
import { goodsKey } from "../goods/goods-key";
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
import { isPlanned, type ItemVariances, itemVariances } from "./item-variances";

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
  readonly charges: Exact;
  readonly net?: Exact;
  readonly gross?: Exact;
  readonly yield?: Exact;
  readonly wasteCost?: Exact;
  readonly note: string;
}

const planNote = (item: Item): string => {
  if (isPlanned(item)) {
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

/** What was spoiled, and what it is of the usage variance. */
const wasteNote = (item: Item, { waste }: ItemVariances): string => {
  if (item.wasted.isZero() && (item.allowed.isZero() || (item.bought.isZero() && item.used.isZero()))) return "";
  const count = `waste ${item.wasted.toString()}`;
  return isPlanned(item) ? `${count}, allowed ${item.allowed.toString()}: ${waste.toFixed(2)} of the usage variance` : count;
};

const noteOf = (item: Item, variances: ItemVariances): string => {
  const isShort = item.used.gt(item.bought) && (item.isPriced || !item.bought.isZero());
  return joinedNotes(
    planNote(item),
    yieldNote(item),
    isShort ? "used more than bought: from stock, or a name differs" : "",
    wasteNote(item, variances),
  );
};

const reconciled = (item: Item, near: NearName): Reconciled => {
  const { planned, plannedCost, bought, goodsCost, charges, used, net, gross } = item;
  const { waste, ...shown } = itemVariances(item);
  const share = net.isZero() || gross.isZero() || !isPlanned(item) || item.measures.size > 1 ? undefined : net.div(gross);
  return {
    item: item.name,
    unit: item.unitText,
    planned,
    bought,
    used,
    plannedCost,
    spent: goodsCost.plus(charges),
    ...shown,
    charges,
    ...(share === undefined
      ? {}
      : {
          ...(inBoardFeet(item) ? { net: used.times(net).div(planned), gross: used.times(gross).div(planned) } : {}),
          ...(used.isZero() ? {} : { yield: share }),
          wasteCost: cents(used.times(plannedCost).div(planned).times(new Exact(1).minus(share))),
        }),
    note: joinedNotes(noteOf(item, { ...shown, waste }), suspectNote(near(item.name))),
  };
};

/** The one row of all that is money and no goods. */
const CHARGES = "freight and tax";
const SAID_BY_THE_ROW: readonly string[] = ["freight", "tax", CHARGES].map(goodsKey);

/** How what was planned of freight and tax went: paid in rows of its own, or with the goods. */
const chargesNote = (planned: Exact, paid: Exact, withGoods: Exact): string => {
  if (planned.isZero()) return "not planned";
  if (paid.isZero()) return withGoods.isZero() ? "planned, not paid" : "planned; what was paid stands with its goods";
  return withGoods.isZero() ? "" : "planned; some of what was paid stands with its goods";
};

/** What was planned and paid of freight, tax, credits and discounts in rows of their own; none where there are no such rows. */
const chargesRow = (items: readonly Item[], near: NearName): readonly Reconciled[] => {
  const money = items.filter((item) => item.isMoney && !(item.plannedCost.isZero() && item.charges.isZero()));
  if (money.length === 0) return [];
  const plannedCost = sum(money.map((item) => item.plannedCost));
  const spent = sum(money.map((item) => item.charges));
  const withGoods = sum(items.filter((item) => !item.isMoney).map((item) => item.charges));
  const named = money.map(({ name }) => name).filter((name) => !SAID_BY_THE_ROW.includes(goodsKey(name)));
  const nothing = { priceVariance: ZERO, usageVariance: ZERO, scope: ZERO, onTheRack: ZERO };
  return [
    {
      item: CHARGES,
      unit: "",
      plannedCost,
      spent,
      ...nothing,
      charges: spent.minus(plannedCost),
      note: joinedNotes(
        chargesNote(plannedCost, spent, withGoods),
        named.length === 0 ? "" : `of ${named.join(", ")}`,
        ...money.map(({ name }) => suspectNote(near(name))),
      ),
    },
  ];
};

/** Columns that every row has and that add up. */
const MONEY = ["plannedCost", "spent", "priceVariance", "usageVariance", "scope", "onTheRack", "charges"] as const;

const totalOf = (rows: readonly Reconciled[]): Reconciled => {
  const total = (amount: (row: Reconciled) => Exact | undefined): Exact => sum(rows.map((row) => amount(row) ?? ZERO));
  const [net, gross] = [total((row) => row.net), total((row) => row.gross)];
  return {
    item: "total",
    unit: "",
    ...(Object.fromEntries(MONEY.map((column) => [column, total((row) => row[column])])) as Record<(typeof MONEY)[number], Exact>),
    ...(gross.isZero() ? {} : { net, gross, yield: net.div(gross) }),
    ...(rows.some((row) => row.wasteCost !== undefined) ? { wasteCost: total((row) => row.wasteCost) } : {}),
    note: "spent less planned cost is price, usage, scope, rack and charges together",
  };
};

/**
 * Planned, bought and used goods by item: what was spent over plan is price variance on what was bought, usage variance on what was used,
 * scope (what was not planned, or planned and neither bought nor used), what lies on the rack, and charges (freight, tax and credits, less
 * what was planned of them); the five add up to it exactly, row by row and in the total, with nothing put in to balance. Without `used`,
 * all that was bought was used.
 */
export const reconciliation = (
  planned: readonly PlannedGoods[], bought: readonly BoughtGoods[], used?: readonly UsedGoods[],
): readonly Reconciled[] | Problem<ReconcileProblem> => {
  const items = goodsItems(planned, bought, used);
  if (isProblem(items)) return items;
  const tables = { planned, bought, used: used ?? [] };
  const near = nearNames(Object.entries(tables).flatMap(([table, rows]) => rows.map(({ item, row }): GoodsName => ({ item, row, table }))));
  const isThere = (item: Item): boolean =>
    !item.isMoney &&
    [item.planned, item.plannedCost, item.bought, item.goodsCost, item.charges, item.used].some((amount) => !amount.isZero());
  const rows = [...items.filter(isThere).map((item) => reconciled(item, near)), ...chargesRow(items, near)];
  return [...rows, totalOf(rows)];
};
