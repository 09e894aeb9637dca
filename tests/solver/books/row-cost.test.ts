import { rowCost, type RowMoney } from "../../../src/solver/books/row-cost";
import { exact } from "../../../src/solver/length/exact";
import { isProblem } from "../../../src/solver/problem";

type Typed = Readonly<Partial<Record<"quantity" | "price" | "cost" | "charges" | "waste", number>>>;

const rowOf = ({ quantity = 0, price = 0, cost = 0, charges, waste }: Typed): RowMoney => ({
  item: "oak", row: 7, quantity, price: exact(price), cost: exact(cost),
  ...(charges === undefined ? {} : { charges: exact(charges) }), ...(waste === undefined ? {} : { waste }),
});

const answer = (isMoney: boolean, typed: Typed): string | readonly number[] | undefined => {
  const found = rowCost(isMoney, rowOf(typed), "bought");
  if (found === undefined) return undefined;
  return isProblem(found) ? found.problem : [found.goods.toNumber(), found.charges.toNumber()];
};

// Goods and charges by hand, in cents, half a cent away from zero; price and cost may differ by half a cent a piece and one more.
describe("goods", () => {
  test.each<readonly [string, Typed, string | readonly number[] | undefined]>([
    ["by their price", { quantity: 3, price: 12.5 }, [37.5, 0]],
    ["by their cost", { quantity: 3, cost: 37.51 }, [37.51, 0]],
    ["by both, the cost counts", { quantity: 1, price: 10, cost: 10.01 }, [10.01, 0]],
    ["one, a hair more than a cent apart", { quantity: 1, price: 10, cost: 10.011 }, "price-and-cost-differ"],
    ["one, a hair less than its price", { quantity: 1, price: 10, cost: 9.989 }, "price-and-cost-differ"],
    ["nine, five cents apart", { quantity: 9, price: 1, cost: 9.05 }, [9.05, 0]],
    ["nine, more than five cents apart", { quantity: 9, price: 1, cost: 9.051 }, "price-and-cost-differ"],
    ["nine back, five cents apart", { quantity: -9, price: 1, cost: -9.05 }, [-9.05, 0]],
    ["nine back, more than five cents apart", { quantity: -9, price: 1, cost: -9.051 }, "price-and-cost-differ"],
    ["at half a cent", { quantity: 1, price: 0.125 }, [0.13, 0]],
    ["with charges in the cost", { quantity: 2, cost: 189.48, charges: 17.98 }, [171.5, 17.98]],
    ["with charges beside the price", { quantity: 2, price: 85.75, charges: 17.98 }, [171.5, 17.98]],
    ["cost and charges each to the cent: 10.01 - 2.01", { quantity: 1, cost: 10.005, charges: 2.005 }, [8, 2.01]],
    ["whose cost is all charges", { quantity: 2, cost: 12, charges: 12 }, [0, 12]],
    ["with more charges than cost", { quantity: 2, cost: 10, charges: 12 }, "charges-over-cost"],
    ["back, with more charges than cost", { quantity: -2, cost: -10, charges: -12 }, "charges-over-cost"],
    ["with a credit on them", { quantity: 2, cost: 10, charges: -2 }, [12, -2]],
    ["with a cost that holds no charges", { quantity: 2, price: 85.75, cost: 171.5, charges: 17.98 }, "price-charges-and-cost-differ"],
    ["that cost less than nothing", { quantity: 2, price: -5 }, "cost-against-quantity"],
    ["back that cost something", { quantity: -2, cost: 5 }, "cost-against-quantity"],
    ["back by their price", { quantity: -2, price: 5 }, [-10, 0]],
    ["for nothing", { quantity: 2 }, [0, 0]],
    ["none", {}, undefined],
    ["none, of charges alone", { charges: 5 }, [0, 5]],
    ["none, of a cost that is all charges", { cost: 5, charges: 5 }, [0, 5]],
    ["none, at a price", { price: 6.6 }, "money-without-quantity"],
    ["none, at a cost", { cost: 6.6 }, "money-without-quantity"],
    ["none, at a cost that is not all charges", { cost: 6.6, charges: 5 }, "money-without-quantity"],
  ])("%s", (_says, typed, expected) => {
    expect(answer(false, typed)).toEqual(expected);
  });

  test.each<readonly [Typed, Readonly<Record<string, string | number>>]>([
    [{ price: 6.6 }, { quantity: 0, money: "6.6" }],
    [{ cost: 6.6, charges: 5 }, { quantity: 0, money: "1.6" }],
    [{ quantity: 2, cost: 10, charges: 12 }, { quantity: 2, charges: "12", cost: "10" }],
    [{ quantity: 2, price: -5 }, { quantity: 2, cost: "-10", instead: "10" }],
    [{ quantity: 6, price: 6.6, cost: 40 }, { quantity: 6, price: "6.6", cost: "40" }],
    [{ quantity: 2, price: 80, cost: 171.5, charges: 1 }, { price: "80", charges: "1", cost: "171.5" }],
  ])("what is refused says what was read: %j", (typed, details) => {
    expect(rowCost(false, rowOf(typed), "bought")).toMatchObject({ details: { table: "bought", item: "oak", row: 7, ...details } });
  });
});

describe("freight, tax and the like", () => {
  test.each<readonly [string, Typed, string | readonly number[] | undefined]>([
    ["by a cost", { cost: 40 }, [0, 40]],
    ["by a price", { price: 40 }, [0, 40]],
    ["one of it", { quantity: 1, price: 40 }, [0, 40]],
    ["one of it back", { quantity: -1, price: 40 }, [0, -40]],
    ["a discount", { cost: -12 }, [0, -12]],
    ["one of it back at less than nothing", { quantity: -1, cost: -12 }, [0, -12]],
    ["one of it back at a cost", { quantity: -1, cost: 12 }, "cost-against-quantity"],
    ["one of it at less than nothing", { quantity: 1, cost: -12 }, "cost-against-quantity"],
    ["three of it", { quantity: 3, cost: 40 }, "quantity-of-money"],
    ["half of it", { quantity: 0.5, cost: 40 }, "quantity-of-money"],
    ["none of it", {}, undefined],
    ["one of nothing", { quantity: 1 }, undefined],
    ["price and cost a cent apart", { quantity: 1, price: 5, cost: 5.01 }, [0, 5.01]],
    ["price and cost two cents apart", { quantity: 1, price: 5, cost: 5.02 }, "price-and-cost-differ"],
    ["price and cost without a quantity", { price: 5, cost: 6 }, "price-and-cost-differ"],
    ["charges on it", { cost: 40, charges: 1 }, "charges-of-money"],
    ["no charges on it", { cost: 40, charges: 0, waste: 0 }, [0, 40]],
    ["waste of it", { cost: 40, waste: 1 }, "charges-of-money"],
    ["to the cent", { cost: 40.005 }, [0, 40.01]],
  ])("%s", (_says, typed, expected) => {
    expect(answer(true, typed)).toEqual(expected);
  });

  test("what is refused says what was read", () => {
    const details = (typed: Typed) => rowCost(true, rowOf(typed), "planned");
    const facts = { table: "planned", item: "oak", row: 7 };
    expect(details({ quantity: -1, price: -3 })).toMatchObject({ details: { ...facts, quantity: -1, cost: "3", instead: "-3" } });
    expect(details({ quantity: 1, price: 5, cost: 6 })).toMatchObject({ details: { ...facts, quantity: 1, price: "5", cost: "6" } });
    expect(details({ quantity: 3, cost: 6 })).toMatchObject({ details: { ...facts, quantity: 3 } });
  });
});
