import { call } from "../../../src/functions/call";
import { catalogue } from "../../../src/functions/catalogue";
import { isFailed } from "../../../src/functions/cells";
import {
  JOBCOST_OF_APRIL,
  JOBCOST_OF_MARCH,
  MONTH_MOVES,
  MONTHCLOSE_OF_BOTH,
  RACK_AT_MARCH_5,
  RACK_OF_APRIL,
  RACK_OF_MARCH,
  STOCKLEDGER_OF_MONTH,
} from "../../solver/books/worked-month";

type Cells = readonly (readonly unknown[])[];

/** A spreadsheet shows 15 digits. */
const shown = (cell: unknown): unknown => (typeof cell === "number" ? Number(cell.toPrecision(15)) : cell);

const answered = (id: string, ...cells: readonly unknown[]): unknown => {
  const answer = call(catalogue.find((each) => each.id === id)!, cells);
  if (!Array.isArray(answer)) return isFailed(answer) ? answer.says : answer;
  return answer.map((row) => row.map((cell) => (isFailed(cell) ? cell.says : shown(cell))));
};

const inColumns = (rows: Cells): readonly unknown[] =>
  rows.slice(1).map((row) => Object.fromEntries(row.map((cell, place) => [String(rows[0]?.[place]), cell])));

const expectSame = (found: unknown, wanted: Cells): void => {
  expect(inColumns(found as Cells)).toEqual(inColumns(wanted));
  expect(found).toEqual(wanted);
};

describe("the worked month, every cell", () => {
  test("STOCKLEDGER", () => expectSame(answered("STOCKLEDGER", MONTH_MOVES), STOCKLEDGER_OF_MONTH));
  test("RACK of March", () => expectSame(answered("RACK", MONTH_MOVES, "2026-03-01", "2026-03-31"), RACK_OF_MARCH));
  test("RACK at 5 March, from the openings on", () => expectSame(answered("RACK", MONTH_MOVES, "", "2026-03-05"), RACK_AT_MARCH_5));
  test("RACK of April", () => expectSame(answered("RACK", MONTH_MOVES, "2026-04-01", "2026-04-30"), RACK_OF_APRIL));
  test("JOBCOST to the end of March", () => expectSame(answered("JOBCOST", MONTH_MOVES, "", "2026-03-31"), JOBCOST_OF_MARCH));
  test("JOBCOST to the end of April", () => expectSame(answered("JOBCOST", MONTH_MOVES, "", "2026-04-30"), JOBCOST_OF_APRIL));
  test("MONTHCLOSE", () => expectSame(answered("MONTHCLOSE", MONTH_MOVES), MONTHCLOSE_OF_BOTH));
});

/** 2026-02-28 is 46081 in a spreadsheet: 2026-01-01 is 46023 (1 January 2026 less 30 December 1899 in days, counted from a calendar). */
const NEW_YEAR_2026 = 46_023;
const DAYS_BEFORE = [0, 31, 59, 90];
const serial = (text: unknown): number => {
  const [, month = 0, day = 0] = String(text).split("-").map(Number);
  return NEW_YEAR_2026 + (DAYS_BEFORE[month - 1] ?? 0) + day - 1;
};

test("dates of the sheet are the same as text, and come back as they came", () => {
  const dated = MONTH_MOVES.map(([date, ...rest], row) => [row === 0 ? date : serial(date), ...rest]);
  const wanted = STOCKLEDGER_OF_MONTH.map(([row, date, ...rest], place) => [row, place === 0 ? date : serial(date), ...rest]);
  expect(answered("STOCKLEDGER", dated)).toEqual(wanted);
  expect(answered("RACK", dated, serial("2026-03-01"), "2026-03-31")).toEqual(RACK_OF_MARCH);
  expect(answered("MONTHCLOSE", dated)).toEqual(MONTHCLOSE_OF_BOTH);
});
