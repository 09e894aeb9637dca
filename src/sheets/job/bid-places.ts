/** Where the shop's hours and prices stand on Bid; Takeoff reads them and Bid reads Takeoff. */
export const BID_FIRST = 9;
/** Rows for items of the shop. */
export const BID_ITEMS = 26;
const LAST = BID_FIRST + BID_ITEMS - 1;

/** Item, hours and unit; item, price and unit. */
export const BID_HOURS = `CHOOSECOLS(Bid!J8:M${LAST},1,2,4)`;
export const BID_PRICES = `CHOOSECOLS(Bid!J8:M${LAST},1,3,4)`;
export const BID_TYPED = { hours: `Bid!K${BID_FIRST}:K${LAST}`, prices: `Bid!L${BID_FIRST}:L${LAST}` } as const;
