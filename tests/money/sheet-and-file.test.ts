/** @jest-environment ./tests/workbook/engine-environment.cjs */
import fc from "fast-check";
import { JOBCOST } from "../../src/functions/books/jobcost";
import { MONTHCLOSE } from "../../src/functions/books/monthclose";
import { RACK } from "../../src/functions/books/rack";
import { STOCKLEDGER } from "../../src/functions/books/stockledger";
import { cellAddress } from "../../src/sheets/cell-address";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { workbookFile } from "../../src/workbook-file/write-workbook-file";
import type { Workbook } from "../../src/workbook/workbook";
import { cellsOf } from "../functions/printed-rows";
import { moveCells, randomYear } from "../solver/books/random-moves";
import { closeWorkbooks, openedData, openedWorkbook } from "../workbook/opened-workbook";

const JOBS = Array.from({ length: 20 }, (_, index) => `Job ${String(index + 1)}`);
const LEDGER = { STOCKLEDGER, RACK, JOBCOST, MONTHCLOSE };

afterAll(closeWorkbooks);

/** What a sheet shows of each table, and by its own SUMIFS what the jobs cost in all. */
const shown = (book: Workbook, rows: number) => ({
  tables: Object.keys(LEDGER).map((name) => book.spill(name, "A1").map((row) => row.map((cell) => cell ?? ""))),
  sums: JOBS.map((_, index) => Math.round(Number(book.value("Sums", `B${String(index + 1)}`)) * 100)),
  rows,
});

test("the books of a year come to the same cents in a call, on a sheet, out of a file and by the sheet's own sums", async () => {
  const [moves] = fc.sample(randomYear(JOBS), { numRuns: 1, seed: 23 });
  if (moves === undefined) throw new Error("no year");
  const typed = moveCells(moves);
  const range = `Moves!A1:${cellAddress({ row: typed.length - 1, column: (typed[0]?.length ?? 1) - 1 })}`;
  const cells = Object.fromEntries(
    typed.flatMap((row, y) => row.flatMap((value, x) => (value === "" ? [] : [[cellAddress({ row: y, column: x }), { value }]]))),
  );
  const sums = Object.fromEntries(
    JOBS.flatMap((name, index) => [
      [`A${String(index + 1)}`, name], [`B${String(index + 1)}`, `=SUMIFS(JOBCOST!F1:F400,JOBCOST!A1:A400,A${String(index + 1)})`],
    ]),
  );
  const formulas = Object.fromEntries(Object.keys(LEDGER).map((name) => [name, { A1: `=STAIR.${name}(${range})` }]));
  const book = await openedWorkbook({ Moves: cells, ...formulas, Sums: sums });
  const called = Object.values(LEDGER).map((declared) => cellsOf(declared, { moves: typed }));
  const onSheet = shown(book, typed.length);
  expect(onSheet.tables).toEqual(called);
  // By hand: each job's rows of JOBCOST, added.
  const jobCost = called[2] ?? [];
  expect(onSheet.sums).toEqual(
    JOBS.map((name) => jobCost.reduce((sum, row) => sum + (row[0] === name ? Math.round(Number(row[5]) * 100) : 0), 0)),
  );
  const file = workbookFile(book.data().sheets, { calculated: book });
  const again = await openedData({ version: 1, sheets: readWorkbookFile(file).sheets });
  expect(shown(again, typed.length)).toEqual(onSheet);
});
