import { element } from "../pane/element";
import type { DrawingsHost } from "../pane/host";
import { workbookName } from "./free-name";
import { place } from "./place";
import { savedFile } from "./saved-file";
import { dayOf } from "./workbook-files";

/** Saves drawings as files of the browser and prints them, each on a page of its own under the name of the workbook. */
export const drawingsHost = (name: () => string): DrawingsHost => ({
  save: (title, svg) => {
    const file = `${workbookName(title)}.svg`;
    savedFile(file, `${svg}\n`, "image/svg+xml");
    return `Saved as ${file}.`;
  },
  ...(typeof window.print !== "function" ? {} : {
    print: (drawing) => {
      const job = element(document, "p", `${name()} · ${dayOf(new Date())}`, "job");
      place("tickets").replaceChildren(element(document, "section", [job, drawing], "sheet-page wide"));
      window.print();
    },
  }),
});
