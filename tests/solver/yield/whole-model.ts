/** A whole-number program: every column from 0 to `most`, every row between its limits, at least cost. */
export interface WholeModel {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

export interface Column {
  readonly cost: number;
  readonly most: number;
  /** Row and rate. */
  readonly entries: readonly (readonly [number, number])[];
}

export interface Row {
  readonly least: number;
  readonly most: number;
}

/** The cheapest values found for a model, and what is proven of them. */
export interface ModelAnswer {
  /** Infinity where none were found, or none exist. */
  readonly cost: number;
  /** No values cost less, or none exist. */
  readonly isProven: boolean;
}

/** Both parts of a job that falls into two. */
export const together = (one: ModelAnswer, other: ModelAnswer): ModelAnswer => ({
  cost: one.cost + other.cost,
  isProven: one.isProven && other.isProven,
});

/** What is wrong with whole values: a row or a column out of its limits. */
export const brokenLimits = ({ columns, rows }: WholeModel, values: readonly number[]): string[] => {
  const sums = rows.map(() => 0);
  const found: string[] = [];
  for (const [index, { most, entries }] of columns.entries()) {
    const value = values[index]!;
    if (value < 0 || value > most) found.push(`column ${index} is ${value}, at most ${most}`);
    for (const [row, rate] of entries) sums[row]! += rate * value;
  }
  for (const [index, { least, most }] of rows.entries()) {
    if (sums[index]! < least || sums[index]! > most) found.push(`row ${index} is ${sums[index]}, from ${least} to ${most}`);
  }
  return found;
};
