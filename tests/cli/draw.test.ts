import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { CellData } from "../../src/sheets/sheet-data";
import { workbookFile } from "../../src/workbook-file/write-workbook-file";
import { dimension, parsedDraft } from "../drawing/plans/parsed-draft";

const COMMAND = path.resolve(__dirname, "../../dist/tools/treadsheet.cjs");
/** For the engine to start on a busy machine, in milliseconds. */
const STARTING = 120_000;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-draw-"));
  const cells: Readonly<Record<string, CellData>> = {
    A1: { value: "total rise" }, B1: { value: 98 }, A2: { value: "risers" }, B2: { value: 14 }, A3: { value: "run" }, B3: { value: 9.5 },
    D1: { formula: "=STAIR.LAYOUT(A1:B3)" },
    // The rise out of the layout's own result, so that another drawn function is worked out again with it.
    I1: { formula: '=STAIR.STRINGER(STAIR.PICK(D1#,"unit rise"),B3,B2,11.25)' },
    Q1: { formula: '=STAIR.MARKS({"step","run","back","front","left offset";1,10,36,36,"square"},,"right")' },
    M1: { formula: "=1+1" }, M2: { formula: '=STAIR.STRINGER("x",B3,B2,11.25)' },
  };
  const calculated = { value: () => null, spill: () => [[null]] };
  writeFileSync(path.join(folder, "stair.xlsx"), workbookFile([{ name: "My stair", cells }], { calculated }));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (...args: readonly string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, "draw", ...args], { cwd: folder, encoding: "utf8" });
  return { status, out: stdout.trimEnd(), err: stderr.trimEnd() };
};

const length = (svg: string, begins: string): number => dimension(parsedDraft({ svg }), begins).length;

test("one drawing is printed, of a cell that the result spilled into, too", () => {
  const { status, out } = run("stair.xlsx", "'My stair'!J3");
  expect(status).toBe(0);
  expect(out).toMatch(/^<svg .*<\/svg>$/);
  // By hand: 98 / 14 = 7.
  expect(length(out, "rise")).toBeCloseTo(7, 1);
  expect(length(out, "board")).toBeCloseTo(11.25, 1);
}, STARTING);

test("a tread is drawn out of its marks", () => {
  const { status, out } = run("stair.xlsx", "My stair!Q4");
  expect(status).toBe(0);
  // By hand: the toe 1 1/4 past the 36 of the skirts, the return 10 of run and 1 1/4 at both ends.
  expect([length(out, "toe"), length(out, "return 12")].map((one) => Math.round(one * 100) / 100)).toEqual([37.25, 12.5]);
}, STARTING);

test("several drawings go beside the name given, each with its own, out of a typed stair table as out of LAYOUT", () => {
  expect(run("stair.xlsx", "My stair!B2", "--out", "typed.svg")).toMatchObject({
    status: 0, out: "typed elevation.svg\ntyped stringer.svg\ntyped closed skirt.svg\ntyped open skirt.svg",
  });
  expect(run("stair.xlsx", "my stair!$e$4", "--out", "called.svg").status).toBe(0);
  const read = (name: string): string => readFileSync(path.join(folder, name), "utf8");
  expect(read("called elevation.svg")).toBe(read("typed elevation.svg"));
  // By hand: 13 x 9.5.
  expect(length(read("typed elevation.svg"), "13 runs")).toBeCloseTo(123.5, 0);
}, STARTING);

test.each([
  [["stair.xlsx", "My stair!D1"], "draw: My stair!D1 has 4 drawings (elevation, stringer, closed skirt, open skirt); say where they go"],
  [["stair.xlsx", "My stair!M1"], "draw: My stair!M1: there is no table with a drawing. Drawings are made of STAIR.LAYOUT"],
  [["stair.xlsx", "My stair!M2", "--out", "no.svg"], 'draw: My stair!M2: rise: read "x", which is not a length'],
  [["stair.xlsx", "Mine!A1"], 'draw: stair.xlsx has no sheet "Mine"; it has My stair'],
  [["none.xlsx", "Mine!A1"], "none.xlsx: there is no such file"],
])("%j is refused with code 3 and nothing is written", (args, sentence) => {
  const before = readdirSync(folder);
  const { status, out, err } = run(...args);
  expect([status, out]).toEqual([3, ""]);
  expect(err).toContain(sentence);
  expect(readdirSync(folder)).toEqual(before);
}, STARTING);
