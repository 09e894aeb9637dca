import { element } from "../pane/element";
import { type CutPiece, cutCards } from "../drawing/cards/pieces";

const ON_A_PAGE = 2;

/** Whose cards they are, of which day, and what stands under every title. */
export interface CardsOf {
  readonly job: string;
  readonly date: string;
  readonly caution: string;
}

const drawn = (page: Document, svg: string): Node =>
  page.importNode(new DOMParser().parseFromString(svg, "image/svg+xml").documentElement, true);

/** Cut cards for the printer, two to a page. */
export const cardPages = (page: Document, pieces: readonly CutPiece[], of: CardsOf): readonly HTMLElement[] => {
  const cards = cutCards(pieces, of);
  return Array.from({ length: Math.ceil(cards.length / ON_A_PAGE) }, (_, place) =>
    element(page, "section", cards.slice(place * ON_A_PAGE, (place + 1) * ON_A_PAGE).map((svg) => drawn(page, svg)), "cut-cards"),
  );
};
