import { element } from "../pane/element";
import type { DrawingsHost } from "../pane/host";
import type { WorkbookData } from "../workbook/workbook-data";
import { workbookName } from "./free-name";
import { isInvented } from "./is-invented";
import { place } from "./place";
import { savedFile } from "./saved-file";
import { dayOf } from "./workbook-files";

const INVENTED = "The demo's job, people and prices are invented.";

/** Saves drawings as files of the browser and prints them, each on a page of its own under the name of the workbook. */
export const drawingsHost = (name: () => string, data: () => WorkbookData): DrawingsHost => ({
  save: (title, svg) => {
    const file = `${workbookName(title)}.svg`;
    savedFile(file, `${svg}\n`, "image/svg+xml");
    return `Saved as ${file}.`;
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
      const demo = isInvented(data()) ? [element(document, "p", INVENTED, "demo")] : [];
      place("tickets").replaceChildren(element(document, "section", [job, drawing, ...demo], "sheet-page wide"));
      window.print();
    },
  }),
});
