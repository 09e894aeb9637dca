import fc from "fast-check";
import { exact } from "../../../src/solver/length/exact";
import type { BoughtGoods, PlannedGoods, UsedGoods } from "../../../src/solver/books/goods-items";
import { type Reconciled, reconciliation } from "../../../src/solver/books/reconciliation";
import { variance, varianceWord } from "../../../src/solver/books/variance";
import { isProblem } from "../../../src/solver/problem";

const of = (standardPrice: number, standardQuantity: number, actualPrice: number, bought: number, used = bought) => {
  const { price, usage } = variance(exact(standardPrice), exact(standardQuantity), exact(actualPrice), exact(bought), exact(used));
  return [price.toNumber(), varianceWord(price), usage.toNumber(), varianceWord(usage)];
};

describe("published variances", () => {
  // [case, standard price, standard quantity, actual price, bought, used, price variance, usage variance]; U is positive, F negative.
  const CASES: readonly (readonly [string, number, number, number, number, number, number, number])[] = [
    ["Lucy Corporation, lumber by the board foot: 59,400 F, though one pasted answer says U", 12, 133950, 12, 129000, 129000, 0, -59400],
    ["textbook exercise: 10,150 F, 2,900 U", 5.8, 28500, 5.45, 29000, 29000, -10150, 2900],
    ["textbook exercise: 25,800 F, 9,000 U", 3, 126000, 2.8, 129000, 129000, -25800, 9000],
    ["textbook exercise: 1,080 F on purchased, 11,016 U on used", 3, 6048, 2.9, 10800, 9720, -1080, 11016],
    ["X, Beta Company: 23,400 F, 9,000 U", 15, 38400, 14.4, 39000, 39000, -23400, 9000],
    ["Y, Beta Company: 2,200 U, 3,800 F", 9.5, 11400, 9.7, 11000, 11000, 2200, -3800],
    ["textbook excerpt: 3,000 F, 165 U", 1.1, 59850, 1.05, 60000, 60000, -3000, 165],
    ["problem 10-39: 2,500 U, 750 F", 2.5, 23400, 2.6, 25000, 23100, 2500, -750],
    ["Filmont Company: price on what was purchased, 52.40 F; 3 yd x 420 left to the reader", 1.75, 1260, 1.71, 1310, 1310, -52.4, 87.5],
    ["OpenStax 8.2: 20 F (the printed form loses its minus)", 7, 20, 6, 20, 20, -20, 0],
    ["OpenStax 8.2: 40 U", 7, 20, 9, 20, 20, 40, 0],
    ["OpenStax 8.2: 0.35 F of quantity", 7, 0.25, 7, 0.2, 0.2, 0, -0.35],
    ["OpenStax Sweet and Fresh: 890 F, 850 U", 0.85, 88000, 0.84, 89000, 89000, -890, 850],
    ["OpenStax Barley: 50,000 U, 150,000 U", 15, 40000, 16, 50000, 50000, 50000, 150000],
    ["OpenStax Barley labour: 50,000 F, 100,000 U", 20, 20000, 18, 25000, 25000, -50000, 100000],
    ["OpenStax 8.2, worked back to a standard of 14.85: 4,637.50 F, 11,137.50 U", 14.85, 12500, 14.5, 13250, 13250, -4637.5, 11137.5],
    ["OpenStax 8.2, dresses: 3,120 U, 3,410 U", 6.2, 51450, 6.26, 52000, 52000, 3120, 3410],
    ["OpenStax 8.2, steel: 3,150 U, 800 U", 20, 4160, 20.75, 4200, 4200, 3150, 800],
  ];
  test.each(CASES)("%s", (_, standardPrice, standardQuantity, actualPrice, bought, used, price, usage) => {
    const [foundPrice, priceWord, foundUsage, usageWord] = of(standardPrice, standardQuantity, actualPrice, bought, used);
    expect([foundPrice, foundUsage]).toEqual([price, usage]);
    const word = (amount: number): string => (amount === 0 ? "none" : amount < 0 ? "favourable" : "unfavourable");
    expect([priceWord, usageWord]).toEqual([word(price), word(usage)]);
  });

  test("OpenStax biscuit: half cents are kept, 6.625 F", () => {
    // 4,750 x 0.75 = 3,562.5; (3,550 - 3,562.5) x 0.53.
    expect(of(0.53, 3562.5, 0.55, 4000, 3550)).toEqual([80, "unfavourable", -6.625, "favourable"]);
  });
});

type Line = readonly [item: string, quantity: number, price: number];

const planned = (lines: readonly Line[]): PlannedGoods[] =>
  lines.map(([item, quantity, price], index) => ({ item, quantity, unit: "", price: exact(price), cost: exact(0), row: index + 1 }));
const bought = (lines: readonly Line[]): BoughtGoods[] => planned(lines);
const used = (lines: readonly (readonly [string, number])[]): UsedGoods[] =>
  lines.map(([item, quantity], index) => ({ item, quantity, unit: "", row: index + 1 }));

const reconciled = (...tables: Parameters<typeof reconciliation>): readonly Reconciled[] => {
  const rows = reconciliation(...tables);
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows;
};

/** Planned cost, spent; price, usage, scope, rack. */
const money = ({ plannedCost, spent, priceVariance, usageVariance, scope, onTheRack }: Reconciled) =>
  [plannedCost, spent, priceVariance, usageVariance, scope, onTheRack].map((amount) => amount.toNumber());

const total = (rows: readonly Reconciled[]): Reconciled => {
  const last = rows[rows.length - 1];
  if (last === undefined) throw new Error("a total");
  return last;
};

test("OpenStax 8.2, ladders: 70,000 paid is 250 U; 8,800 used 900 F, 9,500 used 2,250 U; 69,410 paid 340 F", () => {
  const ladders = (paid: number, fitted: number) =>
    money(
      total(
        reconciled(
          planned([["wood", 9000, 4.5]]),
          [{ row: 1, item: "wood", quantity: 15500, unit: "", price: exact(0), cost: exact(paid) }],
          used([["wood", fitted]]),
        ),
      ),
    );
  expect(ladders(70000, 8800)).toMatchObject({ 2: 250, 3: -900 });
  expect(ladders(69410, 9500)).toMatchObject({ 2: -340, 3: 2250 });
});

describe("the books of an invented stair, by hand", () => {
  const PLANNED: readonly Line[] = [["blank", 13, 52], ["board 16 ft", 2, 38], ["board 8 ft", 2, 18], ["skirt", 2, 84], ["cove", 6, 6.6]];
  const BOUGHT: readonly Line[] = [
    ["blank", 13, 53.5],
    ["blank", 1, 58],
    ["board 16 ft", 3, 38],
    ["board 8 ft", 2, 17.25],
    ["skirt", 2, 84],
    ["cove", 7, 6.6],
  ];
  const USED = [["blank", 14], ["board 16 ft", 2], ["board 8 ft", 2], ["skirt", 2], ["cove", 6]] as const;
  const rows = reconciled(planned(PLANNED), bought(BOUGHT), used(USED));

  test("120.60 over is 24.00 of price, 52.00 of usage and 44.60 on the rack", () => {
    // Planned 676 + 76 + 36 + 168 + 39.60 = 995.60; spent 695.50 + 58 + 114 + 34.50 + 168 + 46.20 = 1,116.20.
    // Price 753.50 - 14 x 52 - 2 x 0.75; usage 52; rack 38 + 6.60.
    expect(money(total(rows))).toEqual([995.6, 1116.2, 24, 52, 0, 44.6]);
  });

  test("an invoice split in two, or a piece bought and returned, changes nothing", () => {
    const split: Line[] = [["blank", 6, 53.5], ["blank", 7, 53.5], ...BOUGHT.slice(1)];
    expect(reconciled(planned(PLANNED), bought(split), used(USED)).map(money)).toEqual(rows.map(money));
    const returned: Line[] = [...BOUGHT, ["cove", 2, 6.6], ["cove", -2, 6.6]];
    expect(reconciled(planned(PLANNED), bought(returned), used(USED)).map(money)).toEqual(rows.map(money));
  });

  test("what was not planned is counted at the price paid, and said", () => {
    const extra = reconciled(planned(PLANNED), bought([...BOUGHT, ["shims", 1, 9]]), used([...USED, ["shims", 1]]));
    expect(extra.find(({ item }) => item === "shims")).toMatchObject({ note: "not planned: counted at the price paid" });
    expect(money(total(extra))).toEqual([995.6, 1125.2, 24, 52, 9, 44.6]);
  });

  test("what was planned and neither bought nor used is scope, and no saving in use", () => {
    // Without the skirts: 1,116.20 - 168 spent, and 168 less of scope.
    const without = reconciled(
      planned(PLANNED),
      bought(BOUGHT.filter(([item]) => item !== "skirt")),
      used(USED.filter(([item]) => item !== "skirt")),
    );
    expect(without.find(({ item }) => item === "skirt")).toMatchObject({ note: "planned, not bought" });
    expect(money(total(without))).toEqual([995.6, 948.2, 24, 52, -168, 44.6]);
  });

  test("not planned, bought and used in part: scope is what was used, the rest lies on the rack", () => {
    // 5 shims at 9 are 45; 3 used are 27, 2 on the rack 18.
    const extra = reconciled(planned(PLANNED), bought([...BOUGHT, ["shims", 5, 9]]), used([...USED, ["shims", 3]]));
    const shims = extra.find(({ item }) => item === "shims");
    expect(shims === undefined ? [] : money(shims)).toEqual([0, 45, 0, 0, 27, 18]);
  });

  test("without a table of what was used, all that was bought was used, and nothing lies on the rack", () => {
    // Usage: (14 - 13) x 52 + (3 - 2) x 38 + (7 - 6) x 6.60 = 96.60; price 24 as before.
    const rack = reconciled(planned(PLANNED), bought(BOUGHT));
    expect(money(total(rack))).toEqual([995.6, 1116.2, 24, 96.6, 0, 0]);
    expect(rack.map(({ note }) => note).slice(0, -1)).toEqual(["", "", "", "", ""]);
  });

  test("used more than bought says where it may have come from", () => {
    const rows = reconciled(planned(PLANNED), bought(BOUGHT), used([...USED, ["cove", 5]]));
    expect(rows.find(({ item }) => item === "cove")).toMatchObject({ note: "used more than bought: from stock, or a name differs" });
  });
});

/** An amount as a fraction of whole numbers: cents over a count. */
type Fraction = readonly [bigint, bigint];
const sum = (...parts: readonly Fraction[]): Fraction => parts.reduce(([a, b], [c, d]): Fraction => [a * d + c * b, b * d], [0n, 1n]);
const whole = (amount: number): bigint => BigInt(Math.round(amount));
const dollars = ([above, below]: Fraction): number => Number(above) / Number(below) / 100;

/**
 * The three variances as they are defined, item by item in whole cents and fractions: nothing is rounded and nothing is taken from a
 * difference.
 */
const byDefinition = (plan: readonly Line[], invoices: readonly Line[], fitted: readonly (readonly [string, number])[]) => {
  const totals = { over: [0n, 1n] as Fraction, price: [0n, 1n] as Fraction, usage: [0n, 1n] as Fraction, rack: [0n, 1n] as Fraction };
  for (const name of new Set(plan.map(([item]) => item))) {
    const count = (rows: readonly (readonly [string, number, number?])[]): bigint =>
      rows.filter(([item]) => item === name).reduce((all, [, quantity]) => all + whole(quantity), 0n);
    const cost = (rows: readonly Line[]): bigint =>
      rows.filter(([item]) => item === name).reduce((all, [, quantity, price]) => all + whole(quantity) * whole(price * 100), 0n);
    const planCount = count(plan);
    const standard = cost(plan);
    const paid = invoices
      .filter(([item]) => item === name)
      .map(([, quantity, price]): Fraction => [(whole(price * 100) * planCount - standard) * whole(quantity), planCount]);
    totals.over = sum(totals.over, [cost(invoices) - standard, 1n]);
    totals.price = sum(totals.price, ...paid);
    totals.usage = sum(totals.usage, [(count(fitted) - planCount) * standard, planCount]);
    totals.rack = sum(totals.rack, [(count(invoices) - count(fitted)) * standard, planCount]);
  }
  return totals;
};

describe("every number of the books moved, one at a time", () => {
  const PLANNED: readonly Line[] = [["blank", 11, 52], ["blank", 2, 49.99], ["board 16 ft", 3, 38.01], ["skirt", 2, 84], ["cove", 7, 6.6]];
  const BOUGHT: readonly Line[] = [
    ["blank", 13, 53.5],
    ["blank", 1, 58],
    ["board 16 ft", 3, 38],
    ["skirt", 2, 84],
    ["cove", 9, 6.65],
    ["cove", -1, 6.65],
  ];
  const USED: readonly (readonly [string, number])[] = [["blank", 14], ["board 16 ft", 2], ["skirt", 2], ["cove", 6]];
  const moves = (rows: readonly Line[]): readonly (readonly Line[])[] =>
    rows.flatMap((_, at) =>
      [
        [1, 0],
        [-1, 0],
        [0, 0.01],
        [0, -0.01],
        [0, 7.77],
      ].map(([more = 0, dearer = 0]) =>
        rows.map((row, index): Line => (index === at ? [row[0], row[1] + more, Math.round((row[2] + dearer) * 100) / 100] : row)),
      ),
    );
  const cases = [
    [PLANNED, BOUGHT, USED] as const,
    ...moves(PLANNED).map((plan) => [plan, BOUGHT, USED] as const),
    ...moves(BOUGHT).map((invoices) => [PLANNED, invoices, USED] as const),
    ...USED.flatMap((_, at) =>
      [1, -1].map(
        (more) =>
          [
            PLANNED,
            BOUGHT,
            USED.map(([item, quantity], index): readonly [string, number] => [item, index === at ? quantity + more : quantity]),
          ] as const,
      ),
    ),
  ];
  const [base] = cases;
  const isCounted = ([plan, invoices]: (typeof cases)[number]): boolean => [...plan, ...invoices].every(([, quantity]) => quantity !== 0);

  test("a move that leaves a price without a quantity is refused", () => {
    const uncounted = cases.filter((each) => !isCounted(each));
    // The one blank that was bought again, and the one cove that was sent back.
    expect(uncounted).toHaveLength(2);
    for (const [plan, invoices, fitted] of uncounted)
      expect(reconciliation(planned(plan), bought(invoices), used(fitted))).toMatchObject({ problem: "money-without-quantity" });
  });

  test(
    "the three variances as defined add up to spent less planned before rounding, and the " +
      "printed ones lie within a cent an item of them",
    () => {
      for (const [plan, invoices, fitted] of cases.filter(isCounted)) {
        const { over, price, usage, rack } = byDefinition(plan, invoices, fitted);
        const [above, below] = sum(price, usage, rack);
        expect(above * over[1]).toBe(over[0] * below);
        const rows = reconciled(planned(plan), bought(invoices), used(fitted));
        const [plannedCost = 0, spent = 0, ...variances] = money(total(rows));
        // Costs in whole cents are printed as they are.
        expect(spent - plannedCost).toBeCloseTo(dollars(over), 9);
        for (const [index, exactly] of [price, usage, [0n, 1n] as Fraction, rack].entries()) {
          expect(Math.abs((variances[index] ?? Number.NaN) - dollars(exactly))).toBeLessThanOrEqual(0.01 * (rows.length - 1));
        }
        expect(Math.round(variances.reduce((all, one) => all + one, 0) * 100)).toBe(Math.round((spent - plannedCost) * 100));
      }
    },
  );

  test("and each move is seen in the total", () => {
    const unmoved = money(total(reconciled(planned(base?.[0] ?? []), bought(base?.[1] ?? []), used(base?.[2] ?? []))));
    for (const [plan, invoices, fitted] of cases.slice(1).filter(isCounted))
      expect(money(total(reconciled(planned(plan), bought(invoices), used(fitted))))).not.toEqual(unmoved);
  });
});

const STOCK = fc.constantFrom("blank", "board", "skirt");
const LINES = fc.array(
  fc.tuple(
    STOCK,
    fc.integer({ min: 1, max: 60 }),
    fc.integer({ min: 1, max: 20000 }).map((cents) => cents / 100),
  ),
  { minLength: 1, maxLength: 6 },
);

test("any purchase split over two invoices changes nothing", () => {
  fc.assert(
    fc.property(LINES, LINES, fc.nat(), fc.nat(), (plan, invoices, which, part) => {
      const at = which % invoices.length;
      const split = invoices.flatMap(([item, quantity, price], index): Line[] => {
        const some = part % (quantity + 1);
        const parts: Line[] = [[item, some, price], [item, quantity - some, price]];
        // A part of nothing is no line of an invoice.
        return index === at ? parts.filter(([, count]) => count !== 0) : [[item, quantity, price]];
      });
      const whole = reconciled(planned(plan), bought(invoices), used([["blank", 3]]));
      expect(reconciled(planned(plan), bought(split), used([["blank", 3]])).map(money)).toEqual(whole.map(money));
    }),
  );
});

test("credits round like charges: books with every quantity turned round are the same amounts with the other sign", () => {
  const turned = (lines: readonly Line[]): Line[] => lines.map(([item, quantity, price]) => [item, -quantity, price]);
  const thirds = fc.integer({ min: 1, max: 99999 }).map((tenths) => tenths / 1000);
  const lines = fc.array(fc.tuple(STOCK, fc.integer({ min: 1, max: 60 }), thirds), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(lines, lines, fc.integer({ min: 0, max: 60 }), (plan, invoices, fitted) => {
      const charges = reconciled(planned(plan), bought(invoices), used([["blank", fitted]]));
      const credits = reconciled(planned(turned(plan)), bought(turned(invoices)), used([["blank", -fitted]]));
      // 0 has no sign in a cell.
      const turnedRound = (amount: number): number => (amount === 0 ? 0 : -amount);
      expect(credits.map((row) => money(row).map((amount) => (amount === 0 ? 0 : amount)))).toEqual(
        charges.map((row) => money(row).map(turnedRound)),
      );
    }),
  );
});

describe("rows that are easily lost", () => {
  test.each([
    ["planned", planned([["cove", 0, 6.6]]), bought([["cove", 7, 6.65]])],
    ["bought", planned([["cove", 6, 6.6]]), bought([["cove", 0, 6.65]])],
  ])("money without a quantity is refused, with its row: %s", (table, plan, invoices) => {
    expect(reconciliation(plan, invoices, [])).toMatchObject({
      problem: "money-without-quantity",
      details: { table, item: "cove", row: 1 },
    });
  });

  test("a row of blanks and zeros is passed over", () => {
    expect(
      money(
        total(
          reconciled(
            planned([
              ["cove", 6, 6.6],
              ["cap", 0, 0],
            ]),
            bought([
              ["cove", 6, 6.6],
              ["cap", 0, 0],
            ]),
            used([
              ["cove", 6],
              ["cap", 0],
            ]),
          ),
        ),
      ),
    ).toEqual([39.6, 39.6, 0, 0, 0, 0]);
  });

  test("a plan taken back to nothing is no plan, and keeps what was bought in the total", () => {
    // By hand: 5 less 5 planned at 10; 3 bought at 10 and all used are 30 of scope.
    expect(
      money(
        total(
          reconciled(
            planned([
              ["board", 5, 10],
              ["board", -5, 10],
            ]),
            bought([["board", 3, 10]]),
            used([["board", 3]]),
          ),
        ),
      ),
    ).toEqual([0, 30, 0, 0, 30, 0]);
  });

  test("items planned without a price say so, bought or not", () => {
    const rows = reconciled(
      planned([
        ["blank", 13, 52],
        ["return", 13, 0],
        ["cove", 6, 0],
      ]),
      bought([
        ["blank", 13, 52],
        ["cove", 6, 6.6],
      ]),
      used([
        ["blank", 13],
        ["cove", 6],
      ]),
    );
    expect(rows.slice(0, -1).map(({ item, note }) => [item, note])).toEqual([
      ["blank", ""],
      ["return", "planned without a price, not bought"],
      ["cove", "planned without a price: counted at the price paid"],
    ]);
    // 6 x 6.60 that no money was planned for.
    expect(money(total(rows))).toEqual([676, 715.6, 0, 0, 39.6, 0]);
  });

  test("an item planned with a price in one row and without in another is refused", () => {
    expect(
      reconciliation(
        planned([
          ["cove", 6, 6.6],
          ["cove", 2, 0],
        ]),
        bought([["cove", 8, 6.6]]),
      ),
    ).toMatchObject({ problem: "planned-half-without-price", details: { item: "cove", row: 2 } });
  });

  describe("freight is money and no goods", () => {
    const freight = (cost: number, quantity = 0): BoughtGoods => ({
      item: "Freight",
      quantity,
      unit: "",
      price: exact(0),
      cost: exact(cost),
      row: 9,
    });
    const blanks = [planned([["blank", 13, 52]]), bought([["blank", 13, 52]]), used([["blank", 13]])] as const;

    const charges = (rows: readonly Reconciled[]): number => total(rows).charges.toNumber();

    test.each([0, 1])("not planned, it is charges and never on the rack, with a quantity of %d", (quantity) => {
      const rows = reconciled(blanks[0], [...blanks[1], freight(40, quantity)], blanks[2]);
      const [, row] = rows;
      expect(row).toMatchObject({ item: "freight and tax", note: "not planned" });
      expect(row).not.toHaveProperty("bought");
      expect(row === undefined ? [] : money(row)).toEqual([0, 40, 0, 0, 0, 0]);
      expect(charges(rows)).toBe(40);
    });

    test("planned, the difference is charges, paid or not", () => {
      const plan = [...blanks[0], freight(60)];
      // By hand: 40 - 60, and nothing - 60.
      const paid = reconciled(plan, [...blanks[1], freight(40)], blanks[2]);
      expect([money(total(paid)), charges(paid), paid[1]?.note]).toEqual([[736, 716, 0, 0, 0, 0], -20, ""]);
      const unpaid = reconciled(plan, blanks[1], blanks[2]);
      expect([money(total(unpaid)), charges(unpaid), unpaid[1]?.note]).toEqual([[736, 676, 0, 0, 0, 0], -60, "planned, not paid"]);
    });

    test("all of it stands in one row, which names what its own name does not say", () => {
      const rest = [{ ...freight(9.5), item: "Sales tax" }, { ...freight(-12), item: "discount" }, { ...freight(3), item: "Tax" }];
      const rows = reconciled(blanks[0], [...blanks[1], freight(40), ...rest], blanks[2]);
      expect(rows.map(({ item }) => item)).toEqual(["blank", "freight and tax", "total"]);
      // By hand: 40 + 9.50 - 12 + 3.
      expect(rows[1]).toMatchObject({ note: "not planned; of Sales tax, discount" });
      expect(charges(rows)).toBe(40.5);
    });

    test("it has no charges or waste of its own", () => {
      for (const more of [{ charges: exact(5) }, { waste: 1 }])
        expect(reconciliation(blanks[0], [...blanks[1], { ...freight(40), ...more }])).toMatchObject({
          problem: "charges-of-money",
          details: { table: "bought", item: "Freight", row: 9 },
        });
    });
    test("a quantity of it is refused, and so is freight that was used", () => {
      expect(reconciliation(blanks[0], [...blanks[1], freight(40, 3)], blanks[2])).toMatchObject({
        problem: "quantity-of-money",
        details: { table: "bought", row: 9, quantity: 3 },
      });
      expect(reconciliation(blanks[0], [...blanks[1], freight(40)], used([["freight", 1]]))).toMatchObject({
        problem: "quantity-of-money",
        details: { table: "used" },
      });
    });
  });

  test("a return that costs money is refused", () => {
    const back: BoughtGoods = { row: 1, item: "cove", quantity: -1, unit: "", price: exact(0), cost: exact(6.6) };
    expect(reconciliation(planned([["cove", 6, 6.6]]), [back], [])).toMatchObject({
      problem: "cost-against-quantity",
      details: { item: "cove", instead: "-6.6" },
    });
  });

  test("price and cost of a row must agree", () => {
    const line: BoughtGoods = { row: 1, item: "cove", quantity: 6, unit: "", price: exact(6.6), cost: exact(40) };
    expect(reconciliation(planned([["cove", 6, 6.6]]), [line], [])).toMatchObject({ problem: "price-and-cost-differ" });
  });
});

test("a planned price of thirds still ties to the cent, row by row", () => {
  // By hand: 2 at 10 and 1 at 10.01 are 30.01 for 3; 5 bought at 10.005 are 50.03 (half a cent away from zero), at the plan's 10.003333
  // 50.02;
  // 4 used are 40.01: price 0.01, usage 10.00, rack 10.01; 50.03 - 30.01 = 20.02.
  const [row] = reconciled(planned([["blank", 2, 10], ["blank", 1, 10.01]]), bought([["blank", 5, 10.005]]), used([["blank", 4]]));
  expect(row === undefined ? [] : money(row)).toEqual([30.01, 50.03, 0.01, 10, 0, 10.01]);
});

test("whatever is typed, spent less planned is price, usage, scope, rack and charges together, row by row and in the total", () => {
  const item = fc.constantFrom("blank", "board", "skirt", "cove", "glue", "freight");
  const amount = fc.integer({ min: -400, max: 4000 }).map((quarters) => quarters / 4);
  // Prices to a tenth of a cent, so that rows round.
  const priceOf = fc.integer({ min: 1, max: 200000 }).map((tenths) => tenths / 1000);
  const counted = ([name, quantity, price]: Line): Line => [name, name === "freight" ? Math.sign(quantity) || 1 : quantity || 1, price];
  const positive = fc.array(fc.tuple(item, fc.integer({ min: 1, max: 60 }), priceOf).map(counted), { minLength: 1, maxLength: 8 });
  const goods = fc.array(fc.tuple(fc.constantFrom("blank", "board", "skirt", "cove", "glue"), amount), { maxLength: 8 });
  // Freight and tax on the goods of a row, in tenths of a cent, and how many of them were spoiled.
  const further = fc.tuple(fc.integer({ min: -5000, max: 50000 }).map((tenths) => tenths / 1000), fc.integer({ min: 0, max: 5 }));
  const burdened = fc.array(fc.tuple(fc.tuple(item, amount, priceOf).map(counted), further), { maxLength: 8 });
  fc.assert(
    fc.property(positive, burdened, fc.option(goods), (plan, lines, fitted) => {
      const invoices = bought(lines.map(([line]) => line)).map((line, index) => {
        const [charges = 0, waste = 0] = line.item === "freight" ? [] : (lines[index]?.[1] ?? []);
        return { ...line, charges: exact(charges), waste: Math.max(0, Math.min(waste, line.quantity)) };
      });
      const rows = reconciled(planned(plan), invoices, ...(fitted === null ? [] : [used(fitted)]));
      for (const row of rows) {
        const over = row.spent.minus(row.plannedCost);
        expect(over.eq(row.priceVariance.plus(row.usageVariance).plus(row.scope).plus(row.onTheRack).plus(row.charges))).toBe(true);
        for (const amount of money(row)) expect(amount).toBe(Math.round(amount * 100) / 100);
      }
      const sums = rows.slice(0, -1).reduce((all, row) => all.plus(row.spent), exact(0));
      expect(sums.eq(total(rows).spent)).toBe(true);
      if (fitted === null) expect(total(rows).onTheRack.toNumber()).toBe(0);
    }),
  );
});

describe("charges on the goods of a row", () => {
  const plan = planned([["newel", 2, 85]]);
  const newels = (more: Partial<BoughtGoods>): BoughtGoods => ({
    item: "newel", quantity: 2, unit: "", price: exact(0), cost: exact(0), row: 4, ...more,
  });
  const moneyAndCharges = (line: BoughtGoods): number[] => {
    const [row] = reconciled(plan, [line]);
    return row === undefined ? [] : [...money(row), row.charges.toNumber()];
  };

  // By hand: 2 newels at 85.75 are 171.50, and 17.98 of freight and tax make 189.48; planned 170.
  const WORKED = [170, 189.48, 1.5, 0, 0, 0, 17.98];

  test("the cost has them in it, the price has not", () => {
    const charges = exact(17.98);
    expect(moneyAndCharges(newels({ cost: exact(189.48), charges }))).toEqual(WORKED);
    expect(moneyAndCharges(newels({ price: exact(85.75), charges }))).toEqual(WORKED);
    expect(moneyAndCharges(newels({ price: exact(85.75), cost: exact(189.48), charges }))).toEqual(WORKED);
  });

  test("a row of charges alone adds no goods", () => {
    const late = newels({ quantity: 0, cost: exact(1.36), charges: exact(1.36) });
    const [row] = reconciled(plan, [newels({ cost: exact(189.48), charges: exact(17.98) }), late]);
    // By hand: 189.48 + 1.36, 17.98 + 1.36.
    expect(row === undefined ? [] : [...money(row), row.charges.toNumber()]).toEqual([170, 190.84, 1.5, 0, 0, 0, 19.34]);
    expect(moneyAndCharges(newels({ quantity: 0, charges: exact(5) }))).toEqual([170, 5, 0, 0, -170, 0, 5]);
  });

  test("a cost without the charges in it is refused, and charges beyond the cost", () => {
    const refused = (more: Partial<BoughtGoods>): unknown => reconciliation(plan, [newels(more)]);
    expect(refused({ price: exact(85.75), cost: exact(171.5), charges: exact(17.98) })).toMatchObject({
      problem: "price-charges-and-cost-differ",
      details: { table: "bought", row: 4, quantity: 2, price: "85.75", charges: "17.98", cost: "171.5" },
    });
    expect(refused({ cost: exact(10), charges: exact(12) })).toMatchObject({
      problem: "charges-over-cost",
      details: { charges: "12", cost: "10" },
    });
    expect(refused({ quantity: 0, cost: exact(10), charges: exact(2) })).toMatchObject({
      problem: "money-without-quantity",
      details: { money: "8" },
    });
  });

  test("what came back takes its charges along", () => {
    // By hand: 3 at 85.75 with 26.97, 1 back at 85.75 with 8.99, are the two newels above.
    const [row] = reconciled(plan, [
      newels({ quantity: 3, cost: exact(284.22), charges: exact(26.97) }),
      newels({ quantity: -1, cost: exact(-94.74), charges: exact(-8.99) }),
    ]);
    expect(row === undefined ? [] : [...money(row), row.charges.toNumber()]).toEqual(WORKED);
  });
});

describe("waste of a row", () => {
  const line = (waste: number, quantity = 8): BoughtGoods => ({
    item: "blank", quantity, unit: "", price: exact(53), cost: exact(0), row: 2, waste,
  });

  test("is told beside what the plan allows, and is more than the quantity in no row", () => {
    const [plain] = planned([["blank", 7, 52]]);
    const plan = [{ ...plain!, waste: 0 }];
    // By hand: one blank at the planned 52.
    expect(reconciled(plan, [line(1)])[0]).toMatchObject({ note: "waste 1, allowed 0: 52.00 of the usage variance" });
    const allowed = [{ ...plain!, waste: 3 }];
    expect(reconciled(allowed, [line(1)])[0]).toMatchObject({ note: "waste 1, allowed 3: -104.00 of the usage variance" });
    expect(reconciled(plan, [line(0)])[0]).toMatchObject({ note: "" });
    expect(reconciled([], [line(1)])[0]).toMatchObject({ note: "not planned: counted at the price paid; waste 1" });
    expect(reconciliation(plan, [line(9)])).toMatchObject({
      problem: "waste-over-quantity",
      details: { table: "bought", item: "blank", row: 2, waste: 9, quantity: 8 },
    });
    expect(reconciliation([{ ...plain!, waste: 8 }], [line(1)])).toMatchObject({
      problem: "waste-over-quantity",
      details: { table: "planned", waste: 8, quantity: 7 },
    });
  });
});

describe("waste inside the piece", () => {
  // Blanks of 11 1/2 x 42 x 1: 3.3542 board feet each; on a 10 in run 11 1/4 x 38 of it is tread, on a 9 in run 10 1/4 x 38.
  const blank = (depth: number): PlannedGoods => ({
    row: 1,
    item: "blank",
    quantity: 13,
    unit: "each",
    price: exact(52),
    cost: exact(0),
    net: (13 * depth * 38) / 144,
    gross: (13 * 11.5 * 42) / 144,
  });
  const invoice: BoughtGoods = { row: 1, item: "blank", quantity: 13, unit: "each", price: exact(52), cost: exact(0) };
  const fitted: UsedGoods = { row: 1, item: "blank", quantity: 13, unit: "" };

  test("a 9 in run shows no variance in count or price, and its rip in board feet and money", () => {
    const [ten, nine] = [11.25, 10.25].map((depth) => reconciled([blank(depth)], [invoice], [fitted])[0]);
    expect(ten?.priceVariance.toNumber()).toBe(0);
    expect(nine?.usageVariance.toNumber()).toBe(0);
    // 676 x (1 - 11.25 x 38 / (11.5 x 42)) = 77.68; with 10.25: 130.86.
    expect(ten?.wasteCost?.toNumber()).toBe(77.68);
    expect(nine?.wasteCost?.toNumber()).toBe(130.86);
    expect(nine?.yield?.toNumber()).toBeCloseTo(389.5 / 483, 9);
  });

  test("wood bought by the board foot is turned into blanks by what a planned one takes", () => {
    const inBoardFeet: BoughtGoods = {
      row: 1,
      item: "blank",
      quantity: (13 * 11.5 * 42) / 144,
      unit: "bf",
      price: exact(15.5),
      cost: exact(0),
    };
    const [row] = reconciled([blank(11.25)], [inBoardFeet], [fitted]);
    expect(row?.bought?.toNumber()).toBeCloseTo(13, 12);
    expect(row?.onTheRack.toNumber()).toBeCloseTo(0, 9);
  });

  test("net and gross of a plan in lengths are no board feet: their share holds, they add to none, and convert none", () => {
    // BUY without width and thickness: 2 sticks of 96 in at 10, 160 in of pieces; 20 x (1 - 160 / 192) = 3.33.
    const stick: PlannedGoods = {
      row: 1,
      item: "stick",
      quantity: 2,
      unit: "",
      price: exact(10),
      cost: exact(20),
      net: 160,
      gross: 192,
      length: 96,
    };
    const rows = reconciled(
      [blank(11.25), stick],
      [invoice, { row: 1, item: "stick", quantity: 2, unit: "", price: exact(10), cost: exact(20) }],
      [fitted, { row: 1, item: "stick", quantity: 2, unit: "" }],
    );
    expect(rows[1]).not.toHaveProperty("gross");
    expect(rows[1]?.yield?.toNumber()).toBeCloseTo(160 / 192, 12);
    expect(rows[1]?.wasteCost?.toNumber()).toBe(3.33);
    // 13 blanks of 11 1/2 x 42 / 144; 77.68 + 3.33.
    expect(total(rows).gross?.toNumber()).toBeCloseTo((13 * 11.5 * 42) / 144, 9);
    expect(total(rows).wasteCost?.toNumber()).toBe(81.01);
    const inBoardFeet: BoughtGoods = { row: 1, item: "stick", quantity: 8, unit: "bf", price: exact(5), cost: exact(0) };
    expect(reconciliation([{ ...stick, unit: "each" }], [inBoardFeet], [])).toMatchObject({ problem: "units-differ" });
  });

  test("waste of one item is the waste of the month where the other item has no yield to tell it by", () => {
    const nails: PlannedGoods = { row: 2, item: "nails", quantity: 1, unit: "", price: exact(8), cost: exact(8) };
    const rows = reconciled(
      [blank(11.25), nails],
      [invoice, { row: 2, item: "nails", quantity: 1, unit: "", price: exact(8), cost: exact(8) }],
      [fitted, { row: 2, item: "nails", quantity: 1, unit: "" }],
    );
    expect(rows[1]).not.toHaveProperty("wasteCost");
    // The blank's alone: 77.68, worked out above.
    expect(total(rows).wasteCost?.toNumber()).toBe(77.68);
    expect(total(reconciled([{ ...nails, row: 1 }], [], []))).not.toHaveProperty("wasteCost");
  });

  test("units that nothing converts are refused by name", () => {
    expect(
      reconciliation(
        planned([["cove", 6, 6.6]]).map((row) => ({ ...row, unit: "each" })),
        [{ row: 1, item: "cove", quantity: 40, unit: "ft", price: exact(1), cost: exact(0) }],
        [],
      ),
    ).toMatchObject({ problem: "units-differ", details: { table: "bought", item: "cove", row: 1, unit: "ft", other: "each" } });
    expect(
      reconciliation(planned([["cove", 6, 6.6]]), [{ row: 1, item: "cove", quantity: 6, unit: "", price: exact(0), cost: exact(0) }], []),
    ).toMatchObject({ problem: "bought-without-price" });
  });
});
