import { cellAddress, type CellPlace } from "./cell-address";

/** Cells side by side and under one another. */
export interface CellBlock extends CellPlace {
  readonly rows: number;
  readonly columns: number;
}

const inOrder = (one: CellPlace, other: CellPlace): number => one.row - other.row || one.column - other.column;

/** Cells as few blocks: stretches of each row, and equal ones of rows under one another together. */
export const cellBlocks = (cells: readonly CellPlace[]): readonly CellBlock[] => {
  const stretches: CellBlock[] = [];
  for (const { row, column } of [...cells].sort(inOrder)) {
    const last = stretches[stretches.length - 1];
    if (last?.row === row && last.column + last.columns === column)
      stretches[stretches.length - 1] = { ...last, columns: last.columns + 1 };
    else stretches.push({ row, column, rows: 1, columns: 1 });
  }
  const blocks = new Map<string, CellBlock>();
  const done: CellBlock[] = [];
  for (const stretch of stretches) {
    const key = `${stretch.column} ${stretch.columns}`;
    const above = blocks.get(key);
    if (above !== undefined && above.row + above.rows === stretch.row) blocks.set(key, { ...above, rows: above.rows + 1 });
    else {
      if (above !== undefined) done.push(above);
      blocks.set(key, stretch);
    }
  }
  return [...done, ...blocks.values()].sort(inOrder);
};

/** A block as it is written: A1:C2, or A1 for one cell. */
export const blockAddress = ({ row, column, rows, columns }: CellBlock): string => {
  const [from, to] = [cellAddress({ row, column }), cellAddress({ row: row + rows - 1, column: column + columns - 1 })];
  return from === to ? from : `${from}:${to}`;
};
