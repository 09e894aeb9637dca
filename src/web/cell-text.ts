import type { Cell } from "../sheets/job";

/** Decimals of a number on the page; the tape text beside it says the rest. */
const DECIMALS = 4;
const CENTS = 2;

/** A cell as the page prints it: a number with up to four decimals, money with two. */
export const cellText = (cell: Cell, isMoney = false): string => {
  if (typeof cell !== "number") return String(cell);
  return isMoney ? cell.toFixed(CENTS) : String(Number(cell.toFixed(DECIMALS)));
};
