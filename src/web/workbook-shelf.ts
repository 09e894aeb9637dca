import type { SheetData, WorkbookData } from "../workbook/workbook-data";
import { freeName } from "./free-name";
import { keptWhole } from "./kept-whole";
import type { KeptWhole, Opening } from "./opening";
import type { BookRecord, FileRecord, Records } from "./records";
import { bookOf, look, names, put, type ShelfStore } from "./shelf-steps";
import type { WorkbookChange } from "./workbook-change";

export interface OpenedBook {
  readonly name: string;
  readonly data: WorkbookData;
  /** Whether it is the demo as it comes. */
  readonly isDemo: boolean;
  /** The name of the file that it was opened from. */
  readonly file?: string | undefined;
  readonly known: Opening;
}

/** A file by its name. */
export interface NamedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The workbooks of this browser. */
export interface WorkbookShelf {
  /** Those kept, the one opened last first, and those deleted, the latest first. */
  readonly list: () => Promise<{ readonly kept: readonly BookRecord[]; readonly deleted: readonly BookRecord[] }>;
  /** Adds a workbook under a name that is free; without sheets it is the demo. Answers its id. */
  readonly add: (name: string, data?: WorkbookData, file?: NamedFile) => Promise<string>;
  /** Keeps what the sheets of a file were as they were shown before anything was typed. */
  readonly noteOpened: (id: string, sheets: readonly SheetData[]) => Promise<void>;
  /** The file that a workbook was opened from. */
  readonly file: (id: string) => Promise<(NamedFile & FileRecord) | undefined>;
  /** The demo as it comes: a workbook that was not changed since it was added, else a new one. */
  readonly addDemo: (name: string) => Promise<string>;
  /** Opens a workbook with every edit made since its sheets were kept whole. */
  readonly open: (id: string) => Promise<OpenedBook>;
  readonly append: (known: Opening, edit: number, change: WorkbookChange) => Promise<void>;
  /**
   * Keeps the sheets whole with the edits up to one of this tab's. Where another tab has changed the workbook meanwhile, they are kept as
   * another workbook, in which this tab goes on.
   */
  readonly keep: (known: Opening, edit: number, data: WorkbookData) => Promise<KeptWhole>;
  /** Whether another tab has kept the workbook meanwhile. */
  readonly isOvertaken: (known: Opening) => Promise<boolean>;
  readonly rename: (id: string, name: string) => Promise<string>;
  readonly duplicate: (id: string) => Promise<string>;
  /** Deletes a workbook so that it can be put back. */
  readonly remove: (id: string) => Promise<void>;
  readonly putBack: (id: string) => Promise<void>;
  /** Every workbook that is not deleted; one that this program cannot read as it stands. */
  readonly all: () => Promise<readonly { readonly name: string; readonly data: unknown }[]>;
}

/** A deleted workbook can be put back for this long, in milliseconds: 30 days. */
const DELETED_FOR = 30 * 86_400_000;

type Part<Name extends keyof WorkbookShelf> = Pick<WorkbookShelf, Name>;

const added = (shelf: ShelfStore): Part<"add" | "addDemo" | "duplicate"> => ({
  add: (name, data, file) =>
    shelf.store.change(async (records) => {
      const id = shelf.newId();
      if (file !== undefined) await records.putFile(id, { bytes: file.bytes });
      return (await put(shelf, records, name, data, id, file && { name: file.name, key: id })).id;
    }),
  addDemo: async (name) => {
    const untouched = await shelf.store.change(async (records) => {
      const found: string[] = [];
      for (const { id, deleted } of await records.books())
        if (deleted === undefined && (await records.sheets(id)) === undefined) found.push(id);
      return found;
    });
    for (const id of untouched) if ((await shelf.store.edits(id)).length === 0) return id;
    return shelf.store.change(async (records) => (await put(shelf, records, name, undefined)).id);
  },
  duplicate: (id) =>
    look(shelf, id, async (records, { book, data }) =>
      (await put(shelf, records, book.name, data === shelf.demo ? undefined : data, shelf.newId(), book.file)).id),
});

const filed = (shelf: ShelfStore): Part<"file" | "noteOpened"> => ({
  file: (id) =>
    shelf.store.change(async (records) => {
      const { file } = await bookOf(records, id);
      const found = file && (await records.file(file.key));
      return file && found && { ...found, name: file.name };
    }),
  noteOpened: (id, opened) =>
    shelf.store.change(async (records) => {
      const { file } = await bookOf(records, id);
      const found = file && (await records.file(file.key));
      if (file !== undefined && found !== undefined) await records.putFile(file.key, { ...found, opened });
    }),
});

const opened = (shelf: ShelfStore): Part<"open" | "append" | "keep" | "isOvertaken"> => ({
  open: (id) =>
    look(shelf, id, async (records, { book, data, last }) => {
      await records.putBook({ ...book, opened: shelf.now() });
      return {
        name: book.name,
        data,
        isDemo: data === shelf.demo,
        file: book.file?.name,
        known: { book: id, opening: shelf.newId(), revision: book.revision, after: last },
      };
    }),
  append: ({ book, opening, revision, after }, edit, change) => shelf.store.append({ book, opening, edit, revision, after, change }),
  keep: (known, edit, data) => keptWhole(shelf, known, edit, data),
  isOvertaken: (known) =>
    shelf.store.change(async (records) => {
      const book = await records.book(known.book);
      return book !== undefined && book.revision !== known.revision;
    }),
});

const renamed = (shelf: ShelfStore): Part<"rename" | "remove" | "putBack"> => ({
  rename: (id, name) =>
    shelf.store.change(async (records) => {
      const book = await bookOf(records, id);
      const others = (await records.books()).filter((one) => one.id !== id && one.deleted === undefined).map((one) => one.name);
      const free = freeName(name, others);
      await records.putBook({ ...book, name: free });
      return free;
    }),
  remove: (id) => shelf.store.change(async (records) => records.putBook({ ...(await bookOf(records, id)), deleted: shelf.now() })),
  putBack: (id) =>
    shelf.store.change(async (records) => {
      const { deleted: _deleted, ...book } = await bookOf(records, id);
      await records.putBook({ ...book, name: freeName(book.name, await names(records)) });
    }),
});

/** Removes a workbook with its file, unless a copy of it has that one too. */
const removeForGood = async (records: Records, { id, file }: BookRecord): Promise<void> => {
  await records.removeBook(id);
  if (file !== undefined && !(await records.books()).some((other) => other.file?.key === file.key)) await records.removeFile(file.key);
};

const listed = (shelf: ShelfStore): Part<"list" | "all"> => ({
  list: () =>
    shelf.store.change(async (records) => {
      const books = await records.books();
      // Edits of one that is long gone are never found again, and are few.
      const gone = books.filter(({ deleted }) => deleted !== undefined && deleted < shelf.now() - DELETED_FOR);
      for (const book of gone) await removeForGood(records, book);
      const deleted = books.filter((book) => book.deleted !== undefined && book.deleted >= shelf.now() - DELETED_FOR);
      return {
        kept: books.filter((book) => book.deleted === undefined).sort((one, other) => other.opened - one.opened),
        deleted: deleted.sort((one, other) => (other.deleted ?? 0) - (one.deleted ?? 0)),
      };
    }),
  all: async () => {
    const books = (await shelf.store.change((records) => records.books())).filter(({ deleted }) => deleted === undefined);
    const found: { readonly name: string; readonly data: unknown }[] = [];
    for (const { id, name } of books) {
      const asItIs = (): Promise<unknown> => shelf.store.change((records) => records.sheets(id));
      const data = await look(shelf, id, async (_, one): Promise<unknown> => one.data).catch(asItIs);
      found.push({ name, data });
    }
    return found;
  },
});

/** Workbooks in a store. */
export const workbookShelf = (shelf: ShelfStore): WorkbookShelf => ({
  ...added(shelf), ...filed(shelf), ...opened(shelf), ...renamed(shelf), ...listed(shelf),
});
