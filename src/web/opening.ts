/** What a tab knows of the workbook that it opened: from there its edits go on. */
export interface Opening {
  readonly book: string;
  readonly opening: string;
  readonly revision: number;
  readonly after: number;
  /** The opening that this one took the place of when another tab had been before. */
  readonly instead?: Pick<Opening, "book" | "opening">;
}

/** What came of keeping sheets whole: the revision now, or the name of the copy where another tab had been before. */
export type KeptWhole = { readonly revision: number } | { readonly copy: string; readonly known: Opening };
