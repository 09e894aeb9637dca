import { call } from "../../src/functions/call";
import { type Answer, failed } from "../../src/functions/cells";
import type { Declaration, Result } from "../../src/functions/declare";
import { lengthOf } from "../../src/solver/length/length";
import { Exact } from "../../src/solver/length/exact";
import { problem } from "../../src/solver/problem";

/** What a solver answers, as cells, with the sentences and units of its declaration. 1 in is 25.4 mm by definition. */

const says = "What it is.";
const PROBLEMS = {
  short: { cell: "#N/A", says: "rise: {rise} is under {least}" },
  none: { cell: "#VALUE!", says: "rise: is missing" },
} as const;

/** A call of a function that answers what it is told to; `unit` and `headings` are its arguments, or it has no unit. */
const answered = (result: Result, answer: unknown, ...passed: unknown[]): unknown => {
  const declaration = {
    id: "MADEUP", group: "Layout", says, result, problems: PROBLEMS, examples: [{ given: {}, gives: 0, from: says }], source: says,
    parameters: {
      unit: { kind: "unit", default: "in", says }, headings: { kind: "flag", default: true, says },
    },
    solve: () => answer,
  } as unknown as Declaration;
  const text = (cell: Answer): unknown => (typeof cell === "object" ? `${cell.failed} ${cell.says}` : cell);
  const cells = call(declaration, passed);
  return Array.isArray(cells) ? cells.map((row) => row.map(text)) : text(cells);
};
const inch = (inches: number) => lengthOf(inches, "in");

describe("one value", () => {
  test.each<[Result["kind"], unknown, unknown, unknown]>([
    ["length", inch(7.5), 7.5, 190.5],
    ["reading", 7.5, 7.5, 7.5],
    ["money", new Exact("12.5"), 12.5, 12.5],
    ["rate", new Exact("0.25"), 0.25, 0.25],
    ["count", 14, 14, 14],
    ["count", -0, 0, 0],
    ["text", "oak", "oak", "oak"],
    ["text", true, true, true],
    ["text", undefined, "", ""],
    ["cell", 5, 5, 5],
    ["cell", { kind: "length", value: inch(7.5) }, 7.5, 190.5],
    ["cell", { kind: "money", value: new Exact(5) }, 5, 5],
    ["cell", { kind: "text", value: "oak" }, "oak", "oak"],
  ])("%s %j", (kind, answer, inInches, inMillimetres) => {
    const result = { kind, says } as Result;
    expect([answered(result, answer), answered(result, answer, "mm")]).toEqual([inInches, inMillimetres]);
    expect(Object.is(answered(result, answer), -0)).toBe(false);
  });

  test("that is none is a sentence, in the unit of the call", () => {
    const result = { kind: "length", says } as const;
    const short = problem("short", { rise: inch(1), least: 4 });
    expect([answered(result, short), answered(result, short, "mm")]).toEqual(['#N/A rise: 1" is under 4', "#N/A rise: 25.4 mm is under 4"]);
    expect(answered(result, failed("rise: is so", "#NUM!"))).toBe("#NUM! rise: is so");
    for (const number of [NaN, Infinity, -Infinity, new Exact(Infinity)])
      expect(answered(result, number)).toBe("#VALUE! MADEUP: the numbers given lead to no finite answer");
    expect(() => answered(result, problem("unworded"))).toThrow('MADEUP does not word the problem "unworded"');
  });

  test("a text is as long as a cell holds, 32,767 characters (Excel specifications and limits), or ends in dots", () => {
    const most = "y".repeat(32_767);
    expect(answered({ kind: "text", says }, most)).toBe(most);
    expect(answered({ kind: "text", says }, `${most}y`)).toBe(`${"y".repeat(32_766)}…`);
  });
});

describe("rows of a table", () => {
  const columns = {
    step: { kind: "label", says }, cutLength: { kind: "length", says }, count: { kind: "count", says }, remark: { kind: "text", says },
    note: { kind: "text", says },
  } as const;
  const table = { kind: "table", says, columns } as const;

  test("stand under headings in words, unless those are not wanted", () => {
    const rows = [{ step: 1, cutLength: inch(7.5), count: 2, remark: "oak" }];
    expect(answered(table, rows)).toEqual([["step", "cut length", "count", "remark", "note"], [1, 7.5, 2, "oak", ""]]);
    expect(answered(table, rows, "mm", false)).toEqual([[1, 190.5, 2, "oak", ""]]);
    expect(answered(table, [])).toEqual([["step", "cut length", "count", "remark", "note"]]);
  });

  test("a bad one shows its error where numbers would be, its sentence in the note, and what is known of it", () => {
    const bad = failed("back in step 1: is empty", "#DIV/0!");
    expect(answered(table, [{ step: 1, bad }], "in", false)).toEqual([
      [1, "#DIV/0! back in step 1: is empty", "#DIV/0! back in step 1: is empty", "", "back in step 1: is empty"],
    ]);
    expect(answered(table, [{ step: 1, count: 3, note: "mine", bad: problem("none") }], "in", false)).toEqual([
      [1, "#VALUE! rise: is missing", 3, "", "mine"],
    ]);
    expect(answered(table, [{ bad: problem("none") }], "in", false)).toEqual([
      ["", "#VALUE! rise: is missing", "#VALUE! rise: is missing", "", "rise: is missing"],
    ]);
    // One cell alone may be a fault.
    expect(answered(table, [{ step: 1, cutLength: problem("none"), count: failed("x: y") }], "in", false)).toEqual([
      [1, "#VALUE! rise: is missing", "#VALUE! x: y", "", ""],
    ]);
  });

  test("a value has its unit beside it: of a length that of the call, degrees of an angle, none of another", () => {
    const values = { kind: "table", says, columns: { value: { kind: "value", says }, unit: { kind: "text", says } } } as const;
    const rows = [
      { value: { kind: "length", value: inch(1) } }, { value: { kind: "reading", value: 2 } }, { value: { kind: "angle", value: 35 } },
      { value: { kind: "count", value: 3 } }, { value: "not given" }, { value: 5, unit: "ft" }, {},
    ];
    expect(answered(values, rows, "in", false)).toEqual([
      [1, "in"], [2, "in"], [35, "deg"], [3, ""], ["not given", ""], [5, "ft"], ["", ""],
    ]);
    expect(answered(values, rows.slice(0, 3), "mm", false)).toEqual([[25.4, "mm"], [2, "mm"], [35, "deg"]]);
  });

  test("a column of units says that of the call in every row, bad ones too", () => {
    const units = { kind: "table", says, columns: { count: { kind: "count", says }, unit: { kind: "unit", says } } } as const;
    expect(answered(units, [{ count: 1 }, { bad: problem("none") }], "mm", false)).toEqual([[1, "mm"], ["#VALUE! rise: is missing", "mm"]]);
    expect(answered(units, [{ count: 1 }], undefined, false)).toEqual([[1, "in"]]);
  });

  test("a table that is none is one sentence", () => expect(answered(table, problem("none"))).toBe("#VALUE! rise: is missing"));
});

test("a row leaves off what it may lack and has not, and nothing else", () => {
  const row = {
    kind: "row", says,
    columns: { limit: { kind: "length", says }, clause: { kind: "text", says }, note: { kind: "text", says, mayLack: true } },
  } as const;
  expect(answered(row, { limit: inch(1), clause: "R311", note: "older" })).toEqual([[1, "R311", "older"]]);
  expect(answered(row, { limit: inch(1), clause: "R311" })).toEqual([[1, "R311"]]);
  expect(answered(row, { limit: inch(1) })).toEqual([[1, ""]]);
  expect(answered(row, { limit: inch(1), clause: "", note: "" })).toEqual([[1, "", ""]]);
});
