/** Where the shop's hours and prices stand on Bid; Takeoff reads them and Bid reads Takeoff. */
export const BID_FIRST = 9;
/** Rows for items of the shop. */
export const BID_ITEMS = 26;
const LAST = BID_FIRST + BID_ITEMS - 1;

/** Item, hours and unit; item, price and unit. */
export const BID_HOURS = `CHOOSECOLS(Bid!J8:M${LAST},1,2,4)`;
export const BID_PRICES = `CHOOSECOLS(Bid!J8:M${LAST},1,3,4)`;
export const BID_TYPED = { hours: `Bid!K${BID_FIRST}:K${LAST}`, prices: `Bid!L${BID_FIRST}:L${LAST}` } as const;

/** Where the terms of the bid stand: rates, the last of them a row to spare, and under them what the price is rounded up to. */
const TERM_ROWS = 7;
const TERMS_FIRST = 9;
export const TERMS = {
  headings: `A${TERMS_FIRST - 1}`,
  first: `A${TERMS_FIRST}`,
  rows: TERM_ROWS,
  labels: `A${TERMS_FIRST}:A${TERMS_FIRST + TERM_ROWS - 1}`,
  rates: `B${TERMS_FIRST}:B${TERMS_FIRST + TERM_ROWS - 1}`,
  ratesBeside: `A${TERMS_FIRST}:B${TERMS_FIRST + TERM_ROWS - 1}`,
  firstRate: `B${TERMS_FIRST}`,
  roundUpTo: `A${TERMS_FIRST + TERM_ROWS}`,
  all: `A${TERMS_FIRST - 1}:B${TERMS_FIRST + TERM_ROWS}`,
} as const;

/** Where what is bid beside the stairs stands, under the shop's items. */
const BESIDE_ROWS = 6;
const BESIDE_FIRST = LAST + 4;
export const BESIDES = {
  title: `J${BESIDE_FIRST - 2}`,
  headings: `J${BESIDE_FIRST - 1}`,
  rows: BESIDE_ROWS,
  cells: `J${BESIDE_FIRST}:M${BESIDE_FIRST + BESIDE_ROWS - 1}`,
  kinds: `L${BESIDE_FIRST}:L${BESIDE_FIRST + BESIDE_ROWS - 1}`,
  hoursHeading: `N${BESIDE_FIRST - 1}`,
  hours: `N${BESIDE_FIRST}:N${BESIDE_FIRST + BESIDE_ROWS - 1}`,
} as const;

/** Where every cost stands as BID and QUOTE read it. */
export const COSTS_AT = "AM8";
