import type { PlainBoard, PlainJob, PlainPiece } from "./plain-job";
import { centsOf, dressed, grades } from "./plan-checker";

const MARKS = 64;

/** Whole 64ths of an inch: what is wanted is rounded up, what there is down. */
const up = (inches: number): number => Math.ceil(inches * MARKS);
const down = (inches: number): number => Math.floor(inches * MARKS);

export interface CheckedKind {
  readonly length: number;
  /** Undefined: the whole width of its board. */
  readonly width: number | undefined;
  readonly wanted: number;
}

export interface CheckedBoard {
  readonly cents: number;
  readonly lot: string | number | undefined;
  /** Length and width of each clear stretch, from the end chalked 0. */
  readonly stretches: readonly { readonly long: number; readonly wide: number }[];
  readonly takes: readonly boolean[];
}

/** A job as the checker of certificates reckons with it, in marks and cents, from the numbers of the test alone. */
export interface CertificateJob {
  readonly kinds: readonly CheckedKind[];
  readonly boards: readonly CheckedBoard[];
  readonly lots: ReadonlyMap<string | number, number>;
  readonly kerf: number;
  readonly ways: readonly ("rip" | "crosscut")[];
}

const isTaken = (piece: PlainPiece, board: PlainBoard): boolean =>
  (grades(piece).includes(board.grade ?? "") || grades(piece).includes("any")) &&
  ((piece.species ?? "") === "" || piece.species === board.species) &&
  (piece.thickness ?? 0) <= dressed(board);

const stretchesOf = ({ length, width, edge = 0, defects = [] }: PlainBoard, { kerf, trim }: PlainJob): CheckedBoard["stretches"] => {
  const spoilt = defects.map(([from, to]) => {
    const more = Math.max(0, (kerf - (to - from)) / 2);
    return [Math.max(0, from - more), Math.min(length, to + more)] as const;
  });
  const ends = [...spoilt].sort(([one], [other]) => one - other);
  const found: { long: number; wide: number }[] = [];
  let from = 0;
  for (const [start, end] of [...ends, [length, length] as const]) {
    const long = Math.min(down(start), down(length) - up(trim)) - Math.max(up(from), up(trim));
    if (long > 0) found.push({ long, wide: down(width - edge) });
    from = Math.max(from, end);
  }
  return found;
};

/** The job by kinds of pieces; in words where the rows do not make such kinds. */
export const certificateJob = (job: PlainJob, pieceRows: readonly (readonly number[])[]): CertificateJob | string => {
  const rows = pieceRows.flat().sort((one, other) => one - other);
  if (rows.join() !== job.pieces.map((_, row) => row).join()) return "not every piece is of one kind";
  const alike = (row: number): string => {
    const { length, width } = job.pieces[row]!;
    return [length, width ?? "whole", ...job.boards.map((board) => isTaken(job.pieces[row]!, board))].join();
  };
  if (pieceRows.some((of) => new Set(of.map(alike)).size !== 1)) return "pieces of one kind differ";
  const first = pieceRows.map(([row]) => job.pieces[row!]!);
  const { own, lot, lots } = centsOf(job.boards);
  return {
    kinds: first.map(({ length, width }, kind) => ({
      length: up(length),
      width: width === undefined ? undefined : up(width),
      wanted: pieceRows[kind]!.reduce((sum, row) => sum + (job.pieces[row]!.quantity ?? 1), 0),
    })),
    boards: job.boards.map((board, at) => ({
      cents: own[at]!, lot: lot[at], stretches: stretchesOf(board, job), takes: first.map((piece) => isTaken(piece, board)),
    })),
    lots,
    kerf: up(job.kerf),
    ways: job.first === "either" ? ["rip", "crosscut"] : [job.first],
  };
};
