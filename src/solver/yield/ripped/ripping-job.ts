import type { Length, Unit } from "../../length/length";
import type { TallyBoard } from "../tally/tally-board";
import type { Way } from "./yard";

/** A row of equal pieces wanted from measured boards. */
export interface RippedPiece {
  readonly label: string | number;
  readonly length: Length;
  /** Finished; without it the whole width of its board. */
  readonly width?: Length;
  /** Finished; without it the board's. */
  readonly thickness?: Length;
  readonly grade: string;
  /** Other grades that will do, with commas between; `any` for all. */
  readonly alsoFrom: string;
  readonly species: string;
  readonly quantity: number;
}

/** Which cut is made first on each stretch: one way for all, or on each whichever is cheaper. */
export const FIRST_CUTS = ["either", "rip", "crosscut"] as const;
export type FirstCut = (typeof FIRST_CUTS)[number];

export const waysOf = (first: FirstCut): readonly Way[] => (first === "either" ? ["rip", "crosscut"] : [first]);

export interface RippingJob {
  readonly pieces: readonly RippedPiece[];
  readonly boards: readonly TallyBoard[];
  readonly kerf: Length;
  /** Cut off each end of every board, the kerf of that cut inside it. */
  readonly trim: Length;
  /** An end at least so long and so wide is kept; without a width none narrower than the narrowest piece. */
  readonly keep?: { readonly length: Length; readonly width?: Length };
  readonly first: FirstCut;
  readonly unit: Unit;
}
