import { Exact } from "../length/exact";
import { type Problem, problem } from "../problem";

/** A row of a table with what stands in the column that is added; a `total` row of ours is no item, it only says what its rows come to. */
export interface AddedRow {
  /** As the user knows it: row 7 (oak blank 42). */
  readonly name: string;
  readonly isTotal: boolean;
  readonly value: Exact | undefined;
}

export type TotalProblem = "nothing-to-add" | "missing-in-row" | "rows-do-not-add";

/** Numbers that went through cells agree to this share of what was added. */
const DUST = new Exact("1e-9");

/** The sum of a column in exact decimals. A row without a number, and a `total` row that says another sum of the rows above it, are named. */
export const columnTotal = (heading: string, rows: readonly AddedRow[]): Exact | Problem<TotalProblem> => {
  let total = new Exact(0);
  let sinceTotal = new Exact(0);
  let size = new Exact(0);
  let added = 0;
  for (const { name, isTotal, value } of rows) {
    if (!isTotal && value === undefined) return problem("missing-in-row", { heading, row: name });
    if (isTotal) {
      if (value !== undefined && value.minus(sinceTotal).abs().gt(size.times(DUST))) {
        return problem("rows-do-not-add", { heading, row: name, sum: sinceTotal.toString(), total: value.toString() });
      }
      [sinceTotal, size] = [new Exact(0), new Exact(0)];
    } else if (value !== undefined) {
      added += 1;
      total = total.plus(value);
      sinceTotal = sinceTotal.plus(value);
      size = size.plus(value.abs());
    }
  }
  return added === 0 ? problem("nothing-to-add", { heading }) : total;
};
