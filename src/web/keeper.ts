import type { SheetStore } from "./sheet-store";

/** What came of keeping: done, nothing had changed, or another tab has kept newer sheets, after which this one keeps nothing more. */
export type KeptOutcome = "kept" | "unchanged" | "overtaken";

/**
 * Keeps the sheets of this tab one time after another: a second keeping begins only when the one before has its revision, which it would
 * else take for another tab's.
 */
export const keeper = <Data>(store: SheetStore, known: number, opened: Data): ((data: () => Data) => Promise<KeptOutcome>) => {
  let revision = known;
  // The engine tells of changes that leave the sheets as they were: only what is stored counts.
  let keptText = JSON.stringify(opened);
  let isOvertaken = false;
  const keepNow = async (read: () => Data): Promise<KeptOutcome> => {
    if (isOvertaken) return "overtaken";
    const data = read();
    const text = JSON.stringify(data);
    if (text === keptText) return "unchanged";
    const next = await store.keep(data, revision);
    if (next === undefined) {
      isOvertaken = true;
      return "overtaken";
    }
    revision = next;
    keptText = text;
    return "kept";
  };
  let before: Promise<unknown> = Promise.resolve();
  return (data) => {
    const mine = before.then(() => keepNow(data));
    before = mine.catch(() => undefined);
    return mine;
  };
};
