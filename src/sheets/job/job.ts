import { RISERS } from "../../functions/layout/risers";
import { CHEAPER } from "./boards-places";
import { CODE_CHOICES } from "./code-choices";
import { TOO_LARGE } from "./treads-too-large";
import { type Answer, type Block, type Entry, MONEY, page } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { call } from "./call";
import { type Filling, lengthFormat, moneyOf, onTape } from "./filling";
import { greatestRise } from "./greatest-rise";
import { YARD_CAUTION } from "./yard-places";

/** Where the facts stand that other sheets read. */
export const JOB = {
  job: "Job!B8", customer: "Job!B9", code: "Job!B10", totalRise: "Job!B11", risers: "Job!B12", run: "Job!B13", width: "Job!B14",
  openEnd: "Job!B15", handrails: "Job!B16", unit: "Job!B17",
} as const;

const local = (place: string): string => place.replace("Job!", "");

/** As few risers as the greatest rise of the code allows. */
const fewestRisers = (unit: Filling["unit"]): string => {
  const risers = call(RISERS, unit, { totalRise: local(JOB.totalRise), maxRise: greatestRise(unit, local(JOB.code)) });
  return `=IF(${local(JOB.totalRise)}="","",${risers})`;
};

const known = (filling: Filling): readonly (readonly Entry[])[] => [
  ["job", filling.job],
  ["customer", filling.customer],
  ["code", filling.flight?.code ?? filling.code],
  [`total rise, ${filling.unit}`, filling.totalRise],
  ["risers", filling.risers ?? fewestRisers(filling.unit)],
  [`run, ${filling.unit}`, filling.run],
  [`width, ${filling.unit}`, filling.width],
  ["open end", filling.openEnd],
  ["handrails", filling.handrails],
];

/** Job and customer, which stand before what is counted or chosen: a long one is cut at its end. */
const NAMES = 2;

const toSheet = (name: string): string => `=HYPERLINK("#${name.includes(" ") ? `'${name}'` : name}!A1","${name} ›")`;

interface Asked {
  readonly sheet: string;
  readonly asks: string;
  /** A cell of that sheet's strip that shows a dash where there is no answer. */
  readonly from: string;
  readonly answer: string;
  readonly verdict: string;
}

/** The sheet of the whole stair, where this is one flight of several. */
const wholeStair = ({ flight }: Filling): readonly Asked[] =>
  flight === undefined
    ? []
    : [{
        sheet: flight.sheet, asks: "Where is all this typed?", from: `${flight.sheet}!A4`, answer: `${flight.sheet}!A4`,
        verdict: `${flight.sheet}!L4`,
      }];

/** Whether there is a cheaper plan, said where that question does not stand above the answer. */
const cheaper = (at: string): string =>
  `SUBSTITUTE(SUBSTITUTE(${at},"✓ no, proven","✓ none cheaper"),"✓ none was found","✓ no cheaper found")`;

/** The sheets of the job: what each is asked, what it answers, and its verdict. */
const SHEETS = ({ unit, pile }: Filling): readonly Asked[] => [
  {
    sheet: "Survey", asks: "Are the steps alike?", from: "Survey!A4", verdict: "Survey!E4",
    answer: `Survey!C4&" steps, spread "&${onTape(unit, "Survey!D4")}`,
  },
  {
    sheet: "Layout", asks: "Which sizes follow?", from: "Layout!A4", verdict: "Layout!J4",
    answer: `Layout!A4&" on "&${onTape(unit, local(JOB.run))}&", pitch "&TEXT(Layout!E4,"0.0")&"°"`,
  },
  { sheet: "Check", asks: "Does it pass?", from: "Check!E4", answer: 'Check!E5', verdict: "Check!E4" },
  {
    sheet: "Order", asks: "Which blanks to buy?", from: "Order!C4",
    verdict: `IF(Order!A4=0,"✗ nothing fits",IF(IFERROR(Fit!${TOO_LARGE},"")="","✓ in stock sizes","✗ too small: Fit"))`,
    answer: 'TEXT(Order!C4,"#,##0.00")&", "&TEXT(Order!G4,"#,##0.00")&" of it ripped away"',
  },
  {
    sheet: "Cut plan", asks: "Which boards, cut how?", from: "'Cut plan'!A4", verdict: cheaper("'Cut plan'!J4"),
    answer: "'Cut plan'!C4&\" boards, \"&TEXT('Cut plan'!A4,\"#,##0.00\")",
  },
  ...(pile === undefined
    ? []
    : [{
        sheet: "Boards", asks: "Or out of rough boards?", from: `Boards!${CHEAPER}`, verdict: cheaper(`Boards!${CHEAPER}`),
        answer: 'TEXT(Boards!A4,"#,##0.00")&" and "&TEXT(Boards!C4,"#,##0.00")',
      }]),
  {
    sheet: "Yard order", asks: "What is the yard asked?", from: "'Yard order'!A4",
    answer: "'Yard order'!B4&IF('Yard order'!B4=1,\" piece\",\" pieces\")",
    verdict: `IF('Yard order'!${YARD_CAUTION}="","✓ sizes whole","✗ sizes missing")`,
  },
  {
    sheet: "Fit", asks: "What goes on the saw?", from: "Fit!A4",
    answer: 'IF(Fit!A4+Fit!C4=0,"none read yet",Fit!A4&" treads, "&Fit!C4&" risers")', verdict: "Fit!D4",
  },
  {
    sheet: "Takeoff", asks: "What does it take?", from: "Takeoff!A4", verdict: '"cost "&TEXT(Takeoff!A4,"#,##0.00")',
    answer: 'TEXT(Takeoff!C4,"0.0")&" hours, goods "&TEXT(Takeoff!D4,"#,##0.00")',
  },
  {
    sheet: "Bid", asks: "What do we ask?", from: "Bid!A4", verdict: '"total "&TEXT(Bid!D4,"#,##0.00")',
    answer: 'TEXT(Bid!A4,"#,##0.00")&" and "&TEXT(Bid!B4,"#,##0.00")&" tax"',
  },
  {
    sheet: "Quote", asks: "What is quoted?", from: "Quote!A4", verdict: '"total "&TEXT(Quote!A4,"#,##0.00")',
    answer: 'Quote!D4&IF(Quote!D4=1," part, "," parts, ")&Quote!E4&IF(Quote!E4=1," alternate"," alternates")',
  },
  {
    sheet: "Books", asks: "Did it come out so?", from: "Books!A4", verdict: "Books!J4",
    answer: 'TEXT(ABS(Books!C4),"#,##0.00")&IF(Books!C4<0," under"," over")&", goods"',
  },
  {
    sheet: "Register", asks: "Does the month tie?", from: "Register!A4", verdict: "Register!J4",
    answer:
      'TEXT(SUM(FILTER(CHOOSECOLS(Register!A8#,12),(CHOOSECOLS(Register!A8#,1)=Register!A4)*' +
      '(CHOOSECOLS(Register!A8#,2)="total"))),"#,##0.00")&" on papers of "&Register!A4',
  },
];

/** A dash where the sheet has no answer. */
const unless = (from: string, answer: string): string => `=IFERROR(IF(${from}="–","–",${answer}),"–")`;

/** Where the bid is over several flights. */
const ofAll = ({ flight }: Filling): string => (flight === undefined ? "" : ", all flights");

const answers = (filling: Filling): readonly Answer[] => [
  { over: ["A", "A"], name: "rise", value: `${local(JOB.risers)}&" × "&Layout!A4`, from: "Layout!D8", under: "risers × rise" },
  { over: ["B", "B"], name: "as designed", value: "Check!E4", from: "Check!A8", under: "=Check!E5", isText: true },
  { over: ["C", "D"], name: "as framed", value: "Check!A4", from: "Check!A8", under: "=Check!A5", isText: true },
  {
    over: ["E", "E"], name: "to buy", value: 'Order!A4&" blanks, "&\'Cut plan\'!C4&" boards"', from: "'Cut plan'!S8",
    under: "listed below", isText: true,
  },
  { over: ["F", "F"], name: "wood to buy", value: "Order!C4+'Cut plan'!A4", from: "'Cut plan'!S8", format: MONEY, under: moneyOf(filling) },
  {
    over: ["G", "G"], name: `price${ofAll(filling)}`, value: "Bid!A4+0", from: "Bid!A19", format: MONEY,
    under: `${moneyOf(filling)} before tax`,
  },
  {
    over: ["H", "H"], name: "readings close?", value: "Fit!D4", from: "Fit!AA8",
    under: `="closure "&${filling.unit === "mm" ? 'TEXT(Fit!F4,"0.0")&" mm"' : "STAIR.TAPE(Fit!F4,64)"}`, isText: true,
  },
];

const FAILS =
  '=IFERROR(LET(b,FILTER(Check!A8#,LEFT(CHOOSECOLS(Check!A8#,1))="✗"),' +
  'CHOOSECOLS(b,2)&": "&CHOOSECOLS(b,3)&" found, limit "&CHOOSECOLS(b,4)),"–")';

const blocks = (filling: Filling): readonly Block[] => [
  { at: "A7", style: "part", rows: [["What is known", ""]] },
  { at: "A8", inputs: [1], rows: known(filling).slice(0, NAMES) },
  { at: `A${8 + NAMES}`, numbers: [1], inputs: [1], rows: known(filling).slice(NAMES) },
  { at: "A17", numbers: [1], rows: [["lengths are in", filling.unit]] },
  { at: "D7", style: "part", rows: [["Sheet by sheet", "", "", "", ""]] },
  {
    at: "D8",
    styles: { 0: "link", 4: "middle" },
    rows: [...SHEETS(filling), ...wholeStair(filling)].map(({ sheet, asks, from, answer, verdict }) => [
      toSheet(sheet), asks, unless(from, answer), null, unless(from, verdict),
    ]),
  },
  { at: "A21", style: "part", rows: [["To buy", ""]] },
  {
    at: "A22",
    rows: [["=IFERROR(HSTACK(CHOOSECOLS('Cut plan'!S8#,3)&\" × \"&CHOOSECOLS('Cut plan'!S8#,1),CHOOSECOLS('Cut plan'!S8#,5)),\"–\")"]],
  },
  { at: "D21", style: "part", rows: [["What fails as framed, and why", "", "", "", ""]] },
  { at: "D22", rows: [[FAILS]] },
];

const OWN =
  "Type what is known in the yellow cells; the other sheets follow, and each has its answers in its first rows. Next: Survey, with the " +
  "tape at the stair.";

/** The first sheet: what is known of the job, and what all sheets answer. */
export const job = (filling: Filling): SheetData =>
  page({
    name: "Job",
    title: `=IF(${local(JOB.job)}="","Job",${local(JOB.job)})&IF(${local(JOB.customer)}="","",", "&${local(JOB.customer)})`,
    says: filling.trial ?? OWN,
    answers: answers(filling),
    widths: { A: 162, B: 162, C: 8, D: 94, E: 172, F: 134, G: 120, H: 128 },
    hidesGridLines: true,
    verdicts: ["H8:H20"],
    lists: [
      { cells: "B10", options: CODE_CHOICES.map(({ id }) => id) },
      { cells: "B15", options: ["none", "left", "right", "both"] },
      { cells: "B16", options: ["none", "one", "both"] },
    ],
    blocks: blocks(filling),
    spills: [
      { at: "B11", rows: 1, formats: { 0: lengthFormat(filling.unit) } },
      { at: "B13", rows: 2, formats: { 0: lengthFormat(filling.unit) } },
      { at: "B22", rows: 14, formats: { 0: MONEY } },
    ],
  });

