import { spawnSync } from "node:child_process";
import path from "node:path";
import fc from "fast-check";
import { strFromU8, unzipSync } from "fflate";
import { cellLooks } from "../../src/sheets/cell-looks";
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

const NO_PARTS: { readonly gone: readonly string[]; readonly added: readonly string[] } = { gone: [], added: [] };

/** What differs of the file, part by part: the bytes by a library of its own, the parts that differ by another. */
const differences = (
  { bytes }: SavedInto, parts: Readonly<Record<string, string>> = EXCEL_PARTS,
): Readonly<Record<string, readonly string[]>> & typeof NO_PARTS => {
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

test("nothing was typed and nothing comes to anything else: every part is byte for byte what it was", () => {
  expect(differences(saved(READ))).toEqual(NO_PARTS);
});

test("a number and a text are typed: their cells alone are others, the chart and all the rest byte for byte", () => {
  const now = typed({ B2: { ...READ[0]?.cells["B2"], value: 112 }, E2: { value: " taped " }, A13: { value: true } });
  expect(differences(saved(now))).toEqual({
    ...NO_PARTS,
    "xl/sharedStrings.xml": ["sst@count: 12 -> 13", "sst@uniqueCount: 12 -> 13", "sst/si[13]: none ->  taped "],
    [SHEET]: [
      `${ROW(2, "B2")}/v[1]: 109.5 -> 112`, `${ROW(2, "E2")}@t: e -> s`, `${ROW(2, "E2")}/v[1]: #N/A -> 12`, `${ROW(13, "A13")}: none -> 1`,
    ],
  });
});

test("a formula typed over a number, a number over one that told others: those tell it themselves; no order of calculation stays", () => {
  const now = typed({ B2: { ...READ[0]?.cells["B2"], formula: "=STAIR.PICK(A5:B7,2)" }, C5: { value: 5 } });
  const found = differences(saved(now, { B2: 3.75, C5: 5 }));
  expect(found.gone).toEqual(["xl/calcChain.xml"]);
  expect(found).toMatchObject({
    [SHEET]: [
      `${ROW(2, "B2")}@cm: none -> 1`, `${ROW(2, "B2")}/v[1]: 109.5 -> 3.75`, `${ROW(2, "B2")}/f[1]: none -> _xldudf_STAIR_PICK(A5:B7,2)`,
      `${ROW(5, "C5")}/f[1]: B5*Markup -> gone`, `${ROW(5, "C5")}/v[1]: 5.4 -> 5`,
      `${ROW(6, "C6")}/f[1]@t: shared -> none`, `${ROW(6, "C6")}/f[1]@si: 0 -> none`, `${ROW(6, "C6")}/f[1]:  -> B6*Markup`,
      `${ROW(7, "C7")}/f[1]@t: shared -> none`, `${ROW(7, "C7")}/f[1]@si: 0 -> none`, `${ROW(7, "C7")}/f[1]:  -> B7*Markup`,
    ],
  });
});

test("a text typed over a block that spilled leaves nothing of it; typed into a block, it stands in its way", () => {
  expect(differences(saved(typed({ A5: { value: "none" } })))[SHEET]).toEqual([
    `${ROW(5, "A5")}@cm: 1 -> none`, `${ROW(5, "A5")}@t: none -> s`, `${ROW(5, "A5")}/f[1]: _xlfn._xlws.SORT(Rates!A5:B7) -> gone`,
    `${ROW(5, "A5")}/v[1]: 0 -> 12`, `${ROW(5, "B5")}/v[1]: 4.5 -> gone`,
    `${ROW(6, "A6")}@t: str -> none`, `${ROW(6, "A6")}/v[1]: maple -> gone`, `${ROW(6, "B6")}/v[1]: 3.75 -> gone`,
    `${ROW(7, "A7")}@t: str -> none`, `${ROW(7, "A7")}/v[1]: oak -> gone`, `${ROW(7, "B7")}/v[1]: 4 -> gone`,
  ]);
  expect(differences(saved(typed({ B6: { value: 1 } }), { A5: { error: "#SPILL!" } }))[SHEET]).toEqual([
    `${ROW(5, "A5")}@t: none -> e`, `${ROW(5, "A5")}/f[1]@ref: A5:B7 -> A5`, `${ROW(5, "A5")}/v[1]: 0 -> #VALUE!`,
    `${ROW(5, "B5")}/v[1]: 4.5 -> gone`, `${ROW(6, "A6")}@t: str -> none`, `${ROW(6, "A6")}/v[1]: maple -> gone`,
    `${ROW(6, "B6")}/v[1]: 3.75 -> 1`,
    `${ROW(7, "A7")}@t: str -> none`, `${ROW(7, "A7")}/v[1]: oak -> gone`, `${ROW(7, "B7")}/v[1]: 4 -> gone`,
  ]);
});

const STYLES = "xl/styles.xml";

test("a look or a format that is another now is a record of its own; the parts of the old one that are as they were stay", async () => {
  const { B2 = {}, A1 = {} } = READ[0]?.cells ?? {};
  const now = typed({
    B2: { ...B2, format: "0.000", look: { ...B2.look, bold: true } }, A1: { ...A1, look: { ...A1.look, across: "right" } },
  });
  const found = differences(saved(now));
  expect(found[SHEET]).toEqual([`${ROW(1, "A1")}@s: 1 -> 4`, `${ROW(2, "B2")}@s: 2 -> 5`]);
  expect(found[STYLES]).toEqual([
    "styleSheet/numFmts[1]@count: 1 -> 2", "styleSheet/numFmts[1]/numFmt[2]: none -> ",
    "styleSheet/fonts[1]@count: 2 -> 3", "styleSheet/fonts[1]/font[3]: none -> ",
    "styleSheet/cellXfs[1]@count: 4 -> 6", "styleSheet/cellXfs[1]/xf[5]: none -> ", "styleSheet/cellXfs[1]/xf[6]: none -> ",
  ]);
  const sheet = (await readByExceljs(saved(now).bytes)).getWorksheet("Bid");
  expect(sheet?.getCell("B2")).toMatchObject({
    numFmt: "0.000", font: { name: "Calibri", size: 11, bold: true }, fill: { type: "pattern", pattern: "solid", fgColor: { indexed: 43 } },
  });
  expect(sheet?.getCell("A1")).toMatchObject({ font: { size: 14, bold: true, color: { theme: 4 } }, alignment: { horizontal: "right" } });
});

test("widths, heights, hidden and merged cells are set where they are others, and the columns beside keep theirs", () => {
  const bid = READ[0];
  const settings: Partial<SheetData> = {
    columnWidths: { ...bid?.columnWidths, D: 200, G: 100 }, hiddenColumns: ["E"], rowHeights: { 2: 40, 20: 30 }, hiddenRows: [7],
    merged: ["E1:F1", "A20:B21"],
  };
  // In 256ths of a digit 7 pixels wide (ECMA-376-1, 18.3.1.13): 200 / 7 = 28.5714, 100 / 7 = 14.2857; a pixel is 0.75 points.
  expect(differences(saved(typed({}, "Bid", settings)))[SHEET]).toEqual([
    "worksheet/cols[1]/col[2]@max: 5 -> 4", "worksheet/cols[1]/col[2]@width: 9.140625 -> 28.5703125",
    "worksheet/cols[1]/col[2]@hidden: 1 -> none",
    "worksheet/cols[1]/col[3]: none -> ", "worksheet/cols[1]/col[4]: none -> ",
    "worksheet/sheetData[1]/row[2]@ht: none -> 30", "worksheet/sheetData[1]/row[2]@customHeight: none -> 1",
    "worksheet/sheetData[1]/row[4]@hidden: 1 -> none", "worksheet/sheetData[1]/row[7]@hidden: none -> 1",
    "worksheet/sheetData[1]/row[20]: none -> ",
    "worksheet/mergeCells[1]@count: 1 -> 2", "worksheet/mergeCells[1]/mergeCell[1]@ref: E1:H1 -> E1:F1",
    "worksheet/mergeCells[1]/mergeCell[2]: none -> ",
  ]);
});

test("a sheet put in since stands behind the others, with its looks, lists, texts and formulas", async () => {
  const cells: SheetData["cells"] = {
    A1: { value: "Takeoff", style: "title" }, A2: { value: "total rise" }, B2: { value: 109.5, format: "# ??/16" },
    B3: { formula: "=STAIR.RISERS(B2)" }, C3: { formula: '=Bid!B2&" in"' },
  };
  const lists = [{ cells: "B4", options: ["oak", "ash"] }, { cells: "B5", options: Array.from({ length: 60 }, (_, at) => `choice ${at}`) }];
  const rules = [{ cells: "B3", when: "=B3>15", look: { ink: "#ff0000" } }];
  const now = [...READ, { name: "Takeoff", cells, lists, rules, frozenRows: 1, columnWidths: { A: 140 } }];
  const calculated = calculatedAs(now, SAVED);
  const spill: Calculated["spill"] = (sheet, address) =>
    sheet !== "Takeoff"
      ? calculated.spill(sheet, address)
      : [[address === "B3" ? 15 : address === "C3" ? "109.5 in" : calculated.value(sheet, address)]];
  const over = savedInto(BYTES, now, { calculated: { spill, value: (sheet, address) => spill(sheet, address)[0]?.[0] ?? null } });
  const found = differences(over);
  expect(found).toMatchObject({ gone: ["xl/calcChain.xml"] });
  expect(found.added.slice(0, 2)).toEqual(["xl/worksheets/sheet3.xml", "xl/worksheets/sheet4.xml"]);
  expect(found[SHEET]).toBeUndefined();
  expect(found["xl/workbook.xml"]).toEqual([
    "workbook/sheets[1]/sheet[3]: none -> ", "workbook/sheets[1]/sheet[4]: none -> ",
    "workbook/definedNames[1]/definedName[4]: none -> Takeoff!$1:$1",
  ]);
  const book = await readByExceljs(over.bytes);
  expect(book.worksheets.map(({ name, state }) => [name, state])).toEqual([
    ["Bid", "visible"], ["Rates", "visible"], ["Takeoff", "visible"], ["Choices", "hidden"],
  ]);
  const sheet = book.getWorksheet("Takeoff");
  expect(["A1", "A2", "B2", "B3", "C3"].map((address) => otherCell(sheet?.getCell(address)))).toEqual([
    { value: "Takeoff" }, { value: "total rise" }, { value: 109.5 }, { value: 15, formula: "_xldudf_STAIR_RISERS(B2)" },
    { value: "109.5 in", formula: 'Bid!B2&" in"' },
  ]);
  expect(sheet?.getCell("B2").numFmt).toBe("# ??/16");
  // Opened here again it is what it was, to the last setting.
  expect(readWorkbookFile(over.bytes).sheets).toEqual(now);
});

test("what the file shows nobody else is told, and is there again when it is opened here", () => {
  const settings: Partial<SheetData> = { frozenRows: 2, hidesGridLines: true, rules: [], tabColour: "#112233" };
  const now = typed({}, "Bid", settings);
  const over = saved(now);
  expect(over.notCarried).toEqual(["Bid: looks by rule, frozen rows, grid lines, the colour of its tab"]);
  expect(readWorkbookFile(over.bytes).sheets).toEqual(now);
  expect(saved([...READ].reverse()).notCarried).toEqual(["the order of its sheets"]);
});

const moved = (cells: SheetData["cells"], by: number): SheetData["cells"] =>
  Object.fromEntries(Object.entries(cells).map(([address, cell]) =>
    [address.replace(/\d+/, (row) => String(Number(row) > 4 ? Number(row) + by : row)), cell]));

test("rows that were put in and sheets that have another name are refused with what would do; a sorted table is not", () => {
  const rows = READ.map((sheet) => ({ ...sheet, cells: moved(sheet.cells, 1) }));
  expect(() => saved(rows)).toThrow(/Rows or columns of “Bid”, “Rates” were put in, taken out or moved.*Save it as a new Excel workbook/);
  expect(() => saved(READ.map((sheet, at) => (at === 0 ? { ...sheet, name: "Offer" } : sheet)))).toThrow(
    /Sheet “Bid” of the file is gone or has another name here.*Save it as a new Excel workbook/,
  );
  const { A5 = {}, A7 = {}, B5 = {}, B7 = {} } = READ[1]?.cells ?? {};
  const sorted = typed({ A5: A7, A7: A5, B5: B7, B7: B5 }, "Rates");
  expect(differences(saved(sorted))["xl/worksheets/sheet2.xml"]).toEqual([
    "worksheet/sheetData[1]/row[5]/c[A5]/v[1]: 9 -> 12", "worksheet/sheetData[1]/row[5]/c[B5]/v[1]: 4 -> 3.75",
    "worksheet/sheetData[1]/row[7]/c[A7]/v[1]: 11 -> 13", "worksheet/sheetData[1]/row[7]/c[B7]/v[1]: 3.75 -> 4",
  ]);
});

test("a heading of a table is the name of its column too; one that is gone or there twice is refused", () => {
  const found = differences(saved(typed({ B10: { value: "Price & fee" } })));
  expect(found["xl/tables/table1.xml"]).toEqual(["table/tableColumns[1]/tableColumn[2]@name: Price -> Price & fee"]);
  expect(found[SHEET]).toEqual([`${ROW(10, "B10")}/v[1]: 4 -> 12`]);
  for (const cell of [{ value: 7 }, { value: "part" }, {}]) {
    expect(() => saved(typed({ B10: cell }))).toThrow(
      "Bid B10 is a heading of the table “Lines” of the file: it must be a text that no other heading of the table has.",
    );
  }
});

const METADATA = "xl/metadata.xml";

test("the mark of a dynamic array is found where there is one, and added to metadata of other things and to a file without any", () => {
  const now = typed({ G5: { formula: "=STAIR.RISERS(B2)" } });
  const bare = Object.fromEntries(Object.entries(EXCEL_PARTS).filter(([name]) => name !== METADATA).map(([name, text]) => [
    name,
    name === SHEET ? text.replaceAll(' cm="1"', "")
      : name.endsWith("workbook.xml.rels") ? text.replace(/<Relationship [^>]*metadata\.xml"\/>/, "")
      : name === "[Content_Types].xml" ? text.replace(/<Override [^>]*metadata[^>]*>/, "") : text,
  ]));
  const [own] = READ.map(({ cells }) => cells);
  expect(differences(saved(now, { G5: 15 }))[SHEET]).toContain(`${ROW(5, "G5")}: none -> _xldudf_STAIR_RISERS(B2)15`);
  const bytes = packed(bare);
  const sheets = readWorkbookFile(bytes).sheets.map((sheet, at) =>
    at === 0 ? { ...sheet, cells: { ...sheet.cells, G5: { formula: "=STAIR.RISERS(B2)" } } } : sheet);
  const texts = textsOf(savedInto(bytes, sheets, { calculated: calculatedAs(sheets, { ...SAVED, G5: 15 }) }).bytes);
  expect(texts["xl/metadata1.xml"]).toContain('name="XLDAPR"');
  expect(texts["[Content_Types].xml"]).toContain('PartName="/xl/metadata1.xml"');
  expect(texts["xl/_rels/workbook.xml.rels"]).toContain('Target="/xl/metadata1.xml"');
  expect(texts[SHEET]).toContain('<c r="G5" cm="1"><f t="array" ref="G5">');
  expect(own).toBeDefined();
  // A rich value of another kind in front (18.9: types are counted from 1, blocks from 0).
  const other = (EXCEL_PARTS[METADATA] ?? "").replace(/<metadataTypes.*<\/metadata>$/s,
    '<metadataTypes count="1"><metadataType name="XLRICHVALUE" minSupportedVersion="120000"/></metadataTypes>' +
    '<futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata>' +
    '<valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata></metadata>');
  const withOther = packed({ ...bare, ...EXCEL_PARTS, [SHEET]: bare[SHEET] ?? "", [METADATA]: other });
  const marked = textsOf(savedInto(withOther, sheets, { calculated: calculatedAs(sheets, { ...SAVED, G5: 15 }) }).bytes);
  expect(marked[SHEET]).toContain('<c r="G5" cm="2"><f t="array" ref="G5">');
  expect(marked[METADATA]).toMatch(
    /<metadataTypes count="2"><metadataType name="XLRICHVALUE"[^>]*><metadataType name="XLDAPR".*<\/metadataTypes>/,
  );
  expect(marked[METADATA]).toMatch(
    /<cellMetadata count="2"><bk><rc t="1" v="0"\/><\/bk><bk><rc t="2" v="0"\/><\/bk><\/cellMetadata>/,
  );
});

/** In pixels, as a live sheet has it. */
const USUAL_WIDTH = 88;
const NOUGHTS: Calculated = { value: () => 0, spill: () => [[0]] };

/** A sheet as a file says it to anyone: what its cells hold and how they look, what is wide, high, hidden and merged. */
const said = (bytes: Uint8Array) =>
  new Map(readWorkbookFile(bytes, { isBare: true }).sheets.map((sheet) => {
    const { name, cells, columnWidths = {}, rowHeights = {}, hiddenRows = [], hiddenColumns = [], merged = [] } = sheet;
    // A column of a file may say its width though nobody has set it.
    const widths = Object.fromEntries(Object.entries(columnWidths).filter(([, width]) => width !== USUAL_WIDTH));
    const shown = Object.fromEntries(Object.entries(cells).map(([address, { style, look, ...cell }]) =>
      [address, { ...cell, look: { ...(style === undefined ? {} : cellLooks[style]), ...look } }]));
    const hidden = [[...hiddenRows].sort(), [...hiddenColumns].sort()];
    return [name, { cells: shown, widths, rowHeights, hidden, merged }] as const;
  }));

test("whatever becomes of sheets, they come back out of the file as they are, and the file says to anyone what a new one would", () => {
  fc.assert(
    fc.property(drawnSheets, drawnSheets, (before, after) => {
      const now = [...after, ...before.slice(after.length)];
      fc.pre(before.every((sheet, at) => !hasMovedLines(sheet, now[at] ?? sheet)));
      const file = workbookFile(before, { calculated: NOUGHTS });
      const save = () => savedInto(file, now, { calculated: NOUGHTS });
      // The sheet of long lists takes a name that a person may think of too.
      const hasOwn = readWorkbookFile(file, { isBare: true }).sheets.length > before.length;
      if (hasOwn && now.length > before.length && now.some(({ name }) => name === "Choices")) {
        expect(save).toThrow("The file has a sheet “Choices” of its own");
        return;
      }
      const { bytes } = save();
      expect(readWorkbookFile(bytes).sheets).toEqual(now);
      const [found, wanted] = [said(bytes), said(workbookFile(now, { calculated: NOUGHTS }))];
      for (const { name } of now) expect(found.get(name)).toEqual(wanted.get(name));
    }),
    { numRuns: 50, seed: 15 },
  );
});
