import { wordKey } from "../../solver/word-key";
import { words } from "../../solver/words";
import type { Unit } from "../../solver/length/length";
import { cellAddress, cellPlace } from "../cell-address";
import type { SheetData } from "../sheet-data";

/** What stands over the treads of Fit, the unit behind it. */
export const TREADS_TITLE = "Treads as taped, ";
const TITLE = new RegExp(`^${TREADS_TITLE}(in|mm)$`, "i");

type Part = "treads" | "risers";

/** The functions that read each table, and the headings by which it is known. */
const READ_BY: Readonly<Record<Part, { readonly calls: RegExp; readonly headings: readonly string[] }>> = {
  treads: { calls: /STAIR\.(?:TREADFIT|MARKS)\(/i, headings: ["step", "back"] },
  risers: { calls: /STAIR\.(?:RISERFIT|RISERMARKS)\(/i, headings: ["step", "top"] },
};

const RANGE = /"(?:[^"]|"")*"|(!?)\$?([A-Z]{1,3})\$?(\d+):\$?([A-Z]{1,3})\$?(\d+)/gi;

/** A table of readings on a sheet: the columns of its headings, and the rows under them that the fit reads. All counted from 0. */
export interface TapedTable {
  readonly columns: ReadonlyMap<string, number>;
  readonly firstRow: number;
  readonly lastRow: number;
}

export interface TapedTables {
  readonly unit: Unit | undefined;
  readonly tables: Readonly<Partial<Record<Part, TapedTable>>>;
}

/** The column of a heading as the table of the function has it, such as `secondDiagonal`. */
export const columnUnder = ({ columns }: TapedTable, heading: string): number | undefined => columns.get(wordKey(words(heading)));

/** The ranges of its own sheet that a formula reads. */
const rangesOf = (formula: string): readonly { readonly from: string; readonly to: string }[] =>
  [...formula.matchAll(RANGE)].flatMap(([, other, fromColumn, fromRow, toColumn, toRow]) =>
    other === "!" || fromColumn === undefined || toColumn === undefined
      ? []
      : [{ from: `${fromColumn}${fromRow}`, to: `${toColumn}${toRow}` }]);

/** The table in a range, where its first row has the headings. */
const tableIn = ({ cells }: SheetData, from: string, to: string, headings: readonly string[]): TapedTable | undefined => {
  const [first, last] = [cellPlace(from), cellPlace(to)];
  const columns = new Map<string, number>();
  for (let { column } = first; column <= last.column; column += 1) {
    const heading = cells[cellAddress({ row: first.row, column })]?.value;
    if (typeof heading === "string" && !columns.has(wordKey(heading))) columns.set(wordKey(heading), column);
  }
  return headings.every((heading) => columns.has(wordKey(heading)))
    ? { columns, firstRow: first.row + 1, lastRow: last.row }
    : undefined;
};

const tableOf = (sheet: SheetData, { calls, headings }: (typeof READ_BY)[Part]): TapedTable | undefined => {
  for (const { formula } of Object.values(sheet.cells)) {
    if (formula === undefined || !calls.test(formula)) continue;
    for (const { from, to } of rangesOf(formula)) {
      const table = tableIn(sheet, from, to, headings);
      if (table !== undefined) return table;
    }
  }
  return undefined;
};

/**
 * The tables of readings on a sheet, wherever a person has moved them: what its fits read and is headed so. Undefined for a sheet without
 * any.
 */
export const tapedTables = (sheet: SheetData): TapedTables | undefined => {
  const [treads, risers] = [tableOf(sheet, READ_BY.treads), tableOf(sheet, READ_BY.risers)];
  if (treads === undefined && risers === undefined) return undefined;
  const titles = Object.values(sheet.cells).flatMap(({ value }) => (typeof value === "string" ? (TITLE.exec(value)?.[1] ?? []) : []));
  const unit = titles[0]?.toLowerCase();
  return {
    unit: unit === "in" || unit === "mm" ? unit : undefined,
    tables: { ...(treads === undefined ? {} : { treads }), ...(risers === undefined ? {} : { risers }) },
  };
};
