import type { Length } from "../length/length";
import type { CuttingJob } from "./cutting-job";
import type { GroupShelf } from "./group-shelf";
import { lengthOfMarks, marksUp } from "./mark";
import type { Cut } from "./shelf/shelf";

export interface PlannedPiece {
  /** Row of the pieces table, from 0. */
  readonly piece: number;
  readonly label: string | number;
  readonly length: Length;
  /** From the stick's end to the start of the piece; the trim is counted. */
  readonly position: Length;
}

export interface PlannedStick {
  /** Row of the stock table, from 0. */
  readonly stock: number;
  /** In cutting order. */
  readonly pieces: readonly PlannedPiece[];
  readonly leftOver: Length;
}

/** Gives out rows of a table one piece or stick at a time, in the order given. */
const dealer = (rows: readonly (readonly number[])[], count: (row: number) => number): ((kind: number) => number) => {
  const waiting = rows.map((each) => ({ each, place: 0, left: count(each[0]!) }));
  return (kind) => {
    const at = waiting[kind]!;
    while (at.left === 0) {
      at.place += 1;
      at.left = count(at.each[at.place]!);
    }
    at.left -= 1;
    return at.each[at.place]!;
  };
};

/** The cuts of one group as sticks and pieces of the job. */
export const plannedSticks = (job: CuttingJob, group: GroupShelf, cuts: readonly Cut[]): PlannedStick[] => {
  const { unit } = job;
  const trim = marksUp(job.trim, unit);
  const widths = group.shelf.kinds.map(({ width }) => width * group.shelf.marks);
  const known = new Map<number, Length>();
  // thousands of pieces begin at the same few places
  const lengthAt = (marks: number): Length => {
    if (!known.has(marks)) known.set(marks, lengthOfMarks(marks, unit));
    return known.get(marks)!;
  };
  const nextPiece = dealer(group.pieceRows, (row) => job.pieces[row]!.quantity);
  const nextStick = dealer(group.stockRows, (row) => job.stock[row]!.available);
  return cuts.map((cut) => {
    const stock = nextStick(cut.stick);
    let position = trim;
    const pieces = cut.kinds.map((kind) => {
      const row = nextPiece(kind);
      const { label, length } = job.pieces[row]!;
      const start = position;
      position += widths[kind]!;
      return { piece: row, label, length, position: lengthAt(start) };
    });
    const leftOver = Math.max(0, group.shelf.sticks[cut.stick]!.usable + trim - position);
    return { stock, pieces, leftOver: lengthAt(leftOver) };
  });
};
