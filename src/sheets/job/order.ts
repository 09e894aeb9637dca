import { BLANK } from "../../functions/order/blank";
import { ORDER } from "../../functions/order/order";
import { stock } from "../../functions/tables";
import { chosen, headingsOf, spillOf, viewOf } from "../result-looks";
import { type Answer, asking, type Block, DECIMALS, MONEY, page, passing } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { call } from "./call";
import { type Filling, lengthFormat, moneyOf, UNIT_WORDS } from "./filling";

const FIRST = 9;
/** Rows for the blanks of a yard; ORDER stands below them. */
const BLANKS = 6;
const YARD = `A8:E${FIRST + BLANKS - 1}`;
/** Label, length, width and thickness. */
export const BLANKS_TYPED = `A${FIRST}:D${FIRST + BLANKS - 1}`;
const TYPED = `B${FIRST}:B${FIRST + BLANKS - 1}`;
const ROWS = 10;
const SIZES = ["item", "length", "width", "thickness", "quantity"] as const;

const total = (heading: string): string => `STAIR.PICK(A17#,"total","${heading}")`;
const column = (heading: string): string => `DROP(INDEX(A17#,0,XMATCH("${heading}",TAKE(A17#,1))),1)`;

/** What no blank of the yard is for; returns and risers are cut from boards. */
const BLANKLESS =
  `FILTER(${column("item")},(${column("price")}="")*(${column("quantity")}<>"")*(${column("item")}<>"total"),"none")`;

const answers = (money: string): readonly Answer[] => [
  {
    over: ["A", "B"], name: "blanks to buy", value: `SUM(FILTER(${column("quantity")},ISNUMBER(${column("price")}),0))`, from: "A17",
    under: "pieces",
  },
  { over: ["C", "E"], name: "cost of the blanks", value: total("cost"), from: "A17", format: MONEY, under: money },
  {
    over: ["F", "F"], name: "yield", value: `SUM(${column("net")})/SUM(${column("gross")})`, from: "A17", format: "0%",
    under: "net of gross",
  },
  {
    over: ["G", "H"], name: "paid for what is ripped off", value: total("rip cost"), from: "A17", format: MONEY,
    under: `${money}, part of the cost`,
  },
  {
    over: ["I", "L"], name: "without a blank", from: "A17", isText: true, value: `TEXTJOIN(", ",TRUE,${BLANKLESS})`,
    under:
      `=IF(SUM(--ISNA(XMATCH(${BLANKLESS},{"none","return","riser"})))=0,"cut from boards: see Cut plan",` +
      '"✗ give it a blank on the left")',
  },
];

const blocks = (filling: Filling): readonly Block[] => {
  const { unit } = filling;
  const length = lengthFormat(unit);
  const ordered = call(ORDER, unit, { stair: "Layout!AA7#", stock: YARD });
  const rows = Array.from({ length: BLANKS }, (_, row) => filling.blanks[row] ?? ["", "", "", "", ""]);
  return [
    { at: "A7", style: "part", rows: [[`Blanks to be had; ${unit}, ${moneyOf(filling)}`, "", "", "", ""]] },
    {
      at: "A8", headings: true, numbers: [1, 2, 3, 4], inputs: [0, 1, 2, 3, 4], formats: { 1: length, 2: length, 3: length, 4: MONEY },
      rows: [headingsOf(stock, "label", "length", "width", "thickness", "price"), ...rows],
    },
    { at: "G7", style: "part", rows: [[`Sizes needed, ${unit}`, "", "", "", ""]] },
    { at: "G8", rows: [[`=${passing("Layout!AA7", chosen(BLANK, call(BLANK, unit, { stair: "Layout!AA7#" }), ...SIZES))}`]] },
    {
      at: "A16", style: "part",
      rows: [
        [
          `What to buy; lengths in ${UNIT_WORDS[unit]}, net and gross in board feet, price and cost in ${moneyOf(filling)}`,
          ...Array.from({ length: 11 }, () => ""),
        ],
      ],
    },
    {
      at: "A17",
      rows: [
        [
          `=${passing("Layout!AA7", asking(TYPED, `Order A${FIRST}`, ordered))}`,
        ],
      ],
    },
  ];
};

/** The blanks to order, what is ripped and cut off each, and what that costs. */
export const order = (filling: Filling): SheetData =>
  page({
    name: "Order",
    title: "Order of blanks",
    says:
      "Type the blanks the yard has. Out come which to buy, what is ripped and cut off each, and what that costs: the blank is paid " +
      "for whole. Pieces without a blank (returns, risers) are cut from boards: see Cut plan.",
    answers: answers(moneyOf(filling)),
    widths: { A: 138, B: 70, C: 70, D: 82, E: 66, F: 72, G: 126, H: 74, I: 72, J: 82, K: 76, L: 80 },
    totals: [`A18:L${17 + ROWS}`],
    blocks: blocks(filling),
    spills: [
      ...viewOf(BLANK, SIZES, "G8", 5, filling.unit),
      ...spillOf(ORDER, "A17", ROWS, filling.unit, { net: DECIMALS, gross: DECIMALS }),
    ],
  });
