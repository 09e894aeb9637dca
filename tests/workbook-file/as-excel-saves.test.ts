import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { workbookData } from "../../src/workbook/workbook-data";
import { excelFile } from "./as-excel-saves";

const read = readWorkbookFile(excelFile());
const [bid, rates] = read.sheets;

test("it is what a live sheet takes", () => {
  expect(workbookData({ version: 1, sheets: read.sheets }).sheets).toEqual(read.sheets);
  expect(read.sheets.map(({ name }) => name)).toEqual(["Bid", "Rates"]);
});

test("cells hold what was typed, formulas as a person types them, and nothing where a block spilled", () => {
  expect(bid?.cells).toEqual({
    // Accent 1 is 4472C4; half as light by 18.8.19: in hue, saturation and light 218.4, 0.520, 0.518, and 0.259 of light is 203864.
    A1: { value: "Bid for nobody", look: { bold: true, size: 14, ink: "#203864" } }, B1: { value: " loose " },
    // Colour 43 of the palette of 18.8.27; format 14 of 18.8.30; 46143 is 1 May 2026.
    A2: { value: "total rise" }, B2: { value: 109.5, format: "#\\ ??/16", look: { fill: "#ffff99" } },
    C2: { value: 46_143, format: "mm-dd-yy" }, D2: { value: true }, E2: { formula: "=#N/A" },
    A3: { value: "risers" }, ...Object.fromEntries(["B3", "C3", "D3"].map((address) => [address, { formula: "=STAIR.RISERS(B2)" }])),
    A4: { value: 4 },
    A5: { formula: "=SORT(Rates!A5:B7)" }, C5: { formula: "=B5*Rates!$B$2" }, D5: { formula: "=SUM(A5#)" },
    C6: { formula: "=B6*Rates!$B$2" }, D6: { formula: '=LET(x,B5,x&" each")' },
    C7: { formula: "=B7*Rates!$B$2" }, D7: { formula: "=SUM($B$11:$B$12)" },
    A10: { value: "Part" }, B10: { value: "Price" },
    A11: { value: " oak " }, B11: { value: 4 }, F11: { value: 3.2 },
    A12: { value: "line\r\nend _x0041_" }, B12: { value: 5 }, F12: { formula: "=SEQUENCE(3)" }, F13: { value: "in the way" },
  });
  expect(rates?.cells["A2"]).toEqual({ value: "Markup" });
});

test("what formulas came to when it was saved stands beside them", () => {
  expect(read.stored["Bid"]).toEqual({
    B3: 15, C3: { error: "#NAME?" }, D3: 15, A5: 0, C5: 5.4, D5: 12.25, C6: 4.5, D6: "4.5 each", C7: 4.8, D7: 9, F11: 3.2,
    F12: { error: "#VALUE!" },
  });
});

test("widths, hidden rows and columns, frozen rows and merged cells", () => {
  // 12.5703125 digits of 7 pixels are 88 pixels, 9.140625 are 64 (18.3.1.13). Accent 1 made lighter by 0.4 is 8FAADC (18.8.19).
  expect(bid).toMatchObject({
    columnWidths: { A: 88, D: 64, E: 64 }, hiddenColumns: ["D", "E"], hiddenRows: [4], frozenRows: 1, merged: ["E1:H1"],
    tabColour: "#8faadc",
  });
});

test("rules that a formula can say, the first in order first, moved to each of their blocks", () => {
  const look = { ink: "#9c0006", fill: "#ffc7ce" };
  expect(bid?.rules).toEqual([
    { cells: "A11:A12", when: '=A11="total"', look }, { cells: "C11", when: '=C11="total"', look },
    { cells: "B11:B12", when: "=B11>4", look },
  ]);
});

test("lists of choices, written where they are used, by a name, and on another sheet", () => {
  const species = ["oak", "ash", "maple"];
  expect(bid?.lists).toEqual([
    { cells: "G2:G3", options: ["in", "mm"] }, { cells: "H2", options: species }, { cells: "H3", options: species },
  ]);
});

test("names are the workbook's, without those of the program itself", () => {
  expect(read.names).toEqual([{ name: "Markup", refers: "Rates!$B$2" }, { name: "Species", refers: "Rates!$A$5:$A$7" }]);
});

test("what is not shown is named with its sheet", () => {
  expect(read.notShown).toEqual([
    { what: "links to other workbooks" }, { what: "2 names, for which formulas have what they stand for" },
    { sheet: "Bid", what: "1 chart" }, { sheet: "Bid", what: "1 set of comments" },
    { sheet: "Bid", what: "1 table, of which only the cells are shown" }, { sheet: "Bid", what: "1 conditional format" },
    { sheet: "Bid", what: "2 lists of choices from cells, which have what stood in them" },
    { sheet: "Bid", what: "several looks within one text" },
  ]);
  expect(read.keptFormulas["Bid"]).toEqual([{ address: "F11", formula: "=[1]Prices!$A$1", why: "reads another workbook" }]);
});

test("a formula that the live sheet refuses shows its stored value and says why", () => {
  const refuses = (formula: string) => (formula.includes("SORT(") ? "there is no SORT here" : undefined);
  const { sheets, keptFormulas } = readWorkbookFile(excelFile(), { refuses });
  expect(sheets[0]?.cells["A5"]).toEqual({ value: 0 });
  // What spilled from it stands in its cells by itself then.
  expect(sheets[0]?.cells["B7"]).toEqual({ value: 4 });
  expect(keptFormulas["Bid"]).toContainEqual({
    address: "A5", formula: "=_xlfn._xlws.SORT(Rates!A5:B7)", why: "there is no SORT here", cells: "A5:B7",
  });
});
