import type { Failed } from "./cells";
import { type BadRow, isBadRow } from "./read-table";

/** Solves the good rows together and puts each bad one back in its place, with its error. */
export const besideBadRows = <Row extends object, Result extends object>(
  rows: readonly (Row | BadRow)[], solve: (good: readonly Row[]) => readonly Result[],
): readonly (Result | { readonly step: string | number; readonly bad: Failed })[] => {
  const results = solve(rows.filter((row): row is Row => !isBadRow(row))).values();
  return rows.map((row) => (isBadRow(row) ? { step: row.label, bad: row.bad } : (results.next().value as Result)));
};
