import { lengthOf, type Unit } from "../solver/length/length";
import { isProblem, type Problem } from "../solver/problem";
import type { Failed } from "./cells";
import { type BadRow, isBadRow } from "./read-table";

/** A row that failed in the solver, its facts, all of them readings, as lengths: a sentence then says them as the tape does. */
const saidAsLengths = <Result extends object>(result: Result, unit: Unit): Result => {
  const { bad } = result as { readonly bad?: Problem };
  if (!isProblem(bad)) return result;
  const details = Object.fromEntries(Object.entries(bad.details).map(([name, fact]) => [name, typeof fact === "number" ? lengthOf(fact, unit) : fact]));
  return { ...result, bad: { ...bad, details } };
};

/** Fits the good rows together and puts each bad one back in its place, with its error. */
export const besideBadRows = <Row extends object, Result extends object>(
  rows: readonly (Row | BadRow)[], unit: Unit, solve: (good: readonly Row[]) => readonly Result[],
): readonly (Result | { readonly step: string | number; readonly bad: Failed })[] => {
  const results = solve(rows.filter((row): row is Row => !isBadRow(row))).values();
  return rows.map((row) => (isBadRow(row) ? { step: row.label, bad: row.bad } : saidAsLengths(results.next().value as Result, unit)));
};
