import { formulaFault } from "../workbook/formula-limits";
import { type CellData, workbookData, type WorkbookData } from "../workbook/workbook-data";
import { editChain } from "./edit-chain";
import { freeName } from "./free-name";
import type { BookRecord, PlacedEdit, Records, RecordStore } from "./records";
import { changed, type WorkbookChange } from "./workbook-change";

/** What a tab knows of the workbook that it opened: from there its edits go on. */
export interface Opening {
  readonly book: string;
  readonly opening: string;
  readonly revision: number;
  readonly after: number;
  /** The opening that this one took the place of when another tab had been before. */
  readonly instead?: Pick<Opening, "book" | "opening">;
}

export interface OpenedBook {
  readonly name: string;
  readonly data: WorkbookData;
  /** Whether it is the demo as it comes. */
  readonly isDemo: boolean;
  readonly known: Opening;
}

/** What came of keeping sheets whole: the revision now, or the name of the copy where another tab had been before. */
export type KeptWhole = { readonly revision: number } | { readonly copy: string; readonly known: Opening };

/** The workbooks of this browser. */
export interface WorkbookShelf {
  /** Those kept, the one opened last first, and those deleted, the latest first. */
  readonly list: () => Promise<{ readonly kept: readonly BookRecord[]; readonly deleted: readonly BookRecord[] }>;
  /** Adds a workbook under a name that is free; without sheets it is the demo. Answers its id. */
  readonly add: (name: string, data?: WorkbookData) => Promise<string>;
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

const bookOf = async (records: Records, id: string): Promise<BookRecord> => {
  const book = await records.book(id);
  if (book === undefined) throw new Error("this workbook is no longer in this browser");
  return book;
};

/** A formula that would stop the page when it is opened stays as the text of it. */
const openable = (cell: CellData | null): CellData | null => {
  if (cell?.formula === undefined || formulaFault(cell.formula) === undefined) return cell;
  const { formula, ...rest } = cell;
  return { ...rest, value: formula };
};

const replayed = (data: WorkbookData, edits: readonly PlacedEdit[]): WorkbookData =>
  edits.reduce(
    (before, { change }) =>
      changed(before, {
        ...change,
        sheets: change.sheets.map(({ cells, ...sheet }) =>
          cells === undefined
            ? sheet
            : { ...sheet, cells: Object.fromEntries(Object.entries(cells).map(([address, cell]) => [address, openable(cell)])) },
        ),
      }),
    data,
  );

interface Current {
  readonly book: BookRecord;
  readonly data: WorkbookData;
  /** The place of the last edit in it. */
  readonly last: number;
  /** Edits that have become a workbook of their own. */
  readonly rescued: readonly PlacedEdit[];
}

const rescuedIn = (others: ReadonlyMap<string, readonly PlacedEdit[]>): readonly PlacedEdit[] =>
  [...others].flatMap(([opening, edits]) => edits.filter((edit) => edit.opening === opening));

/** Up to which edit of each opening the sheets hold them, once they hold these; of what they held before, what was not yet cleared away. */
const heldThen = (
  before: Readonly<Record<string, number>> | undefined, found: readonly PlacedEdit[], now: readonly Pick<PlacedEdit, "opening" | "edit">[],
): Readonly<Record<string, number>> => {
  const held: Record<string, number> = {};
  for (const { opening } of found) if (before?.[opening] !== undefined) held[opening] = before[opening];
  for (const { opening, edit } of now) held[opening] = Math.max(held[opening] ?? 0, edit);
  return held;
};

/** Workbooks in a store. `demo` is what a workbook without sheets of its own shows. */
export const workbookShelf = (
  store: RecordStore, demo: WorkbookData, now: () => number, newId: () => string,
): WorkbookShelf => {
  const names = async (records: Records): Promise<readonly string[]> =>
    (await records.books()).flatMap(({ name, deleted }) => (deleted === undefined ? [name] : []));

  const wholeOf = async (records: Records, id: string): Promise<WorkbookData> => {
    const raw = await records.sheets(id);
    return raw === undefined ? demo : workbookData(raw);
  };

  const put = async (records: Records, name: string, data: WorkbookData | undefined, id = newId()): Promise<BookRecord> => {
    const book = { id, name: freeName(name, await names(records)), revision: 0, changed: now(), opened: 0 };
    await records.putBook(book);
    if (data !== undefined) await records.putSheets(id, data);
    return book;
  };

  /**
   * Sheets of a tab that another was before go under a workbook of their own, which goes by the tab's opening: once made it is found again.
   * It says up to which edit of the tab it holds.
   */
  const putApart = async (records: Records, of: BookRecord, opening: string, edit: number, data: WorkbookData): Promise<BookRecord> => {
    const before = await records.book(opening);
    const { deleted: _deleted, keptBy: _keptBy, ...rest } = before ?? (await put(records, of.name, undefined, opening));
    const book = { ...rest, revision: rest.revision + 1, holds: { [opening]: edit }, changed: now() };
    await records.putBook(book);
    await records.putSheets(opening, data);
    return book;
  };

  /** Edits of tabs that another was before, and that perhaps did not live to tell. */
  const rescue = async (
    records: Records, book: BookRecord, whole: WorkbookData, others: ReadonlyMap<string, readonly PlacedEdit[]>,
  ): Promise<void> => {
    for (const [opening, edits] of others) {
      const before = await records.book(opening);
      const held = before?.holds?.[opening] ?? 0;
      const fresh = before === undefined ? edits : edits.filter((one) => one.opening === opening && one.edit > held);
      const last = fresh.at(-1);
      if (last === undefined) continue;
      const data = replayed(before === undefined ? whole : await wholeOf(records, opening), fresh);
      await putApart(records, book, opening, last.edit, data);
    }
  };

  /** A workbook with its edits, which were read before: those that came since are another look's. */
  const current = async (records: Records, id: string, edits: readonly PlacedEdit[]): Promise<Current> => {
    const book = await bookOf(records, id);
    const whole = await wholeOf(records, id);
    const { main, others } = editChain(book, edits);
    await rescue(records, book, whole, others);
    return { book, data: replayed(whole, main), last: main.at(-1)?.place ?? 0, rescued: rescuedIn(others) };
  };

  /** What a tab wrote under its earlier opening before it heard that another had been before. */
  const editsLeft = async ({ book, opening }: Pick<Opening, "book" | "opening">): Promise<readonly PlacedEdit[]> =>
    (await store.edits(book)).filter((edit) => edit.opening === opening);

  const inStep = <Value>(step: (records: Records) => Promise<Value>): Promise<Value> => store.change(step);

  const look = async <Value>(id: string, then: (records: Records, found: Current) => Promise<Value>): Promise<Value> => {
    const edits = await store.edits(id);
    const [value, rescued] = await inStep(async (records): Promise<[Value, readonly PlacedEdit[]]> => {
      const found = await current(records, id, edits);
      return [await then(records, found), found.rescued];
    });
    await store.removeEdits(rescued);
    return value;
  };

  return {
    list: () =>
      inStep(async (records) => {
        const books = await records.books();
        // Edits of one that is long gone are never found again, and are few.
        for (const { id, deleted } of books) if (deleted !== undefined && deleted < now() - DELETED_FOR) await records.removeBook(id);
        const deleted = books.filter((book) => book.deleted !== undefined && book.deleted >= now() - DELETED_FOR);
        return {
          kept: books.filter((book) => book.deleted === undefined).sort((one, other) => other.opened - one.opened),
          deleted: deleted.sort((one, other) => (other.deleted ?? 0) - (one.deleted ?? 0)),
        };
      }),
    add: (name, data) => inStep(async (records) => (await put(records, name, data)).id),
    addDemo: async (name) => {
      const untouched = await inStep(async (records) => {
        const found: string[] = [];
        for (const { id, deleted } of await records.books())
          if (deleted === undefined && (await records.sheets(id)) === undefined) found.push(id);
        return found;
      });
      for (const id of untouched) if ((await store.edits(id)).length === 0) return id;
      return inStep(async (records) => (await put(records, name, undefined)).id);
    },
    open: (id) =>
      look(id, async (records, { book, data, last }) => {
        await records.putBook({ ...book, opened: now() });
        return {
          name: book.name,
          data,
          isDemo: data === demo,
          known: { book: id, opening: newId(), revision: book.revision, after: last },
        };
      }),
    append: ({ book, opening, revision, after }, edit, change) => store.append({ book, opening, edit, revision, after, change }),
    keep: async (known, edit, data) => {
      const edits = await store.edits(known.book);
      const left = known.instead === undefined ? [] : await editsLeft(known.instead);
      const mine = [...edits.filter((one) => one.opening === known.opening && one.edit <= edit), ...left];
      const [kept, gone] = await inStep(async (records): Promise<[KeptWhole, readonly PlacedEdit[]]> => {
        const book = await bookOf(records, known.book);
        const { main, others } = editChain(book, edits);
        if (book.revision !== known.revision || main.some((one) => one.opening !== known.opening && one.place > known.after)) {
          const copy = await putApart(records, book, known.opening, edit, data);
          const instead = { book: known.book, opening: known.opening };
          return [{ copy: copy.name, known: { book: copy.id, opening: newId(), revision: copy.revision, after: 0, instead } }, mine];
        }
        const theirs = new Map([...others].filter(([opening]) => opening !== known.opening));
        if (theirs.size > 0) await rescue(records, book, await wholeOf(records, known.book), theirs);
        const { deleted: _deleted, ...rest } = book;
        const followed = main.filter((one) => one.opening !== known.opening);
        const holds = heldThen(book.holds, edits, [...followed, ...left, { opening: known.opening, edit }]);
        const revision = book.revision + 1;
        await records.putBook({ ...rest, revision, keptBy: known.opening, holds, changed: now() });
        await records.putSheets(known.book, data);
        return [{ revision }, [...mine, ...followed, ...rescuedIn(theirs)]];
      });
      await store.removeEdits(gone);
      return kept;
    },
    isOvertaken: (known) =>
      inStep(async (records) => {
        const book = await records.book(known.book);
        return book !== undefined && book.revision !== known.revision;
      }),
    rename: (id, name) =>
      inStep(async (records) => {
        const book = await bookOf(records, id);
        const others = (await records.books()).filter((one) => one.id !== id && one.deleted === undefined).map((one) => one.name);
        const free = freeName(name, others);
        await records.putBook({ ...book, name: free });
        return free;
      }),
    duplicate: (id) =>
      look(id, async (records, { book, data }) => (await put(records, book.name, data === demo ? undefined : data)).id),
    remove: (id) => inStep(async (records) => records.putBook({ ...(await bookOf(records, id)), deleted: now() })),
    putBack: (id) =>
      inStep(async (records) => {
        const { deleted: _deleted, ...book } = await bookOf(records, id);
        await records.putBook({ ...book, name: freeName(book.name, await names(records)) });
      }),
    all: async () => {
      const books = (await inStep((records) => records.books())).filter(({ deleted }) => deleted === undefined);
      const found: { readonly name: string; readonly data: unknown }[] = [];
      for (const { id, name } of books) {
        const data = await look(id, async (_, one): Promise<unknown> => one.data).catch(() => inStep((records) => records.sheets(id)));
        found.push({ name, data });
      }
      return found;
    },
  };
};
