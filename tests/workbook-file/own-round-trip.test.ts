import fc from "fast-check";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { SheetData } from "../../src/sheets/sheet-data";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import type { Calculated } from "../../src/workbook-file/sheet/calculated";
import { valuesFile, workbookFile } from "../../src/workbook-file/write-workbook-file";
import { workbookData } from "../../src/workbook/workbook-data";
import { drawnSheets } from "./drawn-sheets";

/** Formulas that come to 0, each in its own cell. */
const NOUGHTS: Calculated = { value: () => 0, spill: () => [[0]] };

const roundTrip = (sheets: readonly SheetData[], calculated: Calculated = NOUGHTS) =>
  readWorkbookFile(workbookFile(sheets, { calculated })).sheets;

test("whatever sheets may have comes back out of their file as it was", () => {
  fc.assert(
    fc.property(drawnSheets, (all) => {
      // What is drawn is what a workbook may have.
      expect(workbookData({ version: 1, sheets: all }).sheets).toEqual(all);
      expect(roundTrip(all)).toEqual(all);
    }),
    { numRuns: 100, seed: 15 },
  );
});

test("a cell that shows a part of another's block keeps its looks and no value", () => {
  const spilled: Calculated = {
    value: () => 1,
    spill: (_, at) => (at === "B2" ? [[1, "two"], [{ error: "#N/A" }, true], [null, 3]] : [[0]]),
  };
  const cells = { B2: { formula: "=STAIR.TABLE(A1)" }, C3: { style: "total" }, A9: { value: 7 } } as const;
  const data: readonly SheetData[] = [{ name: "Bid", cells }];
  expect(roundTrip(data, spilled)).toEqual(data);
});

test("what was changed elsewhere since stays changed, and the rest is as it was", () => {
  const red = { look: { ink: "red" } };
  const cells = { A1: { value: "a", ...red }, A2: { value: "b", ...red } };
  const data: readonly SheetData[] = [{ name: "Bid", cells, columnWidths: { A: 88.5 } }];
  const file = unzipSync(workbookFile(data, { calculated: NOUGHTS }));
  const strings = strFromU8(file["xl/sharedStrings.xml"] ?? new Uint8Array());
  const changed = zipSync({ ...file, "xl/sharedStrings.xml": strToU8(strings.replace("<t>a</t>", "<t>c</t>")) });
  expect(readWorkbookFile(changed).sheets).toEqual([{ ...data[0], cells: { A1: { value: "c" }, A2: { value: "b", ...red } } }]);
});

test("in a cell with a look by rule a length still has the marks of a tape: its rules come first and stop nothing", () => {
  const rules = [{ cells: "A1:A9", when: "=A1>7", look: { bold: true } }] as const;
  const data: readonly SheetData[] = [{ name: "Bid", cells: { A1: { value: 7.625, format: "# ??/16" } }, rules }];
  const sheet = strFromU8(unzipSync(workbookFile(data, { calculated: NOUGHTS }))["xl/worksheets/sheet1.xml"] ?? new Uint8Array());
  const ranked = [...sheet.matchAll(/<cfRule [^>]*priority="(\d+)"( stopIfTrue="1")?><formula>([^<]*)</g)]
    .map(([, priority, stops, when = ""]) => [Number(priority), stops !== undefined, when.includes("ROUND(")]);
  // Nought, whole inches, halves, quarters and eighths, then the look.
  expect(ranked).toEqual([[1, false, true], [2, false, true], [3, false, true], [4, false, true], [5, false, true], [6, true, false]]);
  expect(roundTrip(data)).toEqual(data);
});

test("what is printed ends with the last row and column of those that are printed, whatever stands behind them", () => {
  const data: readonly SheetData[] = [
    { name: "Bid", cells: { A1: { value: 1 }, B7: { value: 2 }, AH40: { value: 3 } } }, { name: "Rates", cells: { AH40: { value: 3 } } },
  ];
  const file = unzipSync(valuesFile(data, { calculated: NOUGHTS, printing: { columns: 8 } }));
  const book = strFromU8(file["xl/workbook.xml"] ?? new Uint8Array());
  expect([...book.matchAll(/_xlnm.Print_Area"[^>]*>([^<]*)</g)].map(([, area]) => area)).toEqual(["Bid!$A$1:$B$7", "Rates!$A$1:$A$1"]);
});
