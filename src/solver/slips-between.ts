/** Letters to add, drop or change to make one word of the other; two neighbours that changed places count as `exchange` says. */
export const slipsBetween = <Letter>(one: readonly Letter[], other: readonly Letter[], exchange: 1 | 2): number => {
  let before: number[] = [];
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (const [i, letter] of one.entries()) {
    const next = [i + 1];
    for (const [j, against] of other.entries()) {
      const isExchanged = i > 0 && j > 0 && letter === other[j - 1] && one[i - 1] === against;
      next.push(
        Math.min(
          (row[j] ?? 0) + (letter === against ? 0 : 1), (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1,
          isExchanged ? (before[j - 1] ?? 0) + exchange : Infinity,
        ),
      );
    }
    [before, row] = [row, next];
  }
  return row[other.length] ?? 0;
};
