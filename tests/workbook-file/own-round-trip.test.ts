import fc from "fast-check";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { SheetData } from "../../src/sheets/sheet-data";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import type { Calculated } from "../../src/workbook-file/sheet/calculated";
import { workbookFile } from "../../src/workbook-file/write-workbook-file";
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
