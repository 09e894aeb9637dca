import { Exact } from "../../../src/solver/length/exact";
import { lengthOf } from "../../../src/solver/length/length";
import type { SheetJob } from "../../../src/solver/yield/sheets/sheet-job";
import { draws, shareOf } from "./draws";

const PIECES = 30;
const SIZES = 10;
const SEED = 900;
const SIXTEENTHS = 16;

/** Width, length and cents before a scatter of 4.00. Invented. */
const SHEETS = [
  [48, 96, 5_200],
  [60, 60, 4_600],
  [48, 120, 6_900],
] as const;

/** Thirty parts of ten sizes from one size of sheet or three; invented and seeded, `number` from 1. They do not change. */
export const sheetJob = (number: number, areSeveral: boolean, turns: boolean): SheetJob => {
  const draw = draws(SEED + number);
  const inches = (length: number) => lengthOf(length, "in");
  const part = (least: number, span: number) => inches(Math.round((least + draw() * span) * SIXTEENTHS) / SIXTEENTHS);
  const stock = SHEETS.map(([width, length, cents]) => ({
    label: `${width} x ${length}`, length: inches(length), width: inches(width),
    price: new Exact(cents + Math.round(draw() * 400)).div(100), available: Infinity, owned: false, grade: "",
  }));
  let left = PIECES;
  const pieces = Array.from({ length: SIZES }, (_, size) => {
    const length = part(10, 50);
    const width = part(6, 20);
    const later = SIZES - size - 1;
    const quantity = shareOf(left, later, later === 0 ? 0 : (PIECES / SIZES) * (0.4 + 1.2 * draw()));
    left -= quantity;
    return { label: `part ${size + 1}`, length, width, quantity, grade: "", turns };
  });
  return {
    pieces, stock: areSeveral ? stock : stock.slice(0, 1), kerf: inches(0.125), trim: inches(0), first: "rip", unit: "in",
  };
};
