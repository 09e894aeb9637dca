import { type Exact } from "../length/exact";
import { type Length, type Unit } from "../length/length";

/** A row of equal pieces wanted. */
export interface Piece {
  readonly label: string | number;
  readonly length: Length;
  readonly quantity: number;
  /** Finished; across and through the board. A piece without one takes its board's. */
  readonly width?: Length;
  readonly thickness?: Length;
  /** Pieces are cut only from stock of the same grade; blank matches blank. */
  readonly grade: string;
}

/** A row of equal sticks, to buy or on the rack. */
export interface Stock {
  readonly label: string | number;
  readonly length: Length;
  /** For one stick; 0 for owned sticks that cost nothing. */
  readonly price: Exact;
  /** Infinity where any number can be had. */
  readonly available: number;
  readonly owned: boolean;
  readonly grade: string;
  readonly width?: Length;
  readonly thickness?: Length;
}

/**
 * What is to be cut, from what, and with which saw. Whoever reads it has seen to it that there are pieces and stock, and sizes and numbers
 * of them.
 */
export interface CuttingJob {
  readonly pieces: readonly Piece[];
  readonly stock: readonly Stock[];
  readonly kerf: Length;
  /** Cut off each end of every stick, the kerf of that cut inside it. */
  readonly trim: Length;
  /** An end at least this long is an offcut, not waste. */
  readonly keep?: Length;
  /** The unit whose marks (1/64 in or 0.1 mm) lengths are planned on. */
  readonly unit: Unit;
}

/** What a row is called by: its label, or its place in the table. */
export const called = (label: string | number, row: number): string | number => (label === "" ? `number ${row + 1}` : label);
