import type { Length } from "../../length/length";
import { lengthOfMarks } from "../mark";
import { type Keeping, remnantsOf } from "./largest-end";
import type { RippingJob } from "./ripping-job";
import type { SingleBoard } from "./single-boards";
import type { Layout, Way } from "./yard";
import type { JobYard } from "./yard-of-job";

/** A piece where it lies on its board. */
export interface LaidPiece {
  /** Row of the pieces table, from 0. */
  readonly piece: number;
  readonly length: Length;
  /** Its own, or where it has none its board's less the edges. */
  readonly width: Length;
  /** From the end chalked 0. */
  readonly along: Length;
  /** From the edge the board is straightened on; half of what both edges lose is counted. */
  readonly across: Length;
  readonly first: Way;
  /** Strips of a board are numbered from 1. */
  readonly strip: number;
  /** What is left at the end of its strip, after the last kerf. */
  readonly leftOver: Length;
}

/** An end of a strip, or what is not cut over a whole side of a stretch. */
export interface Remnant {
  readonly length: Length;
  readonly width: Length;
}

export interface LaidBoard {
  /** Place among the single boards, from 0. */
  readonly board: number;
  readonly pieces: readonly LaidPiece[];
  readonly remnants: readonly Remnant[];
}

/** Gives out the rows of a kind, one piece at a time. */
const dealer = ({ pieceRows }: JobYard, { pieces }: RippingJob): ((kind: number) => number) => {
  const waiting = pieceRows.map((rows) => rows.flatMap((row) => Array.from({ length: pieces[row]!.quantity }, () => row)));
  return (kind) => waiting[kind]!.shift()!;
};

const COUNTED_TWICE = 2;

/** The pieces of a plan, board after board in the order of the tally, each strip from the widest, in it the longest first. */
export const laidBoards = (job: RippingJob, single: readonly SingleBoard[], ofJob: JobYard, layout: Layout): readonly LaidBoard[] => {
  const { yard, from } = ofJob;
  const { kinds, stretches, kerf, boards } = yard;
  const next = dealer(ofJob, job);
  const size = (marks: number): Length => lengthOfMarks(Math.max(0, marks), job.unit);
  const sized = ({ length, width }: Keeping): Remnant => ({ length: size(length), width: size(width) });
  return boards.flatMap((board, place): LaidBoard[] => {
    const { edge, width: full } = single[place]!.row;
    const pieces: LaidPiece[] = [];
    let strip = 0;
    for (const at of board.stretches) {
      const pattern = layout.get(at);
      if (pattern === undefined) continue;
      const { length: long, width: wide } = stretches[at]!;
      const isRip = pattern.way === "rip";
      const acrossOf = (kind: number): number => (kinds[kind]!.width === 0 ? wide : kinds[kind]!.width);
      const along = (kind: number): number => (isRip ? kinds[kind]!.length : acrossOf(kind));
      const across = (kind: number): number => (isRip ? acrossOf(kind) : kinds[kind]!.length);
      const widest = (held: readonly number[]): number => Math.max(...held.map(across));
      const room = isRip ? long : wide;
      let offset = 0;
      const strips = pattern.strips.map((held) => [...held].sort((one, other) => along(other) - along(one) || across(other) - across(one)));
      for (const held of strips.sort((one, other) => widest(other) - widest(one) || along(other[0]!) - along(one[0]!))) {
        strip += 1;
        const used = held.reduce((sum, kind) => sum + along(kind) + kerf, 0);
        let position = 0;
        for (const kind of held) {
          const [x, y] = isRip ? [position, offset] : [offset, position];
          const row = next(kind);
          pieces.push({
            piece: row, strip, first: pattern.way, leftOver: size(room - used),
            length: job.pieces[row]!.length,
            width: job.pieces[row]!.width ?? full.minus(edge),
            along: size(from[at]! + x),
            across: size(y).plus(edge.div(COUNTED_TWICE)),
          });
          position += along(kind) + kerf;
        }
        offset += widest(held) + kerf;
      }
    }
    const remnants = board.stretches.flatMap((at) => remnantsOf(yard, layout, at)).map(sized);
    return pieces.length === 0 ? [] : [{ board: place, pieces, remnants }];
  });
};
