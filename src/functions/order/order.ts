import { resolvedStair } from "../../solver/layout/resolved-stair";
import { blankList } from "../../solver/order/blank-list";
import { blankOrder } from "../../solver/order/blank-order";
import { isProblem } from "../../solver/problem";
import { declare, headings } from "../declare";
import { ORDER_PROBLEMS } from "../order-problems";
import { stock } from "../tables";
import { withReadings } from "../with-readings";

const TWO_TREADS = [["total rise", 22.5], ["risers", 3], ["run", 10], ["width", 36]] as const;

export const ORDER = declare({
  id: "ORDER",
  group: "Order",
  says: "Blanks to buy for a stair, what is ripped and cut off each, and what the rip costs.",
  parameters: {
    stair: { kind: "stair", says: "The stair, or the result of LAYOUT with width and open end." },
    stock: {
      kind: "table",
      table: stock,
      badRows: "refuse",
      says: "Blanks that can be had: length, width, price; thickness where sizes of several are listed.",
    },
    readings: withReadings,
    headings,
  },
  result: {
    kind: "table",
    says:
      "Goods rows: they go into EXTEND, BID and RECONCILE as they stand. A row `saving` tells where the pieces above it would cost " +
      "less from boards cut into several, and which to buy: the cheapest cutting plan of that piece alone; one more at the end where " +
      "kinds of one thickness, ripped and cut together, would cost less still. The last row is `total`, with what has no price. Both " +
      "are passed over where the rows go on.",
    columns: {
      item: { kind: "label", says: "Label of the stock, or the kind of piece; saving; total." },
      length: { kind: "length", says: "Length of the blank bought." },
      width: { kind: "length", says: "Width of the blank bought." },
      quantity: { kind: "count", says: "How many." },
      price: { kind: "money", says: "Price of one." },
      cost: { kind: "money", says: "Price x quantity, in whole cents." },
      rippedOff: { kind: "length", says: "Taken off the width of each." },
      cutOff: { kind: "length", says: "Taken off the length of each." },
      ripCost: { kind: "money", says: "Cost x ripped off / width, in whole cents; part of the cost." },
      net: { kind: "number", says: "Board feet in the pieces." },
      gross: { kind: "number", says: "Board feet bought." },
      note: { kind: "text", says: "What the row is for, and what to look at before ordering." },
    },
  },
  problems: {
    ...ORDER_PROBLEMS,
    "no-blank-long-enough": {
      cell: "#VALUE!",
      says: "stock: {missing} x tread without a blank; each needs {length} x {width}, none is that long, and the longest is {longest}",
    },
    "no-blank-thick-enough": {
      cell: "#VALUE!",
      says:
        "stock: {missing} x tread without a blank; each needs {length} x {width} and {thickness} thick, and the thickest that is " +
        "long and wide enough is {thickest}",
    },
    "no-blank-but-sticks": {
      cell: "#VALUE!",
      says:
        "stock: {missing} x tread without a blank; each needs {length} x {width}, and what covers it is as long as two or more: " +
        "cut them from it with CUTS",
    },
    "blanks-run-out": {
      cell: "#VALUE!",
      says:
        "available: {missing} x tread without a blank; each needs {length} x {width}, and no more that cover it are available; add " +
        'stock, or write "any"',
    },
    "no-blank-covers": {
      cell: "#VALUE!",
      says:
        "stock: {missing} x tread without a blank; each needs {length} x {width}, the widest long enough is {widest}; GLUEUP glues it up " +
        "from measured boards: give it BLANK's row as panels",
    },
    "blank-without-price": {
      cell: "#VALUE!",
      says: "price: is empty or 0 for the blank {label} of {length}; give a price, or write yes under owned",
    },
    "blank-without-width": { cell: "#VALUE!", says: "width: is missing for the blank {label} of {length}; give the width" },
  },
  examples: [
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 9],
          ["width", 36.75],
          ["open end", "right"],
        ],
        stock: [
          ["label", "length", "width", "thickness", "price"],
          ["oak 42", 42, 11.5, 1, 52],
          ["oak 48", 48, 11.5, 1, 60],
        ],
      },
      shows: [{ item: "oak 42", length: 42, width: 11.5, quantity: 13, price: 52, cost: 676, rippedOff: 1.25, cutOff: 4, ripCost: 73.48 }],
      from: "by hand: 9 + 1 1/4 = 10 1/4, 1 1/4 off 11 1/2; 42 - 38 = 4; 13 x 52 = 676; 676 x 1.25 / 11.5 = 73.478, 73.48 in cents",
    },
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 10.5],
          ["width", 36.75],
        ],
        stock: [
          ["label", "length", "width", "thickness", "price"],
          ["oak 42", 42, 11.5, 1, 52],
        ],
      },
      shows: [
        {
          item: "tread",
          quantity: 13,
          note:
            'stock: 13 x tread without a blank; each needs 36 3/4" x 11 3/4", the widest long enough is 11 1/2"; GLUEUP glues it up ' +
            "from measured boards: give it BLANK's row as panels",
        },
      ],
      from: "by hand: 10 1/2 + 1 1/4 = 11 3/4 is deeper than 11 1/2",
    },
    {
      given: {
        stair: [
          ["total rise", "1500 mm"],
          ["risers", 8],
          ["run", "250 mm"],
          ["width", "900 mm"],
          ["nosing", "30 mm"],
        ],
        stock: [
          ["label", "length", "width", "price"],
          ["oak 850", "850 mm", "290 mm", 52],
        ],
      },
      shows: [
        {
          item: "tread",
          quantity: 7,
          note: "stock: 7 x tread without a blank; each needs 900 mm x 280 mm, none is that long, and the longest is 850 mm",
        },
      ],
      from: "by hand: 250 + 30 = 280 deep; 900 is longer than 850",
    },
    {
      given: {
        stair: [...TWO_TREADS, ["landing nosing", "no"]],
        stock: [
          ["label", "length", "width", "thickness", "price"],
          ["oak 36", 36, 11.5, 1, 48],
          ["oak 8 ft", 96, 11.5, 1, 80],
        ],
      },
      shows: [
        { item: "oak 36", quantity: 2, cost: 96 },
        {
          item: "saving",
          quantity: 0,
          cost: 0,
          note: "2 x tread from 1 of oak 8 ft: 80.00, 16.00 less, the least there is; CUTS plans them; a cut takes 1/8 in (3.175 mm)",
        },
        { item: "total", cost: 96, note: "without a price here, and not in this cost: 3 x riser" },
      ],
      from: "by hand: two of 36 and a cut of 1/8 come out of 96; 2 x 48 = 96.00 against one board at 80.00",
    },
    {
      given: {
        stair: TWO_TREADS,
        stock: [
          ["label", "length", "width", "thickness", "price"],
          ["oak 36", 36, 11.5, 1, 48],
          ["oak 36 wide", 36, 14, 1, 55],
          ["oak nosing", 36, 3.5, 1, 20],
        ],
      },
      shows: [
        { item: "oak 36", quantity: 2, cost: 96 },
        { item: "oak nosing", quantity: 1, cost: 20 },
        {
          item: "saving",
          quantity: 0,
          cost: 0,
          note:
            "2 x tread and 1 x landing nosing together from 1 of oak 36 and 1 of oak 36 wide: 103.00, 13.00 less than as ordered " +
            "above, the least there is; SHEETCUTS plans them; a cut takes 1/8 in (3.175 mm)",
        },
        { item: "total", cost: 116, note: "without a price here, and not in this cost: 3 x riser" },
      ],
      from:
        "by hand: a tread 11 1/4, a cut of 1/8 and a nosing of 2 are 13 3/8 of 14; 48 + 55 = 103.00 against 2 x 48 + 20 = 116.00",
    },
    {
      given: {
        stair: [...TWO_TREADS, ["landing nosing", "no"]],
        stock: [
          ["length", "width", "thickness", "price"],
          [42, 11.5, 1, ""],
          [48, 11.5, 1, 60],
        ],
      },
      fails: "#VALUE!",
      says: 'price: is empty or 0 for the blank number 1 of 42"; give a price, or write yes under owned',
      from: "by hand: a blank whose price is still to be filled in is not free",
    },
  ],
  source: "The cheapest stock that covers each piece; board feet = thickness x width x length / 144, under 1 in counted as 1.",
  solve: ({ stair, stock: offered, readings }) => {
    const resolved = resolvedStair(stair.given);
    if (isProblem(resolved)) return resolved;
    const blanks = blankList(resolved, readings, stair.unit);
    return isProblem(blanks) ? blanks : blankOrder(blanks, offered, stair.unit);
  },
});
