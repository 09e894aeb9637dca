import type { CutPiece } from "../drawing/cards/pieces";
import type { Solve } from "../pane/answer";
import type { FormulaTree } from "../pane/formula/formula-tree";
import type { MarksCall } from "../pane/formula/marks-call";
import { shownPieces } from "../pane/formula/shown-pieces";
import type { WorkedCell, WorkedRows } from "../pane/formula/worked-out";
import { cellAddress } from "../sheets/cell-address";
import type { Workbook } from "../workbook/workbook";

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

/** The pieces of a call of MARKS or RISERMARKS at a cell, or a sentence why they cannot be drawn. */
export const cutPiecesAt = (
  book: Book, sheet: string, address: string, call: MarksCall, solve: Solve,
): readonly CutPiece[] | string =>
  shownPieces({
    call, where: `${sheet} ${address}`, cellsOf: cellsOn(book, sheet), shown: book.spill(sheet, address), instead: "print batch pages",
  }, solve);
