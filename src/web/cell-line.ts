import type { SelectedCell, SheetPage } from "../workbook/page/sheet-page";
import { place } from "./place";

/** The line over the sheet: which cell is selected, its formula, and what is wrong with it. */
export const cellLine = (book: SheetPage): void => {
  const line = place("cell");
  const show = (cell: SelectedCell | undefined): void => {
    const text =
      cell === undefined ? "" : [`${cell.sheet} ${cell.address}`, cell.formula ?? "", cell.error ?? ""].filter(Boolean).join("   ");
    if (line.textContent !== text) line.textContent = text;
    line.className = cell?.error === undefined ? "" : "wrong";
  };
  book.onSelection(show);
};
