import { rack } from "../../solver/books/ledger/rack";
import { sharedLedger } from "../../solver/books/ledger/shared-ledger";
import { dayText } from "../../solver/books/day";
import { problem } from "../../solver/problem";
import { type Failed } from "../cells";
import { declare, headings } from "../declare";
import { FEW_BY_HAND, FEW_MOVES, SHORT_BY_HAND, SHORT_MOVES, SHORT_SAYS } from "../ledger-examples";
import { firstFault, LEDGER_PROBLEMS, LEDGER_RULES, MOVES } from "../ledger-problems";

export const RACK = declare({
  id: "RACK",
  group: "Books",
  says: "What lies on the rack at the close of a day, and what came and went.",
  parameters: {
    moves: MOVES,
    from: { kind: "date", optional: true, says: "First day of what came and went.", without: "Left out: from the openings on." },
    to: { kind: "date", optional: true, says: "Last day.", without: "Left out: the last of the moves." },
    headings,
  },
  result: {
    kind: "table",
    says: "One row per item the rack holds or held in those days, then the total: opening + in - out - short = quantity.",
    columns: {
      item: { kind: "label", says: "Item as first written." },
      unit: { kind: "text", says: "Unit the item was first counted in." },
      opening: { kind: "number", says: "Held before the first day; without one, the openings." },
      in: { kind: "number", says: "Bought, and brought back from jobs." },
      out: { kind: "number", says: "Issued, sent back and scrapped." },
      short: { kind: "number", says: "Fewer counted than the books had; negative where more." },
      quantity: { kind: "number", says: "Held at the close of the last day." },
      average: { kind: "money", says: "Value of one, not rounded; empty where there is none." },
      value: { kind: "money", says: "Value of what is held, charges of its month with it." },
      note: { kind: "text", says: "A name like another: same goods?" },
    },
  },
  problems: {
    ...LEDGER_PROBLEMS,
    "from-after-to": { cell: "#VALUE!", says: "from: {from} is after to, {to}; write the earlier day first" },
  },
  examples: [
    {
      given: { moves: FEW_MOVES, from: "2026-03-03", to: "2026-03-31" },
      gives: [
        ["item", "unit", "opening", "in", "out", "short", "quantity", "average", "value", "note"],
        ["oak blank", "each", 10, 0, 4, 1, 5, 52, 260, ""],
        ["total", "", "", "", "", "", "", "", 260, ""],
      ],
      from: FEW_BY_HAND,
    },
    {
      given: { moves: FEW_MOVES, headings: false },
      gives: [
        ["oak blank", "each", 0, 10, 4, 1, 5, 52.8, 264, ""],
        ["total", "", "", "", "", "", "", "", 264, ""],
      ],
      from: `${FEW_BY_HAND}; half of the late freight of 8 is for the 5 of 10 that are left`,
    },
    { given: { moves: SHORT_MOVES }, fails: "#VALUE!", says: SHORT_SAYS, from: SHORT_BY_HAND },
    {
      given: { moves: FEW_MOVES, from: "2026-04-01", to: "2026-03-01" },
      fails: "#VALUE!",
      says: "from: 2026-04-01 is after to, 2026-03-01; write the earlier day first",
      from: "by hand: there are no days between",
    },
    {
      given: { moves: FEW_MOVES, from: "3/4/26" },
      fails: "#VALUE!",
      says: 'from: must be a date, or text such as 2026-03-04, got "3/4/26"',
      from: "by hand: 3 April or March 4",
    },
  ],
  source: `Perpetual inventory: opening + in - out - short. ${LEDGER_RULES}`,
  solve: ({ moves, from, to }) => {
    if (from !== undefined && to !== undefined && from.day > to.day)
      return problem("from-after-to", { from: dayText(from.day), to: dayText(to.day) });
    const books = sharedLedger<Failed>(moves);
    const days = { ...(from === undefined ? {} : { from: from.day }), ...(to === undefined ? {} : { to: to.day }) };
    return firstFault(books) ?? rack(books, days);
  },
});
