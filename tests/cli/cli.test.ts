import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { version } from "../../package.json";
import type { CellData } from "../../src/sheets/sheet-data";
import { writeOver } from "../../src/cli/written-file";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { workbookFile } from "../../src/workbook-file/write-workbook-file";

const COMMAND = path.resolve(__dirname, "../../dist/tools/treadsheet.cjs");
/** For the engine to start on a busy machine, in milliseconds. */
const STARTING = 120_000;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-cli-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (...args: readonly string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...args], { cwd: folder, encoding: "utf8" });
  return { status, out: stdout.trimEnd(), err: stderr.trimEnd() };
};

const CELLS: Readonly<Record<string, CellData>> = {
  A1: { value: 109.5 }, A2: { formula: "=STAIR.RISERS(A1)" }, A3: { formula: "=A2*2" }, B1: { formula: "=SEQUENCE(2)" },
  C1: { formula: '=STAIR.RISERS("x")' },
};

/** A workbook whose formulas came to something else when it was saved. */
const stale = (name: string, cells: Readonly<Record<string, CellData>>, was: Readonly<Record<string, number>>): string => {
  const calculated = {
    value: (_: string, address: string) => was[address] ?? null,
    spill: (_: string, address: string) => (address === "B1" ? [[1], [2]] : [[was[address] ?? null]]),
  };
  writeFileSync(path.join(folder, name), workbookFile([{ name: "Bid", cells }], { calculated }));
  return name;
};

const storedIn = (name: string) => readWorkbookFile(new Uint8Array(readFileSync(path.join(folder, name)))).stored["Bid"];

test("eval says what a formula comes to, a block row by row, and of an error the sentence", () => {
  // By hand: 109 1/2 / 7 3/4 = 14.1, so 15.
  expect(run("eval", "=STAIR.RISERS(109.5)")).toEqual({ status: 0, out: "15", err: "" });
  expect(run("eval", "SEQUENCE(2,2)").out).toBe("1\t2\n3\t4");
  expect(JSON.parse(run("eval", "=1+1", "--json").out)).toEqual({ rows: [[2]] });
  const failed = run("eval", '=STAIR.RISERS("x")');
  expect([failed.status, failed.out]).toEqual([1, "#VALUE!"]);
  expect(failed.err).toContain('read "x", which is not a length');
}, STARTING);

test("the functions are listed, one with its arguments, and another than there is is refused", () => {
  expect(run("functions").out).toContain("STAIR.PITCH(");
  expect(run("functions", "stair.pitch").out).toMatch(/^STAIR\.PITCH\(rise, run/);
  const misspelt = run("functions", "PICTH");
  expect([misspelt.status, misspelt.err]).toEqual([3, "functions: there is no function PICTH. treadsheet functions lists them all."]);
  expect(run("--version").out).toBe(version);
  expect(run("--help").out).toContain("treadsheet recalc bid.xlsx");
}, STARTING);

test("recalc lists what has another value, writes it, and leaves every other part as it was", () => {
  const file = stale("bid.xlsx", CELLS, { A2: 14, A3: 30, C1: 0 });
  const before = readFileSync(path.join(folder, file));
  const check = run("recalc", file, "--check");
  expect(check.status).toBe(1);
  expect(check.out).toContain("Bid!A2  14 -> 15");
  expect(check.out).not.toContain("Bid!A3  ");
  expect(check.out).toContain('Bid!C1  #VALUE!  =STAIR.RISERS("x")');
  expect(check.out).toContain('read "x", which is not a length');
  expect(readFileSync(path.join(folder, file))).toEqual(before);

  expect(run("recalc", file, "--out", "new.xlsx").status).toBe(0);
  expect(storedIn("new.xlsx")).toMatchObject({ A2: 15, A3: 30, C1: { error: "#VALUE!" } });
  const { changed } = JSON.parse(run("recalc", file, "--check", "--json").out) as { readonly changed: readonly unknown[] };
  expect(changed).toContainEqual({ sheet: "Bid", address: "A2", was: 14, is: 15 });

  const over = run("recalc", file, "--in-place");
  expect(over.status).toBe(0);
  expect(readFileSync(path.join(folder, "bid before.xlsx"))).toEqual(before);
  expect(storedIn(file)).toMatchObject({ A2: 15 });
  expect(run("recalc", file, "--check").status).toBe(0);
  expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
}, STARTING);

test("what cannot be worked out keeps its value and is listed with what rests on it; a day makes TODAY answer", () => {
  const cells: Readonly<Record<string, CellData>> = {
    A1: { formula: "=TODAY()" }, A2: { formula: "=A1+1" }, A3: { formula: '=GETPIVOTDATA("x",Z1)' }, A4: { formula: "=A3*2" },
    A5: { formula: "=RAND()" },
  };
  const file = stale("days.xlsx", cells, { A1: 40_000, A2: 40_001, A3: 7, A4: 13, A5: 0.5 });
  const found = run("recalc", file, "--out", "days now.xlsx");
  expect(found.status).toBe(2);
  expect(found.out).toContain("Bid!A1  =TODAY()\n    calls TODAY; say which day with --at");
  expect(found.out).toContain("calls GETPIVOTDATA, which cannot be worked out here");
  expect(found.out).toContain("calls RAND, which answers differently each time");
  expect(found.out).toMatch(/Rest on a value that was kept:\n {2}Bid!A2\n {2}Bid!A4/);
  expect(storedIn("days now.xlsx")).toMatchObject({ A1: 40_000, A2: 40_001, A3: 7, A4: 14, A5: 0.5 });
  // By hand: 1 January 2026 is day 46,023, and 29 November the 333rd of the year.
  run("recalc", file, "--out", "days now.xlsx", "--at", "2026-11-29");
  expect(storedIn("days now.xlsx")).toMatchObject({ A1: 46_355, A2: 46_356, A3: 7 });
}, STARTING);

test("values for anyone have no formula, and a sheet that is not there is named", () => {
  const file = stale("values of.xlsx", CELLS, { A2: 14, A3: 28, C1: 0 });
  expect(run("recalc", file, "--out", "values.xlsx", "--values").status).toBe(0);
  const { sheets } = readWorkbookFile(new Uint8Array(readFileSync(path.join(folder, "values.xlsx"))));
  expect([sheets[0]?.cells["A2"]?.value, sheets[0]?.cells["A2"]?.formula, sheets[0]?.cells["B2"]?.value]).toEqual([15, undefined, 2]);
  expect(run("recalc", file, "--sheet", "Books").err).toBe('--sheet: values of.xlsx has no sheet "Books"; it has Bid');
}, STARTING);

test("a file that is not there, or no workbook, ends in one sentence, and nothing is written", () => {
  writeFileSync(path.join(folder, "hello.xlsx"), "hello");
  const before = readdirSync(folder);
  expect(run("recalc", "nothing.xlsx", "--in-place")).toMatchObject({
    status: 3, err: "nothing.xlsx: there is no such file. Name a workbook that ends in .xlsx.",
  });
  expect(run("recalc", "hello.xlsx", "--in-place")).toMatchObject({
    status: 3, err: "hello.xlsx: This is not an Excel workbook. Choose a file whose name ends in .xlsx.",
  });
  expect(readdirSync(folder)).toEqual(before);
}, STARTING);

test("a file that changed since it was read is not written over", () => {
  const file = path.join(folder, "changing.xlsx");
  writeFileSync(file, "later");
  expect(() => writeOver(file, Buffer.from("earlier"), Buffer.from("new"))).toThrow("has changed since it was read; nothing was written");
  expect(readFileSync(file, "utf8")).toBe("later");
});
