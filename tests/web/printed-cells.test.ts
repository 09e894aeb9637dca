import { cellPlace } from "../../src/sheets/cell-address";
import type { SheetData } from "../../src/sheets/sheet-data";
import { printedCells } from "../../src/web/printed-cells";

const SHEET: SheetData = {
  name: "Mine",
  cells: {
    A1: { value: "left over, in", style: "heading" },
    C1: { value: "to buy", style: "heading" },
    A2: { value: "a text that runs on over what is empty" },
    C2: { value: 7 },
    AA2: { value: "in full" },
  },
  columnWidths: { A: 40, B: 8, C: 60 },
};

const BOOK = {
  value: (_sheet: string, address: string) => SHEET.cells[address]?.value ?? null,
  shown: (_sheet: string, address: string) => String(SHEET.cells[address]?.value ?? ""),
  spills: () => [],
};

test("a heading keeps to its column, a text runs on to the next one that is filled, and what other sheets read is not printed", () => {
  const cells = printedCells(BOOK, SHEET);
  const coversAt = (address: string): number | undefined => {
    const { row, column } = cellPlace(address);
    return cells.get(row)?.get(column)?.covers;
  };
  expect(["A1", "C1", "A2", "C2", "AA2"].map(coversAt)).toEqual([1, 1, 2, 1, undefined]);
});

test("a row that a filter hides is not printed", () => {
  const filter = { cells: "A1:C2", keeps: { C: ["8"] }, hides: [2] };
  expect([...printedCells(BOOK, { ...SHEET, filter }).keys()]).toEqual([0]);
});

test("a line to write on is printed where its row has something, once where cells are merged", () => {
  const line = { style: "byHand" } as const;
  const sheet: SheetData = { name: "Mine", cells: { A1: { value: "signed" }, B1: line, C1: line, B2: line }, merged: ["B1:C1"] };
  const shown = (_: string, address: string): string => String(sheet.cells[address]?.value ?? "");
  const cells = printedCells({ value: () => null, shown, spills: () => [] }, sheet);
  expect([...cells.keys()]).toEqual([0]);
  expect([...(cells.get(0) ?? [])].map(([column, { text, covers }]) => [column, text, covers])).toEqual([[0, "signed", 1], [1, "", 2]]);
});
