import type { Exact } from "../../length/exact";
import type { Length } from "../../length/length";
import type { Stretch } from "./clear-stretches";
import type { Boards } from "./footage";

/** A row of a tally: a measured board, or several alike. */
export interface TallyBoard extends Boards {
  readonly row: number;
  readonly label?: string | number;
  /** The thickness as it was written: 5/4. */
  readonly written: string | number;
  /** The thickness is the finished one. */
  readonly surfaced: boolean;
  readonly grade: string;
  readonly species: string;
  readonly price?: Exact;
  readonly boardFootPrice?: Exact;
  readonly lot?: string | number;
  readonly lotPrice?: Exact;
  readonly owned: boolean;
  readonly defects: readonly Stretch[];
  readonly clear: readonly Stretch[];
  /** Width lost to straighten both edges together. */
  readonly edge: Length;
  /** Of the whole row as on the paper. */
  readonly paperFeet?: number;
}

/** How the user knows the board. */
export const boardName = ({ label, row }: Pick<TallyBoard, "label" | "row">): string =>
  label === undefined || label === "" ? `in row ${row}` : String(label);
