import { Workbook } from "exceljs";
import writeExcelFile from "write-excel-file/node";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { workbookData } from "../../src/workbook/workbook-data";

/** 1 May 2026 is day 46143 from the last of 1899: by hand 126 x 365 + 31 leap days + 2 for the first days, and 120 days of the year. */
const MAY = new Date(Date.UTC(2026, 4, 1));
const MAY_DAY = 126 * 365 + 31 + 2 + 120;

const read = (bytes: Uint8Array | ArrayBuffer) => {
  const found = readWorkbookFile(new Uint8Array(bytes));
  // Whatever is read is what a live sheet takes.
  expect(workbookData({ version: 1, sheets: found.sheets }).sheets).toEqual(found.sheets);
  return found;
};

describe("a file that exceljs wrote", () => {
  const written = async (fill: (book: Workbook) => void) => {
    const book = new Workbook();
    fill(book);
    return read((await book.xlsx.writeBuffer()) as ArrayBuffer);
  };

  test("is read cell by cell: texts, numbers, dates, true and false, errors, formulas with what they came to", async () => {
    const { sheets, stored, notShown } = await written((book) => {
      const sheet = book.addWorksheet("Bid & more");
      sheet.getCell("A1").value = "Red oak ";
      sheet.getCell("A2").value = "two\nlines <&> \"q\"";
      sheet.getCell("A3").value = { richText: [{ text: "7 9/16", font: { bold: true } }, { text: " in" }] };
      sheet.getCell("B1").value = 7.5625;
      sheet.getCell("B2").value = -0.1;
      sheet.getCell("B3").value = 1e21;
      sheet.getCell("C1").value = true;
      sheet.getCell("C2").value = false;
      sheet.getCell("C3").value = { error: "#N/A" };
      sheet.getCell("D1").value = MAY;
      sheet.getCell("D1").numFmt = "yyyy-mm-dd";
      sheet.getCell("E1").value = { formula: "SUM(B1:B2)", result: 7.4625 };
      sheet.getCell("E2").value = { formula: "_xldudf_STAIR_RISERS(109.5)", result: 15 };
      sheet.getCell("E3").value = { formula: 'IF(C2,1,"no")', result: "no" };
      sheet.getCell("E4").value = { formula: "B1/0", result: { error: "#DIV/0!" } };
    });
    expect(sheets[0]?.cells).toEqual({
      A1: { value: "Red oak " }, A2: { value: 'two\nlines <&> "q"' }, A3: { value: "7 9/16 in" },
      B1: { value: 7.5625 }, B2: { value: -0.1 }, B3: { value: 1e21 },
      C1: { value: true }, C2: { value: false }, C3: { formula: "=#N/A" }, D1: { value: MAY_DAY, format: "yyyy-mm-dd" },
      E1: { formula: "=SUM(B1:B2)" }, E2: { formula: "=STAIR.RISERS(109.5)" }, E3: { formula: '=IF(C2,1,"no")' }, E4: { formula: "=B1/0" },
    });
    expect(stored["Bid & more"]).toEqual({ E1: 7.4625, E2: 15, E3: "no", E4: { error: "#DIV/0!" } });
    expect(notShown).toEqual([{ sheet: "Bid & more", what: "several looks within one text" }]);
  });

  test("is read with shared formulas, each moved to its cell", async () => {
    const { sheets } = await written((book) => {
      const sheet = book.addWorksheet("Bid");
      sheet.getCell("C1").value = { formula: "A1*$B$1+Rate!A$1", shareType: "shared", ref: "C1:D3", result: 1 } as never;
      for (const cell of ["C2", "C3", "D1", "D2"]) sheet.getCell(cell).value = { sharedFormula: "C1", result: 2 };
      book.addWorksheet("Rate");
    });
    // By hand: one column right and one row down move only what has no $ before it.
    expect(sheets[0]?.cells).toEqual({
      C1: { formula: "=A1*$B$1+Rate!A$1" }, C2: { formula: "=A2*$B$1+Rate!A$1" }, C3: { formula: "=A3*$B$1+Rate!A$1" },
      D1: { formula: "=B1*$B$1+Rate!B$1" }, D2: { formula: "=B2*$B$1+Rate!B$1" },
    });
  });

  test("is read with its looks in the live sheet's own terms", async () => {
    const { sheets } = await written((book) => {
      const sheet = book.addWorksheet("Bid", { properties: { tabColor: { argb: "FF7A4A1E" } } });
      const marks = { bold: true, italic: true, underline: true, strike: true };
      sheet.getCell("A1").font = { name: "Calibri", size: 11, ...marks, color: { argb: "FF8C1D18" } };
      sheet.getCell("A2").fill = { type: "pattern", pattern: "solid", fgColor: { argb: "FFFFF6D6" } };
      sheet.getCell("A3").border = { bottom: { style: "thin", color: { argb: "FFC9BFB1" } }, left: { style: "mediumDashDot" } };
      sheet.getCell("A4").alignment = { horizontal: "center", vertical: "middle", wrapText: true, textRotation: -45 };
      sheet.getCell("A5").alignment = { textRotation: "vertical" };
      sheet.getCell("A6").font = { name: "Courier New", size: 14 };
      sheet.getCell("A7").numFmt = "# ??/16";
      sheet.getCell("A8").numFmt = "#,##0.00";
    });
    expect(sheets[0]).toEqual({
      name: "Bid", tabColour: "#7a4a1e",
      cells: {
        A1: { look: { bold: true, italic: true, underline: true, strike: true, ink: "#8c1d18" } },
        A2: { look: { fill: "#fff6d6" } },
        A3: { look: { borders: { bottom: { line: "thin", ink: "#c9bfb1" }, left: { line: "medium-dash-dot", ink: "#000000" } } } },
        A4: { look: { across: "center", down: "middle", wrap: true, turned: -45 } },
        A5: { look: { stacked: true } }, A6: { look: { font: "Courier New", size: 14 } },
        A7: { format: "# ??/16" }, A8: { format: "#,##0.00" },
      },
    });
  });

  test("is read with widths, heights, hidden rows and columns, frozen panes, merged cells and a hidden sheet", async () => {
    const { sheets } = await written((book) => {
      const sheet = book.addWorksheet("Bid", { views: [{ state: "frozen", ySplit: 2, xSplit: 1, showGridLines: false }] });
      sheet.getCell("A1").value = 1;
      // 12.5703125 digits of 7 pixels are 88 pixels (ECMA-376-1, 18.3.1.13); 18 points are 24 pixels at 96 an inch.
      sheet.getColumn(2).width = 12.5703125;
      sheet.getColumn(3).hidden = true;
      sheet.getRow(3).height = 18;
      sheet.getCell("A4").value = 4;
      sheet.getRow(4).hidden = true;
      sheet.mergeCells("A6:C7");
      book.addWorksheet("Rates", { state: "veryHidden" });
    });
    expect(sheets[0]).toMatchObject({
      columnWidths: { B: 88 }, hiddenColumns: ["C"], rowHeights: { 3: 24 }, hiddenRows: [4], frozenRows: 2, frozenColumns: 1,
      hidesGridLines: true, merged: ["A6:C7"],
    });
    expect(sheets[1]).toEqual({ name: "Rates", cells: {}, isHidden: true });
  });

  test("is read with its lists of choices and the rules that a formula can say", async () => {
    const { sheets, notShown } = await written((book) => {
      const sheet = book.addWorksheet("Bid");
      for (const [row, text] of ["oak", "maple", "ash"].entries()) sheet.getCell(`F${row + 1}`).value = text;
      sheet.getCell("A1").dataValidation = { type: "list", allowBlank: true, formulae: ['"in,mm"'] };
      sheet.getCell("A2").dataValidation = { type: "list", allowBlank: true, formulae: ["$F$1:$F$3"] };
      sheet.getCell("A3").dataValidation = { type: "whole", operator: "between", formulae: [1, 9] };
      const style = { font: { bold: true }, fill: { type: "pattern", pattern: "solid", bgColor: { argb: "FFFBE3DF" } } } as const;
      sheet.addConditionalFormatting({ ref: "B1:B9", rules: [
        { type: "expression", formulae: ['LEFT(B1,1)="x"'], style, priority: 2 },
        { type: "cellIs", operator: "between", formulae: [1, 5], style, priority: 1 },
        { type: "cellIs", operator: "equal", formulae: ["A1=2"], style, priority: 4 },
        { type: "colorScale", cfvo: [{ type: "min" }, { type: "max" }], color: [{ argb: "FFFFFFFF" }, { argb: "FFFF0000" }], priority: 3 },
      ] as never });
    });
    const look = { bold: true, fill: "#fbe3df" };
    expect(sheets[0]?.rules).toEqual([
      { cells: "B1:B9", when: "=AND(B1>=1,B1<=5)", look }, { cells: "B1:B9", when: '=LEFT(B1,1)="x"', look },
      { cells: "B1:B9", when: "=B1=(A1=2)", look },
    ]);
    expect(sheets[0]?.lists).toEqual([{ cells: "A1", options: ["in", "mm"] }, { cells: "A2", options: ["oak", "maple", "ash"] }]);
    expect(notShown).toEqual([
      { sheet: "Bid", what: "1 conditional format" }, { sheet: "Bid", what: "1 check of what is typed" },
      { sheet: "Bid", what: "1 list of choices from cells, which has what stood in them" },
    ]);
  });

  test("is read with its names and tables as the cells they stand for", async () => {
    const { sheets, names, notShown } = await written((book) => {
      const sheet = book.addWorksheet("Bid");
      const columns = [{ name: "Part" }, { name: "Price" }];
      sheet.addTable({ name: "Lines", ref: "A1", headerRow: true, columns, rows: [["oak", 4], ["ash", 5]] });
      sheet.getCell("D1").value = { formula: "SUM(Lines[Price])*Markup", result: 18 };
      sheet.getCell("E1").value = 2;
      book.definedNames.add("Bid!$E$1", "Markup");
    });
    expect(sheets[0]?.cells["D1"]).toEqual({ formula: "=SUM($B$2:$B$3)*Bid!$E$1" });
    expect(names).toEqual([{ name: "Markup", refers: "Bid!$E$1" }]);
    expect(notShown).toContainEqual({ sheet: "Bid", what: "1 table, of which only the cells are shown" });
  });

  test("that counts its days from 1904 is read with the same days: 1462 apart (ECMA-376-1, 18.17.4.1)", async () => {
    const { sheets } = await written((book) => {
      book.properties.date1904 = true;
      const sheet = book.addWorksheet("Bid");
      sheet.getCell("A1").value = MAY;
      sheet.getCell("A1").numFmt = "d mmm yyyy";
      sheet.getCell("A2").value = 7;
    });
    expect(sheets[0]?.cells).toEqual({ A1: { value: MAY_DAY, format: "d mmm yyyy" }, A2: { value: 7 } });
  });
});

test("a file that write-excel-file wrote is read cell by cell", async () => {
  const bytes = await writeExcelFile(
    [
      [{ value: "Part", fontWeight: "bold", backgroundColor: "#f4efe7", columnSpan: 2 }, null, { value: "Due", align: "right" }],
      [{ value: " oak\n" }, { value: 7.5625, type: Number, format: "# ??/16" }, { value: MAY, type: Date, format: "yyyy-mm-dd" }],
      [
        { value: true, type: Boolean }, { value: "=SUM(B2:B2)", type: "Formula" },
        { value: "x", topBorderStyle: "thin", topBorderColor: "#c9bfb1" },
      ],
    ] as never,
    { sheet: "Order", stickyRowsCount: 1, showGridLines: false, columns: [{ width: 12.5703125 }] },
  ).toBuffer();
  const { sheets, notShown } = read(bytes);
  const heading = { bold: true, fill: "#f4efe7" };
  expect(sheets).toEqual([{
    name: "Order", frozenRows: 1, hidesGridLines: true, merged: ["A1:B1"], columnWidths: { A: 88 },
    cells: {
      A1: { value: "Part", look: heading }, B1: { look: heading }, C1: { value: "Due", look: { across: "right" } },
      A2: { value: " oak\n" }, B2: { value: 7.5625, format: "# ??/16" }, C2: { value: MAY_DAY, format: "yyyy-mm-dd" },
      A3: { value: true }, B3: { formula: "=SUM(B2:B2)" }, C3: { value: "x", look: { borders: { top: { line: "thin", ink: "#c9bfb1" } } } },
    },
  }]);
  expect(notShown).toEqual([]);
});
