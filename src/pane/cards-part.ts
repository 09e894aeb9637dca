import { cardsByPage } from "../drawing/cards/pieces";
import { SAW_CAUTION } from "../functions/caution";
import { button } from "./button";
import { type CardsCell, cardsCell } from "./cards-cell";
import { cardsPage } from "./cards-page";
import { dayOf } from "./day-of";
import { element } from "./element";
import type { DrawingsHost, PaneHost, Place } from "./host";
import { jobOfSheet } from "./job-of-sheet";
import { placeText } from "./place-text";

/** On a card where nothing says whose job it is. */
const BY_HAND = "job ____________";

/** The cards of a cell and whose job they are of. */
export interface ShownCards extends CardsCell {
  readonly job: string;
}

/** The cards of the table at a cell, a sentence where it has none, undefined where it is of no pieces. */
export const cardsAt = async (
  place: Place, { cells, sheets, solve, drawings }: Pick<PaneHost, "cells" | "sheets" | "solve" | "drawings">,
): Promise<ShownCards | string | undefined> => {
  if (cells === undefined || solve === undefined) return undefined;
  const found = await cardsCell(place, cells, solve);
  if (found === undefined || typeof found === "string") return found;
  const { job = () => undefined, withWood } = drawings?.cards ?? {};
  const pieces = withWood?.(found.at, found.pieces) ?? found.pieces;
  const said = job() ?? (sheets === undefined ? undefined : await jobOfSheet(found.at.sheet, cells, sheets));
  return { at: found.at, pieces, job: said ?? BY_HAND };
};

/** What can be done here with the cut cards of a table; where there are none, why. */
export const cardsPart = (
  page: Document, found: ShownCards | string | undefined, { savePage, cards }: DrawingsHost, say: (text: string) => void,
): readonly HTMLElement[] => {
  const print = cards?.print;
  if (found === undefined) return [];
  const says = savePage === undefined && print === undefined ? (cards?.lacks ?? "") : found;
  if (typeof says === "string") return says === "" ? [] : [element(page, "p", says, "quiet")];
  const { at, pieces, job } = says;
  const byPage = (): readonly (readonly string[])[] => cardsByPage(pieces, { job, date: dayOf(new Date()), caution: SAW_CAUTION });
  const title = `${placeText(at)} cut cards`;
  return [element(page, "p", [
    ...(savePage === undefined ? [] : [button(page, "Save cut cards as web page", () => say(savePage(title, cardsPage(title, byPage()))))]),
    ...(print === undefined ? [] : [button(page, "Print cut cards", () => print(byPage()))]),
  ], "actions")];
};
