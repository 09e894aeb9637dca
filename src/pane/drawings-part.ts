import { type Drawing, drawnSays } from "../drawing/plans/drawn-call";
import { button } from "./button";
import { cardsAt, cardsPart } from "./cards-part";
import { drawingsPage } from "./drawings-page";
import { drawnPng } from "./drawn-png";
import { drawnCell } from "./drawn-cell";
import { element } from "./element";
import type { PaneHost, Place } from "./host";
import { messageOf } from "./message-of";
import { placedDrawing } from "./placed-drawing";
import { placeText } from "./place-text";
import type { Tab } from "./tabs";

const NOTHING = `Select a cell of a table to see it drawn. ${drawnSays()}`;

/** A drawing in the page: its text is read as SVG, so that nothing else in it is taken for markup. */
const svgElement = (page: Document, { svg }: Drawing): Node =>
  page.importNode(new DOMParser().parseFromString(svg, "image/svg+xml").documentElement, true);

/** The drawings of the table selected, following the selection while they are looked at. */
export const drawingsTab = (
  page: Document, pane: Pick<PaneHost, "cells" | "sheets" | "solve" | "drawings">, say: (text: string) => void,
): Tab => {
  const name = "Drawings";
  const { cells, solve, drawings: host = {} } = pane;
  if (cells === undefined || solve === undefined) {
    return { name, content: [element(page, "p", "There is no sheet here to draw a table of.", "quiet")] };
  }
  const says = element(page, "p", NOTHING, "quiet");
  says.setAttribute("role", "status");
  const drawn = element(page, "div", [], "drawings-shown");
  const { save, savePage, print, place: put, lacks } = host;
  const refusedTo = (error: unknown): void => say(messageOf(error));
  const placed = async (at: Place, drawings: readonly Drawing[], which: number): Promise<void> => {
    const picture = await placedDrawing(at, drawings, which, cells, (one) => drawnPng(page, one));
    if (put !== undefined) say(await put(picture));
  };
  const figure = (at: Place, drawings: readonly Drawing[], drawing: Drawing, which: number): HTMLElement => {
    const file = `${placeText(at)} ${drawing.name}`;
    return element(page, "figure", [
      element(page, "figcaption", drawing.title),
      svgElement(page, drawing),
      element(page, "p", [
        ...(put === undefined ? [] : [button(page, "Place as picture", () => void placed(at, drawings, which).catch(refusedTo))]),
        ...(save === undefined ? [] : [button(page, "Save SVG", () => say(save(file, drawing.svg)))]),
        ...(print === undefined ? [] : [button(page, "Print", () => print(svgElement(page, drawing)))]),
      ], "actions"),
    ], "drawing");
  };
  /** What is done with all drawings of a table at once, and what cannot be done here. */
  const together = (at: Place, drawings: readonly Drawing[]): readonly HTMLElement[] => [
    ...(lacks === undefined ? [] : [element(page, "p", lacks, "quiet")]),
    ...(savePage === undefined ? [] : [element(page, "p", [
      button(page, "Save as web page", () => say(savePage(`${placeText(at)} drawings`, drawingsPage(placeText(at), drawings)))),
    ], "actions")]),
  ];
  let asked = 0;
  const follow = async (): Promise<void> => {
    // Drawing takes time that nobody has to wait for who looks at another part of the pane.
    if (drawn.closest("[hidden]") !== null) return;
    asked += 1;
    const mine = asked;
    const place = await cells.selected();
    const found = place === undefined ? undefined : await drawnCell(place, cells, solve);
    const cards = place === undefined ? undefined : await cardsAt(place, pane);
    // An answer that comes after another cell was selected is of no use.
    if (mine !== asked) return;
    const isThere = place !== undefined && Array.isArray(found);
    const text = isThere ? `The table at ${placeText(place)}.` : typeof found === "string" ? found : NOTHING;
    if (says.textContent !== text) says.textContent = text;
    const drawings = isThere ? (found as readonly Drawing[]) : [];
    drawn.replaceChildren(
      ...(isThere ? together(place, drawings) : []),
      ...cardsPart(page, cards, host, say),
      ...(isThere ? drawings.map((one, which) => figure(place, drawings, one, which)) : []),
    );
  };
  const refused = (error: unknown): void => void (says.textContent = messageOf(error));
  const ask = (): void => void follow().catch(refused);
  cells.onSelection(ask).catch(refused);
  return { name, content: [says, drawn], shown: ask };
};
