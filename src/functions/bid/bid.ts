import { bid } from "../../solver/bid/bid";
import { withTerms } from "../bid-terms";
import { declare, headings } from "../declare";
import { BID_PROBLEMS, COST_RULES, TERM_RULES } from "../bid-rules";
import { costs as costTable, terms as termTable } from "../tables";

const STAIR_COSTS = [
  ["item", "cost", "kind"],
  ["oak", 650, "material"],
  ["returned cove", -50, "material"],
  ["fitting", 400, "labour"],
] as const;

/** Three parts and one alternate. */
const PARTS = [
  ["part", "item", "cost", "kind", "option"],
  ["Main stair", "blanks and boards", 1312.45, "material", ""],
  ["Main stair", "fitting", 2088, "labour", ""],
  ["Basement stair", "boards", 417.38, "material", ""],
  ["Basement stair", "fitting", 812, "labour", ""],
  ["Rail", "rail and newels", 640, "material", ""],
  ["Rail", "hang rail", 348, "labour", ""],
  ["Rail", "finisher", 275, "subcontract", ""],
  ["White oak instead of red", "difference", 236.8, "material", "white oak"],
] as const;

const PARTS_TERMS = [
  ["label", "rate"],
  ["burden", "28%"],
  ["tax paid on materials", 0.065],
  ["contingency", 0.03],
  ["overhead of price", 0.22],
  ["profit of price", 0.08],
  ["round up to", 10],
] as const;

const HEADINGS = ["label", "cost", "of price", "note"] as const;

export const BID = declare({
  id: "BID",
  group: "Takeoff and bid",
  says: "A bid from its costs by the shop's terms: what is added to the cost, the price and the tax.",
  parameters: {
    costs: {
      kind: "table",
      table: costTable,
      badRows: "refuse",
      says: "Costs; they add up, and a credit is negative. Rows called total, subtotal, grand total or saving are no costs.",
    },
    terms: { kind: "table", table: termTable, rows: 100, badRows: "refuse", says: "The terms; each label says what its rate is of." },
    option: {
      kind: "text",
      default: "",
      says: "An alternate named under option in the costs, to be priced with them; without it the rows of no option are priced.",
    },
    headings,
  },
  result: {
    kind: "table",
    says: "Thirteen rows, each in cents, half a cent away from zero; printed totals add printed rows.",
    columns: {
      label: {
        kind: "label",
        says:
          "materials, tax paid on materials, labour, burden, subcontract, and direct, their sum; contingency, overhead, profit, " +
          "rounding, and price, their sum with direct; tax; total.",
      },
      cost: { kind: "money", says: "Amount of the row." },
      ofPrice: { kind: "rate", says: "The amount as a share of the rounded price; empty where the price is 0." },
      note: {
        kind: "text",
        says: "The terms that make the row, with what each is of; beside direct, how many costs are 0 or empty, and the first of them.",
      },
    },
  },
  problems: BID_PROBLEMS,
  examples: [
    {
      given: {
        costs: STAIR_COSTS,
        terms: [["label", "rate"], ["overhead on cost", "10%"], ["profit on cost", "20%"], ["tax on price", "7%"]],
      },
      gives: [
        HEADINGS,
        ["materials", 600, 0.454545454545455, ""],
        ["tax paid on materials", 0, 0, ""],
        ["labour", 400, 0.303030303030303, ""],
        ["burden", 0, 0, ""],
        ["subcontract", 0, 0, ""],
        ["direct", 1000, 0.757575757575758, ""],
        ["contingency", 0, 0, ""],
        ["overhead", 100, 0.0757575757575758, "overhead on cost 10 %"],
        ["profit", 220, 0.166666666666667, "profit on cost 20 %"],
        ["rounding", 0, 0, ""],
        ["price", 1320, 1, ""],
        ["tax", 92.4, 0.07, "tax on price 7 %"],
        ["total", 1412.4, 1.07, ""],
      ],
      from: "by hand: 650 - 50 + 400 = 1,000; 10 % is 100; 20 % of 1,100 is 220; 7 % of 1,320 is 92.40; each over 1,320",
    },
    {
      given: { costs: PARTS, terms: PARTS_TERMS },
      shows: [
        { label: "materials", cost: 2369.83 },
        { label: "tax paid on materials", cost: 154.04, note: "tax paid on materials 6.5 %" },
        { label: "labour", cost: 3248 },
        { label: "burden", cost: 909.44, note: "burden 28 %" },
        { label: "subcontract", cost: 275 },
        { label: "direct", cost: 6956.31 },
        { label: "contingency", cost: 208.69, note: "contingency 3 %" },
        { label: "overhead", cost: 2251.86, note: "overhead of price 22 %" },
        { label: "profit", cost: 818.85, note: "profit of price 8 %" },
        { label: "rounding", cost: 4.29, note: "round up to 10" },
        { label: "price", cost: 10240 },
        { label: "total", cost: 10240 },
      ],
      from:
        "by hand: 6.5 % of 2,369.83 is 154.039; 28 % of 3,248; 3 % of 6,956.31 is 208.689; 7,165 / (1 - 0.22 - 0.08) = 10,235.714, " +
        "of which 22 % is 2,251.857; 10,235.71 less 7,165 and 2,251.86 is 818.85; to the next whole 10 it is 4.29",
    },
    {
      given: { costs: PARTS, terms: PARTS_TERMS, option: "white oak" },
      shows: [
        { label: "materials", cost: 2606.63 },
        { label: "rounding", cost: 3.2 },
        { label: "price", cost: 10610 },
      ],
      from:
        "by hand: 2,369.83 + 236.80; tax paid 169.43, direct 7,208.50, contingency 216.26, 7,424.76 / 0.7 = 10,606.80, to the next " +
        "whole 10",
    },
    {
      given: { costs: [["labour", 600]], terms: [["profit of price", 0.25]] },
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
        costs: [["item", "cost"], ["production", 520], ["finishing", 180], ["labour", 30], ["labour", 36]],
        terms: [["label", "rate"], ["overhead on labour", 2.5]],
      },
      shows: [
        { label: "materials", cost: 700 },
        { label: "labour", cost: 66 },
        { label: "overhead", cost: 165, note: "overhead on labour 250 %" },
        { label: "price", cost: 931 },
      ],
      from: "OpenStax, Principles of Accounting, Volume 2, 4.3 to 4.5, job MAC001: materials 520 and 180, labour 66, overhead 165, job 931",
    },
    {
      given: {
        costs: [["item", "cost"], ["cove", ""], ["newel", 10], ["cap", 0], ["plug", "included"]],
        terms: [["overhead on cost", "10%"]],
      },
      shows: [{ label: "direct", cost: 10, note: "cost is 0 or empty in row 2 (cove) and 1 more" }],
      from: "by hand: only the newel has a cost",
    },
    {
      given: { costs: [["material", 600]], terms: [["overhead on cost", 0.1], ["overhead of price", 0.1]] },
      fails: "#VALUE!",
      says: 'terms: "overhead on cost" and "overhead of price" would charge one thing twice; keep one',
      from: "common practice, no source: overhead is charged once",
    },
    {
      given: { costs: [["material", 600]], terms: [["overhead of price", 0.6], ["profit of price", 0.4]] },
      fails: "#VALUE!",
      says: "terms: overhead of price 60 % and profit of price 40 % leave nothing for the cost; write less",
      from: "by hand: 600 / (1 - 0.6 - 0.4) has no answer",
    },
    {
      given: { costs: [["item", "cost"], ["material", "six hundred"]], terms: [["contingency", 0.05]] },
      fails: "#VALUE!",
      says: 'cost in row 2 (material): must be an amount of money, got "six hundred"',
      from: "common practice, no source: an amount in words cannot be added up",
    },
  ],
  source: `${TERM_RULES} ${COST_RULES}`,
  solve: ({ costs, terms, option }) => withTerms("terms", terms, (stated) => bid(costs, stated, option)),
});
