import { type Rectangle, stripModel, type StripWay } from "../strip-model";
import type { WholeModel } from "../whole-model";
import type { PlainBoard, PlainJob, PlainPiece } from "./plain-job";

const MARKS = 64;
const CENTS = 100;
const marks = (inches: number): number => Math.round(inches * MARKS);

const isTaken = ({ grade = "", alsoFrom = "" }: PlainPiece, board: PlainBoard): boolean => {
  const also = alsoFrom.split(",").map((each) => each.trim());
  return (board.grade ?? "") === grade || also.includes("any") || (also.includes(board.grade ?? "") && board.grade !== "");
};

/** Where a board is clear: places that no defect reaches, from one of its ends or the end of a defect to the next. */
const clearLengths = ({ length, defects = [] }: PlainBoard, trim: number): number[] => {
  const isClear = (at: number): boolean => defects.every(([from, to]) => at < from || at >= to);
  const ends = [trim, length - trim, ...defects.flat()].filter((at) => at >= trim && at <= length - trim).sort((a, b) => a - b);
  return ends.slice(1).flatMap((to, place) => (to > ends[place]! && isClear(ends[place]!) ? [marks(to) - marks(ends[place]!)] : []));
};

const rectanglesOf = ({ pieces, trim, first }: PlainJob, board: PlainBoard): Rectangle[] => {
  const wide = marks(board.width - (board.edge ?? 0));
  const taken = pieces.flatMap((piece, kind) =>
    isTaken(piece, board) ? [{ kind, length: marks(piece.length), width: piece.width === undefined ? wide : marks(piece.width) }] : [],
  );
  return clearLengths(board, trim).map((long) => {
    const rip: StripWay = { long, wide, shapes: taken.map(({ kind, length, width }) => ({ kind, along: length, across: width })) };
    const crosscut: StripWay = {
      long: wide, wide: long, shapes: taken.map(({ kind, length, width }) => ({ kind, along: width, across: length })),
    };
    return first === "either" ? [rip, crosscut] : [first === "rip" ? rip : crosscut];
  });
};

/** A job of boards: each is bought by itself, a lot at once. */
export const tallyModel = (job: PlainJob): WholeModel => {
  const own = job.boards.filter(({ lot }) => lot === undefined);
  const lots = [...new Set(job.boards.flatMap(({ lot }) => (lot === undefined ? [] : [lot])))];
  return stripModel({
    wanted: job.pieces.map(({ quantity = 1 }) => quantity), kerf: marks(job.kerf),
    goods: [
      ...own.map((board) => ({ cents: board.owned === true ? 0 : board.price! * CENTS, boards: [board] })),
      ...lots.map((lot) => {
        const boards = job.boards.filter((board) => board.lot === lot);
        return { cents: boards.find(({ lotPrice }) => lotPrice !== undefined)!.lotPrice! * CENTS, boards };
      }),
    ].map(({ cents, boards }) => ({
      cents, available: 1, rectangles: boards.flatMap((board) => rectanglesOf(job, board)),
    })),
  });
};
