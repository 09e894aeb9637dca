import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { MendingReport } from "../../src/cli/mend";
import { excelFile } from "../workbook-file/as-excel-saves";
import { partTexts } from "../workbook-file/changed-parts";
import { smallFile } from "../workbook-file/small-file";

const COMMAND = path.resolve(__dirname, "../../dist/tools/treadsheet.cjs");
/** For the engine to start on a busy machine, in milliseconds. */
const STARTING = 120_000;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-mend-"));
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

const bytesIn = (name: string): Uint8Array => new Uint8Array(readFileSync(path.join(folder, name)));
const cellsIn = (name: string): string => partTexts(bytesIn(name))["xl/worksheets/sheet1.xml"] ?? "";

test("a check says what it would mend and what it cannot, and writes nothing", () => {
  const bytes = excelFile();
  const file = written("check.xlsx", bytes);
  const before = readdirSync(folder);
  const { status, out, err } = run("mend", file, "--check");
  expect([status, err]).toEqual([1, ""]);
  expect(out).toBe([
    "check.xlsx: 12 formulas in cells; 2 formulas to mend.", "",
    "To mend:",
    "  Bid!C3  =STAIR.RISERS(B2)", "    =_xldudf_STAIR_RISERS(B2)",
    "  Bid!D3  =[2]!_xldudf_STAIR_RISERS(B2)", "    =_xldudf_STAIR_RISERS(B2) (takes up as many cells as it comes to)", "",
    "Cannot be mended:",
    "  Bid!F11  =[1]Prices!$A$1", "    reads another workbook",
  ].join("\n"));
  expect([readdirSync(folder), Buffer.compare(bytesIn(file), bytes)]).toEqual([before, 0]);
}, STARTING);

test("over the file goes the mended one, beside it the one before; recalculated it has its values; mended it is not written again", () => {
  const bytes = smallFile({ S: '<row r="1"><c r="A1"><f>SUM(STAIR.RISERS(109.5),IFNA(1,0))</f></c></row>' });
  const file = written("bid 7.xlsx", bytes);
  const { status, out } = run("mend", file, "--in-place");
  expect([status, out.split("\n").at(-1)]).toEqual([
    0, 'Values are as they were. To work them out: treadsheet recalc "bid 7.xlsx" --in-place',
  ]);
  expect(cellsIn(file)).toContain('<c r="A1" cm="1"><f t="array" ref="A1">SUM(_xldudf_STAIR_RISERS(109.5),_xlfn.IFNA(1,0))</f></c>');
  expect(Buffer.compare(bytesIn("bid 7 before.xlsx"), bytes)).toBe(0);
  const mended = readdirSync(folder);
  expect(run("mend", file, "--in-place")).toMatchObject({ status: 0, out: "bid 7.xlsx: 1 formula in cells; 0 formulas to mend." });
  expect(readdirSync(folder)).toEqual(mended);
  // By hand: 109 1/2 / 7 3/4 = 14.1, so 15 risers, and 1.
  expect(run("recalc", file, "--in-place").status).toBe(0);
  expect(cellsIn(file)).toContain("</f><v>16</v></c>");
}, STARTING);

test("for a spreadsheet without spills it is written to another file, and told as JSON", () => {
  const file = written("spills.xlsx", excelFile());
  const { status, out } = run("mend", file, "--without-spills", "--out", "plain.xlsx", "--json");
  const { mended, written: names } = JSON.parse(out) as MendingReport;
  expect([status, names]).toEqual([2, ["plain.xlsx"]]);
  expect(mended).toContainEqual({
    sheet: "Bid", address: "A5", was: "=_xlfn._xlws.SORT(Rates!A5:B7)", is: "=_xlfn._xlws.SORT(Rates!A5:B7)", becomes: "array",
    cells: "A5:B7",
  });
  expect(cellsIn("plain.xlsx")).toContain("<f>SUM(A5:B7)</f><v>12.25</v>");
  expect(cellsIn("plain.xlsx")).not.toContain(" cm=");
}, STARTING);

test("what is no workbook ends in one sentence, and nothing is written", () => {
  written("hello.xlsx", new TextEncoder().encode("hello"));
  const before = readdirSync(folder);
  expect(run("mend", "hello.xlsx", "--in-place")).toMatchObject({
    status: 3, err: "hello.xlsx: This is not an Excel workbook. Choose a file whose name ends in .xlsx.",
  });
  expect(readdirSync(folder)).toEqual(before);
}, STARTING);
