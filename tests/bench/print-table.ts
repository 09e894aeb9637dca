/** Rows of cells below a title, the first column to the left and the others to the right. */
export const printTable = (title: string, rows: readonly (readonly string[])[]): void => {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  console.log(`\n${title}`);
  for (const row of rows)
    console.log(`  ${row.map((cell, column) => (column === 0 ? cell.padEnd(widths[0]!) : cell.padStart(widths[column]!))).join("   ")}`);
};
