// Run by file-bench.cjs, a process for each step of each workbook, so that what one step takes up is not another's: what it does, of how
// many formulas, and where the files lie. Answers milliseconds and megabytes as JSON.
require("./typescript-hook.cjs");
const fs = require("node:fs");
const path = require("node:path");

const project = path.resolve(__dirname, "../..");
const kilobyte = 2 ** 10;
const megabyte = 2 ** 20;
/** Every so many formulas one spills. */
const spillsEvery = 20;
/** Formulas to a column. */
const rows = 1000;

/** As many formulas as asked for: pitches of single cells, and among them flights whose choices spill. */
const bookOf = (count) => {
  const { columnName } = require("../../src/sheets/cell-address.ts");
  const spills = Math.floor(count / spillsEvery);
  const plain = count - spills;
  const cells = { A1: { value: 10 } };
  for (let n = 0; n < plain; n += 1) {
    const rise = 6 + n / plain;
    cells[`${columnName(2 + Math.floor(n / rows))}${(n % rows) + 1}`] = { formula: `=STAIR.PITCH(${rise},$A$1)` };
  }
  // Riser, height, mark, rise between marks and what stands beside them, for a heading and 14 risers.
  const [perColumn, high, wide] = [50, 20, 8];
  const flights = {};
  for (let n = 0; n < spills; n += 1) {
    const at = `${columnName(Math.floor(n / perColumn) * wide)}${(n % perColumn) * high + 1}`;
    flights[at] = { formula: `=STAIR.STORYPOLE(${100 + n / spills},14)` };
  }
  return [{ name: "Pitches", cells }, { name: "Flights", cells: flights }];
};

const engine = () => {
  const { openWorkbook } = require(path.join(project, "dist/tools/engine.cjs"));
  return openWorkbook({
    bundle: fs.readFileSync(path.join(project, "dist/functions.js"), "utf8"),
    metadata: JSON.parse(fs.readFileSync(path.join(project, "dist/functions.json"), "utf8")),
  });
};

const workedOut = async (book, sheets) => {
  book.load({ version: 1, sheets });
  await book.settled();
};

/** What the formulas come to, so that a step that only writes needs no engine. */
const valuesOf = (book, sheets) =>
  Object.fromEntries(sheets.map(({ name, cells }) =>
    [name, Object.fromEntries(Object.keys(cells).map((address) => [address, book.spill(name, address)]))]));

const calculatedFrom = (values, factor = 1) => {
  const other = (value) => (typeof value === "number" ? value * factor : value);
  return {
    value: (sheet, address) => other(values[sheet][address][0][0]),
    spill: (sheet, address) => values[sheet][address].map((row) => row.map(other)),
  };
};

const steps = {
  /** Makes the workbook; measured by none, and the others begin with it. */
  make: async (count, file) => {
    const { workbookFile } = require("../../src/workbook-file/write-workbook-file.ts");
    const [sheets, book] = [bookOf(count), engine()];
    await workedOut(book, sheets);
    const values = valuesOf(book, sheets);
    fs.writeFileSync(`${file}.json`, JSON.stringify(values));
    fs.writeFileSync(file, workbookFile(sheets, { calculated: calculatedFrom(values) }));
    return async () => undefined;
  },
  read: async (_count, file) => {
    const { readWorkbookFile } = require("../../src/workbook-file/read-workbook-file.ts");
    const bytes = new Uint8Array(fs.readFileSync(file));
    return async () => readWorkbookFile(bytes);
  },
  calculate: async (_count, file) => {
    const { readWorkbookFile } = require("../../src/workbook-file/read-workbook-file.ts");
    const { sheets } = readWorkbookFile(new Uint8Array(fs.readFileSync(file)));
    const book = engine();
    await workedOut(book, [{ name: "Sheet1", cells: {} }]);
    return async () => workedOut(book, sheets);
  },
  write: async (count, file) => {
    const { workbookFile } = require("../../src/workbook-file/write-workbook-file.ts");
    const [sheets, values] = [bookOf(count), JSON.parse(fs.readFileSync(`${file}.json`, "utf8"))];
    return async () => workbookFile(sheets, { calculated: calculatedFrom(values) });
  },
  // Every number is another one, as after a change of what all of them read.
  over: async (_count, file) => {
    const { readWorkbookFile } = require("../../src/workbook-file/read-workbook-file.ts");
    const { savedOver } = require("../../src/workbook-file/saved-over.ts");
    const read = readWorkbookFile(new Uint8Array(fs.readFileSync(file)));
    const other = calculatedFrom(JSON.parse(fs.readFileSync(`${file}.json`, "utf8")), 2);
    return async () => {
      const { changed, unsaved } = savedOver(read.file, other);
      if (changed.Pitches === undefined || unsaved.length > 0) throw new Error("saved over, nothing changed, or something was left");
    };
  },
  "exceljs read": async (_count, file) => {
    const { Workbook } = require("exceljs");
    const bytes = fs.readFileSync(file);
    return async () => new Workbook().xlsx.load(bytes);
  },
  "exceljs write": async (_count, file) => {
    const { Workbook } = require("exceljs");
    const book = new Workbook();
    await book.xlsx.load(fs.readFileSync(file));
    return async () => book.xlsx.writeBuffer();
  },
};

const main = async () => {
  const [, , step, count, file] = process.argv;
  const work = await steps[step](Number(count), file);
  global.gc?.();
  // The most that this process has taken up, in kilobytes (Node.js, process.resourceUsage).
  const most = () => process.resourceUsage().maxRSS * kilobyte;
  const [before, mostBefore] = [process.memoryUsage.rss(), most()];
  const began = performance.now();
  await work();
  const took = performance.now() - began;
  // Where what was prepared took up more than the step, what is left of the step stands for it.
  const after = most() > mostBefore ? most() : process.memoryUsage.rss();
  process.stdout.write(JSON.stringify({ took, grew: Math.max(after - before, 0) / megabyte }), () => process.exit(0));
};

main().catch((error) => {
  console.error(error);
  process.exit(1);
});
