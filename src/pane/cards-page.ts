import { htmlPage } from "./html-page";

/** Two cards are as high as a Letter page and as wide as A4, with nothing over them. */
const STYLE =
  "@page { size: portrait; margin: 0 } body { margin: 0; color: #000; background: #fff } " +
  "section { width: 210mm; margin: 0 auto; break-inside: avoid } section + section { break-before: page } " +
  "svg { display: block; box-sizing: border-box } svg + svg { border-top: 0.2mm dashed #000 } " +
  "@media screen { section { margin-bottom: 8mm } }";

/** Cut cards that open in any browser and print there, page by page. */
export const cardsPage = (title: string, pages: readonly (readonly string[])[]): string =>
  htmlPage(title, STYLE, pages.map((cards) => `<section>${cards.join("")}</section>`));
