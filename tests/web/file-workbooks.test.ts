import type { CellData } from "../../src/sheets/sheet-data";
import { messageOf } from "../../src/pane/message-of";
import { fileWorkbooks, notOpened } from "../../src/web/file-workbooks";
import { workbookFile } from "../../src/workbook-file/write-workbook-file";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const cells: Readonly<Record<string, CellData>> = { A1: { value: 2 }, A2: { formula: "=A1*3" }, A3: { formula: "=STAIR.PITCH(7,11)" } };
const calculated = { value: () => 6, spill: () => [[6]] };
const packed = workbookFile([{ name: "Bid", cells }], { calculated });

const sentenceOf = (file: Uint8Array, name: string): string => {
  try {
    fileWorkbooks(file, name, false);
    return "";
  } catch (error) {
    return notOpened(name, error, messageOf(error));
  }
};

test("an Excel workbook opens under its file's name, its formulas alive, whatever its ending", () => {
  for (const file of ["Barn stair 2026-11-29.xlsx", "Barn stair (2).xlsm", "Barn stair"]) {
    const { workbooks, notShown } = fileWorkbooks(packed, file, false);
    expect(notShown).toEqual([]);
    expect(workbooks).toEqual([{ name: "Barn stair", data: { version: 1, sheets: [{ name: "Bid", cells }] } }]);
  }
});

test("what was saved here and a table as text open beside it", () => {
  const [own] = fileWorkbooks(bytes(' \n{"version":1,"sheets":[{"name":"Job","cells":{}}]}'), "Barn 2026-11-29.json", false).workbooks;
  expect(own).toEqual({ name: "Barn", data: { version: 1, sheets: [{ name: "Job", cells: {} }] } });
  const [table] = fileWorkbooks(bytes("item,cost\noak,54\n"), "prices.csv", false).workbooks;
  expect(table?.name).toBe("prices");
  expect(table?.data.sheets[0]?.cells["B2"]).toEqual({ value: 54 });
});

test.each([
  ["nothing", new Uint8Array(), "bid.xlsx cannot be opened: it is empty. Choose an Excel workbook (.xlsx), a table as text"],
  ["half a workbook", packed.subarray(0, packed.length / 2), "bid.xlsx was not opened. This workbook is incomplete"],
  ["text under the name of a workbook", bytes("hello"), "bid.xlsx was not opened. This is not an Excel workbook."],
])("%s is refused in one sentence that says what would do", (_, file, sentence) => {
  expect(sentenceOf(file, "bid.xlsx")).toContain(sentence);
});

test("a file of another kind is no table", () => {
  expect(sentenceOf(Uint8Array.from([0x89, 0x50, 0, 0, 1]), "photo.png")).toContain("it is neither a workbook nor a table as text");
});
