import { spawnSync } from "node:child_process";
import path from "node:path";
import fc from "fast-check";
import { strFromU8, unzipSync } from "fflate";
import type { CellData, SheetData } from "../../src/sheets/sheet-data";
import { hasMovedLines } from "../../src/workbook-file/moved-rows";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { type SavedInto, savedInto } from "../../src/workbook-file/saved-into";
import type { Calculated, CalculatedValue } from "../../src/workbook-file/sheet/calculated";
import { workbookFile } from "../../src/workbook-file/write-workbook-file";
import { EXCEL_PARTS, packed } from "./as-excel-saves";
import { drawnSheets } from "./drawn-sheets";
import { otherCell, readByExceljs } from "./read-by-exceljs";

type Blocks = Readonly<Record<string, CalculatedValue | readonly (readonly CalculatedValue[])[]>>;

/** What the formulas of the sheet Bid came to when it was saved, by the parts of the file. */
const SAVED: Blocks = {
  B3: 15, C3: { error: "#NAME?" }, D3: 15, A5: [[0, 4.5], ["maple", 3.75], ["oak", 4]], C5: 5.4, C6: 4.5, D5: 12.25, D6: "4.5 each",
  C7: 4.8, D7: 9, F12: { error: "#SPILL!" },
};

const BYTES = packed(EXCEL_PARTS);
const { sheets: READ } = readWorkbookFile(BYTES);

type Typed = Readonly<Record<string, CellData | null>>;

/** The sheets of the file with other cells on one of them. */
const typed = (cells: Typed, name = "Bid", settings: Partial<SheetData> = {}): readonly SheetData[] =>
  READ.map((sheet) => {
    if (sheet.name !== name) return sheet;
    const now: Record<string, CellData> = { ...sheet.cells };
    for (const [address, cell] of Object.entries(cells)) {
      if (cell === null) delete now[address];
      else now[address] = cell;
    }
    return { ...sheet, ...settings, cells: now };
  });

/** What formulas come to by a table, and everything else by what was typed. */
const calculatedAs = (now: readonly SheetData[], blocks: Blocks): Calculated => {
  const typedIn = (sheet: string, address: string): CalculatedValue =>
    now.find(({ name }) => name === sheet)?.cells[address]?.value ?? null;
  const spill = (sheet: string, address: string) => {
    const found = sheet === "Bid" && address in blocks ? (blocks[address] ?? null) : typedIn(sheet, address);
    return Array.isArray(found) ? (found as readonly (readonly CalculatedValue[])[]) : [[found as CalculatedValue]];
  };
  return { spill, value: (sheet, address) => spill(sheet, address)[0]?.[0] ?? null };
};

const saved = (now: readonly SheetData[], blocks: Blocks = {}, bytes = BYTES): SavedInto =>
  savedInto(bytes, now, { calculated: calculatedAs(now, { ...SAVED, ...blocks }) });

const textsOf = (bytes: Uint8Array): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));

/** What differs of the file, part by part: the bytes by a library of its own, the parts that differ by another. */
const differences = ({ bytes }: SavedInto, parts: Readonly<Record<string, string>> = EXCEL_PARTS) => {
  const now = textsOf(bytes);
  const touched = Object.entries(parts).filter(([name, text]) => name in now && now[name] !== text);
  const { stdout, stderr } = spawnSync(process.execPath, [path.join(__dirname, "compare-parts.mjs")], {
    encoding: "utf8", input: JSON.stringify(touched.map(([name, text]) => [text, now[name] ?? ""])),
  });
  expect(stderr).toBe("");
  const found = JSON.parse(stdout) as readonly (readonly string[])[];
  return {
    ...Object.fromEntries(touched.map(([name], index) => [name, found[index] ?? []] as const)),
    gone: Object.keys(parts).filter((name) => !(name in now)), added: Object.keys(now).filter((name) => !(name in parts)),
  };
};

const SHEET = "xl/worksheets/sheet1.xml";
const ROW = (row: number, cell: string) => `worksheet/sheetData[1]/row[${row}]/c[${cell}]`;
const NO_PARTS = { gone: [], added: [] };

test("nothing was typed and nothing comes to anything else: every part is byte for byte what it was", () => {
  expect(differences(saved(READ))).toEqual(NO_PARTS);
});

test("a number and a text are typed: their cells alone are others, the chart and all the rest byte for byte", () => {
  const now = typed({ B2: { ...READ[0]?.cells["B2"], value: 112 }, E2: { value: " taped " }, A13: { value: true } });
  expect(differences(saved(now))).toEqual({
    ...NO_PARTS,
    "xl/sharedStrings.xml": ["sst@count: 12 -> 13", "sst@uniqueCount: 12 -> 13", "sst/si[13]: none ->  taped "],
    "xl/calcChain.xml": [],
    [SHEET]: [
      `${ROW(2, "B2")}/v[1]: 109.5 -> 112`, `${ROW(2, "E2")}@t: e -> s`, `${ROW(2, "E2")}/v[1]: #N/A -> 12`, `${ROW(13, "A13")}: none -> 1`,
    ],
  });
});
