import { namedBoard } from "../../../functions/ripping";
import { measure } from "../../../solver/length/length";
import type { LaidBoard, LaidPiece } from "../../../solver/yield/ripped/laid-boards";
import type { RippingJob } from "../../../solver/yield/ripped/ripping-job";
import { keptOf } from "../../../solver/yield/ripped/ripping-lists";
import type { RippingPlan } from "../../../solver/yield/ripped/ripping-plan";
import type { Stretch } from "../../../solver/yield/tally/clear-stretches";
import type { TallyBoard } from "../../../solver/yield/tally/tally-board";
import { boardsDrawings, type NamedBoards } from "./boards-drawings";
import { clearRooms, isIn } from "./clear-rooms";
import type { CutBoard, DrawnPiece } from "./cut-board";
import { type CutStretch, stretchParts } from "./cut-strips";
import { keptRests, lostAround } from "./kept-rests";
import { flatText, placeText, sizeText } from "./size-text";
import { spoiltOf } from "./spoilt-ranges";

type Laid = LaidPiece & DrawnPiece;

const pieceOf = (job: RippingJob, laid: LaidPiece): Laid => {
  const { unit } = job;
  const [length, width] = [measure(laid.length, unit), measure(laid.width, unit)];
  const [along, across] = [measure(laid.along, unit), measure(laid.across, unit)];
  return {
    ...laid, area: { along, across, length, width },
    label: String(job.pieces[laid.piece]!.label), size: flatText(length, width, unit), place: placeText(along, across, unit),
  };
};

/** The clear stretches of a board between its trims, each with the strips that lie in it. */
const stretchesOf = (job: RippingJob, board: TallyBoard, clear: readonly Stretch[], laid: readonly Laid[]): CutStretch[] => {
  const { unit } = job;
  return clearRooms(board, clear, job.trim, unit).map((room): CutStretch => {
    const own = laid.filter(({ area }) => isIn(room, area));
    const strips = [...new Set(own.map(({ strip }) => strip))].map((strip) => {
      const pieces = own.filter((one) => one.strip === strip);
      return { pieces: pieces.map(({ area }) => area), leftOver: measure(pieces[0]!.leftOver, unit) };
    });
    return { room, first: own[0]?.first ?? "rip", strips };
  });
};

const firstOf = (stretches: readonly CutStretch[]): string => {
  const ways = [...new Set(stretches.filter(({ strips }) => strips.length > 0).map(({ first }) => first))];
  const [only] = ways;
  return ways.length === 1 && only !== undefined ? `${only} first` : `from 0: ${stretches.map(({ first }) => `${first} first`).join(", ")}`;
};

const boardOf = (job: RippingJob, plan: RippingPlan, laidBoard: LaidBoard): CutBoard => {
  const { unit } = job;
  const { row, clear } = plan.single[laidBoard.board]!;
  const [length, width] = [measure(row.length, unit), measure(row.width, unit)];
  const laid = laidBoard.pieces.map((piece) => pieceOf(job, piece));
  const stretches = stretchesOf(job, row, clear, laid);
  const parts = stretches.map((stretch) => stretchParts(stretch, measure(job.kerf, unit)));
  const kept = keptOf(job, laidBoard).map((one) => ({ length: measure(one.length, unit), width: measure(one.width, unit) }));
  const names = [row.written, row.grade, row.species].map(String).filter((text) => text !== "");
  return {
    name: String(namedBoard(row.label, laidBoard.board)).replace(/^board (?=\d+$)/, ""), length, width,
    facts: [flatText(length, width, unit), ...names, firstOf(stretches)].join(", "),
    pieces: laid.map(({ area, label, size, place }) => ({ area, label, size, place })),
    rests: keptRests(parts.flatMap(({ rests }) => rests), kept, unit),
    spoilt: spoiltOf(row, clear, unit),
    lost: lostAround(length, width, measure(job.trim, unit), measure(row.edge, unit) / 2),
    firstCuts: parts.flatMap(({ firstCuts }) => firstCuts),
  };
};

/** A plan of measured boards to scale: each board with its defects, its pieces, the first cuts and what is left. */
export const tallyDrawings = (job: RippingJob, plan: RippingPlan): readonly NamedBoards[] =>
  boardsDrawings(plan.boards.map((board) => boardOf(job, plan, board)), {
    title: `Cut plan of ${plan.boards.length === 1 ? "1 measured board" : `${plan.boards.length} measured boards`}`,
    one: "board", several: "boards", listed: "TALLYCUTS", unit: job.unit,
    says: "The cut plan of measured boards to scale, each with its defects, its pieces, the first cuts heavy, what is left over hatched.",
    notes: [
      "The dot is the corner measured from: along from the end chalked 0, across from the edge the board is straightened on. Heavy lines " +
        "are the first cuts of a clear stretch: rip is along the grain, crosscut across it. Between pieces lies the kerf of " +
        `${sizeText(measure(job.kerf, job.unit), job.unit)}. Hatched wide is left over; hatched close are defects, trims and edges.`,
      `Yield ${plan.yield.times(100).toDecimalPlaces(1).toString()} %, ${plan.verdict}.`,
    ],
  });
