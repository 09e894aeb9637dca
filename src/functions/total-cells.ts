import { VERDICTS } from "../solver/code/check";
import { exact, type Exact } from "../solver/length/exact";
import { type AddedRow, columnTotal, type TotalProblem } from "../solver/notation/column-total";
import { type Problem, problem } from "../solver/problem";
import { type Failed, failed, folded, type Given, type GivenCells, isEmpty, isEmptyOrZero, isFailed } from "./cells";
import { namePlace } from "./name-place";
import { readNumber } from "./read-value";
import { nearest, say, slipOf } from "./say";

/** Columns that say what a row is about. */
const LABELS: readonly string[] = ["step", "label", "item"].map(folded);
const TOTAL = folded("total");
const VERDICT = folded("verdict");

interface Row {
  readonly cells: readonly Given[];
  readonly name: string;
  readonly isTotal: boolean;
}

const isText = (cell: Given): cell is string => typeof cell === "string" && !isEmpty(cell);

/** The rows under the headings, each with the name by which the user knows it; headings said again are none. */
const rowsUnder = (headings: readonly Given[], table: GivenCells, first: number): readonly Row[] => {
  const found = headings.findIndex((cell) => isText(cell) && LABELS.includes(folded(cell)));
  const labels = Math.max(found, 0);
  const isSaidAgain = (cells: readonly Given[]): boolean =>
    cells.every((cell, column) => isEmpty(cell) || (isText(cell) && isText(headings[column] ?? null) && folded(cell) === folded(String(headings[column]))));
  return table.flatMap((cells, index): Row[] => {
    if (index <= first || cells.every(isEmptyOrZero) || isSaidAgain(cells)) return [];
    const label = cells[labels] ?? null;
    const isNamed = !isEmptyOrZero(label) && !isFailed(label);
    return [{ cells, name: isNamed ? `row ${index + 1} (${String(label)})` : `row ${index + 1}`, isTotal: isText(label) && folded(label) === TOTAL }];
  });
};

const added = (rows: readonly Row[], column: number, heading: string): AddedRow[] | Failed => {
  const read: AddedRow[] = [];
  for (const { cells, name, isTotal } of rows) {
    const cell = cells[column] ?? null;
    const value = isEmpty(cell) ? undefined : readNumber(`${heading} in ${name}`, cell, { sign: "any" });
    if (isFailed(value)) return value;
    read.push({ name, isTotal, value: value === undefined ? undefined : exact(value) });
  }
  return read;
};

/** What stands before a colon says the kind: `assumed: would fail` is one of the assumed. */
const kindOf = (text: string): string => text.slice(0, text.includes(":") ? text.indexOf(":") : undefined);

/** Verdicts of a check, and what stands before their colons: any other word would be counted as none. */
const VERDICT_WORDS: readonly string[] = [...new Set(VERDICTS.flatMap((verdict) => [kindOf(verdict), verdict]))];

const reads = (cell: Given, wanted: string): boolean => {
  if (isEmpty(cell) || isFailed(cell)) return false;
  return folded(String(cell)) === wanted || folded(kindOf(String(cell))) === wanted;
};

const counted = (rows: readonly Row[], column: number, heading: string, of: string): number | Failed => {
  const wanted = folded(of);
  if (folded(heading) === VERDICT && !VERDICT_WORDS.some((word) => folded(word) === wanted)) return failed(say.unknown("of", of, nearest(of, VERDICT_WORDS), VERDICT_WORDS));
  const words = new Set<string>();
  let count = 0;
  for (const { cells, name, isTotal } of rows) {
    const bad = cells.find(isFailed);
    if (bad !== undefined) return failed(say.passedOn(`table, ${name}`, bad.held ?? bad.failed), bad.failed);
    const cell = cells[column] ?? null;
    if (isTotal) continue;
    if (reads(cell, wanted)) count += 1;
    else if (!isEmpty(cell)) words.add(String(cell));
  }
  const near = count === 0 ? slipOf(of, [...words]) : undefined;
  return near === undefined ? count : failed(say.unknown("of", of, near, []));
};

/** The sum of a named column of any table, or with `of` how many of its rows read so. Rows called total are left out of both. */
export const totalCells = (table: GivenCells, heading: string, of: string): Exact | number | Failed | Problem<TotalProblem | "no-headings"> => {
  const first = table.findIndex((cells) => !cells.every(isEmptyOrZero));
  const headings = table[first];
  if (headings === undefined || !headings.some(isText)) return problem("no-headings");
  const column = namePlace("heading", headings, heading);
  if (isFailed(column)) return column;
  const rows = rowsUnder(headings, table, first);
  if (of !== "") return counted(rows, column, heading, of);
  const read = added(rows, column, heading);
  return isFailed(read) ? read : columnTotal(heading, read);
};
