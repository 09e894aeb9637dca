import fc from "fast-check";
import { memoryRecords } from "../../src/web/memory-records";
import { openWorkbook } from "../../src/web/open-workbook";
import type { RecordStore } from "../../src/web/records";
import type { Workbook } from "../../src/workbook/workbook";
import type { WorkbookData } from "../../src/workbook/workbook-data";
import { shelfOf } from "../web/shelf";
import { nextName, type PlainModel, sheetAt, stepped } from "./plain-model";
import { type Step, step } from "./soak-steps";

/** Puts the cells of each sheet in one order, and leaves out what a plain model has no word for. */
const plain = (sheets: WorkbookData["sheets"] | PlainModel["sheets"]) =>
  sheets.map(({ name, cells }) => ({
    name,
    cells: Object.fromEntries(Object.entries(cells).sort(([one], [other]) => (one < other ? -1 : 1))),
  }));

/** A tab on a store: once killed it reaches the store no more, not even to end what it had begun. */
const tabOf = (book: Workbook, records: RecordStore, id: string) => {
  let isAlive = true;
  const news = { opened: () => undefined, kept: () => undefined, notKept: () => undefined, overtaken: () => undefined };
  const whileAlive = <Parts extends object>(parts: Parts): Parts =>
    new Proxy(parts, {
      get: (target, name, self) => {
        if (!isAlive) throw new Error("the tab was killed");
        return Reflect.get(target, name, self) as unknown;
      },
    });
  const store: RecordStore = { ...records, change: (work) => records.change((found) => work(whileAlive(found))) };
  const open = openWorkbook(
    { ...book, onChange: (tell) => book.onChange((touched) => (isAlive ? tell(touched) : undefined)) },
    shelfOf(whileAlive(store)), news, () => ({ again: () => undefined, stop: () => undefined }),
  );
  return {
    shown: open.show(id),
    keep: open.keep,
    kill: () => {
      isAlive = false;
    },
  };
};

const act = (book: Workbook, model: PlainModel, done: Step): void => {
  switch (done.kind) {
    case "type":
      return book.setCell(sheetAt(model, done.which).name, done.address, done.typed);
    case "clear":
      return book.setCell(sheetAt(model, done.which).name, done.address, "");
    case "put":
      return book.put(sheetAt(model, done.which).name, Object.fromEntries(done.cells.map(([at, value]) => [at, { value }])));
    case "undo":
      return book.undo();
    case "add": {
      const cell = typeof done.typed === "string" && done.typed.startsWith("=") ? { formula: done.typed } : { value: done.typed };
      return book.addSheets([{ name: nextName(model), cells: { A1: cell } }]);
    }
    case "rename":
      return book.renameSheet(sheetAt(model, done.which).name, nextName(model));
    case "remove":
      return model.sheets.length === 1 ? undefined : book.removeSheet(sheetAt(model, done.which).name);
    case "pause":
    case "reload":
    case "kill":
      return undefined;
  }
};

/** What is not as the model says; undefined where all is. */
const difference = (model: PlainModel, data: WorkbookData): string | undefined => {
  const [wanted, found] = [plain(model.sheets), plain(data.sheets)].map((sheets) => JSON.stringify(sheets));
  return wanted === found ? undefined : `wanted ${wanted}\n  found ${found}`;
};

/**
 * A random day at the page: edits, undos, sheets that come, go and are renamed, pauses, reloads, kills. After each step the sheets are what
 * a plain model says. Answers the first difference, with the step it came with.
 */
export const soak = async (book: Workbook, steps: number, seed: number): Promise<string | undefined> => {
  const records = memoryRecords();
  let model: PlainModel = { sheets: [{ name: "Sheet 1", cells: { A1: { value: 1 } } }], before: [], named: 1 };
  const id = await shelfOf(records).add("Soak", { version: 1, sheets: model.sheets });
  let tab = tabOf(book, records, id);
  await tab.shown;
  for (const [index, done] of fc.sample(step, { seed, numRuns: steps }).entries()) {
    act(book, model, done);
    // What comes with an edit is noted before anything else runs.
    await Promise.resolve();
    if (done.kind === "pause") await tab.keep();
    if (done.kind === "reload") await tab.keep();
    if (done.kind === "reload" || done.kind === "kill") {
      if (done.kind === "kill" && done.inTheMiddle) void tab.keep();
      await Promise.resolve();
      tab.kill();
      tab = tabOf(book, records, id);
      await tab.shown;
    }
    model = stepped(model, done);
    const found = difference(model, book.data());
    if (found !== undefined) return `step ${index + 1}, seed ${seed}, ${JSON.stringify(done)}:\n  ${found}`;
  }
  await book.settled();
  return difference(model, book.data());
};
