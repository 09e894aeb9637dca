import { goodsKey, LABOUR } from "../goods/goods-key";
import { goodsUnit, isTime } from "../goods/goods-unit";
import { Exact } from "../length/exact";
import { nearestOrAll } from "../nearest-word";
import { type Problem, problem } from "../problem";
import { cents } from "./cents";

export const COST_KINDS = ["material", "labour", "subcontract"] as const;
export type CostKind = (typeof COST_KINDS)[number];

export interface Cost {
  readonly item: string | number;
  readonly row: number;
  /** A credit is negative. Absent: 0 or empty, which a host may not tell apart. 0: included elsewhere, in words. */
  readonly cost?: Exact;
  /** As an extension gives it: `included` says that a cost of 0 is meant. */
  readonly price?: string | number;
  /** Absent: labour where the unit is of time or the item is labour, else material. */
  readonly kind?: CostKind;
  readonly unit?: string;
  /** Absent: a material is, labour and subcontract are not. */
  readonly taxed?: boolean;
  /** The line of the quote it belongs to; empty: none in particular. */
  readonly part?: string;
  /** The alternate it belongs to; empty: it stands whatever is chosen. */
  readonly option?: string;
}

export const kindOf = ({ item, kind, unit = "" }: Cost): CostKind => {
  if (kind !== undefined) return kind;
  return (unit !== "" && isTime(goodsUnit(unit))) || goodsKey(item) === LABOUR ? "labour" : "material";
};

/** What a bid begins with, in cents: each row was rounded by itself. */
export interface DirectCosts {
  readonly materials: Exact;
  /** Those of the materials that a tax on materials falls on. */
  readonly taxedMaterials: Exact;
  readonly labour: Exact;
  readonly subcontract: Exact;
}

export const directCosts = (costs: readonly Cost[]): DirectCosts => {
  const sums = { materials: new Exact(0), taxedMaterials: new Exact(0), labour: new Exact(0), subcontract: new Exact(0) };
  for (const row of costs) {
    if (row.cost === undefined) continue;
    const kind = kindOf(row);
    const name = kind === "material" ? "materials" : kind;
    const amount = cents(row.cost);
    sums[name] = sums[name].plus(amount);
    if (kind === "material" && row.taxed !== false) sums.taxedMaterials = sums.taxedMaterials.plus(amount);
  }
  return sums;
};

/** A row that is called taxed and is no material: no tax of a bid falls on it alone. */
export const taxedWithoutGoods = (costs: readonly Cost[]): Problem<"taxed-without-goods"> | undefined => {
  const row = costs.find((cost) => cost.taxed === true && kindOf(cost) !== "material");
  return row === undefined ? undefined : problem("taxed-without-goods", { row: row.row, item: String(row.item), kind: kindOf(row) });
};

const isOption = ({ option = "" }: Cost): boolean => option !== "";

/** The alternates that rows name, each once, as first written. */
export const optionsOf = (costs: readonly Pick<Cost, "option">[]): readonly string[] => {
  const named = new Map<string, string>();
  for (const { option = "" } of costs) if (option !== "" && !named.has(goodsKey(option))) named.set(goodsKey(option), option);
  return [...named.values()];
};

/** The costs that stand whatever is chosen, and with an alternate its own as well. */
export const costsWith = (costs: readonly Cost[], option: string): readonly Cost[] | Problem<"no-such-option" | "no-options"> => {
  const always = costs.filter((cost) => !isOption(cost));
  if (option === "") return always;
  const own = costs.filter((cost) => isOption(cost) && goodsKey(cost.option ?? "") === goodsKey(option));
  if (own.length > 0) return costs.filter((cost) => !isOption(cost) || own.includes(cost));
  const options = optionsOf(costs);
  if (options.length === 0) return problem("no-options", { option });
  return problem("no-such-option", { option, nearest: nearestOrAll(option, options) });
};
