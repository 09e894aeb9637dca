/** What a cell may hold by itself. */
export type PlainValue = string | number | boolean;

/** Names of the looks a cell may have; whoever shows a sheet decides how each looks. */
export type StyleName = "title" | "says" | "heading" | "input" | "label" | "total" | "caution";

/** A cell as it is stored: a value or a formula, or neither where only its looks are set. A text value is text whatever it looks like. */
export interface CellData {
  readonly value?: PlainValue;
  readonly formula?: string;
  /** Number format as spreadsheets write it; "@" for a cell that takes everything typed as text. */
  readonly format?: string;
  readonly style?: StyleName;
}

export interface SheetData {
  readonly name: string;
  /** By address: A1, B7. */
  readonly cells: Readonly<Record<string, CellData>>;
  /** In pixels, by column letters. */
  readonly columnWidths?: Readonly<Record<string, number>>;
  /** Rows at the top that stay in view. */
  readonly frozenRows?: number;
}
