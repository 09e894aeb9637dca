import type { SelectedCell, SheetPage } from "../workbook/page/sheet-page";
import { place } from "./place";

/** The line under the sheet, where it moves no cell, and only where the cell selected is in error: which one, and what is wrong with it. */
export const cellLine = (book: SheetPage): void => {
  const line = place("cell");
  const show = (cell: SelectedCell | undefined): void => {
    const text = cell?.error === undefined ? "" : `${cell.sheet} ${cell.address}   ${cell.error}`;
    if (line.textContent !== text) line.textContent = text;
    line.hidden = text === "";
  };
  book.onSelection(show);
};
