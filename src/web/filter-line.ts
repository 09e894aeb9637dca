import { element } from "../pane/element";
import { filterCaution, filterSentence } from "../workbook/filter-sentence";
import { onceSoon } from "../workbook/page/once-soon";
import type { SheetPage } from "../workbook/page/sheet-page";
import { place } from "./place";

const rowOf = (address: string): number => Number(address.replace(/^[A-Z]+/, ""));

/** The line under the sheet while rows of it are filtered: how many are shown, why, what sums count; and the buttons that end it. */
export const filterLine = (book: SheetPage): void => {
  const line = place("filtered");
  const button = (words: string, act: (sheet: string) => void): HTMLButtonElement => {
    const made = element(document, "button", words);
    made.type = "button";
    made.addEventListener("click", () => {
      const cell = book.selected();
      if (cell === undefined) return;
      act(cell.sheet);
      // Keys go to the sheet again.
      void book.select(cell.sheet, cell.address);
    });
    return made;
  };
  const says = element(document, "p", "");
  const again = button("Apply again", (sheet) => book.filterAgain(sheet));
  line.append(says, again, button("Show all", (sheet) => book.showAll(sheet)));

  const show = (): void => {
    const cell = book.selected();
    const filtered = cell && book.filtered(cell.sheet);
    line.hidden = filtered === undefined;
    if (cell === undefined || filtered === undefined) return;
    const hidden = filtered.hides.includes(rowOf(cell.address)) ? ` ${cell.address}, selected, is in a hidden row.` : "";
    const text = `${filterSentence(filtered)} ${filterCaution(filtered)}${hidden}`;
    if (says.textContent !== text) says.textContent = text;
    again.hidden = filtered.changed === 0;
  };
  // Once for all that comes with one step.
  const showSoon = onceSoon(show);
  book.onSelection(showSoon);
  book.onChange(showSoon);
};
