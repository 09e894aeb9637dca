import type { Block, CellHost, HeldCell, Place } from "./host";

/** A typed table is looked for so far each way. */
const ABOUT = 60;

const isHeld = (cell: HeldCell | undefined): boolean => cell !== undefined && cell.value !== null && cell.value !== "";

/** The cells that a table takes: what its formula spills, or the filled cells about the one given, from its upper left one. */
export const tableBlock = async (place: Place, host: CellHost): Promise<Block> => {
  const [spill] = await host.spills([place]);
  if (spill !== undefined) return spill;
  const from = { row: Math.max(0, place.row - ABOUT), column: Math.max(0, place.column - ABOUT) };
  const size = { rows: place.row - from.row + ABOUT, columns: place.column - from.column + ABOUT };
  const [cells = []] = await host.read([{ sheet: place.sheet, ...from, ...size }]);
  const at = (row: number, column: number): boolean => isHeld(cells[row]?.[column]);
  const [row, column] = [place.row - from.row, place.column - from.column];
  let [top, bottom, left, right] = [row, row, column, column];
  while (at(row, left - 1)) left -= 1;
  while (at(row, right + 1)) right += 1;
  while (at(top - 1, left)) top -= 1;
  while (at(bottom + 1, left)) bottom += 1;
  return { sheet: place.sheet, row: from.row + top, column: from.column + left, rows: bottom - top + 1, columns: right - left + 1 };
};
