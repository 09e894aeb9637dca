import { extension } from "../../solver/bid/extension";
import { declare, headings } from "../declare";
import { GOODS_RULES } from "../goods-rules";
import { prices as priceTable, quantities as quantityTable } from "../tables";

const QUANTITIES = [
  ["item", "quantity", "unit"],
  ["tread blank", 13, "each"],
  ["cove", 84.5, "ft"],
  ["fit treads", 6.5, "hour"],
] as const;

const PRICES = [
  ["item", "price", "unit"],
  ["Tread blank", 52, "each"],
  ["cove", 1.13, ""],
  ["labour", 65, "hour"],
] as const;

export const EXTEND = declare({
  id: "EXTEND",
  group: "Takeoff and bid",
  says: "Quantities with their prices and costs, matched by item and unit.",
  parameters: {
    quantities: {
      kind: "table",
      table: quantityTable,
      rows: 5_000,
      badRows: "answer",
      says: "What is to be priced; a return is negative.",
    },
    prices: {
      kind: "table",
      table: priceTable,
      rows: 5_000,
      badRows: "answer",
      says: "What one unit of an item costs; a row `labour` with unit `hour` prices every hour that has no price of its own.",
    },
    headings,
  },
  result: {
    kind: "table",
    says: "One row per quantity, in the order given; where there is no price, the price and the cost say why.",
    columns: {
      item: { kind: "label", says: "Item as given." },
      quantity: { kind: "number", says: "Quantity as given." },
      unit: { kind: "text", says: "Unit of the quantity." },
      price: {
        kind: "money",
        says: "Price of one unit of the quantity; a price for another unit is converted. `included` where no cost is meant.",
      },
      cost: { kind: "money", says: "Quantity x price, rounded to cents, half a cent away from zero." },
      note: {
        kind: "text",
        says: "Why there is no price, a price or a quantity that is 0 or empty, or a name in either table that may mean the same goods.",
      },
    },
  },
  problems: {
    "not-listed": { cell: "#N/A", says: 'price: "{item}" has no price; add one to prices' },
    "not-listed-but-near": {
      cell: "#N/A",
      says: 'price: "{item}" has no price; like "{near}" in row {row} of prices: same goods? write one name',
    },
    "no-hourly-price": {
      cell: "#N/A",
      says: 'price: "{item}" has no price by the hour, and there is no price "labour" with unit hour; add one to prices',
    },
    "not-in-unit": {
      cell: "#N/A",
      says:
        'price: "{item}" has no price for unit "{unit}", only for {units}; add one; a price without a unit fits any unit where it ' +
        "is the only one",
    },
    "unit-is-empty": {
      cell: "#VALUE!",
      says: 'quantities, {item}: unit is empty in row {row}; other rows of "{item}" are in {units}; give the unit',
    },
    "several-units": {
      cell: "#N/A",
      says: 'price: "{item}" has prices for several units that differ, {units}; give a price for the unit of the quantity',
    },
    "two-figures": { cell: "#VALUE!", says: 'price: "{item}" has two prices for {unit}, {first} and {second}; keep one' },
    "two-hourly-prices": {
      cell: "#VALUE!",
      says: 'price: an hour of "{item}" has two prices, {own} of its own without a unit and {labour} as labour; give its own price a unit',
    },
  },
  examples: [
    {
      given: { quantities: QUANTITIES, prices: PRICES },
      gives: [
        ["item", "quantity", "unit", "price", "cost", "note"],
        ["tread blank", 13, "each", 52, 676, ""],
        ["cove", 84.5, "ft", 1.13, 95.49, ""],
        ["fit treads", 6.5, "hour", 65, 422.5, ""],
      ],
      from: "by hand: 13 x 52 = 676; 84.5 x 1.13 = 95.485, half a cent away from zero 95.49; 6.5 hours of labour x 65 = 422.50",
    },
    {
      given: { quantities: [["labour", 300, "day"]], prices: [["labour", 2.5, "day"]], headings: false },
      gives: [["labour", 300, "day", 2.5, 750, ""]],
      from: "I. P. Hicks, The Builders' Guide, Estimating Labor for Carpentry Work: five men 60 days at 2.50 a day cost 750",
    },
    {
      given: { quantities: [["3 x 10", 1064, "board foot"]], prices: [["3X10", 0.03, "Board Foot"]] },
      shows: [{ item: "3 x 10", price: 0.03, cost: 31.92 }],
      from: "by hand: 1,064 board feet at 30 a thousand are 31.92 (where the source multiplies to 31.62)",
    },
    {
      given: {
        quantities: [
          ["item", "quantity"],
          ["cove", 6],
        ],
        prices: [["item"], ["cove"]],
      },
      fails: "#VALUE!",
      says: 'prices: heading "price" is missing; found item',
      from: "common practice, no source: without prices nothing can be priced",
    },
    {
      given: {
        quantities: [
          ["item", "quantity", "unit"],
          ["oak blnak", 6, "pcs"],
        ],
        prices: [
          ["oak blank", 52, "each"],
          ["cap", 9, "each"],
        ],
        headings: false,
      },
      gives: [
        [
          "oak blnak",
          6,
          "pcs",
          '#N/A price: "oak blnak" has no price; like "oak blank" in row 1 of prices: same goods? write one name',
          '#N/A price: "oak blnak" has no price; like "oak blank" in row 1 of prices: same goods? write one name',
          'price: "oak blnak" has no price; like "oak blank" in row 1 of prices: same goods? write one name',
        ],
      ],
      from: "by hand: two letters have changed places",
    },
    {
      given: {
        quantities: [
          ["item", "quantity", "unit"],
          ["cove", 84, "ft"],
          ["riser", 14, "each"],
          ["newel", 0, "each"],
        ],
        prices: [
          ["item", "price", "unit"],
          ["cove", 0, "ft"],
          ["riser", "included", ""],
          ["newel", 85, ""],
        ],
      },
      gives: [
        ["item", "quantity", "unit", "price", "cost", "note"],
        ["cove", 84, "ft", 0, 0, "price is 0 or empty: costs nothing here"],
        ["riser", 14, "each", "included", 0, ""],
        ["newel", 0, "each", 85, 0, "quantity is 0 or empty: costs nothing here"],
      ],
      from: "by hand: nothing times anything is 0; only the risers are marked as costing nothing here",
    },
    {
      given: {
        quantities: [
          ["oak 4/4", 10, "bf"],
          ["moulding", 144, "in"],
        ],
        prices: [
          ["oak 44", 300, "bf"],
          ["oak 4/4", 5, "BdFt"],
          ["moulding", 1.13, "LF"],
        ],
      },
      shows: [
        { item: "oak 4/4", price: 5, cost: 50, note: 'like "oak 44" in row 1 of prices: same goods?' },
        { item: "moulding", unit: "in", cost: 13.56 },
      ],
      from: "by hand: 10 x 5; 144 in are 12 ft, 12 x 1.13 = 13.56",
    },
  ],
  source: `Cost = quantity x price; two prices that differ are refused. ${GOODS_RULES}`,
  solve: ({ quantities, prices }) => extension(quantities, prices),
});
