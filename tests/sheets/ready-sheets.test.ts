import { demo } from "../../src/sheets/demo/demo";
import { readyMarks, readySheets, sheetsReadBy, sheetsToAdd, withSheetNames } from "../../src/sheets/ready-sheets";
import { isReadOtherwise } from "../../src/sheets/text-cell";

const none: ReadonlyMap<string, string> = new Map();
const names = (name: string, taken: readonly string[], standing = none): readonly string[] =>
  sheetsToAdd(name, taken, standing).map((sheet) => sheet.name);

test("the ready sheets are the demo's, in the order of the job, and say what they read", () => {
  expect(readySheets.map(({ name, reads }) => [name, reads])).toEqual([
    ["Survey", []],
    ["Layout", ["Survey"]],
    ["Check", ["Survey", "Layout"]],
    ["Order", ["Layout"]],
    ["Cut plan", ["Survey", "Layout"]],
    ["Fit", ["Layout", "Cut plan"]],
    ["Bid", ["Layout", "Order", "Cut plan"]],
    ["Books", ["Order", "Cut plan"]],
  ]);
});

test("a sheet comes first, with what it rests on after it, in the order of the job", () => {
  expect(names("Survey", [])).toEqual(["Survey"]);
  expect(names("Bid", ["Sheet1"])).toEqual(["Bid", "Survey", "Layout", "Order", "Cut plan"]);
});

test("what stands in the workbook is not added again, nor what only that rests on", () => {
  expect(names("Order", ["Layout"], new Map([["Layout", "Layout"]]))).toEqual(["Order"]);
});

test("a name that is taken is not used again, in capitals either, and formulas follow", () => {
  const [layout, survey] = sheetsToAdd("Layout", ["survey", "Survey 2", "LAYOUT"], none);
  expect([layout?.name, survey?.name]).toEqual(["Layout 2", "Survey 3"]);
  expect(layout?.cells["B5"]?.formula).toBe("='Survey 3'!B20");
});

test("formulas read the sheet that stands for a ready one, whatever it is called", () => {
  const [order] = sheetsToAdd("Order", ["Smith's stair"], new Map([["Layout", "Smith's stair"]]));
  expect(order?.cells["A15"]?.formula).toBe("=STAIR.ORDER('Smith''s stair'!D4#,A4:E8)");
});

test.each(demo.map(({ name }) => [name]))("no formula added with %s names a sheet that is neither there nor added", (name) => {
  const added = sheetsToAdd(name, ["Layout", "Survey"], none);
  const there = new Set(added.map((sheet) => sheet.name));
  for (const sheet of added)
    for (const read of sheetsReadBy(sheet)) expect([sheet.name, read, there.has(read)]).toEqual([sheet.name, read, true]);
});

test("every sheet that others read has a cell to know it by", () => {
  const read = new Set(readySheets.flatMap(({ reads }) => reads));
  for (const name of read) expect([name, readyMarks(name).length > 0]).toEqual([name, true]);
  expect(readyMarks("Order")).toEqual([{ address: "A15", starts: "=STAIR.ORDER(" }]);
});

test("a text in a formula is no sheet's name", () => {
  expect(withSheetNames('=IF(A1="Survey!B2",Survey!B2,Other!A1)', new Map([["Survey", "A1"]]))).toBe(
    "=IF(A1=\"Survey!B2\",'A1'!B2,Other!A1)",
  );
});

test.each([
  ["1/2", true], ["7-5/8", true], ["3 May", true], ["=A1", true], ["-x", true], ["'x", true], ["TRUE", true], ["#N/A", true],
  ["oak blank", false], ["yes", false], ["", false],
])("a spreadsheet takes the text %s for something else: %s", (text, is) => {
  expect(isReadOtherwise(text)).toBe(is);
});
