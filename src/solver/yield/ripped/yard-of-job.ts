import { Exact } from "../../length/exact";
import { marksDown, marksUp } from "../mark";
import { type RippingJob, waysOf } from "./ripping-job";
import { lotPrices, type SingleBoard } from "./single-boards";
import { isTaken } from "./taken-grades";
import type { Board, Clear, Kind, Yard } from "./yard";

/** A yard, with the way back to the rows of the job. */
export interface JobYard {
  readonly yard: Yard;
  /** For each kind its rows of the pieces table. */
  readonly pieceRows: readonly (readonly number[])[];
  /** For each stretch where it begins, in marks from the end chalked 0. */
  readonly from: readonly number[];
}

/** Hundredths of a board foot: finer than anyone sells. */
const FEET_STEPS = 100;
const CENTS = 100;

interface Classes {
  readonly ofBoard: readonly number[];
  /** For each class which rows of pieces it takes. */
  readonly takes: readonly (readonly boolean[])[];
}

const classesOf = ({ pieces }: RippingJob, boards: readonly SingleBoard[]): Classes => {
  const known = new Map<string, number>();
  const takes: (readonly boolean[])[] = [];
  const ofBoard = boards.map((board) => {
    const taken = pieces.map((piece) => isTaken(piece, board));
    const key = taken.map(Number).join("");
    if (!known.has(key)) {
      known.set(key, takes.length);
      takes.push(taken);
    }
    return known.get(key)!;
  });
  return { ofBoard, takes };
};

/** Rows of one size that the same boards take are one kind; the longest and widest come first. */
const kindsOf = (job: RippingJob, { takes }: Classes): { readonly kinds: Kind[]; readonly rows: number[][] } => {
  const sorts = new Map<string, number>();
  const known = new Map<string, { kind: Kind; rows: number[] }>();
  for (const [row, piece] of job.pieces.entries()) {
    const length = marksUp(piece.length, job.unit);
    const width = piece.width === undefined ? 0 : marksUp(piece.width, job.unit);
    const sortKey = `${width}/${takes.map((each) => Number(each[row]!)).join("")}`;
    if (!sorts.has(sortKey)) sorts.set(sortKey, sorts.size);
    const key = `${length}/${sortKey}`;
    const before = known.get(key);
    const wanted = (before?.kind.wanted ?? 0) + piece.quantity;
    known.set(key, { kind: { length, width, wanted, sort: sorts.get(sortKey)! }, rows: [...(before?.rows ?? []), row] });
  }
  const all = [...known.values()].sort(({ kind: one }, { kind: other }) => other.width - one.width || other.length - one.length);
  return { kinds: all.map(({ kind }) => kind), rows: all.map(({ rows }) => rows) };
};

/** The clear stretches of a board with room between trim and trim. */
const stretchesOf = (job: RippingJob, { row, clear }: SingleBoard): readonly { readonly from: number; readonly to: number }[] => {
  const { unit } = job;
  const trim = marksUp(job.trim, unit);
  const end = marksDown(row.length, unit) - trim;
  return clear
    .map(({ from, to }) => ({ from: Math.max(trim, marksUp(from, unit)), to: Math.min(end, marksDown(to, unit)) }))
    .filter(({ from, to }) => to > from);
};

/** A job in whole numbers: marks, cents and hundredths of board feet. */
export const yardOfJob = (job: RippingJob, single: readonly SingleBoard[]): JobYard => {
  const classes = classesOf(job, single);
  const { kinds, rows } = kindsOf(job, classes);
  const prices = lotPrices(job.boards);
  const lots = [...new Set(single.flatMap(({ lot }) => (lot === undefined ? [] : [lot])))];
  const stretches: Clear[] = [];
  const from: number[] = [];
  const boards = single.map((each, board): Board => {
    const width = marksDown(each.row.width.minus(each.row.edge), job.unit);
    const own = stretchesOf(job, each).map((stretch) => {
      stretches.push({ board, length: stretch.to - stretch.from, width, class: classes.ofBoard[board]! });
      from.push(stretch.from);
      return stretches.length - 1;
    });
    return {
      stretches: own,
      money: each.price.times(CENTS).round().toNumber(),
      feet: each.feet.times(FEET_STEPS).round().toNumber(),
      lot: each.lot === undefined ? -1 : lots.indexOf(each.lot),
    };
  });
  const yard: Yard = {
    kinds, boards, stretches,
    takes: classes.takes.map((taken) => rows.map(([row]) => taken[row!]!)),
    lots: lots.map((lot) => (prices.get(lot) ?? new Exact(0)).times(CENTS).round().toNumber()),
    kerf: marksUp(job.kerf, job.unit),
    ways: waysOf(job.first),
  };
  return { yard, pieceRows: rows, from };
};
