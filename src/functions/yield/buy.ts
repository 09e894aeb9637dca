import { isProblem } from "../../solver/problem";
import { buyList } from "../../solver/yield/buy-list";
import { boughtBoards } from "../../solver/yield/ripped/ripping-lists";
import { sheetGoods } from "../../solver/yield/sheets/sheet-goods";
import { isFailed } from "../cells";
import { namedStock } from "../cutting";
import { declare } from "../declare";
import { plannedWood, WOOD, WOOD_PROBLEMS } from "../planned-wood";
import { namedBoard } from "../ripping";

/** The row of a plan that buys nothing. */
export const NOTHING = { item: "nothing to buy", quantity: 0, cost: 0 };

export const BUY = declare({
  id: "BUY",
  group: "Cut plan",
  says: "Sticks, sheets or boards to buy for a cutting plan, with what they cost.",
  parameters: WOOD,
  result: {
    kind: "table",
    says:
      "One row per kind of stick that is bought; what is owned is not in it. One row says so where nothing is bought. " +
      "Of a tally one row per board, and one per lot with all its boards; net and gross are board feet as measured.",
    columns: {
      item: { kind: "label", says: "Label of the stock; its length where it has none." },
      length: { kind: "length", says: "Length of one stick." },
      quantity: { kind: "count", says: "How many to buy." },
      price: { kind: "money", says: "Price of one." },
      cost: { kind: "money", says: "Quantity x price, in whole cents." },
      net: {
        kind: "value",
        says:
          "What the pieces take: board feet where the stock has thickness and width, by the piece's own where it has them, else by " +
          "the stock's; without them, length. Of sheets whose thickness nobody gave, square feet.",
      },
      gross: { kind: "value", says: "What is bought, counted like `net`." },
    },
  },
  problems: WOOD_PROBLEMS,
  examples: [
    {
      given: {
        pieces: [
          ["label", "length", "quantity"],
          ["tread", 36, 2],
          ["riser", 20, 1],
        ],
        stock: [
          ["label", "length", "price", "width", "thickness"],
          ["oak 8 ft", 96, 24.5, 12, 1.25],
        ],
        headings: false,
      },
      gives: [["oak 8 ft", 96, 1, 24.5, 24.5, 9.583333333, 10]],
      from: "by hand: 1.25 x 12 x 92 / 144 = 9.58333 board feet in pieces, 1.25 x 12 x 96 / 144 = 10 bought",
    },
    {
      given: {
        pieces: [["label", "length", "width", "quantity"], ["shelf", 30, 15, 6]],
        stock: [["label", "length", "width", "price"], ["4 x 8", 96, 48, 62]],
      },
      gives: [
        ["item", "length", "quantity", "price", "cost", "net", "gross"],
        ["4 x 8", 96, 1, 62, 62, 18.75, 32],
      ],
      from: "by hand: two rows of three, 90 3/8 of 96 and 30 1/8 of 48; 6 x 30 x 15 / 144 = 18.75 square feet of 96 x 48 / 144 = 32",
    },
    {
      given: {
        pieces: [[40, 3]],
        stock: [
          ["length", "price", "available", "owned"],
          [96, 10, "any", "no"],
          [84, "", 1, "yes"],
        ],
      },
      gives: [
        ["item", "length", "quantity", "price", "cost", "net", "gross"],
        [96, 96, 1, 10, 10, 40, 96],
      ],
      from: "by hand: two of 40 and a kerf come from the 84 in hand, the third from one bought stick",
    },
    {
      given: {
        pieces: [[40, 2]],
        stock: [
          ["length", "price", "available", "owned"],
          [96, 10, "any", "no"],
          [84, "", 1, "yes"],
        ],
        headings: false,
      },
      gives: [["nothing to buy", "", 0, "", 0, "", ""]],
      from: "by hand: 40 + 40 + 1/8 come from the 84 in hand",
    },
    {
      given: {
        pieces: [[40]],
        stock: [
          ["length", "price", "available", "owned"],
          [48, 5, 1, "yes"],
          [96, 10, "any", "no"],
        ],
        headings: false,
      },
      gives: [["nothing to buy", "", 0, "", 0, "", ""]],
      from: "by hand: the 48 in hand is worth 5 and holds the 40, a new stick costs 10",
    },
    {
      given: {
        pieces: [["label", "length", "width", "quantity"], ["riser", 40, 7.25, 4], ["nosing", 40, 3.5, 2]],
        stock: [
          ["label", "length", "width", "thickness", "quantity", "price", "lot", "lot price"],
          ["X1", 96, 7.5, "4/4", 2, "", "X", 90], ["X2", 84, 6, "4/4", 1, "", "X", ""], ["S1", 84, 4, "4/4", 1, 21, "", ""],
          ["S2", 96, 8, "4/4", 1, 70, "", ""],
        ],
        trim: 0.5,
        headings: false,
      },
      gives: [["lot X", "", 1, 90, 90, 10, 13.5]],
      from:
        "by hand: 96 x 7 1/2 twice and 84 x 6 are 5 + 5 + 3 1/2; (4 x 40 x 7 1/4 + 2 x 40 x 3 1/2) / 144 = 10; S2 holds two risers only",
    },
    {
      given: {
        pieces: [
          ["label", "length", "quantity"],
          ["tread", 60, 3],
        ],
        stock: [
          ["length", "price", "available"],
          [96, 24.5, 2],
        ],
      },
      fails: "#N/A",
      says:
        'available: the stock cannot hold all pieces; piece tread (60") is without a stick, and the longest stick gives 96"; add ' +
        'stock, or write "any"',
      from: "by hand: one 60 to a stick, and there are two sticks",
    },
  ],
  source: "The goods of the plan that CUTS shows, or of sheets SHEETCUTS; board feet as BOARDFEET counts them.",
  solve: (given) => {
    const wood = plannedWood(given);
    if (isFailed(wood) || isProblem(wood)) return wood;
    if (wood.of === "boards") {
      const bought = boughtBoards(wood.job, wood.plan);
      const feet = (value: (typeof bought)[number]["net"]) => ({ kind: "number", value }) as const;
      return bought.length === 0
        ? [NOTHING]
        : bought.map(({ board, item, length, price, net, gross }) => ({
            item: board === undefined ? `lot ${item ?? ""}` : namedBoard(item, board),
            length, quantity: 1, price, cost: price, net: feet(net), gross: feet(gross),
          }));
    }
    const goods = wood.of === "sheets" ? sheetGoods(wood.job, wood.plan) : buyList(wood.job, wood.plan);
    if (goods.length === 0) return [NOTHING];
    return goods.map(({ measuredIn, ...row }) => {
      const kind = measuredIn === "length" ? "length" : "number";
      return { ...row, item: namedStock(row.item), net: { kind, value: row.net }, gross: { kind, value: row.gross } };
    });
  },
});
