import { JOBCOST } from "../../functions/books/jobcost";
import { MONTHCLOSE } from "../../functions/books/monthclose";
import { spillOf } from "../result-looks";
import { type Answer, type Block, MONEY, page, passing, SIGNED_MONEY } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { LEDGER } from "./books";
import { BOOKS } from "./books-places";
import { call } from "./call";
import { type Filling, moneyOf } from "./filling";

const MONTHS = "A8";
const JOBS = "N8";
/** Rows of a register that SUMIFS reads: months times places, with room for some years. */
const ROWS = 500;
const LAST = 8 + ROWS;

const column = (letter: string): string => `${letter}9:${letter}${LAST}`;
/** As typed on Books, in a cell that holds text; else the last of the moves. */
const typedMonth = `Books!${BOOKS.month}`;
const month = `LET(m,CHOOSECOLS(${MONTHS}#,1),INDEX(m,XMATCH(IF(${typedMonth}="",TAKE(m,-1),${typedMonth}&""),m),1))`;
/** Of that month: a star after it, since 2026-03 alone is read as a day. */
const ofMonth = (sum: string, where: string): string => `SUMIFS(${column(sum)},${column("A")},A4&"*",${column("B")},"${where}")`;
const COST = "L";
const LOST = ["waste", "shrinkage", "price differences"];
const others = ["rack", "shop", ...LOST].map((where) => ofMonth(COST, where)).join("+");
const totals = (...letters: readonly string[]): string => letters.map((letter) => ofMonth(letter, "total")).join("+");
/** Bought, freight and tax less what was credited and sent back. */
const papers = `(${totals("D", "E", "F")}-(${totals("G", "H")}))`;
const ofPlaces = `(SUMIFS(${column(COST)},${column("A")},A4&"*")-${ofMonth(COST, "total")})`;
const moved = `(${ofMonth("I", "total")}-${ofMonth("J", "total")})`;
const out = `(ABS(${papers}-${ofMonth(COST, "total")})+ABS(${papers}-${ofPlaces})+ABS(${moved}))`;

/** Without a month that is among them there is no sum of it. */
const once = (value: string): string => `IF(A4="–",NA(),${value})`;

const answers = (money: string): readonly Answer[] => [
  { over: ["A", "A"], name: "month", value: month, from: MONTHS, isText: true, under: `Books ${BOOKS.month}` },
  { over: ["B", "C"], name: "on its papers", value: once(papers), from: MONTHS, format: MONEY, under: `${money}, less credits` },
  {
    over: ["D", "E"], name: "cost of jobs", value: once(`${ofMonth(COST, "total")}-(${others})`), from: MONTHS, format: MONEY,
    under: money,
  },
  { over: ["F", "G"], name: "shop", value: once(ofMonth(COST, "shop")), from: MONTHS, format: MONEY, under: money },
  {
    over: ["H", "I"], name: "change on the rack", value: once(ofMonth(COST, "rack")), from: MONTHS, format: SIGNED_MONEY,
    under: `="to "&TEXT(${ofMonth("K", "rack")},"#,##0.00")`,
  },
  {
    over: ["J", "L"], name: "does the month tie?", from: MONTHS, isText: true, under: "papers = where it went; in = out",
    value: once(`IF(${out}<0.005,"✓ to the cent","✗ "&TEXT(${out},"0.00")&" out")`),
  },
  {
    over: ["N", "O"], name: "waste, short, differences", from: MONTHS, format: MONEY, under: money,
    value: once(LOST.map((where) => ofMonth(COST, where)).join("+")),
  },
  {
    over: ["P", "S"], name: "this job so far", from: MONTHS, format: MONEY, under: "goods, by SUMIFS of cost",
    value: `SUMIFS(${column(COST)},${column("B")},Books!${BOOKS.job})`,
  },
];

/** Cells beside the title of the months. */
const BESIDE = Array.from({ length: 11 }, () => "");

const blocks = ({ unit }: Filling, money: string): readonly Block[] => {
  const read = { moves: `Books!${BOOKS.moves}` };
  return [
    {
      at: "A7", style: "part",
      rows: [
        [`By month and job, ${money}: opening + bought + freight + tax - credited - returned + in - out = closing`, ...BESIDE],
      ],
    },
    { at: MONTHS, rows: [[`=${passing(`Books!${LEDGER}`, call(MONTHCLOSE, unit, read))}`]] },
    { at: "N7", style: "part", rows: [[`By job and item, to date, ${money}`, ...BESIDE.slice(2)]] },
    { at: JOBS, rows: [[`=${passing(`Books!${LEDGER}`, call(JOBCOST, unit, read))}`]] },
  ];
};

/** The register of jobs: where the money of each month went, and what the goods of each job cost. */
export const register = (filling: Filling): SheetData => {
  const money = moneyOf(filling);
  return page({
    name: "Register",
    title: "Register: months and jobs",
    says:
      "Type moves on Books. Each figure is a sum of rows of its ledger. Months and jobs stand as plain rows, so SUMIFS, a filter or a " +
      "pivot of your own works on them.",
    answers: answers(money),
    widths: {
      A: 72, B: 116, C: 72, D: 72, E: 62, F: 62, G: 66, H: 66, I: 72, J: 72, K: 76, L: 76, M: 10, N: 104, O: 124, P: 50, Q: 62, R: 64,
      S: 76, T: 64, U: 50, V: 64, W: 180,
    },
    totals: [`B9:L${LAST}`],
    blocks: blocks(filling, money),
    spills: [...spillOf(MONTHCLOSE, MONTHS, 60, filling.unit), ...spillOf(JOBCOST, JOBS, 60, filling.unit)],
  });
};
