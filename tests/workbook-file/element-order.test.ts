import { spawnSync } from "node:child_process";
import path from "node:path";
import { strFromU8, unzipSync } from "fflate";
import type { SheetData } from "../../src/sheets/sheet-data";
import { valuesFile, workbookFile } from "../../src/workbook-file/write-workbook-file";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { savedInto } from "../../src/workbook-file/saved-into";
import { EXCEL_PARTS, packed } from "./as-excel-saves";

/**
 * Children in the order in which each must have them, typed from ECMA-376-1, 5th edition, Annex A.2 (sml.xsd), at the clause beside each.
 * No package of the published schemas was found among those that can be had, so this stands in their place.
 */
const ORDERS: Readonly<Record<string, readonly string[]>> = {
  // 18.3.1.99 CT_Worksheet
  worksheet: [
    "sheetPr", "dimension", "sheetViews", "sheetFormatPr", "cols", "sheetData", "sheetCalcPr", "sheetProtection", "protectedRanges",
    "scenarios", "autoFilter", "sortState", "dataConsolidate", "customSheetViews", "mergeCells", "phoneticPr", "conditionalFormatting",
    "dataValidations", "hyperlinks", "printOptions", "pageMargins", "pageSetup", "headerFooter", "rowBreaks", "colBreaks",
    "customProperties", "cellWatches", "ignoredErrors", "smartTags", "drawing", "legacyDrawing", "legacyDrawingHF", "drawingHF", "picture",
    "oleObjects", "controls", "webPublishItems", "tableParts", "extLst",
  ],
  // 18.3.1.82 CT_SheetPr, 18.3.1.87 CT_SheetView, 18.3.1.73 CT_Row, 18.3.1.4 CT_Cell
  sheetPr: ["tabColor", "outlinePr", "pageSetUpPr"],
  sheetView: ["pane", "selection", "pivotSelection", "extLst"],
  row: ["c", "extLst"],
  c: ["f", "v", "is", "extLst"],
  // 18.3.1.10 CT_CfRule, 18.3.1.32 CT_DataValidation, 18.3.1.46 CT_HeaderFooter
  cfRule: ["formula", "colorScale", "dataBar", "iconSet", "extLst"],
  headerFooter: ["oddHeader", "oddFooter", "evenHeader", "evenFooter", "firstHeader", "firstFooter"],
  // 18.2.27 CT_Workbook
  workbook: [
    "fileVersion", "fileSharing", "workbookPr", "workbookProtection", "bookViews", "sheets", "functionGroups", "externalReferences",
    "definedNames", "calcPr", "oleSize", "customWorkbookViews", "pivotCaches", "smartTagPr", "smartTagTypes", "webPublishing",
    "fileRecoveryPr", "webPublishObjects", "extLst",
  ],
  // 18.8.39 CT_Stylesheet, 18.8.45 CT_Xf, 18.8.14 CT_Dxf, 18.8.4 CT_Border, 18.8.20 CT_Fill, 18.8.32 CT_PatternFill
  styleSheet: ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs", "tableStyles", "colors", "extLst"],
  xf: ["alignment", "protection", "extLst"],
  dxf: ["font", "numFmt", "fill", "alignment", "border", "protection", "extLst"],
  border: ["start", "end", "left", "right", "top", "bottom", "diagonal", "vertical", "horizontal"],
  fill: ["patternFill", "gradientFill"],
  patternFill: ["fgColor", "bgColor"],
  // 18.8.22 CT_Font: any order in the schema, this one in Excel (from memory).
  font: [
    "b", "i", "strike", "condense", "extend", "outline", "shadow", "u", "vertAlign", "sz", "color", "name", "family", "charset", "scheme",
  ],
  // 18.4.9 CT_Sst, 18.4.8 CT_Rst; 18.9.10 CT_Metadata
  sst: ["si", "extLst"],
  si: ["t", "r", "rPh", "phoneticPr"],
  metadata: ["metadataTypes", "metadataStrings", "mdxMetadata", "futureMetadata", "cellMetadata", "valueMetadata", "extLst"],
};

const EVERYTHING: readonly SheetData[] = [
  {
    name: "Bid & more", frozenRows: 2, frozenColumns: 1, columnWidths: { A: 88, C: 9999 }, rowHeights: { 2: 30, 9: 9000 }, hiddenRows: [4],
    hiddenColumns: ["D"], merged: ["E1:F2", "G1:G1"], hidesGridLines: true,
    tabColour: "#7a4a1e",
    rules: [{
      cells: "A1:A9", when: "=A1>1",
      look: { bold: true, ink: "#8c1d18", fill: "#fbe3df", borders: { top: { line: "thin", ink: "#000000" } } },
    }],
    lists: [{ cells: "B1:B9", options: ["in", "mm"] }, { cells: "C1", options: ["x".repeat(200), "y".repeat(200)] }],
    cells: {
      A1: { value: "title", style: "title" }, A2: { value: 7.5625, format: "# ??/16" },
      A3: { formula: "=STAIR.RISERS(A2)", style: "input" },
      A4: { formula: "=A2*2" },
      A5: { value: true, look: { turned: -30, wrap: true, across: "center", down: "middle", strike: true, underline: true } },
      A6: { value: "x".repeat(40_000) }, A7: { look: { ink: "red" } },
    },
  },
];
const CALCULATED = { value: () => 7, spill: (_: string, at: string) => (at === "A3" ? [[7, "a"], [true, null]] : [[7]]) };
const ADD_IN = { id: "11111111-2222-3333-4444-555555555555", version: "1.0.0.0", source: "EXCatalog", store: "EXCatalog" } as const;

const checked = (parts: readonly (readonly [string, string])[]) => {
  const { stdout, stderr } = spawnSync(process.execPath, [path.join(__dirname, "element-order.mjs")], {
    encoding: "utf8", input: JSON.stringify({ orders: ORDERS, parts }),
  });
  expect(stderr).toBe("");
  return JSON.parse(stdout) as { readonly found: readonly string[]; readonly seen: readonly string[] };
};

const partsOf = (file: Uint8Array): readonly (readonly [string, string])[] =>
  Object.entries(unzipSync(file)).map(([name, bytes]) => [name, strFromU8(bytes)] as const);

test("every part of a written file is well-formed, its elements in the order of the standard", () => {
  const { found, seen } = checked([
    ...partsOf(workbookFile(EVERYTHING, {
      calculated: CALCULATED, addIn: ADD_IN, printing: { job: "a & b".repeat(90), date: "1 May 2026", columns: 26 },
      names: [{ name: "Rate", refers: "'Bid & more'!$A$2" }],
    })),
    ...partsOf(valuesFile(EVERYTHING, { calculated: CALCULATED })),
  ]);
  expect(found).toEqual([]);
  expect([...new Set(seen)].sort()).toEqual([
    "Relationships", "Types", "datastoreItem", "metadata", "sst", "styleSheet", "taskpanes", "treadsheet", "webextension", "workbook",
    "worksheet",
  ]);
});

/** Sheets of a file with another look, a width, a height and merged cells, and everything as sheets of their own. */
const edited = (bytes: Uint8Array): Uint8Array => {
  const [first, ...others] = readWorkbookFile(bytes).sheets;
  const { lists: _lists, ...sheet } = first ?? { name: "Bid", cells: {} };
  const now = [
    {
      ...sheet, cells: { ...sheet.cells, B2: { formula: "=STAIR.RISERS(A2)", look: { turned: 30 } }, Z99: { value: " x " } },
      columnWidths: { C: 200 }, rowHeights: { 50: 40 }, hiddenRows: [51], merged: ["A20:B21"],
    },
    ...others, ...EVERYTHING.map((one, at) => ({ ...one, name: `New ${at + 1}` })),
  ];
  return savedInto(bytes, now, { calculated: CALCULATED }).bytes;
};

/** Parts without what a workbook may lack, and their names out of what leads to them. */
const lacking = (parts: Readonly<Record<string, string>>, ...names: readonly string[]): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(parts).filter(([part]) => !names.some((name) => part.endsWith(name))).map(([part, text]) => [
    part, names.reduce((so, name) => so.replaceAll(new RegExp(`<(?:Override|Relationship) [^>]*${name}"[^>]*>`, "g"), ""), text),
  ]));

const STRICT = "http://purl.oclc.org/ooxml";

test("a file that is saved into is well-formed and in that order, whatever parts it had; in the strict form all of it is", () => {
  const bare = lacking(EXCEL_PARTS, "metadata.xml", "styles.xml", "calcChain.xml");
  const strict = Object.fromEntries(Object.entries(EXCEL_PARTS).map(([name, text]) => [
    name,
    text.replaceAll("http://schemas.openxmlformats.org/spreadsheetml/2006/main", `${STRICT}/spreadsheetml/main`)
      .replaceAll("http://schemas.openxmlformats.org/officeDocument/2006/relationships", `${STRICT}/officeDocument/relationships`),
  ]));
  for (const parts of [EXCEL_PARTS, bare, strict]) {
    const written = partsOf(edited(packed(parts)));
    expect(checked(written.filter(([name]) => name.endsWith(".xml") || name.endsWith(".rels"))).found).toEqual([]);
    const types = written.find(([name]) => name === "[Content_Types].xml")?.[1] ?? "";
    const named = [...types.matchAll(/PartName="\/([^"]*)"/g)].map(([, part]) => part);
    expect(named.filter((part) => !written.some(([name]) => name === part))).toEqual([]);
    expect(new Set(named).size).toBe(named.length);
    expect(written.some(([name]) => name.startsWith("xl/worksheets/sheet4"))).toBe(true);
    if (parts !== strict) continue;
    const loose = written.filter(([name, text]) => name.endsWith(".xml") && text.includes("openxmlformats.org/spreadsheetml/2006/main"));
    expect(loose.map(([name]) => name)).toEqual([]);
  }
});

test("the hand-made file as Excel saves is in that order as well, and one out of order is caught", () => {
  const parts = Object.entries(EXCEL_PARTS).filter(([name]) => name.endsWith(".xml"));
  expect(checked(parts).found).toEqual([]);
  expect(checked([["planted", "<worksheet><sheetData/><cols/></worksheet>"]]).found).toEqual(["planted: cols in worksheet"]);
});

test("what a spreadsheet takes no more of is cut in the file: rows, columns, a text, a header, a block of one cell", () => {
  const file = unzipSync(workbookFile(EVERYTHING, { calculated: CALCULATED, printing: { job: "a & b".repeat(90) } }));
  const sheet = strFromU8(file["xl/worksheets/sheet1.xml"] ?? new Uint8Array());
  // "Excel specifications and limits": 409 points, 255 characters of width, 32,767 characters in a cell, 255 in a header.
  expect(sheet).toContain('<row r="9" ht="409"');
  expect(sheet).toContain('<col min="3" max="3" width="255"');
  expect(sheet).toContain('<mergeCells count="1">');
  const [, header = ""] = /<oddHeader>([^<]*)</.exec(sheet) ?? [];
  expect(header.replaceAll("&amp;", "&").length).toBeLessThanOrEqual(255);
  expect(strFromU8(file["xl/sharedStrings.xml"] ?? new Uint8Array())).toMatch(/<t>x{32767}<\/t>/);
});
