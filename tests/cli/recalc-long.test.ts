import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Recalculated } from "../../src/cli/recalc";
import { reportText } from "../../src/cli/report";
import type { CellData } from "../../src/sheets/sheet-data";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { cutWorkbook, twoColumns, UNPROVEN_CUT } from "./unproven-cut";

const COMMAND = path.resolve(__dirname, "../../dist/tools/treadsheet.cjs");
/** For the engine to start on a busy machine, and a search besides, in milliseconds. */
const SEARCHING = 240_000;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-long-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (...args: readonly string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...args], { cwd: folder, encoding: "utf8" });
  return { status, out: stdout.trimEnd(), err: stderr.trimEnd() };
};

const written = (name: string, cells: Readonly<Record<string, CellData>>): string => {
  writeFileSync(path.join(folder, name), cutWorkbook(cells));
  return name;
};

const storedIn = (name: string) => readWorkbookFile(new Uint8Array(readFileSync(path.join(folder, name)))).stored["Cut"];
const costIn = (name: string): number => Number(storedIn(name)?.["G1"]);

test("a longer search finds a plan that is no dearer and no dearer than proven, and says what it found, where, and what a cell had", () => {
  const file = written("job.xlsx", UNPROVEN_CUT);
  expect(run("recalc", file, "--out", "cell.xlsx").status).toBe(0);
  const { status, out } = run("recalc", file, "--out", "long.xlsx", "--long", "--limit", "90", "--json");
  const { longer: { plans = [], formulas = [] } = {} } = JSON.parse(out) as Recalculated;
  expect(status).toBe(0);
  const [inACell, now] = [costIn("cell.xlsx"), costIn("long.xlsx")];
  expect(now).toBeLessThanOrEqual(inACell);
  expect(now).toBeGreaterThanOrEqual(Number(storedIn("long.xlsx")?.["G2"]));
  expect(storedIn("long.xlsx")).toMatchObject({ G3: 2 * now, G4: 2 });
  const cheaper = plans.filter(({ cost: [was, is] }) => is < was);
  // How far a search comes is a matter of the machine; what it found is told as it is in the cells.
  expect(cheaper.map(({ cost }) => cost)).toEqual(now < inACell ? [[inACell, now]] : []);
  expect(formulas.some(({ address }) => address === "G1")).toBe(now < inACell);
  expect(formulas.map(({ address }) => address)).not.toContain("G4");
}, SEARCHING);

test("where every plan is proven in its cell there is nothing to search, and that is said", () => {
  const file = written("small.xlsx", {
    ...twoColumns("A", "B", [["length", "quantity"], [36, 2]]), ...twoColumns("D", "E", [["length", "price"], [96, 24.5]]),
    G1: { formula: '=STAIR.PICK(STAIR.PLAN(A1:B2,D1:E2),"cost")' },
  });
  const { status, out } = run("recalc", file, "--out", "small long.xlsx", "--long");
  expect(status).toBe(0);
  // By hand: two of 36 in with a cut of 1/8 in are 72 1/8 in, within one stick.
  expect(costIn("small long.xlsx")).toBe(24.5);
  expect(out).toContain("Better cutting plans by the long search:\n  none\n");
}, SEARCHING);

test("without --long nothing is said of it; the search keeps to the limit of the command, which stops all of it", () => {
  const file = written("late.xlsx", UNPROVEN_CUT);
  const before = readdirSync(folder);
  expect(run("recalc", file, "--long", "--in-place", "--limit", "0.001")).toMatchObject({ status: 4, out: "" });
  expect(readdirSync(folder)).toEqual(before);
  expect(run("recalc", file).out).not.toContain("long search");
}, SEARCHING);

test("the report names the better plans with what a cell had, and the formulas they show in", () => {
  const found: Recalculated = {
    file: "job.xlsx", formulas: 3, changed: [], inError: [], kept: [], restsOnKept: [], leftOut: [], written: [],
    longer: {
      plans: [
        { cost: [412.5, 398], sticks: [23, 22], verdict: "best possible (proven)" }, { cost: [60, 60], sticks: [7, 6], verdict: "x" },
      ],
      formulas: [{ sheet: "Cut", address: "G1" }, { sheet: "Cut plan", address: "A8" }],
    },
  };
  expect(reportText(found)).toContain([
    "Better cutting plans by the long search:", "  cost 412.5 -> 398, sticks 23 -> 22: best possible (proven)",
    "  cost 60, sticks 7 -> 6: x", "  formulas that come to something else for it: Cut!G1, 'Cut plan'!A8",
  ].join("\n"));
});
