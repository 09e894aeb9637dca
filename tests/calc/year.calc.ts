import fc from "fast-check";
import { JOBCOST } from "../../src/functions/books/jobcost";
import { MONTHCLOSE } from "../../src/functions/books/monthclose";
import { RACK } from "../../src/functions/books/rack";
import { STOCKLEDGER } from "../../src/functions/books/stockledger";
import { cellAddress } from "../../src/sheets/cell-address";
import { cellsOf } from "../functions/printed-rows";
import { moveCells, randomYear } from "../solver/books/random-moves";
import { type At, inCalc, installed, officeFolder, removeFolder, type ShownCell, type Step } from "./office";

const JOBS = Array.from({ length: 20 }, (_, index) => `Job ${String(index + 1)}`);
const LEDGER = { STOCKLEDGER, RACK, JOBCOST, MONTHCLOSE };
const NAMES = Object.keys(LEDGER);

let folder: string;

beforeAll(() => {
  folder = officeFolder();
});
afterAll(() => removeFolder(folder));

const wholeCents = (value: unknown): number => Math.round(Number(value) * 100);

test("the books of a year come to the same cells in a call and in Calc, and its own SUMIFS of JOBCOST to the same cents", () => {
  const [moves] = fc.sample(randomYear(JOBS), { numRuns: 1, seed: 29 });
  if (moves === undefined) throw new Error("no year");
  const typed = moveCells(moves);
  const range = `$Moves.A1:${cellAddress({ row: typed.length - 1, column: (typed[0]?.length ?? 1) - 1 })}`;
  const called = Object.values(LEDGER).map((declared) => cellsOf(declared, { moves: typed }));
  const places = called.map((rows, index): At => ({
    sheet: NAMES[index] ?? "", row: 0, column: 0, rows: rows.length, columns: rows[0]?.length ?? 0, isArray: true,
  }));
  const sums: At = { sheet: "Sums", row: 0, column: 1, rows: JOBS.length, columns: 1 };
  const steps: readonly Step[] = [
    ["open"],
    ["put", { sheet: "Moves", row: 0, column: 0 }, typed.map((row) => row.map((cell) => (cell === "" ? null : cell)))],
    ...places.map((at): Step => ["enter", at, `=STAIR.${at.sheet}(${range})`]),
    ["put", { sheet: "Sums", row: 0, column: 0 }, JOBS.map((name) => [name])],
    ...JOBS.map((_, row): Step =>
      ["enter", { sheet: "Sums", row, column: 1 }, `=SUMIFS($JOBCOST.F$1:F$400;$JOBCOST.A$1:A$400;A${String(row + 1)})`]),
    ["until", { sheet: "STOCKLEDGER", row: 0, column: 0 }, [[called[0]?.[0]?.[0]]]],
    ["calculate"],
    ...[...places, sums].map((at): Step => ["read", at]),
  ];
  const found = inCalc(folder, installed(folder), steps).slice(-places.length - 1) as readonly (readonly (readonly ShownCell[])[])[];
  for (const [index, name] of NAMES.entries()) expect([name, found[index]]).toEqual([name, called[index]]);
  // Each job's rows of JOBCOST in the call, added.
  const jobCost = called[NAMES.indexOf("JOBCOST")] ?? [];
  expect(found.at(-1)?.map(([sum]) => wholeCents(sum))).toEqual(
    JOBS.map((name) => jobCost.reduce((sum, row) => sum + (row[0] === name ? wholeCents(row[5]) : 0), 0)),
  );
});
