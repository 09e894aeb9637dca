import type { WorkbookData } from "../workbook/workbook-data";
import { inTurn } from "./in-turn";
import type { BookRecord, FileRecord, PlacedEdit, Records, RecordStore } from "./records";

/** Records for as long as the page is open, where the browser keeps none. */
export const memoryRecords = (): RecordStore => {
  let books = new Map<string, BookRecord>();
  let sheets = new Map<string, WorkbookData>();
  let files = new Map<string, FileRecord>();
  let edits: readonly PlacedEdit[] = [];
  let places = 0;
  const records: Records = {
    book: async (id) => books.get(id),
    books: async () => [...books.values()],
    putBook: async (book) => void books.set(book.id, book),
    sheets: async (id) => sheets.get(id),
    putSheets: async (id, data) => void sheets.set(id, data),
    removeBook: async (id) => {
      books.delete(id);
      sheets.delete(id);
    },
    file: async (key) => files.get(key),
    putFile: async (key, file) => void files.set(key, file),
    removeFile: async (key) => void files.delete(key),
  };
  const next = inTurn();
  return {
    append: async (edit) => {
      places += 1;
      edits = [...edits, { ...edit, place: places }];
    },
    edits: async (book) => edits.filter((edit) => edit.book === book),
    removeEdits: async (removed) => {
      const gone = new Set(removed.map(({ place }) => place));
      edits = edits.filter(({ place }) => !gone.has(place));
    },
    change: (step) =>
      next(async () => {
        const were = [new Map(books), new Map(sheets), new Map(files)] as const;
        try {
          return await step(records);
        } catch (error) {
          [books, sheets, files] = were;
          throw error;
        }
      }),
  };
};
