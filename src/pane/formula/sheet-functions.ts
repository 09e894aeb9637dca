import { isErrorCell } from "../answer";
import type { SheetFunctions, WorkedCell, WorkedRows } from "./worked-out";

const numberOf = (rows: WorkedRows | undefined): number | undefined => {
  const cell = rows?.[0]?.[0];
  return typeof cell === "number" ? cell : undefined;
};

/** The first rows, or the last where the number is below 0. */
const taken = (rows: WorkedRows, count: number): WorkedRows => (count < 0 ? rows.slice(count) : rows.slice(0, count));

const anError = (given: readonly WorkedRows[]): WorkedCell | undefined => given.flat(2).find(isErrorCell);

/** What the sheets of a job choose their readings with: the functions of the spreadsheet that are worked out here as it does. */
export const sheetFunctions: SheetFunctions = {
  TAKE: ([rows, count, more]) => {
    const wanted = numberOf(count);
    return rows === undefined || wanted === undefined || wanted === 0 || more !== undefined ? undefined : taken(rows, Math.trunc(wanted));
  },
  MAX: (given) => {
    const error = anError(given);
    return [[error ?? Math.max(0, ...given.flat(2).filter((cell): cell is number => typeof cell === "number"))]];
  },
  IFERROR: ([rows, instead]) =>
    rows === undefined || instead === undefined
      ? undefined
      : rows.map((row) => row.map((cell) => (isErrorCell(cell) ? (instead[0]?.[0] ?? "") : cell))),
  SEQUENCE: ([count, more]) => {
    const rows = numberOf(count);
    return rows === undefined || rows < 1 || more !== undefined
      ? undefined
      : Array.from({ length: Math.trunc(rows) }, (_, place) => [place + 1]);
  },
};
