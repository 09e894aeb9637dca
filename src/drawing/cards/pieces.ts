import { type CutPiece, cutPieces } from "../../functions/cut-pieces";
import type { CardFacts } from "./card-facts";
import { cutCard } from "./cut-card";

export type { CutPiece } from "../../functions/cut-pieces";

/** The column of exact distances. */
const DISTANCE = 4;

/** The treads of a call of MARKS or the risers of one of RISERMARKS, from what it is given; or the sentence it answers. */
export const pieces = (kind: CutPiece["kind"], given: readonly unknown[]): readonly CutPiece[] | string => cutPieces(kind, given);

/** Whether a result as the sheet shows it has the acts of the pieces, row by row. */
export const isShown = (made: readonly CutPiece[], shown: readonly (readonly string[])[]): boolean => {
  const rows = made.flatMap(({ acts }) => acts.map(({ cells }) => Object.values(cells)));
  const [heading, ...others] = shown;
  const held = heading?.[0] === "step" ? others : shown;
  // Exact distances are numbers, which a sheet may round.
  const words = (row: readonly string[]): string => row.filter((_, place) => place !== DISTANCE).join("\n");
  return rows.length === held.length && rows.every((row, place) => words(row) === words(held[place] ?? []));
};

const ON_A_PAGE = 2;

/** Whose cards they are, of which day, and what stands under every title. */
export type CardsOf = Omit<CardFacts, "card" | "cards">;

/** A card for each of the pieces, numbered in their order. */
export const cutCards = (made: readonly CutPiece[], facts: CardsOf): readonly string[] =>
  made.map((piece, place) => cutCard(piece, { ...facts, card: place + 1, cards: made.length }));

/** The cards as they are printed, page by page. */
export const cardsByPage = (made: readonly CutPiece[], facts: CardsOf): readonly (readonly string[])[] => {
  const cards = cutCards(made, facts);
  return Array.from({ length: Math.ceil(cards.length / ON_A_PAGE) }, (_, place) => cards.slice(place * ON_A_PAGE, (place + 1) * ON_A_PAGE));
};
