import { type Answer, type Failed, failed, folded, type Given, type GivenCells, isEmpty, isFailed } from "./cells";
import { nearest, say, shown } from "./say";

/** Whether a cell holds these folded letters. */
const matches = (cell: Given, letters: string): boolean => !isFailed(cell) && !isEmpty(cell) && folded(String(cell)) === letters;

const missed = (name: string, word: string, known: readonly Given[]): Failed => {
  const names = known.flatMap((cell) => (isEmpty(cell) || isFailed(cell) ? [] : [String(cell)]));
  return failed(say.unknown(name, word, nearest(word, names), []), "#N/A");
};

/** The cell in the row of `label` (first column) and the column of `heading` (first row; without one, the second column). */
export const pickCell = (table: GivenCells, label: string, heading: string): Answer => {
  const letters = folded(label);
  const row = table.find(([first]) => matches(first ?? null, letters));
  if (row === undefined) return missed("label", label, table.map(([first]) => first ?? null));
  const headings = table[0] ?? [];
  const column = heading === "" ? 1 : headings.findIndex((cell) => matches(cell, folded(heading)));
  if (column < 0) return missed("heading", heading, headings);
  const cell = row[column] ?? null;
  if (cell === null) return failed(`table: the row "${label}" has nothing in ${heading === "" ? "its second column" : `"${heading}"`}, got ${shown(cell)}`, "#N/A");
  return cell;
};
