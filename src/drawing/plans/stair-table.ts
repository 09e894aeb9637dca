import type { Given, GivenCells } from "../../functions/cells";
import { STAIR_LABELS, type StairLabel } from "../../solver/stair-labels";
import { wordKey } from "../../solver/word-key";
import { words } from "../../solver/words";

/** A label, its value, and the unit beside it. */
const COLUMNS = 3;

const isText = (cell: Given | undefined): cell is string => typeof cell === "string" && cell.trim() !== "";

/** LAYOUT's own heading over the labels belongs to the table. */
const HEADING = "label";

const LABELS = new Set([HEADING].concat(
  Object.entries<StairLabel>(STAIR_LABELS).flatMap(([key, { alsoCalled = [] }]) => [words(key), ...alsoCalled].map(wordKey)),
));

const isLabel = (cell: Given | undefined): boolean => isText(cell) && LABELS.has(wordKey(cell));

/** The stair table that a cell belongs to, out of the cells of a sheet, by its labels; undefined where it belongs to none. */
export const stairTable = (cells: GivenCells, row: number, column: number): GivenCells | undefined => {
  const isHeld = (one: number): boolean => (cells[row]?.[one] ?? null) !== null && cells[row]?.[one] !== "";
  const label = [column, column - 1, ...(isHeld(column - 1) ? [column - 2] : [])].find((one) => isLabel(cells[row]?.[one]));
  if (label === undefined) return undefined;
  const isRow = (place: number): boolean => isText(cells[place]?.[label]);
  let [first, last] = [row, row];
  while (isLabel(cells[first - 1]?.[label])) first -= 1;
  while (isRow(last + 1)) last += 1;
  return Array.from({ length: last - first + 1 }, (_, place) =>
    Array.from({ length: COLUMNS }, (__, over) => cells[first + place]?.[label + over] ?? null));
};
