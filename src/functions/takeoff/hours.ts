import { hours } from "../../solver/takeoff/hours";
import { declare, headings } from "../declare";
import { GOODS_RULES } from "../goods-rules";
import { rates, work } from "../tables";

export const HOURS = declare({
  id: "HOURS",
  group: "Takeoff and bid",
  says: "Hours of the work by the shop's own rates.",
  parameters: {
    work: { kind: "table", table: work, rows: 5_000, badRows: "answer", says: "Items and how many, such as the result of TAKEOFF." },
    rates: {
      kind: "table",
      table: rates,
      rows: 5_000,
      badRows: "answer",
      says: "Hours for one of each item; `included` for work that takes none here.",
    },
    headings,
  },
  result: {
    kind: "table",
    says: "One row per item of the work; it goes into EXTEND, where a price for `labour` by the hour prices it.",
    columns: {
      item: { kind: "label", says: "Item of the work." },
      quantity: { kind: "number", says: "Hours." },
      unit: { kind: "text", says: "Always hour." },
      hoursEach: {
        kind: "number",
        says: "Hours for one unit of the work; a rate for another unit is converted. `included` where none are meant.",
      },
      note: {
        kind: "text",
        says: "Why there is no rate, hours or a quantity that are 0 or empty, or a name in either table that may mean the same work.",
      },
    },
  },
  problems: {
    "not-listed": { cell: "#N/A", says: 'rates: "{item}" has no rate; give its hours, or "included" where it takes none here' },
    "not-listed-but-near": { cell: "#N/A", says: 'rates: "{item}" has no rate; like "{near}" in row {row}: same work? write one name' },
    "not-in-unit": {
      cell: "#N/A",
      says:
        'rates: "{item}" has no rate for unit "{unit}", only for {units}; add one; a rate without a unit fits any unit where it is ' +
        "the only one",
    },
    "unit-is-empty": {
      cell: "#VALUE!",
      says: 'work, {item}: unit is empty in row {row}; rates of "{item}" are for {units}; give the unit',
    },
    "several-units": {
      cell: "#N/A",
      says: 'rates: "{item}" has rates for several units that differ, {units}; give a rate for the unit of the work',
    },
    "two-figures": { cell: "#VALUE!", says: 'rates: "{item}" has two rates for {unit}, {first} and {second}; keep one' },
  },
  examples: [
    {
      given: {
        work: [
          ["item", "quantity"],
          ["mitred return", 13],
          ["riser", 14],
        ],
        rates: [
          ["item", "hours"],
          ["riser", 0.3],
          ["mitred return", 0.25],
        ],
      },
      gives: [
        ["item", "quantity", "unit", "hours each", "note"],
        ["mitred return", 3.25, "hour", 0.25, ""],
        ["riser", 4.2, "hour", 0.3, ""],
      ],
      from: "by hand: 13 x 0.25, 14 x 0.3",
    },
    {
      given: {
        work: [
          ["item", "quantity"],
          ["notch", 14],
        ],
        rates: [
          ["item", "hours"],
          ["riser", 0.3],
        ],
        headings: false,
      },
      gives: [
        [
          "notch",
          '#N/A rates: "notch" has no rate; give its hours, or "included" where it takes none here',
          "hour",
          '#N/A rates: "notch" has no rate; give its hours, or "included" where it takes none here',
          'rates: "notch" has no rate; give its hours, or "included" where it takes none here',
        ],
      ],
      from: "by hand: no rate for notches is given",
    },
    {
      given: {
        work: [
          ["item", "quantity"],
          ["notch", 14],
          ["screws", 90],
          ["newel", ""],
        ],
        rates: [
          ["item", "hours"],
          ["notch", ""],
          ["screws", "included"],
          ["newel", 2],
        ],
      },
      gives: [
        ["item", "quantity", "unit", "hours each", "note"],
        ["notch", 0, "hour", 0, "hours are 0 or empty: no hours here"],
        ["screws", 0, "hour", "included", ""],
        ["newel", 0, "hour", 2, "quantity is 0 or empty: no hours here"],
      ],
      from: "by hand: nothing times anything is 0; only the screws are marked as taking no hours here",
    },
    {
      given: {
        work: [
          ["item", "quantity"],
          ["tread 54", 6],
        ],
        rates: [
          ["item", "hours"],
          ["tread 5/4", 0.5],
          ["tread 54", 0.75],
        ],
        headings: false,
      },
      gives: [["tread 54", 4.5, "hour", 0.75, 'like "tread 5/4" in row 2 of rates: same goods?']],
      from: "by hand: 6 x 0.75; each mark counts, so 5/4 lends 54 no hours",
    },
    {
      given: {
        work: [
          ["item", "quantity"],
          ["notch", 14],
        ],
        rates: [["item"], ["riser"]],
      },
      fails: "#VALUE!",
      says: 'rates: heading "hours" is missing; found item',
      from: "by hand: a rate needs its hours",
    },
  ],
  source: `Hours = quantity x the shop's own rate. ${GOODS_RULES}`,
  solve: ({ work: pieces, rates: shop }) => hours(pieces, shop),
});
