import { element } from "../pane/element";
import { workbookName } from "./free-name";
import { pageMarks } from "./page-marks";
import { savedFile } from "./saved-file";

/** The rules of the style sheet for what is printed, as text. */
const styleText = (): string => {
  const link = document.querySelector<HTMLLinkElement>("#print-style");
  return [...(link?.sheet?.cssRules ?? [])].map(({ cssText }) => cssText).join("\n");
};

/** Saves what would be printed as a page of its own, which opens and prints anywhere; answers its name. */
export const printedPage = (title: string, sections: readonly HTMLElement[]): string => {
  const name = `${workbookName(title)}.html`;
  const page = document.implementation.createHTMLDocument(title);
  const charset = element(page, "meta");
  charset.setAttribute("charset", "utf-8");
  page.documentElement.lang = "en";
  page.head.prepend(charset);
  page.head.append(element(page, "style", `${styleText()}\n${pageMarks(title)}`));
  page.body.append(...sections.map((section) => page.importNode(section, true)));
  savedFile(name, `<!doctype html>\n${page.documentElement.outerHTML}\n`, "text/html");
  return name;
};
