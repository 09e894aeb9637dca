import { fileFormula } from "../../src/workbook-file/formula/file-formula";
import { type BookNames, namesInPlace } from "../../src/workbook-file/formula/names-in-place";
import { sheetFormula } from "../../src/workbook-file/formula/sheet-formula";
import { shiftedFormula } from "../../src/workbook-file/formula/shifted-formula";
import { tableOf } from "../../src/workbook-file/formula/table-cells";

// ECMA-376-1, 18.3.1.40: a shared formula stands in its other cells with the references that are not fixed by $ moved along; by hand.
test.each([
  ["A1+1", 2, 3, "D3+1"],
  ["$A1+A$1+$A$1", 2, 3, "$A3+D$1+$A$1"],
  ["SUM(A1:B2)", 1, 0, "SUM(A2:B3)"],
  ["Bid!A1+'Cut plan'!B2", 1, 1, "Bid!B2+'Cut plan'!C3"],
  ["SUM(Jan:Dec!A1)", 1, 1, "SUM(Jan:Dec!B2)"],
  ["SUM(Q1:Q4!A1)", 1, 1, "SUM(Q1:Q4!B2)"],
  ["SUM(A:C)+SUM($A:C)", 5, 1, "SUM(B:D)+SUM($A:D)"],
  ["SUM(1:3)+SUM($1:3)", 2, 9, "SUM(3:5)+SUM($1:5)"],
  ["SUM(Bid!A:B)", 0, 1, "SUM(Bid!B:C)"],
  ['"A1"&A1', 1, 0, '"A1"&A2'],
  ["'A1'!A1", 1, 0, "'A1'!A2"],
  ["LOG10(A1)", 1, 0, "LOG10(A2)"],
  ["Rate*A1", 1, 0, "Rate*A2"],
  ["_xlfn.ANCHORARRAY(A1)", 1, 1, "_xlfn.ANCHORARRAY(B2)"],
  ["Z1", 0, 1, "AA1"],
  ["AA1", 0, -1, "Z1"],
  // What would lie off the sheet is no place.
  ["A1", -1, 0, "#REF!"],
  ["A1", 0, -1, "#REF!"],
  ["XFD1048576", 1, 0, "#REF!"],
  ["A1+A2", -1, 0, "#REF!+A1"],
  ["1.5+A1+1E+5", 1, 0, "1.5+A2+1E+5"],
  ["{1,2;3,4}*A1", 1, 0, "{1,2;3,4}*A2"],
])("%s is %i rows and %i columns further %s", (formula, rows, columns, moved) => {
  expect(shiftedFormula(formula, rows, columns)).toBe(moved);
});

const PARTS = tableOf("Parts", "Parts", "B2:D6", ["Part", "Price ($)", "Left [in]"], 1, 1);

const BOOK: BookNames = {
  names: [
    { name: "Rate", refers: "Bid!$B$2" },
    { name: "Rate", refers: "Books!$C$9", sheet: "Books" },
    { name: "Twice", refers: "Rate*2" },
    { name: "Above", refers: "A1" },
    { name: "Round", refers: "Round+1" },
    { name: "Waste", refers: "0.1" },
  ],
  tables: [PARTS],
};

const inSheet = (formula: string, sheet = "Bid", row = 3, column = 0) => sheetFormula(formula, namesInPlace(BOOK)({ sheet, row, column }));

describe("a formula of a file in a live sheet:", () => {
  test.each([
    // Names of functions as files keep them: the file that the platform saved for a bound custom function, and [MS-XLSX] 2.2.2.
    ["_xldudf_STAIR_RISERS(109.5)", "STAIR.RISERS(109.5)"],
    ["[2]!_xldudf_STAIR_RISERS(A1)", "STAIR.RISERS(A1)"],
    ["[2]!STAIR.RISERS(A1)", "STAIR.RISERS(A1)"],
    ["STAIR.RISERS(A1)", "STAIR.RISERS(A1)"],
    ["_xldudf_CONTOSO_ADD(1,2)", "CONTOSO.ADD(1,2)"],
    ["_xlfn.XLOOKUP(A1,B1:B3,C1:C3)", "XLOOKUP(A1,B1:B3,C1:C3)"],
    ["_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,A1:A9>1))", "SORT(FILTER(A1:A9,A1:A9>1))"],
    ["_xlfn.LET(_xlpm.x,A1,_xlpm.x*2)", "LET(x,A1,x*2)"],
    ["_xlfn.LAMBDA(_xlpm.a,_xlpm.a+1)(2)", "LAMBDA(a,a+1)(2)"],
    ["SUM(_xlfn.ANCHORARRAY(A1))", "SUM(A1#)"],
    ["_xlfn.ANCHORARRAY('Cut plan'!$Q$8)", "'Cut plan'!$Q$8#"],
    ["_xlfn.SINGLE(A1:A9)", "@A1:A9"],
    ["_xlfn.SINGLE(INDEX(A1:A9,2))+1", "@INDEX(A1:A9,2)+1"],
    ["_xlfn.SINGLE(A1+A2)", "@(A1+A2)"],
    ["SUM(_xlfn.SINGLE(_xlfn.ANCHORARRAY(A1)))", "SUM(@A1#)"],
    ['"_xlfn.A"&A1', '"_xlfn.A"&A1'],
    ["'It''s'!A1", "'It''s'!A1"],
    // Names and tables stand for cells (ECMA-376-1, 18.2.5 and 18.17.2.4); Parts is B2:D6 with a row of headings and one of totals.
    ["Rate*1.5", "Bid!$B$2*1.5"],
    ["Twice+1", "(Bid!$B$2*2)+1"],
    ["Books!Rate", "Books!$C$9"],
    ["[0]!Waste", "0.1"],
    ["SUM(Parts[Price ($)])", "SUM(Parts!$C$3:$C$5)"],
    ["SUM(Parts[[#Totals],[Price ($)]])", "SUM(Parts!$C$6)"],
    ["Parts[[#This Row],[Part]]", "Parts!$B$4"],
    ["SUM(Parts[[#Headers],[#Data],[Part]:[Price ($)]])", "SUM(Parts!$B$2:$C$5)"],
    ["SUM(Parts[Left '[in']])", "SUM(Parts!$D$3:$D$5)"],
    ["ROWS(Parts[])", "ROWS(Parts!$B$3:$D$5)"],
    ["ROWS(Parts[#All])", "ROWS(Parts!$B$2:$D$6)"],
  ])("%s is %s", (file, sheet) => {
    expect(inSheet(file)).toBe(sheet);
  });

  test("a name counts on its sheet before one of the whole workbook", () => {
    expect(inSheet("Rate", "Books")).toBe("Books!$C$9");
  });

  test("a name that is not fixed by $ moves with the cell it is asked in: written for A1, asked in C4", () => {
    expect(inSheet("Above", "Bid", 3, 2)).toBe("C4");
  });

  test.each([
    ["[1]Prices!A1", "reads another workbook"],
    ["SUM('[1]Prices 2026'!A1:A9)", "reads another workbook"],
    ["SUM([Prices.xlsx]Oak!A1)", "reads another workbook"],
    ["SUM(Parts[Weight])", "asks a table for cells it does not have"],
    ["SUM(Rods[Weight])", "asks a table for cells it does not have"],
  ])("%s cannot stand there: it %s", (file, unshown) => {
    expect(inSheet(file)).toEqual({ unshown });
  });

  test("a row outside of a table has no cell of it", () => {
    expect(inSheet("Parts[[#This Row],[Part]]", "Parts", 40)).toEqual({ unshown: "asks a table for cells it does not have" });
  });

  test("names that go round in a circle come to an end", () => {
    expect(inSheet("Round")).toEqual({ unshown: "has names that stand for one another too often" });
  });

  test("names that double each other come to an end", () => {
    const names = Array.from({ length: 60 }, (_, at) => ({ name: `n_${at}`, refers: `n_${at + 1}+n_${at + 1}` }));
    const text = sheetFormula("n_0", namesInPlace({ names, tables: [] })({ sheet: "Bid", row: 0, column: 0 }));
    expect(text).toEqual({ unshown: "has names that stand for one another too often" });
  });
});

describe("a formula of a live sheet in a file:", () => {
  test.each([
    ["=STAIR.RISERS(109.5)", "_xldudf_STAIR_RISERS(109.5)", true],
    ["=stair.risers(A1)", "_xldudf_STAIR_RISERS(A1)", true],
    ["=A1+B2*2", "A1+B2*2", false],
    ['=HYPERLINK("#Bid!A1","Bid ›")', 'HYPERLINK("#Bid!A1","Bid ›")', false],
    ["=SUM(A1:A9)", "SUM(A1:A9)", true],
    ["=SUM(A1#)", "SUM(_xlfn.ANCHORARRAY(A1))", true],
    ["='Cut plan'!$Q$8#", "_xlfn.ANCHORARRAY('Cut plan'!$Q$8)", true],
    ["=@A1:A9", "_xlfn.SINGLE(A1:A9)", true],
    ["=@INDEX(A1:A9,2)+1", "_xlfn.SINGLE(INDEX(A1:A9,2))+1", true],
    ["=@A1#", "_xlfn.SINGLE(_xlfn.ANCHORARRAY(A1))", true],
    ["=LET(x,A1,y,x*2,x+y)", "_xlfn.LET(_xlpm.x,A1,_xlpm.y,_xlpm.x*2,_xlpm.x+_xlpm.y)", true],
    ["=MAP(A1:A3,LAMBDA(v,v+1))", "_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.v,_xlpm.v+1))", true],
    ["=LET(f,LAMBDA(a,a*2),f(3))", "_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.a,_xlpm.a*2),_xlpm.f(3))", true],
    ["=SORT(FILTER(A1:A9,A1:A9>1))", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,A1:A9>1))", true],
    ['=IF(A1="SORT(x","A1#",2)', 'IF(A1="SORT(x","A1#",2)', false],
    ["={1,2;3,4}", "{1,2;3,4}", true],
    // [MS-XLSX] 2.2.2, future-function-list: those of the web have the prefix, and some of the later ones have none.
    ["=ENCODEURL(A1)", "_xlfn.ENCODEURL(A1)", true],
    ["=FILTERXML(WEBSERVICE(A1),B1)", "_xlfn.FILTERXML(_xlfn.WEBSERVICE(A1),B1)", true],
    ["=NETWORKDAYS.INTL(A1,B1)+ISO.CEILING(C1)", "NETWORKDAYS.INTL(A1,B1)+ISO.CEILING(C1)", false],
  ])("%s is %s", (sheet, formula, isArray) => {
    expect(fileFormula(sheet)).toMatchObject({ formula, isArray });
  });

  test("and back again it is what it was", () => {
    const nothing = namesInPlace({ names: [], tables: [] })({ sheet: "Bid", row: 0, column: 0 });
    for (const formula of [
      "=STAIR.PICK(D1#,\"unit rise\")", "=LET(b,FILTER(Check!A8#,LEFT(CHOOSECOLS(Check!A8#,1))=\"✗\"),CHOOSECOLS(b,2))", "=@A1:A9*2",
      "=SUM('It''s'!A1:B2)", "=IFERROR(A1/0,\"–\")", "=-A1%", "=(A1,B1)",
    ])
      expect(`=${String(sheetFormula(fileFormula(formula).formula, nothing))}`).toBe(formula);
  });

  test("functions of the add-in are counted once each, as the file names them", () => {
    expect(fileFormula("=STAIR.TAPE(STAIR.RISERS(STAIR.RISERS(1)))").added).toEqual(["_xldudf_STAIR_TAPE", "_xldudf_STAIR_RISERS"]);
  });
});
