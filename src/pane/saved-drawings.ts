import type { DrawingsHost } from "./host";
import { savedFile } from "./saved-file";

/** What no file may be called by. */
const FORBIDDEN = /[\\/:*?"<>|]+/g;

const fileName = (name: string, ending: string): string => `${name.replace(FORBIDDEN, " ").trim()}.${ending}`;

const handed = (file: string): string =>
  `Handed over as ${file}. If your Excel saves no files from its pane, place the drawing as a picture and print the sheet.`;

/** Saves drawings where the host's window hands files to the computer, which it does not say itself. */
export const savedDrawings: Required<Pick<DrawingsHost, "save" | "savePage">> = {
  save: (name, svg) => {
    const file = fileName(name, "svg");
    savedFile(file, `${svg}\n`, "image/svg+xml");
    return handed(file);
  },
  savePage: (name, html) => {
    const file = fileName(name, "html");
    savedFile(file, html, "text/html");
    return handed(file);
  },
};
