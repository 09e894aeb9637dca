import { messageOf } from "../pane/message-of";
import type { WorkbookData } from "../workbook/workbook-data";
import { browserRecords } from "./browser-records";
import { memoryRecords } from "./memory-records";
import type { RecordStore } from "./records";
import { type WorkbookShelf, workbookShelf } from "./workbook-shelf";

/**
 * A store that has not answered after so many waits of so many milliseconds is taken for one that never will. While the sheet is set up
 * beside it nothing can be answered, and that is one wait however long it takes.
 */
const WAITS = 50;
const WAIT = 100;

const inTime = <Value>(answer: Promise<Value>): Promise<Value> =>
  new Promise((resolve, reject) => {
    let waits = 0;
    const waiting = setInterval(() => {
      waits += 1;
      if (waits >= WAITS) reject(new Error("it does not answer"));
    }, WAIT);
    answer.then(resolve, reject).finally(() => clearInterval(waiting));
  });

const shelfOn = (store: RecordStore, demo: WorkbookData): WorkbookShelf =>
  workbookShelf({ store, demo, now: () => Date.now(), newId: () => crypto.randomUUID() });

/** The workbooks of this browser; where its store does not answer, a shelf for as long as the page is open, and why. */
export const openedShelf = async (
  factory: () => IDBFactory, demo: WorkbookData,
): Promise<{ readonly shelf: WorkbookShelf; readonly fault: string | undefined }> => {
  try {
    const open = async (): Promise<WorkbookShelf> => {
      const shelf = shelfOn(await browserRecords(factory()), demo);
      await shelf.list();
      return shelf;
    };
    return { shelf: await inTime(open()), fault: undefined };
  } catch (error) {
    return { shelf: shelfOn(memoryRecords(), demo), fault: messageOf(error) };
  }
};
