import type { BookRecord, EditRecord, FileRecord, Records, RecordStore } from "./records";

const DATABASE = "treadsheet";
const VERSION = 2;
const BOOKS = "books";
const SHEETS = "sheets";
const EDITS = "edits";
const OF_BOOK = "book";
/** Where the first version kept its only workbook, with its revision beside it. */
const ONLY_BOOK = "workbook";
const ONLY_NAME = "My sheets";

const answered = <Value>(request: IDBRequest<Value>): Promise<Value> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("the browser's store gave no reason"));
  });

const ended = (transaction: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error("the browser's store gave no reason"));
  });

const takeOver = async (sheets: IDBObjectStore, books: IDBObjectStore): Promise<void> => {
  const old = (await answered(sheets.get(ONLY_BOOK))) as { readonly revision: number; readonly data: unknown } | undefined;
  if (old === undefined) return;
  const now = Date.now();
  sheets.put(old.data, ONLY_BOOK);
  books.put({ id: ONLY_BOOK, name: ONLY_NAME, revision: old.revision, changed: now, opened: now } satisfies BookRecord, ONLY_BOOK);
};

const upgraded = ({ result: database, transaction }: IDBOpenDBRequest, from: number): void => {
  const books = database.createObjectStore(BOOKS);
  database.createObjectStore(EDITS, { autoIncrement: true }).createIndex(OF_BOOK, "book");
  if (from === 0) database.createObjectStore(SHEETS);
  else if (transaction !== null) void takeOver(transaction.objectStore(SHEETS), books);
};

const opened = (factory: IDBFactory): Promise<IDBDatabase> => {
  const request = factory.open(DATABASE, VERSION);
  request.onupgradeneeded = ({ oldVersion }) => upgraded(request, oldVersion);
  return new Promise((resolve, reject) => {
    request.onblocked = () => reject(new Error("another tab holds it with an older version of this page; close that tab and reload"));
    answered(request).then(resolve, reject);
  });
};

/** Files stand beside the sheets, under names that no workbook has. */
const fileKey = (key: string): string => `file/${key}`;

const recordsOf = (transaction: IDBTransaction): Records => {
  const [books, sheets] = [transaction.objectStore(BOOKS), transaction.objectStore(SHEETS)];
  return {
    book: (id) => answered(books.get(id)) as Promise<BookRecord | undefined>,
    books: () => answered(books.getAll()) as Promise<BookRecord[]>,
    putBook: async (book) => void (await answered(books.put(book, book.id))),
    sheets: (id) => answered(sheets.get(id)) as Promise<unknown>,
    putSheets: async (id, data) => void (await answered(sheets.put(data, id))),
    removeBook: async (id) => {
      books.delete(id);
      sheets.delete(id);
    },
    file: (key) => answered(sheets.get(fileKey(key))) as Promise<FileRecord | undefined>,
    putFile: async (key, file) => void (await answered(sheets.put(file, fileKey(key)))),
    removeFile: async (key) => void sheets.delete(fileKey(key)),
  };
};

/** The browser's own store. */
export const browserRecords = async (factory: IDBFactory): Promise<RecordStore> => {
  const database = await opened(factory);
  // A later version of this page must not wait for this tab.
  database.onversionchange = () => database.close();

  // Ended with what it asks at first: without that it would stay open until this page has heard the answer.
  const atOnce = async <Value>(mode: IDBTransactionMode, ask: (edits: IDBObjectStore) => Value): Promise<Value> => {
    const transaction = database.transaction(EDITS, mode);
    const done = ended(transaction);
    const asked = ask(transaction.objectStore(EDITS));
    transaction.commit();
    await done;
    return asked;
  };

  return {
    append: async (edit) => void (await atOnce("readwrite", (edits) => edits.add(edit))),
    edits: async (book) => {
      const [places, found] = await atOnce("readonly", (edits): [IDBRequest<IDBValidKey[]>, IDBRequest<EditRecord[]>] => [
        edits.index(OF_BOOK).getAllKeys(book), edits.index(OF_BOOK).getAll(book),
      ]);
      return found.result.map((edit, index) => ({ ...edit, place: Number(places.result[index]) }));
    },
    removeEdits: async (removed) =>
      atOnce("readwrite", (edits) => {
        for (const { place } of removed) edits.delete(place);
      }),
    change: async (step) => {
      const transaction = database.transaction([BOOKS, SHEETS], "readwrite");
      const done = ended(transaction);
      done.catch(() => undefined);
      try {
        const value = await step(recordsOf(transaction));
        await done;
        return value;
      } catch (error) {
        // Ended by itself where the store refused.
        if (transaction.error === null) transaction.abort();
        throw error;
      }
    },
  };
};
