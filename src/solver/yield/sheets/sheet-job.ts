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
  /** `trim` comes off all four edges. */
  readonly keep?: KeptSize;
  readonly first: Cutting | "either";
}

/** The length of a piece that lies turned is its width on the sheet. */
export const sizeOnSheet = ({ length, width }: SheetPiece, turned: boolean): KeptSize =>
  turned ? { length: width!, width: length } : { length, width: width! };
