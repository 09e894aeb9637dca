import { memoryRecords } from "../../src/web/memory-records";
import type { RecordStore } from "../../src/web/records";
import { type WorkbookShelf, workbookShelf } from "../../src/web/workbook-shelf";
import type { CellData, WorkbookData } from "../../src/workbook/workbook-data";

/** A workbook of one sheet. */
export const oneSheet = (cells: Readonly<Record<string, CellData>>): WorkbookData => ({ version: 1, sheets: [{ name: "Job", cells }] });

export const DEMO = oneSheet({ A1: { value: "demo" } });

let ids = 0;

/** The shelf of a browser whose clock goes on by a second with every look at it. */
export const shelfOf = (store: RecordStore = memoryRecords(), clock = { now: 1000 }): WorkbookShelf => {
  return workbookShelf({ store, demo: DEMO, now: () => (clock.now += 1000), newId: () => `id ${(ids += 1)}` });
};

/** A store in which steps wait until they are let, as a browser's does; `let` ends what waits first. */
export const slowStore = (store: RecordStore) => {
  const waiting: (() => void)[] = [];
  const turn = (): Promise<void> => new Promise((resolve) => void setImmediate(resolve));
  return {
    store: {
      append: store.append,
      edits: store.edits,
      removeEdits: store.removeEdits,
      change: <Value>(step: Parameters<typeof store.change<Value>>[0]): Promise<Value> =>
        new Promise((resolve, reject) => {
          waiting.push(() => void store.change(step).then(resolve, reject));
        }),
    } satisfies RecordStore,
    /** When what was begun waits to be let. */
    begun: turn,
    let: async (): Promise<void> => {
      await turn();
      waiting.shift()?.();
      await turn();
    },
  };
};
