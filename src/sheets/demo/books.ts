import { DECIMALS, MONEY, sheet } from "../sheet-builder";

const ordered = (item: string): readonly string[] => [item, ...["quantity", "price", "net", "gross"].map((heading) => `=STAIR.PICK(Order!A15#,"${item}","${heading}")`)];
const cut = (at: string, item: string): readonly string[] => [item, ...["quantity", "price", "net", "gross"].map((heading) => `=STAIR.PICK('Cut plan'!${at}#,"${item}","${heading}")`)];

/** Invoices and what was fitted are invented: a blank spoiled and bought again dear, a board too many, one of two sent back. */
export const books = sheet(
  "Books",
  "Books: planned, bought, used",
  "Type the invoices and what was fitted; out come price, usage and what is on the rack, and what was paid for wood that was ripped and cut off.",
  [
    { at: "A3", style: "label", rows: [["Planned, from Order and Cut plan"]] },
    {
      at: "A4", headings: true, labels: true, formats: { 2: MONEY, 3: DECIMALS, 4: DECIMALS },
      rows: [
        ["item", "quantity", "price", "net", "gross"],
        ordered("oak blank 42"), ordered("oak nosing 48"), cut("J22", "poplar 16 ft"), cut("J22", "poplar 10 ft"), cut("R22", "rail 14 ft"),
      ],
    },
    { at: "G3", style: "label", rows: [["Bought: a row a line of an invoice"]] },
    {
      at: "G4", headings: true, labels: true, inputs: [0, 1, 2], formats: { 2: MONEY },
      rows: [
        ["item", "quantity", "cost"],
        ["oak blank 42", 13, 708.5],
        ["oak blank 42", 1, 61],
        ["oak nosing 48", 1, 19.5],
        ["poplar 16 ft", 4, 152],
        ["poplar 16 ft", -1, -38],
        ["poplar 10 ft", 1, 21.5],
        ["rail 14 ft", 1, 96],
      ],
    },
    { at: "K3", style: "label", rows: [["Used"]] },
    {
      at: "K4", headings: true, labels: true, inputs: [0, 1],
      rows: [["item", "quantity"], ["oak blank 42", 14], ["oak nosing 48", 1], ["poplar 16 ft", 2], ["poplar 10 ft", 1], ["rail 14 ft", 1]],
    },
    { at: "A14", style: "label", rows: [["Reconciled; positive is unfavourable"]] },
    { at: "A15", rows: [["=STAIR.RECONCILE(A4:E9,G4:I11,K4:L9)"]] },
    { at: "A24", labels: true, formats: { 1: MONEY }, rows: [["spent over plan", "=STAIR.PICK(A15#,\"total\",\"spent\")-STAIR.PICK(A15#,\"total\",\"planned cost\")"]] },
    {
      at: "A26", style: "caution",
      rows: [["Type 9 for the run on Layout: counts, prices and every variance stay as they are, for the blanks are the same. What moves is net board feet, the yield and the waste cost: the rip is wood you have paid for."]],
    },
  ],
  [
    { at: "D16", rows: 6, formats: { 2: MONEY, 3: MONEY, 4: MONEY, 5: MONEY, 6: MONEY, 7: MONEY, 8: DECIMALS, 9: DECIMALS, 10: "0.0%", 11: MONEY } },
    { at: "A15", headings: 16 },
  ],
  { A: 160, B: 80, C: 80, D: 80, E: 80, F: 110, G: 130, H: 125, I: 130, J: 110, K: 130, L: 80, M: 80, N: 80, O: 100, P: 380 },
);
