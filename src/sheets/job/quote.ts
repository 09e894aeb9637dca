import { QUOTE } from "../../functions/bid/quote";
import { spillOf } from "../result-looks";
import { type Answer, type Block, MONEY, page, passing } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { BID_AT } from "./bid";
import { COSTS_AT, TERMS } from "./bid-places";
import { call } from "./call";
import { type Filling, moneyOf } from "./filling";
import { JOB } from "./job";

const QUOTED = "A8";
/** Parts and alternates of a job. */
const ROWS = 24;

const total = (heading: string): string => `STAIR.PICK(${QUOTED}#,"total","${heading}")`;
/** The place of the total among the rows, headings counted. */
const totalPlace = `MATCH("total",CHOOSECOLS(${QUOTED}#,1),0)`;

const answers = (money: string): readonly Answer[] => [
  { over: ["A", "A"], name: "total to the customer", value: total("total"), from: QUOTED, format: MONEY, under: money },
  { over: ["B", "B"], name: "price", value: total("price"), from: QUOTED, format: MONEY, under: `${money} before tax` },
  { over: ["C", "C"], name: "tax", value: total("tax"), from: QUOTED, format: MONEY, under: money },
  { over: ["D", "D"], name: "parts", value: `${totalPlace}-2`, from: QUOTED, under: "that add up" },
  { over: ["E", "E"], name: "alternates", value: `ROWS(${QUOTED}#)-${totalPlace}`, from: QUOTED, under: "beside them" },
];

const blocks = (filling: Filling): readonly Block[] => {
  const quoted = call(QUOTE, filling.unit, { costs: `Bid!${COSTS_AT}#`, terms: `Bid!${TERMS.all}` });
  return [
    { at: "A7", style: "part", rows: [[`The quote, ${moneyOf(filling)}`, "", "", "", ""]] },
    { at: QUOTED, rows: [[`=${passing(`Bid!${BID_AT}`, quoted)}`]] },
  ];
};

/** What the customer is asked, on a page of its own, without a cost. */
export const quote = (filling: Filling): SheetData =>
  page({
    name: "Quote",
    title: `="Quote: "&${JOB.job}&IF(${JOB.customer}="","",", for "&${JOB.customer})`,
    // Read by the customer: costs, terms and alternates are typed on Bid.
    says: "The parts add up to the total, to the cent. Beside an alternate stands what it adds or saves.",
    answers: answers(moneyOf(filling)),
    widths: { A: 230, B: 130, C: 100, D: 100, E: 110 },
    totals: [`A9:E${8 + ROWS}`],
    blocks: blocks(filling),
    spills: [...spillOf(QUOTE, QUOTED, ROWS, filling.unit)],
  });
