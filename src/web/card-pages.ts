import { element } from "../pane/element";

const drawn = (page: Document, svg: string): Node =>
  page.importNode(new DOMParser().parseFromString(svg, "image/svg+xml").documentElement, true);

/** Cut cards for the printer, page by page. */
export const cardPages = (page: Document, pages: readonly (readonly string[])[]): readonly HTMLElement[] =>
  pages.map((cards) => element(page, "section", cards.map((svg) => drawn(page, svg)), "cut-cards"));
