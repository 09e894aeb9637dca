import { spawnSync } from "node:child_process";
import path from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { type SavedOver, savedOver } from "../../src/workbook-file/saved-over";
import type { Calculated, CalculatedValue } from "../../src/workbook-file/sheet/calculated";
import { EXCEL_PARTS, packed } from "./as-excel-saves";
import { otherCell, readByExceljs } from "./read-by-exceljs";

type Blocks = Readonly<Record<string, CalculatedValue | readonly (readonly CalculatedValue[])[]>>;

/** What the formulas of the sheet Bid came to when it was saved, by the parts of the file. */
const SAVED: Blocks = {
  B3: 15, C3: { error: "#NAME?" }, D3: 15, A5: [[0, 4.5], ["maple", 3.75], ["oak", 4]], C5: 5.4, D5: 12.25, C6: 4.5, D6: "4.5 each",
  C7: 4.8, D7: 9, F12: { error: "#SPILL!" },
};

const calculatedAs = (blocks: Blocks): Calculated => {
  const spill = (_: string, address: string) => {
    const found = blocks[address] ?? null;
    return Array.isArray(found) ? (found as readonly (readonly CalculatedValue[])[]) : [[found as CalculatedValue]];
  };
  return { spill, value: (sheet, address) => spill(sheet, address)[0]?.[0] ?? null };
};

const saved = (blocks: Blocks, parts: Readonly<Record<string, string>> = EXCEL_PARTS): SavedOver =>
  savedOver(readWorkbookFile(packed(parts)).file, calculatedAs({ ...SAVED, ...blocks }));

/** What differs of the file, part by part: the bytes by a library of its own, the parts that differ by another. */
const differences = ({ bytes }: SavedOver, parts: Readonly<Record<string, string>> = EXCEL_PARTS) => {
  const now = unzipSync(bytes);
  expect(Object.keys(now)).toEqual(Object.keys(parts));
  const touched = Object.entries(parts).filter(([name, text]) => strFromU8(now[name] ?? new Uint8Array()) !== text);
  const { stdout, stderr } = spawnSync(process.execPath, [path.join(__dirname, "compare-parts.mjs")], {
    encoding: "utf8", input: JSON.stringify(touched.map(([name, text]) => [text, strFromU8(now[name] ?? new Uint8Array())])),
  });
  expect(stderr).toBe("");
  const found = JSON.parse(stdout) as readonly (readonly string[])[];
  return Object.fromEntries(touched.map(([name], index) => [name, found[index] ?? []] as const));
};

const SHEET = "xl/worksheets/sheet1.xml";
const ROW = (row: number, cell: string) => `worksheet/sheetData[1]/row[${row}]/c[${cell}]`;

test("nothing came to anything else: every part is byte for byte what it was", () => {
  const over = saved({});
  expect(differences(over)).toEqual({});
  expect(over).toMatchObject({ changed: {}, unsaved: [] });
});

test("a number is written where it differs by more than 1e-11, and not where it was worked out in another order", () => {
  expect(differences(saved({ C5: 5.4 + 9e-12 }))).toEqual({});
  expect(differences(saved({ C5: 5.4 + 2e-11 }))).toEqual({ [SHEET]: [`${ROW(5, "C5")}/v[1]: 5.4 -> 5.40000000002`] });
});

test("a large number is written where it differs by more than a double holds of it after some steps", () => {
  const parts = { ...EXCEL_PARTS, [SHEET]: (EXCEL_PARTS[SHEET] ?? "").replace("<v>12.25</v>", "<v>4000000000.1</v>") };
  // Doubles at 4e9 lie 2^-21 = 4.8e-7 apart (52 bits below 2^31): 1e-14 of it is 4e-5.
  expect(differences(saved({ D5: 4_000_000_000.1 + 2 ** -20 }, parts), parts)).toEqual({});
  expect(differences(saved({ D5: 4_000_000_000.2 }, parts), parts)).toEqual({
    [SHEET]: [`${ROW(5, "D5")}/v[1]: 4000000000.1 -> 4000000000.2`],
  });
});

test("values and their types change alone: the formula, its look and all around it stay", () => {
  expect(differences(saved({ B3: 14, C3: 14, D6: true, D5: "none", C6: { error: "#DIV/0!" } }))).toEqual({
    [SHEET]: [
      `${ROW(3, "B3")}/v[1]: 15 -> 14`,
      `${ROW(3, "C3")}@t: e -> none`, `${ROW(3, "C3")}/v[1]: #NAME? -> 14`,
      `${ROW(5, "D5")}@t: none -> str`, `${ROW(5, "D5")}/v[1]: 12.25 -> none`,
      `${ROW(6, "C6")}@t: none -> e`, `${ROW(6, "C6")}/v[1]: 4.5 -> #DIV/0!`,
      `${ROW(6, "D6")}@t: str -> b`, `${ROW(6, "D6")}/v[1]: 4.5 each -> 1`,
    ],
  });
});

test("a block that spills further has its cells and its reference; rows that were not there are put in place", () => {
  const parts = { ...EXCEL_PARTS, [SHEET]: (EXCEL_PARTS[SHEET] ?? "").replace('<row r="10" ', '<row r="9"/><row r="10" ') };
  const block = [[0, 4.5], ["maple", 3.75], ["oak", 4], ["pine & <fir>", 2], ["ash", 5]];
  expect(differences(saved({ A5: block }, parts), parts)).toEqual({
    [SHEET]: [
      `${ROW(5, "A5")}/f[1]@ref: A5:B7 -> A5:B9`,
      "worksheet/sheetData[1]/row[9]/c[A9]: none -> ash", "worksheet/sheetData[1]/row[9]/c[B9]: none -> 5",
      "worksheet/sheetData[1]/row[8]: none -> pine & <fir>2",
    ],
  });
});

test("a block that spills less far leaves no value behind, and looks stay", () => {
  const parts = { ...EXCEL_PARTS, [SHEET]: (EXCEL_PARTS[SHEET] ?? "").replace('<c r="B7">', '<c r="B7" s="2">') };
  expect(differences(saved({ A5: [[0], ["maple"]] }, parts), parts)).toEqual({
    [SHEET]: [
      `${ROW(5, "A5")}/f[1]@ref: A5:B7 -> A5:A6`, `${ROW(5, "B5")}/v[1]: 4.5 -> gone`,
      `${ROW(6, "B6")}/v[1]: 3.75 -> gone`,
      `${ROW(7, "A7")}@t: str -> none`, `${ROW(7, "A7")}/v[1]: oak -> gone`, `${ROW(7, "B7")}/v[1]: 4 -> gone`,
    ],
  });
});

test("a block that was in the way of nothing any more spills; what its error was said to be goes with it, and the sheet grows", () => {
  const parts = { ...EXCEL_PARTS, [SHEET]: (EXCEL_PARTS[SHEET] ?? "").replace(/<row r="13".*?<\/row>/, "") };
  expect(differences(saved({ F12: [[1, 2, 3], [4, 5, 6]] }, parts), parts)).toEqual({
    [SHEET]: [
      "worksheet/dimension[1]@ref: A1:F13 -> A1:H13",
      `${ROW(12, "F12")}@t: e -> none`, `${ROW(12, "F12")}@vm: 1 -> none`, `${ROW(12, "F12")}/f[1]@ref: F12 -> F12:H13`,
      `${ROW(12, "F12")}/v[1]: #VALUE! -> 1`, `${ROW(12, "G12")}: none -> 2`, `${ROW(12, "H12")}: none -> 3`,
      "worksheet/sheetData[1]/row[13]: none -> 456",
    ],
  });
});

test("a formula that a live sheet cannot take keeps what it came to, and one of a single cell that comes to several is named", () => {
  const over = saved({ F11: 99, D7: [[1], [2]] });
  expect(differences(over)).toEqual({});
  expect(over.unsaved).toEqual([{ sheet: "Bid", address: "D7", why: "comes to several cells here and to one of them in the file" }]);
});

test("an array of a set size is written where it comes to that size, and keeps what it came to where it does not", () => {
  const parts = { ...EXCEL_PARTS, [SHEET]: (EXCEL_PARTS[SHEET] ?? "").replace('<c r="A5" cm="1">', '<c r="A5">') };
  expect(differences(saved({ A5: [[0, 4.5], ["maple", 3.8], ["ash", 4]] }, parts), parts)[SHEET]).toEqual([
    `${ROW(6, "B6")}/v[1]: 3.75 -> 3.8`, `${ROW(7, "A7")}/v[1]: oak -> ash`,
  ]);
  const over = saved({ A5: [[1, 2], [3, 4]] }, parts);
  expect(differences(over, parts)).toEqual({});
  expect(over).toMatchObject({
    changed: {}, unsaved: [{ sheet: "Bid", address: "A5", why: expect.stringContaining("another number of rows") as string }],
  });
});

test("what changed is told cell by cell, both values as the file holds them", () => {
  expect(saved({ B3: 14, C3: 14, A5: [[0, 4.5], ["maple", 3.75]], F12: [[1, 2]] }).changed).toEqual({
    Bid: [
      { address: "B3", was: 15, is: 14 }, { address: "C3", was: { error: "#NAME?" }, is: 14 },
      { address: "A7", was: "oak", is: null }, { address: "B7", was: 4, is: null },
      { address: "F12", was: { error: "#VALUE!" }, is: 1 }, { address: "G12", was: null, is: 2 },
    ],
  });
});

test("other prefixes, quotes and spaces of a writer stay as they are", () => {
  const sheet = `<?xml version="1.0"?>\n<!-- by hand -->\n<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main">
  <x:sheetData>\n  <x:row r = '1' ><x:c  t='str' r='A1' ><x:f>1&amp;""</x:f><x:v>1</x:v></x:c><x:c><x:f>1+1</x:f></x:c></x:row>
  </x:sheetData></x:worksheet>`;
  const parts = { ...EXCEL_PARTS, "xl/worksheets/sheet2.xml": sheet };
  const over = savedOver(readWorkbookFile(packed(parts)).file, {
    value: () => null, spill: (name, at) => (name === "Rates" ? [[at === "A1" ? 7 : 2]] : [[null]]),
  });
  const now = sheet.replace("<x:c  t='str' r='A1' >", "<x:c  r='A1'>").replace("<x:v>1</x:v>", "<x:v>7</x:v>")
    .replace("</x:f></x:c></x:row>", "</x:f><x:v>2</x:v></x:c></x:row>");
  expect(strFromU8(unzipSync(over.bytes)["xl/worksheets/sheet2.xml"] ?? new Uint8Array())).toBe(now);
});

test("dates of a workbook that counts from 1904 are written as it counts them", async () => {
  const parts = {
    ...EXCEL_PARTS,
    "xl/workbook.xml": (EXCEL_PARTS["xl/workbook.xml"] ?? "").replace("<workbookPr ", '<workbookPr date1904="1" '),
    [SHEET]: (EXCEL_PARTS[SHEET] ?? "").replace('<c r="C2" s="3"><v>46143</v></c>', '<c r="C2" s="3"><f>TODAY()</f><v>44681</v></c>'),
  };
  // 1 May 2026 is day 46143 of the one and 44681 of the other (1462 apart, ECMA-376-1, 18.17.4.1).
  expect(differences(saved({ C2: 46_143 }, parts), parts)).toEqual({});
  expect(differences(saved({ C2: 46_144 }, parts), parts)).toEqual({ [SHEET]: [`${ROW(2, "C2")}/v[1]: 44681 -> 44682`] });
});

test("another library reads the new values", async () => {
  const book = await readByExceljs(saved({ B3: 14, A5: [[0, 4.5], ["maple", 3.75], ["oak", 4], ["pine", 2]] }).bytes);
  const sheet = book.getWorksheet("Bid");
  expect(["B3", "A8", "B8", "C7"].map((address) => otherCell(sheet?.getCell(address)).value)).toEqual([14, "pine", 2, 4.8]);
});

test("a sheet in another encoding is read, and not written into", () => {
  const parts = packed(EXCEL_PARTS);
  const { file } = readWorkbookFile(parts);
  const other = { ...file, parts: { ...file.parts, text: (part: string) => `${file.parts.text(part)} ` } };
  expect(() => savedOver(other, calculatedAs({ ...SAVED, B3: 14 }))).toThrow("can be read but not written into");
});

test("saving reads no sheet a second time", () => {
  const { file } = readWorkbookFile(packed(EXCEL_PARTS));
  const tree = (part: string): never => {
    throw new Error(`${part} was read again`);
  };
  const { changed } = savedOver({ ...file, parts: { ...file.parts, tree } }, calculatedAs({ ...SAVED, B3: 14 }));
  expect(changed).toEqual({ Bid: [{ address: "B3", was: 15, is: 14 }] });
});
