import type { Exact } from "../length/exact";
import type { Length } from "../length/length";

/** A size of blank that can be bought, or is on hand. */
export interface BlankStock {
  readonly label?: string | number;
  readonly length: Length;
  readonly width?: Length;
  readonly thickness?: Length;
  readonly price?: Exact;
  readonly available: number;
  readonly owned: boolean;
}

/** One whose width and price are known. */
export interface Candidate {
  readonly stock: BlankStock;
  readonly width: Length;
  readonly price: Exact;
}
