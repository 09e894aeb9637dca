import { marked } from "marked";
import { htmlPage } from "./page";

// Pages of ours lie beside each other under one name, as Markdown and as HTML.
const OWN_LINK = /(<a href="[\w-]+)[.]md(?=["#])/g;

const STYLES = ["reference.css", "document.css"];

/** A page written in Markdown as a page in our own style; its title is its first heading. */
export const documentPage = (markdown: string): string => {
  const title = /^# (.+)$/m.exec(markdown)?.[1] ?? "Treadsheet";
  return htmlPage(title, marked.parse(markdown, { async: false }).trim().replace(OWN_LINK, "$1.html"), STYLES);
};
