import { type Length, measure, type Unit } from "../../../solver/length/length";
import type { GluedBoard, GlueRow } from "../../../solver/yield/glue-up/glue-up-list";
import type { GlueTerms } from "../../../solver/yield/glue-up/glue-terms";
import { clearStretches } from "../../../solver/yield/tally/clear-stretches";
import { boardsDrawings, type NamedBoards } from "./boards-drawings";
import { clearRooms, isIn } from "./clear-rooms";
import type { CutBoard, DrawnPiece } from "./cut-board";
import { type CutStretch, stretchParts } from "./cut-strips";
import { keptRests, lostAround } from "./kept-rests";
import { flatText, placeText, sizeText } from "./size-text";
import { spoiltOf } from "./spoilt-ranges";

type Terms = Pick<GlueTerms, "kerf" | "trim">;
type Strip = DrawnPiece & { readonly section: number };

const stripOf = (row: GlueRow, unit: Unit): Strip => {
  const of = (length: Length | undefined): number => (length === undefined ? 0 : measure(length, unit));
  const area = { along: of(row.along), across: of(row.across), length: of(row.length), width: of(row.roughWidth) };
  return {
    area, section: row.section ?? 0,
    label: `panel ${row.panel}, strip ${row.strip ?? ""}`,
    size: flatText(area.length, area.width, unit),
    place: placeText(area.along, area.across, unit),
  };
};

const boardOf = ({ name, board, strips: rows }: GluedBoard, { kerf, trim }: Terms, unit: Unit): CutBoard => {
  const [length, width] = [measure(board.length, unit), measure(board.width, unit)];
  const strips = rows.map((row) => stripOf(row, unit));
  const clear = clearStretches(board.length, board.defects, board.clear);
  const parts = clearRooms(board, clear, trim, unit).map((room) => {
    const own = strips.filter(({ area }) => isIn(room, area));
    const sections = [...new Set(own.map(({ section }) => section))];
    const stretch: CutStretch = {
      room, first: "crosscut",
      strips: sections.map((section) => ({ pieces: own.filter((one) => one.section === section).map(({ area }) => area) })),
    };
    return stretchParts(stretch, measure(kerf, unit));
  });
  const names = [board.written, board.grade, board.species].map(String).filter((text) => text !== "");
  return {
    name: String(name).replace(/^board (?=\d+$)/, ""), length, width,
    facts: [flatText(length, width, unit), ...names, "crosscut first"].join(", "),
    pieces: strips.map(({ area, label, size, place }) => ({ area, label, size, place })),
    rests: keptRests(parts.flatMap(({ rests }) => rests), [], unit),
    spoilt: spoiltOf(board, clear, unit),
    lost: lostAround(length, width, measure(trim, unit), measure(board.edge, unit) / 2),
    firstCuts: parts.flatMap(({ firstCuts }) => firstCuts),
  };
};

/** The boards of a glue-up to scale: each with its sections, crosscut first, and the strips ripped from them. */
export const gluedBoardsDrawings = (boards: readonly GluedBoard[], terms: Terms, unit: Unit): readonly NamedBoards[] =>
  boardsDrawings(boards.map((board) => boardOf(board, terms, unit)), {
    title: `Glue-up out of ${boards.length === 1 ? "1 board" : `${boards.length} boards`}`,
    one: "board", several: "boards", listed: "GLUEUP", unit,
    says: "The boards of a glue-up to scale, each with its sections, the crosscuts heavy, and the strips ripped from them.",
    notes: [
      "The dot is the corner measured from: along from the end chalked 0, across from the edge the board is straightened on. Heavy lines " +
        "are crosscuts, made first. A strip is drawn as it is ripped, before its edges are jointed. Between strips and sections lies the " +
        `kerf of ${sizeText(measure(terms.kerf, unit), unit)}. Hatched wide is left over; hatched close are defects, trims and edges.`,
    ],
  });
