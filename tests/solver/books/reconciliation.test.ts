import type { BoughtGoods, PlannedGoods, UsedGoods } from "../../../src/solver/books/goods-items";
import { reconciliation } from "../../../src/solver/books/reconciliation";
import { varianceWord } from "../../../src/solver/books/variance";
import { exact } from "../../../src/solver/length/exact";
import { isProblem } from "../../../src/solver/problem";

type Typed = Readonly<Partial<Record<"item" | "unit", string> & Record<"quantity" | "price" | "cost" | "charges" | "waste", number>>> &
  Partial<Pick<PlannedGoods, "net" | "gross" | "length">>;

const goods = (rows: readonly Typed[]): (PlannedGoods & BoughtGoods)[] =>
  rows.map(({ item = "oak", quantity = 0, unit = "", price = 0, cost = 0, charges, ...more }, at) => ({
    item, quantity, unit, row: at + 2, price: exact(price), cost: exact(cost), ...more,
    ...(charges === undefined ? {} : { charges: exact(charges) }),
  }));
const used = (rows: readonly (readonly [string, number, string?])[]): UsedGoods[] =>
  rows.map(([item, quantity, unit = ""], at) => ({ item, quantity, unit, row: at + 2 }));

const rowsOf = (planned: readonly Typed[], bought: readonly Typed[], fitted?: readonly (readonly [string, number, string?])[]) => {
  const rows = reconciliation(goods(planned), goods(bought), fitted === undefined ? undefined : used(fitted));
  if (isProblem(rows)) throw new Error(`${rows.problem} ${JSON.stringify(rows.details)}`);
  return rows;
};
const refused = (planned: readonly Typed[], bought: readonly Typed[], fitted?: readonly (readonly [string, number, string?])[]) => {
  const rows = reconciliation(goods(planned), goods(bought), fitted === undefined ? undefined : used(fitted));
  return isProblem(rows) ? { problem: rows.problem, details: rows.details } : "taken";
};

const TEN: Typed = { quantity: 10, price: 5 };

// What each note is to say of the one item of the books: common practice, no source.
describe("the note of an item", () => {
  test.each<readonly [string, Typed | undefined, Typed | undefined, number | undefined, string]>([
    ["as planned", TEN, TEN, 10, ""],
    ["planned, not bought, not used", TEN, undefined, 0, "planned, not bought"],
    ["planned, bought, not used", TEN, TEN, 0, ""],
    ["planned, not bought, used", TEN, undefined, 4, "used more than bought: from stock, or a name differs"],
    ["planned, used more than bought", TEN, TEN, 11, "used more than bought: from stock, or a name differs"],
    ["not planned, bought", undefined, TEN, 10, "not planned: counted at the price paid"],
    ["not planned, used more than bought", undefined, TEN, 11,
      "not planned: counted at the price paid; used more than bought: from stock, or a name differs"],
    ["not planned, not bought, used", undefined, undefined, 4, "used without a price planned or paid"],
    ["planned without a price, bought", { quantity: 10 }, TEN, 10, "planned without a price: counted at the price paid"],
    ["planned without a price, not bought", { quantity: 10 }, undefined, 0, "planned without a price, not bought"],
    ["planned without a price, not bought, used", { quantity: 10 }, undefined, 4, "used without a price planned or paid"],
    ["without a net", { ...TEN, gross: 30 }, TEN, 10, "no yield: net is 0 or empty in the plan"],
    ["without a gross", { ...TEN, net: 20 }, TEN, 10, "no yield: gross is 0 or empty in the plan"],
    ["with both, used", { ...TEN, net: 20, gross: 30 }, TEN, 10, ""],
    ["with both, bought and not used", { ...TEN, net: 20, gross: 30 }, TEN, 0, "no yield: nothing was used"],
    ["with both, not bought and not used", { ...TEN, net: 20, gross: 30 }, undefined, 0, "planned, not bought"],
    ["without a price and with a gross alone", { quantity: 10, gross: 30 }, TEN, 10, "planned without a price: counted at the price paid"],
    ["in lengths", { ...TEN, net: 80, gross: 100, length: 10 }, TEN, 10, "net and gross are lengths, not board feet"],
    ["in lengths, to a part in 10^9", { ...TEN, net: 80, gross: 100.0000001, length: 10 }, TEN, 10,
      "net and gross are lengths, not board feet"],
    ["not in lengths by more than that", { ...TEN, net: 80, gross: 100.000001, length: 10 }, TEN, 10, ""],
    ["waste planned, nothing wasted", { ...TEN, waste: 2 }, TEN, 10, "waste 0, allowed 2: -10.00 of the usage variance"],
    ["waste planned, nothing bought", { ...TEN, waste: 2 }, undefined, 0, "planned, not bought"],
    ["waste planned, nothing bought, used", { ...TEN, waste: 2 }, undefined, 4,
      "used more than bought: from stock, or a name differs; waste 0, allowed 2: -10.00 of the usage variance"],
    ["waste, none planned", TEN, { ...TEN, waste: 1 }, 10, "waste 1, allowed 0: 5.00 of the usage variance"],
  ])("%s", (_says, planned, bought, fitted, note) => {
    const one = (row: Typed | undefined) => (row === undefined ? [] : [row]);
    const rows = rowsOf(one(planned), one(bought), fitted === undefined ? [] : [["oak", fitted]]);
    expect(rows[0]).toMatchObject({ item: "oak", note });
  });
});

describe("the row of freight and tax", () => {
  const oak = (charges?: number): Typed => ({ ...TEN, ...(charges === undefined ? {} : { charges }) });
  const noteOf = (planned: number, paid: number, withGoods?: number) =>
    rowsOf(
      [oak(), ...(planned === 0 ? [] : [{ item: "freight", cost: planned }])],
      [oak(withGoods), ...(paid === 0 ? [] : [{ item: "freight", cost: paid }])],
    ).find(({ item }) => item === "freight and tax");

  test.each<readonly [number, number, number | undefined, string | undefined, number | undefined]>([
    [0, 0, undefined, undefined, undefined], [0, 0, 7, undefined, undefined],
    [0, 40, undefined, "not planned", 40], [0, 40, 7, "not planned", 40],
    [60, 0, undefined, "planned, not paid", -60], [60, 0, 7, "planned; what was paid stands with its goods", -60],
    [60, 40, undefined, "", -20], [60, 40, 7, "planned; some of what was paid stands with its goods", -20],
  ])("planned %p, paid %p, with its goods %p", (planned, paid, withGoods, note, charges) => {
    const row = noteOf(planned, paid, withGoods);
    expect([row?.note, row?.charges.toNumber()]).toEqual([note, charges]);
  });

  test("its own name is not said, all others are", () => {
    const note = (...items: readonly string[]) => rowsOf([oak()], [oak(), ...items.map((item) => ({ item, cost: 4 }))]).at(-2)?.note;
    expect(note("freight", "tax")).toBe("not planned");
    expect(note("freight", "discount", "sales tax")).toBe("not planned; of discount, sales tax");
  });
});

describe("the total", () => {
  const board: Typed = { item: "board", quantity: 2, price: 30, net: 6, gross: 8 };

  // By hand: 2 boards of 8 board feet, of which 6 are pieces: yield 6/8, 60 x 2/8 = 15 of waste. Oak has no yield.
  test("adds up board feet and waste of the items that have them", () => {
    const rows = rowsOf([TEN, board], [TEN, { ...board }]);
    expect(rows.map(({ net, gross, yield: share, wasteCost }) => [net, gross, share, wasteCost].map((one) => one?.toNumber()))).toEqual([
      [undefined, undefined, undefined, undefined], [6, 8, 0.75, 15], [6, 8, 0.75, 15],
    ]);
  });

  test("has none where no item has", () => {
    for (const column of ["net", "gross", "yield", "wasteCost"]) expect(rowsOf([TEN], [TEN]).at(-1)).not.toHaveProperty(column);
    const lineal = rowsOf([{ ...TEN, net: 80, gross: 100, length: 10 }], [TEN]);
    expect(lineal[0]?.yield?.toNumber()).toBe(0.8);
    expect(lineal[0]).not.toHaveProperty("net");
    expect(lineal.at(-1)).not.toHaveProperty("yield");
    // 50 x (1 - 0.8).
    expect(lineal.at(-1)?.wasteCost?.toNumber()).toBe(10);
  });

  test("a yield is of what was used: of half the boards half the board feet, of none of them none", () => {
    const half = rowsOf([board], [board], [["board", 1]])[0];
    expect([half?.net, half?.gross, half?.yield, half?.wasteCost].map((one) => one?.toNumber())).toEqual([3, 4, 0.75, 7.5]);
    const none = rowsOf([board], [board], [])[0];
    expect([none?.net, none?.gross, none?.wasteCost].map((one) => one?.toNumber())).toEqual([0, 0, 0]);
    expect(none).not.toHaveProperty("yield");
  });

  test("two rows of one item of which one is in lengths have no yield", () => {
    const rows = rowsOf([board, { ...board, gross: 20, net: 15, length: 10 }], [board]);
    expect(rows[0]).not.toHaveProperty("yield");
    expect(rows[0]).not.toHaveProperty("wasteCost");
  });

  test("an item of which nothing moved has no row", () => {
    const rows = rowsOf([{ quantity: 0 }], [{ item: "ash", quantity: 1, price: 2 }], [["elm", 0]]);
    expect(rows.map(({ item }) => item)).toEqual(["ash", "total"]);
    expect(rowsOf([], [{ charges: 3 }]).map(({ item, charges }) => [item, charges.toNumber()])).toEqual([["oak", 3], ["total", 3]]);
  });
});

describe("units", () => {
  const FEET: Typed = { item: "cove", quantity: 10, unit: "ft", price: 2 };

  // 12 in are a foot, a dozen twelve pieces.
  test("every row counts in the unit of the item's first", () => {
    const rows = rowsOf([FEET], [{ item: "cove", quantity: 144, unit: "in", price: 0.2 }], [["cove", 3, "yd"]]);
    expect(rows[0]).toMatchObject({ unit: "ft" });
    expect([rows[0]?.planned, rows[0]?.bought, rows[0]?.used].map((one) => one?.toNumber())).toEqual([10, 12, 9]);
    const dozens = rowsOf([{ quantity: 1, unit: "dozen", price: 24 }], [{ quantity: 18, unit: "each", price: 2 }]);
    expect(dozens[0]?.bought?.toNumber()).toBe(1.5);
  });

  test("a table without units counts pieces, where some rows have one an empty one is an error", () => {
    expect(rowsOf([{ ...TEN, unit: "each" }], [TEN])[0]).toMatchObject({ unit: "each" });
    expect(rowsOf([TEN], [TEN])[0]).toMatchObject({ unit: "" });
    expect(rowsOf([TEN], [{ ...TEN, unit: "pc" }])[0]).toMatchObject({ unit: "each" });
    expect(refused([FEET], [{ item: "cove", quantity: 10, price: 2 }])).toEqual({
      problem: "unit-is-empty", details: { table: "bought", item: "cove", row: 2, other: "ft" },
    });
    expect(refused([FEET, { ...FEET, unit: "" }], [])).toEqual({
      problem: "unit-is-empty", details: { table: "planned", item: "cove", row: 3, other: "ft" },
    });
    expect(refused([FEET, TEN], [{ ...TEN, unit: "each" }, FEET])).toEqual({
      problem: "unit-is-empty", details: { table: "planned", item: "oak", row: 3, other: "each" },
    });
    expect(refused([FEET, { item: "freight", cost: 3 }], [FEET])).toBe("taken");
  });

  // A planned board of 4 board feet: 20 board feet are 5 of them.
  test("board feet become pieces by those a planned piece takes, and only where the plan tells them", () => {
    const board: Typed = { item: "board", quantity: 2, unit: "each", price: 30, net: 6, gross: 8 };
    const feet: Typed = { item: "board", quantity: 20, unit: "bf", price: 5 };
    expect(rowsOf([board], [feet])[0]?.bought?.toNumber()).toBe(5);
    expect(rowsOf([board], [{ ...feet, quantity: 0.02, unit: "mbf", price: 5000 }])[0]?.bought?.toNumber()).toBe(5);
    for (const plan of [{ ...board, gross: 0 }, { ...board, length: 4 }])
      expect(refused([plan], [feet])).toMatchObject({ problem: "units-differ" });
    expect(refused([board], [{ ...feet, unit: "sheet" }])).toMatchObject({ problem: "units-differ" });
    expect(refused([board, feet], [])).toMatchObject({ problem: "units-differ", details: { table: "planned", row: 3 } });
  });
});

describe("what is refused, in the order of the tables", () => {
  test.each<readonly [string, readonly Typed[], readonly Typed[], string, Readonly<Record<string, string | number>>]>([
    ["a plan that comes to nothing for money", [{ quantity: 5, price: 10 }, { quantity: -5, price: 8 }], [], "planned-nothing-for-money",
      { table: "planned", item: "oak", cost: "10" }],
    ["a price in the second row of a plan only", [{ quantity: 5 }, { quantity: 2, price: 3 }], [], "planned-half-without-price",
      { table: "planned", item: "oak", row: 3 }],
    ["goods bought for nothing", [], [{ quantity: 3 }], "bought-without-price", { table: "bought", item: "oak", row: 2 }],
    ["more waste than there is", [], [{ ...TEN, waste: 11 }], "waste-over-quantity",
      { table: "bought", item: "oak", row: 2, waste: 11, quantity: 10 }],
  ])("%s", (_says, planned, bought, problem, details) => {
    expect(refused(planned, bought)).toMatchObject({ problem, details });
  });

  test("waste of all there is, and a row of nothing beside a price, are not", () => {
    expect(refused([], [{ ...TEN, waste: 10 }])).toBe("taken");
    expect(refused([{ quantity: 0 }, TEN], [])).toBe("taken");
    expect(refused([TEN], [TEN], [["oak", 0]])).toBe("taken");
  });
});

test("more spent than planned is unfavourable", () => {
  expect([1, -1, 0].map((amount) => varianceWord(exact(amount)))).toEqual(["unfavourable", "favourable", "none"]);
});
