import type { PlainValue, WorkbookData } from "./workbook-data";

/** An error in a cell, by the code it shows. */
export interface CellError {
  readonly error: string;
}

/** What a cell shows the next formula: null for an empty one. */
export type CellValue = PlainValue | CellError | null;

/** A live workbook: the one interface to the sheet engine, the same in the page and without one. */
export interface Workbook {
  /** Puts these sheets in the place of the ones there. */
  readonly load: (data: WorkbookData) => void;
  /** Enters what a keyboard user would type, or a value as it is. An empty text clears the cell. */
  readonly setCell: (sheet: string, address: string, input: PlainValue) => void;
  /** When every formula has its final value. Until then a reader of a spill may show a wrong one. */
  readonly settled: () => Promise<void>;
  readonly value: (sheet: string, address: string) => CellValue;
  /** The text the cell shows, by its number format. */
  readonly shown: (sheet: string, address: string) => string;
  /** The block that spilled from the cell, row by row; the cell alone where nothing did. */
  readonly spill: (sheet: string, address: string) => readonly (readonly CellValue[])[];
  /** The sentence that goes with an error cell. */
  readonly errorMessage: (sheet: string, address: string) => string | undefined;
  /** The formula as it was typed. */
  readonly formula: (sheet: string, address: string) => string | undefined;
  /** A range as a copy of it goes to the clipboard: the texts shown, by tabs and line ends, spilled cells among them. */
  readonly copied: (sheet: string, from: string, to: string) => string;
  readonly data: () => WorkbookData;
  readonly dispose: () => void;
}
