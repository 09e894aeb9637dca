import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { builtinModules } from "node:module";
import path from "node:path";
import { version } from "../../package.json";
import { catalogue } from "../../src/functions/catalogue";
import { takesEach } from "../../src/functions/declare";
import { scriptCall } from "../../src/generate/script-call";
import { words } from "../../src/solver/words";
import { exportedName } from "../../src/package/exported-name";
import { cutWorkbook, UNPROVEN_CUT } from "../cli/unproven-cut";
import { calledExamples, examples, type ErrorCell } from "./example-calls";
import { type InstalledPackage, installedPackage } from "./installed-package";

/** For npm on a busy machine, in milliseconds. */
const INSTALLING = 180_000;

let installed: InstalledPackage;
beforeAll(() => {
  installed = installedPackage();
}, INSTALLING);
afterAll(() => installed.remove());

const project = path.resolve(__dirname, "../..");

test("it holds the command, the library, its types, what is said about it, and nothing else; the build counts the same", () => {
  expect(installed.packed.files.map((file) => file.path).sort()).toEqual([
    "LICENSE",
    "README.md",
    "dist/functions.js",
    "dist/functions.json",
    "dist/tools/highs.wasm",
    "dist/tools/long-search.js",
    "dist/tools/package/functions.cjs",
    "dist/tools/package/functions.d.cts",
    "dist/tools/package/functions.d.mts",
    "dist/tools/package/functions.mjs",
    "dist/tools/package/third-party-notices.txt",
    "dist/tools/treadsheet.cjs",
    "package.json",
  ]);
  const { packed } = jest.requireActual<{ packed: () => { files: { name: string; bytes: number }[]; others: number } }>(
    "../../src/bootstrap/packed.cjs",
  );
  const { files, others } = packed();
  expect(files.map(({ name, bytes }) => ({ path: name, size: bytes }))).toEqual(
    installed.packed.files.map(({ path: name, size }) => ({ path: name, size })).sort((a, b) => (a.path < b.path ? -1 : 1)),
  );
  expect(others).toBe(0);
});

test("it installs itself and no other package", () => {
  expect(readdirSync(path.join(installed.folder, "node_modules")).filter((name) => !name.startsWith("."))).toEqual(["treadsheet"]);
});

test("no file of it asks for a package that is not in it", () => {
  for (const { path: name } of installed.packed.files.filter(({ path: one }) => /[.][cm]?js$/.test(one))) {
    const text = readFileSync(path.join(installed.folder, "node_modules/treadsheet", name), "utf8");
    const asked = [...text.matchAll(/\brequire\("([^".][^"]*)"\)|^import .* from "([^".][^"]*)";/gm)].map((found) => found[1] ?? found[2]);
    expect([name, asked.filter((one = "") => !builtinModules.includes(one.replace(/^node:/, "")))]).toEqual([name, []]);
  }
});

test("import and require give the same functions, one for each of the worksheet", () => {
  const out = installed.printed(
    "both.mjs",
    `import * as imported from "treadsheet";
     import { createRequire } from "node:module";
     const required = createRequire(import.meta.url)("treadsheet");
     const names = Object.keys(imported);
     console.log(JSON.stringify([names, Object.keys(required), names.filter((name) => imported[name] !== required[name])]));`,
  );
  const [imported = [], required = [], other] = JSON.parse(out) as string[][];
  const names = ["TreadsheetError", ...catalogue.map(exportedName)].sort();
  expect([imported.sort(), required.sort(), other]).toEqual([names, names, []]);
});

/** Numbers agree to ten significant digits, as the declarations say them. */
const SIGNIFICANT = 10;
const rounded = (cell: unknown): unknown => (typeof cell === "number" ? Number(cell.toPrecision(SIGNIFICANT)) : cell);
const isErrorCell = (cell: unknown): cell is ErrorCell => typeof cell === "object" && cell !== null;
/** A cell as a declaration says it: an error as its code and sentence. */
const plain = (cell: unknown): unknown => (isErrorCell(cell) ? `${cell.code} ${cell.message}` : rounded(cell));
const plainRows = (rows: unknown): unknown => (Array.isArray(rows) ? rows.map((row: unknown[]) => row.map(plain)) : plain(rows));

describe("every example of every declaration, in a script without clock and chance,", () => {
  let called: ReturnType<typeof calledExamples>;
  beforeAll(() => {
    called = calledExamples(installed);
  }, INSTALLING);

  test.each(examples.map((one, index) => [scriptCall(one.declaration, one.example), one, index] as const))(
    "%s",
    (_, { declaration, example }, index) => {
      const { thrown, answer, again } = called[index] ?? {};
      expect(again).toEqual(answer);
      const hasRange = Object.entries(declaration.parameters).some(
        ([name, parameter]) => takesEach(parameter) && Array.isArray(example.given[name]),
      );
      if ("fails" in example) {
        const error = hasRange ? ((answer as unknown[][])[0]?.[0] as ErrorCell) : thrown;
        expect(error).toEqual({ code: example.fails, message: example.says, isOurs: true });
        return;
      }
      expect(thrown).toBeUndefined();
      if ("gives" in example) {
        expect(plainRows(answer)).toEqual(plainRows(example.gives));
        return;
      }
      const [headings = [], ...rows] = answer as unknown[][];
      const found = rows.map((row) => Object.fromEntries(row.map((cell, column) => [String(headings[column]), plain(cell)])));
      for (const row of example.shows) {
        const wanted = Object.fromEntries(Object.entries(row).map(([key, cell]) => [words(key), rounded(cell)]));
        expect(found).toContainEqual(expect.objectContaining(wanted));
      }
    },
  );
});

test("a range answers rows however few its cells, and a bad cell stands in its place", () => {
  // By hand: 108 1/2 is 14 x 7 3/4, and 1/64 more takes one riser more; 14 is two risers. A board foot is 1 in x 12 in x 12 in.
  const out = installed.printed(
    "ranges.cjs",
    `const { risers, boardFeet, toMm } = require("treadsheet");
     const shown = (rows) => rows.map((row) => row.map((cell) => (cell instanceof Error ? cell.message.slice(0, 19) : cell)));
     const bad = risers(["x", 108.5]);
     console.log(JSON.stringify([
       risers([108.5]), risers([[108.5, 108.515625]]), risers([108.5, 108.515625]), risers([[null]]), risers([108.5, , 108.5]),
       shown(risers(["x"])), shown(bad), shown(risers(bad)), boardFeet(1, 12, [12], [1]), toMm([1, 2]),
     ]));`,
  );
  const wrong = 'totalRise: read "x"';
  expect(JSON.parse(out)).toEqual([
    [[14]], [[14, 15]], [[14], [15]], [[""]], [[14], [""], [14]],
    [[wrong]], [[wrong], [14]], [["totalRise: the cell"], [2]], [[1]], [[25.4], [50.8]],
  ]);
});

test("what no sheet could pass is thrown as a sentence that names the argument, and so is one too many", () => {
  const takes = "takes text, numbers, true and false, or an array of rows of them, got";
  const wrong: readonly (readonly [string, string])[] = [
    ["risers()", "totalRise: is missing; give finish floor to finish floor, measured plumb"],
    ["risers([])", "totalRise: is missing; give finish floor to finish floor, measured plumb"],
    ["risers(108.5, { maxRise: 8 })", `maxRise: ${takes} a value of type object`],
    ["risers(new Date(0))", `totalRise: ${takes} a value of type object`],
    ["risers(NaN)", `totalRise: ${takes} NaN`],
    ["risers([108.5, 1 / 0])", `totalRise, row 2: ${takes} Infinity`],
    ["risers([[108.5, [1]]])", `totalRise, row 1: ${takes} rows within a row`],
    ["risers(10n)", `totalRise: ${takes} a value of type bigint`],
    ['risers(108.5, 8, "in", 1)', "risers: takes up to 3 arguments, got 4"],
    ["['7/16'].map(toMm)", "toMm: takes up to 2 arguments, got 3"],
  ];
  const out = installed.printed(
    "wrong.cjs",
    `const { risers, toMm, TreadsheetError } = require("treadsheet");
     const parts = (error) => [error instanceof TreadsheetError, error.code, error.message];
     const said = (call) => { try { return call(); } catch (error) { return parts(error); } };
     console.log(JSON.stringify([${wrong.map(([text]) => `said(() => ${text})`).join(", ")}]));`,
  );
  expect(JSON.parse(out)).toEqual(wrong.map(([, says]) => [true, "#VALUE!", says]));
});

test("the command works from where it is installed", () => {
  expect(installed.command("--version")).toEqual({ status: 0, out: version, err: "" });
  expect(installed.command("functions", "risers").out).toMatch(/^STAIR\.RISERS\(totalRise, /);
  expect(installed.command("functions").out.match(/^STAIR\./gm)).toHaveLength(catalogue.length);
  // By hand: 109 1/2 / 7 3/4 = 14.1, so 15.
  expect(installed.command("eval", "=STAIR.RISERS(109.5)")).toEqual({ status: 0, out: "15", err: "" });
  expect(readdirSync(path.join(installed.folder, "node_modules", ".bin")).some((name) => name.startsWith("treadsheet"))).toBe(true);
}, INSTALLING);

test("so does its long search, with the program that searches beside it", () => {
  writeFileSync(path.join(installed.folder, "cut.xlsx"), cutWorkbook(UNPROVEN_CUT));
  const { status, out, err } = installed.command("recalc", "cut.xlsx", "--long", "--limit", "60");
  expect([status, err]).toEqual([0, ""]);
  expect(out).toContain("Better cutting plans by the long search:");
}, INSTALLING);

test("the script in the README prints what stands beside it", () => {
  const readme = readFileSync(path.join(project, "README.md"), "utf8");
  const [, script = ""] = /^((?: {4}.*\n)* {4}import .*\n(?: {4}.*\n)+)/m.exec(readme) ?? [];
  const wanted = [...script.matchAll(/console\.log\(.*\/\/ (\S+)/g)].map(([, result]) => result);
  expect(wanted.length).toBeGreaterThan(0);
  expect(installed.printed("readme.mjs", script).split("\n")).toEqual(wanted);
});
