import type { Solve } from "../pane/answer";
import { type FormulaTree, formulaTree } from "../pane/formula/formula-tree";
import { workedArgument } from "../pane/formula/worked-argument";
import type { WorkedRows } from "../pane/formula/worked-out";
import { cellAddress } from "../sheets/cell-address";
import type { Measuring } from "../sheets/ticket-tape";
import type { CellValue, Workbook } from "../workbook/workbook";

/** Divisions of a tape where the formula gives none: those the functions take. */
const DIVISIONS: Readonly<Record<Measuring["unit"], number>> = { in: 16, mm: 1 };

const rowsOf = (rows: readonly (readonly CellValue[])[]): WorkedRows =>
  rows.map((row) => row.map((cell) => (typeof cell === "object" && cell !== null ? { code: cell.error, message: "" } : cell)));

/** What the fit in a cell was measured in, by the arguments of its formula; undefined where only the sheet can work them out. */
export const measuredIn = (
  book: Pick<Workbook, "value" | "spill">,
  sheet: string,
  formula: string,
  solve: Solve,
): Measuring | undefined => {
  const cellsOf = (part: FormulaTree): WorkedRows | undefined => {
    if (part.kind !== "cells") return undefined;
    const own = part.sheet ?? sheet;
    if (part.isSpill) return rowsOf(book.spill(own, cellAddress(part.from)));
    const rows = Array.from({ length: part.to.row - part.from.row + 1 }, (_, down) =>
      Array.from({ length: part.to.column - part.from.column + 1 }, (__, right) =>
        book.value(own, cellAddress({ row: part.from.row + down, column: part.from.column + right })),
      ),
    );
    return rowsOf(rows);
  };
  const tree = formulaTree(formula);
  const [unit, divisions] = ["unit", "tape"].map((name) => workedArgument(tree, name, cellsOf, solve));
  const read = unit === null || unit === "" ? "in" : typeof unit === "string" ? unit.trim().toLowerCase() : undefined;
  if ((read !== "in" && read !== "mm") || divisions === undefined) return undefined;
  return { unit: read, divisions: typeof divisions === "number" && divisions > 0 ? divisions : DIVISIONS[read] };
};
