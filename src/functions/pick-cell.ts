import { type Answer, failed, type GivenCells, givenFor, isFailed } from "./cells";
import { namePlace } from "./name-place";

/** The cell in the row of `label` (first column) and the column of `heading` (first row; without one, the second column). */
export const pickCell = (table: GivenCells, label: string, heading: string): Answer => {
  const place = namePlace("label", table.map(([first]) => first ?? null), label);
  if (isFailed(place)) return place;
  const column = heading === "" ? 1 : namePlace("heading", table[0] ?? [], heading);
  if (isFailed(column)) return column;
  const cell = table[place]?.[column] ?? null;
  const where = heading === "" ? "its second column" : `"${heading}"`;
  if (cell === null) return failed(`table: the row "${label}" has nothing in ${where}; fill that cell, or pick another`, "#N/A");
  return isFailed(cell) ? givenFor(`table: the row "${label}", ${where}`, cell) : cell;
};
