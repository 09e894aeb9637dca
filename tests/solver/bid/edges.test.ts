import { bidFigures, blankNote, nothingLeft, termsOf } from "../../../src/solver/bid/bid";
import { type Cost, costsWith, directCosts, kindOf, optionsOf, taxedWithoutGoods } from "../../../src/solver/bid/cost";
import { allocation } from "../../../src/solver/bid/allocation";
import { cents, isWholeCents, shareInCents } from "../../../src/solver/bid/cents";
import { progressBilling } from "../../../src/solver/bid/progress-billing";
import { roundedUp } from "../../../src/solver/bid/rounded-up";
import { sellingPrice } from "../../../src/solver/bid/selling-price";
import { type Terms, termsWith } from "../../../src/solver/bid/terms";
import { exact, Exact } from "../../../src/solver/length/exact";
import { isProblem } from "../../../src/solver/problem";

/** Each limit of a bid at its figure and a cent to either side; by hand. */

const cost = (more: Partial<Cost> = {}): Cost => ({ item: "oak", row: 2, cost: exact(100), ...more });

describe("a bill of work done", () => {
  const of = (value: number, done: number, stored = 0, deposit = 0): unknown => {
    const work = { item: "part", row: 2, value: exact(value), done, stored: exact(stored), change: false };
    const found = progressBilling([work], { retainage: exact(0), paid: exact(0), deposit: exact(deposit) });
    return isProblem(found) ? found.problem : found.find(({ item }) => item === "due")?.earned?.toNumber();
  };

  test("is of no more than the work is worth, goods on site among it", () => {
    expect([of(10, 1), of(10, 0.9, 1), of(10, 0.9, 1.01), of(10, 1, 0.01), of(0, 0), of(0, 0, 0.01)]).toEqual([
      10, 10, "earned-over-value", "earned-over-value", 0, "earned-over-value",
    ]);
  });

  test("of a deduct takes back as much at most, and adds nothing", () => {
    expect([of(-10, 1), of(-10, 0.5), of(-10, 0.5, 5), of(-10, 0.5, 5.01), of(-10, 1, -0.01), of(-10, 0, 0.01)]).toEqual([
      -10, -5, 0, "earned-over-value", "earned-over-value", "earned-over-value",
    ]);
  });

  test("credits a deposit that is no more than the whole", () => {
    // Half of the work is done, half of the deposit is credited: 5 less 5.
    expect([of(10, 0.5, 0, 10), of(10, 0.5, 0, 10.01), of(-10, 1, 0, 0)]).toEqual([0, "deposit-over-value", -10]);
  });
});

describe("what a cost is", () => {
  test("labour by its unit of time or its name, material else, unless it says so", () => {
    const rows = [cost(), cost({ unit: "hr" }), cost({ item: "Labor" }), cost({ unit: "ft" }), cost({ unit: "hr", kind: "material" })];
    expect(rows.map(kindOf)).toEqual(["material", "labour", "labour", "material", "material"]);
  });

  test("in cents row by row, a material taxed unless it says not, an empty one nothing", () => {
    const rows = [
      cost({ cost: exact("0.005") }), cost({ cost: exact("0.005") }), cost({ taxed: false, cost: exact(1) }),
      cost({ taxed: true, cost: exact(2) }),
      cost({ kind: "labour", cost: exact(4) }), cost({ kind: "subcontract", cost: exact(8) }), { item: "oak", row: 9 },
    ];
    const { materials, taxedMaterials, labour, subcontract } = directCosts(rows);
    expect([materials, taxedMaterials, labour, subcontract].map(Number)).toEqual([3.02, 2.02, 4, 8]);
  });

  test("is taxed by itself only as a material", () => {
    expect([[cost({ taxed: true })], [cost({ kind: "labour", taxed: false })], [cost({ kind: "labour" })]].map(taxedWithoutGoods)).toEqual(
      Array(3).fill(undefined),
    );
    expect(taxedWithoutGoods([cost({ kind: "labour", taxed: true, row: 7 })])).toMatchObject({
      details: { row: 7, item: "oak", kind: "labour" },
    });
  });

  test("of an alternate stands beside those that always do, in their order", () => {
    const rows = [
      cost({ item: "a" }), cost({ item: "b", option: "Ash" }), cost({ item: "c", option: "elm" }), cost({ item: "d", option: "ash" }),
    ];
    const items = (option: string): unknown => {
      const found = costsWith(rows, option);
      return isProblem(found) ? [found.problem, found.details] : found.map(({ item }) => item);
    };
    expect([items(""), items("ash"), items("ELM")]).toEqual([["a"], ["a", "b", "d"], ["a", "c"]]);
    expect(items("asj")).toEqual(["no-such-option", { option: "asj", nearest: '; nearest is "Ash"' }]);
    expect(optionsOf(rows)).toEqual(["Ash", "elm"]);
  });

  test("that is empty is noted by its row, how many more there are, and not where it is included", () => {
    const empty = (row: number, more: Partial<Cost> = {}): Cost => ({ item: "oak", row, ...more });
    const lists = [[cost()], [empty(3)], [empty(3), empty(4), empty(5)], [empty(3, { price: "included" })]];
    expect(lists.map(blankNote)).toEqual([
      "", "cost is 0 or empty in row 3 (oak)", "cost is 0 or empty in row 3 (oak) and 2 more", "",
    ]);
  });
});

describe("terms", () => {
  const terms = (more: Readonly<Record<string, number>>): Terms =>
    termsWith(Object.fromEntries(Object.entries(more).map(([name, rate]) => [name, exact(rate)])));

  test("leave something of the price for the cost", () => {
    const left = (more: Readonly<Record<string, number>>): unknown => nothingLeft(terms(more))?.problem;
    expect([left({ overheadOfPrice: 0.5, profitOfPrice: 0.49 }), left({ overheadOfPrice: 0.5, profitOfPrice: 0.5 })]).toEqual([
      undefined, "nothing-left",
    ]);
    // Half of the price and a markup of the whole: 1 - 0.5 x 2 = 0.
    expect([left({ overheadOfPrice: 0.5, profitOnCost: 0.99 }), left({ overheadOfPrice: 0.5, profitOnCost: 1 })]).toEqual([
      undefined, "nothing-left",
    ]);
    expect(left({ profitOnCost: 5, overheadOnCost: 5 })).toBeUndefined();
  });

  test("make their own rows and no others", () => {
    const all = terms({ burden: 0.3, overheadOnLabour: 0.1, overheadOnMaterials: 0.2, taxOnPrice: 0.07 });
    expect((["burden", "overhead", "tax", "profit", "direct", "price"] as const).map((label) => termsOf(label, all))).toEqual([
      "burden 30 %", "overhead on labour 10 %; overhead on materials 20 %", "tax on price 7 %", "", "", "",
    ]);
  });

  test("each fall on their own, and the price is rounded up last", () => {
    // Materials 100 of which 80 taxed, labour 50: tax paid 8, burden 15, direct 173; contingency a tenth 17.30; overhead on labour and
    // burden a tenth 6.50, on materials and tax paid a fifth 21.60; 218.40, up to the next 5: 220; tax on materials 7 % of 80 is 5.60.
    const figures = bidFigures(
      { materials: exact(100), taxedMaterials: exact(80), labour: exact(50), subcontract: exact(0) },
      terms({
        burden: 0.3, taxPaidOnMaterials: 0.1, contingency: 0.1, overheadOnLabour: 0.1, overheadOnMaterials: 0.2, roundUpTo: 5,
        taxOnMaterials: 0.07,
      }),
    );
    expect(Object.fromEntries(Object.entries(figures).map(([label, amount]) => [label, amount.toNumber()]))).toMatchObject({
      "tax paid on materials": 8, burden: 15, direct: 173, contingency: 17.3, overhead: 28.1, profit: 0, rounding: 1.6, price: 220,
      tax: 5.6, total: 225.6,
    });
  });
});

test("a margin leaves a cost, a markup is any", () => {
  const price = (rate: number, basis: "markup" | "margin"): unknown => {
    const found = sellingPrice(exact(10), exact(rate), basis);
    return isProblem(found) ? [found.problem, found.details] : found.toNumber();
  };
  expect([price(0.5, "markup"), price(2, "markup"), price(0.5, "margin"), price(0.99, "margin")]).toEqual([15, 30, 20, 1000]);
  expect([price(1, "margin"), price(1.5, "margin")]).toEqual([["margin-of-all", { percent: 100 }], ["margin-of-all", { percent: 150 }]]);
});

test("cents: half a one away from zero, shares and rounding up as well", () => {
  expect(["0.005", "0.0049", "-0.005", "1.115"].map((amount) => cents(new Exact(amount)).toNumber())).toEqual([0.01, 0, -0.01, 1.12]);
  expect(["0.01", "1", "0.001"].map((amount) => isWholeCents(new Exact(amount)))).toEqual([true, true, false]);
  // A third of 1, an eighth of 1, of -1, and of nothing.
  const share = (amount: number, part: number, whole: number): number => shareInCents(exact(amount), exact(part), exact(whole)).toNumber();
  expect([share(1, 1, 3), share(1, 1, 8), share(-1, 1, 8), share(0, 1, 0)]).toEqual([0.33, 0.13, -0.13, 0]);
  const up = (amount: number, to: number): number => roundedUp(exact(amount), exact(to)).toNumber();
  expect([up(10, 5), up(10.01, 5), up(10, 0), up(-10.01, 5), up(-0.01, 5)]).toEqual([10, 15, 10, -10, 0]);
});

test("a cent left over goes to the largest remainder, of equal ones to the earlier, and a debt is shared as its mirror", () => {
  const shares = (amount: number, ...weights: number[]): number[] => allocation(exact(amount), weights.map(exact)).map(Number);
  expect([shares(1, 1, 1, 1), shares(-1, 1, 1, 1), shares(0.02, 1, 1, 1), shares(1, 1, 1, 2)]).toEqual([
    [0.34, 0.33, 0.33], [-0.34, -0.33, -0.33], [0.01, 0.01, 0], [0.25, 0.25, 0.5],
  ]);
  // 10 by 1 : 2 : 4 is 1.4285, 2.8571, 5.7142: the one cent left is for 0.85.
  expect([shares(10, 1, 2, 4), shares(10, 0, 1), shares(12.345, 7)]).toEqual([[1.43, 2.86, 5.71], [0, 10], [12.35]]);
});
