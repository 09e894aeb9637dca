/** A square matrix, row by row, in one array. */
export interface SquareMatrix {
  readonly size: number;
  readonly at: Float64Array;
}

export const squareMatrix = (size: number, entry: (row: number, column: number) => number): SquareMatrix => {
  const at = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) at[row * size + column] = entry(row, column);
  }
  return { size, at };
};

/** The lower triangle L with L Lᵀ = `matrix`, which is symmetric and positive definite; what lies above the diagonal is not read. */
export const cholesky = ({ size, at }: SquareMatrix): SquareMatrix => {
  const lower = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let left = at[row * size + column]!;
      for (let k = 0; k < column; k += 1) left -= lower[row * size + k]! * lower[column * size + k]!;
      lower[row * size + column] = row === column ? Math.sqrt(left) : left / lower[column * size + column]!;
    }
  }
  return { size, at: lower };
};

/** x with L x = b. */
export const forward = ({ size, at }: SquareMatrix, right: ArrayLike<number>): Float64Array => {
  const found = new Float64Array(size);
  for (let row = 0; row < size; row += 1) {
    let left = right[row]!;
    for (let k = 0; k < row; k += 1) left -= at[row * size + k]! * found[k]!;
    found[row] = left / at[row * size + row]!;
  }
  return found;
};

/** x with Lᵀ x = b. */
export const backward = ({ size, at }: SquareMatrix, right: ArrayLike<number>): Float64Array => {
  const found = Float64Array.from(right);
  // Row by row, as the triangle is kept: what a row has settled is taken off those above it.
  for (let row = size - 1; row >= 0; row -= 1) {
    const each = (found[row]! /= at[row * size + row]!);
    for (let k = 0; k < row; k += 1) found[k]! -= at[row * size + k]! * each;
  }
  return found;
};

/** Natural logarithm of the determinant of L Lᵀ. */
export const logDeterminant = ({ size, at }: SquareMatrix): number => {
  let sum = 0;
  for (let row = 0; row < size; row += 1) sum += 2 * Math.log(at[row * size + row]!);
  return sum;
};

export const dot = (one: ArrayLike<number>, other: ArrayLike<number>): number => {
  let sum = 0;
  for (let k = 0; k < one.length; k += 1) sum += one[k]! * other[k]!;
  return sum;
};
