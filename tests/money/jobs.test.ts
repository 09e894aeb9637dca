import fc from "fast-check";
import { BID } from "../../src/functions/bid/bid";
import { EXTEND } from "../../src/functions/bid/extend";
import { PROGRESSBILLING } from "../../src/functions/bid/progressbilling";
import { QUOTE } from "../../src/functions/bid/quote";
import { BIDVARIANCE } from "../../src/functions/books/bidvariance";
import { JOBCOST } from "../../src/functions/books/jobcost";
import { MONTHCLOSE } from "../../src/functions/books/monthclose";
import { RECONCILE } from "../../src/functions/books/reconcile";
import { type Cells, cellsOf } from "../functions/printed-rows";
import { moveCells, randomYear } from "../solver/books/random-moves";
import { cents, rowNamed, rowsOf, sumOf } from "./rows";

const JOBS = Array.from({ length: 20 }, (_, index) => `Job ${String(index + 1)}`);
const GOODS = [["oak blank 42", "each"], ["poplar 16 ft", "each"], ["cove", "ft"], ["walnut 8/4", "bf"], ["skirt board", "each"]] as const;

const share = (most: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: most }).map((thousandths) => thousandths / 1000);
const goods = fc.array(fc.tuple(fc.nat(GOODS.length - 1), fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1000, max: 90_000 })), {
  minLength: 1, maxLength: 6,
});

/** A job as it was bid: goods at prices in thousandths of money, hours, an alternate, a change. */
const job = fc.record({
  goods,
  hours: fc.integer({ min: 1, max: 90 }),
  rate: fc.integer({ min: 30, max: 95 }),
  hoursSpent: fc.integer({ min: 1, max: 120 }),
  alternate: fc.integer({ min: -20_000, max: 60_000 }),
  change: fc.integer({ min: 1, max: 90_000 }),
  terms: fc.record({
    burden: share(400), contingency: share(60), "overhead of price": share(300), "profit of price": share(200),
    "tax paid on materials": share(90), "tax on price": share(90),
  }),
  roundUpTo: fc.constantFrom(1, 5, 10),
  draws: fc.array(share(1000), { minLength: 1, maxLength: 4 }),
  retainage: share(100),
  deposit: fc.integer({ min: 0, max: 20_000 }),
});
type Job = typeof job extends fc.Arbitrary<infer J> ? J : never;

const CONTRACT_PARTS = ["main stair", "rail"] as const;

/** Goods one after the other, each good once, with a part of the quote by turns. */
const bidOf = ({ goods: lines, hours, rate, alternate, terms, roundUpTo }: Job) => {
  const first = lines.filter(([which], index) => lines.findIndex(([other]) => other === which) === index);
  const quantities = [
    ["item", "quantity", "unit"],
    ...first.map(([which, many]) => [GOODS[which]?.[0], many, GOODS[which]?.[1]]), ["labour", hours, "hour"],
  ] as (string | number)[][];
  const prices = [
    ["item", "price", "unit"],
    ...first.map(([which, , thousandths]) => [GOODS[which]?.[0], thousandths / 1000, GOODS[which]?.[1]]), ["labour", rate, "hour"],
  ] as (string | number)[][];
  const extended = cellsOf(EXTEND, { quantities, prices });
  const rows = rowsOf(extended);
  const costs = [
    ["item", "cost", "kind", "part", "option"],
    ...rows.map(({ item, cost }, index) =>
      [String(item), Number(cost), item === "labour" ? "labour" : "material", CONTRACT_PARTS[index % 2] ?? "", ""]),
    ["white oak", alternate / 100, "material", CONTRACT_PARTS[0], "white oak"],
  ];
  const typedTerms = [["label", "rate"], ...Object.entries(terms), ["round up to", roundUpTo]] as (string | number)[][];
  return { planned: extended, rows, costs, terms: typedTerms };
};

const bidAdds = (bid: ReturnType<typeof rowsOf>, { terms, roundUpTo }: Job): void => {
  const of = (label: string): number => cents(rowNamed(bid, "label", label)["cost"]);
  expect(of("materials") + of("tax paid on materials") + of("labour") + of("burden") + of("subcontract")).toBe(of("direct"));
  expect(of("direct") + of("contingency") + of("overhead") + of("profit") + of("rounding")).toBe(of("price"));
  expect(of("price") + of("tax")).toBe(of("total"));
  expect(of("price") % (roundUpTo * 100)).toBe(0);
  expect(of("rounding")).toBeGreaterThanOrEqual(0);
  expect(of("rounding")).toBeLessThan(roundUpTo * 100);
  // Shares of the price before it was rounded up, which the rows know to the cent.
  const exact = of("price") - of("rounding");
  expect(Math.abs(of("overhead") - exact * terms["overhead of price"])).toBeLessThanOrEqual(1);
  expect(Math.abs(of("profit") - exact * terms["profit of price"])).toBeLessThanOrEqual(4);
};

/** Bills until all is done: every earlier one paid. What is paid in the end is the contract, its change and no more. */
const billed = (quote: ReturnType<typeof rowsOf>, change: number, { draws, retainage, deposit }: Job): void => {
  const parts = quote.filter(({ option, part }) => option === "" && part !== "total");
  const contract = parts.reduce((sum, row) => sum + cents(row["price"]), 0);
  const credit = Math.min(deposit, contract);
  const done = [...draws].sort((a, b) => a - b);
  let paid = 0;
  for (const [share, held] of [...done.map((each) => [each, retainage] as const), [1, 0] as const]) {
    const schedule = [
      ["item", "value", "done", "change"],
      ...parts.map(({ part, price }) => [String(part), Number(price), share, ""]), ["more balusters", change / 100, share, "yes"],
    ];
    const bill = rowsOf(cellsOf(PROGRESSBILLING, { schedule, retainage: held, paid: paid / 100, deposit: credit / 100 }));
    const of = (item: string, heading: string): number => cents(rowNamed(bill, "item", item)[heading]);
    const lines = bill.slice(0, parts.length + 1);
    expect(sumOf(lines, "earned")).toBe(of("earned", "earned"));
    expect(of("contract", "value")).toBe(contract);
    expect(of("contract", "value") + of("changes", "value")).toBe(of("earned", "value"));
    for (const { value, earned, balance } of lines) expect(cents(value)).toBe(cents(earned) + cents(balance));
    const taken = of("retainage", "earned") + of("deposit credited", "earned") + of("paid", "earned");
    expect(of("earned", "earned") + taken).toBe(of("due", "earned"));
    paid += of("due", "earned");
  }
  expect(paid + credit).toBe(contract + change);
};

const CAUSES_OF_A_ROW = ["price variance", "usage variance", "scope", "on the rack", "charges"] as const;

const reconciled = (planned: Cells, bought: Cells, spent: number) => {
  const rows = rowsOf(cellsOf(RECONCILE, { planned: planned as never, bought: bought as never }));
  for (const row of rows)
    expect(CAUSES_OF_A_ROW.reduce((sum, cause) => sum + cents(row[cause]), cents(row["planned cost"]))).toBe(cents(row["spent"]));
  const total = rowNamed(rows, "item", "total");
  for (const heading of ["planned cost", "spent", ...CAUSES_OF_A_ROW])
    expect(sumOf(rows.filter((row) => row !== total), heading)).toBe(cents(total[heading]));
  expect(cents(total["spent"])).toBe(spent);
  return total;
};

const jobHolds = (own: Job, bought: Cells, closing: number): void => {
  const { planned, rows, costs, terms } = bidOf(own);
  const bid = rowsOf(cellsOf(BID, { costs, terms }));
  const other = rowsOf(cellsOf(BID, { costs, terms, option: "white oak" }));
  bidAdds(bid, own);
  bidAdds(other, own);
  const priceOf = (table: typeof bid, label: string): number => cents(rowNamed(table, "label", label)["cost"]);
  const quote = rowsOf(cellsOf(QUOTE, { costs, terms }));
  const total = rowNamed(quote, "part", "total");
  const parts = quote.filter((row) => row["option"] === "" && row !== total);
  for (const [heading, label] of [["price", "price"], ["tax", "tax"], ["total", "total"]] as const) {
    expect(sumOf(parts, heading)).toBe(priceOf(bid, label));
    expect(cents(total[heading])).toBe(priceOf(bid, label));
    expect(cents(rowNamed(quote, "option", "white oak")[heading])).toBe(priceOf(other, label) - priceOf(bid, label));
  }
  const change = priceOf(rowsOf(cellsOf(BID, { costs: [["item", "cost"], ["more balusters", own.change / 100]], terms })), "price");
  billed(quote, change, own);
  const onlyGoods = planned.filter((_, index) => index === 0 || rows[index - 1]?.["item"] !== "labour");
  const reckoned = reconciled(onlyGoods, bought, closing);
  const spentOnHours = own.hoursSpent * own.rate * 100;
  const [headings = []] = bought;
  const labour: Readonly<Record<string, string | number>> = {
    item: "labour", quantity: own.hoursSpent, unit: "hour", cost: spentOnHours / 100,
  };
  const hours = headings.map((heading) => labour[String(heading)] ?? "");
  const causes = rowsOf(cellsOf(BIDVARIANCE, { planned: planned as never, actual: [...bought, hours] as never }));
  const of = (cause: string): number => cents(rowNamed(causes, "cause", cause)["amount"]);
  expect(sumOf(causes.slice(0, -1), "amount")).toBe(of("actual"));
  expect(of("bid")).toBe(rows.reduce((sum, { cost }) => sum + cents(cost), 0));
  expect(of("actual")).toBe(closing + spentOnHours);
  // The same goods asked twice: cause by cause the two functions say the same.
  expect(of("price")).toBe(cents(reckoned["price variance"]));
  expect(of("usage") + of("waste")).toBe(cents(reckoned["usage variance"]));
  expect(of("freight and tax")).toBe(cents(reckoned["charges"]));
  expect(of("not bid") + of("bid, not done")).toBe(cents(reckoned["scope"]));
  expect(of("hours")).toBe((own.hoursSpent - own.hours) * own.rate * 100);
};

describe("twenty jobs of a year, from bid to book", () => {
  test("bid, quote, bills, reconciliation and bid to book add up to the cent, and to the ledger's close", () => {
    fc.assert(
      fc.property(randomYear(JOBS), fc.array(job, { minLength: 20, maxLength: 20 }), (moves, bids) => {
        const typed = moveCells(moves);
        const closes = rowsOf(cellsOf(MONTHCLOSE, { moves: typed }));
        const [, ...costs] = cellsOf(JOBCOST, { moves: typed });
        JOBS.forEach((name, index) => {
          const last = closes.filter(({ where }) => where === name).pop();
          const own = bids[index];
          if (own === undefined || last === undefined || !costs.some(([place]) => place === name)) return;
          jobHolds(own, cellsOf(JOBCOST, { moves: typed, job: name }), cents(last["closing"]));
        });
      }),
      { numRuns: 10, seed: 22, endOnFailure: true },
    );
  });
});
