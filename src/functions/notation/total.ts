import { declare } from "../declare";
import { totalCells } from "../total-cells";

const COSTS = [
  ["item", "quantity", "cost"],
  ["oak blank 42", 13, 702.1],
  ["oak nosing 48", 1, 19.2],
  ["cove", -1, -6.6],
  ["total", 13, 714.7],
] as const;

const VERDICTS = [
  ["item", "verdict"],
  ["riser height", "fail"],
  ["tread depth", "pass"],
  ["nosing", "assumed: would fail"],
  ["headroom", "assumed: would pass"],
] as const;

export const TOTAL = declare({
  id: "TOTAL",
  group: "Notation",
  says: "Sum of one column of a table, or how many of its rows read as named; an error or a missing number in it is never left out.",
  parameters: {
    table: {
      kind: "cells",
      says: "A table with headings in its first row; a result of these functions, such as A15#, or one of your own.",
    },
    heading: { kind: "text", says: "Heading of the column, such as cost; case, spaces, punctuation, spelling and plural do not matter." },
    of: {
      kind: "text",
      default: "",
      says: "Word to count in that column, such as fail; `assumed` counts `assumed: would fail` too, by what stands before the colon.",
      without: "Left out: the numbers of the column are added.",
    },
  },
  result: {
    kind: "number",
    says:
      "Sum in exact decimals, or count. Rows called total, subtotal or grand total, and rows named for one such as total treads, " +
      "are left out: they have to be what the rows above them come to. Quantities in several units are refused.",
  },
  problems: {
    "no-headings": { cell: "#VALUE!", says: "table: has no headings; the first row has to name the columns" },
    "nothing-to-add": { cell: "#VALUE!", says: 'table: has no row with a number in "{heading}"' },
    "missing-in-row": { cell: "#VALUE!", says: "{heading} in {row}: is empty; give a number, or 0 where there is nothing to add" },
    "several-units": {
      cell: "#VALUE!",
      says: "{heading}: its rows are in {units}, which do not add up to one number; give the rows of one unit",
    },
    "rows-do-not-add": {
      cell: "#VALUE!",
      says:
        "{heading} in {row}: is {total} where the rows above it come to {sum}; these rows are no " +
        "parts of a sum, or a cell was typed over",
    },
  },
  examples: [
    { given: { table: COSTS, heading: "Cost" }, gives: 714.7, from: "by hand: 702.10 + 19.20 - 6.60; the row total is not added again" },
    {
      given: {
        table: [
          ["item", "price"],
          ["a", 0.1],
          ["b", 0.2],
        ],
        heading: "prices",
      },
      gives: 0.3,
      from: "by hand: 0.1 + 0.2, exact in decimals",
    },
    {
      given: { table: VERDICTS, heading: "verdict", of: "fail" },
      gives: 1,
      from: "by hand: one row reads fail; an assumed one is no fail",
    },
    { given: { table: VERDICTS, heading: "verdict", of: "assumed" }, gives: 2, from: "by hand: two rows read assumed before the colon" },
    {
      given: {
        table: [
          ["item", "cost"],
          ["riser", ""],
          ["tread", 52],
        ],
        heading: "cost",
      },
      fails: "#VALUE!",
      says: "cost in row 2 (riser): is empty; give a number, or 0 where there is nothing to add",
      from: "by hand: a sum without the riser would be too low",
    },
    {
      given: { table: COSTS, heading: "coast" },
      fails: "#N/A",
      says: 'heading: "coast" is not known; nearest is "cost"',
      from: "by hand: one letter from cost",
    },
    {
      given: {
        table: [
          ["label", "cost"],
          ["direct", 1000],
          ["overhead", 100],
          ["price", 1100],
          ["total", 1100],
        ],
        heading: "cost",
      },
      fails: "#VALUE!",
      says:
        "cost in row 5 (total): is 1100 where the rows above it come to 2200; these rows are no " +
        "parts of a sum, or a cell was typed over",
      from: "by hand: 1,000 + 100 + 1,100 = 2,200, for the price holds the rows above it already",
    },
    {
      given: {
        table: [
          ["item", "cost"],
          ["tread", 52],
          ["riser", 38],
          ["Subtotal", 90],
          ["newel", 85],
          ["Sub total", 85],
          ["total", 175],
        ],
        heading: "cost",
      },
      gives: 175,
      from: "by hand: 52 + 38 = 90; 90 + 85 = 175; the sums are not added again",
    },
    {
      given: {
        table: [
          ["item", "cost"],
          ["tread", 52],
          ["riser", 38],
          ["Subtotal", 95],
        ],
        heading: "cost",
      },
      fails: "#VALUE!",
      says:
        "cost in row 4 (Subtotal): is 95 where the rows above it come to 90; these rows are no " +
        "parts of a sum, or a cell was typed over",
      from: "by hand: 52 + 38 = 90",
    },
    {
      given: {
        table: [
          ["item", "quantity", "unit"],
          ["riser", 14, "each"],
          ["cove", 84, "ft"],
          ["finish area", 120, "sq ft"],
        ],
        heading: "quantity",
      },
      fails: "#VALUE!",
      says: "quantity: its rows are in each, ft, sq ft, which do not add up to one number; give the rows of one unit",
      from: "by hand: 14 risers and 84 ft are not 98 of anything",
    },
  ],
  source: "Addition in exact decimals of what the cells show.",
  solve: ({ table, heading, of }) => totalCells(table, heading, of),
});
