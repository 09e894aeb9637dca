import { Exact } from "../length/exact";
import { type Problem, problem } from "../problem";

/** What a row says the rows above it come to: those since the last such row, since the last total, or all. */
export type SumRow = "subtotal" | "total" | "grand total";

/** A row of a table with what stands in the column that is added; a row that is a sum is no item, it only says what its rows come to. */
export interface AddedRow {
  /** As the user knows it: row 7 (oak blank 42). */
  readonly name: string;
  readonly isSum?: SumRow | undefined;
  readonly value: Exact | undefined;
}

export type TotalProblem = "nothing-to-add" | "missing-in-row" | "rows-do-not-add";

/** Numbers that went through cells agree to this share of what was added. */
const DUST = new Exact("1e-9");
const NOTHING = new Exact(0);

/** The sums that each kind of row may say, the likeliest first. */
const SAYS: Readonly<Record<SumRow, readonly SumRow[]>> = {
  subtotal: ["subtotal", "total"],
  total: ["total", "grand total"],
  "grand total": ["grand total"],
};
/** The sums that begin again after each. */
const ENDS: Readonly<Record<SumRow, readonly SumRow[]>> = {
  subtotal: ["subtotal"],
  total: ["subtotal", "total"],
  "grand total": ["subtotal", "total"],
};

/** The sum of a column in exact decimals. A row without a number, and a sum that is not what the rows above it come to, are named. */
export const columnTotal = (heading: string, rows: readonly AddedRow[]): Exact | Problem<TotalProblem> => {
  const sums: Record<SumRow, Exact> = { subtotal: NOTHING, total: NOTHING, "grand total": NOTHING };
  let size = NOTHING;
  let added = 0;
  for (const { name, isSum, value } of rows) {
    if (isSum !== undefined) {
      const within = size.times(DUST);
      const says = SAYS[isSum];
      if (value !== undefined && !says.some((sum) => value.minus(sums[sum]).abs().lte(within))) {
        return problem("rows-do-not-add", { heading, row: name, sum: sums[says[0] ?? isSum].toString(), total: value.toString() });
      }
      for (const sum of ENDS[isSum]) sums[sum] = NOTHING;
    } else if (value === undefined) {
      return problem("missing-in-row", { heading, row: name });
    } else {
      added += 1;
      for (const sum of SAYS.subtotal.concat("grand total")) sums[sum] = sums[sum].plus(value);
      size = size.plus(value.abs());
    }
  }
  return added === 0 ? problem("nothing-to-add", { heading }) : sums["grand total"];
};
