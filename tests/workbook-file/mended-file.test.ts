import { readFileSync } from "node:fs";
import path from "node:path";
import { type MendedFile, mendedFile } from "../../src/workbook-file/mended-file";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { EXCEL_PARTS, packed } from "./as-excel-saves";
import { changedParts, partTexts } from "./changed-parts";
import { readByExceljs } from "./read-by-exceljs";
import { smallParts } from "./small-file";

type Parts = Readonly<Record<string, string>>;

const isOurs = (name: string): boolean => ["STAIR.RISERS", "STAIR.LAYOUT"].includes(name);
const mended = (parts: Parts): MendedFile => mendedFile(packed(parts), { isOurs });
const spillFree = (parts: Parts): MendedFile => mendedFile(packed(parts), { isOurs, isWithoutSpills: true });

const SHEET = "xl/worksheets/sheet1.xml";
const IN = (cell: string) => `worksheet/sheetData[1]/row[${cell.replace(/\D+/, "")}]/c[${cell}]`;
const withRows = (rows: string, behind = ""): Parts => smallParts({ S: rows }, behind);
const cellsOf = (bytes: Uint8Array): string => /<sheetData>(.*)<\/sheetData>/.exec(partTexts(bytes)[SHEET] ?? "")?.[1] ?? "";

/** Parts of a file with a part more, to which another one leads. */
const withPart = (parts: Parts, from: string, relations: string, name: string, type: string, xml: string): Parts => ({
  ...parts, [name]: xml,
  [relations]: (parts[relations] ?? '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>')
    .replace("</Relationships>", `<Relationship Id="rId90" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/${type}"
      Target="${from}"/></Relationships>`),
});

describe("a workbook as Excel saves it", () => {
  const found = mended(EXCEL_PARTS);

  // C3 was typed without the add-in and D3 kept in the other form: the file says where both were seen.
  test("has its two broken formulas mended, and nothing else of it is other than it was", () => {
    expect(changedParts(found.bytes, EXCEL_PARTS)).toEqual({
      differ: {
        [SHEET]: [
          `${IN("C3")}/f[1]: STAIR.RISERS(B2) -> _xldudf_STAIR_RISERS(B2)`,
          `${IN("D3")}@cm: none -> 1`, `${IN("D3")}/f[1]@t: none -> array`, `${IN("D3")}/f[1]@ref: none -> D3`,
          `${IN("D3")}/f[1]: [2]!_xldudf_STAIR_RISERS(B2) -> _xldudf_STAIR_RISERS(B2)`,
        ],
      },
      gone: [], added: [],
    });
  });

  test("tells what was mended, and names what was not", () => {
    const is = "=_xldudf_STAIR_RISERS(B2)";
    expect(found).toMatchObject({
      formulas: 12,
      mended: [
        { sheet: "Bid", address: "C3", was: "=STAIR.RISERS(B2)", is },
        { sheet: "Bid", address: "D3", was: "=[2]!_xldudf_STAIR_RISERS(B2)", is, becomes: "dynamic array", cells: "D3" },
      ],
      notMended: [{ sheet: "Bid", address: "F11", formula: "=[1]Prices!$A$1", why: "reads another workbook" }],
    });
  });

  test("has arrays of their size and ranges in the place of spills, where it is for a spreadsheet without them", () => {
    const { bytes, notMended } = spillFree(EXCEL_PARTS);
    expect(changedParts(bytes, EXCEL_PARTS)).toEqual({
      differ: {
        [SHEET]: [
          `${IN("B3")}@cm: 1 -> none`,
          `${IN("C3")}@cm: 1 -> none`, `${IN("C3")}/f[1]: STAIR.RISERS(B2) -> _xldudf_STAIR_RISERS(B2)`,
          `${IN("D3")}/f[1]@t: none -> array`, `${IN("D3")}/f[1]@ref: none -> D3`,
          `${IN("D3")}/f[1]: [2]!_xldudf_STAIR_RISERS(B2) -> _xldudf_STAIR_RISERS(B2)`,
          `${IN("A5")}@cm: 1 -> none`, `${IN("D5")}/f[1]: SUM(_xlfn.ANCHORARRAY(A5)) -> SUM(A5:B7)`,
          `${IN("F12")}@cm: 1 -> none`,
        ],
      },
      gone: [], added: [],
    });
    expect(notMended.map(({ address }) => address)).toEqual(["F11"]);
  });

  test("has arrays of a set size then, to another library too", async () => {
    const sheet = (await readByExceljs(spillFree(EXCEL_PARTS).bytes)).getWorksheet("Bid");
    const arrays = ["B3", "C3", "D3", "A5", "F12"].map((address) => {
      const { value } = sheet?.getCell(address) ?? {};
      const { shareType, ref } = value as { readonly shareType?: string; readonly ref?: string };
      return [address, shareType, ref];
    });
    expect(arrays).toEqual([
      ["B3", "array", "B3"], ["C3", "array", "C3"], ["D3", "array", "D3"], ["A5", "array", "A5:B7"], ["F12", "array", "F12"],
    ]);
    expect(sheet?.getCell("D5").formula).toBe("SUM(A5:B7)");
  });
});

const PRICES = [1, 2, 3].map((row) => `<c r="B${row}"><v>${row}</v></c>`);

/** Written by a script: formulas as a person types them, without values. */
const SCRIPT = withRows(
  `<row r="1">${PRICES[0]}<c r="C1"><f>FILTER(B1:B3,B1:B3&gt;1)</f></c><c r="D1"><f>_xlfn.UNIQUE(B1:B3)</f></c>` +
  '<c r="E1" s="0"><f ca="1">SUM(STAIR.LAYOUT(B1:B3))</f></c><c r="F1"><f>XLOOKUP(B1:B3,B1:B3,B1:B3)</f><v>1</v></c></row>' +
  `<row r="2">${PRICES[1]}<c r="D2"><f>IFNA(B2,0)</f></c><c r="E2"><f>B1:B3*2</f></c></row>` +
  `<row r="3">${PRICES[2]}<c r="D3"><f>_xlfn.UNIQUE(B1:B3)</f><v>1</v></c><c r="E3"><f>SUM(_xlfn.UNIQUE(B1:B3))</f></c></row>`,
);

test("what a script wrote becomes what typing it makes of it; what takes one value, or was worked out as one, stays plain", () => {
  const { bytes, mended: all } = mended(SCRIPT);
  expect(cellsOf(bytes)).toBe(
    `<row r="1">${PRICES[0]}<c r="C1" cm="1"><f t="array" ref="C1">_xlfn._xlws.FILTER(B1:B3,B1:B3&gt;1)</f></c>` +
    '<c r="D1" cm="1"><f t="array" ref="D1">_xlfn.UNIQUE(B1:B3)</f></c>' +
    '<c r="E1" s="0" cm="1"><f ca="1" t="array" ref="E1">SUM(_xldudf_STAIR_LAYOUT(B1:B3))</f></c>' +
    '<c r="F1" cm="1"><f t="array" ref="F1">_xlfn.XLOOKUP(B1:B3,B1:B3,B1:B3)</f><v>1</v></c></row>' +
    `<row r="2">${PRICES[1]}<c r="D2"><f>_xlfn.IFNA(B2,0)</f></c><c r="E2"><f>B1:B3*2</f></c></row>` +
    `<row r="3">${PRICES[2]}<c r="D3"><f>_xlfn.UNIQUE(B1:B3)</f><v>1</v></c><c r="E3"><f>SUM(_xlfn.UNIQUE(B1:B3))</f></c></row>`,
  );
  expect(all.map(({ address, becomes }) => [address, becomes])).toEqual([
    ["C1", "dynamic array"], ["D1", "dynamic array"], ["E1", "dynamic array"], ["F1", "dynamic array"], ["D2", undefined],
  ]);
});

test("the part that says what a dynamic array is comes to a file that has none, and the workbook leads to it", () => {
  const { bytes } = mended(SCRIPT);
  const { differ, added, gone } = changedParts(bytes, SCRIPT);
  expect([Object.keys(differ).sort(), added, gone]).toEqual([
    ["[Content_Types].xml", "xl/_rels/workbook.xml.rels", SHEET], ["xl/metadata1.xml"], [],
  ]);
  expect(partTexts(bytes)["xl/metadata1.xml"]).toContain('fDynamic="1"');
});

test("for a spreadsheet without spills a formula that nothing has worked out yet is named: its size is in no file", () => {
  expect(spillFree(SCRIPT).notMended.map(({ address, why }) => [address, why])).toEqual(["C1", "D1", "E1"].map((address) =>
    [address, "has never been worked out, so the cells it comes to are not in the file; recalculate it first"]));
});

/** By hand: the second and third of each are the first moved along (ECMA-376-1, 18.3.1.40). */
const SHARED = withRows(
  '<row r="1"><c r="C1"><f t="shared" ref="C1:C3" si="0">IFNA(B1,$A$1)</f><v>1</v></c><c r="D1"><f t="shared" ref="D1:D2" si="1">' +
  'STAIR.RISERS(B1)</f></c><c r="E1"><f t="shared" ref="E1:E2" si="2">SUM(_xlfn.ANCHORARRAY(A1))</f><v>1</v></c></row>' +
  '<row r="2"><c r="A2" cm="1"><f t="array" ref="A2:A4">_xlfn.SEQUENCE(3)</f><v>1</v></c><c r="C2"><f t="shared" si="0"/><v>2</v></c>' +
  '<c r="D2"><f t="shared" si="1"/></c><c r="E2"><f t="shared" si="2"/><v>6</v></c></row>' +
  '<row r="3"><c r="A3"><v>2</v></c><c r="C3"><f t="shared" si="0"/><v>3</v></c></row><row r="4"><c r="A4"><v>3</v></c></row>',
);

test("shared formulas stay shared where all of them say the same, moved along, and are told one by one where not", () => {
  const { bytes, mended: all } = mended(SHARED);
  expect(cellsOf(bytes)).toBe(cellsOf(packed(SHARED))
    .replace("IFNA(B1,$A$1)", "_xlfn.IFNA(B1,$A$1)")
    .replace('<c r="D1"><f t="shared" ref="D1:D2" si="1">STAIR.RISERS(B1)',
      '<c r="D1" cm="1"><f t="array" ref="D1">_xldudf_STAIR_RISERS(B1)')
    .replace('<c r="D2"><f t="shared" si="1"/>', '<c r="D2" cm="1"><f t="array" ref="D2">_xldudf_STAIR_RISERS(B2)</f>'));
  expect(all.map(({ address, is }) => `${address}${is}`)).toEqual([
    "C1=_xlfn.IFNA(B1,$A$1)", "D1=_xldudf_STAIR_RISERS(B1)", "C2=_xlfn.IFNA(B2,$A$1)", "D2=_xldudf_STAIR_RISERS(B2)",
    "C3=_xlfn.IFNA(B3,$A$1)",
  ]);
});

test("a shared formula of which one cell alone reads a spill is told one by one", () => {
  const { bytes, notMended } = spillFree(SHARED);
  expect(cellsOf(bytes)).toContain('<c r="E1"><f>SUM(_xlfn.ANCHORARRAY(A1))</f><v>1</v></c>');
  expect(cellsOf(bytes)).toContain('<c r="E2"><f>SUM(A2:A4)</f><v>6</v></c>');
  expect(notMended.filter(({ address }) => address.startsWith("E"))).toEqual([
    {
      sheet: "S", address: "E1", formula: "=SUM(_xlfn.ANCHORARRAY(A1))",
      why: "reads what a cell spills to, and the file keeps no cells for that one",
    },
  ]);
});

/** What stands in no cell: names, rules, lists, here and in the extension, and the column of a table. */
const MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const ELSEWHERE = withPart(
  (() => {
    const parts = withRows(
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A3">_xlfn.SEQUENCE(3)</f><v>1</v></c></row>',
      '<definedNames><definedName name="Twice">LAMBDA(x,x*2)</definedName>' +
      '<definedName name="Kinds">_xlfn.ANCHORARRAY(S!$A$1)</definedName>' +
      '<definedName name="IFS">S!$A$1</definedName></definedNames>',
    );
    return {
      ...parts, [SHEET]: (parts[SHEET] ?? "").replace("</worksheet>",
        '<conditionalFormatting sqref="A1:A9"><cfRule type="expression" priority="1"><formula>XOR(A1&gt;1,TRUE)</formula></cfRule>' +
        '<cfRule type="expression" priority="2"><formula>STAIR.RISERS(A1)&gt;1</formula></cfRule></conditionalFormatting>' +
        '<dataValidations count="1"><dataValidation type="list" sqref="C1"><formula1>_xlfn.ANCHORARRAY($A$1)</formula1></dataValidation>' +
        '</dataValidations><extLst><ext uri="x" xmlns:x14="urn:x14"><x14:dataValidations xmlns:xm="urn:xm">' +
        '<x14:dataValidation type="list"><x14:formula1>' +
        "<xm:f>S!A1#</xm:f></x14:formula1><xm:sqref>D1</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst>" +
        "</worksheet>"),
    };
  })(),
  "../tables/table1.xml", "xl/worksheets/_rels/sheet1.xml.rels", "xl/tables/table1.xml", "table",
  `<table ${MAIN} id="1" name="Lines" displayName="Lines" ref="F1:G2"><tableColumns count="2"><tableColumn id="1" name="Part"/>` +
  '<tableColumn id="2" name="Cost"><calculatedColumnFormula>IFS(Lines[[#This Row],[Part]]=1,STDEV.S(A1:A3))</calculatedColumnFormula>' +
  "</tableColumn></tableColumns></table>",
);

test("formulas of names, rules, lists and tables are mended in their words", () => {
  const { mended: all, notMended } = mended(ELSEWHERE);
  expect(all).toEqual([
    { address: "Twice", was: "=LAMBDA(x,x*2)", is: "=_xlfn.LAMBDA(_xlpm.x,_xlpm.x*2)" },
    // IFS is a name of this workbook, and stays.
    {
      sheet: "S", address: "Lines[Cost]", was: "=IFS(Lines[[#This Row],[Part]]=1,STDEV.S(A1:A3))",
      is: "=IFS(Lines[[#This Row],[Part]]=1,_xlfn.STDEV.S(A1:A3))",
    },
    { sheet: "S", address: "A1:A9", was: "=XOR(A1>1,TRUE)", is: "=_xlfn.XOR(A1>1,TRUE)" },
    { sheet: "S", address: "D1", was: "=S!A1#", is: "=_xlfn.ANCHORARRAY(S!A1)" },
  ]);
  expect(notMended).toEqual([
    { sheet: "S", address: "A1:A9", formula: "=STAIR.RISERS(A1)>1", why: "calls STAIR.RISERS, which no rule and no list may" },
  ]);
});

test("and so are spills in them, where they say one place", () => {
  const { bytes, notMended } = spillFree(ELSEWHERE);
  const { differ } = changedParts(bytes, ELSEWHERE);
  expect(differ["xl/workbook.xml"]).toContain("workbook/definedNames[1]/definedName[2]: _xlfn.ANCHORARRAY(S!$A$1) -> S!$A$1:$A$3");
  expect(differ[SHEET]).toContain("worksheet/dataValidations[1]/dataValidation[1]/formula1[1]: _xlfn.ANCHORARRAY($A$1) -> $A$1:$A$3");
  expect(notMended.map(({ address }) => address)).toEqual(["A1:A9", "D1"]);
});

test("other prefixes, quotes and spaces of a writer stay as they are", () => {
  const sheet = `<?xml version="1.0"?>\n<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main">
  <x:sheetData>\n  <x:row r = '1' ><x:c  t='str' r='A1' ><x:f  >IFNA(B1,"&lt;")</x:f ><x:v>1</x:v></x:c><x:c><x:f
  t='shared' si='0'>STAIR.RISERS(B1)</x:f></x:c><x:c><x:f si='0' t='shared'/></x:c></x:row></x:sheetData></x:worksheet>`;
  const { bytes } = mended({ ...EXCEL_PARTS, "xl/worksheets/sheet2.xml": sheet });
  expect(partTexts(bytes)["xl/worksheets/sheet2.xml"]).toBe(sheet
    .replace('IFNA(B1,"&lt;")', "_xlfn.IFNA(B1,&quot;&lt;&quot;)")
    .replace("<x:c><x:f\n  t='shared' si='0'>STAIR.RISERS(B1)", '<x:c cm="1"><x:f\n  t="array" ref="B1">_xldudf_STAIR_RISERS(B1)')
    .replace("<x:c><x:f si='0' t='shared'/>", '<x:c cm="1"><x:f t="array" ref="C1">_xldudf_STAIR_RISERS(C1)</x:f>'));
});

test("what LibreOffice saved in small letters and without the marks of dynamic arrays is as it was before", () => {
  const parts = partTexts(new Uint8Array(readFileSync(path.join(__dirname, "files/saved-by-libreoffice.xlsx"))));
  const { mended: all, bytes } = mended(parts);
  const [risers, dynamic] = ["=_xldudf_STAIR_RISERS(B2)", "dynamic array"];
  // By the parts of the workbook it was given: as-excel-saves.ts.
  expect(all.map(({ address, is, becomes, cells }) => [address, is, becomes, cells])).toEqual([
    ["B3", risers, dynamic, "B3"], ["C3", risers, dynamic, "C3"], ["D3", risers, dynamic, "D3"],
    ["A5", "=_xlfn._xlws.SORT(Rates!A5:B7)", dynamic, "A5:B7"], ["D5", "=SUM(_xlfn.ANCHORARRAY(A5))", undefined, undefined],
    ["D6", '=_xlfn.LET(_xlpm.x,B5,_xlpm.x&" each")', undefined, undefined], ["F12", "=_xlfn.SEQUENCE(3)", dynamic, "F12"],
  ]);
  expect(mended(partTexts(bytes)).mended).toEqual([]);
});

test("an array of a set size whose words Excel binds is of the older kind on purpose, and stays", () => {
  const parts = withRows('<row r="1"><c r="A1"><f t="array" ref="A1:A2">_xlfn._xlws.SORT(B1:B9)</f><v>1</v></c></row>');
  expect(mended(parts).mended).toEqual([]);
});

const FILES: Readonly<Record<string, Parts>> = {
  "as Excel saves it": EXCEL_PARTS, "by a script": SCRIPT, "with shared formulas": SHARED, "with formulas elsewhere": ELSEWHERE,
};

const formulasIn = (bytes: Uint8Array) => Object.fromEntries(readWorkbookFile(bytes).sheets.flatMap(({ name, cells }) =>
  Object.entries(cells).flatMap(([address, { formula }]) => (formula === undefined ? [] : [[`${name}!${address}`, formula]]))));

/** A formula that nothing could bind, and of which a live sheet took one value of several: mended it is what a person typed. */
const TAKEN_AS_TYPED: Readonly<Record<string, string>> = { "S!F1": "=XLOOKUP(B1:B3,B1:B3,B1:B3)" };

describe.each(Object.entries(FILES))("a file %s", (_, parts) => {
  test("mended twice is mended once, in either way, and with spills first makes no difference to the one without", () => {
    for (const mend of [mended, spillFree]) {
      const once = mend(parts).bytes;
      const twice = mend(partTexts(once));
      expect([changedParts(twice.bytes, partTexts(once)), twice.mended]).toEqual([{ differ: {}, gone: [], added: [] }, []]);
    }
    expect(partTexts(spillFree(partTexts(mended(parts).bytes)).bytes)[SHEET]).toBe(partTexts(spillFree(parts).bytes)[SHEET]);
  });

  test("is to a live sheet what it was before it was mended", () => {
    expect(formulasIn(mended(parts).bytes)).toEqual({ ...formulasIn(packed(parts)), ...(parts === SCRIPT ? TAKEN_AS_TYPED : {}) });
  });
});
