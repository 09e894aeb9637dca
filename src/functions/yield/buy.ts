import { isProblem } from "../../solver/problem";
import { buyList } from "../../solver/yield/buy-list";
import { sharedPlan } from "../../solver/yield/shared-plan";
import { sharedSheets } from "../../solver/yield/sheets/shared-sheets";
import { sheetGoods } from "../../solver/yield/sheets/sheet-goods";
import { cuttingJobOf, namedStock } from "../cutting";
import { declare } from "../declare";
import { PLANNED, SHEET_PROBLEMS } from "../sheets";
import { type GivenPlanned, sheetsIn, sticksIn } from "../sheets-or-sticks";

/** The row of a plan that buys nothing. */
export const NOTHING = { item: "nothing to buy", quantity: 0, cost: 0 };

const goodsOf = (given: GivenPlanned) => {
  const sheets = sheetsIn(given);
  if (sheets !== undefined) {
    const plan = sharedSheets(sheets);
    return isProblem(plan) ? plan : sheetGoods(sheets, plan);
  }
  const job = cuttingJobOf(sticksIn(given));
  const plan = sharedPlan(job);
  return isProblem(plan) ? plan : buyList(job, plan);
};

export const BUY = declare({
  id: "BUY",
  group: "Cut plan",
  says: "Sticks or sheets to buy for a cutting plan, with what they cost.",
  parameters: PLANNED,
  result: {
    kind: "table",
    says: "One row per kind of stick that is bought; what is owned is not in it. One row says so where nothing is bought.",
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
  problems: SHEET_PROBLEMS,
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
    const goods = goodsOf(given);
    if (isProblem(goods)) return goods;
    if (goods.length === 0) return [NOTHING];
    return goods.map(({ measuredIn, ...row }) => {
      const kind = measuredIn === "length" ? "length" : "number";
      return { ...row, item: namedStock(row.item), net: { kind, value: row.net }, gross: { kind, value: row.gross } };
    });
  },
});
