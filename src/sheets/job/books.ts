import { RECONCILE } from "../../functions/books/reconcile";
import { bought, used } from "../../functions/tables";
import { chosen, headingsOf, spillOf, viewOf } from "../result-looks";
import { type Answer, asking, type Block, DECIMALS, type Entry, MONEY, page, passing, SIGNED_MONEY } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { call } from "./call";
import { ALL_BOUGHT } from "./cut-plan";
import { type Filling, moneyOf } from "./filling";
import { JOB } from "./job";

/** Where what every stair of the workbook was to buy is gathered; a further stair adds its own to this formula. */
export const PLANNED = "AA8";
const RECONCILED = "AH8";
const INVOICES = 14;
const FIRST = 9;
const LAST = FIRST + INVOICES - 1;
const USED = LAST + 2;
const USED_ROWS = 12;
const ROWS = 14;
const WHY = [
  "item", "planned", "bought", "used", "plannedCost", "spent", "priceVariance", "usageVariance", "scope", "onTheRack", "charges",
  "wasteCost",
] as const;

const total = (heading: string): string => `STAIR.PICK(${RECONCILED}#,"total","${heading}")`;
const over = `(${total("spent")}-${total("planned cost")})`;
const explained = ["price variance", "usage variance", "scope", "on the rack", "charges"].map(total).join("+");

const answers = (money: string): readonly Answer[] => [
  { over: ["A", "A"], name: "planned", value: total("planned cost"), from: "E8", format: MONEY, under: money },
  { over: ["B", "D"], name: "spent", value: total("spent"), from: "E8", format: MONEY, under: money },
  { over: ["E", "E"], name: "over the plan", value: over, from: "E8", format: SIGNED_MONEY, under: `${money}, + costs you` },
  { over: ["F", "G"], name: "by price", value: total("price variance"), from: "E8", format: SIGNED_MONEY, under: money },
  { over: ["H", "I"], name: "by usage", value: total("usage variance"), from: "E8", format: SIGNED_MONEY, under: money },
  { over: ["J", "J"], name: "on the rack", value: total("on the rack"), from: "E8", format: SIGNED_MONEY, under: `${money}, not used` },
  {
    over: ["K", "N"], name: "do they add up?", from: "E8", under: "price + usage + scope + rack + charges", isText: true,
    value: `IF(ABS(${over}-(${explained}))<0.005,"✓ to the cent","✗ "&TEXT(${over}-(${explained}),"0.00")&" out")`,
  },
  { over: ["O", "P"], name: "paid, not used", value: total("waste cost"), from: "E8", format: MONEY, under: `${money} of wood` },
];

const filled = (rows: Filling["invoices"], count: number, columns: number): readonly (readonly Entry[])[] =>
  Array.from({ length: count }, (_, row) => rows[row] ?? Array.from({ length: columns }, () => ""));

const blocks = (filling: Filling): readonly Block[] => {
  const usedCells = `A${USED + 1}:B${USED + 1 + USED_ROWS}`;
  const reconciled = call(RECONCILE, filling.unit, {
    planned: `${PLANNED}#`, bought: `A8:C${LAST}`, used: `IF(COUNTA(B${USED + 2}:B${USED + 1 + USED_ROWS})=0,"",${usedCells})`,
  });
  return [
    { at: "A7", style: "part", rows: [["Invoices, a row a line", "", ""]] },
    {
      at: "A8", headings: true, numbers: [1, 2], inputs: [0, 1, 2], formats: { 2: MONEY },
      rows: [headingsOf(bought, "item", "quantity", "cost"), ...filled(filling.invoices, INVOICES, 3)],
    },
    { at: `A${USED}`, style: "part", rows: [["Fitted", ""]] },
    {
      at: `A${USED + 1}`, headings: true, numbers: [1], inputs: [0, 1],
      rows: [headingsOf(used, "item", "quantity"), ...filled(filling.used, USED_ROWS, 2)],
    },
    { at: "E7", style: "part", rows: [["Why: planned, bought, used; a plus is against you", "", "", "", "", "", "", "", "", "", "", ""]] },
    { at: "E8", rows: [[`=${passing(RECONCILED, chosen(RECONCILE, `${RECONCILED}#`, ...WHY))}`]] },
    { at: "AA7", style: "part", rows: [["Planned, of every stair: all that Order and Cut plan buy"]] },
    { at: PLANNED, rows: [[`=VSTACK('Cut plan'!${ALL_BOUGHT}#)`]] },
    { at: "AH7", style: "part", rows: [["Reconciled, in full"]] },
    { at: RECONCILED, rows: [[`=${passing(PLANNED, asking(`C${FIRST}:C${LAST}`, `Books A${FIRST}`, reconciled))}`]] },
  ];
};

/** Planned, bought, used: why more or less was spent than planned. */
export const books = (filling: Filling): SheetData =>
  page({
    name: "Books",
    title: `="Books: "&${JOB.job}`,
    says:
      "Type a row for each line of an invoice, what goes back with a minus, and what was fitted. The rest says why more was spent " +
      "than planned: price, usage, boards still on the rack, or freight and tax. The rip is wood you have paid for.",
    answers: answers(moneyOf(filling)),
    heights: { 8: 34 },
    widths: { A: 112, B: 72, C: 68, D: 6, E: 112, F: 70, G: 66, H: 50, I: 80, J: 80, K: 74, L: 74, M: 56, N: 60, O: 62, P: 66 },
    totals: [`E9:P${8 + ROWS}`],
    blocks: blocks(filling),
    spills: [
      ...viewOf(RECONCILE, WHY, "E8", ROWS, filling.unit),
      ...spillOf(RECONCILE, RECONCILED, ROWS, filling.unit, { net: DECIMALS, gross: DECIMALS }),
      { at: "AA9", rows: 16, formats: { 2: MONEY, 3: DECIMALS, 4: DECIMALS } },
    ],
  });
