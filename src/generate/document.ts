import { Marked } from "marked";
import { plainHtml } from "./inline-html";
import { htmlPage } from "./page";

// Pages of ours lie beside each other under one name, as Markdown and as HTML.
const OWN_LINK = /(<a href="[\w-]+)[.]md(?=["#])/g;

const markdownReader = new Marked({ renderer: { codespan: ({ text }) => `<code>${plainHtml(text)}</code>` } });

// A table wider than the screen is moved by itself, without the page.
const sideways = (html: string): string =>
  html.replaceAll("<table>", '<div class="sideways"><table>').replaceAll("</table>", "</table></div>");

const STYLES = ["reference.css", "document.css"];

/** A page written in Markdown as a page in our own style; its title is its first heading. */
export const documentPage = (markdown: string): string => {
  const title = /^# (.+)$/m.exec(markdown)?.[1] ?? "Treadsheet";
  const html = markdownReader.parse(markdown, { async: false }).trim().replace(OWN_LINK, "$1.html");
  return htmlPage(title, sideways(html), STYLES);
};
