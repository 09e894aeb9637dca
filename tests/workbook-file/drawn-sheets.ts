import fc from "fast-check";
import { cellAddress } from "../../src/sheets/cell-address";
import { cellLooks, type StyleName } from "../../src/sheets/cell-looks";
import { ACROSS, BORDER_LINES, DOWN, type OwnLook } from "../../src/sheets/own-look";
import type { CellData, SheetData } from "../../src/sheets/sheet-data";

const colour = fc.constantFrom("#7a4a1e", "#FFF", "red", "rgb(1, 2, 3)", "#11223344", "#000000");
const border = fc.record({ line: fc.constantFrom(...BORDER_LINES), ink: colour });
const flag = fc.constant(true as const);
const look: fc.Arbitrary<OwnLook> = fc.record(
  {
    bold: flag, italic: flag, underline: flag, strike: flag, wrap: flag, clip: flag, stacked: flag,
    font: fc.constantFrom("Arial", "Courier New", "Übergröße 7"), size: fc.constantFrom(1, 8.5, 11, 72), ink: colour, fill: colour,
    across: fc.constantFrom(...ACROSS), down: fc.constantFrom(...DOWN), turned: fc.constantFrom(-90, -45, 7.5, 30, 90),
    borders: fc.record({ top: border, right: border, bottom: border, left: border }, { requiredKeys: [] }),
  },
  { requiredKeys: [] },
);
const text = fc.oneof(
  fc.string({ unit: "binary" }),
  fc.constantFrom("", " 7 9/16\" ", "a\r\nb", "_x000D_", "_x005F_", "=not a formula", "'", "1", "TRUE", "\ud800", "\uffff\0",
    "<&>\"'", "\t"),
);
const number = fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0);
const formula = fc.constantFrom(
  "=A1+1", "=STAIR.RISERS(A1)", "=stair.risers( a1 )", "=SUM(A1#)", "=LET(x,1,x)", '="<&>"""&"_x000D_"', "=@A1:A3", "=Sheet!A1",
  "=1+", "=SORT(B:B)",
);
const format = fc.constantFrom("General", "@", "# ??/16", "0.00", "#,##0.00", "yyyy-mm-dd", '0.0"°"', "# ??/64\\\"", "mm-dd-yy");
const cell: fc.Arbitrary<CellData> = fc
  .tuple(
    fc.oneof(fc.constant({}), fc.oneof(text, number, fc.boolean()).map((value) => ({ value })), formula.map((one) => ({ formula: one }))),
    fc.record({ format, look, style: fc.constantFrom(...(Object.keys(cellLooks) as StyleName[])) }, { requiredKeys: [] }),
  )
  .map(([said, looks]) => ({ ...said, ...looks }));
const address = fc.tuple(fc.nat(30), fc.nat(30)).map(([row, column]) => cellAddress({ row, column }));
const pixels = fc.constantFrom(1, 7, 64, 88, 88.5, 200, 10_000);
const rule = fc.record({
  cells: fc.constantFrom("A1:B9", "C3", "A1:A70"), when: fc.constantFrom('=LEFT(A1,1)="✗"', "=STAIR.RISERS(A1)=7"), look,
});
const list = fc.record({
  cells: fc.constantFrom("A1:B9", "C3"),
  options: fc.array(fc.constantFrom("inches", 'a "b" c', " padded ", "é", "1", "x".repeat(200)), { minLength: 1, maxLength: 4 }),
});
const settings = fc.record(
  {
    columnWidths: fc.dictionary(fc.constantFrom("A", "C", "Z", "AA", "XFD"), pixels),
    rowHeights: fc.dictionary(fc.constantFrom("1", "2", "99"), pixels),
    frozenRows: fc.nat(40), frozenColumns: fc.nat(4),
    hiddenRows: fc.uniqueArray(fc.integer({ min: 1, max: 50 })), hiddenColumns: fc.uniqueArray(fc.constantFrom("B", "D", "AB")),
    merged: fc.constantFrom([], ["A1:C2"], ["B2:B9", "D1:E1"], ["A1:A1"]),
    rules: fc.array(rule, { maxLength: 4 }), lists: fc.array(list, { maxLength: 3 }),
    hidesGridLines: flag, tabColour: colour,
  },
  { requiredKeys: [] },
);
const sheet = fc
  .tuple(fc.dictionary(address, cell, { maxKeys: 12, noNullPrototype: true }), settings)
  .map(([cells, more]) => ({ ...more, cells }));
/** Sheets with whatever a workbook may have. */
export const drawnSheets = fc.array(fc.tuple(sheet, fc.boolean()), { minLength: 1, maxLength: 3 }).map((all) =>
  all.map(([one, isHidden], index): SheetData => ({
    name: ["Bid", "It's 1 <Cut> \"plan\"", "Choices"][index] ?? "", ...(isHidden && index > 0 ? { isHidden } : {}), ...one,
  })));
