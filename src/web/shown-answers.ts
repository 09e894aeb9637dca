import type { ShownAnswer } from "../pane/host";
import { cellAddress, cellPlace } from "../sheets/cell-address";
import type { SheetPage } from "../workbook/page/sheet-page";

/** The answers in the first rows of the sheet shown: each has its name above it and its unit below. */
export const shownAnswers = (book: Pick<SheetPage, "selected" | "data" | "shown">): readonly ShownAnswer[] => {
  const name = book.selected()?.sheet;
  const sheet = book.data().sheets.find((one) => one.name === name);
  if (sheet === undefined) return [];
  return Object.entries(sheet.cells)
    .filter(([, { style, value }]) => style === "name" && value !== undefined)
    .map(([address, { value }]) => ({ place: cellPlace(address), name: String(value) }))
    .sort((one, other) => one.place.column - other.place.column)
    .map(({ place: { row, column }, name: names }) => {
      const below = (rows: number): string => book.shown(sheet.name, cellAddress({ row: row + rows, column }));
      return { name: names, answer: below(1), unit: below(2) };
    });
};
