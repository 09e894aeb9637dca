import type { Workbook } from "../workbook/workbook";
import type { WorkbookData } from "../workbook/workbook-data";
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

const keepWhole = async (kept: Current, read: () => WorkbookData, news: WorkbookNews): Promise<void> => {
  const before = { id: kept.keeper.known().book, name: kept.name };
  try {
    const outcome = await kept.keeper.keep(read);
    if (outcome.kind !== "overtaken") return;
    kept.name = outcome.copy;
    news.overtaken(before, { id: kept.keeper.known().book, name: outcome.copy });
  } catch (error) {
    news.notKept(error);
  }
};

/** When sheets are kept whole. */
interface Pausing {
  /** After each edit. */
  readonly again: () => void;
  readonly stop: () => void;
}

/** Calls once there is a pause, and at the latest after a while. */
const afterPause = (act: () => void): Pausing => {
  let pause: ReturnType<typeof setTimeout> | undefined;
  let latest: ReturnType<typeof setTimeout> | undefined;
  const stop = (): void => {
    clearTimeout(pause);
    clearTimeout(latest);
    latest = undefined;
  };
  return {
    again: () => {
      clearTimeout(pause);
      pause = setTimeout(act, KEEP_AFTER);
      latest ??= setTimeout(act, KEEP_AT_LATEST);
    },
    stop,
  };
};

/** Keeps what is shown in `book` on a shelf: each edit as it is made, the sheets whole once there is a pause. */
export const openWorkbook = (
  book: Pick<Workbook, "load" | "data" | "stored" | "onChange">, shelf: WorkbookShelf, news: WorkbookNews,
  pausing = afterPause,
): OpenWorkbook => {
  let current: Current | undefined;
  let isAsked = false;
  const keeping = pausing(() => void keep());

  const opened = (): Current => {
    if (current === undefined) throw new Error("no workbook is open");
    return current;
  };

  const note = (): void => {
    isAsked = false;
    const change = current?.recorder.take();
    if (current === undefined || change === undefined) return;
    current.keeper.note(change).then(news.kept, news.notKept);
    keeping.again();
  };

  const keep = async (): Promise<void> => {
    note();
    keeping.stop();
    if (current !== undefined) await keepWhole(current, () => book.data(), news);
  };

  // Once for all messages that come with one edit, and before anything else happens: the page may be gone the next moment.
  book.onChange((touched) => {
    current?.recorder.touch(touched);
    if (isAsked) return;
    isAsked = true;
    queueMicrotask(note);
  });

  const show = async (id: string): Promise<void> => {
    await keep();
    const found = await shelf.open(id);
    note();
    keeping.stop();
    const left = current;
    current = undefined;
    try {
      book.load(found.data);
      current = { recorder: changeRecorder(book), keeper: keeper(shelf, found.known), name: found.name };
    } finally {
      current ??= left;
    }
    news.opened(found);
  };

  return {
    id: () => opened().keeper.known().book,
    name: () => opened().name,
    show,
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
