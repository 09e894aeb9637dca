import { type Given, givenCell, givenCells, givenFor, isEmpty, isEmptyOrZero, isFailed, isInvocation } from "../../src/functions/cells";

/**
 * What a host may hand over as a cell. The platform's documentation of custom functions and of CellValue: plain values; an entity or a
 * formatted number has `type` and `basicValue`; an error has its code; a function that is called gets an invocation object last.
 */

const HOLDS = "the cell given holds";

describe("a cell is text, number, true or false, an error, or nothing", () => {
  test.each<[unknown, Given]>([
    [undefined, null], [null, null], ["", ""], ["7 5/8", "7 5/8"], [0, 0], [-7.5, -7.5], [true, true], [false, false],
    [{ type: "FormattedNumber", basicType: "Double", basicValue: 108.5, numberFormat: "0.0" }, 108.5],
    [{ type: "String", basicValue: "7 5/8" }, "7 5/8"],
    [{ type: "Boolean", basicValue: false }, false],
    [{ type: "Empty", basicValue: null }, null],
    // A value inside of a value.
    [{ type: "WebImage", basicValue: { type: "Double", basicValue: 3 } }, 3],
  ])("%j", (raw, cell) => expect(givenCell(raw)).toEqual(cell));

  test.each<[unknown, string, string]>([
    [NaN, "#VALUE!", `${HOLDS} no number`],
    [Infinity, "#VALUE!", `${HOLDS} no number`],
    [{}, "#VALUE!", `${HOLDS} something that is neither text nor number`],
    [Symbol("x"), "#VALUE!", `${HOLDS} something that is neither text nor number`],
    [[1], "#VALUE!", `${HOLDS} something that is neither text nor number`],
    [{ code: 7 }, "#VALUE!", `${HOLDS} something that is neither text nor number`],
    [{ code: "N/A" }, "#VALUE!", `${HOLDS} something that is neither text nor number`],
    [{ code: "#N/A" }, "#N/A", `${HOLDS} #N/A`],
    [{ code: "#N/A", message: "run: is missing" }, "#N/A", "run: is missing"],
    [{ code: "#N/A", message: 7 }, "#N/A", `${HOLDS} #N/A`],
    [{ errorCode: "#NUM!" }, "#NUM!", `${HOLDS} #NUM!`],
    [{ type: "Error", basicValue: "#DIV/0!" }, "#DIV/0!", `${HOLDS} #DIV/0!`],
    [{ type: "Entity", text: "stair", basicType: "Error", basicValue: "#VALUE!" }, "#VALUE!", `${HOLDS} #VALUE!`],
    [{ failed: "#NULL!", says: "run: is missing" }, "#NULL!", "run: is missing"],
  ])("%p is an error", (raw, code, says) => {
    const cell = givenCell(raw);
    expect(isFailed(cell) && [cell.failed, cell.says, cell.held]).toEqual([code, says, undefined]);
  });

  test.each(["#REF!", "#NAME?", "#SPILL!", "#CALC!", "#BUSY!"])("%s, which no function may answer, is kept beside", (code) =>
    expect(givenCell({ code, message: "of the host" })).toEqual({ failed: "#VALUE!", says: `${HOLDS} ${code}`, held: code }));
});

test("an argument is a rectangle: one value, a row, a column, short rows filled up, and nothing", () => {
  expect(givenCells(7)).toEqual([[7]]);
  expect(givenCells(null)).toEqual([[null]]);
  expect(givenCells([])).toEqual([[null]]);
  expect(givenCells([1, "b"])).toEqual([[1], ["b"]]);
  expect(givenCells([[1, 2], [3, 4]])).toEqual([[1, 2], [3, 4]]);
  expect(givenCells([[1], [2, 3, 4], []])).toEqual([[1, null, null], [2, 3, 4], [null, null, null]]);
  expect(givenCells([[], []])).toEqual([[null], [null]]);
});

test("the host's own object is told from every cell", () => {
  expect([{ functionName: "RISERS", address: "Sheet1!B2" }, {}, { code: 7 }].map(isInvocation)).toEqual([true, true, true]);
  const cells = [
    null, undefined, 7, "text", true, [[1]], [], { type: "Double" }, { basicValue: 1 }, { code: "#N/A" }, { errorCode: "#REF!" },
    { failed: "#N/A", says: "run: is missing" },
  ];
  expect(cells.filter(isInvocation)).toEqual([]);
});

test("blanks are nothing; a 0 is nothing in a range alone, and no word, FALSE or error is", () => {
  const cells: readonly Given[] = [null, "", "  ", 0, -0, "0", 1, false, true, "x", { failed: "#N/A", says: "x" }];
  expect(cells.filter(isEmpty)).toEqual([null, "", "  "]);
  expect(cells.filter(isEmptyOrZero)).toEqual([null, "", "  ", 0, -0]);
});

test("an error keeps a sentence of its own, and gets the argument's name where it has none", () => {
  expect(givenFor("run", { failed: "#N/A", says: "rise: is missing" })).toEqual({ failed: "#N/A", says: "rise: is missing" });
  expect(givenFor("run", { failed: "#NUM!", says: `${HOLDS} #NUM!` })).toEqual({ failed: "#NUM!", says: `run: ${HOLDS} #NUM!` });
});
