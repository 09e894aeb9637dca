import { backward, cholesky, dot, forward, logDeterminant, squareMatrix } from "../../../../src/solver/fit/skirt-surface/cholesky";

/** By hand: (2; 6 1; -8 5 3) times its transpose, the textbook case 4 12 -16, 12 37 -43, -16 -43 98. */
const MATRIX = [
  [4, 12, -16],
  [12, 37, -43],
  [-16, -43, 98],
];
const lower = cholesky(squareMatrix(3, (row, column) => MATRIX[row]![column]!));

test("the lower triangle of a textbook matrix", () => {
  expect([...lower.at]).toEqual([2, 0, 0, 6, 1, 0, -8, 5, 3]);
});

test("both triangles solved: L y = b from above, Lᵀ x = y from below", () => {
  // By hand: (1, 2, 3) times the matrix is 4 + 24 - 48, 12 + 74 - 129, -16 - 86 + 294.
  const found = backward(lower, forward(lower, [-20, -43, 192]));
  [1, 2, 3].forEach((wanted, at) => expect(found[at]).toBeCloseTo(wanted, 10));
});

test("the determinant is the square of the diagonal's product", () => {
  // By hand: 2 x 1 x 3 squared.
  expect(Math.exp(logDeterminant(lower))).toBeCloseTo(36, 10);
});

test("a sum of products", () => {
  expect(dot([1, 2, 3], [4, 5, 6])).toBe(32);
});
