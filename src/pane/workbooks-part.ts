import { type FileForm, readyFileName, type ReadyWorkbook, readyWorkbooks } from "../sheets/ready-workbooks";
import { element } from "./element";
import type { WorkbooksHost } from "./host";

const FORMS: Readonly<Record<FileForm, string>> = { formulas: "Excel, with formulas", values: "Excel, values for anyone" };
const EVERY_FORM = ["formulas", "values"] as const;

const button = (page: Document, words: string, of: string, act: () => void): HTMLElement => {
  const made = element(page, "button", words);
  made.type = "button";
  made.setAttribute("aria-label", `${of}: ${words}`);
  made.addEventListener("click", act);
  return made;
};

/** A file beside the pane, for a browser to save: not every host lets a pane save one (github.com/OfficeDev/office-js/issues/2700). */
const link = (page: Document, address: string, words: string, of: string): HTMLElement => {
  const made = element(page, "a", words);
  made.href = address;
  made.target = "_blank";
  made.rel = "noopener";
  made.setAttribute("aria-label", `${of}: ${words}`);
  return made;
};

const ABOUT =
  "A whole job as a file for your own spreadsheet. With formulas it needs the add-in wherever it is opened; the values are for anyone.";
const byBrowser = (page: Document): string =>
  ` A link opens the browser, which saves the file. Where none does, open ${new URL(".", page.baseURI).href} in a browser: Open …, Ready ` +
  "workbooks.";

const ways = (page: Document, ready: ReadyWorkbook, host: WorkbooksHost, act: (work: () => Promise<string>) => void) =>
  "folder" in host
    ? EVERY_FORM.map((form) => link(page, host.folder + readyFileName(ready, form), FORMS[form], ready.title))
    : [
        button(page, "Open here", ready.title, () => act(() => host.open(ready))),
        ...EVERY_FORM.map((form) => button(page, FORMS[form], ready.title, () => act(() => host.save(ready, form)))),
      ];

/** The ready workbooks: each with what it is, and the ways to have it that the host knows. */
export const workbooksPart = (
  page: Document, host: WorkbooksHost, act: (work: () => Promise<string>) => void,
): readonly HTMLElement[] => [
  element(page, "h2", "Ready workbooks"),
  element(page, "p", "folder" in host ? ABOUT + byBrowser(page) : ABOUT, "quiet"),
  element(page, "ul", readyWorkbooks.map((ready) =>
    element(page, "li", [
      element(page, "h3", ready.title),
      element(page, "p", ready.says),
      element(page, "p", ways(page, ready, host, act).flatMap((way, place) => (place === 0 ? [way] : [" ", way])), "ways"),
    ])), "ready"),
];
