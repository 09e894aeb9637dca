import type { WorkbookData } from "../workbook/workbook-data";
import { inTurn } from "./in-turn";
import type { Opening } from "./opening";
import type { WorkbookChange } from "./workbook-change";
import type { WorkbookShelf } from "./workbook-shelf";

/** What came of keeping whole: done, nothing had changed, or another tab was before and the sheets are kept as a copy. */
export type KeptOutcome = { readonly kind: "kept" | "unchanged" } | { readonly kind: "overtaken"; readonly copy: string };

/** Keeps the workbook of this tab: each edit at once, and now and then the sheets whole, in the place of the edits. */
export interface Keeper {
  readonly note: (change: WorkbookChange) => Promise<void>;
  readonly keep: (read: () => WorkbookData) => Promise<KeptOutcome>;
  /** Whether another tab has kept the workbook while nothing was changed here. */
  readonly isOvertaken: () => Promise<boolean>;
  readonly known: () => Opening;
}

/**
 * Keeps one time after another: a second keeping begins only when the one before has its revision, which it would else take for another
 * tab's.
 */
export const keeper = (shelf: Pick<WorkbookShelf, "append" | "keep" | "isOvertaken">, opened: Opening): Keeper => {
  let known = opened;
  let edit = 0;
  let keptEdit = 0;
  const keepNow = async (read: () => WorkbookData): Promise<KeptOutcome> => {
    if (edit === keptEdit) return { kind: "unchanged" };
    const upTo = edit;
    const kept = await shelf.keep(known, upTo, read());
    if ("revision" in kept) {
      keptEdit = upTo;
      const { instead: _instead, ...rest } = known;
      known = { ...rest, revision: kept.revision };
      return { kind: "kept" };
    }
    known = kept.known;
    [edit, keptEdit] = [edit - upTo, 0];
    // Edits made meanwhile went to the earlier opening: they are taken along at once.
    if (edit > 0) await keepNow(read);
    return { kind: "overtaken", copy: kept.copy };
  };
  const next = inTurn();
  return {
    note: (change) => {
      edit += 1;
      return shelf.append(known, edit, change);
    },
    keep: (read) => next(() => keepNow(read)),
    isOvertaken: () => next(async () => edit === keptEdit && (await shelf.isOvertaken(known))),
    known: () => known,
  };
};
