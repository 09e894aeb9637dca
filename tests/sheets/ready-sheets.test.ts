import { demo } from "../../src/sheets/demo/demo";
import { readyMarks, readySheets, sheetsToAdd } from "../../src/sheets/ready-sheets";
import { sheetsReadBy, withSheetNames } from "../../src/sheets/renamed-sheets";
import { isReadOtherwise } from "../../src/sheets/text-cell";

const none: ReadonlyMap<string, string> = new Map();
const names = (name: string, taken: readonly string[], standing = none): readonly string[] =>
  sheetsToAdd(name, taken, standing).map((sheet) => sheet.name);

test("the ready sheets are the demo's, in the order of the job, and say what they read", () => {
  expect(readySheets.map(({ name, reads }) => [name, reads])).toEqual([
    [
      "Job",
      ["Survey", "Layout", "Check", "Order", "Cut plan", "Boards", "Yard order", "Fit", "Takeoff", "Bid", "Quote", "Books", "Register"],
    ],
    ["Survey", ["Job"]],
    ["Layout", ["Job", "Survey"]],
    ["Check", ["Job", "Survey", "Layout"]],
    ["Order", ["Layout"]],
    ["Cut plan", ["Job", "Layout", "Order", "Fit"]],
    ["Boards", ["Layout", "Order", "Cut plan"]],
    ["Yard order", ["Job", "Cut plan"]],
    ["Fit", ["Job", "Survey", "Layout", "Order"]],
    ["Takeoff", ["Job", "Layout", "Order", "Cut plan", "Bid"]],
    ["Bid", ["Job", "Layout", "Cut plan", "Takeoff"]],
    ["Quote", ["Job", "Bid"]],
    ["Books", ["Job", "Cut plan", "Bid"]],
    ["Register", ["Books"]],
  ]);
});

test("a text that sends its reader to a sheet follows the sheet's new name, with or without a row and what belongs there", () => {
  const names = new Map([["Cut plan", "Cut plan 2"], ["Bid", "Bid 2"]]);
  const renamed = (text: string): string => withSheetNames(`=IF(A1="",${text},"")`, names);
  expect(renamed('"– type in Cut plan A9"')).toBe('=IF(A1="","– type in Cut plan 2 A9","")');
  expect(renamed('"– type in Cut plan A"&7')).toBe('=IF(A1="","– type in Cut plan 2 A"&7,"")');
  expect(renamed('"– type in Bid J9: hours or a price for "&A1')).toBe('=IF(A1="","– type in Bid 2 J9: hours or a price for "&A1,"")');
  expect(renamed('"see Bid!A14"')).toBe('=IF(A1="","see Bid 2!A14","")');
  expect(renamed('"– type in B8"')).toBe('=IF(A1="","– type in B8","")');
  expect(renamed('"Bid is what we ask"')).toBe('=IF(A1="","Bid is what we ask","")');
});

test("a sheet comes first, with what it rests on after it, in the order of the job", () => {
  expect(names("Survey", [])).toEqual(["Survey", "Job"]);
  expect(names("Bid", ["Sheet1"])).toEqual(["Bid", "Job", "Survey", "Layout", "Order", "Cut plan", "Fit", "Takeoff"]);
  expect(names("Job", [])).toEqual(demo.map(({ name }) => name));
});

test("for a sheet that only reads its facts Job comes without what it gathers from the others", () => {
  const [, job] = sheetsToAdd("Survey", [], none);
  expect(job?.name).toBe("Job");
  expect(Object.values(job?.cells ?? {}).filter(({ formula }) => formula?.includes("!"))).toEqual([]);
  expect(job?.cells["B11"]?.value).toBe(106.125);
});

test("what stands in the workbook is not added again, nor what only that rests on", () => {
  expect(names("Order", ["Layout"], new Map([["Layout", "Layout"]]))).toEqual(["Order"]);
});

test("a name that is taken is not used again, in capitals either, and formulas follow", () => {
  const [layout, job, survey] = sheetsToAdd("Layout", ["survey", "Survey 2", "LAYOUT"], none);
  expect([layout?.name, job?.name, survey?.name]).toEqual(["Layout 2", "Job", "Survey 3"]);
  expect(layout?.cells["B15"]?.formula).toBe("=IF('Survey 3'!I8=\"\",\"\",'Survey 3'!I8)");
});

test("formulas read the sheet that stands for a ready one, whatever it is called", () => {
  const [order] = sheetsToAdd("Order", ["Smith's stair"], new Map([["Layout", "Smith's stair"]]));
  expect(order?.cells["A17"]?.formula).toContain("STAIR.ORDER('Smith''s stair'!AA7#,A8:E14)");
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
  expect(readyMarks("Order")).toContainEqual({ address: "A17", holds: ["STAIR.ORDER("] });
  expect(readyMarks("Job")).toEqual([{ address: "A8", holds: ["job"] }, { address: "A9", holds: ["customer"] }]);
});

test("a link leads to the sheet under its new name, and says that name", () => {
  const names = new Map([["Cut plan", "Cut plan 2"], ["Fit", "Fit 2"]]);
  expect(withSheetNames('=HYPERLINK("#\'Cut plan\'!A1","Cut plan ›")', names)).toBe('=HYPERLINK("#\'Cut plan 2\'!A1","Cut plan 2 ›")');
  expect(withSheetNames('=HYPERLINK("#Fit!A1","Fit ›")', names)).toBe('=HYPERLINK("#\'Fit 2\'!A1","Fit 2 ›")');
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
