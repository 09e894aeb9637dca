import { lengthOf } from "../../../../src/solver/length/length";
import { exact } from "../../../../src/solver/length/exact";
import type { FirstCut, RippedPiece, RippingJob } from "../../../../src/solver/yield/ripped/ripping-job";
import { board, type Plain } from "../tally/board";

/** A piece of a test, in inches. */
export interface PlainPiece {
  readonly label: string;
  readonly length: number;
  readonly width?: number;
  readonly thickness?: number;
  readonly quantity?: number;
  readonly grade?: string;
  readonly alsoFrom?: string;
  readonly species?: string;
}

/** A board of a test: defects as pairs of inches. */
export interface PlainBoard extends Omit<Plain, "defects"> {
  readonly defects?: readonly (readonly [number, number])[];
}

/** A job of a test, in inches; the checker and the oracle reckon from these numbers alone. */
export interface PlainJob {
  readonly pieces: readonly PlainPiece[];
  readonly boards: readonly PlainBoard[];
  readonly kerf: number;
  readonly trim: number;
  readonly first: FirstCut;
}

export const plainJob = (
  pieces: readonly PlainPiece[], boards: readonly PlainBoard[], given: Partial<Pick<PlainJob, "kerf" | "trim" | "first">> = {},
): PlainJob => ({ pieces, boards, kerf: 0.125, trim: 0, first: "either", ...given });

const inches = (value: number) => lengthOf(value, "in");

export const jobOf = ({ pieces, boards, kerf, trim, first }: PlainJob): RippingJob => ({
  pieces: pieces.map(({ label, length, width, thickness, quantity = 1, grade = "", alsoFrom = "", species = "" }): RippedPiece => ({
    label, quantity, grade, alsoFrom, species,
    length: inches(length),
    ...(width === undefined ? {} : { width: inches(width) }),
    ...(thickness === undefined ? {} : { thickness: inches(thickness) }),
  })),
  boards: boards.map(({ defects = [], ...rest }, place) => ({
    ...board(rest, place + 2),
    defects: defects.map(([from, to]) => ({ from: inches(from), to: inches(to) })),
    ...(rest.price === undefined ? {} : { price: exact(rest.price) }),
  })),
  kerf: inches(kerf), trim: inches(trim), first, unit: "in",
});
