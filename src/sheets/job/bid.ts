import { BID } from "../../functions/bid/bid";
import { EXTEND } from "../../functions/bid/extend";
import { SELLINGPRICE } from "../../functions/bid/sellingprice";
import { NOTHING } from "../../functions/yield/buy";
import { ZERO_COST } from "../../solver/bid/bid";
import { chosen, placesOf, spillOf, viewOf } from "../result-looks";
import { type Answer, asking, type Block, costing, DECIMALS, type Entry, lacks, MONEY, page, passing, PERCENT } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { BID_FIRST, BID_ITEMS } from "./bid-places";
import { call } from "./call";
import { type Filling, moneyOf } from "./filling";
import { JOB } from "./job";
import { PRICED } from "./takeoff";

/** Where the lines of every stair of the workbook are gathered; a further stair adds its own to this formula. */
export const GATHERED = "AA8";
const BID_AT = "AH8";
const ROWS = 80;

const pick = (label: string): string => `STAIR.PICK(${BID_AT}#,"${label}","cost")`;
const lines = `DROP(${GATHERED}#,1)`;
const hourly = (column: number): string => `SUM((CHOOSECOLS(${lines},3)="hour")*CHOOSECOLS(${lines},${column}))`;

const answers = (money: string): readonly Answer[] => [
  { over: ["A", "A"], name: "price", value: pick("price"), from: "A14", format: MONEY, under: `${money} before tax` },
  { over: ["B", "C"], name: "tax", value: pick("tax"), from: "A14", format: MONEY, under: money },
  { over: ["D", "D"], name: "total to the customer", value: pick("total"), from: "A14", format: MONEY, under: money },
  { over: ["E", "F"], name: "hours", value: hourly(2), from: "D8", format: "0.0", under: "h" },
  { over: ["G", "H"], name: "labour", value: hourly(5), from: "D8", format: MONEY, under: `${money}, at cost` },
  {
    over: ["J", "J"], name: "profit", value: pick("profit"), from: "A14", format: MONEY,
    under: `="${money}, "&TEXT(J4/A4,"0.0%")&" of the price"`,
  },
  { over: ["K", "M"], name: "lines priced", value: `SUM(--(CHOOSECOLS(${lines},5)<>0))`, from: "D8", under: "that cost something" },
];

/** Rates that are typed as shares, and the words beside them. */
const rates = ({ overhead, profit, basis, tax }: Filling): readonly (readonly Entry[])[] => [
  ["overhead", overhead], ["profit", profit], ["profit is a", basis], ["tax, of the price", tax],
];

/** Lines without a cost that are named; of more there stands how many. */
const MOST_NAMED = 3;

/**
 * Lines that have no cost and are not written off as included, by name, where BID has a row's number that is shown nowhere here; then what
 * else it has to say.
 */
const cautions = (): string => {
  const [item, unit, price, cost] = placesOf(EXTEND, "item", "unit", "price", "cost");
  const column = (place: number | undefined): string => `CHOOSECOLS(${lines},${String(place)})`;
  const others = `LET(n,DROP(${chosen(BID, `${BID_AT}#`, "note")},1),IF(LEFT(n,${ZERO_COST.length})="${ZERO_COST}","",n))`;
  return (
    `=IF(${lacks(BID_AT)},"",LET(l,IF(${column(unit)}="hour","hours for ","")&${column(item)},` +
    `z,FILTER(l,(${column(cost)}=0)*(${column(price)}<>"included")*(l<>"${NOTHING.item}"),""),TEXTJOIN(" ",TRUE,` +
    `IF(INDEX(z,1,1)="","","No cost yet: "&TEXTJOIN(", ",TRUE,TAKE(z,${MOST_NAMED}))&IF(ROWS(z)>${MOST_NAMED}," and "&ROWS(z)-` +
    `${MOST_NAMED}&" more","")&". Type it on the right, or included."),${others})))`
  );
};

const blocks = (filling: Filling): readonly Block[] => {
  const bid = call(BID, filling.unit, { costs: `${GATHERED}#`, overhead: "B8", profit: "B9", basis: "B10", tax: "B11" });
  const spare = call(SELLINGPRICE, filling.unit, { cost: `IF(B23="",0,STAIR.PICK(${GATHERED}#,B23,"price"))`, rate: "B9", basis: "B10" });
  const [cost = 5] = placesOf(EXTEND, "cost");
  const items = Array.from({ length: BID_ITEMS }, (_, row) => {
    const [item = "", hours = "", price = "", unit = ""] = filling.items[row] ?? [];
    return [item, hours, price, unit];
  });
  return [
    { at: "A7", style: "part", rows: [["Rates", ""]] },
    { at: "A8", numbers: [1], inputs: [1], formats: { 1: PERCENT }, rows: rates(filling) },
    { at: "A13", style: "part", rows: [[`The bid, ${moneyOf(filling)}`, ""]] },
    { at: "A14", rows: [[`=${passing(BID_AT, chosen(BID, `${BID_AT}#`, "label", "cost"))}`]] },
    {
      at: "A26", style: "caution",
      rows: [[cautions()]],
    },
    { at: "A22", style: "part", rows: [["One more", ""]] },
    { at: "A23", numbers: [1], inputs: [1], rows: [["of", filling.blanks[1]?.[0] ?? ""]] },
    {
      at: "A24", numbers: [1], formats: { 1: MONEY },
      rows: [[`sells at, ${moneyOf(filling)}`, `=IF(B23="","",${passing(GATHERED, spare)})`]],
    },
    {
      at: "D7", headings: true, numbers: [1, 3, 4],
      rows: [
        ["line", "quantity", "unit", `price, ${moneyOf(filling)}`, `cost, ${moneyOf(filling)}`],
        [
          `=${passing(GATHERED, costing(lines, cost))}`,
        ],
      ],
    },
    { at: "J7", style: "part", rows: [["The shop's hours and prices, for one", "", "", ""]] },
    {
      at: `J${BID_FIRST - 1}`, headings: true, numbers: [1, 2], inputs: [0, 1, 2, 3], formats: { 1: DECIMALS, 2: MONEY },
      rows: [["item", "hours", "price", "unit"], ...items],
    },
    { at: "AA7", style: "part", rows: [["Every line of every stair, gathered"]] },
    { at: "AH7", style: "part", rows: [["The bid, in full"]] },
    { at: BID_AT, rows: [[`=${passing(GATHERED, asking("B8:B9", "Bid B8", bid))}`]] },
    { at: GATHERED, rows: [[`=VSTACK(Takeoff!${PRICED}#)`]] },
  ];
};

/** The bid over every stair of the workbook, with the shop's hours, prices and rates. */
export const bid = (filling: Filling): SheetData =>
  page({
    name: "Bid",
    title: `="Bid: "&${JOB.job}&IF(${JOB.customer}="","",", for "&${JOB.customer})`,
    says:
      "Type the shop's rates on the left, its hours for one and its prices on the right; write included where something costs " +
      "nothing here. In between stands every line that costs something, of every stair in this workbook.",
    answers: answers(moneyOf(filling)),
    widths: { A: 128, B: 124, C: 6, D: 168, E: 70, F: 44, G: 62, H: 72, I: 4, J: 170, K: 70, L: 70, M: 46 },
    lists: [{ cells: "B10", options: ["margin", "markup"] }],
    merged: ["A26:B30"],
    totals: ["A15:B21"],
    blocks: blocks(filling),
    spills: [
      ...viewOf(BID, ["label", "cost"], "A14", 7, filling.unit),
      ...spillOf(BID, BID_AT, 7, filling.unit),
      { at: "D8", rows: ROWS, formats: { 3: MONEY, 4: MONEY }, styles: { 1: "right" } },
      ...spillOf(EXTEND, GATHERED, ROWS, filling.unit, { quantity: DECIMALS }),
    ],
  });
