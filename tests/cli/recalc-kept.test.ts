import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { strToU8, zipSync } from "fflate";
import type { Recalculated } from "../../src/cli/recalc";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { smallFile, smallParts } from "../workbook-file/small-file";

const COMMAND = path.resolve(__dirname, "../../dist/tools/treadsheet.cjs");
/** For the engine to start on a busy machine, in milliseconds. */
const STARTING = 120_000;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-kept-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (...args: readonly string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...args], { cwd: folder, encoding: "utf8" });
  return { status, out: stdout.trimEnd(), err: stderr.trimEnd() };
};

const written = (name: string, bytes: Uint8Array): string => {
  writeFileSync(path.join(folder, name), bytes);
  return name;
};

const storedIn = (name: string) => readWorkbookFile(new Uint8Array(readFileSync(path.join(folder, name)))).stored["S"];

const found = (file: string): Recalculated => JSON.parse(run("recalc", file, "--out", `new ${file}`, "--json").out) as Recalculated;

const whys = ({ kept }: Recalculated) => Object.fromEntries(kept.map(({ address, why }) => [address, why]));
const shown = ({ changed }: Recalculated) => Object.fromEntries(changed.map(({ address, was, is }) => [address, [was, is]]));

const ONE_TWO_THREE = [1, 2, 3].map((row) => `<c r="A${row}"><v>${row}</v></c>`);

test("formulas that come to another size than in the file keep what they had, and what reads them is worked out from that", () => {
  const file = written("sizes.xlsx", smallFile({
    S: `<row r="1">${ONE_TWO_THREE[0]}<c r="B1"><f t="array" ref="B1:B2">A1:A3*2</f><v>20</v></c><c r="C1"><f>SUM(B1:B2)</f><v>1</v></c>` +
      '<c r="D1"><f>_xlfn.SEQUENCE(3)</f><v>7</v></c><c r="E1"><f>D1+1</f><v>1</v></c><c r="G1"><f>B2</f><v>40</v></c>' +
      '<c r="F1"><f t="array" ref="F1:F3">A1:A3*2</f><v>0</v></c></row>' +
      `<row r="2">${ONE_TWO_THREE[1]}<c r="B2"><v>40</v></c><c r="F2"><v>4</v></c></row>` +
      `<row r="3">${ONE_TWO_THREE[2]}<c r="D3"><v>9</v></c><c r="F3"><v>6</v></c></row>`,
  }));
  const now = found(file);
  expect(whys(now)).toEqual({
    B1: "comes to another number of rows or columns here than the cells that the file sets for it",
    D1: "comes to several cells here and to one of them in the file",
  });
  // By hand: 20 + 40; 7 + 1; and 1 x 2, of an array whose size is right.
  expect(shown(now)).toEqual({ C1: [1, 60], E1: [1, 8], F1: [0, 2] });
  expect(now.restsOnKept.map(({ address }) => address)).toEqual(["C1", "E1", "G1"]);
  expect(storedIn("new sizes.xlsx")).toMatchObject({ B1: 20, C1: 60, D1: 7, E1: 8, F1: 2 });
}, STARTING);

test("a formula that fails here alone keeps its value, from which others are worked out; an error that has its reason stays", () => {
  // A union of blocks is what a live sheet cannot take (the engine comes to #VALUE!).
  const union = "SUM((A1:A2,A3:A3))";
  const file = written("failing.xlsx", smallFile({
    S: `<row r="1">${ONE_TWO_THREE[0]}<c r="B1"><f>${union}</f><v>6</v></c><c r="C1"><f>B1*2</f><v>1</v></c>` +
      '<c r="D1"><f>C1+1</f><v>1</v></c>' +
      '<c r="E1"><f>STAIR.RISERS("x")</f><v>3</v></c><c r="F1"><f>E1+1</f><v>4</v></c></row>' +
      `<row r="2">${ONE_TWO_THREE[1]}<c r="B2"><f>${union}+C1</f><v>18</v></c><c r="C2" t="e"><f>${union}</f><v>#REF!</v></c></row>` +
      `<row r="3">${ONE_TWO_THREE[2]}</row>`,
  }));
  const now = found(file);
  expect(whys(now)).toEqual({
    B1: "comes to #VALUE! here and to a value in the file", B2: "comes to #VALUE! here and to a value in the file",
  });
  // By hand: 6 x 2 and 12 + 1; the length is none, so E1 and what reads it are in error.
  expect(shown(now)).toMatchObject({ C1: [1, 12], D1: [1, 13], E1: [3, { error: "#VALUE!" }], F1: [4, { error: "#VALUE!" }] });
  expect(now.inError.map(({ address }) => address)).toEqual(["E1", "F1", "C2"]);
  expect(storedIn("new failing.xlsx")).toMatchObject({ B1: 6, B2: 18, C1: 12, D1: 13 });
}, STARTING);

test("a divisor that is 0 now and what is looked up and not there are errors in the file: nobody should read the old number", () => {
  const file = written("divisor.xlsx", smallFile({
    S: '<row r="1"><c r="A1"><v>0</v></c><c r="B1"><f>6/A1</f><v>3</v></c><c r="C1"><f>MATCH(2,A1:A3,0)</f><v>1</v></c>' +
      '<c r="D1"><f>B1+1</f><v>4</v></c></row>',
  }));
  const now = found(file);
  expect(whys(now)).toEqual({});
  expect(shown(now)).toEqual({ B1: [3, { error: "#DIV/0!" }], C1: [1, { error: "#N/A" }], D1: [4, { error: "#DIV/0!" }] });
}, STARTING);

test("of formulas that each fail behind another all are kept in the end; after four of them with what reads them, as it was", () => {
  const cells = [1, 2, 3, 4, 5, 6, 7].map((row) =>
    `<row r="${row}"><c r="A${row}"><f>SUM((C1:C2,C3:C3))+${row === 1 ? "1" : `A${row - 1}`}</f><v>${row}</v></c>` +
    `<c r="B${row}"><f>A${row}*10</f><v>0</v></c></row>`);
  const now = found(written("row.xlsx", smallFile({ S: cells.join("") })));
  expect(Object.keys(whys(now)).sort()).toEqual(["A1", "A2", "A3", "A4", "A5", "A6", "A7", "B5", "B6", "B7"]);
  expect(shown(now)).toEqual({ B1: [0, 10], B2: [0, 20], B3: [0, 30], B4: [0, 40] });
  expect(now.inError).toEqual([]);
}, STARTING);

test("the report of a check has each changed cell, what it was and what it is; what a copy of values lacks is named", () => {
  const names = '<definedNames><definedName name="Rise">S!$A$1</definedName></definedNames>';
  const file = written("changes.xlsx", smallFile({
    S: `<row r="1">${ONE_TWO_THREE[0]}<c r="B1" t="str"><f>"a"&amp;A1</f><v>b</v></c><c r="C1" t="b"><f>Rise=1</f><v>0</v></c>` +
      '<c r="D1" cm="1"><f t="array" ref="D1:D2">_xlfn.SEQUENCE(A1)</f><v>1</v></c><c r="E1"><f>SUM(A1:A3*A1:A3)</f><v>5</v></c></row>' +
      '<row r="2"><c r="D2"><v>2</v></c></row>',
  }, names));
  const check = run("recalc", file, "--check");
  expect(check.status).toBe(1);
  expect(check.out).toContain('Other values:\n  S!B1  "b" -> "a1"\n  S!C1  false -> true\n  S!D2  2 -> nothing\n');
  expect(check.out).toContain("S!E1  =SUM(A1:A3*A1:A3)\n    takes of A1:A3 the value in its own row or column alone");
  expect(check.out).not.toContain("Not in the copy");
  expect(run("recalc", file, "--values", "--out", "values.xlsx").out)
    .toContain("Not in the copy of values:\n  1 name, for which formulas have what it stands for\n\nWritten:\n  values.xlsx");
}, STARTING);

test("a part with the mark of its encoding is written with it; one in another encoding ends in a sentence, and nothing is written", () => {
  const parts = smallParts({ S: '<row r="1"><c r="A1"><f>1+1</f><v>3</v></c></row>' });
  const bytes = Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)]));
  const name = "xl/worksheets/sheet1.xml";
  const marked = written("marked.xlsx", zipSync({ ...bytes, [name]: strToU8(`\ufeff${parts[name] ?? ""}`) }));
  expect(run("recalc", marked, "--out", "new marked.xlsx").status).toBe(0);
  expect(storedIn("new marked.xlsx")).toEqual({ A1: 2 });

  const wide = written("wide.xlsx", zipSync({ ...bytes, [name]: new Uint8Array(Buffer.from(`\ufeff${parts[name] ?? ""}`, "utf16le")) }));
  const before = readdirSync(folder);
  const { status, out, err } = run("recalc", wide, "--in-place");
  expect([status, out]).toEqual([3, ""]);
  expect(err).toMatch(/^wide\.xlsx: This workbook can be read but not written into as it is\. [^\n]*$/);
  expect(readdirSync(folder)).toEqual(before);
}, STARTING);

test("what takes longer than it may ends in a sentence, and nothing is written", () => {
  const file = written("long.xlsx", smallFile({ S: '<row r="1"><c r="A1"><f>1+1</f><v>3</v></c></row>' }));
  const before = readdirSync(folder);
  // No engine starts within a millisecond.
  expect(run("recalc", file, "--in-place", "--limit", "0.001")).toEqual({
    status: 4, out: "", err: "It took longer than 0.001 s; nothing was written. Give it more with --limit.",
  });
  expect(readdirSync(folder)).toEqual(before);
}, STARTING);

test("extras of our own that no sheet can take are left out", () => {
  const parts = smallParts({ S: '<row r="1"><c r="A1"><f>1+1</f><v>3</v></c></row>' });
  const extras = { version: 1, helpers: [], sheets: { S: { cells: {}, settings: { frozenRows: [null, "many"] } } } };
  const relations = "xl/_rels/workbook.xml.rels";
  const file = written("extras.xlsx", zipSync(Object.fromEntries(Object.entries({
    ...parts,
    [relations]: (parts[relations] ?? "").replace("</Relationships>", '<Relationship Id="rId9" Type="http://schemas.openxmlformats.org/' +
      'officeDocument/2006/relationships/customXml" Target="../customXml/item1.xml"/></Relationships>'),
    "customXml/item1.xml": `<treadsheet xmlns="urn:treadsheet:workbook" version="1">${JSON.stringify(extras)}</treadsheet>`,
  }).map(([name, text]) => [name, strToU8(text)]))));
  expect(shown(found(file))).toEqual({ A1: [3, 2] });
}, STARTING);
