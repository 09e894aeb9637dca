import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { excelFile } from "../workbook-file/as-excel-saves";
import { partTexts } from "../workbook-file/changed-parts";
import { addressOf, type At, fileFor, inCalc, installed, officeFolder, removeFolder, type ShownCell, type Step } from "./office";

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
    "The table takes up Try.C1:C3: 3 rows, 1 columns. It follows its answer when that grows or shrinks.", [[7.5], [7.5], [7.5], [""]],
  ]);
  expect([two, fewer]).toEqual([
    "The table takes up Try.C1:C2: 2 rows, 1 columns. It follows its answer when that grows or shrinks.", [[7.5], [7.5], [""], [""]],
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

/** Cells of the sheets of a saved file, as they stand in it. */
const sheetsOf = (file: string): string =>
  Object.entries(partTexts(new Uint8Array(readFileSync(file)))).filter(([name]) => name.includes("worksheets/sheet"))
    .map(([, text]) => text).join("");

test("names as Excel keeps them in a file, with the number of a workbook too, come in, are mended, and go back", () => {
  const [made, copy] = [path.join(folder, "excel-made.xlsx"), path.join(folder, "excel-copy.xlsx")];
  writeFileSync(made, excelFile());
  const bid = (column: number): At => ({ sheet: "Bid", row: 2, column });
  const steps: readonly Step[] = [
    ["open", addressOf(fileFor(folder, "excel.xlsx", made))], ["formula", bid(1)], ["formula", bid(3)], ["menu", "mend"],
    ["formula", bid(1)], ["formula", bid(3)], ["calculate"], ["read", { ...bid(1), columns: 3 }], ["menu", "copy", null, addressOf(copy)],
  ];
  const [, ...answers] = run(...steps);
  // The file's B3 has the name alone and its D3 the number too: ../workbook-file/as-excel-saves.ts says where both were seen.
  expect(answers.slice(0, 2)).toEqual(["{=_xldudf_stair_risers(B2)}", "=[2]!_xldudf_stair_risers(B2)"]);
  expect(answers.slice(3, 5)).toEqual([expect.stringContaining("STAIR.RISERS(B2)"), "=STAIR.RISERS(B2)"]);
  // By hand: 109.5 / 7.75 = 14.13, so 15 risers, in C3 too, which was typed by its bare name.
  expect(answers[6]).toEqual([[15, 15, 15]]);
  const cells = sheetsOf(copy);
  expect(cells.match(/>_xldudf_STAIR_RISERS\(B2\)</g)).toHaveLength(3);
  expect(cells).not.toMatch(/STAIR[.]|\[2\]|ISTEXT/);
});

test("texts that our functions give are found: in a table, by COUNTIF, SUMIFS, MATCH and =, and in a cell that was typed", () => {
  const copy = path.join(folder, "texts.xlsx");
  // By hand: 36 1/2 inches twice and 12 once; the lengths beside them are 1, 2 and 4, so 1 + 4 = 5 beside the first.
  const given = [[36.5, 1], [12, 2], [36.5, 4]];
  const shown = [['36 1/2"'], ['12"'], ['36 1/2"']];
  const readers = [
    '=COUNTIF(D1:D3;"36 1/2""")', "=SUMIFS(B1:B3;D1:D3;D1)", '=MATCH("12""";D1:D3;0)', '=IF(D2="12""";1;0)', "=IF(D1=D2;1;0)",
    '=SUMPRODUCT((D1:D3="36 1/2""")*1)',
  ];
  const answers = run(
    ["put", cell(0, 0), given], ["enter", cell(0, 3), "=STAIR.TAPE(A1:A3)"], ["until", block(0, 3, 3, 1), shown],
    ...readers.map((one, row): Step => ["enter", cell(row, 5), one]), ["until", block(0, 5, 6, 1), [[2], [5], [2], [1], [0], [2]]],
    ["enter", cell(9, 3), "=STAIR.TAPE(A1)"], ["enter", cell(9, 5), '=COUNTIF(D10;"36 1/2""")'], ["until", block(9, 5, 1, 1), [[1]]],
    ["enter", cell(10, 5), '=SUMPRODUCT((STAIR.TAPE(A1:A3)="12""")*1)'], ["until", cell(10, 5), [[1]]],
    ["menu", "copy", null, addressOf(copy)],
  );
  expect(answers[2]).toEqual(shown);
  expect(answers[9]).toEqual([[2], [5], [2], [1], [0], [2]]);
  expect(answers[12]).toEqual([[1]]);
  expect(answers[14]).toEqual([[1]]);
  const cells = sheetsOf(copy);
  expect(cells).toContain(">_xldudf_STAIR_TAPE(A1:A3)<");
  expect(cells).toContain(">_xldudf_STAIR_TAPE(A1)<");
  expect(cells).not.toMatch(/ISTEXT|ROWS[.]|&amp;T\(/);
});

test("a formula too long to be written three times has texts that are found, too, its errors, and goes back", () => {
  const copy = path.join(folder, "long.xlsx");
  const long = `IF(1;STAIR.TAPE(A1:A3);0${"+0".repeat(1400)})`;
  const shown = [['36 1/2"'], [{ error: "#VALUE!" }], ['12"']];
  const [, , found, , count, table, formula] = run(
    ["put", cell(0, 0), [[36.5], ["no length"], [12]]], ["enter", { ...block(0, 3, 3, 1), isArray: true }, `=${long}`],
    ["until", block(0, 3, 3, 1), shown],
    ["enter", cell(0, 5), '=COUNTIF(D1:D3;"12""")'], ["until", cell(0, 5), [[1]]], ["read", block(0, 3, 3, 1)], ["formula", cell(0, 3)],
    ["menu", "copy", null, addressOf(copy)],
  );
  expect(formula).toMatch(/^[{]=ROWS[.]CELLS[(]/);
  expect(count).toEqual([[1]]);
  expect([found, table]).toEqual([shown, shown]);
  expect(sheetsOf(copy)).toContain(`>${long.replaceAll(";", ",").replace("STAIR.TAPE", "_xldudf_STAIR_TAPE")}<`);
});

test("a table grows and shrinks with its answer, what reads it to its end follows, and undo takes both back", () => {
  const rises = (count: number): readonly (readonly unknown[])[] => [0, 1, 2, 3].map((at) => [at < count ? 7.5 : ""]);
  const [shown, readers] = [block(0, 2, 4, 1), block(0, 4, 2, 1)];
  const answers = run(
    ["put", cell(0, 0), rises(4)], ["put", cell(0, 1), [[3]]],
    ["enter", cell(0, 2), '=STAIR.FINISHED(INDIRECT("A1:A"&B1);0)'], ["until", shown, rises(3)],
    ["enter", cell(0, 4), "=SUM(C1:C3)"], ["enter", cell(1, 4), "=SUM($C$2:$C$3)"],
    ["put", cell(0, 1), [[4]]], ["until", shown, rises(4)], ["until", readers, [[30], [22.5]]],
    ["formula", cell(0, 4)], ["formula", cell(1, 4)],
    ["undo"], ["until", shown, rises(3)], ["until", readers, [[22.5], [15]]],
    ["redo"], ["until", shown, rises(4)],
    ["put", cell(0, 1), [[2]]], ["until", shown, rises(2)], ["until", readers, [[15], [7.5]]],
  );
  expect([answers[3], answers[7], answers[8]]).toEqual([rises(3), rises(4), [[30], [22.5]]]);
  expect([answers[9], answers[10]]).toEqual(["=SUM(C1:C4)", "=SUM($C$2:$C$4)"]);
  expect([answers[12], answers[13], answers[15]]).toEqual([rises(3), [[22.5], [15]], rises(4)]);
  expect([answers[17], answers[18]]).toEqual([rises(2), [[15], [7.5]]]);
});

test("a table that has no room says how much of it is shown, in a note that stays open, until it has", () => {
  const rises = (count: number): readonly (readonly unknown[])[] => [0, 1, 2, 3].map((at) => [at < count ? 7.5 : ""]);
  const says = "Treadsheet: 2 rows and 1 columns are shown of 4 and 1. The table needs Try.C1:C4, and Try.C4 is not empty. Clear it, " +
    "or put the formula elsewhere.";
  const answers = run(
    ["put", cell(0, 0), rises(4)], ["put", cell(0, 1), [[2]]], ["put", cell(3, 2), [["my own"]]],
    ["enter", cell(0, 2), '=STAIR.FINISHED(INDIRECT("A1:A"&B1);0)'], ["until", block(0, 2, 3, 1), rises(2).slice(0, 3)],
    ["put", cell(0, 1), [[4]]], ["read", block(0, 2, 4, 1)], ["note", cell(0, 2), true], ["menu", "fit"], ["read", block(0, 2, 4, 1)],
    ["clear", cell(3, 2)], ["until", block(0, 2, 4, 1), rises(4)], ["note", cell(0, 2), false], ["menu", "fit"],
  );
  expect(answers[7]).toEqual([says, true]);
  expect(answers[8]).toBe(says);
  expect(answers[9]).toEqual([[7.5], [7.5], [""], ["my own"]]);
  expect(answers[11]).toEqual(rises(4));
  expect(answers[12]).toEqual(["", expect.anything()]);
  expect(answers[13]).toBe("Every table has the size of its answer.");
});

test("every entry of the menu leads somewhere, and its command does what the entry says", () => {
  const rises = [[7.5], [8]];
  const [, , entries, , formula, , table] = run(
    ["put", cell(0, 0), rises], ["enter", cell(0, 2), "=_xldudf_STAIR_FINISHED(A1:A2;0)+0"],
    ["entries"], ["choose", "mend", cell(0, 0)], ["formula", cell(0, 2)],
    ["choose", "table", cell(0, 2)], ["read", block(0, 2, 2, 1)],
  );
  const titles = ["Insert as table", "Fit the tables", "Why?", "Mend", "Save a copy for Excel…", "Where Node is…"];
  expect(entries).toEqual(titles.map((title) => [title, true]));
  expect(formula).toBe("=STAIR.FINISHED(A1:A2;0)+0");
  expect(table).toEqual(rises);
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
