import { VERDICTS } from "../solver/code/check";
import { exact, type Exact } from "../solver/length/exact";
import { type AddedRow, columnTotal, type SumRow, type TotalProblem } from "../solver/notation/column-total";
import { goodsUnit, isSameUnit } from "../solver/goods/goods-unit";
import { isIncluded } from "../solver/goods/meant-nothing";
import { type Problem, problem } from "../solver/problem";
import { isOverQuantity } from "../solver/word-key";
import { type Failed, failed, folded, type Given, type GivenCells, isEmpty, isEmptyOrZero, isFailed } from "./cells";
import { namePlace } from "./name-place";
import { readNumber } from "./read-value";
import { inSight, say, slipOf } from "./say";

/** Columns that say what a row is about. */
const LABELS: readonly string[] = ["step", "label", "item"].map(folded);
/** Rows that are sums of others, as people call them; the more special first. */
const SUM_ROWS: readonly (readonly [key: string, sum: SumRow])[] = [
  ["grandtotal", "grand total"],
  ["subtotal", "subtotal"],
  ["total", "total"],
  ["sum", "total"],
];
const NOTE = folded("note");
const UNIT = folded("unit");
/** Columns of ours that are in the unit that stands in the row. */
const IN_UNITS: readonly string[] = ["quantity", "value", "planned", "bought", "used"].map(folded);
const VERDICT = folded("verdict");

interface Row {
  readonly cells: readonly Given[];
  readonly name: string;
  /** Called a sum and nothing else. */
  readonly isSum: SumRow | undefined;
  /** A sum, or a row whose name may be of one: total treads. */
  readonly mayBeSum: SumRow | undefined;
}

const isText = (cell: Given): cell is string => typeof cell === "string" && !isEmpty(cell);

const sumCalled = (text: string): SumRow | undefined => SUM_ROWS.find(([key]) => folded(text) === key)?.[1];

/** The sum that a name is about: treads subtotal, total treads. A word that only holds the letters is none. */
const sumNamed = (text: string): SumRow | undefined => {
  const called = text.replace(/\b(sub|grand)[\s-]+total/gi, "$1total").split(/[^\p{L}]+/u).filter((word) => word !== "").map(sumCalled);
  return called[0] ?? called[called.length - 1];
};

/** The rows under the headings, each with the name by which the user knows it; repeated headings are not rows. */
const rowsUnder = (headings: readonly Given[], table: GivenCells, first: number): readonly Row[] => {
  const found = headings.findIndex((cell) => isText(cell) && LABELS.includes(folded(cell)));
  const labels = Math.max(found, 0);
  const isSaidAgain = (cells: readonly Given[]): boolean =>
    cells.every(
      (cell, column) =>
        isEmpty(cell) || (isText(cell) && isText(headings[column] ?? null) && folded(cell) === folded(String(headings[column]))),
    );
  return table.flatMap((cells, index): Row[] => {
    if (index <= first || cells.every(isEmptyOrZero) || isSaidAgain(cells)) return [];
    const label = cells[labels] ?? null;
    const isNamed = !isEmptyOrZero(label) && !isFailed(label);
    const texts = cells.filter((cell, column): cell is string => isText(cell) && folded(String(headings[column] ?? "")) !== NOTE);
    const isSum = texts.map(sumCalled).find((sum) => sum !== undefined);
    const mayBeSum = isSum ?? (texts[0] === undefined ? undefined : sumNamed(texts[0]));
    const called = isNamed ? String(label) : mayBeSum === undefined ? undefined : texts[0];
    return [{ cells, name: called === undefined ? `row ${index + 1}` : `row ${index + 1} (${inSight(called)})`, isSum, mayBeSum }];
  });
};

const added = (rows: readonly Row[], column: number, heading: string): AddedRow[] | Failed => {
  const read: AddedRow[] = [];
  for (const { cells, name, mayBeSum } of rows) {
    const cell = cells[column] ?? null;
    const value = isEmpty(cell) ? undefined : isIncluded(cell) ? 0 : readNumber(`${heading} in ${name}`, cell, { sign: "any" });
    if (isFailed(value)) return value;
    read.push({ name, isSum: mayBeSum, value: value === undefined ? undefined : exact(value) });
  }
  return read;
};

/** Units of the rows of a column of ours whose numbers are each in the unit of its row, in the order they first stand in. */
const unitsOf = (rows: readonly Row[], headings: readonly Given[], column: number): readonly string[] => {
  const isHeaded = (cell: Given, keys: readonly string[]): boolean => isText(cell) && keys.includes(folded(cell));
  const unitColumn = headings.findIndex((cell) => isHeaded(cell, [UNIT]));
  const heading = headings[column] ?? null;
  if (unitColumn < 0 || !(isHeaded(heading, IN_UNITS) || (isText(heading) && isOverQuantity(heading)))) return [];
  const found: string[] = [];
  for (const { cells, mayBeSum } of rows) {
    const unit = cells[unitColumn] ?? null;
    if (mayBeSum !== undefined || isEmptyOrZero(cells[column] ?? null) || isFailed(unit)) continue;
    const text = isEmptyOrZero(unit) ? "" : String(unit);
    if (!found.some((other) => (text === "" || other === "" ? text === other : isSameUnit(goodsUnit(text), goodsUnit(other)))))
      found.push(text);
  }
  return found.map((text) => text || "no unit");
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
  if (folded(heading) === VERDICT && !VERDICT_WORDS.some((word) => folded(word) === wanted))
    return failed(say.unknown("of", of, VERDICT_WORDS));
  const words = new Set<string>();
  let count = 0;
  for (const { cells, name, isSum } of rows) {
    const bad = cells.find(isFailed);
    if (bad !== undefined) return failed(say.passedOn(`table, ${name}`, bad.held ?? bad.failed), bad.failed);
    const cell = cells[column] ?? null;
    if (isSum !== undefined && sumCalled(String(cell)) === undefined) continue;
    if (reads(cell, wanted)) count += 1;
    else if (!isEmpty(cell)) words.add(String(cell));
  }
  const near = count === 0 ? slipOf(of, [...words]) : undefined;
  return near === undefined ? count : failed(say.notThere("of", of, [near]));
};

/** The sum of a named column of any table, or with `of` how many of its rows read so. Rows called total are left out of both. */
export const totalCells = (
  table: GivenCells,
  heading: string,
  of: string,
): Exact | number | Failed | Problem<TotalProblem | "no-headings" | "several-units"> => {
  const first = table.findIndex((cells) => !cells.every(isEmptyOrZero));
  const headings = table[first];
  if (headings === undefined || !headings.some(isText)) return problem("no-headings");
  const column = namePlace("heading", headings, heading);
  if (isFailed(column)) return column;
  const rows = rowsUnder(headings, table, first);
  if (of !== "") return counted(rows, column, heading, of);
  const units = unitsOf(rows, headings, column);
  if (units.length > 1) return problem("several-units", { heading, units: units.join(", ") });
  const read = added(rows, column, heading);
  return isFailed(read) ? read : columnTotal(heading, read);
};
