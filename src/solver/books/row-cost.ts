import { cents } from "../bid/cents";
import { Exact, exact } from "../length/exact";
import { type Problem, problem } from "../problem";

/** The money of a row as it was typed. Of goods the cost holds the charges on them, as an invoice's total does, and the price none. */
export interface RowMoney {
  readonly item: string | number;
  readonly quantity: number;
  readonly row: number;
  readonly price: Exact;
  readonly cost: Exact;
  readonly charges?: Exact;
  readonly waste?: number;
}

/** What a row costs, in cents: the goods, and freight, tax and credits. */
export interface RowCost {
  readonly goods: Exact;
  readonly charges: Exact;
}

export type RowCostProblem =
  | "money-without-quantity"
  | "quantity-of-money"
  | "charges-of-money"
  | "price-and-cost-differ"
  | "price-charges-and-cost-differ"
  | "charges-over-cost"
  | "cost-against-quantity";

const NOTHING = new Exact(0);
const HALF_A_CENT = new Exact("0.005");

const opposed = (quantity: Exact, money: Exact): boolean => quantity.times(money).isNegative() && !quantity.isZero() && !money.isZero();

/** Whether price and cost of a row say two things, by more than half a cent a piece. */
const differ = (priced: Exact, cost: Exact, quantity: Exact): boolean =>
  !priced.isZero() && priced.minus(cost).abs().gt(HALF_A_CENT.times(quantity.abs().plus(1)));

/** A row of freight, tax or the like: all of it is charges. */
const costOfCharge = (row: RowMoney, table: string): RowCost | undefined | Problem<RowCostProblem> => {
  const { item, quantity, price, cost, charges = NOTHING, waste = 0 } = row;
  const facts = { table, item: String(item), row: row.row };
  if (![0, 1].includes(Math.abs(quantity))) return problem("quantity-of-money", { ...facts, quantity });
  if (!charges.isZero() || waste !== 0) return problem("charges-of-money", facts);
  if (price.isZero() && cost.isZero()) return undefined;
  const counted = exact(quantity === 0 ? 1 : quantity);
  const priced = price.times(counted);
  const money = cost.isZero() ? priced : cost;
  const given = { ...facts, quantity, cost: money.toString() };
  if (quantity !== 0 && opposed(counted, money)) return problem("cost-against-quantity", { ...given, instead: money.negated().toString() });
  if (!cost.isZero() && differ(priced, cost, counted)) return problem("price-and-cost-differ", { ...given, price: price.toString() });
  return { goods: NOTHING, charges: cents(money) };
};

/** What a row costs; undefined for one of blanks and zeros. */
export const rowCost = (isMoney: boolean, row: RowMoney, table: string): RowCost | undefined | Problem<RowCostProblem> => {
  if (isMoney) return costOfCharge(row, table);
  const { item, price, cost, charges = NOTHING } = row;
  const quantity = exact(row.quantity);
  const facts = { table, item: String(item), row: row.row, quantity: row.quantity };
  const priced = price.times(quantity);
  const goods = cost.isZero() ? priced : cost.minus(charges);
  if (quantity.isZero()) {
    const money = cost.isZero() ? price : goods;
    if (!money.isZero()) return problem("money-without-quantity", { ...facts, money: money.toString() });
    return charges.isZero() ? undefined : { goods: NOTHING, charges: cents(charges) };
  }
  if (opposed(quantity, goods) && !opposed(quantity, cost) && !cost.isZero())
    return problem("charges-over-cost", { ...facts, charges: charges.toString(), cost: cost.toString() });
  if (opposed(quantity, goods))
    return problem("cost-against-quantity", { ...facts, cost: goods.toString(), instead: goods.negated().toString() });
  if (!cost.isZero() && differ(priced, goods, quantity)) {
    const given = { ...facts, price: price.toString(), cost: cost.toString() };
    return charges.isZero()
      ? problem("price-and-cost-differ", given)
      : problem("price-charges-and-cost-differ", { ...given, charges: charges.toString() });
  }
  // What was paid is fixed to the cent first, so that spent is what the papers say.
  return { goods: cost.isZero() ? cents(goods) : cents(cost).minus(cents(charges)), charges: cents(charges) };
};
