/** How the rows of a bid are reckoned, for the reference of each function that does. */
export const TERM_RULES =
  "Burden is of labour; tax paid of taxed materials; contingency of direct; overhead on labour of labour and burden, on materials of " +
  "materials and tax paid, on cost of direct and contingency. With o and g the shares of the price and p the markup: price = " +
  "(direct + contingency + overheads on them) x (1 + p) / (1 - o (1 + p) - g). Rows are in cents; profit is the price in cents less " +
  "the rows above it, rounding what is added to the next whole so many. Tax comes after the price: of the rounded price, or of taxed " +
  "materials.";

export const COST_RULES =
  "A rate is text with a percent sign up to 1000 %, or a number: of price, tax and contingency up to 1; on cost, on labour, on " +
  "materials, burden and markup up to 5, because a cell that shows 250 % hands over 2.5, and the note says so.";

/** What can be wrong with a bid. */
export const BID_PROBLEMS = {
  "taxed-without-goods": {
    cell: "#VALUE!",
    says: "taxed in row {row} ({item}): {kind} is not taxed by itself; leave taxed empty, or write kind material",
  },
  "no-such-option": { cell: "#VALUE!", says: 'option: "{option}" is in no row of costs{nearest}' },
  "no-options": { cell: "#VALUE!", says: 'option: "{option}" is in no row of costs; name it under option beside its rows' },
  "nothing-left": { cell: "#VALUE!", says: "terms: {rates} {leave} nothing for the cost; write less" },
} as const;
