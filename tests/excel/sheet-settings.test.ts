import { excelHost } from "../../src/excel/excel-host";
import type { SheetData } from "../../src/sheets/sheet-data";
import { type MockedExcel, mockedExcel } from "./mocked-excel";
import type { MockedLooks } from "./mocked-looks";

let excel: MockedExcel | undefined;

afterEach(() => excel?.restore());

/** An Excel with ExcelApi up to a version. */
const added = async (sheet: SheetData, newest = 17): Promise<MockedLooks> => {
  excel = mockedExcel({ sheets: [{ name: "Mine" }] });
  const { sheets } = excelHost((_set, version) => Number(version.split(".")[1]) <= newest);
  await sheets?.add([sheet]);
  return excel.sheet(sheet.name);
};

const line = { line: "thin", ink: "#7a4a1e" } as const;

test("looks come as they are, cells that share one together", async () => {
  const { looks } = await added({
    name: "New",
    cells: {
      A1: { value: "title", style: "title" },
      A2: { value: "left", look: { across: "right", down: "middle", wrap: true, underline: true, font: "Arial" } },
      A3: { value: 1, style: "input" },
      B3: { value: 2, style: "input" },
      A4: { value: 3, style: "input" },
      B4: { value: 4, style: "input" },
      D1: { value: "down", look: { stacked: true } },
      D2: { value: "up", look: { turned: 45, italic: true, fill: "#eeeeee" } },
    },
  });
  // What input and title stand for: src/sheets/cell-looks.ts.
  const under = { style: "Continuous", weight: "Thin", color: "#e6d48f" };
  expect(looks).toEqual([
    { cells: "A1", format: { font: { bold: true, size: 15, color: "#3b2a1a" } } },
    {
      cells: "A2",
      format: {
        font: { underline: "Single", name: "Arial" }, wrapText: true, horizontalAlignment: "Right", verticalAlignment: "Center",
      },
    },
    {
      cells: "A3:B4",
      format: {
        font: { color: "#123f7a" }, fill: { color: "#fff6d6" }, horizontalAlignment: "Right",
        borders: { EdgeBottom: under, InsideHorizontal: under },
      },
    },
    // "180 for vertically-oriented text": RangeFormat.textOrientation.
    { cells: "D1", format: { textOrientation: 180 } },
    { cells: "D2", format: { font: { italic: true }, fill: { color: "#eeeeee" }, textOrientation: 45 } },
  ]);
});

test("a border of each cell is a line at the edge of their block and between them, a double one without a weight", async () => {
  const drawn = { style: "Continuous", weight: "Thin", color: "#7a4a1e" };
  const { looks } = await added({
    name: "New",
    cells: {
      A1: { value: 1, look: { borders: { bottom: line } } },
      A2: { value: 2, look: { borders: { bottom: line } } },
      C1: { value: 3, look: { borders: { left: line, top: { line: "double", ink: "#000000" } } } },
    },
  });
  expect(looks).toEqual([
    { cells: "A1:A2", format: { borders: { EdgeBottom: drawn, InsideHorizontal: drawn } } },
    { cells: "C1", format: { borders: { EdgeTop: { style: "Double", color: "#000000" }, EdgeLeft: drawn } } },
  ]);
});

test("sizes in points, what is hidden, merged and frozen, no lines, a coloured tab", async () => {
  const looks = await added({
    name: "New",
    cells: { A1: { value: "title" } },
    columnWidths: { A: 100, AB: 40 },
    rowHeights: { 1: 30, 12: 20 },
    hiddenRows: [4],
    hiddenColumns: ["AA"],
    merged: ["A1:C1"],
    frozenRows: 5,
    frozenColumns: 2,
    hidesGridLines: true,
    tabColour: "#7a4a1e",
  });
  // By hand: three quarters of each.
  expect([looks.widths, looks.heights]).toEqual([{ A: 75, AB: 30 }, { 1: 22.5, 12: 15 }]);
  expect([looks.hidden, looks.merged, looks.frozen]).toEqual([["4", "AA"], ["A1:C1"], { at: "A1:B5" }]);
  expect(looks.set).toEqual({ showGridlines: false, tabColor: "#7a4a1e" });
});

test("frozen columns alone, and a hidden sheet", async () => {
  const { frozen, set } = await added({ name: "New", cells: {}, frozenColumns: 1, isHidden: true });
  expect([frozen, set]).toEqual([{ columns: 1 }, { visibility: "Hidden" }]);
});

test("looks by rule hold in their order, the first that is true alone; choices stand in their cells", async () => {
  const { rules, lists } = await added({
    name: "New",
    cells: { A1: { value: "pass" } },
    rules: [
      { cells: "A1:A9", when: '=A1="fail"', look: { fill: "#fbe3df", ink: "#8c1d18", bold: true } },
      { cells: "A1:A9", when: '=A1<>""', look: { italic: true } },
    ],
    lists: [
      { cells: "B1:B4", options: ["in", "mm"] },
      { cells: "C1", options: Array.from({ length: 60 }, (_, index) => `code ${index}`) },
    ],
  });
  expect(rules.map(({ id: _, ...rule }) => rule)).toEqual([
    {
      cells: "A1:A9",
      type: "Custom",
      set: {
        custom: {
          rule: { formula: '=A1="fail"' },
          format: { fill: { color: "#fbe3df" }, font: { color: "#8c1d18", bold: true } },
        },
        stopIfTrue: true,
      },
    },
    {
      cells: "A1:A9", type: "Custom",
      set: { custom: { rule: { formula: '=A1<>""' }, format: { font: { italic: true } } }, stopIfTrue: true },
    },
  ]);
  // The second list is longer than Excel takes: its cells go without one, and nothing else is lost.
  expect(lists).toEqual([{ cells: "B1:B4", set: { rule: { list: { inCellDropDown: true, source: "in,mm" } } } }]);
});

const sixteenths = { value: 7.5, format: "# ??/16" };
const inches: SheetData = {
  name: "New",
  cells: {
    A1: sixteenths, A2: sixteenths, A3: sixteenths, B1: sixteenths, B2: sixteenths, D9: sixteenths,
    C1: { value: 7.5, format: "0.00" },
    E1: { value: 7.03125, format: "# ??/32" },
  },
  rules: [{ cells: "A1:A3", when: "=A1>7", look: { bold: true } }],
};

test("lengths of one format are shown as on a tape by one set of rules, above the looks by rule and without stopping them", async () => {
  const { rules } = await added(inches);
  const formats = (cells: string) =>
    rules
      .filter((rule) => rule.cells === cells)
      .map(({ set }) => (set["custom"] as { format: { numberFormat?: string } }).format.numberFormat);
  expect(formats("A1:B2,A3,D9").sort()).toEqual(["# ?/2", "# ?/4", "# ?/8", "0", "0;0"]);
  expect(formats("E1").sort()).toEqual(["# ?/2", "# ?/4", "# ?/8", "# ??/16", "0", "0;0"]);
  expect(rules.map(({ set }) => set["stopIfTrue"])).toEqual([...Array<boolean>(11).fill(false), true]);
  expect(rules.at(-1)?.cells).toBe("A1:A3");
});

test("an Excel that takes no blocks together gets the rules block by block", async () => {
  const { rules } = await added(inches, 8);
  expect([...new Set(rules.map(({ cells }) => cells))].sort()).toEqual(["A1:A3", "A1:B2", "A3", "D9", "E1"]);
});
