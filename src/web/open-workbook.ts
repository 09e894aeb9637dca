import type { Workbook } from "../workbook/workbook";
import { type ChangeRecorder, changeRecorder } from "./change-recorder";
import { type Keeper, keeper } from "./keeper";
import type { OpenedBook, WorkbookShelf } from "./workbook-shelf";

/** Sheets are kept whole this long after the last edit, and at the latest this long after the first one, in milliseconds. */
const KEEP_AFTER = 400;
const KEEP_AT_LATEST = 5000;

interface Listed {
  readonly id: string;
  readonly name: string;
}

/** What happens to the workbook of this tab. */
export interface WorkbookNews {
  readonly opened: (book: OpenedBook) => void;
  readonly kept: () => void;
  readonly notKept: (error: unknown) => void;
  /** Another tab changed the workbook: what this tab holds goes on as the copy, or, where nothing was changed here, there is none. */
  readonly overtaken: (book: Listed, copy: Listed | undefined) => void;
}

/** The workbook that this tab shows, kept as it is changed. */
export interface OpenWorkbook {
  readonly id: () => string;
  readonly name: () => string;
  /** Shows a workbook in the place of the one there, which is kept first. */
  readonly show: (id: string) => Promise<void>;
  /** Keeps all that was typed, and the sheets whole. */
  readonly keep: () => Promise<void>;
  /** Looks whether another tab has changed the workbook. */
  readonly check: () => Promise<void>;
  readonly isNamed: (name: string) => void;
}

interface Current {
  readonly recorder: ChangeRecorder;
  readonly keeper: Keeper;
  name: string;
}

/** Keeps what is shown in `book` on a shelf: each edit as it is made, the sheets whole once there is a pause. */
export const openWorkbook = (
  book: Pick<Workbook, "load" | "data" | "stored" | "onChange">, shelf: WorkbookShelf, news: WorkbookNews,
): OpenWorkbook => {
  let current: Current | undefined;
  let isAsked = false;
  let firstTimer: ReturnType<typeof setTimeout> | undefined;
  let lastTimer: ReturnType<typeof setTimeout> | undefined;

  const opened = (): Current => {
    if (current === undefined) throw new Error("no workbook is open");
    return current;
  };

  const clearTimers = (): void => {
    clearTimeout(firstTimer);
    clearTimeout(lastTimer);
    firstTimer = undefined;
  };

  const note = (): void => {
    isAsked = false;
    if (current === undefined) return;
    const change = current.recorder.take();
    if (change === undefined) return;
    current.keeper.note(change).then(news.kept, news.notKept);
    clearTimeout(lastTimer);
    lastTimer = setTimeout(() => void keep(), KEEP_AFTER);
    firstTimer ??= setTimeout(() => void keep(), KEEP_AT_LATEST);
  };

  const keep = async (): Promise<void> => {
    note();
    clearTimers();
    if (current === undefined) return;
    const kept = current;
    const before = { id: kept.keeper.known().book, name: kept.name };
    try {
      const outcome = await kept.keeper.keep(() => book.data());
      if (outcome.kind !== "overtaken") return;
      kept.name = outcome.copy;
      news.overtaken(before, { id: kept.keeper.known().book, name: outcome.copy });
    } catch (error) {
      news.notKept(error);
    }
  };

  // Once for all messages that come with one edit, and before anything else happens: the page may be gone the next moment.
  book.onChange((touched) => {
    if (current === undefined) return;
    current.recorder.touch(touched);
    if (isAsked) return;
    isAsked = true;
    queueMicrotask(note);
  });

  return {
    id: () => opened().keeper.known().book,
    name: () => opened().name,
    show: async (id) => {
      await keep();
      const found = await shelf.open(id);
      note();
      clearTimers();
      const left = current;
      current = undefined;
      try {
        book.load(found.data);
        current = { recorder: changeRecorder(book), keeper: keeper(shelf, found.known), name: found.name };
      } finally {
        current ??= left;
      }
      news.opened(found);
    },
    keep,
    check: async () => {
      if (current === undefined) return;
      const { keeper: asked, name } = current;
      if (await asked.isOvertaken()) news.overtaken({ id: asked.known().book, name }, undefined);
    },
    isNamed: (name) => {
      opened().name = name;
    },
  };
};
