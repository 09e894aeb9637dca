/** @jest-environment ./tests/workbook/engine-environment.cjs */
import type { WorkbookData } from "../../src/workbook/workbook-data";
import { closeWorkbooks, openedData } from "./opened-workbook";

afterEach(closeWorkbooks);

const thin = { line: "thin", ink: "#000000" } as const;

const data: WorkbookData = {
  version: 1,
  sheets: [
    {
      name: "Bid",
      cells: {
        A1: { value: "title", style: "title" },
        A2: { value: "title in the middle", style: "title", look: { across: "center", down: "middle" } },
        A3: { value: 7.5, format: "0.00", style: "input", look: { borders: { bottom: { line: "double", ink: "#7a4a1e" } } } },
        A4: { value: "mine", look: { bold: true, underline: true, strike: true, font: "Arial", size: 13, ink: "#123456", fill: "#eee" } },
        A5: { value: "turned", look: { italic: true, wrap: true, turned: 45, across: "right", down: "top" } },
        B5: { formula: "=A3*2", look: { clip: true, across: "left", down: "bottom" } },
        C7: { look: { fill: "#ffff00", borders: { top: thin, right: thin, bottom: thin, left: thin } } },
      },
      columnWidths: { A: 150, C: 40 },
      frozenRows: 2,
      frozenColumns: 1,
      rowHeights: { 2: 44, 9: 60 },
      hiddenRows: [4, 9],
      hiddenColumns: ["C", "E"],
      merged: ["A1:C1", "D3:D6"],
      hidesGridLines: true,
      tabColour: "#7a4a1e",
    },
    { name: "Hidden", cells: { A1: { value: "down", look: { stacked: true } } }, isHidden: true },
    { name: "Plain", cells: { A1: { value: 1 } } },
  ],
};

test("looks, borders, alignment, heights, what is hidden and what is merged are stored as they were set", async () => {
  const book = await openedData(data);
  expect(book.data()).toEqual(data);
  // By hand: twice 7.5.
  expect(book.value("Bid", "B5")).toBe(15);
});

test("sheets that are added keep them too, and a value typed over a look leaves it", async () => {
  const book = await openedData({ version: 1, sheets: [{ name: "First", cells: {} }] });
  book.addSheets(data.sheets);
  book.setCell("Bid", "A4", "typed over");
  await book.settled();
  const [, bid, hidden, plain] = book.data().sheets;
  const before = data.sheets[0]?.cells;
  expect(bid).toEqual({ ...data.sheets[0], cells: { ...before, A4: { ...before?.["A4"], value: "typed over" } } });
  expect([hidden, plain]).toEqual(data.sheets.slice(1));
});

test("a sheet has room for what is merged and frozen, also where no cell is", async () => {
  const book = await openedData({ version: 1, sheets: [{ name: "Far", cells: {}, merged: ["CZ3000:DA3001"], frozenRows: 1500 }] });
  book.setCell("Far", "DA3002", 7);
  await book.settled();
  expect([book.value("Far", "DA3002"), book.data().sheets[0]?.merged]).toEqual([7, ["CZ3000:DA3001"]]);
});
