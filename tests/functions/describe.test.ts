import { catalogue } from "../../src/functions/catalogue";
import type { Column } from "../../src/functions/columns";
import type { Declaration, Parameter } from "../../src/functions/declare";
import {
  columnKindText, defaultSaid, defaultText, isMatrix, isOmissible, kindText, labelsRead, resultHeadings, signature, spills, tablesOf,
} from "../../src/functions/describe";
import { argumentsOf, formula, typed } from "../../src/functions/formula";
import { stair, treadReadings } from "../../src/functions/tables";

/** What help, reference and formulas say of arguments. How a value is typed into a formula: the platform's documentation of formulas. */

const declared = (id: string): Declaration => {
  const found = catalogue.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

const says = "What it is.";

describe("a default as it is typed, and as it is said", () => {
  test.each<[string, Parameter, string, string]>([
    // 7 3/4 x 25.4 = 196.85, 1/8 x 25.4 = 3.175.
    ["a length in inches", { kind: "length", sign: "positive", default: 7.75, says }, '7.75"', "7 3/4 in (196.85 mm)"],
    ["a length in words", { kind: "length", sign: "positive", default: "1/8", says }, '1/8"', "1/8 in (3.175 mm)"],
    ["a reading", { kind: "reading", sign: "positive", default: 1, says }, '1"', "1 in (25.4 mm)"],
    ["a length of 0", { kind: "length", sign: "not negative", default: 0, says }, "0", "0"],
    ["a count", { kind: "count", sign: "positive", default: 2, says }, "2", "2"],
    ["a choice", { kind: "choice", options: ["16", "32"], default: "16", says }, '"16"', '"16"'],
    ["the unit", { kind: "unit", default: "in", says }, '"in"', '"in"'],
    ["yes", { kind: "flag", default: true, says }, "TRUE", "TRUE"],
    ["no", { kind: "flag", default: false, says }, "FALSE", "FALSE"],
    ["a text of nothing", { kind: "text", default: "", says }, "", ""],
    ["a text", { kind: "text", default: "value", says }, "value", "value"],
    ["another argument", { kind: "length", sign: "positive", defaultsTo: "front", says }, "front", "front"],
    ["none", { kind: "length", sign: "positive", optional: true, says }, "", ""],
  ])("%s", (_, parameter, text, said) => {
    expect([defaultText(parameter), defaultSaid(parameter), isOmissible(parameter)]).toEqual([text, said, true]);
  });

  test("an argument that has neither must be given", () =>
    expect([isOmissible({ kind: "length", sign: "positive", says }), isOmissible({ kind: "text", says })]).toEqual([false, false]));
});

test("a signature has what may be left out in brackets, with what stands in", () => {
  const parameters = {
    front: { kind: "length", sign: "positive", says },
    back: { kind: "length", sign: "positive", defaultsTo: "front", says },
    kerf: { kind: "length", sign: "positive", default: "1/8", says },
    note: { kind: "text", default: "", says },
    keep: { kind: "length", sign: "positive", optional: true, says },
  } as const;
  expect(signature({ ...declared("RISERS"), parameters })).toBe('RISERS(front, [back = front], [kerf = 1/8"], [note], [keep])');
});

describe("what an argument takes, in words", () => {
  test.each<[Parameter, string]>([
    [{ kind: "stair", says }, "stair table"],
    [{ kind: "table", table: treadReadings, badRows: "refuse", says }, "table, up to 20,000 rows"],
    [{ kind: "table", table: treadReadings, badRows: "refuse", rows: 2_000, says }, "table, up to 2,000 rows"],
    [{ kind: "lengths", sign: "positive", badCells: "refuse", says }, "column of lengths, up to 20,000 rows"],
    [{ kind: "numbers", sign: "any", says }, "range of numbers, up to 20,000 rows"],
    [{ kind: "cells", says }, "table, up to 200,000 rows"],
    [{ kind: "length", sign: "positive", says }, "length"],
    [{ kind: "length", sign: "positive", each: true, says }, "length, or a range of up to 20,000"],
    [{ kind: "length", sign: "positive", words: { none: 0, any: 1 }, says }, "length, or none, any"],
    [{ kind: "length", sign: "positive", crossed: true, says }, "length, or length x width"],
    [{ kind: "count", sign: "positive", says }, "whole number"],
    [{ kind: "rate", of: "the cost", each: true, says }, "rate of the cost"],
    [{ kind: "choice", options: ["rip", "crosscut"], says }, "one of rip, crosscut"],
    [{ kind: "choice", options: ["rip", "crosscut"], each: true, says }, "one of rip, crosscut, or a range of up to 20,000"],
    [{ kind: "unit", says }, "in or mm"],
  ])("%j", (parameter, text) => expect(kindText(parameter)).toBe(text));

  test.each<[Column, string]>([
    [{ kind: "choice", options: ["left", "right"], says }, "one of left, right"],
    [{ kind: "flag", says }, "yes or no"],
    [{ kind: "reading", sign: "any", words: { square: 0 }, says }, "length, or square"],
    [{ kind: "count", sign: "any", words: { notTaken: 0, none: 0 }, says }, "whole number, or not taken, none"],
  ])("a column: %j", (column, text) => expect(columnKindText(column)).toBe(text));
});

test("tables, labels and headings of a function, and whether it is and answers a rectangle", () => {
  expect(tablesOf(declared("TREADFIT"))[0]).toBe(treadReadings);
  expect([tablesOf(declared("LAYOUT")), tablesOf(declared("RISERS"))]).toEqual([[stair], []]);
  expect(labelsRead(declared("LAYOUT"))).toEqual(expect.arrayContaining(["total rise", "run"]));
  expect(labelsRead(declared("RISERS"))).toEqual([]);
  expect(resultHeadings(declared("UNIFORMITY"))).toEqual(["label", "value", "where"]);
  expect([resultHeadings(declared("LIMIT")), resultHeadings(declared("RISERS"))]).toEqual([["limit", "note"], []]);
  const { parameters } = declared("RISERS");
  expect([parameters["totalRise"], parameters["maxRise"]].map((one) => one !== undefined && isMatrix(one))).toEqual([true, false]);
  expect(isMatrix({ kind: "cells", says })).toBe(true);
  // A table, a row, a column and a function of a range give several cells; TOTAL gives one.
  expect(["UNIFORMITY", "LIMIT", "FINISHED", "ALLOCATE", "RISERS", "TOTAL"].map((id) => spills(declared(id)))).toEqual([
    true, true, true, true, true, false,
  ]);
});

describe("a call as it is typed", () => {
  test("texts in quotes, quotes in them twice, TRUE and FALSE, and nothing where an argument is left out", () => {
    expect(['7 5/8"', 7.5, true, false, null].map((value) => typed(value))).toEqual(['"7 5/8"""', "7.5", "TRUE", "FALSE", ""]);
    expect(formula(declared("RISERS"), { totalRise: 2781, unit: "mm" })).toBe('=STAIR.RISERS(2781,,"mm")');
    expect(formula(declared("RISERS"), { totalRise: 108.5, unit: undefined })).toBe("=STAIR.RISERS(108.5)");
    expect(argumentsOf(declared("RISERS"), {})).toEqual([]);
  });

  test("a range is an array constant: commas along a row, semicolons between rows, an empty text for an empty cell", () =>
    expect(typed([["a", 1, true], [null, -2.5, "b"]])).toBe('{"a",1,TRUE;"",-2.5,"b"}'));
});
