import { bidVariance } from "../../solver/books/bid-variance";
import { declare, headings } from "../declare";
import { GOODS_PROBLEMS } from "../goods-problems";
import { GOODS_RULES } from "../goods-rules";
import { bought, planned } from "../tables";

export const BIDVARIANCE = declare({
  id: "BIDVARIANCE",
  words: "bid variance",
  group: "Books",
  says: "From what was bid to what a job cost, cause by cause.",
  parameters: {
    planned: {
      kind: "table",
      table: planned,
      rows: 2_000,
      badRows: "refuse",
      says: "Costs bid, goods and hours, such as the results of EXTEND; accepted changes stacked under them.",
    },
    actual: {
      kind: "table",
      table: bought,
      rows: 2_000,
      badRows: "refuse",
      says: "What the job cost, such as the result of JOBCOST with the hours under it.",
    },
    headings,
  },
  result: {
    kind: "table",
    says:
      "Ten rows: bid, the causes, actual. Bid and the causes add up to actual to the cent; a plus is against you. RECONCILE tells " +
      "which item, and names that may mean one.",
    columns: {
      cause: {
        kind: "label",
        says: "bid; price, usage and waste of goods; rate and hours of labour; freight and tax; not bid; bid, not done; actual.",
      },
      amount: { kind: "money", says: "Difference of amounts in cents." },
    },
  },
  problems: {
    ...GOODS_PROBLEMS,
    "quantity-of-money": {
      cell: "#VALUE!",
      says:
        "{table}, {item}: a quantity of {quantity} in row {row}, but this is money and no goods; give its cost with the quantity " +
        "empty or 1",
    },
  },
  examples: [
    {
      given: {
        planned: [
          ["item", "quantity", "unit", "price"],
          ["oak blank", 7, "each", 52],
          ["skirt board", 1, "each", 84],
          ["labour", 30, "hour", 58],
          ["freight", "", "", 60],
        ],
        actual: [
          ["item", "quantity", "unit", "cost", "charges", "waste"],
          ["oak blank", 9, "each", 520.5, 43.5, 1],
          ["shims", 2, "each", 9, "", ""],
          ["labour", 33.5, "hour", 1976.5, "", ""],
        ],
      },
      gives: [
        ["cause", "amount"],
        ["bid", 2248],
        ["price", 9],
        ["usage", 52],
        ["waste", 52],
        ["rate", 33.5],
        ["hours", 203],
        ["freight and tax", -16.5],
        ["not bid", 9],
        ["bid, not done", -84],
        ["actual", 2506],
      ],
      from:
        "by hand: 364 + 84 + 1,740 + 60; 477 - 9 x 52 = 9; of the two blanks more, 104, one was wasted; 1,976.50 - 33.5 x 58 = " +
        "33.50, 3.5 x 58 = 203; 43.50 - 60; 520.50 + 9 + 1,976.50 = 2,506",
    },
    {
      given: {
        planned: [
          ["item", "quantity", "price"],
          ["oak blank", 7, 52],
        ],
        actual: [
          ["item", "quantity", "cost", "waste"],
          ["oak blank", 8, 424, 9],
        ],
      },
      fails: "#VALUE!",
      says: "actual, oak blank: waste of 9 is more than the quantity of 8 in row 2; waste is part of the quantity",
      from: "by hand: nine of eight cannot be wasted",
    },
  ],
  source:
    "OpenStax, Principles of Accounting, Volume 2, 8.2 and 8.3: price and quantity variance of materials, rate and time variance of " +
    `labour; waste is the part of the quantity wasted over what the plan allows, at the planned price. ${GOODS_RULES}`,
  solve: ({ planned: bid, actual }) => bidVariance(bid, actual),
});
