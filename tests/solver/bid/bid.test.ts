import * as fc from "fast-check";
import { BID } from "../../../src/functions/bid/bid";
import { EXTEND } from "../../../src/functions/bid/extend";
import { call } from "../../../src/functions/call";
import { bid, BID_LABELS } from "../../../src/solver/bid/bid";
import type { Cost } from "../../../src/solver/bid/cost";
import { TERM_NAMES, type TermName, type Terms, termsWith } from "../../../src/solver/bid/terms";
import { Exact } from "../../../src/solver/length/exact";
import { isProblem } from "../../../src/solver/problem";
import { words } from "../../../src/solver/words";
import { anyCosts, anyTerms } from "./any-bid";

type Rates = Partial<Record<TermName, number | string>>;

const stated = (rates: Rates): Terms =>
  termsWith(Object.fromEntries(Object.entries(rates).map(([name, rate]) => [name, new Exact(rate)])) as Partial<Terms>);

const cost = (amount: number | string, further: Partial<Cost> = {}): Cost =>
  ({ item: "goods", row: 1, cost: new Exact(amount), ...further });
const labour = (amount: number): Cost => cost(amount, { kind: "labour" });

const figuresOf = (costs: readonly Cost[], terms: Terms, option = ""): Record<string, number> => {
  const rows = bid(costs, terms, option);
  if (isProblem(rows)) throw new Error(rows.problem);
  return Object.fromEntries(rows.map((row) => [row.label, row.cost.plus(0).toNumber()]));
};
const figures = (costs: readonly Cost[], rates: Rates): Record<string, number> => figuresOf(costs, stated(rates));

// I. P. Hicks, The Builders' Guide, Estimating Labor for Carpentry Work.
test("bid 900 with labor 750 is a profit of 150; bid 800 with labor 600 is a profit of 200", () => {
  // 150 is a fifth of 750; 200 is a fourth of the price of 800
  expect(figures([labour(750)], { profitOnCost: 0.2 })).toMatchObject({ profit: 150, price: 900, total: 900 });
  expect(figures([labour(600)], { profitOfPrice: 0.25 })).toMatchObject({ profit: 200, price: 800, total: 800 });
});

test("Markup and Gross Profit: 20 % of the price on 200,000 is a price of 250,000", () => {
  expect(figures([cost(200000)], { profitOfPrice: 0.2 })).toMatchObject({ profit: 50000, price: 250000 });
});

test("change order clause: overhead 10 % and profit 5 % compound, because profit is on both", () => {
  // the clause leaves it open; by hand: 1,000 + 100 = 1,100, 5 % is 55
  expect(figures([cost(1000)], { overheadOnCost: 0.1, profitOnCost: 0.05 })).toMatchObject({ overhead: 100, profit: 55, price: 1155 });
});

test("1,000 at 32 % and 10 %: the label says what each is of, and so which price it is", () => {
  // A published case prices both as shares of revenue, 1,724: 1,000 / (1 - 0.42) = 1,724.14, 32 % of it 551.72.
  expect(figures([cost(1000)], { overheadOfPrice: 0.32, profitOfPrice: 0.1 })).toMatchObject({
    overhead: 551.72, profit: 172.42, price: 1724.14,
  });
  // The same book's price on cost, 1,452: 1,000 x 1.32 x 1.1. By hand: 1,320 / 0.9 = 1,466.67.
  expect(figures([cost(1000)], { overheadOnCost: 0.32, profitOnCost: 0.1 })).toMatchObject({ overhead: 320, profit: 132, price: 1452 });
  expect(figures([cost(1000)], { overheadOnCost: 0.32, profitOfPrice: 0.1 })).toMatchObject({
    overhead: 320, profit: 146.67, price: 1466.67,
  });
  // Overhead of price under a markup: price = 1,000 x 1.1 / (1 - 0.32 x 1.1) = 1,697.53; 32 % is 543.21; 10 % of 1,543.21 is 154.32.
  expect(figures([cost(1000)], { overheadOfPrice: 0.32, profitOnCost: 0.1 })).toMatchObject({
    overhead: 543.21, profit: 154.32, price: 1697.53,
  });
});

// Marion County (Oregon) change order letter: 15 % on labor, 10 % on materials.
test("overhead on labour and on materials stand together", () => {
  // by hand: 400 x 15 % = 60, 600 x 10 % = 60
  expect(figures([labour(400), cost(600)], { overheadOnLabour: 0.15, overheadOnMaterials: 0.1 })).toMatchObject({
    overhead: 120, price: 1120,
  });
});

// Remodeling magazine, How Much Does an Employee Cost: 42.15 % of a wage of 20, 28.43.
test("burden is added to labour alone, before contingency and overhead", () => {
  expect(figures([labour(20), cost(80)], { burden: 0.4215 })).toMatchObject({ burden: 8.43, direct: 108.43 });
  // by hand: 20 + 8.43 = 28.43, half of it on labour; 108.43 a tenth is 10.84
  expect(figures([labour(20), cost(80)], { burden: 0.4215, overheadOnLabour: 0.5 }).overhead).toBe(14.22);
  expect(figures([labour(20), cost(80)], { burden: 0.4215, contingency: 0.1, overheadOnCost: 0.5 })).toMatchObject({
    contingency: 10.84, overhead: 59.64,
  });
});

test("three ways of tax: paid on materials and marked up, of the price, or of the taxed materials beside the price", () => {
  const costs = [cost(600), labour(450), cost(-50), cost(75, { kind: "subcontract" }), cost(25, { taxed: false })];
  // by hand: taxed 600 - 50 = 550, 7 % is 38.50; direct 1,100
  const onCost = { overheadOnCost: 0.1, profitOnCost: 0.2 };
  expect(figures(costs, { ...onCost, taxPaidOnMaterials: 0.07 })).toMatchObject({
    "tax paid on materials": 38.5, direct: 1138.5, overhead: 113.85, profit: 250.47, price: 1502.82, tax: 0, total: 1502.82,
  });
  // 1,100 + 110 + 242 = 1,452, 7 % is 101.64
  expect(figures(costs, { ...onCost, taxOnPrice: 0.07 })).toMatchObject({ direct: 1100, price: 1452, tax: 101.64, total: 1553.64 });
  expect(figures(costs, { ...onCost, taxOnMaterials: 0.07 })).toMatchObject({ price: 1452, tax: 38.5, total: 1490.5 });
  expect(figures(costs, { ...onCost, taxPaidOnMaterials: 0.07, overheadOnCost: 0, overheadOnMaterials: 0.1 }).overhead).toBe(61.35);
});

test("round up to: rounding is shown apart, and tax is of the rounded price", () => {
  // by hand: 1,466.67 to the next whole 50 is 33.33; 8 % of 1,500
  expect(figures([cost(1000)], { overheadOnCost: 0.32, profitOfPrice: 0.1, roundUpTo: 50, taxOnPrice: 0.08 })).toMatchObject({
    profit: 146.67, rounding: 33.33, price: 1500, tax: 120, total: 1620,
  });
  // A whole price stays; a credit goes up too.
  expect(figures([cost(1500)], { roundUpTo: 50 })).toMatchObject({ rounding: 0, price: 1500 });
  expect(figures([cost(-1495)], { roundUpTo: 50 })).toMatchObject({ rounding: 45, price: -1450 });
});

test("a row is in cents before it is added: one of three at 38.005 is 114.02, three of one are 114.03", () => {
  // By hand: 114.015 and 38.005, half a cent away from zero.
  expect(figures([cost("114.015")], {})).toMatchObject({ direct: 114.02, total: 114.02 });
  expect(figures([cost("38.005"), cost("38.005"), cost("38.005")], {})).toMatchObject({ direct: 114.03, total: 114.03 });
  // Tax on the rows as they are added: 10 % of 114.03 is 11.403.
  expect(figures([cost("38.005"), cost("38.005"), cost("38.005")], { taxOnMaterials: 0.1 })).toMatchObject({ tax: 11.4, total: 125.43 });
});

describe("laws", () => {
  const isFine = (rows: Record<string, number>): void => {
    const add = (...labels: string[]): number => labels.reduce((sum, label) => sum.plus(rows[label] ?? NaN), new Exact(0)).toNumber();
    expect(add("materials", "tax paid on materials", "labour", "burden", "subcontract")).toBe(rows["direct"]);
    expect(add("direct", "contingency", "overhead", "profit", "rounding")).toBe(rows["price"]);
    expect(add("price", "tax")).toBe(rows["total"]);
    for (const figure of Object.values(rows)) expect(new Exact(figure).times(100).isInteger()).toBe(true);
  };

  test("printed totals add printed rows, to the cent", () => {
    fc.assert(fc.property(anyCosts, anyTerms, (costs, terms) => isFine(figuresOf(costs, terms))));
  });

  test("the price formula turned round: what the terms take of the price leaves the cost", () => {
    fc.assert(
      fc.property(anyCosts, anyTerms, (costs, terms) => {
        const rows = figuresOf(costs, terms);
        const row = (label: string): Exact => new Exact(rows[label] ?? NaN);
        const price = row("price").minus(row("rounding"));
        const [cost, overhead] = [row("direct").plus(row("contingency")), row("overhead")];
        const profit = terms.profitOnCost.isZero()
          ? price.times(terms.profitOfPrice)
          : cost.plus(overhead).times(terms.profitOnCost);
        // Price and overhead are each within half a cent of what they are before cents.
        expect(row("profit").minus(profit).abs().toNumber()).toBeLessThanOrEqual(0.02);
      }),
    );
  });

  test("the same option twice is the same bid, and its rows stand beside those of no option", () => {
    fc.assert(
      fc.property(anyCosts, anyCosts, anyTerms, (costs, own, terms) => {
        const all = [...costs, ...own.map((each) => ({ ...each, option: "White Oak" }))];
        expect(figuresOf(all, terms)).toEqual(figuresOf(costs, terms));
        expect(figuresOf(all, terms, "white oak")).toEqual(figuresOf([...costs, ...own], terms));
        expect(figuresOf(all, terms, "white oak")).toEqual(figuresOf(all, terms, "white oak"));
      }),
    );
  });

  test("a cost split over two rows changes nothing, whatever the cents", () => {
    fc.assert(
      fc.property(anyCosts, anyTerms, fc.integer({ min: -1e5, max: 1e5 }), (rows, terms, hundredths) => {
        const [first, ...rest] = rows;
        if (first?.cost === undefined) return;
        const part = new Exact(hundredths).div(100);
        const split = [{ ...first, cost: part }, ...rest, { ...first, cost: first.cost.minus(part) }];
        expect(figuresOf(split, terms)).toEqual(figuresOf(rows, terms));
      }),
    );
  });

  test("credits round like charges: a bid of credits is the bid of the charges with its sign turned", () => {
    fc.assert(
      fc.property(anyCosts, anyTerms, (rows, given) => {
        const terms = { ...given, roundUpTo: new Exact(0) };
        const charges = figuresOf(rows, terms);
        const credits = figuresOf(rows.map((row) => ({ ...row, cost: (row.cost ?? new Exact(0)).neg() })), terms);
        for (const [label, figure] of Object.entries(charges)) expect(credits[label]).toBeCloseTo(-figure, 9);
      }),
    );
  });

  test("profit of price of m / (1 + m) is profit on cost of m", () => {
    fc.assert(
      fc.property(anyCosts, fc.integer({ min: 0, max: 400 }), (rows, thousandths) => {
        const markup = new Exact(thousandths).div(1000);
        const byMargin = figuresOf(rows, termsWith({ profitOfPrice: markup.div(markup.plus(1)) }));
        const byMarkup = figuresOf(rows, termsWith({ profitOnCost: markup }));
        // m / (1 + m) is rounded in its 60th digit, so a price that falls on half a cent may go either way
        expect(Math.abs((byMargin["price"] ?? NaN) - (byMarkup["price"] ?? NaN))).toBeLessThan(0.0101);
      }),
    );
  });
});

describe("in a sheet", () => {
  const WOOD = [["item", "cost"], ["wood", 100]];
  const table = (...cells: unknown[]): readonly (readonly unknown[])[] => {
    const answer = call(BID, cells);
    if (!Array.isArray(answer)) throw new Error(JSON.stringify(answer));
    return answer;
  };
  const row = (label: string, ...cells: unknown[]): readonly unknown[] | undefined => table(...cells).find(([name]) => name === label);

  test("always the same thirteen rows, under headings or without", () => {
    expect(table(WOOD, [["burden", 0]]).map(([label]) => label)).toEqual(["label", ...BID_LABELS]);
    expect(table(WOOD, [["burden", 0]], "", false).map(([label]) => label)).toEqual(BID_LABELS);
    // Nothing at all has no share of a price.
    expect(row("price", [["item", "cost"], ["wood", "included"]], [["burden", 0]])).toEqual(["price", 0, "", ""]);
  });

  test("extended quantities go into a bid as they stand, an hour is labour", () => {
    const quantities = [["item", "quantity", "unit"], ["blank", 13, "each"], ["fitting", 6, "hours"], ["sweeping", 30, "min"]];
    const prices = [["item", "price", "unit"], ["blank", 52, "each"], ["labour", 60, "hour"]];
    const bidden = table(call(EXTEND, [quantities, prices]), [["burden", 0.5]]);
    // by hand: 13 x 52 = 676; 6.5 x 60 = 390, half of it 195
    expect(bidden.slice(1, 7).map(([, amount]) => amount)).toEqual([676, 0, 390, 195, 0, 1261]);
  });

  test("a kind says more than a unit, and a row called labour is labour", () => {
    const costs = [
      ["item", "cost", "unit", "kind"], ["labor", 10, "", ""], ["rented saw", 20, "hour", "subcontract"], ["drawing", 5, "", "Labor"],
    ];
    expect([row("labour", costs, [["burden", 0]])?.[1], row("subcontract", costs, [["burden", 0]])?.[1]]).toEqual([15, 20]);
    // Three columns need no headings.
    expect(row("subcontract", [["rented saw", 20, "subcontract"]], [["burden", 0]])?.[1]).toBe(20);
  });

  test("labels are read in any spelling, and a term left empty or 0 is none", () => {
    const terms = [
      ["label", "rate"], ["Overhead on Labor", ""], ["overhead of PRICE", 0], ["overhead on costs", "20 %"], ["contingency", null],
    ];
    expect(row("overhead", WOOD, terms)).toEqual(["overhead", 20, expect.closeTo(1 / 6, 12), "overhead on cost 20 %"]);
    expect(table(WOOD, TERM_NAMES.map((name) => [words(name), 0]))).toHaveLength(14);
  });

  test("the note names every term of a row", () => {
    const costs = [["item", "cost", "kind"], ["wood", 100, ""], ["work", 100, "labour"]];
    const terms = [["overhead on labour", "250%"], ["overhead on materials", 0.125], ["profit on cost", 1.5], ["tax on materials", 0.07]];
    expect(row("overhead", costs, terms)?.[3]).toBe("overhead on labour 250 %; overhead on materials 12.5 %");
    expect([row("profit", costs, terms)?.[3], row("tax", costs, terms)?.[3]]).toEqual(["profit on cost 150 %", "tax on materials 7 %"]);
  });

  test("a cost that is 0 or empty is named beside direct", () => {
    const note = (...costs: unknown[]): unknown =>
      row("direct", [["item", "cost"], ...costs.map((each, index) => [`good ${index + 1}`, each])], [["burden", 0]])?.[3];
    expect(note(5, null, 7)).toBe("cost is 0 or empty in row 3 (good 2)");
    expect(note("", 0, 10, 0)).toBe("cost is 0 or empty in row 2 (good 1) and 2 more");
    expect(note(5, -5)).toBe("");
  });

  test("an item without a price stops the bid and is named", () => {
    const extended = call(EXTEND, [[["item", "quantity"], ["blank", 13], ["cove", 6]], [["blank", 52], ["riser", 9]]]);
    expect(call(BID, [extended, [["burden", 0]]])).toEqual({
      failed: "#N/A",
      says: "cost in row 3 (cove): the cell given holds #N/A; put that cell right first",
    });
  });

  const PRICED = [["item", "cost", "option"], ["wood", 100, ""], ["dearer", 20, "white oak"]];
  const BUT = (label: string, rate: unknown): unknown[] => [WOOD, [["label", "rate"], [label, rate]]];
  test.each<[readonly unknown[], string]>([
    [BUT("overhead on cost", 25), "rate in row 2 (overhead on cost): 25 is 2500 %, write 25% or 0.25"],
    [BUT("burden", 5.5), "rate in row 2 (burden): 5.5 is 550 %, write 5.5% or 0.055"],
    [
      BUT("overhead of price", 1.5),
      'rate in row 2 (overhead of price): 1.5 is 150 %, more than the whole; write "150%" if it is meant, else a share under 1',
    ],
    [BUT("overhead of price", "150%"), "terms: overhead of price 150 % leaves nothing for the cost; write less"],
    [BUT("profit of price", 1), "terms: profit of price 100 % leaves nothing for the cost; write less"],
    [
      BUT("contingency", 1.33),
      'rate in row 2 (contingency): 1.33 is 133 %, more than the whole; write "133%" if it is meant, else a share under 1',
    ],
    [BUT("tax on price", 8.25), "rate in row 2 (tax on price): 8.25 is 825 %, write 8.25% or 0.0825"],
    [BUT("profit on cost", "1001%"), 'rate in row 2 (profit on cost): must be 1000 % or less, got "1001%"'],
    [BUT("profit on cost", "a fifth"), 'rate in row 2 (profit on cost): must be a rate such as 25% or 0.25, got "a fifth"'],
    [BUT("burden", -0.1), "rate in row 2 (burden): must be 0 or more, got -0.1"],
    [BUT("round up to", "ten"), 'rate in row 2 (round up to): must be an amount of money, got "ten"'],
    [BUT("round up to", 0.125), "rate in row 2 (round up to): must be an amount in whole cents, got 0.125"],
    [[WOOD, [["label", "rate"], ["overhead", 0.1]]], /^terms, label in row 2: "overhead" is not known; nearest is "overhead on cost"/],
    [
      [WOOD, [["label", "rate"], ["profitt of prise", 0.1]]],
      /^terms, label in row 2: "profitt of prise" is not known; nearest is "profit of price"; write burden, /,
    ],
    [[WOOD, [["label", "rate"], ["", 0.1]]], "label in row 2: is empty or 0; give a value"],
    [[WOOD, [["label"], ["burden"]]], 'terms: heading "rate" is missing; found label'],
    [[WOOD], "terms: is missing; give the terms; each label says what its rate is of"],
    [[WOOD, [["burden", 0.1], ["BURDEN", 0.2]]], 'terms: "burden" has two rates; keep one'],
    [
      [WOOD, [["overhead on cost", 0.1], ["overhead of price", 0.2]]],
      'terms: "overhead on cost" and "overhead of price" would charge one thing twice; keep one',
    ],
    [
      [WOOD, [["overhead on cost", 0.1], ["overhead on labour", 0.2]]],
      'terms: "overhead on cost" and "overhead on labour" would charge one thing twice; keep one',
    ],
    [
      [WOOD, [["overhead on cost", 0.1], ["overhead on materials", 0.2]]],
      'terms: "overhead on cost" and "overhead on materials" would charge one thing twice; keep one',
    ],
    [
      [WOOD, [["profit on cost", 0.1], ["profit of price", 0.2]]],
      'terms: "profit on cost" and "profit of price" would charge one thing twice; keep one',
    ],
    [
      [WOOD, [["tax on price", 0.1], ["tax on materials", 0.2]]],
      'terms: "tax on price" and "tax on materials" would charge one thing twice; keep one',
    ],
    [
      [WOOD, [["overhead of price", 0.8], ["profit on cost", 0.3]]],
      "terms: overhead of price 80 % and profit on cost 30 % leave nothing for the cost; write less",
    ],
    [[PRICED, [["burden", 0]], "white oka"], 'option: "white oka" is in no row of costs; nearest is "white oak"'],
    [[WOOD, [["burden", 0]], "white oak"], 'option: "white oak" is in no row of costs; name it under option beside its rows'],
    [
      [[["item", "cost", "kind"], ["wood", 100, "labout"]], [["burden", 0]]],
      'kind in row 2 (wood): "labout" is not known; nearest is "labour"; write material, labour or subcontract',
    ],
    [[[["item", "cost", "taxed"], ["wood", 100, "maybe"]], [["burden", 0]]], 'taxed in row 2 (wood): must be yes or no, got "maybe"'],
    [
      [[["item", "cost", "kind", "taxed"], ["hang rail", 100, "labour", "yes"]], [["burden", 0]]],
      "taxed in row 2 (hang rail): labour is not taxed by itself; leave taxed empty, or write kind material",
    ],
    [[[["item", "costt"], ["wood", 100]], [["burden", 0]]], 'costs: heading "costt" is not known; did you mean "cost"?'],
    [[[["wood", 100, "material", "yes"]], [["burden", 0]]], "costs: which of the columns is the cost? give headings"],
  ] as unknown as [readonly unknown[], string][])("%j is refused in words", (cells, says) => {
    expect(call(BID, cells)).toEqual({ failed: "#VALUE!", says: typeof says === "string" ? says : expect.stringMatching(says) });
  });
});
