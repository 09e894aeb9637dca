import { goodsKey } from "../../goods/goods-key";
import { Exact } from "../../length/exact";
import type { Length } from "../../length/length";
import { type Problem, problem } from "../../problem";
import { called } from "../cutting-job";
import { roughFor } from "../tally/rough-thickness";
import { boardName } from "../tally/tally-board";
import type { RippedPiece, RippingJob } from "./ripping-job";
import type { SingleBoard } from "./single-boards";
import { gradesInWords, isGradeTaken, isSpeciesTaken, isTaken, isThickEnough } from "./taken-grades";

export type RippingFault =
  | "too-many-ripped" | "too-many-boards" | "piece-without-species" | "no-board-of-species" | "no-board-of-grade"
  | "no-board-without-grade" | "grade-too-thin"
  | "wider-than-boards" | "longer-than-clear" | "boards-too-few" | "boards-too-few-across" | "no-plan-of-boards" | "no-plan-across";

/** Beyond these a plan would no longer end in a cell's time. */
const MOST_RIPPED = 100;
const MOST_BOARDS = 60;

const speciesFault = (job: RippingJob, boards: readonly SingleBoard[]): Problem<RippingFault> | undefined => {
  const species = new Map(boards.map(({ row }) => [goodsKey(row.species), row.species]));
  const [first = "", second = ""] = species.values();
  for (const [row, piece] of job.pieces.entries()) {
    if (piece.species === "" && species.size > 1) {
      const named = (name: string): string => (name === "" ? "boards without one" : name);
      return problem("piece-without-species", { piece: called(piece.label, row), first: named(first), second: named(second) });
    }
    if (piece.species !== "" && !species.has(goodsKey(piece.species)))
      return problem("no-board-of-species", { piece: called(piece.label, row), species: piece.species });
  }
  return undefined;
};

/** The longest that can be cut from a board where it is wide enough, its trims taken off. */
const longestOf = ({ row, clear }: SingleBoard, trim: Length): Length =>
  clear.reduce((longest, { from, to }) => {
    const size = Exact.min(to, row.length.minus(trim)).minus(Exact.max(from, trim));
    return size.gt(longest) ? size : longest;
  }, new Exact(0));

const usableWidth = ({ row }: SingleBoard): Length => row.width.minus(row.edge);

const sizeFault = (
  job: RippingJob, piece: RippedPiece, name: string | number, boards: readonly SingleBoard[],
): Problem<RippingFault> | undefined => {
  const { length, width } = piece;
  const widest = boards.reduce((one, other) => (usableWidth(other).gt(usableWidth(one)) ? other : one));
  if (width !== undefined && usableWidth(widest).lt(width)) {
    const { grade } = widest.row;
    const isOneGrade = boards.every(({ row }) => goodsKey(row.grade) === goodsKey(grade));
    return problem("wider-than-boards", {
      piece: name, width, boards: isOneGrade && grade !== "" ? `${grade} board` : "board of its grades", widest: usableWidth(widest),
    });
  }
  const wide = boards.filter((board) => width === undefined || usableWidth(board).gte(width));
  const longest = wide.reduce((one, other) => (longestOf(other, job.trim).gt(longestOf(one, job.trim)) ? other : one));
  if (longestOf(longest, job.trim).gte(length)) return undefined;
  return problem("longer-than-clear", {
    piece: name, length, longest: longestOf(longest, job.trim), board: boardName(longest.row),
  });
};

const pieceFault = (job: RippingJob, row: number, boards: readonly SingleBoard[]): Problem<RippingFault> | undefined => {
  const piece = job.pieces[row]!;
  const name = called(piece.label, row);
  const ofSpecies = boards.filter((board) => isSpeciesTaken(piece, board));
  const ofGrade = ofSpecies.filter((board) => isGradeTaken(piece, board));
  if (ofGrade.length === 0)
    return piece.grade === ""
      ? problem("no-board-without-grade", { piece: name })
      : problem("no-board-of-grade", { piece: name, grade: piece.grade, grades: gradesInWords(piece) });
  if (!ofGrade.some((board) => isThickEnough(piece, board))) {
    const thickest = ofGrade.reduce((one, other) => (other.dressed.gt(one.dressed) ? other : one));
    const thickness = piece.thickness ?? new Exact(0);
    const use = roughFor(thickness)?.name ?? "two boards face to face";
    return problem("grade-too-thin", { piece: name, thickness, rough: String(thickest.row.written), dressed: thickest.dressed, use });
  }
  return sizeFault(job, piece, name, ofGrade.filter((board) => isTaken(piece, board)));
};

/** Why a job has no plan, before any search: the first of it. */
export const rippingFault = (job: RippingJob, boards: readonly SingleBoard[]): Problem<RippingFault> | undefined => {
  const count = job.pieces.reduce((sum, { quantity }) => sum + quantity, 0);
  if (count > MOST_RIPPED) return problem("too-many-ripped", { count, most: MOST_RIPPED });
  if (boards.length > MOST_BOARDS) return problem("too-many-boards", { count: boards.length, most: MOST_BOARDS });
  const species = speciesFault(job, boards);
  if (species !== undefined) return species;
  for (const row of job.pieces.keys()) {
    const fault = pieceFault(job, row, boards);
    if (fault !== undefined) return fault;
  }
  return undefined;
};
