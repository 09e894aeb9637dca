import type { WorkedCase } from "../case-kind";

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
