import { type CutPiece, isShown, pieces } from "../../drawing/cards/pieces";
import type { Solve } from "../answer";
import type { MarksCall } from "./marks-call";
import { workedArguments } from "./worked-arguments";
import type { CellsOf } from "./worked-out";

/** A call of MARKS or RISERMARKS with where it stands, in words, and what its sheet holds. */
export interface MarksAt {
  readonly call: MarksCall;
  readonly where: string;
  readonly cellsOf: CellsOf;
  /** What the sheet shows of it, row by row. */
  readonly shown: readonly (readonly unknown[])[];
  /** What else there is to do where there are no cards; the end of a sentence. */
  readonly instead: string;
}

const textOf = (cell: unknown): string => (cell === null || cell === undefined || typeof cell === "object" ? "" : String(cell));

/** The pieces of a call of MARKS or RISERMARKS as its sheet shows it, or a sentence why they cannot be drawn. */
export const shownPieces = ({ call, where, cellsOf, shown, instead }: MarksAt, solve: Solve): readonly CutPiece[] | string => {
  const { pieces: kind, formula } = call;
  const none = `No cards of ${kind === "treads" ? "MARKS" : "RISERMARKS"} at ${where}`;
  const given = workedArguments(formula, cellsOf, solve);
  if ("notKnown" in given) {
    return `${none}: ${given.notKnown} cannot be worked out here. Give the call cells in its place, or ${instead}.`;
  }
  const made = pieces(kind === "treads" ? "tread" : "riser", given);
  if (typeof made === "string") return `${none}: ${made}.`;
  return isShown(made, shown.map((row) => row.map(textOf)))
    ? made
    : `${none}: what the sheet shows is not what its readings give now. Recalculate, or ${instead}.`;
};
