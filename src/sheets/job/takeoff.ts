import { EXTEND } from "../../functions/bid/extend";
import { ADHESIVE } from "../../functions/takeoff/adhesive";
import { HOURS } from "../../functions/takeoff/hours";
import { TAKEOFF } from "../../functions/takeoff/takeoff";
import { quantities } from "../../functions/tables";
import { headingsOf, placesOf, spillOf, viewOf } from "../result-looks";
import { type Answer, asking, ASKS_IN, type Block, costing, DECIMALS, MONEY, page, passing } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { BID_FIRST, BID_HOURS, BID_PRICES, BID_TYPED } from "./bid-places";
import { call } from "./call";
import { RAIL_BUY, RISER_BUY } from "./cut-plan";
import { JOB } from "./job";
import { type Filling, inUnit, lengthFormat, moneyOf } from "./filling";

/** Where every line of this stair stands, priced, for Bid to gather. */
export const PRICED = "AY8";
const TAKEN = "AA8";
const HOURS_AT = "AG8";
const PARTS = { taken: "AM8", hours: "AM28", blanks: "AM48", boards: "AM66", rail: "AM84", beside: "AM102" } as const;
const BESIDE = "A13:C15";
const ROWS = 60;
/** Where a line of it says which stair it is of, counted from 1: behind what EXTEND answers of it. */
export const PART_PLACE = 6;
const LINE = ["item", "quantity", "unit", "price", "cost"] as const;
const COUNTED = { quantity: DECIMALS };

const extended = (filling: Filling, table: string, prices: string = BID_PRICES): string =>
  call(EXTEND, filling.unit, { quantities: table, prices });

/** What Order buys or has no blank for; returns and risers are bought on Cut plan. */
const BLANKS = 'LET(o,Order!A17#,i,CHOOSECOLS(o,1),FILTER(o,(i<>"return")*(i<>"riser")))';

/** What Cut plan buys, at its own prices. */
const boardsFrom = (filling: Filling, at: string): string => {
  const bought = `'Cut plan'!${at}`;
  return passing(bought, extended(filling, `${bought}#`, `${bought}#`));
};

const hours = 'SUM(IFERROR((CHOOSECOLS(D8#,3)="hour")*CHOOSECOLS(D8#,2),0))';
const labour = 'SUM(IFERROR((CHOOSECOLS(D8#,3)="hour")*CHOOSECOLS(D8#,5),0))';
const all = "SUM(CHOOSECOLS(D8#,5))";

const answers = (money: string): readonly Answer[] => [
  { over: ["A", "B"], name: "this stair costs", value: all, from: "D8", format: MONEY, under: `${money}, before overhead and profit` },
  { over: ["C", "C"], name: "hours", value: hours, from: "D8", format: "0.0", under: "h" },
  { over: ["D", "D"], name: "goods", value: `${all}-${labour}`, from: "D8", format: MONEY, under: money },
  { over: ["E", "F"], name: "labour", value: labour, from: "D8", format: MONEY, under: money },
  { over: ["G", "H"], name: "a riser", value: `${all}/STAIR.PICK(Layout!AA7#,"risers")`, from: "D8", format: MONEY, under: money },
  { over: ["I", "J"], name: "lines", value: "ROWS(D8#)", from: "D8", under: "that cost something" },
];

/** Lines that cost something; what is included elsewhere is left out. */
const lines = (): string => {
  const [cost = 5] = placesOf(EXTEND, "cost");
  return `=${passing(PRICED, costing(`DROP(${PRICED}#,1)`, cost))}`;
};

const gathered = (): string => {
  const [first, ...others] = Object.values(PARTS);
  const stacked =
    `LET(b,VSTACK(CHOOSECOLS(${String(first)}#,1,2,3,4,5),${others.map((at) => `DROP(CHOOSECOLS(${at}#,1,2,3,4,5),1)`).join()}),` +
    `bad,ISERROR(CHOOSECOLS(b,5)),IF(SUM(IF(bad,1,0))>0,"${ASKS_IN}Bid J${BID_FIRST}: hours or a price for "&TEXTJOIN(", ",TRUE,` +
      `FILTER(CHOOSECOLS(b,1),bad)),HSTACK(b,IF(SEQUENCE(ROWS(b))=1,"part",${JOB.job}&""))))`;
  return `=${Object.values(PARTS).reduceRight((inner, at) => passing(at, inner), stacked)}`;
};

/** What the stair takes, and how each quantity was counted. */
const counted = (): string => {
  const [item = 1, quantity = 2, unitAt = 3, how = 4] = placesOf(TAKEOFF, "item", "quantity", "unit", "howItWasCounted");
  const columns = `CHOOSECOLS(t,${item}),ROUND(CHOOSECOLS(t,${quantity}),2),CHOOSECOLS(t,${unitAt},${how})`;
  return `=${passing(TAKEN, `LET(t,DROP(${TAKEN}#,1),HSTACK(${columns}))`)}`;
};

const typedBlocks = (filling: Filling): readonly Block[] => {
  const { unit } = filling;
  // A host that writes a comma in a number is given the point that ADHESIVE reads.
  const beadOf = (heading: string): string => `STAIR.PICK(AA8#,"adhesive bead","${heading}")`;
  const bead = `=IFERROR(SUBSTITUTE(ROUND(${beadOf("quantity")},4),",",".")&" "&${beadOf("unit")},"")`;
  const cartridge = unit === "mm" ? 'IF(ISNUMBER(B10),SUBSTITUTE(B10,",",".")&" ml",B10)' : "B10";
  const volumes = { beadLength: "B8", beadDiameter: inUnit(unit, "B9"), cartridge };
  const cartridges = `=IF(OR(B8="",B9="",B10=""),0,${call(ADHESIVE, unit, volumes)})`;
  return [
    { at: "A7", style: "part", rows: [["Adhesive", "", ""]] },
    {
      at: "A8", numbers: [1], inputs: [1], formats: { 1: lengthFormat(unit) },
      rows: [
        ["bead", bead], [`its diameter, ${unit}`, filling.beadDiameter],
        [`a cartridge, ${unit === "mm" ? "ml" : "fl oz"}`, filling.cartridge],
      ],
    },
    { at: "A12", style: "part", rows: [["Beside the stair", "", ""]] },
    {
      at: "A13", headings: true, numbers: [1], inputs: [0, 1, 2],
      rows: [
        headingsOf(quantities, "item", "quantity", "unit"), ["adhesive", cartridges, "each"], ["hang rail", filling.railHours, "hour"],
      ],
    },
    {
      at: "D7", headings: true, numbers: [1, 3, 4],
      rows: [["line", "quantity", "unit", `price, ${moneyOf(filling)}`, `cost, ${moneyOf(filling)}`], [lines()]],
    },
    {
      at: "J7", headings: true, numbers: [1],
      rows: [
        ["what the stair takes", "quantity", "unit", "how it was counted"],
        [counted()],
      ],
    },
  ];
};

/** In full: what is counted, its hours, and each part priced. */
const pricedBlocks = (filling: Filling): readonly Block[] => {
  const { unit } = filling;
  const hoursOf = call(HOURS, unit, { work: `${TAKEN}#`, rates: BID_HOURS });
  const part = (at: string, text: string): Block => ({ at, style: "part", rows: [[text]] });
  return [
    part("AA7", "What the stair takes, in full"),
    { at: TAKEN, rows: [[`=${passing("Layout!AA7", call(TAKEOFF, unit, { stair: "Layout!AA7#" }))}`]] },
    part("AG7", "Hours, in full"),
    {
      at: HOURS_AT,
      rows: [
        [
          `=${passing(TAKEN, asking(BID_TYPED.hours, `Bid K${BID_FIRST}`, hoursOf))}`,
        ],
      ],
    },
    part("AM7", "What the stair takes, priced; what is included stands in Order or Cut plan"),
    {
      at: PARTS.taken,
      rows: [
        [`=${passing(HOURS_AT, asking(BID_TYPED.prices, `Bid L${BID_FIRST}`, extended(filling, `${TAKEN}#`)))}`],
      ],
    },
    part("AM27", "Hours, priced"),
    { at: PARTS.hours, rows: [[`=${passing(PARTS.taken, extended(filling, `${HOURS_AT}#`))}`]] },
    part("AM47", "Blanks, from Order; rows without a price are cut from boards"),
    { at: PARTS.blanks, rows: [[`=${passing("Order!A17", extended(filling, BLANKS, "Order!A17#"))}`]] },
    part("AM65", "Boards, from Cut plan"),
    { at: PARTS.boards, rows: [[`=${boardsFrom(filling, RISER_BUY)}`]] },
    part("AM83", "Skirts, rail and returns, from Cut plan"),
    { at: PARTS.rail, rows: [[`=${boardsFrom(filling, RAIL_BUY)}`]] },
    part("AM101", "Beside the stair, priced"),
    { at: PARTS.beside, rows: [[`=${passing(PARTS.taken, extended(filling, BESIDE))}`]] },
    part("AY7", "Every line of this stair, as Bid reads it"),
    { at: PRICED, rows: [[gathered()]] },
  ];
};

/** What the stair takes: pieces, hours and goods, each line priced with the shop's figures on Bid. */
export const takeoff = (filling: Filling): SheetData => {
  const { unit } = filling;
  const money = { 3: MONEY, 4: MONEY };
  return page({
    name: "Takeoff",
    title: "Takeoff: what the stair takes",
    says:
      "Type what comes beside the stair itself: hours to hang the rail, adhesive. Every line that costs something stands in the " +
      "middle, how each quantity was counted on the right. Hours for one and prices are typed on Bid.",
    answers: answers(moneyOf(filling)),
    widths: { A: 130, B: 82, C: 56, D: 164, E: 70, F: 48, G: 66, H: 76, I: 8, J: 166, K: 70, L: 50, M: 420 },
    blocks: [...typedBlocks(filling), ...pricedBlocks(filling)],
    spills: [
      { at: "D8", rows: ROWS, formats: money, styles: { 1: "right" } },
      { at: "J8", rows: 24, formats: {}, styles: { 1: "right" } },
      ...spillOf(TAKEOFF, TAKEN, 18, unit, COUNTED),
      ...spillOf(HOURS, HOURS_AT, 18, unit, { quantity: DECIMALS, hoursEach: DECIMALS }),
      ...Object.values(PARTS).flatMap((at) => spillOf(EXTEND, at, at === PARTS.taken || at === PARTS.hours ? 17 : 14, unit, COUNTED)),
      ...viewOf(EXTEND, LINE, PRICED, ROWS, unit, COUNTED),
      { at: "BD8", headings: 1 },
    ],
  });
};
