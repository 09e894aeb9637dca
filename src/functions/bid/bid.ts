import { bid } from "../../solver/bid/bid";
import { declare, headings } from "../declare";
import { say } from "../say";
import { costs as costTable } from "../tables";

const STAIR_COSTS = [
  ["item", "cost", "taxed"],
  ["material", 600, "yes"],
  ["labour", 450, "no"],
  ["returned cove", -50, "yes"],
] as const;

export const BID = declare({
  id: "BID",
  group: "Takeoff and bid",
  says: "A bid from its costs: overhead, profit, price, tax and total.",
  parameters: {
    costs: {
      kind: "table",
      table: costTable,
      badRows: "refuse",
      says: "Direct costs; they add up, and a credit is negative. Rows called total, subtotal, grand total or saving are no costs.",
    },
    overhead: { kind: "rate", of: "the cost", default: 0, says: "Overhead as a share of direct cost." },
    profit: {
      kind: "rate",
      of: "the cost or of the price",
      default: 0,
      says: "Profit as a share: by markup of direct cost and overhead together, by margin of the price.",
    },
    basis: {
      kind: "choice",
      options: ["markup", "margin"],
      default: "markup",
      says: "Whether profit is a share of direct cost and overhead (markup) or of the price (margin).",
    },
    tax: { kind: "rate", of: "what it falls on", default: 0, says: "Tax as a share of what it falls on." },
    taxBasis: {
      kind: "choice",
      options: ["price", "items"],
      default: "price",
      says: "Whether tax falls on the price, or on the cost of the taxed rows alone.",
    },
    headings,
  },
  result: {
    kind: "table",
    says: "Six rows. Each is rounded to cents, half a cent away from zero, and calculated from the rows above it.",
    columns: {
      label: { kind: "label", says: "direct, overhead, profit, price, tax, total." },
      cost: { kind: "money", says: "Price is direct + overhead + profit, total is price + tax, to the cent." },
      note: { kind: "text", says: "Beside direct: how many costs are 0 or empty, and the first of them." },
    },
  },
  problems: { "margin-of-all": { cell: "#VALUE!", says: say.marginOfAll("profit") } },
  examples: [
    {
      given: { costs: STAIR_COSTS, overhead: "10%", profit: "20%", tax: "7%" },
      gives: [
        ["label", "cost", "note"],
        ["direct", 1000, ""],
        ["overhead", 100, ""],
        ["profit", 220, ""],
        ["price", 1320, ""],
        ["tax", 92.4, ""],
        ["total", 1412.4, ""],
      ],
      from: "by hand: 600 + 450 - 50 = 1,000; 10 % is 100; 20 % of 1,100 is 220; 7 % of 1,320 is 92.40",
    },
    {
      given: { costs: STAIR_COSTS, overhead: "10%", profit: "20%", basis: "margin", tax: "7%", taxBasis: "items" },
      gives: [
        ["label", "cost", "note"],
        ["direct", 1000, ""],
        ["overhead", 100, ""],
        ["profit", 275, ""],
        ["price", 1375, ""],
        ["tax", 38.5, ""],
        ["total", 1413.5, ""],
      ],
      from: "by hand: 1,100 / 0.8 = 1,375, profit 275; taxed rows 600 - 50 = 550, 7 % is 38.50",
    },
    {
      given: { costs: [["labour", 600]], profit: 0.25, basis: "margin" },
      shows: [
        { label: "profit", cost: 200 },
        { label: "price", cost: 800 },
      ],
      from:
        "I. P. Hicks, The Builders' Guide, Estimating Labor for Carpentry Work: B bids 800, labor 600, profit 200, which is a " +
        "fourth of the price",
    },
    {
      given: {
        costs: [
          ["item", "cost"],
          ["cove", ""],
          ["newel", 10],
          ["cap", 0],
          ["plug", "included"],
        ],
      },
      shows: [{ label: "direct", cost: 10, note: "cost is 0 or empty in row 2 (cove) and 1 more" }],
      from: "by hand: only the newel has a cost",
    },
    {
      given: {
        costs: [
          ["item", "cost"],
          ["material", 600],
        ],
        profit: 1,
        basis: "margin",
      },
      fails: "#VALUE!",
      says: "profit: a margin of 100 % leaves no cost; write less than 100 %",
      from: "by hand: 600 / (1 - 1) has no answer",
    },
    {
      given: {
        costs: [
          ["item", "cost"],
          ["material", "six hundred"],
        ],
      },
      fails: "#VALUE!",
      says: 'cost in row 2 (material): must be an amount of money, got "six hundred"',
      from: "common practice, no source: an amount in words cannot be added up",
    },
  ],
  source:
    "Overhead on direct cost; profit on direct cost and overhead by markup, or price = (direct + overhead) / (1 - margin); tax " +
    "on the price or on the taxed rows.",
  solve: ({ costs, overhead, profit, basis, tax, taxBasis }) => bid(costs, { overhead, profit, basis, tax, taxBasis }),
});
