import { calledIn } from "../../src/cli/calling";
import { dependants, readers } from "../../src/cli/dependants";

const one = (sheet: string, address: string, formula: string, rows = 1, columns = 1) => ({ sheet, address, formula, rows, columns });

test("what rests on a cell is found straight, by ranges, by blocks that spilled, by other sheets and by one another", () => {
  const formulas = [
    one("Bid", "B1", "=A1*2"), one("Bid", "B2", "=SUM($A$1:A3)"), one("Bid", "C1", "=B1#*2", 3), one("Bid", "D1", "=C3"),
    one("Cut plan", "A1", "=Bid!D1"), one("Books", "A1", "='Cut plan'!A1&\"\""), one("Books", "B1", '="A1 of Bid!A1"'),
    one("Bid", "E1", "=A4+A10"), one("Bid", "F1", "=A1A()"),
  ];
  expect(dependants([one("Bid", "A1", "")], formulas).map(({ sheet, address }) => `${sheet}!${address}`).sort()).toEqual([
    "Bid!B1", "Bid!B2", "Bid!C1", "Bid!D1", "Books!A1", "Cut plan!A1",
  ]);
  expect(dependants([], formulas)).toEqual([]);
});

test("formulas that rest on one another end", () => {
  const formulas = [one("S", "A1", "=B1"), one("S", "B1", "=A1+C1")];
  expect(dependants([one("S", "C1", "")], formulas)).toHaveLength(2);
});

test("calls are found outside texts and names of sheets", () => {
  expect(calledIn("=IF(a1>1,\"TODAY()\",'NOW()'!A1+stair.PITCH(7,11)+_xlfn.LET(x,1,x))")).toEqual(["IF", "STAIR.PITCH", "_XLFN.LET"]);
});

test("names that LET and LAMBDA give are no functions", () => {
  expect(calledIn("=LET(f,LAMBDA(x,x+1),f(2))+SUM(A1)")).toEqual(["LET", "LAMBDA", "SUM"]);
});

test("whole columns and rows, blocks of other blocks, and a sheet said twice are read", () => {
  const formulas = [
    one("S", "D1", "=SUM(A:B)"), one("S", "D2", "=SUM($1:3)"), one("S", "D3", "=SUM(b:b)"), one("T", "A1", "=SUM('S'!A1:S!A9)"),
    one("S", "D4", "=SUM(4:5)"), one("S", "D5", "=A+1:1"), one("T", "A2", "=SUM(A:A)"), one("S", "E1", "=SUM(A1:INDEX(C1:C9,2))"),
  ];
  const straight = (address: string, rows = 1) => [...readers([one("S", address, "", rows)], formulas)].sort();
  expect(straight("A1")).toEqual(["S!D1", "S!D2", "S!D5", "S!E1", "T!A1"]);
  expect(straight("B9")).toEqual(["S!D1", "S!D3"]);
  expect(straight("C3", 2)).toEqual(["S!D2", "S!D4", "S!E1"]);
  // D4 has D5 in its rows, and T!A2 has T!A1 in its column.
  expect(dependants([one("S", "A1", "")], formulas).map(({ sheet, address }) => `${sheet}!${address}`)).toEqual([
    "S!D1", "S!D2", "T!A1", "S!D4", "S!D5", "T!A2", "S!E1",
  ]);
});

test("a long chain, and thousands of formulas that read each other's sums, are followed once", () => {
  const rows = Array.from({ length: 20_000 }, (_, at) => at + 1);
  const chain = rows.map((row) => one("S", `A${row + 1}`, `=A${row}+1`));
  const sums = rows.map((row) => one("S", `B${row}`, `=SUM(A$1:A${row})`));
  // Every cell below the first, and every sum, of which each has the first in it.
  expect(dependants([one("S", "A1", "")], [...chain, ...sums])).toHaveLength(40_000);
});
