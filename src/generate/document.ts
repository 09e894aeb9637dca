import { basename } from "node:path";
import { Marked } from "marked";
import { plainHtml } from "./inline-html";
import { htmlPage } from "./page";

const OWN_LINK = /(?<=<a href=")(?:[.][.]\/)?[\w-]+[.]md(?=["#])/g;

/** What a document in Markdown is called as a page; all pages lie beside each other. */
export const pageName = (document: string): string => `${basename(document, ".md").toLowerCase()}.html`;

const markdownReader = new Marked({ renderer: { codespan: ({ text }) => `<code>${plainHtml(text)}</code>` } });

// A table wider than the screen is moved by itself, without the page.
const sideways = (html: string): string =>
  html.replaceAll("<table>", '<div class="sideways"><table>').replaceAll("</table>", "</table></div>");

const STYLES = ["reference.css", "document.css"];

/** A page written in Markdown as a page in our own style; its title is its first heading. */
export const documentPage = (markdown: string): string => {
  const title = /^# (.+)$/m.exec(markdown)?.[1] ?? "Treadsheet";
  const html = markdownReader.parse(markdown, { async: false }).trim().replace(OWN_LINK, pageName);
  return htmlPage(title, sideways(html), STYLES);
};
