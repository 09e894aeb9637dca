import type { OwnLook } from "../sheets/own-look";
import type { TouchedCells } from "./touched-cells";
import type { CellData, PlainValue, RowFilter, SheetData, WorkbookData } from "./workbook-data";

/** An error in a cell, by the code it shows. */
export interface CellError {
  readonly error: string;
}

/** What a cell shows the next formula: null for an empty one. */
export type CellValue = PlainValue | CellError | null;

/** What is put into a cell as it is, not read as typed; a part that is missing stays, and a value of null empties the cell. */
export interface CellPut {
  readonly formula?: string;
  readonly value?: PlainValue | null;
  readonly format?: string;
  /** Whether a text longer than its cell goes on in further lines of it. */
  readonly wraps?: boolean;
}

/** Cells that spilled, counted from 0, the formula's own first. */
export interface SpilledBlock {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** A table of which only some rows are shown. */
export interface FilteredTable {
  /** The row of headings first. */
  readonly cells: string;
  /** Rows under the headings, and how many of them are to be seen. */
  readonly rows: number;
  readonly shown: number;
  readonly by: readonly { readonly heading: string; readonly keeps: readonly string[] }[];
  /** Rows that are shown and no longer match, or are hidden and would match. */
  readonly changed: number;
  /** By number. */
  readonly hides: readonly number[];
}

/** A live workbook: the one interface to the sheet engine, the same in the page and without one. */
export interface Workbook {
  /** Puts these sheets in the place of the ones there. */
  readonly load: (data: WorkbookData) => void;
  /** Enters what a keyboard user would type, or a value as it is. An empty text clears the cell. */
  readonly setCell: (sheet: string, address: string, input: PlainValue) => void;
  /** Puts cells by their address, all of them in one step that the sheet's own undo takes back. */
  readonly put: (sheet: string, cells: Readonly<Record<string, CellPut>>) => void;
  /** Widths in pixels of so many columns from one on, counted from 0. */
  readonly columnWidths: (sheet: string, first: number, columns: number) => readonly number[];
  /** Gives columns from one on these widths; undefined leaves one as it is. */
  readonly setColumnWidths: (sheet: string, first: number, widths: readonly (number | undefined)[]) => void;
  /** Heights in pixels of so many rows from one on, counted from 0. */
  readonly rowHeights: (sheet: string, first: number, rows: number) => readonly number[];
  /** Gives rows from one on these heights; undefined leaves one as it is. */
  readonly setRowHeights: (sheet: string, first: number, heights: readonly (number | undefined)[]) => void;
  readonly sheetNames: () => readonly string[];
  /** Adds sheets after the last one. */
  readonly addSheets: (sheets: readonly SheetData[]) => void;
  readonly renameSheet: (sheet: string, name: string) => void;
  readonly removeSheet: (sheet: string) => void;
  /** Shows a sheet and adds empty rows in it, above the one of this number. */
  readonly insertRows: (sheet: string, before: number, count: number) => void;
  /** Shows a sheet and takes rows out of it, from the one of this number down. */
  readonly removeRows: (sheet: string, from: number, count: number) => void;
  readonly duplicateSheet: (sheet: string) => void;
  /** Sorts cells by a column of them, row by row; answers what would be torn, and then moves nothing. */
  readonly sort: (sheet: string, cells: string, column: string, isUp: boolean) => string | undefined;
  /** Shows of a table only the rows with one of these texts in a column, by column letters; its first row is headings. */
  readonly filter: (sheet: string, cells: string, keeps: RowFilter["keeps"]) => void;
  /** Looks anew which rows match, those that came below the table among them. */
  readonly filterAgain: (sheet: string) => void;
  /** Takes the filter of a sheet away. */
  readonly showAll: (sheet: string) => void;
  /** What is filtered on a sheet; undefined where no condition is set. */
  readonly filtered: (sheet: string) => FilteredTable | undefined;
  /** Takes back the last step. */
  readonly undo: () => void;
  /** Works every formula out once more. */
  readonly recalculate: () => void;
  /** When every formula has its final value. Until then a reader of a spill may show a wrong one. */
  readonly settled: () => Promise<void>;
  readonly value: (sheet: string, address: string) => CellValue;
  /** The text the cell shows, by its number format. */
  readonly shown: (sheet: string, address: string) => string;
  /** The look the cell has, by itself and by the rules over it. */
  readonly look: (sheet: string, address: string) => OwnLook;
  /** The block that spilled from the cell, row by row; the cell alone where nothing did. */
  readonly spill: (sheet: string, address: string) => readonly (readonly CellValue[])[];
  /** Every block that spilled on a sheet. */
  readonly spills: (sheet: string) => readonly SpilledBlock[];
  /** The number format of a cell; General where it has none. */
  readonly format: (sheet: string, address: string) => string;
  /** The sentence that goes with an error cell. */
  readonly errorMessage: (sheet: string, address: string) => string | undefined;
  /** The formula as it was typed. */
  readonly formula: (sheet: string, address: string) => string | undefined;
  /** The cell that is shown there: the first of a merged block, whose others hold nothing. */
  readonly heldAt: (sheet: string, address: string) => string;
  /** A range as a copy of it goes to the clipboard: the texts shown, by tabs and line ends, spilled cells among them. */
  readonly copied: (sheet: string, from: string, to: string) => string;
  readonly data: () => WorkbookData;
  /** A cell as it is stored; undefined for an empty one. */
  readonly stored: (sheet: string, address: string) => CellData | undefined;
  /** Calls whenever something of what is stored may have changed, never for what formulas come to. */
  readonly onChange: (tell: (touched: TouchedCells | "anything") => void) => void;
  readonly dispose: () => void;
}
