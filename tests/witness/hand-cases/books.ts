import {
  JOBCOST_OF_APRIL,
  JOBCOST_OF_MARCH,
  MONTH_MOVES,
  MONTHCLOSE_OF_BOTH,
  RACK_OF_APRIL,
  RACK_OF_MARCH,
  STOCKLEDGER_OF_MONTH,
} from "../../solver/books/worked-month";
import type { WorkedCase } from "../case-kind";

const BY_HAND = "a month reckoned by hand, and twice by arithmetic that shares no code: see the worked month of the tests";

/** What a few rows more than the worked month has come to. */
const NAMES_ALIKE = [
  ["date", "job", "item", "quantity", "unit", "cost", "kind"],
  ["2026-03-02", "", "oak blank", 10, "each", 500, "purchase"],
  ["2026-03-02", "", "oak blnak", 2, "each", 120, "purchase"],
  ["2026-03-03", "Elm 12", "oak blank", 4, "each", "", "issue"],
  ["2026-03-31", "", "oak blank", "none", "each", "", "count"],
] as const;

export const bookCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  HOURS: [
    {
      given: {
        work: [
          ["item", "quantity", "unit"],
          ["cove", 24, "in"],
          ["notch", 4, "each"],
          ["dusting", "included", "each"],
        ],
        rates: [
          ["item", "hours", "unit"],
          ["cove", 0.06, "ft"],
          ["notch", 0.5, ""],
          ["dusting", 1, ""],
        ],
      },
      shows: [
        { item: "cove", quantity: 0.12, hoursEach: 0.005 },
        { item: "notch", quantity: 2, hoursEach: 0.5 },
        { item: "dusting", quantity: 0, note: "" },
      ],
      from: "by hand: 24 in are 2 ft, 2 x 0.06, a twelfth of it for an inch; 4 x 1/2",
    },
  ],
  EXTEND: [
    {
      given: {
        quantities: [
          ["item", "quantity", "unit", "hours each"],
          ["cove", 24, "in", ""],
          ["blocking", "included", "each", ""],
          ["sweeping", 0, "hour", "included"],
        ],
        prices: [
          ["item", "price", "unit"],
          ["cove", 1.2, "ft"],
          ["blocking", 5, ""],
          ["sweeping", 60, "hour"],
        ],
      },
      shows: [
        { item: "cove", price: 0.1, cost: 2.4 },
        { item: "blocking", cost: 0, note: "" },
        { item: "sweeping", cost: 0, note: "" },
      ],
      from: "by hand: 24 in are 2 ft at 1.20; what is said to be included needs no note",
    },
  ],
  BID: [
    {
      given: {
        costs: [
          ["item", "cost", "price"],
          ["newel", 10, 10],
          ["cap", 0, "included"],
          ["total", 10, ""],
        ],
        terms: [["burden", 0]],
      },
      shows: [{ label: "direct", cost: 10, note: "" }],
      from: "by hand: a row total is no cost, and a price that is included means its 0",
    },
    {
      given: {
        costs: [
          ["item", "cost", "unit", "taxed"],
          ["oak", 200, "each", "yes"],
          ["used newel", 50, "each", "no"],
          ["fitting", 100, "hour", ""],
        ],
        terms: [
          ["label", "rate"],
          ["burden", 0.25],
          ["overhead on labour", 0.1],
          ["overhead on materials", 0.2],
          ["tax on materials", 0.08],
        ],
      },
      shows: [
        { label: "materials", cost: 250 },
        { label: "labour", cost: 100 },
        { label: "burden", cost: 25 },
        { label: "overhead", cost: 62.5, note: "overhead on labour 10 %; overhead on materials 20 %" },
        { label: "price", cost: 437.5 },
        { label: "tax", cost: 16, note: "tax on materials 8 %" },
        { label: "total", cost: 453.5 },
      ],
      from: "by hand: 12.50 of the 125 of labour and 50 of the 250 of materials; 8 % of the 200 that are taxed",
    },
  ],
  PRICECHANGE: [
    {
      given: {
        before: [
          ["item", "cost", "kind", "taxed", "option"],
          ["fitting", 100, "labour", "", ""],
          ["oak", 50, "", "no", ""],
          ["ash", 30, "", "", "ash"],
        ],
        after: [
          ["item", "cost", "kind", "taxed", "option"],
          ["fitting", 140, "labour", "", ""],
          ["dowel", 20, "", "no", ""],
          ["oak", 50, "", "yes", ""],
          ["ash", 30, "", "", "ash"],
          ["elm", 70, "", "", "elm"],
        ],
        terms: [
          ["label", "rate"],
          ["burden", 0.5],
          ["tax paid on materials", 0.1],
        ],
        option: "ash",
      },
      shows: [
        { cause: "price before", amount: 200 },
        { cause: "cost", item: "fitting", amount: 40 },
        { cause: "new", item: "ash", amount: 30 },
        { cause: "burden", amount: 20 },
        { cause: "tax paid on materials", amount: 8 },
        { cause: "price after", amount: 318 },
      ],
      from: "by hand: 150 + 50 = 200, untaxed; after, the oak and the ash that is chosen are taxed at 8: 140 + 70 + 20 + 50 + 30 + 8 = 318",
    },
  ],
  PROGRESSBILLING: [
    {
      given: {
        schedule: [
          ["item", "value", "done", "change"],
          ["main stair", 6000, 0.6, "no"],
          ["making good", "included", 1, "no"],
          ["no landing nosing", -200, 1, "yes"],
        ],
      },
      shows: [
        { item: "making good", value: 0, done: 1, earned: 0, balance: 0 },
        { item: "no landing nosing", value: -200, earned: -200, balance: 0 },
        { item: "contract", value: 6000 },
        { item: "changes", value: -200 },
        { item: "due", earned: 3400 },
      ],
      from: "by hand: 3,600 less the 200 of what is left out",
    },
  ],
  BIDVARIANCE: [
    {
      given: {
        planned: [
          ["item", "quantity", "unit", "price", "waste"],
          ["oak blank", 10, "each", 52, 3],
          ["cove", 40, "ft", 1.2, 4],
        ],
        actual: [
          ["item", "quantity", "unit", "cost", "waste"],
          ["oak blank", 12, "each", 624, 5],
          ["cove", 576, "in", 57.6, 96],
        ],
      },
      shows: [
        { cause: "bid", amount: 568 },
        { cause: "usage", amount: 4.8 },
        { cause: "waste", amount: 108.8 },
        { cause: "actual", amount: 681.6 },
      ],
      from: "by hand: 2 blanks over, all of them wasted over the 3 allowed, 104; 8 ft of cove over at 1.20, of which 4 ft wasted over 4",
    },
  ],
  STOCKLEDGER: [
    { given: { moves: MONTH_MOVES }, gives: STOCKLEDGER_OF_MONTH, from: BY_HAND },
    {
      given: { moves: NAMES_ALIKE },
      shows: [
        { row: 2, note: 'like "oak blnak" in row 3: same goods?' },
        { row: 5, value: 300, quantity: 0, onTheRack: 0, note: 'book 6, short 6; like "oak blnak" in row 3: same goods?' },
      ],
      from: "by hand: 6 of 10 at 50 are left in the books and none counted; two letters have changed places",
    },
  ],
  RACK: [
    { given: { moves: MONTH_MOVES, from: "2026-03-01", to: "2026-03-31" }, gives: RACK_OF_MARCH, from: BY_HAND },
    { given: { moves: MONTH_MOVES, from: "2026-04-01", to: "2026-04-30" }, gives: RACK_OF_APRIL, from: BY_HAND },
    {
      given: { moves: NAMES_ALIKE },
      shows: [{ item: "oak blank", short: 6, quantity: 0, value: 0, note: 'like "oak blnak" in row 3: same goods?' }],
      from: "by hand: two letters have changed places",
    },
  ],
  JOBCOST: [
    { given: { moves: MONTH_MOVES, to: "2026-03-31" }, gives: JOBCOST_OF_MARCH, from: BY_HAND },
    { given: { moves: MONTH_MOVES, to: "2026-04-30" }, gives: JOBCOST_OF_APRIL, from: BY_HAND },
    {
      given: { moves: MONTH_MOVES, job: "elm 12", to: "2026-03-31" },
      gives: JOBCOST_OF_MARCH.filter(([job]) => job === "job" || job === "Elm 12"),
      from: BY_HAND,
    },
    {
      given: { moves: NAMES_ALIKE },
      shows: [{ job: "Elm 12", cost: 200, note: 'like "oak blnak" in row 3: same goods?' }],
      from: "by hand: 4 at 50; two letters have changed places",
    },
  ],
  MONTHCLOSE: [{ given: { moves: MONTH_MOVES }, gives: MONTHCLOSE_OF_BOTH, from: BY_HAND }],
  RECONCILE: [
    {
      given: {
        planned: [
          ["item", "quantity", "cost"],
          ["oak", 10, 500],
          ["pine", 4, 80],
        ],
        bought: [
          ["item", "quantity", "cost"],
          ["oak", 10, 520],
          ["pine", 4, 84],
        ],
        used: [
          ["item", "quantity"],
          ["oak", 9],
          ["pine", 4],
        ],
      },
      shows: [
        { item: "oak", plannedCost: 500, spent: 520, priceVariance: 20, usageVariance: -50, scope: 0, onTheRack: 50 },
        { item: "pine", plannedCost: 80, spent: 84, priceVariance: 4, usageVariance: 0, scope: 0, onTheRack: 0 },
      ],
      from: "by hand: 520 - 10 x 50; (9 - 10) x 50; (10 - 9) x 50; 84 - 4 x 20",
    },
    {
      given: {
        planned: [
          ["item", "quantity", "unit", "price"],
          ["cove", 48, "ft", 2],
        ],
        bought: [
          ["item", "quantity", "unit", "price"],
          ["cove", 600, "in", 0.2],
        ],
        used: [
          ["item", "quantity", "unit"],
          ["cove", 588, "in"],
        ],
      },
      shows: [
        {
          item: "cove",
          unit: "ft",
          planned: 48,
          bought: 50,
          used: 49,
          plannedCost: 96,
          spent: 120,
          priceVariance: 20,
          usageVariance: 2,
          onTheRack: 2,
        },
      ],
      from: "by hand: 600 in are 50 ft at 2.40, 40 cents over for each; one ft more used than planned, one left",
    },
    {
      given: {
        planned: [
          ["item", "quantity", "price"],
          ["screws", 50, "included"],
        ],
        bought: [
          ["item", "quantity", "price"],
          ["screws", 50, 0.02],
        ],
      },
      shows: [{ item: "screws", plannedCost: 0, spent: 1, scope: 1, note: "planned without a price: counted at the price paid" }],
      from: "by hand: 50 x 0.02, against nothing planned",
    },
    {
      given: {
        planned: [
          ["item", "quantity", "price", "net", "gross", "length"],
          ["oak 8 ft", 2, 30, 180, 192, 96],
        ],
        bought: [
          ["item", "quantity", "price"],
          ["oak 8 ft", 2, 30],
        ],
      },
      shows: [{ item: "oak 8 ft", net: "", gross: "", yield: 0.9375 }],
      from: "by hand: 2 x 96 = 192, so net and gross are lengths and no board feet; 180 / 192",
    },
    {
      given: {
        planned: [
          ["item", "quantity", "unit", "price", "net", "gross"],
          ["oak", 10, "each", 50, 30, 40],
        ],
        bought: [
          ["item", "quantity", "unit", "price"],
          ["oak", 12, "each", 50],
        ],
        used: [
          ["item", "quantity", "unit"],
          ["oak", 11, "each"],
        ],
      },
      shows: [
        {
          item: "oak",
          unit: "each",
          planned: 10,
          bought: 12,
          used: 11,
          net: 33,
          gross: 44,
          yield: 0.75,
          wasteCost: 137.5,
          onTheRack: 50,
          usageVariance: 50,
          spent: 600,
        },
      ],
      from: "by hand: a board has 3 of its 4 board feet in the piece; 11 of them 33 of 44; a quarter of 11 x 50 is waste",
    },
  ],
};
