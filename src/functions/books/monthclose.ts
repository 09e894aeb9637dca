import { monthClose } from "../../solver/books/ledger/month-close";
import { sharedLedger } from "../../solver/books/ledger/shared-ledger";
import { type Failed } from "../cells";
import { declare, headings } from "../declare";
import { FEW_BY_HAND, FEW_MOVES, SHORT_BY_HAND, SHORT_MOVES, SHORT_SAYS } from "../ledger-examples";
import { firstFault, LEDGER_PROBLEMS, LEDGER_RULES, MOVES } from "../ledger-problems";

export const MONTHCLOSE = declare({
  id: "MONTHCLOSE",
  words: "month close",
  group: "Books",
  says: "Where the money of each month went: rack, jobs, shop, waste, shrinkage and price differences, with a total that ties.",
  parameters: { moves: MOVES, headings },
  result: {
    kind: "table",
    says:
      "Of each month with moves one row per place there was up to its end, then the total. Opening + bought + freight + tax - credited - " +
      "returned + in - out = closing in every row; in the total in = out, and cost is the money on the month's papers.",
    columns: {
      month: { kind: "text", says: "Year and month, 2026-03." },
      where: { kind: "label", says: "rack, jobs as they first appear, shop, waste, shrinkage, price differences, total." },
      opening: { kind: "money", says: "Value at the close of the month before, and openings." },
      bought: { kind: "money", says: "Purchases, without their charges." },
      freight: { kind: "money", says: "Its share of the month's freight." },
      tax: { kind: "money", says: "Its share of the month's sales tax that is not recovered." },
      credited: { kind: "money", says: "Its share of credits, taken off." },
      returned: { kind: "money", says: "Credited for goods sent back, taken off." },
      in: { kind: "money", says: "Brought from other places." },
      out: { kind: "money", says: "Gone to other places." },
      closing: { kind: "money", says: "Value at the close of the month." },
      cost: { kind: "money", says: "Closing less opening: what the month put there." },
    },
  },
  problems: {
    ...LEDGER_PROBLEMS,
    "too-many-months": {
      cell: "#VALUE!",
      says: "moves: months and jobs make more than {most} rows; give the moves of fewer years, with openings",
    },
  },
  examples: [
    {
      given: { moves: FEW_MOVES },
      gives: [
        ["month", "where", "opening", "bought", "freight", "tax", "credited", "returned", "in", "out", "closing", "cost"],
        ["2026-03", "rack", 0, 500, 20, 0, 0, 0, 0, 260, 260, 260],
        ["2026-03", "Elm 12", 0, 0, 0, 0, 0, 0, 208, 0, 208, 208],
        ["2026-03", "shrinkage", 0, 0, 0, 0, 0, 0, 52, 0, 52, 52],
        ["2026-03", "total", 0, 500, 20, 0, 0, 0, 260, 260, 520, 520],
        ["2026-04", "rack", 260, 0, 4, 0, 0, 0, 0, 0, 264, 4],
        ["2026-04", "Elm 12", 208, 0, 0, 0, 0, 0, 0, 0, 208, 0],
        ["2026-04", "shrinkage", 52, 0, 0, 0, 0, 0, 0, 0, 52, 0],
        ["2026-04", "price differences", 0, 0, 4, 0, 0, 0, 0, 0, 4, 4],
        ["2026-04", "total", 520, 0, 8, 0, 0, 0, 0, 0, 528, 8],
      ],
      from: `${FEW_BY_HAND}; the late 8 leaves March as it was: 4 for the 5 of 10 that are left, 4 for what is gone`,
    },
    {
      given: {
        moves: [
          ["date", "item", "quantity", "unit", "cost", "kind"],
          [46081, "oak blank", 6, "each", 309, "opening"],
        ],
        headings: false,
      },
      gives: [
        ["2026-02", "rack", 309, 0, 0, 0, 0, 0, 0, 0, 309, 0],
        ["2026-02", "total", 309, 0, 0, 0, 0, 0, 0, 0, 309, 0],
      ],
      from: "by hand: 46081 is 2026-02-28; an opening is no cost of the month",
    },
    { given: { moves: SHORT_MOVES }, fails: "#VALUE!", says: SHORT_SAYS, from: SHORT_BY_HAND },
  ],
  source:
    "Control totals: bought and charges less credits and returns = cost of jobs, shop, waste, shrinkage and price differences + change " +
    `on the rack. ${LEDGER_RULES}`,
  solve: ({ moves }) => {
    const books = sharedLedger<Failed>(moves);
    return firstFault(books) ?? monthClose(books);
  },
});
