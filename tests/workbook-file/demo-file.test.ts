/** @jest-environment ./tests/workbook/engine-environment.cjs */
import type { Workbook as ExceljsWorkbook } from "exceljs";
import { cellAddress, cellPlace, columnPlace } from "../../src/sheets/cell-address";
import { demo } from "../../src/sheets/demo/demo";
import type { SheetData } from "../../src/sheets/sheet-data";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { valuesFile, workbookFile } from "../../src/workbook-file/write-workbook-file";
import type { CellValue, Workbook } from "../../src/workbook/workbook";
import { closeWorkbooks, openedData } from "../workbook/opened-workbook";
import { otherCell, readByExceljs } from "./read-by-exceljs";

const ADD_IN = { id: "11111111-2222-3333-4444-555555555555", version: "1.0.0.0", source: "Registry", store: "developer" } as const;
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

/** What each cell of a sheet shows, worked out by the engine: what was typed, and each block that spilled. */
const shownValues = ({ name, cells }: SheetData): ReadonlyMap<string, CellValue> => {
  const found = new Map<string, CellValue>(Object.entries(cells).map(([address, { value = null }]) => [address, value]));
  for (const [address, { formula }] of Object.entries(cells)) {
    if (formula === undefined) continue;
    const { row, column } = cellPlace(address);
    for (const [down, line] of book.spill(name, address).entries())
      for (const [right, value] of line.entries()) found.set(cellAddress({ row: row + down, column: column + right }), value);
  }
  return found;
};

/** An empty text is nothing to the other library. */
const orNothing = (value: CellValue | { readonly error: string }): unknown => (value === "" ? null : value);

const formulasOf = ({ cells }: SheetData): readonly string[] =>
  Object.entries(cells).flatMap(([address, { formula }]) => (formula === undefined ? [] : [address])).sort();

test("another library reads every cell of the demo with what the engine came to, its formula beside it", () => {
  let count = 0;
  for (const sheet of demo) {
    const read = other.getWorksheet(sheet.name);
    const formulas: string[] = [];
    for (const [address, value] of shownValues(sheet)) {
      const cell = otherCell(read?.getCell(address));
      expect([sheet.name, address, orNothing(cell.value)]).toEqual([sheet.name, address, orNothing(value)]);
      if (cell.formula !== undefined) {
        formulas.push(address);
        // The names that a host binds stand in the place of ours, whatever stands in a text.
        expect(cell.formula.replaceAll(/"(?:[^"]|"")*"/g, "")).not.toMatch(/STAIR\./);
      }
      count += 1;
    }
    expect(formulas.sort()).toEqual(formulasOf(sheet));
  }
  expect(count).toBeGreaterThan(4000);
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
  for (const sheet of demo) {
    const read = values.getWorksheet(sheet.name);
    for (const [address, value] of shownValues(sheet)) {
      const cell = otherCell(read?.getCell(address));
      expect([sheet.name, address, orNothing(cell.value), cell.formula]).toEqual([sheet.name, address, orNothing(value), undefined]);
    }
  }
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
