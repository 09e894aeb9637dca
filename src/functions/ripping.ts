import { goodsKey } from "../solver/goods/goods-key";
import type { Length, Unit } from "../solver/length/length";
import type { FirstCut, RippingJob } from "../solver/yield/ripped/ripping-job";
import { type Failed, isFailed } from "./cells";
import type { RowOf } from "./columns";
import type { Size } from "./declare";
import type { rippedPieces } from "./tables";
import { tallyBoards, type TallyRow } from "./tally-boards";
import { TALLY_PROBLEMS } from "./tally-problems";

/** Headings that make a table of stock a tally of measured boards. */
export const TALLY_HEADINGS = ["board foot price", "lot", "defects", "clear", "edge", "surfaced"] as const;

/** Wording of jobs on measured boards that have no plan. */
export const RIPPING_PROBLEMS = {
  ...TALLY_PROBLEMS,
  "too-many-ripped": {
    cell: "#VALUE!",
    says: "pieces: {count} pieces are more than one plan of measured boards takes; split the job into plans of {most} or fewer",
  },
  "too-many-boards": {
    cell: "#VALUE!",
    says: "tally: {count} boards are more than one plan takes; leave out what will not be cut, {most} boards or fewer",
  },
  "piece-without-species": {
    cell: "#VALUE!",
    says: "species: piece {piece} has none, and the tally has {first} and {second}; write its species",
  },
  "no-board-of-species": {
    cell: "#N/A",
    says: 'species: no board is "{species}", as piece {piece} is; add boards, or write another species',
  },
  "no-board-of-grade": {
    cell: "#N/A",
    says: 'grade: no board is "{grade}"; piece {piece} takes {grades}; write another under also from',
  },
  "no-board-without-grade": {
    cell: "#N/A",
    says: "grade: piece {piece} has none, and no board is without one; give its grade, or write any under also from",
  },
  "grade-too-thin": {
    cell: "#N/A",
    says: "thickness: piece {piece}: {thickness} is more than {rough} dresses to ({dressed}); use {use}",
  },
  "wider-than-boards": {
    cell: "#N/A",
    says: "width: piece {piece} ({width}) is wider than every {boards} (widest {widest}); glue it up with GLUEUP",
  },
  "longer-than-clear": {
    cell: "#N/A",
    says:
      "clear: piece {piece} ({length}) is longer than the longest clear stretch of its grades, {longest} on board {board}; add longer " +
      "boards",
  },
  "boards-too-few": {
    cell: "#N/A",
    says: "tally: {count} boards do not hold the pieces; without a place: {piece} ({length} x {width}); add boards",
  },
  "boards-too-few-across": {
    cell: "#N/A",
    says: "tally: {count} boards do not hold the pieces; without a place: {piece} ({length}, the whole width); add boards",
  },
  "no-plan-of-boards": {
    cell: "#N/A",
    says: "tally: no plan was found on {count} boards; without a place: {piece} ({length} x {width}); add a board",
  },
  "no-plan-across": {
    cell: "#N/A",
    says: "tally: no plan was found on {count} boards; without a place: {piece} ({length}, the whole width); add a board",
  },
} as const;

export interface GivenRipping {
  readonly pieces: readonly RowOf<typeof rippedPieces.columns>[];
  readonly tally: readonly TallyRow[];
  readonly kerf: Length;
  readonly trim: Length;
  readonly keep: Size | undefined;
  readonly first: FirstCut;
  readonly unit: Unit;
}

/** The job as the solver takes it, or the sentence of the first cell of the tally that is none of what it should be. */
export const rippingJobOf = ({ pieces, tally, keep, ...rest }: GivenRipping): RippingJob | Failed => {
  const boards = tallyBoards(tally, rest.unit);
  if (isFailed(boards)) return boards;
  return {
    pieces: pieces.map(({ label, item, step, width, depth, height, ...piece }) => {
      const across = width ?? depth ?? height;
      return { ...piece, label: label ?? item ?? step ?? "", ...(across === undefined ? {} : { width: across }) };
    }),
    boards: boards.map(({ given: _given, ...board }) => board),
    ...rest,
    ...(keep === undefined ? {} : { keep }),
  };
};

/** What a board is called in a list: its label, or its place. */
export const namedBoard = (label: string | number | undefined, place: number): string | number =>
  label === undefined || goodsKey(label) === "" ? `board ${place + 1}` : label;
