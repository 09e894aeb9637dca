import { sharedLedger } from "../../solver/books/ledger/shared-ledger";
import { stockLedger } from "../../solver/books/ledger/stock-ledger";
import { type Failed } from "../cells";
import { declare, headings } from "../declare";
import { GOODS_RULES } from "../goods-rules";
import { FEW_BY_HAND, FEW_MOVES } from "../ledger-examples";
import { LEDGER_PROBLEMS, LEDGER_RULES, MOVES, rowFault } from "../ledger-problems";

export const STOCKLEDGER = declare({
  id: "STOCKLEDGER",
  words: "stock ledger",
  group: "Books",
  says: "Every move of goods with what it is worth, in the order of reckoning; rack, jobs and months are its sums.",
  parameters: { moves: MOVES, headings },
  result: {
    kind: "table",
    says:
      "One row per move, by date; of one day openings, purchases and their charges, then all else as it stands, counts last. A row that " +
      "cannot be shows an error in its money and says why, and so does all that follows from it.",
    columns: {
      row: { kind: "count", says: "Its row in the moves." },
      date: { kind: "date", says: "As given." },
      kind: { kind: "text", says: "A purchase of less than nothing is a return." },
      item: { kind: "label", says: "Item as first written." },
      from: { kind: "label", says: "Where the goods come from; empty for a supplier." },
      to: { kind: "label", says: "Where they go; empty for a supplier. A scrap at a job stays there." },
      quantity: { kind: "number", says: "In the item's unit; of a count what was counted." },
      unit: { kind: "text", says: "Unit the item was first counted in." },
      cost: { kind: "money", says: "Money on the paper, rounded to cents." },
      charges: { kind: "money", says: "Of the value, freight and tax less credits." },
      value: {
        kind: "money",
        says: "What the goods are worth that move: cost and charges of a purchase, else at the average; of a count what is short.",
      },
      average: { kind: "money", says: "What one is worth on the rack after the row, not rounded; empty where the rack has none." },
      onTheRack: { kind: "number", says: "How many the rack holds after the row." },
      note: {
        kind: "text",
        says: "Where charges went, book and count, what is wrong with the row, or a name like another: same goods, same job?",
      },
    },
  },
  problems: LEDGER_PROBLEMS,
  examples: [
    {
      given: { moves: FEW_MOVES },
      gives: [
        ["row", "date", "kind", "item", "from", "to", "quantity", "unit", "cost", "charges", "value", "average", "on the rack", "note"],
        [2, "2026-03-02", "purchase", "oak blank", "", "rack", 10, "each", 500, 20, 520, 52, 10, ""],
        [3, "2026-03-03", "issue", "oak blank", "rack", "Elm 12", 4, "each", "", 8, 208, 52, 6, ""],
        [4, "2026-03-05", "freight", "", "", "", "", "", 20, "", "", "", "", "on A-1: oak blank 20.00"],
        [5, "2026-03-31", "count", "oak blank", "rack", "shrinkage", 5, "each", "", "", 52, 52, 5, "book 6, short 1"],
        [
          6, "2026-04-02", "freight", "", "", "", "", "", 8, "", 8, "", "",
          "late for A-1: rack oak blank 4.00, price differences 4.00",
        ],
      ],
      from: `${FEW_BY_HAND}; of the late 8 half is for the 5 of 10 that are left`,
    },
    {
      given: {
        moves: [
          ["date", "item", "quantity", "unit", "cost", "kind"],
          ["2026-03-02", "oak blank", 10, "each", "", "purchase"],
        ],
        headings: false,
      },
      gives: [
        [
          2, "2026-03-02", "purchase", "oak blank", "", "rack", 10, "each",
          "#VALUE! cost: is empty or 0 beside oak blank, kind purchase; give what the paper says",
          "#VALUE! cost: is empty or 0 beside oak blank, kind purchase; give what the paper says",
          "#VALUE! cost: is empty or 0 beside oak blank, kind purchase; give what the paper says",
          "#VALUE! cost: is empty or 0 beside oak blank, kind purchase; give what the paper says",
          "#VALUE! cost: is empty or 0 beside oak blank, kind purchase; give what the paper says",
          "cost: is empty or 0 beside oak blank, kind purchase; give what the paper says",
        ],
      ],
      from: "by hand: goods without a cost have no average",
    },
    {
      given: { moves: [["2026-03-02", "", "oak blank", 10, "each", 500, "purchase"]] },
      fails: "#VALUE!",
      says: "moves: eleven columns are not read by their place; give headings",
      from: "common practice, no source: nobody remembers the order of eleven columns",
    },
  ],
  source: `${LEDGER_RULES} ${GOODS_RULES}`,
  solve: ({ moves }) =>
    stockLedger(sharedLedger<Failed>(moves)).map((row) => (row.bad === undefined ? row : { ...row, bad: rowFault(row.bad) })),
});
