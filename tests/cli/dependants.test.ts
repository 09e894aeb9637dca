import { calledIn } from "../../src/cli/calling";
import { dependants } from "../../src/cli/dependants";

const one = (sheet: string, address: string, formula: string, rows = 1, columns = 1) => ({ sheet, address, formula, rows, columns });

test("what rests on a cell is found straight, by ranges, by blocks that spilled, by other sheets and by one another", () => {
  const formulas = [
    one("Bid", "B1", "=A1*2"), one("Bid", "B2", "=SUM($A$1:A3)"), one("Bid", "C1", "=B1#*2", 3), one("Bid", "D1", "=C3"),
    one("Cut plan", "A1", "=Bid!D1"), one("Books", "A1", "='Cut plan'!A1&\"\""), one("Books", "B1", '="A1 of Bid!A1"'),
    one("Bid", "E1", "=A4+A10"), one("Bid", "F1", "=A1A()"),
  ];
  expect(dependants([{ sheet: "Bid", address: "A1" }], formulas).map(({ sheet, address }) => `${sheet}!${address}`).sort()).toEqual([
    "Bid!B1", "Bid!B2", "Bid!C1", "Bid!D1", "Books!A1", "Cut plan!A1",
  ]);
  expect(dependants([], formulas)).toEqual([]);
});

test("formulas that rest on one another end", () => {
  const formulas = [one("S", "A1", "=B1"), one("S", "B1", "=A1+C1")];
  expect(dependants([{ sheet: "S", address: "C1" }], formulas)).toHaveLength(2);
});

test("calls are found outside texts and names of sheets", () => {
  expect(calledIn("=IF(a1>1,\"TODAY()\",'NOW()'!A1+stair.PITCH(7,11)+_xlfn.LET(x,1,x))")).toEqual(["IF", "STAIR.PITCH", "_XLFN.LET"]);
});
