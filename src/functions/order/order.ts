import { resolvedStair } from "../../solver/layout/resolved-stair";
import { blankList } from "../../solver/order/blank-list";
import { blankOrder } from "../../solver/order/blank-order";
import { isProblem } from "../../solver/problem";
import { isFailed } from "../cells";
import { declare, headings } from "../declare";
import { GLUE_PROBLEMS } from "../glue-problems";
import { glueTerms } from "../glue-rows";
import { ORDER_PROBLEMS } from "../order-problems";
import { glue as glueTable, stock, tally as tallyTable } from "../tables";
import { tallyBoards } from "../tally-boards";
import { withReadings } from "../with-readings";

const THREE_WIDE_TREADS = [["total rise", 30], ["risers", 4], ["run", 10], ["width", 42], ["landing nosing", "no"]] as const;

const NARROW = [["label", "length", "width", "thickness", "price"], ["oak 42", 42, 10, 1, 44]] as const;

const FIVE_BOARDS = [
  ["label", "length", "width", "thickness", "price"],
  ["A", 92, 6.5, "5/4", 36],
  ["B", 92, 8, "5/4", 44.5],
  ["C", 138, 6.25, "5/4", 52],
  ["D", 92, 5.25, "5/4", 29],
  [5, 138, 4.5, "5/4", 37.5],
] as const;

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
    tally: {
      kind: "table", table: tallyTable, rows: 400, badRows: "refuse", optional: true,
      says:
        "Measured boards, any of which will do, from which treads and nosings are glued up that no blank covers and, of treads, no stick " +
        "holds.",
      without: "Left out, what no blank covers is only named.",
    },
    glue: {
      kind: "table", table: glueTable, badRows: "refuse", optional: true, says: "Terms of the glue-up, as GLUEUP reads them.",
      without: "Left out, as each term without a row: the usual.",
    },
  },
  result: {
    kind: "table",
    says:
      "Goods rows: they go into EXTEND, BID and RECONCILE as they stand. A row `saving` tells where the pieces above it would cost " +
      "less from boards cut into several, and which to buy: the cheapest cutting plan of that piece alone; one more at the end where " +
      "kinds of one thickness, ripped and cut together, would cost less still. Of a tally a row a board, or a lot with all its boards. " +
      "The last row is `total`, with what has no price. It and `saving` are passed over where the rows go on.",
    columns: {
      item: { kind: "label", says: "Label of the stock or the board, a lot, or the kind of piece; saving; total." },
      length: { kind: "length", says: "Length of the blank or board bought." },
      width: { kind: "length", says: "Width of the blank or board bought." },
      quantity: { kind: "count", says: "How many." },
      price: { kind: "money", says: "Price of one." },
      cost: { kind: "money", says: "Price x quantity, in whole cents." },
      rippedOff: { kind: "length", says: "Taken off the width of each." },
      cutOff: { kind: "length", says: "Taken off the length of each." },
      ripCost: { kind: "money", says: "Cost x ripped off / width, in whole cents; part of the cost." },
      net: { kind: "number", says: "Board feet in the pieces; of boards glued up, in the finished ones." },
      gross: { kind: "number", says: "Board feet bought." },
      note: { kind: "text", says: "What the row is for, and what to look at before ordering." },
    },
  },
  problems: {
    ...ORDER_PROBLEMS,
    ...GLUE_PROBLEMS,
    "panel-without-species": { cell: "#VALUE!", says: "tally: its boards are of several species, {there}; give those of one" },
    "boards-without-price": { cell: "#VALUE!", says: "tally: no board has a price; give prices, or write yes under owned" },
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
        "stock: {missing} x tread without a blank; each needs {length} x {width}, the widest long enough is {widest}; glue it up " +
        "from measured boards: GLUEUP plans that, ORDER buys them with a tally",
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
            'stock: 13 x tread without a blank; each needs 36 3/4" x 11 3/4", the widest long enough is 11 1/2"; glue it up ' +
            "from measured boards: GLUEUP plans that, ORDER buys them with a tally",
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
      given: { stair: THREE_WIDE_TREADS, stock: NARROW, tally: FIVE_BOARDS },
      shows: [
        { item: "A", length: 92, width: 6.5, quantity: 1, price: 36, cost: 36, gross: 5 },
        { item: "D", length: 92, width: 5.25, quantity: 1, cost: 29, gross: 3.75, note: "for the same glue-up" },
        { item: "board 5", length: 138, width: 4.5, quantity: 1, cost: 37.5, gross: 5 },
        { item: "total", cost: 102.5, ripCost: 0, net: 12.3046875, gross: 13.75 },
      ],
      from:
        "by hand: three of 42 x 11 1/4 need sections of 43 that net 3 x 11 1/2; A gives 2 x 6 1/8, D 2 x 5 1/8, the fifth 3 x 4 3/8, " +
        "35 5/8, and no two boards as much; 3 x 42 x 11 1/4 x 1 1/4 / 144 = 12.305; 7 ft x " +
        "6 1/2 / 12 is 4, 7 x 5 1/4 / 12 is 3, 11 x 4 1/2 / 12 is 4, each x 1 1/4",
    },
    {
      given: { stair: THREE_WIDE_TREADS, stock: NARROW, tally: FIVE_BOARDS, glue: [["together", "board"]] },
      shows: [
        {
          item: "A",
          note:
            "3 x tread glued up of 3 boards, this the first; best possible (proven): no choice of boards costs less; GLUEUP plans " +
            "the strips; from the nominal width",
        },
        { item: "B", cost: 44.5, net: 4.1015625 },
        { item: "board 5" },
        { item: "total", cost: 118 },
      ],
      from:
        "by hand: A 12 1/4, B 15 1/4, C 17 5/8 and the fifth 13 1/8 hold one tread each, D none; A, B and the fifth are the cheapest " +
        "three; 42 x 11 1/4 x 1 1/4 / 144 = 4.10",
    },
    {
      given: {
        stair: TWO_TREADS,
        stock: [["label", "length", "width", "thickness", "price", "available"], ["oak 36", 36, 11.5, 1, 48, 1]],
        tally: [
          ["label", "length", "width", "thickness", "quantity", "lot", "lot price", "price"],
          ["X", 40, 12, "5/4", 1, "pile", 60, ""], ["Y", 40, 3, "5/4", 1, "pile", "", ""], ["Z", 40, 15, "5/4", 1, "", "", 62],
        ],
        glue: [["greatest strip", 12]],
      },
      shows: [
        { item: "oak 36", quantity: 1, cost: 48 },
        {
          item: "lot pile", quantity: 1, price: 60, cost: 60, net: 4.140625, gross: 5,
          note:
            "1 x tread and 1 x landing nosing glued up of 2 boards, this the first; best possible (proven): no choice of boards costs " +
            "less; GLUEUP plans the strips; from the nominal width; the least width, riser thickness and nosing; list a nosing blank to " +
            "save the rip; of the lot X and Y cut",
        },
        { item: "total", cost: 108, note: "without a price here, and not in this cost: 3 x riser" },
      ],
      from:
        "by hand: the second tread, 11 1/4 and 1/4, and the nosing, 2 and 1/4, are more than 12 across; the pile for 60 against Z for " +
        "62; 1 1/4 x 36 x (11 1/4 + 2) / 144 = 4.14; 3 ft x 12 / 12 is 3, 3 x 3 / 12 to the nearest 1, each x 1 1/4",
    },
    {
      given: {
        stair: THREE_WIDE_TREADS, stock: NARROW,
        tally: [["length", "width", "thickness", "species", "price"], [92, 8, "5/4", "oak", 40], [92, 8, "5/4", "ash", 40]],
      },
      shows: [{ item: "tread", quantity: 3, note: "tally: its boards are of several species, oak, ash; give those of one" }],
      from: "common practice, no source: a tread is glued up of one wood",
    },
    {
      given: { stair: THREE_WIDE_TREADS, stock: NARROW, tally: [["length", "width", "thickness"], [92, 8, "5/4"]] },
      shows: [{ item: "tread", quantity: 3, note: "tally: no board has a price; give prices, or write yes under owned" }],
      from: "by hand: an order is in money",
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
  solve: ({ stair, stock: offered, readings, tally, glue = [] }) => {
    const resolved = resolvedStair(stair.given);
    if (isProblem(resolved)) return resolved;
    const blanks = blankList(resolved, readings, stair.unit);
    if (isProblem(blanks)) return blanks;
    const given = glueTerms("glue", glue, stair.unit);
    if (isFailed(given)) return given;
    if (tally === undefined) return blankOrder(blanks, offered, stair.unit);
    const boards = tallyBoards(tally, stair.unit);
    return isFailed(boards) ? boards : blankOrder(blanks, offered, stair.unit, { boards, terms: given.terms });
  },
});
