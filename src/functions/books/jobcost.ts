import { jobCost } from "../../solver/books/ledger/job-cost";
import { sharedLedger } from "../../solver/books/ledger/shared-ledger";
import { type Failed } from "../cells";
import { declare, headings } from "../declare";
import { FEW_BY_HAND, FEW_MOVES, SHORT_BY_HAND, SHORT_MOVES, SHORT_SAYS } from "../ledger-examples";
import { firstFault, LEDGER_PROBLEMS, LEDGER_RULES, MOVES } from "../ledger-problems";

export const JOBCOST = declare({
  id: "JOBCOST",
  words: "job cost",
  group: "Books",
  says: "What the goods of each job cost, freight and tax with them, and what of them was spoiled.",
  parameters: {
    moves: MOVES,
    job: { kind: "text", default: "", says: "One job, or `shop`.", without: "Left out: every job, then the shop." },
    to: { kind: "date", optional: true, says: "Last day.", without: "Left out: the last of the moves." },
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per job and item, without a total: those of one job go into RECONCILE as what was bought, as they stand. Labour is no " +
      "goods.",
    columns: {
      job: { kind: "label", says: "Job as first written, or shop." },
      item: { kind: "label", says: "Item as first written." },
      unit: { kind: "text", says: "Unit the item was first counted in." },
      quantity: { kind: "number", says: "What came to the job and stayed, what was spoiled with it." },
      price: { kind: "money", says: "Cost without charges, of one; not rounded." },
      cost: { kind: "money", says: "What the goods stand at, charges with them." },
      charges: { kind: "money", says: "Of the cost, freight and tax less credits." },
      waste: { kind: "number", says: "Of the quantity, what was scrapped." },
      wasteCost: { kind: "money", says: "Of the cost, what was scrapped, at the average of its day." },
      note: { kind: "text", says: "A name like another: same goods, same job?" },
    },
  },
  problems: {
    ...LEDGER_PROBLEMS,
    "no-such-job": { cell: "#N/A", says: 'job: "{job}" has no goods{by}{near}; write it as in the moves' },
    "nothing-at-jobs": { cell: "#N/A", says: "job: no goods are {where}{by}; enter issues, or a later last day" },
  },
  examples: [
    {
      given: { moves: FEW_MOVES },
      gives: [
        ["job", "item", "unit", "quantity", "price", "cost", "charges", "waste", "waste cost", "note"],
        ["Elm 12", "oak blank", "each", 4, 50, 208, 8, 0, 0, ""],
      ],
      from: FEW_BY_HAND,
    },
    {
      given: { moves: FEW_MOVES, job: "elm 12", headings: false },
      gives: [["Elm 12", "oak blank", "each", 4, 50, 208, 8, 0, 0, ""]],
      from: `${FEW_BY_HAND}; case does not matter`,
    },
    {
      given: { moves: FEW_MOVES, job: "Elm 12", to: "2026-03-02" },
      fails: "#N/A",
      says: 'job: "Elm 12" has no goods by 2026-03-02; write it as in the moves',
      from: "by hand: the first goods go to the job a day later",
    },
    {
      given: { moves: FEW_MOVES, to: "2026-03-02" },
      fails: "#N/A",
      says: "job: no goods are at a job or in the shop by 2026-03-02; enter issues, or a later last day",
      from: "by hand: on that day all lies on the rack",
    },
    { given: { moves: SHORT_MOVES }, fails: "#VALUE!", says: SHORT_SAYS, from: SHORT_BY_HAND },
  ],
  source: `Price = (cost - charges) / quantity. A spoiled piece stays in the cost of its job (normal waste). ${LEDGER_RULES}`,
  solve: ({ moves, job, to }) => {
    const books = sharedLedger<Failed>(moves);
    return firstFault(books) ?? jobCost(books, job, to?.day);
  },
});
