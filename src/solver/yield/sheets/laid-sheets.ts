import { type Length } from "../../length/length";
import { lengthOfMarks, marksDown, marksUp } from "../mark";
import { type Cut } from "./greedy-sheets";
import { type PartShelf } from "./part-shelf";
import { edgeTrimOf, type SheetJob } from "./sheet-job";
import { type Cutting, type Way } from "./sheet-shelf";

export interface LaidPiece {
  /** Row of the pieces table, from 0. */
  readonly piece: number;
  /** From the end and from the edge of the sheet to the piece; the trim is counted. */
  readonly along: Length;
  readonly across: Length;
  readonly turned: boolean;
}

export interface LaidStrip {
  readonly pieces: readonly LaidPiece[];
  /** As it lies on the sheet, the end that is left over included. */
  readonly length: Length;
  readonly width: Length;
  /** What is left at its end, after the last kerf and before the trim. */
  readonly leftOver: Length;
}

export interface LaidSheet {
  /** Row of the stock table, from 0. */
  readonly stock: number;
  readonly first: Cutting;
  /** Widest first. */
  readonly strips: readonly LaidStrip[];
  /** Between the trims. */
  readonly usableLength: Length;
  readonly usableWidth: Length;
  /** What is uncut beside the last strip, after its kerf. */
  readonly uncut: Length;
}

/** Gives out rows of a table one at a time, in the order given. */
const dealer = (rows: readonly (readonly number[])[], count: (row: number) => number): ((kind: number) => number) => {
  const left = rows.map((each) => each.map((row) => ({ row, left: count(row) })));
  return (kind) => {
    const at = left[kind]!.find((each) => each.left > 0)!;
    at.left -= 1;
    return at.row;
  };
};

/** One sheet on paper: strips side by side, each piece behind the one before, a kerf between them. */
const laidOn = (
  job: SheetJob, way: Way, strips: readonly (readonly number[])[], stock: number, nextPiece: (kind: number) => number,
): LaidSheet | undefined => {
  const { unit } = job;
  const kerf = marksUp(job.kerf, unit);
  const [endTrim, edgeTrim] = [marksUp(job.trim, unit), marksUp(edgeTrimOf(job), unit)];
  const isRip = way.first === "rip";
  const marked = (marks: number): Length => lengthOfMarks(marks, unit);
  const usable = (length: Length, trim: number): number => marksDown(length, unit) - 2 * trim;
  const [long, deep] = [usable(job.stock[stock]!.length, endTrim), usable(job.stock[stock]!.width!, edgeTrim)];
  const [room, depth] = isRip ? [long, deep] : [deep, long];
  // off where a strip begins, and off where the first strip does
  const [before, beside] = isRip ? [endTrim, edgeTrim] : [edgeTrim, endTrim];
  let down = beside;
  const laid = strips.flatMap((strip): LaidStrip[] => {
    let along = before;
    let widest = 0;
    const pieces = strip.flatMap((place): LaidPiece[] => {
      const { kind, turned } = way.shapes[place]!;
      const piece = nextPiece(kind);
      if (piece < 0) return [];
      const { length, width } = job.pieces[piece]!;
      const isLong = isRip !== turned;
      const [reach, across] = [marksUp(isLong ? length : width!, unit), marksUp(isLong ? width! : length, unit)];
      const [start, edge] = isRip ? [along, down] : [down, along];
      along += reach + kerf;
      widest = Math.max(widest, across);
      return [{ piece, along: marked(start), across: marked(edge), turned }];
    });
    if (pieces.length === 0) return [];
    down += widest + kerf;
    const size = isRip ? { length: marked(room), width: marked(widest) } : { length: marked(widest), width: marked(room) };
    return [{ pieces, ...size, leftOver: marked(Math.max(0, room + before - along)) }];
  });
  if (laid.length === 0) return undefined;
  return {
    stock, first: way.first, strips: laid, usableLength: marked(long), usableWidth: marked(deep),
    uncut: marked(Math.max(0, depth + beside - down)),
  };
};

/** The sheets of one part. Fillings may hold more than is wanted: what is over is left out of those that come last. */
export const laidSheets = (
  job: SheetJob, { shelf, pieceRows, stockRows }: PartShelf, ways: readonly Way[], cuts: readonly Cut[],
): LaidSheet[] => {
  const left = shelf.kinds.map(({ wanted }) => wanted);
  const deal = dealer(pieceRows, (row) => job.pieces[row]!.quantity);
  const nextPiece = (kind: number): number => {
    left[kind]! -= 1;
    return left[kind]! < 0 ? -1 : deal(kind);
  };
  const nextSheet = dealer(stockRows, (row) => job.stock[row]!.available);
  return cuts.flatMap(({ filling, times }) =>
    Array.from({ length: times }, () => filling).flatMap(({ way, strips }) => {
      const laid = laidOn(job, ways[way]!, strips, nextSheet(ways[way]!.sheet), nextPiece);
      return laid === undefined ? [] : [laid];
    }),
  );
};
