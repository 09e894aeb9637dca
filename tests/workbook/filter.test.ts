/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { filterCaution, filterSentence } from "../../src/workbook/filter-sentence";
import type { Workbook } from "../../src/workbook/workbook";
import { type CellData, workbookData, type WorkbookData } from "../../src/workbook/workbook-data";
import { closeWorkbooks, openedData } from "./opened-workbook";

afterEach(closeWorkbooks);

// Invented: twelve treads, every third of one species, each of so many pieces.
const SPECIES = ["oak", "maple", "ash"];
const treads = (): Record<string, CellData> => {
  const [title, ...headings] = ["Treads", "mark", "species", "pieces"].map((value) => ({ value }));
  const cells: Record<string, CellData> = Object.fromEntries([["A1", title], ...headings.map((cell, at) => [`${"ABC"[at]}3`, cell])]);
  for (let at = 0; at < 12; at += 1) {
    cells[`A${4 + at}`] = { value: `T${at + 1}` };
    cells[`B${4 + at}`] = { value: SPECIES[at % 3] ?? "" };
    cells[`C${4 + at}`] = { value: at + 1 };
  }
  return { ...cells, C18: { formula: "=SUM(C4:C15)" }, C19: { formula: "=SUBTOTAL(9,C4:C15)" }, C20: { formula: "=C12" } };
};
const data: WorkbookData = { version: 1, sheets: [{ name: "Treads", cells: treads() }] };
// The rows of maple and ash.
const OAK = { cells: "A3:C15", keeps: { B: ["oak"] }, hides: [5, 6, 8, 9, 11, 12, 14, 15] };

const filterOf = (book: Workbook) => book.data().sheets[0]?.filter;

const oaks = async () => {
  const book = await openedData(data);
  book.filter("Treads", "A3:C15", { B: ["oak"] });
  await book.settled();
  return book;
};

test("a filter hides the rows without the texts it keeps, says so in words, is stored, loaded, shown and undone", async () => {
  const book = await oaks();
  expect(filterOf(book)).toEqual(OAK);
  const filtered = book.filtered("Treads");
  expect(filtered && [filterSentence(filtered), filterCaution(filtered)]).toEqual([
    "Filtered: 4 of 12 rows shown, by species = oak.", "SUM counts the hidden rows too, SUBTOTAL does not.",
  ]);
  // By hand: 1 to 12 make 78; the oak ones 1 + 4 + 7 + 10 = 22.
  expect([book.value("Treads", "C18"), book.value("Treads", "C19")]).toEqual([78, 22]);
  // Copied as in any spreadsheet: what is shown.
  expect(book.copied("Treads", "A4", "B9")).toBe("T1\toak\nT4\toak");
  const kept = book.data();
  const again = await openedData(workbookData(JSON.parse(JSON.stringify(kept))));
  expect([again.data(), again.value("Treads", "C19")]).toEqual([kept, 22]);
  book.filter("Treads", "A3:C15", { B: ["oak", "ash"], A: ["T1", "T2", "T3"] });
  // By hand: of T1, T2 and T3 the second is maple.
  expect(filterOf(book)?.hides).toEqual([5, 7, 8, 9, 10, 11, 12, 13, 14, 15]);
  book.undo();
  expect(filterOf(book)).toEqual(OAK);
  book.showAll("Treads");
  await book.settled();
  expect([filterOf(book), book.filtered("Treads"), book.value("Treads", "C19")]).toEqual([undefined, undefined, 78]);
  book.undo();
  book.undo();
  await book.settled();
  expect([book.data(), book.value("Treads", "C19")]).toEqual([data, 78]);
});

test("what is typed stays where it is until the filter is applied again, and the sentence counts it", async () => {
  const book = await oaks();
  book.setCell("Treads", "B4", "pine");
  book.setCell("Treads", "B5", "oak");
  book.setCell("Treads", "A16", "T13");
  await book.settled();
  expect(filterOf(book)).toEqual(OAK);
  const filtered = book.filtered("Treads");
  // T1 is pine, T2 is oak, T13 has no species.
  expect(filtered && [filterSentence(filtered), filterCaution(filtered)]).toEqual([
    "Filtered: 5 of 13 rows shown, by species = oak.", "SUM counts the hidden rows too, SUBTOTAL does not. 3 rows have changed since.",
  ]);
  book.filterAgain("Treads");
  expect(filterOf(book)).toEqual({ cells: "A3:C16", keeps: { B: ["oak"] }, hides: [4, 6, 8, 9, 11, 12, 14, 15, 16] });
  book.undo();
  expect(filterOf(book)).toEqual(OAK);
});

test("rows that come and go move a filter; hidden ones stay when those around them are removed, formulas read what they read", async () => {
  const book = await oaks();
  book.insertRows("Treads", 1, 2);
  book.insertRows("Treads", 8, 6);
  await book.settled();
  // Two above all, six above T3, which was in row 6: by hand.
  expect(filterOf(book)).toEqual({ cells: "A5:C23", keeps: { B: ["oak"] }, hides: [7, 14, 16, 17, 19, 20, 22, 23] });
  book.undo();
  book.undo();
  expect(filterOf(book)).toEqual(OAK);
  // Rows 7 to 13: T4, T7 and T10 are shown and go, the maple and ash ones between them stay.
  book.removeRows("Treads", 7, 7);
  await book.settled();
  const marks = Array.from({ length: 9 }, (_, at) => book.value("Treads", `A${4 + at}`));
  expect(marks).toEqual(["T1", "T2", "T3", "T5", "T6", "T8", "T9", "T11", "T12"]);
  expect(filterOf(book)).toEqual({ cells: "A3:C12", keeps: { B: ["oak"] }, hides: [5, 6, 7, 8, 9, 10, 11, 12] });
  // T9, which C20 read in C12; 78 without 4, 7 and 10.
  expect([book.value("Treads", "C15"), book.formula("Treads", "C17"), book.value("Treads", "C17")]).toEqual([57, "=C10", 9]);
  book.undo();
  await book.settled();
  expect([book.data().sheets[0]?.cells, filterOf(book)]).toEqual([data.sheets[0]?.cells, OAK]);
  book.removeRows("Treads", 3, 1);
  expect(filterOf(book)).toBeUndefined();
  book.undo();
  expect(filterOf(book)).toEqual(OAK);
});

test("a sheet takes its filter along when it is copied, deleted and added; results that spilled are filtered too", async () => {
  const book = await openedData({
    version: 1,
    sheets: [{ name: "Cut", cells: { A1: { formula: '=VSTACK("grade",{"clear";"common";"clear"})' } } }, ...data.sheets],
  });
  book.filter("Cut", "A1:A4", { A: ["clear"] });
  const filter = { cells: "A1:A4", keeps: { A: ["clear"] }, hides: [3] };
  expect(book.data().sheets[0]?.filter).toEqual(filter);
  book.duplicateSheet("Cut");
  await book.settled();
  expect(book.data().sheets.map((sheet) => sheet.filter)).toEqual([filter, filter, undefined]);
  book.removeSheet("Cut");
  book.undo();
  await book.settled();
  expect(book.data().sheets.map((sheet) => sheet.filter)).toEqual([filter, filter, undefined]);
  book.addSheets([{ name: "Added", cells: treads(), filter: OAK }]);
  await book.settled();
  expect([book.data().sheets.at(-1)?.filter, book.value("Added", "C19")]).toEqual([OAK, 22]);
});

test.each([
  [{ ...OAK, cells: "A3" }, 'sheet "Treads", filter, cells: must be a row of headings and rows under it, such as A7:F70, got "A3"'],
  [{ ...OAK, keeps: { D: ["oak"] } }, 'sheet "Treads", filter, keeps: D is no column of A3:C15'],
  [{ ...OAK, keeps: { B: [] } }, 'sheet "Treads", filter, keeps, B: must be one text or more'],
  [{ ...OAK, hides: [3] }, 'sheet "Treads", filter, hides: 3 is no row under the headings of A3:C15'],
  [{ ...OAK, hides: [1e9] }, 'sheet "Treads", filter, hides: a row is a whole number from 1 to 1048576, got 1000000000'],
  [{ ...OAK, colours: 1 }, 'sheet "Treads", filter: has no "colours"; it may have cells, keeps, hides'],
])("a stored filter that means nothing is refused by a sentence: %j", (filter, says) => {
  expect(() => workbookData({ version: 1, sheets: [{ name: "Treads", cells: {}, filter }] })).toThrow(says);
});
