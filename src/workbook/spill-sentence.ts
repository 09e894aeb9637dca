import type { IRange, Worksheet } from "@univerjs/core";
import { cellAddress, columnName } from "../sheets/cell-address";

const NAMED = 3;

/** Why a result does not spill: what stands where it would, or the end of the sheet. `isTaken` says whether another result has a cell. */
export const spillSentence = (sheet: Worksheet, block: IRange, isTaken: (row: number, column: number) => boolean): string => {
  const [rows, columns] = [sheet.getRowCount(), sheet.getColumnCount()];
  if (block.endRow >= rows) return `the result needs row ${block.endRow + 1}, the sheet ends at row ${rows}`;
  if (block.endColumn >= columns)
    return `the result needs column ${columnName(block.endColumn)}, the sheet ends at column ${columnName(columns - 1)}`;
  const inTheWay: string[] = [];
  for (let row = block.startRow; row <= block.endRow; row += 1) {
    for (let column = block.startColumn; column <= block.endColumn; column += 1) {
      if (row === block.startRow && column === block.startColumn) continue;
      const cell = sheet.getCellRaw(row, column);
      const isFilled = (cell?.v !== undefined && cell.v !== null && cell.v !== "") || cell?.f || cell?.si || cell?.p;
      if (isFilled || isTaken(row, column)) inTheWay.push(cellAddress({ row, column }));
    }
  }
  const [first = "a cell", ...others] = inTheWay;
  if (others.length === 0) return `the result does not fit: ${first} is in the way; clear it or move one of the two`;
  const named = inTheWay.slice(0, NAMED).join(", ");
  const more = inTheWay.length > NAMED ? ` and ${inTheWay.length - NAMED} more` : "";
  return `the result does not fit: ${named}${more} are in the way; clear them or move the formula`;
};
