import type { IRange } from "@univerjs/core";
import { cellAddress, cellPlace } from "../sheets/cell-address";

/** A block of cells such as A1:C2, or one cell, as the engine writes it. */
export const rangeOf = (block: string): IRange => {
  const [first = "", last = first] = block.split(":");
  const [from, to] = [cellPlace(first), cellPlace(last)];
  return { startRow: from.row, startColumn: from.column, endRow: to.row, endColumn: to.column };
};

/** A range of the engine as a block of cells is written; one cell by its address. */
export const blockOfRange = ({ startRow, startColumn, endRow, endColumn }: IRange): string => {
  const [first, last] = [cellAddress({ row: startRow, column: startColumn }), cellAddress({ row: endRow, column: endColumn })];
  return first === last ? first : `${first}:${last}`;
};
