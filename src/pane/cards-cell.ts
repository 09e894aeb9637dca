import type { CutPiece } from "../drawing/cards/pieces";
import type { Solve } from "./answer";
import { formulaTree } from "./formula/formula-tree";
import { marksCall } from "./formula/marks-call";
import { shownPieces } from "./formula/shown-pieces";
import type { Block, CellHost, Place } from "./host";
import { placeText } from "./place-text";
import { cellsOfFormula, standingFormula, valuesOf } from "./standing-formula";

/** What is to be cut by the marks in a block of cells, a piece a step. */
export interface CardsCell {
  readonly at: Block;
  readonly pieces: readonly CutPiece[];
}

/** The pieces of the MARKS or RISERMARKS a cell belongs to; a sentence where they have no cards, undefined where it belongs to neither. */
export const cardsCell = async (place: Place, host: CellHost, solve: Solve): Promise<CardsCell | string | undefined> => {
  const standing = await standingFormula(place, host);
  const call = standing === undefined ? undefined : marksCall(standing.formula);
  const tree = call === undefined ? undefined : formulaTree(call.formula);
  // One cell is a sentence of what is still to be typed.
  if (standing === undefined || call === undefined || tree === undefined || standing.at.columns < 2) return undefined;
  const { at } = standing;
  const cellsOf = await cellsOfFormula(tree, at.sheet, host);
  const [shown = []] = await host.read([at]);
  const pieces = shownPieces(
    { call, where: placeText(at), cellsOf, shown: valuesOf(shown), instead: "print the sheet" }, solve,
  );
  return typeof pieces === "string" ? pieces : { at, pieces };
};
