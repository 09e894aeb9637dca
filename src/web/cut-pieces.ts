import { type CutPiece, isShown, pieces } from "../drawing/cards/pieces";
import type { Solve } from "../pane/answer";
import type { FormulaTree } from "../pane/formula/formula-tree";
import { workedArguments } from "../pane/formula/worked-arguments";
import type { WorkedCell, WorkedRows } from "../pane/formula/worked-out";
import { cellAddress } from "../sheets/cell-address";
import type { Workbook } from "../workbook/workbook";
import type { MarksCall } from "./marks-call";

type Book = Pick<Workbook, "value" | "spill" | "errorMessage">;

/** The cells a part of a formula on a sheet names, as they stand. */
const cellsOn = (book: Book, own: string) => (part: FormulaTree): WorkedRows | undefined => {
  if (part.kind !== "cells") return undefined;
  const sheet = part.sheet ?? own;
  const { from, to, isSpill } = part;
  const [rows, columns] = isSpill
    ? [book.spill(sheet, cellAddress(from)).length, book.spill(sheet, cellAddress(from))[0]?.length ?? 0]
    : [to.row - from.row + 1, to.column - from.column + 1];
  return Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (__, right): WorkedCell => {
      const address = cellAddress({ row: from.row + down, column: from.column + right });
      const value = book.value(sheet, address);
      if (typeof value !== "object" || value === null) return value ?? null;
      return { code: value.error, message: book.errorMessage(sheet, address) ?? "" };
    }),
  );
};

const textOf = (cell: unknown): string => (cell === null || cell === undefined || typeof cell === "object" ? "" : String(cell));

/** The pieces of a call of MARKS or RISERMARKS at a cell, or a sentence why they cannot be drawn. */
export const cutPiecesAt = (
  book: Book, sheet: string, address: string, { pieces: kind, formula }: MarksCall, solve: Solve,
): readonly CutPiece[] | string => {
  const name = kind === "treads" ? "MARKS" : "RISERMARKS";
  const none = `No cards of ${name} at ${sheet} ${address}`;
  const given = workedArguments(formula, cellsOn(book, sheet), solve);
  if ("notKnown" in given) {
    return (
      `${none}: ${given.notKnown} cannot be worked out here. ` +
      "Give the call cells in its place, or print batch pages."
    );
  }
  const made = pieces(kind === "treads" ? "tread" : "riser", given);
  if (typeof made === "string") return `${none}: ${made}.`;
  const shown = book.spill(sheet, address).map((row) => row.map(textOf));
  return isShown(made, shown)
    ? made
    : `${none}: what the sheet shows is not what its readings give now. Recalculate, or print batch pages.`;
};
