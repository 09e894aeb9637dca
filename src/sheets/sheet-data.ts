import type { OwnLook } from "./own-look";

/** What a cell may hold by itself. */
export type PlainValue = string | number | boolean;

/** Names of the looks a cell may have; whoever shows a sheet decides how each looks. */
export type StyleName =
  | "title" | "says" | "heading" | "headingRight" | "input" | "inputText" | "label" | "total" | "caution" | "name" | "answer"
  | "answerText" | "answerUnit" | "strip" | "part" | "right" | "middle" | "link" | "byHand";

/** A cell as it is stored: a value or a formula, or neither where only its looks are set. A text value is text whatever it looks like. */
export interface CellData {
  readonly value?: PlainValue;
  readonly formula?: string;
  /** Number format as spreadsheets write it; "@" for a cell that takes everything typed as text. */
  readonly format?: string;
  readonly style?: StyleName;
  /** What a person has made of its look, beside the style or without one. */
  readonly look?: OwnLook;
}

/** A look that cells take on where a formula is true, written for the first of them as in a conditional format. */
export interface RuleLook {
  /** A8:A70. */
  readonly cells: string;
  readonly when: string;
  readonly look: OwnLook;
}

/** Excel takes no longer text for the choices of a list, commas between them (from memory). */
export const LONGEST_CHOICES = 255;

/** Cells in which one of these is chosen; none holds a comma. */
export interface ChoiceList {
  readonly cells: string;
  readonly options: readonly string[];
}

/** A table of which only some rows are shown. */
export interface RowFilter {
  /** A7:F70, the row of headings first. */
  readonly cells: string;
  /** What stands in the rows that stay, as it is shown, by column letters; an empty text for an empty cell. */
  readonly keeps: Readonly<Record<string, readonly string[]>>;
  /** The rows hidden, by number: those that did not match when the filter was set or applied again. */
  readonly hides: readonly number[];
}

export interface SheetData {
  readonly name: string;
  /** By address: A1, B7. */
  readonly cells: Readonly<Record<string, CellData>>;
  /** In pixels, by column letters. */
  readonly columnWidths?: Readonly<Record<string, number>>;
  /** Rows at the top, and columns at the left, that stay in view. */
  readonly frozenRows?: number;
  readonly frozenColumns?: number;
  /** In pixels, by the number of the row, of rows whose height a person has set. */
  readonly rowHeights?: Readonly<Record<string, number>>;
  readonly hiddenRows?: readonly number[];
  /** By column letters. */
  readonly hiddenColumns?: readonly string[];
  /** Blocks of cells that are one, by their corners: A1:C2. */
  readonly merged?: readonly string[];
  readonly rules?: readonly RuleLook[];
  readonly lists?: readonly ChoiceList[];
  /** One a sheet. */
  readonly filter?: RowFilter;
  readonly hidesGridLines?: true;
  /** A sheet that is not shown, and the colour of the tab of one that is. */
  readonly isHidden?: true;
  readonly tabColour?: string;
}
