import { priceChange } from "../../solver/bid/price-change";
import { isFailed } from "../cells";
import { BID_PROBLEMS, COST_RULES, TERM_RULES } from "../bid-rules";
import { termsOfRows } from "../bid-terms";
import { declare, headings } from "../declare";
import { GOODS_RULES } from "../goods-rules";
import { changedCosts, terms as termTable } from "../tables";

const BEFORE = [
  ["item", "quantity", "unit", "cost"],
  ["oak blank", 13, "each", 676],
  ["cove", 12, "ft", 13.56],
  ["fitting", 10, "hour", 580],
  ["glue", "", "", 25.2],
] as const;

const AFTER = [
  ["item", "quantity", "unit", "cost"],
  ["oak blank", 15, "each", 810],
  ["fitting", 10, "hour", 600],
  ["glue", "", "", 33.6],
  ["newel", 1, "each", 85],
] as const;

const TERMS = [["label", "rate"], ["burden", 0.25], ["overhead on cost", 0.1], ["profit of price", 0.2], ["tax on price", 0.05]] as const;

export const PRICECHANGE = declare({
  id: "PRICECHANGE",
  words: "price change",
  group: "Takeoff and bid",
  says: "What changed the price from one bid to another, cause by cause: a change order in one table.",
  parameters: {
    before: { kind: "table", table: changedCosts, rows: 2_000, badRows: "refuse", says: "Costs of the bid before, as for BID." },
    after: { kind: "table", table: changedCosts, rows: 2_000, badRows: "refuse", says: "Costs of the bid after." },
    terms: { kind: "table", table: termTable, rows: 100, badRows: "refuse", says: "The terms, as for BID." },
    termsAfter: {
      kind: "table",
      table: termTable,
      rows: 100,
      badRows: "refuse",
      optional: true,
      defaultsTo: "terms",
      says: "The terms of the bid after, where they are others.",
    },
    option: {
      kind: "text",
      default: "",
      says: "An alternate named under option in the costs after, chosen in the bid after; before, none is.",
    },
    headings,
  },
  result: {
    kind: "table",
    says:
      "The price before, a row per cause, the price after; then the tax before, its change, and the total after. Every amount is in " +
      "cents; the rows between price before and price after sum to their difference. Positive makes the bid dearer.",
    columns: {
      cause: {
        kind: "label",
        says:
          "price before; of an item quantity and price, cost where it is not counted, new, dropped; tax paid on materials, burden, " +
          "contingency, overhead, profit, rounding; price after; tax before, tax, total after.",
      },
      item: { kind: "label", says: "Item as first written; an item that costs as before has no row." },
      amount: { kind: "money", says: "What the cause adds; quantity is reckoned at the mean of the two prices, price is the rest." },
      note: { kind: "text", says: "How many and at what price, before and now; terms that changed; a new or dropped name like another." },
    },
  },
  problems: BID_PROBLEMS,
  examples: [
    {
      given: { before: BEFORE, after: AFTER, terms: TERMS },
      gives: [
        ["cause", "item", "amount", "note"],
        ["price before", "", 1979.68, ""],
        ["quantity", "oak blank", 106, "13, now 15 each"],
        ["price", "oak blank", 28, "52, now 54"],
        ["dropped", "cove", -13.56, ""],
        ["price", "fitting", 20, "58, now 60"],
        ["cost", "glue", 8.4, ""],
        ["new", "newel", 85, ""],
        ["tax paid on materials", "", 0, ""],
        ["burden", "", 5, ""],
        ["contingency", "", 0, ""],
        ["overhead", "", 23.88, ""],
        ["profit", "", 65.68, ""],
        ["rounding", "", 0, ""],
        ["price after", "", 2308.08, ""],
        ["tax before", "", 98.98, ""],
        ["tax", "", 16.42, ""],
        ["total after", "", 2423.48, ""],
      ],
      from:
        "by hand: before 1,294.76 and burden 145 are 1,439.76, overhead 143.98, / 0.8 = 1,979.675; after 1,528.60 and 150 are 1,678.60, " +
        "overhead 167.86, / 0.8 = 2,308.075; 2 blanks at 53 are 106 of the 134 more",
    },
    {
      given: {
        before: [["item", "cost"], ["oak", 100]],
        after: [["item", "cost"], ["oak", 100]],
        terms: [["label", "rate"], ["contingency", 0.05], ["tax on price", 0.1]],
        termsAfter: [["label", "rate"], ["contingency", 0.05], ["tax paid on materials", 0.1], ["round up to", 50]],
      },
      gives: [
        ["cause", "item", "amount", "note"],
        ["price before", "", 105, ""],
        ["tax paid on materials", "", 10, "none, now tax paid on materials 10 %"],
        ["burden", "", 0, ""],
        ["contingency", "", 0.5, ""],
        ["overhead", "", 0, ""],
        ["profit", "", 0, ""],
        ["rounding", "", 34.5, "none, now round up to 50"],
        ["price after", "", 150, ""],
        ["tax before", "", 10.5, ""],
        ["tax", "", -10.5, "tax on price 10 %, now none"],
        ["total after", "", 150, ""],
      ],
      from: "by hand: 100 x 1.05 = 105 and 10.50 of tax; 110 x 1.05 = 115.50, to the next whole 50 it is 34.50",
    },
    {
      given: {
        before: [["part", "item", "quantity", "unit", "cost"], ["hall", "cove", 2, "ft", 4], ["loft", "cove", 24, "in", 4]],
        after: [
          ["part", "item", "quantity", "unit", "cost", "option"],
          ["hall", "cove", 36, "in", 6, ""],
          ["loft", "cove", 2, "ft", 4, ""],
          ["hall", "oak blnak", 1, "each", 9, ""],
          ["hall", "oak blank", 1, "each", 50, "oak"],
        ],
        terms: [["contingency", 0]],
        option: "oak",
      },
      shows: [
        { cause: "quantity", item: "cove", amount: 2, note: "2, now 3 ft" },
        { cause: "new", item: "oak blnak", amount: 9, note: 'like "oak blank" in row 5 of after: same goods?' },
        { cause: "new", item: "oak blank", amount: 50 },
        { cause: "price after", amount: 69 },
      ],
      from: "by hand: 36 in are 3 ft at 2.00; the cove of the loft costs as before; 8 + 2 + 9 + 50 = 69",
    },
  ],
  source: `Quantity = cents((after - before) x the mean of the two prices), price = the rest. ${TERM_RULES} ${COST_RULES} ${GOODS_RULES}`,
  solve: ({ before, after, terms, termsAfter = terms, option }) => {
    const was = termsOfRows("terms", terms);
    if (isFailed(was)) return was;
    const is = termsAfter === terms ? was : termsOfRows("termsAfter", termsAfter);
    return isFailed(is) ? is : priceChange({ costs: before, terms: was, option: "" }, { costs: after, terms: is, option });
  },
});
