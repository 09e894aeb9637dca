/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { readFileSync } from "node:fs";
import path from "node:path";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { savedInto } from "../../src/workbook-file/saved-into";
import { savedOver } from "../../src/workbook-file/saved-over";
import { formulaFault } from "../../src/workbook/formula-limits";
import { isSoundSheet } from "../../src/workbook/workbook-data";
import { closeWorkbooks, openedData } from "../workbook/opened-workbook";
import { otherCell, readByExceljs } from "./read-by-exceljs";

const BYTES = new Uint8Array(readFileSync(path.join(__dirname, "files/saved-by-libreoffice.xlsx")));
const READING = { refuses: formulaFault, isSound: isSoundSheet };
const read = readWorkbookFile(BYTES, READING);

afterAll(closeWorkbooks);

test("what LibreOffice saved is what was in the workbook: values, formulas in our words, names, widths, merges, lists", () => {
  const [bid, rates] = read.sheets;
  expect([bid?.name, rates?.name]).toEqual(["Bid", "Rates"]);
  expect(bid?.cells).toMatchObject({
    A1: { value: "Bid for nobody" }, B1: { value: " loose " }, B2: { value: 109.5, format: "# ??/16" }, C2: { value: 46_143 },
    D2: { formula: "=TRUE()" }, E2: { formula: "=#N/A" }, B3: { formula: "=STAIR.RISERS(B2)" }, C3: { formula: "=stair.risers(B2)" },
    A5: { formula: "=sort(Rates!A5:B7)" }, C5: { formula: "=B5*Rates!$B$2" }, C7: { formula: "=B7*Rates!$B$2" },
    D5: { formula: "=SUM(A5#)" }, D6: { formula: '=let(x,B5,x&" each")' }, D7: { formula: "=SUM($B$11:$B$12)" },
    F13: { value: "in the way" },
  });
  expect(bid).toMatchObject({ merged: ["E1:H1"], hiddenRows: [4], hiddenColumns: ["D", "E"] });
  expect(bid?.lists?.[0]).toEqual({ cells: "G2:G3", options: ["in", "mm"] });
  expect(rates?.cells).toMatchObject({ B2: { value: 1.2 }, A7: { value: "maple" }, B7: { value: 3.75 } });
  expect(read.names.map(({ name, refers }) => [name, refers])).toEqual([["Markup", "Rates!$B$2"], ["Species", "Rates!$A$5:$A$7"]]);
  expect(read.notShown.map(({ what }) => what)).toEqual(expect.arrayContaining(["1 chart", "1 set of comments"]));
});

/** By hand from the parts of the workbook: SORT goes by the first column, 1.2 is the markup, 109.5 in is 15 rises of at most 7 3/4. */
const RIGHT: Readonly<Record<string, unknown>> = {
  B3: 15, C3: 15, A5: "ash", B5: 4.5, A6: "maple", B6: 3.75, A7: "oak", B7: 4, C5: 5.4, C6: 4.5, C7: 4.8, D5: 12.25, D6: "4.5 each", D7: 9,
};

test("where it lost what formulas came to, they are worked out again and written into the file, as another library reads it", async () => {
  const lost = (await readByExceljs(BYTES)).getWorksheet("Bid");
  expect(otherCell(lost?.getCell("B3")).value).toEqual({ error: "#NAME?" });
  const book = await openedData({ version: 1, sheets: read.sheets });
  const over = savedOver(read.file, book);
  const sheet = (await readByExceljs(over.bytes)).getWorksheet("Bid");
  expect(Object.keys(RIGHT).map((address) => [address, otherCell(sheet?.getCell(address)).value])).toEqual(Object.entries(RIGHT));
  // SEQUENCE(3) has three cells, and one in the file.
  expect(over.unsaved.map(({ address }) => address)).toEqual(["F12"]);
});

test("what is typed is saved into it, its chart and its comments with it", async () => {
  const book = await openedData({ version: 1, sheets: read.sheets });
  const opened = book.data().sheets;
  book.setCell("Bid", "B2", 117);
  book.setCell("Bid", "G2", "mm");
  await book.settled();
  const { bytes } = savedInto(BYTES, book.data().sheets, { ...READING, calculated: book, opened });
  const again = readWorkbookFile(bytes, READING);
  // 117 in is 16 rises of at most 7 3/4.
  expect(again.sheets[0]?.cells).toMatchObject({ B2: { value: 117 }, G2: { value: "mm" } });
  expect([again.stored["Bid"]?.["B3"], again.notShown]).toEqual([16, read.notShown]);
  const sheet = (await readByExceljs(bytes)).getWorksheet("Bid");
  expect(["B2", "G2", "B3"].map((address) => otherCell(sheet?.getCell(address)).value)).toEqual([117, "mm", 16]);
});
