import path from "node:path";
import { partTexts } from "../workbook-file/changed-parts";
import { readFileSync } from "node:fs";
import { addressOf, type At, inCalc, installed, officeFolder, removeFolder, type ShownCell, type Step } from "./office";

let folder: string;
let profile: string;
beforeAll(() => {
  folder = officeFolder();
  profile = installed(folder);
});
afterAll(() => removeFolder(folder));

const cell = (row: number, column: number): At => ({ sheet: "Try", row, column });
const block = (row: number, column: number, rows: number, columns: number): At => ({ sheet: "Try", row, column, rows, columns });
const run = (...steps: readonly Step[]): readonly unknown[] => inCalc(folder, profile, [["open"], ...steps]).slice(1);

test("Insert as table takes up as many cells as the answer has, also when they become fewer, and nothing that is in use", () => {
  // By hand: FINISHED answers as many rises as it is given, in one column.
  const rises = (count: number): readonly (readonly unknown[])[] => [0, 1, 2, 3].map((at) => [at < count ? 7.5 : null]);
  const [, , three, shown, , , two, fewer, , , inTheWay] = run(
    ["put", cell(0, 0), rises(3)],
    ["enter", cell(0, 2), "=STAIR.FINISHED(A1:A3;0)"],
    ["menu", "table", cell(0, 2)],
    ["read", block(0, 2, 4, 1)],
    ["put", cell(0, 0), rises(2)],
    ["enter", { ...block(0, 2, 3, 1), isArray: true }, "=STAIR.FINISHED(A1:A2;0)"],
    ["menu", "table", cell(1, 2)],
    ["read", block(0, 2, 4, 1)],
    ["put", cell(1, 4), [["my own"]]],
    ["enter", cell(0, 4), "=STAIR.FINISHED(A1:A2;0)"],
    ["menu", "table", cell(0, 4)],
  );
  expect([three, shown]).toEqual([
    "The table takes up Try.C1:C3: 3 rows, 1 columns. Choose this again when its size changes.", [[7.5], [7.5], [7.5], [""]],
  ]);
  expect([two, fewer]).toEqual([
    "The table takes up Try.C1:C2: 2 rows, 1 columns. Choose this again when its size changes.", [[7.5], [7.5], [""], [""]],
  ]);
  expect(inTheWay).toBe("The table needs Try.E1:E2, and Try.E2 is not empty. Clear it, or put the formula elsewhere.");
});

test("Why? says the sentence of a cell, and where the error of a cell begins that reads it", () => {
  const [, , why, behind, fine, none] = run(
    ["enter", cell(0, 0), '=STAIR.RISERS("x")'],
    ["enter", cell(1, 0), "=A1+1"],
    ["menu", "why", cell(0, 0)],
    ["menu", "why", cell(1, 0)],
    ["menu", "why", cell(5, 5)],
    ["menu", "table", cell(5, 5)],
  );
  expect(why).toMatch(/^Try[.]A1: totalRise: read "x", which is not a length/);
  expect(behind).toMatch(/^Try[.]A2 reads Try[.]A1, where the error begins: totalRise: read "x"/);
  expect(fine).toBe("Try.F6 is not in error: it is empty.");
  expect(none).toMatch(/^Try[.]F6 holds no formula[.]/);
});

test("Mend makes names as Excel saves them ours, in cells and arrays, and a copy for Excel has them as Excel binds them", () => {
  const copy = path.join(folder, "copy.xlsx");
  // By hand: 108 / 7.75 = 13.94, so 14 risers.
  const [, , , unbound, , mended, shown, late, copied] = run(
    ["put", cell(0, 0), [[7.5], [8]]],
    ["enter", cell(0, 1), "=_xldudf_STAIR_RISERS(108)+1"],
    ["enter", { ...block(0, 2, 2, 1), isArray: true }, "=_xldudf_STAIR_FINISHED(A1:A2;0)"],
    ["menu", "why", cell(0, 1)],
    ["enter", cell(0, 4), '=IF(_xlfn.take(A1:A2;-1)="","",_xlfn.LET(_xlpm.a;A1;_xlpm.b;_xlpm.a+1;_xlpm.b*2))'.replaceAll(",", ";")],
    ["menu", "mend"],
    ["read", block(0, 1, 2, 2)],
    ["read", cell(0, 4)],
    ["menu", "copy", null, addressOf(copy)],
  );
  expect(unbound).toContain("Choose Mend in this menu.");
  expect(mended).toBe("3 formulas had names as Excel saves them, and are mended.");
  expect(shown as ShownCell[][]).toEqual([[15, 7.5], ["", 8]]);
  // By hand: 8, the last of the two, is there, and (7.5 + 1) x 2 = 17.
  expect(late).toEqual([[17]]);
  expect(copied).toBe(`Wrote ${copy}: 3 formulas as Excel binds them.`);
  const parts = Object.entries(partTexts(new Uint8Array(readFileSync(copy))));
  const cells = parts.filter(([name]) => name.includes("worksheets/sheet")).join("");
  expect(cells).toContain("_xldudf_STAIR_RISERS(108)+1");
  expect(cells).toContain("_xlfn.TAKE(");
  expect(cells).not.toMatch(/STAIR[.]|ROWS[.]/);
});

test("without Node, and with what is not Node, Why? says so; set again, it answers; a process that died is started anew", () => {
  const at = cell(0, 0);
  const entered = (rise: number): Step => ["enter", at, `=STAIR.RISERS(${rise})`];
  const answers = run(
    ["menu", "node", null, "file:///nowhere/node"], entered(107), ["menu", "why", at],
    ["menu", "node", null, "file:///bin/true"], entered(108), ["menu", "why", at],
    ["menu", "node", null, addressOf(process.execPath)], entered(109), ["read", at],
  );
  expect(answers[2]).toMatch(/^Try[.]A1: Node is set to [/]nowhere[/]node, and there is no such file[.]/);
  expect(answers[5]).toMatch(/^Try[.]A1: Node ended without an answer[.]/);
  // By hand: 109 / 7.75 = 14.06, so 15 risers.
  expect(answers[8]).toEqual([[15]]);
});
