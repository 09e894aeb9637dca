/**
 * A month of an invented shop: four jobs, 26 rows and the late freight of April. Reckoned by hand, and twice by arithmetic that shares no
 * code: decimals, and whole cents with fractions.
 */
export const MONTH_MOVES = [
  ["date", "job", "item", "quantity", "unit", "cost", "kind", "to", "invoice", "of", "share"],
  ["2026-02-28", "", "oak blank 42", 6, "each", 309, "opening", "", "", "", ""],
  ["2026-02-28", "", "poplar 16 ft", 3, "ea", 112.5, "opening", "", "", "", ""],
  ["2026-03-31", "", "Oak blank 42", 4, "each", "", "count", "", "", "", ""],
  ["2026-03-02", "", "oak blank 42", 20, "each", 1070, "purchase", "", "A-101", "", ""],
  ["2026-03-02", "", "poplar 16 ft", 7, "pc", 266.04, "purchase", "", "A-101", "", ""],
  ["2026-03-02", "Elm 12", "maple newel", 2, "each", 171.5, "purchase", "", "A-101", "", ""],
  ["2026-03-02", "", "", "", "", 97.99, "tax", "", "A-101", "", ""],
  ["2026-03-04", "", "", "", "", 85, "freight", "", "A-101", "", ""],
  ["2026-03-02", "", "", "", "", 1690.53, "invoice total", "", "A-101", "", ""],
  ["2026-03-03", "Elm 12", "oak blank 42", 13, "each", "", "issue", "", "", "", ""],
  ["2026-03-03", "Elm 12", "poplar 16 ft", 4, "each", "", "issue", "", "", "", ""],
  ["2026-03-05", "Birch 4", "oak blank 42", 8, "each", "", "issue", "", "", "", ""],
  ["2026-03-06", "Elm 12", "oak blank 42", 2, "each", "", "transfer", "Ash 9", "", "", ""],
  ["2026-03-09", "Ash 9", "cove", 100, "LF", 113, "purchase", "", "B-7", "", ""],
  ["2026-03-10", "", "poplar 16 ft", 1, "each", 38, "return", "", "A-101", "", ""],
  ["2026-03-11", "Elm 12", "poplar offcut 6 ft", 2, "each", "", "offcut", "rack", "", "poplar 16 ft", 0.375],
  ["2026-03-12", "Pine 7", "poplar offcut 6 ft", 1, "each", "", "issue", "", "", "", ""],
  ["2026-03-13", "Pine 7", "poplar 16 ft", 3, "each", "", "issue", "", "", "", ""],
  ["2026-03-16", "Birch 4", "oak blank 42", 1, "each", "", "scrap", "", "", "", ""],
  ["2026-03-17", "Ash 9", "cove", 144, "in", "", "transfer", "rack", "", "", ""],
  ["2026-03-18", "shop", "glue", 6, "each", 50.4, "purchase", "", "C-3", "", ""],
  ["2026-03-24", "", "", "", "", 25, "credit", "", "A-101", "", ""],
  ["2026-03-31", "", "poplar 16 ft", 2, "each", "", "count", "", "", "", ""],
  ["2026-04-02", "", "", "", "", 18, "freight", "", "B-7", "", ""],
  ["2026-04-03", "Pine 7", "cove", 12, "ft", "", "issue", "", "", "", ""],
  ["2026-04-06", "", "", "", "", 12, "freight", "", "A-101", "", ""],
] as const;

export const STOCKLEDGER_OF_MONTH = [
  ["row", "date", "kind", "item", "from", "to", "quantity", "unit", "cost", "charges", "value", "average", "on the rack", "note"],
  [2, "2026-02-28", "opening", "oak blank 42", "", "rack", 6, "each", 309, "", 309, 51.5, 6, ""],
  [3, "2026-02-28", "opening", "poplar 16 ft", "", "rack", 3, "each", 112.5, "", 112.5, 37.5, 3, ""],
  [5, "2026-03-02", "purchase", "oak blank 42", "", "rack", 20, "each", 1070, 112.13, 1182.13, 57.3511538461538, 26, ""],
  [6, "2026-03-02", "purchase", "poplar 16 ft", "", "rack", 7, "each", 266.04, 27.88, 293.92, 40.642, 10, ""],
  [7, "2026-03-02", "purchase", "maple newel", "", "Elm 12", 2, "each", 171.5, 17.98, 189.48, "", "", ""],
  [
    8, "2026-03-02", "tax", "", "", "", "", "", 97.99, "", "", "", "",
    "on A-101: oak blank 42 69.55, poplar 16 ft 17.29, maple newel 11.15",
  ],
  [10, "2026-03-02", "invoice total", "", "", "", "", "", 1690.53, "", "", "", "", "agrees"],
  [11, "2026-03-03", "issue", "oak blank 42", "rack", "Elm 12", 13, "each", "", 56.07, 745.57, 57.3507692307692, 13, ""],
  [12, "2026-03-03", "issue", "poplar 16 ft", "rack", "Elm 12", 4, "each", "", 11.15, 162.57, 40.6416666666667, 6, ""],
  [
    9, "2026-03-04", "freight", "", "", "", "", "", 85, "", "", "", "",
    "on A-101: oak blank 42 60.33, poplar 16 ft 15.00, maple newel 9.67",
  ],
  [13, "2026-03-05", "issue", "oak blank 42", "rack", "Birch 4", 8, "each", "", 34.5, 458.81, 57.35, 5, ""],
  [14, "2026-03-06", "transfer", "oak blank 42", "Elm 12", "Ash 9", 2, "each", "", 8.63, 114.7, 57.35, 5, ""],
  [15, "2026-03-09", "purchase", "cove", "", "Ash 9", 100, "ft", 113, 0, 113, "", "", ""],
  [16, "2026-03-10", "return", "poplar 16 ft", "rack", "", 1, "each", 38, "", 38, 41.17, 5, ""],
  [17, "2026-03-11", "offcut", "poplar offcut 6 ft", "Elm 12", "rack", 2, "each", "", 2.09, 30.48, 15.24, 2, "0.750 of poplar 16 ft"],
  [18, "2026-03-12", "issue", "poplar offcut 6 ft", "rack", "Pine 7", 1, "each", "", 1.05, 15.24, 15.24, 1, ""],
  [19, "2026-03-13", "issue", "poplar 16 ft", "rack", "Pine 7", 3, "each", "", 10.04, 123.51, 41.17, 2, ""],
  [20, "2026-03-16", "scrap", "oak blank 42", "Birch 4", "Birch 4", 1, "each", "", "", 57.35, 57.35, 5, "stays in the cost of the job"],
  [21, "2026-03-17", "transfer", "cove", "Ash 9", "rack", 12, "ft", "", 0, 13.56, 1.13, 12, ""],
  [22, "2026-03-18", "purchase", "glue", "", "shop", 6, "each", 50.4, 0, 50.4, "", "", ""],
  [
    23, "2026-03-24", "credit", "", "", "", "", "", 25, "", "", "", "",
    "on A-101: oak blank 42 17.75, poplar 16 ft 4.41, maple newel 2.84",
  ],
  [4, "2026-03-31", "count", "oak blank 42", "rack", "shrinkage", 4, "each", "", "", 57.35, 57.35, 4, "book 5, short 1"],
  [24, "2026-03-31", "count", "poplar 16 ft", "rack", "", 2, "each", "", "", 0, 41.17, 2, "book 2, short 0"],
  [25, "2026-04-02", "freight", "", "", "", "", "", 18, "", 18, "", "", "late for B-7: Ash 9 cove 18.00"],
  [26, "2026-04-03", "issue", "cove", "rack", "Pine 7", 12, "ft", "", 0, 13.56, "", 0, ""],
  [
    27, "2026-04-06", "freight", "", "", "", "", "", 12, "", 12, "", "",
    "late for A-101: rack oak blank 42 1.70, price differences 6.82; rack poplar 16 ft 0.61, price differences 1.51; " +
      "Elm 12 maple newel 1.36",
  ],
] as const;

export const RACK_OF_MARCH = [
  ["item", "unit", "opening", "in", "out", "short", "quantity", "average", "value", "note"],
  ["oak blank 42", "each", 6, 20, 21, 1, 4, 57.35, 229.4, ""],
  ["poplar 16 ft", "each", 3, 7, 8, 0, 2, 41.17, 82.34, ""],
  ["poplar offcut 6 ft", "each", 0, 2, 1, 0, 1, 15.24, 15.24, ""],
  ["cove", "ft", 0, 12, 0, 0, 12, 1.13, 13.56, ""],
  ["total", "", "", "", "", "", "", "", 340.54, ""],
] as const;

export const RACK_AT_MARCH_5 = [
  ["item", "unit", "opening", "in", "out", "short", "quantity", "average", "value", "note"],
  ["oak blank 42", "each", 6, 20, 21, 0, 5, 57.35, 286.75, ""],
  ["poplar 16 ft", "each", 3, 7, 4, 0, 6, 40.6416666666667, 243.85, ""],
  ["total", "", "", "", "", "", "", "", 530.6, ""],
] as const;

export const RACK_OF_APRIL = [
  ["item", "unit", "opening", "in", "out", "short", "quantity", "average", "value", "note"],
  ["oak blank 42", "each", 4, 0, 0, 0, 4, 57.775, 231.1, ""],
  ["poplar 16 ft", "each", 2, 0, 0, 0, 2, 41.475, 82.95, ""],
  ["poplar offcut 6 ft", "each", 1, 0, 0, 0, 1, 15.24, 15.24, ""],
  ["cove", "ft", 12, 0, 12, 0, 0, "", 0, ""],
  ["total", "", "", "", "", "", "", "", 329.29, ""],
] as const;

export const JOBCOST_OF_MARCH = [
  ["job", "item", "unit", "quantity", "price", "cost", "charges", "waste", "waste cost", "note"],
  ["Elm 12", "maple newel", "each", 2, 85.75, 189.48, 17.98, 0, 0, ""],
  ["Elm 12", "oak blank 42", "each", 11, 53.0390909090909, 630.87, 47.44, 0, 0, ""],
  ["Elm 12", "poplar 16 ft", "each", 3.25, 37.8553846153846, 132.09, 9.06, 0, 0, ""],
  ["Birch 4", "oak blank 42", "each", 8, 53.03875, 458.81, 34.5, 1, 57.35, ""],
  ["Ash 9", "oak blank 42", "each", 2, 53.035, 114.7, 8.63, 0, 0, ""],
  ["Ash 9", "cove", "ft", 88, 1.13, 99.44, 0, 0, 0, ""],
  ["Pine 7", "poplar offcut 6 ft", "each", 1, 14.19, 15.24, 1.05, 0, 0, ""],
  ["Pine 7", "poplar 16 ft", "each", 3, 37.8233333333333, 123.51, 10.04, 0, 0, ""],
  ["shop", "glue", "each", 6, 8.4, 50.4, 0, 0, 0, ""],
] as const;

export const JOBCOST_OF_APRIL = [
  ["job", "item", "unit", "quantity", "price", "cost", "charges", "waste", "waste cost", "note"],
  ["Elm 12", "maple newel", "each", 2, 85.75, 190.84, 19.34, 0, 0, ""],
  ["Elm 12", "oak blank 42", "each", 11, 53.0390909090909, 630.87, 47.44, 0, 0, ""],
  ["Elm 12", "poplar 16 ft", "each", 3.25, 37.8553846153846, 132.09, 9.06, 0, 0, ""],
  ["Birch 4", "oak blank 42", "each", 8, 53.03875, 458.81, 34.5, 1, 57.35, ""],
  ["Ash 9", "oak blank 42", "each", 2, 53.035, 114.7, 8.63, 0, 0, ""],
  ["Ash 9", "cove", "ft", 88, 1.13, 117.44, 18, 0, 0, ""],
  ["Pine 7", "poplar offcut 6 ft", "each", 1, 14.19, 15.24, 1.05, 0, 0, ""],
  ["Pine 7", "poplar 16 ft", "each", 3, 37.8233333333333, 123.51, 10.04, 0, 0, ""],
  ["Pine 7", "cove", "ft", 12, 1.13, 13.56, 0, 0, 0, ""],
  ["shop", "glue", "each", 6, 8.4, 50.4, 0, 0, 0, ""],
] as const;

export const MONTHCLOSE_OF_BOTH = [
  ["month", "where", "opening", "bought", "freight", "tax", "credited", "returned", "in", "out", "closing", "cost"],
  ["2026-03", "rack", 421.5, 1336.04, 75.33, 86.84, 22.16, 38, 44.04, 1563.05, 340.54, -80.96],
  ["2026-03", "Elm 12", 0, 171.5, 9.67, 11.15, 2.84, 0, 908.14, 145.18, 952.44, 952.44],
  ["2026-03", "Birch 4", 0, 0, 0, 0, 0, 0, 458.81, 0, 458.81, 458.81],
  ["2026-03", "Ash 9", 0, 113, 0, 0, 0, 0, 114.7, 13.56, 214.14, 214.14],
  ["2026-03", "Pine 7", 0, 0, 0, 0, 0, 0, 138.75, 0, 138.75, 138.75],
  ["2026-03", "shop", 0, 50.4, 0, 0, 0, 0, 0, 0, 50.4, 50.4],
  ["2026-03", "shrinkage", 0, 0, 0, 0, 0, 0, 57.35, 0, 57.35, 57.35],
  ["2026-03", "total", 421.5, 1670.94, 85, 97.99, 25, 38, 1721.79, 1721.79, 2212.43, 1790.93],
  ["2026-04", "rack", 340.54, 0, 2.31, 0, 0, 0, 0, 13.56, 329.29, -11.25],
  ["2026-04", "Elm 12", 952.44, 0, 1.36, 0, 0, 0, 0, 0, 953.8, 1.36],
  ["2026-04", "Birch 4", 458.81, 0, 0, 0, 0, 0, 0, 0, 458.81, 0],
  ["2026-04", "Ash 9", 214.14, 0, 18, 0, 0, 0, 0, 0, 232.14, 18],
  ["2026-04", "Pine 7", 138.75, 0, 0, 0, 0, 0, 13.56, 0, 152.31, 13.56],
  ["2026-04", "shop", 50.4, 0, 0, 0, 0, 0, 0, 0, 50.4, 0],
  ["2026-04", "shrinkage", 57.35, 0, 0, 0, 0, 0, 0, 0, 57.35, 0],
  ["2026-04", "price differences", 0, 0, 8.33, 0, 0, 0, 0, 0, 8.33, 8.33],
  ["2026-04", "total", 2212.43, 0, 30, 0, 0, 0, 13.56, 13.56, 2242.43, 30],
] as const;
