/** @jest-environment ./tests/workbook/engine-environment.cjs */
import type { Workbook as ExceljsWorkbook } from "exceljs";
import { cellAddress, cellPlace, columnPlace } from "../../src/sheets/cell-address";
import { demo } from "../../src/sheets/demo/demo";
import type { SheetData } from "../../src/sheets/sheet-data";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { savedOver } from "../../src/workbook-file/saved-over";
import { valuesFile, workbookFile } from "../../src/workbook-file/write-workbook-file";
import type { CellValue, Workbook } from "../../src/workbook/workbook";
import { closeWorkbooks, openedData } from "../workbook/opened-workbook";
import { otherCell, readByExceljs } from "./read-by-exceljs";

const ADD_IN = { id: "11111111-2222-3333-4444-555555555555", version: "1.0.0.0", source: "Registry", store: "developer" } as const;
/** The run of the invented job in inches, and another. */
const RUN = 10;
const OTHER_RUN = 10.5;
const PRINTING = { job: "Demo & Sons", date: "1 May 2026", columns: 26 };

let book: Workbook;
let bytes: Uint8Array;
let other: ExceljsWorkbook;
beforeAll(async () => {
  book = await openedData({ version: 1, sheets: demo });
  bytes = workbookFile(demo, { calculated: book, addIn: ADD_IN, printing: PRINTING });
  other = await readByExceljs(bytes);
});
afterAll(closeWorkbooks);

/** What each cell of a sheet shows by the engine: what was typed, each block that spilled, and what an empty cell of one shows. */
const shownValues = ({ name, cells }: SheetData, nothing: CellValue = null): ReadonlyMap<string, CellValue> => {
  const found = new Map<string, CellValue>(Object.entries(cells).map(([address, { value = null }]) => [address, value]));
  for (const [address, { formula }] of Object.entries(cells)) {
    if (formula === undefined) continue;
    const { row, column } = cellPlace(address);
    for (const [down, line] of book.spill(name, address).entries())
      for (const [right, value] of line.entries()) found.set(cellAddress({ row: row + down, column: column + right }), value ?? nothing);
  }
  return found;
};

/** An empty text is nothing to the other library. */
const orNothing = (value: CellValue | { readonly error: string }): unknown => (value === "" ? null : value);

const formulasOf = ({ cells }: SheetData): readonly string[] =>
  Object.entries(cells).flatMap(([address, { formula }]) => (formula === undefined ? [] : [address])).sort();

/** Cells that another library reads as anything but what the engine came to: sheet, address, what it reads, what it should. */
const misread = (read: ExceljsWorkbook, nothing: CellValue, isOf: (sheet: SheetData, address: string) => boolean = () => true) =>
  demo.flatMap((sheet) =>
    [...shownValues(sheet, nothing)].flatMap(([address, value]) => {
      const cell = otherCell(read.getWorksheet(sheet.name)?.getCell(address));
      const [found, wanted] = [JSON.stringify(orNothing(cell.value)), JSON.stringify(orNothing(value))];
      return found === wanted || !isOf(sheet, address) ? [] : [[sheet.name, address, found, wanted]];
    }));

const formulasRead = (read: ExceljsWorkbook, { name }: SheetData): ReadonlyMap<string, string> => {
  const found = new Map<string, string>();
  read.getWorksheet(name)?.eachRow((row) => row.eachCell((cell) => {
    const { formula } = otherCell(cell);
    if (formula !== undefined) found.set(cell.address, formula);
  }));
  return found;
};

test("another library reads every cell of the demo with what the engine came to, its formula beside it", () => {
  expect(misread(other, 0)).toEqual([]);
  for (const sheet of demo) {
    const formulas = formulasRead(other, sheet);
    expect([...formulas.keys()].sort()).toEqual(formulasOf(sheet));
    // The names that a host binds stand in the place of ours, whatever stands in a text.
    expect([...formulas.values()].filter((text) => /STAIR\./.test(text.replaceAll(/"(?:[^"]|"")*"/g, "")))).toEqual([]);
  }
  expect(demo.reduce((sum, sheet) => sum + shownValues(sheet).size, 0)).toBeGreaterThan(4000);
});

test("and every format, width, merged block and frozen row", () => {
  for (const sheet of demo) {
    const read = other.getWorksheet(sheet.name);
    const formats = Object.entries(sheet.cells).map(([address, { format = "General" }]) => [address, format]);
    expect(formats.map(([address = ""]) => [address, read?.getCell(address).numFmt ?? "General"])).toEqual(formats);
    // A width counts digits of 7 pixels (ECMA-376-1, 18.3.1.13).
    const widths = Object.entries(sheet.columnWidths ?? {});
    expect(widths.map(([column]) => [column, Math.round((read?.getColumn(columnPlace(column) + 1).width ?? 0) * 7)])).toEqual(widths);
    expect([...(read?.model.merges ?? [])].sort()).toEqual([...(sheet.merged ?? [])].sort());
    const [view] = read?.views ?? [];
    expect(view?.state === "frozen" ? view.ySplit : 0).toBe(sheet.frozenRows ?? 0);
  }
});

test("the copy for anyone has the same values, and no formula in any cell", async () => {
  const values = await readByExceljs(valuesFile(demo, { calculated: book, look: book.look, printing: PRINTING }));
  expect(misread(values, null)).toEqual([]);
  expect(demo.map((sheet) => formulasRead(values, sheet).size)).toEqual(demo.map(() => 0));
});

test("in the copy for anyone a length has the mark of the tape it comes to", async () => {
  const sizes = [7.5625, 7.625, 7.5, 7, 0.01];
  const cells = Object.fromEntries(sizes.map((value, row) => [`A${row + 1}`, { value, format: "# ??/16" }]));
  const data: readonly SheetData[] = [{ name: "Bid", cells }];
  const read = (await readByExceljs(valuesFile(data, { calculated: book }))).getWorksheet("Bid");
  expect([1, 2, 3, 4, 5].map((row) => read?.getCell(`A${row}`).numFmt)).toEqual(["# ??/16", "# ?/8", "# ?/2", "0", "0;0"]);
});

test("the file of the demo gives the same sheets back", () => {
  const { sheets, notShown, keptFormulas } = readWorkbookFile(bytes);
  expect(sheets).toEqual(demo);
  expect(notShown).toEqual([]);
  expect(Object.values(keptFormulas).flat()).toEqual([]);
});

test("the file names the add-in, each function it calls, and what is repeated on printed pages", () => {
  const { file: { parts } } = readWorkbookFile(bytes);
  const texts = demo.flatMap(({ cells }) => Object.values(cells).map(({ formula = "" }) => formula));
  const called = new Set(texts.flatMap((text) => [...text.matchAll(/STAIR\.([A-Z]+)\(/g)].map(([, name = ""]) => `_xldudf_STAIR_${name}`)));
  const extension = parts.text("xl/webextensions/webextension1.xml");
  const named = [...extension.matchAll(/<we:customFunctionIds>(\w+)</g)].map(([, name]) => name);
  expect(named).toEqual([...called].sort());
  expect(extension).toContain('storeType="Registry"');
  expect(parts.text("xl/workbook.xml")).toContain("'Cut plan'!$1:$");
  expect(parts.text("xl/worksheets/sheet1.xml")).toContain("&amp;LDemo &amp;&amp; Sons&amp;CJob&amp;R1 May 2026");
});

// Last, as it leaves the other run in the engine.
test("worked out again nothing of the file changes; with another run in it, what changes is what the engine comes to", async () => {
  const { file } = readWorkbookFile(bytes);
  expect(savedOver(file, book)).toMatchObject({ changed: {}, unsaved: [] });
  const [place = "B13"] = Object.entries(demo.find(({ name }) => name === "Job")?.cells ?? {}).find(([, { value }]) => value === RUN) ?? [];
  book.setCell("Job", place, OTHER_RUN);
  await book.settled();
  const over = savedOver(file, book);
  expect(Object.keys(over.changed)).toEqual(expect.arrayContaining(["Layout", "Order", "Bid"]));
  const now = await readByExceljs(over.bytes);
  // What was typed stays in the file as it was; a formula that leads to an empty cell shows 0 there.
  const isWorkedOut = ({ name, cells }: SheetData, address: string): boolean =>
    cells[address]?.value === undefined && book.value(name, address) !== null;
  expect(misread(now, 0, isWorkedOut)).toEqual([]);
});
