/** Wording of what is wrong with a tally, for each function that takes one. */
export const TALLY_PROBLEMS = {
  "label-twice": { cell: "#VALUE!", says: "label: board {board} stands in rows {first} and {second}; give each board its own" },
  "two-prices": {
    cell: "#VALUE!",
    says: "price: board {board} has a price of {price} and a board foot price of {each}; keep one",
  },
  "no-price": { cell: "#VALUE!", says: "board foot price: board {board} has none, and no price; give one, or write yes under owned" },
  "lot-price-without-lot": { cell: "#VALUE!", says: "lot: board {board} has a lot price of {price} and no lot; name its lot" },
  "lot-without-price": {
    cell: "#VALUE!",
    says: "lot price: lot {lot} has none, and board {board} no price of its own; give the lot price on one of its rows",
  },
  "lot-and-own-price": {
    cell: "#VALUE!",
    says: "lot price: board {board} is in lot {lot} for {price} and has a price of {own} itself; keep one",
  },
  "two-lot-prices": { cell: "#VALUE!", says: "lot price: lot {lot} has two, {first} and {second}; keep one" },
  "defects-and-clear": { cell: "#VALUE!", says: "defects: board {board} has both defects and clear; give one of the two" },
  "ranges-of-several": {
    cell: "#VALUE!",
    says: "{column}: board {board} has a quantity of {quantity}; give each board with ranges its own row",
  },
  "range-backwards": { cell: "#VALUE!", says: "{column}: board {board}: {from} to {to} runs backwards; write the smaller first" },
  "range-past-end": { cell: "#VALUE!", says: "{column}: board {board}: {from} to {to} lies past its end ({length}); measure again" },
  "edge-takes-all": { cell: "#VALUE!", says: "edge: board {board} loses {edge} of a width of {width}; give what is cut off both edges" },
} as const;

export const FOOTAGE_RULE_SAYS =
  "surface measure: whole feet downwards, width x feet / 12 to the nearest whole, exactly a half up, then down, then up in the order of " +
  "rows, times thickness; a total to the nearest whole, half up (NHLA Rules, Measurement & Tally, 16 and 18, as its Chief Inspector " +
  "quotes them, 2015 and 2022; halves in turn: a professor of wood science). end tally: whole feet downwards, width to the nearest inch, " +
  "halves in turn; a total to the nearest whole (American Hardwood Export Council, Measurement). exact: as measured (US Navy " +
  "Engineering Aid). Under 1 in thick counts as 1 in.";
