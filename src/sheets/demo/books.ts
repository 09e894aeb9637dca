import { MONEY, sheet } from "../sheet-builder";

interface Line {
  readonly item: string;
  readonly planned: string;
  readonly price: string;
  /** What the invoices say, and what was fitted: invented. */
  readonly bought: number;
  readonly paid: number;
  readonly used: number;
}

const ordered = (label: string, heading: string): string => `=STAIR.PICK(Order!A15#,"${label}","${heading}")`;
const planned = (at: string, label: string, heading: string): string => `=STAIR.PICK('Cut plan'!${at}#,"${label}","${heading}")`;

const LINES: readonly Line[] = [
  { item: "oak blank 42", planned: ordered("oak blank 42", "quantity"), price: ordered("oak blank 42", "price"), bought: 14, paid: 769.5, used: 14 },
  { item: "oak nosing 48", planned: ordered("oak nosing 48", "quantity"), price: ordered("oak nosing 48", "price"), bought: 1, paid: 19.5, used: 1 },
  { item: "poplar 16 ft", planned: planned("J22", "poplar 16 ft", "quantity"), price: planned("J22", "poplar 16 ft", "price"), bought: 3, paid: 114, used: 2 },
  { item: "poplar 10 ft", planned: planned("J22", "poplar 10 ft", "quantity"), price: planned("J22", "poplar 10 ft", "price"), bought: 1, paid: 21.5, used: 1 },
  { item: "rail 14 ft", planned: planned("R22", "rail 14 ft", "quantity"), price: planned("R22", "rail 14 ft", "price"), bought: 1, paid: 96, used: 1 },
];

const FIRST = 5;
const LAST = FIRST + LINES.length - 1;

/** Price, usage and rack by plain formulas: paid less bought at plan; used less planned, at plan; bought less used, at plan. */
const row = ({ item, planned: quantity, price, bought, paid, used }: Line, index: number): (string | number)[] => {
  const at = FIRST + index;
  return [item, quantity, price, bought, paid, used, `=E${at}-D${at}*C${at}`, `=(F${at}-B${at})*C${at}`, `=(D${at}-F${at})*C${at}`, `=E${at}-B${at}*C${at}`];
};

const sum = (column: string): string => `=SUM(${column}${FIRST}:${column}${LAST})`;

export const books = sheet(
  "Books",
  "Books: planned, bought, used",
  "Type what was bought, paid and used; out come price, usage and what is on the rack, and what was spent over plan is their sum.",
  [
    {
      at: "A4", headings: true, labels: true, inputs: [3, 4, 5], formats: { 2: MONEY, 4: MONEY, 6: MONEY, 7: MONEY, 8: MONEY, 9: MONEY },
      rows: [["item", "planned", "price", "bought", "paid", "used", "price variance", "usage variance", "on the rack", "spent over plan"], ...LINES.map(row)],
    },
    {
      at: `A${LAST + 1}`, style: "total", formats: { 4: MONEY, 6: MONEY, 7: MONEY, 8: MONEY, 9: MONEY },
      rows: [["total", "", "", "", sum("E"), "", sum("G"), sum("H"), sum("I"), sum("J")]],
    },
    { at: `A${LAST + 3}`, labels: true, formats: { 1: MONEY }, rows: [["price + usage + rack", `=G${LAST + 1}+H${LAST + 1}+I${LAST + 1}`]] },
  ],
  [],
  { A: 160, B: 80, C: 80, D: 80, E: 90, F: 80, G: 110, H: 110, I: 100, J: 120 },
);
