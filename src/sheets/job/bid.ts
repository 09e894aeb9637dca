import { BID } from "../../functions/bid/bid";
import { EXTEND } from "../../functions/bid/extend";
import { costs as costTable, terms as termTable } from "../../functions/tables";
import { NOTHING } from "../../functions/yield/buy";
import { BID_LABELS } from "../../solver/bid/bid";
import { COST_KINDS } from "../../solver/bid/cost";
import { TERM_NAMES, type TermName } from "../../solver/bid/terms";
import { words } from "../../solver/words";
import { chosen, headingsOf, placesOf, spillOf, viewOf } from "../result-looks";
import { type Answer, asking, type Block, costing, DECIMALS, type Entry, lacks, MONEY, page, passing, PERCENT } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { alternateBlocks, alternateLooks } from "./bid-alternates";
import { BESIDES, BID_FIRST, BID_ITEMS, COSTS_AT, TERMS } from "./bid-places";
import { call } from "./call";
import { type Filling, moneyOf } from "./filling";
import { JOB } from "./job";
import { PART_PLACE, PRICED } from "./takeoff";

/** Where the lines of every stair of the workbook are gathered; a further stair adds its own to this formula. */
export const GATHERED = "AA8";
/** Where the bid stands in full. */
export const BID_AT = "AH8";
const ROWS = 80;
/** The bid as it is shown, what one more of an item sells at, and what still costs nothing. */
const SHOWN_AT = "A19";
const ONE_MORE = { of: "B35" } as const;
const CAUTION = { at: "A38", merged: "A38:B42" } as const;

const pick = (label: string): string => `STAIR.PICK(${BID_AT}#,"${label}","cost")`;
const lines = `DROP(${GATHERED}#,1)`;
const hourly = (column: number): string => `SUM((CHOOSECOLS(${lines},3)="hour")*CHOOSECOLS(${lines},${column}))`;

const answers = (money: string): readonly Answer[] => [
  { over: ["A", "A"], name: "price", value: pick("price"), from: SHOWN_AT, format: MONEY, under: `${money} before tax` },
  { over: ["B", "C"], name: "tax", value: pick("tax"), from: SHOWN_AT, format: MONEY, under: money },
  { over: ["D", "D"], name: "total to the customer", value: pick("total"), from: SHOWN_AT, format: MONEY, under: money },
  { over: ["E", "F"], name: "hours", value: hourly(2), from: "D8", format: "0.0", under: "h" },
  { over: ["G", "H"], name: "labour", value: hourly(5), from: "D8", format: MONEY, under: `${money}, at cost` },
  {
    over: ["J", "J"], name: "profit", value: pick("profit"), from: SHOWN_AT, format: MONEY,
    under: `="${money}, "&TEXT(J4/A4,"0.0%")&" of the price"`,
  },
  { over: ["K", "M"], name: "lines priced", value: `SUM(--(CHOOSECOLS(${lines},5)<>0))`, from: "D8", under: "that cost something" },
];

/** Labels that stand ready beside the filling's own; the shop types a rate beside those it has. */
const READY: readonly TermName[] = ["burden", "contingency", "taxPaidOnMaterials"];

/** Label and rate, then a row to spare. */
const terms = (filling: Filling): readonly (readonly Entry[])[] => {
  const typed = [...filling.terms, ...READY.map((name) => [words(name), ""])];
  return Array.from({ length: TERMS.rows }, (_, row) => typed[row] ?? ["", ""]);
};

/** Every cost as BID reads it: the lines of the stairs, and under them what is typed beside them. */
const everyCost = (): string => {
  const [item, unit, price, cost, quantity] = placesOf(EXTEND, "item", "unit", "price", "cost", "quantity");
  const headed = (heading: string): string => `IF(SEQUENCE(ROWS(g))=1,"${heading}","")`;
  return (
    `=${passing(GATHERED, `LET(g,${GATHERED}#,x,${BESIDES.cells},h,${BESIDES.hours},n,IF(SEQUENCE(ROWS(x)),""),VSTACK(` +
    `HSTACK(CHOOSECOLS(g,${[item, unit, price, cost, PART_PLACE].join()}),${headed("kind")},${headed("option")},` +
    `CHOOSECOLS(g,${String(quantity)})),` +
    'HSTACK(CHOOSECOLS(x,1),IF(h="","","hour"),n,CHOOSECOLS(x,2),n,CHOOSECOLS(x,3,4),h)))')}`
  );
};

/** Lines without a cost that are named; of more there stands how many. */
const MOST_NAMED = 3;

/** Lines that have no cost and are not written off as included, by name, where BID has a row's number that is shown nowhere here. */
const cautions = (): string => {
  const [item, unit, price, cost] = placesOf(EXTEND, "item", "unit", "price", "cost");
  const column = (place: number | undefined): string => `CHOOSECOLS(${lines},${String(place)})`;
  return (
    `=IF(${lacks(BID_AT)},"",LET(l,IF(${column(unit)}="hour","hours for ","")&${column(item)},` +
    `z,FILTER(l,(${column(cost)}=0)*(${column(price)}<>"included")*(l<>"${NOTHING.item}"),""),` +
    `IF(INDEX(z,1,1)="","","No cost yet: "&TEXTJOIN(", ",TRUE,TAKE(z,${MOST_NAMED}))&IF(ROWS(z)>${MOST_NAMED}," and "&ROWS(z)-` +
    `${MOST_NAMED}&" more","")&". Type its hours or price on the right; included if it costs nothing.")))`
  );
};

/** What one more of an item sells at: its cost with the profit of the bid alone. */
const spare = (unit: Filling["unit"]): string => {
  const profit = `FILTER(${TERMS.ratesBeside},LEFT(${TERMS.labels},6)="profit",HSTACK("profit on cost",0))`;
  const one = `HSTACK("one",STAIR.PICK(${GATHERED}#,${ONE_MORE.of},"price"))`;
  return `IF(${ONE_MORE.of}="","",STAIR.PICK(${call(BID, unit, { costs: one, terms: profit })},"price","cost"))`;
};

const leftBlocks = (filling: Filling): readonly Block[] => [
  { at: "A7", style: "part", rows: [["Terms: what each rate is of", ""]] },
  { at: TERMS.headings, headings: true, numbers: [1], rows: [headingsOf(termTable, "label", "rate")] },
  { at: TERMS.first, numbers: [1], inputs: [0, 1], formats: { 1: PERCENT }, rows: terms(filling) },
  { at: TERMS.roundUpTo, numbers: [1], inputs: [1], formats: { 1: MONEY }, rows: [[words("roundUpTo"), filling.roundUpTo]] },
  { at: "A18", style: "part", rows: [[`The bid, ${moneyOf(filling)}`, ""]] },
  { at: SHOWN_AT, rows: [[`=${passing(BID_AT, chosen(BID, `${BID_AT}#`, "label", "cost"))}`]] },
  { at: "A34", style: "part", rows: [["One more", ""]] },
  { at: "A35", numbers: [1], inputs: [1], rows: [["of", filling.blanks[1]?.[0] ?? ""]] },
  {
    at: "A36", numbers: [1], formats: { 1: MONEY },
    rows: [[`sells at, ${moneyOf(filling)}`, `=${passing(GATHERED, spare(filling.unit))}`]],
  },
  { at: CAUTION.at, style: "caution", rows: [[cautions()]] },
];

const blocks = (filling: Filling): readonly Block[] => {
  const bid = call(BID, filling.unit, { costs: `${COSTS_AT}#`, terms: TERMS.all });
  const [cost = 5] = placesOf(EXTEND, "cost");
  const items = Array.from({ length: BID_ITEMS }, (_, row) => {
    const [item = "", hours = "", price = "", unit = ""] = filling.items[row] ?? [];
    return [item, hours, price, unit];
  });
  const besides = Array.from({ length: BESIDES.rows }, (_, row) => filling.besides[row] ?? []);
  return [
    ...leftBlocks(filling),
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
    { at: BESIDES.title, style: "part", rows: [["Beside the stairs, and alternates by their option", "", "", ""]] },
    {
      at: BESIDES.headings, headings: true, numbers: [1], inputs: [0, 1, 2, 3], formats: { 1: MONEY },
      rows: [
        headingsOf(costTable, "item", "cost", "kind", "option"), ...besides.map((row) => [0, 1, 2, 3].map((place) => row[place] ?? "")),
      ],
    },
    {
      at: BESIDES.hoursHeading, headings: true, numbers: [0], inputs: [0], formats: { 0: DECIMALS },
      rows: [["hours"], ...besides.map((row) => [row[4] ?? ""])],
    },
    { at: "AA7", style: "part", rows: [["Every line of every stair, gathered"]] },
    { at: "AH7", style: "part", rows: [["The bid, in full"]] },
    { at: BID_AT, rows: [[`=${passing(COSTS_AT, asking(TERMS.rates, `Bid ${TERMS.firstRate}`, bid))}`]] },
    { at: "AM7", style: "part", rows: [["Every cost, as BID and QUOTE read it"]] },
    { at: COSTS_AT, rows: [[everyCost()]] },
    { at: GATHERED, rows: [[`=VSTACK(Takeoff!${PRICED}#)`]] },
    ...alternateBlocks(filling, BID_AT),
  ];
};

/** The bid over every stair of the workbook, with the shop's hours, prices and rates. */
export const bid = (filling: Filling): SheetData => {
  const alternates = alternateLooks(filling);
  return page({
    name: "Bid",
    title: `="Bid: "&${JOB.job}&IF(${JOB.customer}="","",", for "&${JOB.customer})`,
    says:
      "Type the shop's terms on the left, its hours for one and its prices on the right; write included where something costs " +
      "nothing here. In between stands every line that costs something, of every stair in this workbook.",
    answers: answers(moneyOf(filling)),
    widths: { A: 170, B: 82, C: 6, D: 160, E: 70, F: 44, G: 62, H: 72, I: 4, J: 170, K: 62, L: 72, M: 60, N: 46 },
    heights: { [alternates.headingRow]: 34 },
    verdicts: [alternates.verdicts],
    lists: [
      { cells: TERMS.labels, options: TERM_NAMES.filter((name) => name !== "roundUpTo").map(words) },
      { cells: BESIDES.kinds, options: COST_KINDS },
    ],
    merged: [CAUTION.merged, alternates.merged],
    totals: ["A20:B32"],
    blocks: blocks(filling),
    spills: [
      ...viewOf(BID, ["label", "cost"], SHOWN_AT, BID_LABELS.length, filling.unit),
      ...spillOf(BID, BID_AT, BID_LABELS.length, filling.unit),
      { at: "AM9", rows: ROWS, formats: { 2: MONEY, 3: MONEY, 7: DECIMALS } },
      { at: "D8", rows: ROWS, formats: { 3: MONEY, 4: MONEY }, styles: { 1: "right" } },
      ...spillOf(EXTEND, GATHERED, ROWS, filling.unit, { quantity: DECIMALS }),
      ...alternates.spills,
    ],
  });
};
