import { dayOf } from "../pane/day-of";
import { element } from "../pane/element";
import type { DrawingsHost } from "../pane/host";
import { cellAddress } from "../sheets/cell-address";
import type { Workbook } from "../workbook/workbook";
import { cardPages } from "./card-pages";
import { formulasIn } from "./formulas-in";
import { workbookName } from "./free-name";
import { isInvented } from "./is-invented";
import { place } from "./place";
import { savedFile } from "./saved-file";
import { withWood } from "./wood-of-pieces";

const INVENTED = "The demo's job, people and prices are invented.";

/** Saves drawings as files of the browser and prints them, each on a page of its own under the name of the workbook. */
export const drawingsHost = (name: () => string, book: Pick<Workbook, "data" | "value" | "spill" | "formula">): DrawingsHost => ({
  save: (title, svg) => {
    const file = `${workbookName(title)}.svg`;
    savedFile(file, `${svg}\n`, "image/svg+xml");
    return `Saved as ${file}.`;
  },
  cards: {
    job: () => (isInvented(book.data()) ? `${name()}, invented` : name()),
    withWood: (at, pieces) => {
      const [sheet, address] = [at.sheet, cellAddress(at)];
      return withWood(book, formulasIn(book.data()), { sheet, address, formula: book.formula(sheet, address) ?? "" }, pieces);
    },
    ...(typeof window.print !== "function" ? {} : {
      print: (pages) => {
        place("tickets").replaceChildren(...cardPages(document, pages));
        window.print();
      },
    }),
  },
  ...(typeof window.print !== "function" ? {
    savePage: (title, html) => {
      const file = `${workbookName(title)}.html`;
      savedFile(file, html, "text/html");
      return `Saved as ${file}. Open it to print it.`;
    },
  } : {
    print: (drawing) => {
      const job = element(document, "p", `${name()} · ${dayOf(new Date())}`, "job");
      const demo = isInvented(book.data()) ? [element(document, "p", INVENTED, "demo")] : [];
      place("tickets").replaceChildren(element(document, "section", [job, drawing, ...demo], "sheet-page wide"));
      window.print();
    },
  }),
});
