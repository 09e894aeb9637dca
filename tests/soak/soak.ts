import fc from "fast-check";
import { memoryRecords } from "../../src/web/memory-records";
import type { Workbook } from "../../src/workbook/workbook";
import type { WorkbookData } from "../../src/workbook/workbook-data";
import { shelfOf } from "../web/shelf";
import { anyAt, nextName, type PlainModel, plainSheet, removableAt, sheetAt, stepped, tableAt } from "./plain-model";
import { FILTERED, type PlainTable, SORTED, tableData, tableOf } from "./plain-table";
import { type Step, step } from "./soak-steps";
import { tabOf } from "./tab";

/** Puts the cells of each sheet in one order. */
const plain = (sheets: readonly ({ readonly name: string } & PlainTable)[]) =>
  sheets.map(({ name, cells, over, filter }) => ({
    name,
    cells: Object.fromEntries(Object.entries(cells).sort(([one], [other]) => (one < other ? -1 : 1))),
    over,
    filter,
  }));

const act = (book: Workbook, model: PlainModel, done: Step): void => {
  const onTable = (which: number, change: (name: string) => unknown): void => {
    const table = tableAt(model, which);
    if (table !== undefined) change(table.name);
  };
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
    case "table":
      return book.addSheets([tableData(nextName(model))]);
    case "fill":
      return onTable(done.which, (name) => book.put(name, Object.fromEntries(done.cells.map(([at, value]) => [at, { value }]))));
    case "insert":
      return onTable(done.which, (name) => book.insertRows(name, done.row, done.count));
    case "take":
      return onTable(done.which, (name) => book.removeRows(name, done.row, done.count));
    case "sort":
      return onTable(done.which, (name) => book.sort(name, SORTED, done.column, done.isUp));
    case "filter":
      return onTable(done.which, (name) => book.filter(name, FILTERED, { [done.column]: done.keeps }));
    case "show all":
      return onTable(done.which, (name) => book.showAll(name));
    case "rename":
      return book.renameSheet(anyAt(model, done.which).name, nextName(model));
    case "remove": {
      const gone = removableAt(model, done.which);
      return gone === undefined ? undefined : book.removeSheet(gone.name);
    }
    case "pause":
    case "reload":
    case "kill":
      return undefined;
  }
};

/** What is not as the model says; undefined where all is. */
const difference = (model: PlainModel, data: WorkbookData): string | undefined => {
  const stored = data.sheets.map((sheet) => ({ name: sheet.name, ...tableOf(sheet) }));
  const [wanted, found] = [plain(model.sheets), plain(stored)].map((sheets) => JSON.stringify(sheets));
  return wanted === found ? undefined : `wanted ${wanted}\n  found ${found}`;
};

/**
 * A random day at the page: edits, undos, sheets that come, go and are renamed, tables with looks by rule, lists and a filter in which rows
 * come, go and are sorted, pauses, reloads, kills. After each step the sheets are what
 * a plain model says. Answers the first difference, with the step it came with.
 */
export const soak = async (book: Workbook, steps: number, seed: number): Promise<string | undefined> => {
  const records = memoryRecords();
  const first = { name: "Sheet 1", cells: { A1: { value: 1 } } };
  let model: PlainModel = { sheets: [plainSheet(first.name, first.cells)], before: [], named: 1 };
  const id = await shelfOf(records).add("Soak", { version: 1, sheets: [first] });
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
