import { type Length } from "../../length/length";
import { type CuttingJob, type Piece } from "../cutting-job";
import { type Cutting } from "./sheet-shelf";

export interface SheetPiece extends Piece {
  /** Its length may lie across the grain. */
  readonly turns: boolean;
}

/** What is left is kept where it is at least so large; one length is for both ways. */
export interface KeptSize {
  readonly length: Length;
  readonly width: Length;
}

/** What is to be cut from sheets, or from boards ripped. The length of both runs with the grain. */
export interface SheetJob extends Omit<CuttingJob, "pieces" | "keep"> {
  readonly pieces: readonly SheetPiece[];
  /** Off both edges that run along the length; left out, as much as `trim` takes off the ends. */
  readonly edgeTrim?: Length;
  readonly keep?: KeptSize;
  readonly first: Cutting | "either";
}

export const edgeTrimOf = ({ trim, edgeTrim }: Pick<SheetJob, "trim" | "edgeTrim">): Length => edgeTrim ?? trim;

/** The length of a piece that lies turned is its width on the sheet. */
export const sizeOnSheet = ({ length, width }: SheetPiece, turned: boolean): KeptSize =>
  turned ? { length: width!, width: length } : { length, width: width! };
