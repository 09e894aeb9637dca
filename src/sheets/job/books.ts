import { BIDVARIANCE } from "../../functions/books/bidvariance";
import { JOBCOST } from "../../functions/books/jobcost";
import { RACK } from "../../functions/books/rack";
import { RECONCILE } from "../../functions/books/reconcile";
import { STOCKLEDGER } from "../../functions/books/stockledger";
import { moves } from "../../functions/tables";
import { MOVE_KINDS } from "../../solver/books/ledger/move";
import { cellAddress, cellPlace } from "../cell-address";
import { chosen, DAY, headingsOf, placesOf, spillOf, viewOf } from "../result-looks";
import { type Answer, asking, asksFor, type Block, DECIMALS, MONEY, page, passing, SIGNED_MONEY } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { GATHERED } from "./bid";
import { BESIDES } from "./bid-places";
import { BOOKS } from "./books-places";
import { call } from "./call";
import { ALL_BOUGHT } from "./cut-plan";
import { type Filling, moneyOf } from "./filling";
import { JOB } from "./job";

/** Text, whatever it looks like: 2026-03 is no day. */
const TEXT = "@";

/** Where the wood that every stair of the workbook was to buy is gathered; a further stair adds its own to this formula. */
export const PLANNED = "AA8";
const RECONCILED = "AH8";
/** All goods planned, and all that is bid, as RECONCILE and BIDVARIANCE read them; the ledger; what this job cost. */
const GOODS_PLANNED = "BA8";
const ALL_BID = "BH8";
export const LEDGER = "BO8";
const COSTED = "CD8";
const WHY = [
  "item", "planned", "bought", "plannedCost", "spent", "priceVariance", "usageVariance", "scope", "charges", "wasteCost", "note",
] as const;
const MOVE = ["date", "job", "item", "quantity", "unit", "cost", "kind", "to", "invoice", "of", "share"] as const;
const STATE = ["value", "onTheRack", "note"] as const;
const PART = Array.from({ length: MOVE.length + STATE.length - 1 }, () => "");

/** Stands for the money of a row that cannot be: looked up, an error is one thing in one spreadsheet and another in the next. */
const WRONG = "✗";

const below = (address: string, rows = 1): string => {
  const { row, column } = cellPlace(address);
  return cellAddress({ row: row + rows, column });
};

const total = (heading: string): string => `STAIR.PICK(${RECONCILED}#,"total","${heading}")`;
const over = `(${total("spent")}-${total("planned cost")})`;
const explained = ["price variance", "usage variance", "scope", "on the rack", "charges"].map(total).join("+");
const wrong = `SUM(--(${BOOKS.values}="${WRONG}"))`;
const alike = `SUM(--ISNUMBER(SEARCH("same ",${BOOKS.notes})))`;

const answers = (money: string): readonly Answer[] => [
  { over: ["A", "A"], name: "planned", value: total("planned cost"), from: BOOKS.why, format: MONEY, under: `goods, ${money}` },
  { over: ["B", "B"], name: "spent", value: total("spent"), from: BOOKS.why, format: MONEY, under: `goods, ${money}` },
  { over: ["C", "C"], name: "over the plan", value: over, from: BOOKS.why, format: SIGNED_MONEY, under: "+ costs you" },
  { over: ["D", "E"], name: "by price", value: total("price variance"), from: BOOKS.why, format: SIGNED_MONEY, under: money },
  {
    over: ["F", "F"], name: "by usage", value: total("usage variance"), from: BOOKS.why, format: SIGNED_MONEY, under: `and waste, ${money}`,
  },
  { over: ["G", "G"], name: "by scope", value: total("scope"), from: BOOKS.why, format: SIGNED_MONEY, under: money },
  { over: ["H", "I"], name: "by charges", value: total("charges"), from: BOOKS.why, format: SIGNED_MONEY, under: money },
  {
    over: ["J", "K"], name: "do they add up?", from: BOOKS.why, under: "causes, and the rack", isText: true,
    value: `IF(ABS(${over}-(${explained}))<0.005,"✓ to the cent","✗ "&TEXT(${over}-(${explained}),"0.00")&" out")`,
  },
  {
    over: ["L", "N"], name: "rows to look at", from: BOOKS.state, isText: true, under: "see notes",
    value: `IF(${wrong}>0,"✗ "&${wrong}&" bad",IF(${alike}>0,"○ "&${alike}&" alike","✓ none"))`,
  },
];

/** The ledger in the order of the rows as typed: what each is worth, and what the rack holds after it; a mark where that is an error. */
const state = (): string => {
  const [row = 1, ...shown] = placesOf(STOCKLEDGER, "row", ...STATE);
  const column = (place: number): string => `XLOOKUP(r,n,CHOOSECOLS(s,${place}),"")`;
  return (
    `LET(l,${LEDGER}#,s,IF(ISERROR(l),"${WRONG}",l),n,CHOOSECOLS(s,${row}),r,SEQUENCE(ROWS(${BOOKS.stateRows}),1,2),` +
    `HSTACK(${shown.map(column).join()}))`
  );
};

/** The wood of the plans, a board each, and under it what else of the bid has a price. */
const goodsPlanned = (): string => {
  const wood = `HSTACK(CHOOSECOLS(p,1,2),IF(SEQUENCE(ROWS(p))=1,"unit","each"),CHOOSECOLS(p,3,4,5))`;
  const others =
    `LET(g,DROP(Bid!${GATHERED}#,1),m,(CHOOSECOLS(g,3)<>"hour")*(CHOOSECOLS(g,5)<>0)*ISNA(XMATCH(CHOOSECOLS(g,1),CHOOSECOLS(p,1))),` +
    'IF(SUM(m)=0,w,LET(f,FILTER(g,m),n,IF(SEQUENCE(ROWS(f)),""),VSTACK(w,HSTACK(CHOOSECOLS(f,1,2,3,4),n,n)))))';
  return `=${passing(PLANNED, passing(`Bid!${GATHERED}`, `LET(p,${PLANNED}#,w,${wood},${others})`))}`;
};

/** Those goods, the hours of the bid as one line, and what is bid beside the stairs. */
const allBid = (): string => {
  const hours =
    `LET(u,--(CHOOSECOLS(g,3)="hour"),q,SUM(u*CHOOSECOLS(g,2)),IF(q=0,w,` +
    'VSTACK(w,HSTACK("labour",q,"hour",SUM(u*CHOOSECOLS(g,5))/q,"",""))))';
  const besides =
    'LET(f,FILTER(x,m),e,SEQUENCE(ROWS(f),1,1,0),n,IF(e,""),VSTACK(b,HSTACK(CHOOSECOLS(f,1),e,IF(e,"each"),CHOOSECOLS(f,2),n,n)))';
  return `=${passing(GOODS_PLANNED,
    `LET(w,${GOODS_PLANNED}#,g,DROP(Bid!${GATHERED}#,1),b,${hours},x,Bid!${BESIDES.cells},` +
    `m,(CHOOSECOLS(x,2)&""<>"")*(CHOOSECOLS(x,4)&""=""),IF(SUM(m)=0,b,${besides}))`)}`;
};

/** What the job cost, boards without a unit counted by the piece as the plans have them. */
const costed = `LET(j,${COSTED}#,u,CHOOSECOLS(j,3),HSTACK(CHOOSECOLS(j,1,2),IF(u="","each",u),CHOOSECOLS(j,4,5,6,7,8,9,10)))`;

/** The same with the hours under it: as bid where none are typed, and at the rate bid where their cost is not. */
const costedHours = (): string =>
  `LET(l,FILTER(${ALL_BID}#,CHOOSECOLS(${ALL_BID}#,1)="labour",""),q,IF(${BOOKS.hours}="",INDEX(l,1,2),${BOOKS.hours}),` +
  `c,IF(${BOOKS.hoursCost}="",ROUND(q*INDEX(l,1,4),2),${BOOKS.hoursCost}),a,${costed},` +
  `IF(AND(INDEX(l,1,1)="",${BOOKS.hours}=""),a,VSTACK(a,HSTACK("","labour","hour",q,"",c,0,0,0,""))))`;

const titled = (at: string, title: string): Block => ({ at, style: "part", rows: [[title, ...PART]] });

const typedBlocks = (filling: Filling): readonly Block[] => [
  titled("A7", `Moves of goods, a row each, as the papers have them; ${moneyOf(filling)}`),
  {
    at: BOOKS.headings, headings: true, numbers: [3, 5, 10], inputs: MOVE.map((_, place) => place), formats: { 0: DAY, 5: MONEY },
    rows: [headingsOf(moves, ...MOVE), ...Array.from({ length: BOOKS.rows }, (_, row) => filling.moves[row] ?? MOVE.map(() => ""))],
  },
  titled(BOOKS.aboutPart, "This job, and the month for Register"),
  { at: BOOKS.about, inputs: [1], rows: [["job in the moves", filling.booked]] },
  {
    at: below(BOOKS.about), numbers: [1], inputs: [1], formats: { 1: MONEY },
    rows: [
      ["hours spent", filling.hoursSpent, `=IF(${BOOKS.hours}="","left empty: as bid","")`],
      ["what they cost", filling.hoursCost, `=IF(${BOOKS.hoursCost}="","left empty: at the rate bid","")`],
    ],
  },
  {
    at: below(BOOKS.about, 3), inputs: [1], formats: { 1: TEXT },
    rows: [["month to close", filling.month, `=IF(${BOOKS.month}="","left empty: the last","")`]],
  },
];

const blocks = (filling: Filling): readonly Block[] => {
  const { unit } = filling;
  const read = { moves: BOOKS.moves };
  const ledger = asking(BOOKS.typed, `Books A${BOOKS.first}`, call(STOCKLEDGER, unit, read));
  const jobCost = `IFNA(${call(JOBCOST, unit, { ...read, job: BOOKS.job })},${asksFor(`Books ${BOOKS.job}: a job of the moves`)})`;
  const reconciled = call(RECONCILE, unit, { planned: `${GOODS_PLANNED}#`, bought: costed });
  const bidToBook = call(BIDVARIANCE, unit, { planned: `${ALL_BID}#`, actual: costedHours() });
  const why = chosen(RECONCILE, `${RECONCILED}#`, ...WHY);
  return [
    ...typedBlocks(filling),
    { at: "L8", headings: true, numbers: [0, 1], rows: [["value", "on rack", "note"]] },
    { at: BOOKS.state, rows: [[`=${passing(LEDGER, state())}`]] },
    titled(BOOKS.whyPart, "Why this job cost what it did: all its goods, with their freight and tax; a plus is against you"),
    { at: BOOKS.why, rows: [[`=${passing(RECONCILED, why)}`]] },
    titled(BOOKS.causesPart, "From the bid to what it cost, hours with it"),
    { at: BOOKS.causesAt, rows: [[`=${passing(COSTED, passing(ALL_BID, bidToBook))}`]] },
    titled(BOOKS.rackPart, "On the rack, of every job"),
    { at: BOOKS.rack, rows: [[`=${passing(LEDGER, call(RACK, unit, read))}`]] },
    { at: "AA7", style: "part", rows: [["Planned, of every stair: all that Order and Cut plan buy"]] },
    { at: PLANNED, rows: [[`=VSTACK('Cut plan'!${ALL_BOUGHT}#)`]] },
    { at: "AH7", style: "part", rows: [["Reconciled, in full"]] },
    { at: RECONCILED, rows: [[`=${passing(COSTED, passing(GOODS_PLANNED, reconciled))}`]] },
    { at: "BA7", style: "part", rows: [["All goods planned, those of the bid with them"]] },
    { at: GOODS_PLANNED, rows: [[goodsPlanned()]] },
    { at: "BH7", style: "part", rows: [["All that is bid: goods, hours, and what is beside the stairs"]] },
    { at: ALL_BID, rows: [[allBid()]] },
    { at: "BO7", style: "part", rows: [["The ledger, in the order of reckoning"]] },
    { at: LEDGER, rows: [[`=${ledger}`]] },
    { at: "CD7", style: "part", rows: [["What the goods of this job cost"]] },
    { at: COSTED, rows: [[`=${passing(LEDGER, `IF(${BOOKS.job}="",${asksFor(`Books ${BOOKS.job}`)},${jobCost})`)}`]] },
  ];
};

/** Every move of goods with what it is worth; why this job cost more or less than planned; what lies on the rack. */
export const books = (filling: Filling): SheetData => {
  const { unit } = filling;
  // Quantity, price, net and gross.
  const planFormats = { 1: DECIMALS, 3: MONEY, 4: DECIMALS, 5: DECIMALS };
  return page({
    name: "Books",
    title: `="Books: "&${JOB.job}`,
    says:
      "Type a row for each move: bought, freight and tax on it, sent back, issued to a job, taken back to the rack, spoiled, counted. " +
      "Money as on the paper. Each row says what it is worth; below stands why this job cost what it did, and what lies on the rack.",
    answers: answers(moneyOf(filling)),
    heights: { 8: 34 },
    widths: { A: 112, B: 84, C: 118, D: 70, E: 70, F: 74, G: 102, H: 60, I: 60, J: 84, K: 50, L: 72, M: 52, N: 400 },
    lists: [{ cells: BOOKS.kinds, options: MOVE_KINDS }],
    verdicts: [BOOKS.values],
    totals: [
      `${below(BOOKS.why)}:K${cellPlace(below(BOOKS.why, BOOKS.goods)).row}`,
      `${below(BOOKS.rack)}:J${cellPlace(below(BOOKS.rack, BOOKS.goods)).row}`,
    ],
    blocks: blocks(filling),
    spills: [
      { at: BOOKS.state, rows: BOOKS.rows, formats: { 0: MONEY }, styles: { 0: "right", 1: "right" } },
      ...viewOf(RECONCILE, WHY, BOOKS.why, BOOKS.goods, unit),
      ...spillOf(BIDVARIANCE, BOOKS.causesAt, BOOKS.causes, unit),
      ...spillOf(RACK, BOOKS.rack, BOOKS.goods, unit),
      ...spillOf(RECONCILE, RECONCILED, BOOKS.goods, unit, { net: DECIMALS, gross: DECIMALS }),
      ...spillOf(STOCKLEDGER, LEDGER, BOOKS.rows, unit),
      ...spillOf(JOBCOST, COSTED, BOOKS.goods, unit),
      { at: "AA9", rows: 16, formats: { 2: MONEY, 3: DECIMALS, 4: DECIMALS } },
      ...["BA9", "BH9"].map((at) => ({ at, rows: BOOKS.goods, formats: planFormats })),
    ],
  });
};
