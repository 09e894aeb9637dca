import { RECONCILE } from "../../functions/books/reconcile";
import { ORDER } from "../../functions/order/order";
import { bought, used } from "../../functions/tables";
import { BUY } from "../../functions/yield/buy";
import { headingsOf, placesOf, spillOf } from "../result-looks";
import { DECIMALS, MONEY, sheet } from "../sheet-builder";

/** What RECONCILE reads of what has a price in ORDER, and of what BUY buys. */
const PLANNED = ["item", "quantity", "price", "net", "gross"] as const;
const PRICED = `FILTER(Order!A15#,INDEX(Order!A15#,0,${placesOf(ORDER, "price").join()})<>"")`;
const ORDERED = `CHOOSECOLS(${PRICED},${placesOf(ORDER, ...PLANNED).join()})`;
const boughtAt = (at: string): string => `DROP(CHOOSECOLS('Cut plan'!${at}#,${placesOf(BUY, ...PLANNED).join()}),1)`;

/** Invoices and what was fitted are invented: a blank spoiled and bought again dear, a board too many, one of two sent back. */
export const books = sheet(
  "Books",
  "Books: planned, bought, used",
  "Type the invoices and what was fitted; out come price, usage and what is on the rack, and what was paid for wood that was " +
    "ripped and cut off.",
  [
    { at: "A3", style: "label", rows: [["Planned: all that Order and Cut plan buy"]] },
    { at: "A4", rows: [[`=VSTACK(${ORDERED},${boughtAt("J22")},${boughtAt("R22")})`]] },
    { at: "G3", style: "label", rows: [["Bought: one row per invoice line"]] },
    {
      at: "G4",
      headings: true,
      labels: true,
      inputs: [0, 1, 2],
      formats: { 2: MONEY },
      rows: [
        headingsOf(bought, "item", "quantity", "cost"),
        ["oak blank 42", 13, 708.5],
        ["oak blank 42", 1, 61],
        ["oak nosing 48", 1, 19.5],
        ["poplar 16 ft", 4, 152],
        ["poplar 16 ft", -1, -38],
        ["poplar 10 ft", 1, 21.5],
        ["skirt 16 ft", 2, 176],
        ["rail 14 ft", 1, 96],
      ],
    },
    { at: "K3", style: "label", rows: [["Used"]] },
    {
      at: "K4",
      headings: true,
      labels: true,
      inputs: [0, 1],
      rows: [
        headingsOf(used, "item", "quantity"),
        ["oak blank 42", 14],
        ["oak nosing 48", 1],
        ["poplar 16 ft", 2],
        ["poplar 10 ft", 1],
        ["skirt 16 ft", 2],
        ["rail 14 ft", 1],
      ],
    },
    { at: "A14", style: "label", rows: [["Reconciled; positive is unfavourable"]] },
    { at: "A15", rows: [["=STAIR.RECONCILE(A4#,G4:I12,K4:L10)"]] },
    {
      at: "A24",
      labels: true,
      formats: { 1: MONEY },
      rows: [["spent over plan", '=STAIR.PICK(A15#,"total","spent")-STAIR.PICK(A15#,"total","planned cost")']],
    },
    {
      at: "A26",
      style: "caution",
      rows: [
        [
          "Type 9 for the run on Layout: counts, prices and every variance stay as they are, for the blanks are the same. What " +
            "moves is net board feet, the yield and the waste cost: the rip is wood you have paid for.",
        ],
      ],
    },
  ],
  [
    { at: "C5", rows: 8, formats: { 0: MONEY, 1: DECIMALS, 2: DECIMALS } },
    ...spillOf(RECONCILE, "A15", 7, { net: DECIMALS, gross: DECIMALS }),
    { at: "A4", headings: PLANNED.length },
  ],
  { A: 160, B: 80, C: 80, D: 80, E: 80, F: 110, G: 130, H: 125, I: 130, J: 110, K: 130, L: 80, M: 80, N: 80, O: 100, P: 380 },
);
