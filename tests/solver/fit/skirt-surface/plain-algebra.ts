/** x with A x = b, by elimination with the largest pivot: no triangle, no symmetry and none of the solver's own steps. */
export const solved = (matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] => {
  const rows = matrix.map((row, at) => [...row, right[at]!]);
  const size = rows.length;
  for (let at = 0; at < size; at += 1) {
    const pivot = rows.slice(at).reduce((best, row, place) => (Math.abs(row[at]!) > Math.abs(rows[best]![at]!) ? place + at : best), at);
    [rows[at], rows[pivot]] = [rows[pivot]!, rows[at]!];
    for (let row = 0; row < size; row += 1) {
      if (row === at) continue;
      const factor = rows[row]![at]! / rows[at]![at]!;
      rows[row] = rows[row]!.map((value, column) => value - factor * rows[at]![column]!);
    }
  }
  return rows.map((row, at) => row[size]! / row[at]!);
};

/** Logarithm of the size of a determinant, by the pivots of the same elimination. */
const logSizeOf = (matrix: readonly (readonly number[])[]): number => {
  let rows = matrix.map((row) => [...row]);
  let sum = 0;
  while (rows.length > 0) {
    const pivot = rows.reduce((best, row) => (Math.abs(row[0]!) > Math.abs(best[0]!) ? row : best));
    sum += Math.log(Math.abs(pivot[0]!));
    rows = rows
      .filter((row) => row !== pivot)
      .map((row) => row.slice(1).map((value, at) => value - (row[0]! / pivot[0]!) * pivot[at + 1]!));
  }
  return sum;
};

const product = (one: readonly number[], other: readonly number[]): number => one.reduce((sum, value, at) => sum + value * other[at]!, 0);

/** Least squares with weights, by the one system in which the unknowns and the multipliers of unbiasedness stand together. */
export const augmented = (covariance: readonly (readonly number[])[], design: readonly (readonly number[])[]) => {
  const unknowns = design[0]!.length;
  const system = [
    ...covariance.map((row, at) => [...row, ...design[at]!]),
    ...Array.from({ length: unknowns }, (_, column) => [...design.map((row) => row[column]!), ...Array<number>(unknowns).fill(0)]),
  ];
  const zeros = Array<number>(unknowns).fill(0);
  return {
    logSize: logSizeOf(system),
    /** Weighted sum of squares about the best planes. */
    sum: (lengths: readonly number[]): number => product(lengths, solved(system, [...lengths, ...zeros]).slice(0, lengths.length)),
    /** Best linear unbiased guess of one more length, and its variance. */
    guess: (lengths: readonly number[], shared: readonly number[], own: number, here: readonly number[]) => {
      const weights = solved(system, [...shared, ...here]);
      return {
        value: product(weights.slice(0, lengths.length), lengths),
        variance: own - product(weights, [...shared, ...here]),
      };
    },
  };
};
