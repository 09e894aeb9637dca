/** A few rows of an invented shop that the functions of the ledger show themselves on. */
export const FEW_MOVES = [
  ["date", "job", "item", "quantity", "unit", "cost", "kind", "to", "invoice", "of", "share"],
  ["2026-03-02", "", "oak blank", 10, "each", 500, "purchase", "", "A-1", "", ""],
  ["2026-03-03", "Elm 12", "oak blank", 4, "each", "", "issue", "", "", "", ""],
  ["2026-03-05", "", "", "", "", 20, "freight", "", "A-1", "", ""],
  ["2026-03-31", "", "oak blank", 5, "each", "", "count", "", "", "", ""],
  ["2026-04-02", "", "", "", "", 8, "freight", "", "A-1", "", ""],
] as const;

export const FEW_BY_HAND =
  "by hand: 500 and the freight of the month, 20, are 52 each; 4 to the job are 208, of which 8 freight; 6 less the 5 counted is 1 " +
  "short, 52; 5 left are 260";

/** More is issued than there is: a name or an invoice is wrong. */
export const SHORT_MOVES = [
  ["date", "job", "item", "quantity", "unit", "cost", "kind"],
  ["2026-03-02", "", "oak blank 42", 5, "each", 250, "purchase"],
  ["2026-03-02", "", "oak blank 24", 8, "each", 300, "purchase"],
  ["2026-03-05", "Birch 4", "oak blank 42", 8, "each", "", "issue"],
  ["2026-03-06", "Birch 4", "oak blank 42", 1, "each", "", "issue"],
] as const;

export const SHORT_SAYS =
  'moves, row 4: quantity: 8 of oak blank 42 to issue on 2026-03-05 and 5 on the rack; an invoice is missing or dated late, or a name ' +
  'differs (like "oak blank 24" in row 3); 1 more: see STOCKLEDGER';

export const SHORT_BY_HAND = "by hand: 8 cannot come out of 5, and nothing after it is right";
