import type { SheetData, WorkbookData } from "../workbook/workbook-data";
import type { WorkbookChange } from "./workbook-change";

/** The file that a workbook was opened from, for saving into it. */
export interface FileRecord {
  readonly bytes: Uint8Array;
  /** The sheets as they were shown before anything was typed. */
  readonly opened?: readonly SheetData[];
}

/** A workbook of this browser, all but its sheets. */
export interface BookRecord {
  readonly id: string;
  readonly name: string;
  /** Counts the times its sheets were kept whole; a tab that knows an older count has been overtaken by another. */
  readonly revision: number;
  /** Which opening of it kept the sheets whole last, and up to which of its edits the sheets hold each opening's. */
  readonly keptBy?: string;
  readonly holds?: Readonly<Record<string, number>>;
  /** When it was last changed, last opened, and deleted, in milliseconds since 1970. */
  readonly changed: number;
  readonly opened: number;
  readonly deleted?: number;
  /** The file that it was opened from: its name, and what it is kept under, which copies of the workbook share. */
  readonly file?: { readonly name: string; readonly key: string };
}

/** One edit as it was made, kept until the sheets are kept whole. */
export interface EditRecord {
  readonly book: string;
  /** A workbook opened in a tab: each opening has a name of its own and counts its edits from 1. */
  readonly opening: string;
  readonly edit: number;
  /** What was known when the workbook was opened: its revision, and the place of the last edit after it, 0 where there was none. */
  readonly revision: number;
  readonly after: number;
  readonly change: WorkbookChange;
}

/** An edit with its place in the order in which the edits of all tabs came. */
export interface PlacedEdit extends EditRecord {
  readonly place: number;
}

/** Workbooks as one step sees and changes them. */
export interface Records {
  readonly book: (id: string) => Promise<BookRecord | undefined>;
  readonly books: () => Promise<readonly BookRecord[]>;
  readonly putBook: (book: BookRecord) => Promise<void>;
  /** Sheets as they were last kept whole; not yet read by our rules. */
  readonly sheets: (id: string) => Promise<unknown>;
  readonly putSheets: (id: string, data: WorkbookData) => Promise<void>;
  readonly removeBook: (id: string) => Promise<void>;
  readonly file: (key: string) => Promise<FileRecord | undefined>;
  readonly putFile: (key: string, file: FileRecord) => Promise<void>;
  readonly removeFile: (key: string) => Promise<void>;
}

/**
 * Where workbooks are kept between visits. Edits stand apart from the rest: a step takes as long as the page is busy, and an edit that
 * waited for one to end would be lost with a page that is killed meanwhile.
 */
export interface RecordStore {
  /** Adds an edit at once, without asking anything first: the page may be gone the next moment. */
  readonly append: (edit: EditRecord) => Promise<void>;
  /** The edits of a workbook, in the order in which they came. */
  readonly edits: (book: string) => Promise<readonly PlacedEdit[]>;
  readonly removeEdits: (edits: readonly PlacedEdit[]) => Promise<void>;
  /** Does a step that other tabs see whole or not at all. */
  readonly change: <Value>(step: (records: Records) => Promise<Value>) => Promise<Value>;
}
