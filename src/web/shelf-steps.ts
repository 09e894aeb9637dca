import { workbookData, type WorkbookData } from "../workbook/workbook-data";
import { editChain } from "./edit-chain";
import { freeName } from "./free-name";
import type { BookRecord, PlacedEdit, Records, RecordStore } from "./records";
import { replayed } from "./replayed";

/** What a shelf works with: the store, what a workbook without sheets of its own shows, the clock, and names that nothing else has. */
export interface ShelfStore {
  readonly store: RecordStore;
  readonly demo: WorkbookData;
  readonly now: () => number;
  readonly newId: () => string;
}

interface Current {
  readonly book: BookRecord;
  readonly data: WorkbookData;
  /** The place of the last edit in it. */
  readonly last: number;
  /** Edits that have become a workbook of their own. */
  readonly rescued: readonly PlacedEdit[];
}

export const rescuedIn = (others: ReadonlyMap<string, readonly PlacedEdit[]>): readonly PlacedEdit[] =>
  [...others].flatMap(([opening, edits]) => edits.filter((edit) => edit.opening === opening));

export const bookOf = async (records: Records, id: string): Promise<BookRecord> => {
  const book = await records.book(id);
  if (book === undefined) throw new Error("this workbook is no longer in this browser");
  return book;
};

export const names = async (records: Records): Promise<readonly string[]> =>
  (await records.books()).flatMap(({ name, deleted }) => (deleted === undefined ? [name] : []));

export const wholeOf = async (shelf: ShelfStore, records: Records, id: string): Promise<WorkbookData> => {
  const raw = await records.sheets(id);
  return raw === undefined ? shelf.demo : workbookData(raw);
};

export const put = async (
  shelf: ShelfStore, records: Records, name: string, data: WorkbookData | undefined, id = shelf.newId(), file?: BookRecord["file"],
): Promise<BookRecord> => {
  const book: BookRecord = {
    id, name: freeName(name, await names(records)), revision: 0, changed: shelf.now(), opened: 0, ...(file === undefined ? {} : { file }),
  };
  await records.putBook(book);
  if (data !== undefined) await records.putSheets(id, data);
  return book;
};

/**
 * Sheets of a tab that another was before go under a workbook of their own, which goes by the tab's opening: once made it is found again.
 * It says up to which edit of the tab it holds.
 */
export const putApart = async (
  shelf: ShelfStore, records: Records, of: BookRecord, opening: string, edit: number, data: WorkbookData,
): Promise<BookRecord> => {
  const before = await records.book(opening);
  const { deleted: _deleted, keptBy: _keptBy, ...rest } = before ?? (await put(shelf, records, of.name, undefined, opening, of.file));
  const book = { ...rest, revision: rest.revision + 1, holds: { [opening]: edit }, changed: shelf.now() };
  await records.putBook(book);
  await records.putSheets(opening, data);
  return book;
};

/** Edits of tabs that another was before, and that perhaps did not live to tell. */
export const rescue = async (
  shelf: ShelfStore, records: Records, book: BookRecord, whole: WorkbookData, others: ReadonlyMap<string, readonly PlacedEdit[]>,
): Promise<void> => {
  for (const [opening, edits] of others) {
    const before = await records.book(opening);
    const held = before?.holds?.[opening] ?? 0;
    const fresh = before === undefined ? edits : edits.filter((one) => one.opening === opening && one.edit > held);
    const last = fresh.at(-1);
    if (last === undefined) continue;
    const data = replayed(before === undefined ? whole : await wholeOf(shelf, records, opening), fresh);
    await putApart(shelf, records, book, opening, last.edit, data);
  }
};

/** A workbook with its edits, which were read before: those that came since are another look's. */
const current = async (shelf: ShelfStore, records: Records, id: string, edits: readonly PlacedEdit[]): Promise<Current> => {
  const book = await bookOf(records, id);
  const whole = await wholeOf(shelf, records, id);
  const { main, others } = editChain(book, edits);
  await rescue(shelf, records, book, whole, others);
  return { book, data: replayed(whole, main), last: main.at(-1)?.place ?? 0, rescued: rescuedIn(others) };
};

/** Does something with a workbook as it is now. */
export const look = async <Value>(
  shelf: ShelfStore, id: string, then: (records: Records, found: Current) => Promise<Value>,
): Promise<Value> => {
  const edits = await shelf.store.edits(id);
  const [value, rescued] = await shelf.store.change(async (records): Promise<[Value, readonly PlacedEdit[]]> => {
    const found = await current(shelf, records, id, edits);
    return [await then(records, found), found.rescued];
  });
  await shelf.store.removeEdits(rescued);
  return value;
};
