import { cellPlace } from "../../sheets/cell-address";
import type { CellBlock } from "../../sheets/cell-blocks";
import { COLUMNS, ROWS } from "../formula/formula-tokens";

const ADDRESS = /^\$?[A-Z]{1,3}\$?[1-9]\d{0,6}$/i;

/** Cells as a file writes them, A1 or A1:C2, whichever corner comes first; undefined for anything else. */
export const fileBlock = (text: string): CellBlock | undefined => {
  const corners = text.split(":");
  const [from = "", to = from] = corners;
  if (corners.length > 2 || !ADDRESS.test(from) || !ADDRESS.test(to)) return undefined;
  const [one, other] = [cellPlace(from), cellPlace(to)];
  if (Math.max(one.row, other.row) >= ROWS || Math.max(one.column, other.column) >= COLUMNS) return undefined;
  return {
    row: Math.min(one.row, other.row),
    column: Math.min(one.column, other.column),
    rows: Math.abs(one.row - other.row) + 1,
    columns: Math.abs(one.column - other.column) + 1,
  };
};

/** A list of blocks, as a rule or a validation has one (ST_Sqref). */
export const fileBlocks = (text: string): readonly CellBlock[] =>
  text.split(/\s+/).flatMap((one) => {
    const block = one === "" ? undefined : fileBlock(one);
    return block === undefined ? [] : [block];
  });

/** As much of a block as is within so many rows and columns; undefined where nothing is. */
export const within = (block: CellBlock, rows: number, columns: number): CellBlock | undefined =>
  block.row >= rows || block.column >= columns
    ? undefined
    : { ...block, rows: Math.min(block.rows, rows - block.row), columns: Math.min(block.columns, columns - block.column) };
