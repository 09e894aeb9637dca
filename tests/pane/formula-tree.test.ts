import { type FormulaTree, formulaTree } from "../../src/pane/formula/formula-tree";
import { isKnown, workedOut } from "../../src/pane/formula/worked-out";

const noSolve = (): unknown => {
  throw new Error("no function is called here");
};

const answer = (formula: string): unknown => {
  const tree = formulaTree(formula);
  if (tree === undefined) return "unread";
  const worked = workedOut(tree, () => undefined, noSolve);
  return isKnown(worked) ? worked[0]?.[0] : worked.notKnown;
};

// Microsoft, calculation operators and precedence in Excel: percent before power, power before times, times before plus, plus before &; a
// leading minus before all of them.
test.each([
  ["=1+2*3", 7],
  ["=(1+2)*3", 9],
  ["=-2^2", 4],
  ["=2^3^2", 64],
  ["=50%*2", 1],
  ["=10-4-3", 3],
  ['="a"&1+2', "a3"],
  ['="he said ""no"""', 'he said "no"'],
  ["= 7 + 1 ", 8],
  ["=1.5E2", 150],
  ["=TRUE", true],
])("%s is worked out by the rules of a spreadsheet", (formula, value) => {
  expect(answer(formula)).toBe(value);
});

const cells = (formula: string): readonly unknown[] => {
  const tree = formulaTree(formula);
  return tree?.kind === "cells" ? [tree.sheet, tree.from.row, tree.from.column, tree.to.row, tree.to.column, tree.isSpill] : [tree?.kind];
};

test.each([
  ["=B7", [undefined, 6, 1, 6, 1, false]],
  ["=$B$7:D9", [undefined, 6, 1, 8, 3, false]],
  ["=D9:B7", [undefined, 6, 1, 8, 3, false]],
  ["=A1#", [undefined, 0, 0, 0, 0, true]],
  ["=Layout!D4#", ["Layout", 3, 3, 3, 3, true]],
  ["='Cut plan'!J22", ["Cut plan", 21, 9, 21, 9, false]],
  ["='Bob''s'!A1", ["Bob's", 0, 0, 0, 0, false]],
  // Names, whole columns, tables and other workbooks are the spreadsheet's to know.
  ["=rise", ["other"]],
  ["=A:A", ["other"]],
  ["=Table1[Length]", ["other"]],
  ["=[Book2.xlsx]Sheet1!A1", ["other"]],
])("%s names its cells", (formula, found) => {
  expect(cells(formula)).toEqual(found);
});

test("arguments left out keep their places", () => {
  const tree = formulaTree("=STAIR.STORYPOLE(31,4,,,,FALSE)");
  expect(
    tree?.kind === "call"
      ? tree.arguments.map((argument) => (argument === undefined ? undefined : (argument as Extract<FormulaTree, { kind: "value" }>).value))
      : [],
  ).toEqual([31, 4, undefined, undefined, undefined, false]);
});

test.each(["7", "=", "=1+", "=STAIR.TAPE(1", '="open', "={1,2"])("%s is not read", (formula) => {
  expect(formulaTree(formula)).toBeUndefined();
});

test("what only the sheet works out is named by its own text", () => {
  expect(answer("=1+SUM(A1:A4, 2)*2")).toBe("SUM(A1:A4, 2)");
  expect(answer("=1/0")).toEqual({ code: "#DIV/0!", message: "" });
});
