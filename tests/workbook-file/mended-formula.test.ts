import fc from "fast-check";
import { fileFormula } from "../../src/workbook-file/formula/file-formula";
import { type KnownWords, mendedFormula } from "../../src/workbook-file/formula/mended-formula";
import { namesInPlace } from "../../src/workbook-file/formula/names-in-place";
import { sheetFormula } from "../../src/workbook-file/formula/sheet-formula";
import { type SpillFreeing, spillFreeFormula } from "../../src/workbook-file/formula/spill-free-formula";

const KNOWN: KnownWords = {
  isOurs: (name) => ["STAIR.RISERS", "STAIR.LAYOUT", "STAIR.PICK"].includes(name), defined: new Set(["take", "rate"]), hasMacros: false,
};

const mended = (formula: string, known = KNOWN, isRule = false) => mendedFormula(formula, known, isRule);

/**
 * Forms by hand. Names of functions of an add-in as in as-excel-saves.ts, which names its sources; prefixes by [MS-XLSX] 2.2.2,
 * future-function-list, `_xlws.` and `_xlpm.` as XlsxWriter's documentation has them ("Working with Formulas": formulas added in Excel 2010
 * and later, the LAMBDA function).
 */
const BROKEN: readonly (readonly [file: string, mended: string])[] = [
  ["STAIR.RISERS(B2)", "_xldudf_STAIR_RISERS(B2)"],
  ["stair.Risers(B2)+1", "_xldudf_STAIR_RISERS(B2)+1"],
  ["[2]!_xldudf_STAIR_RISERS(B2)", "_xldudf_STAIR_RISERS(B2)"],
  ["[2]!STAIR.RISERS(B2)", "_xldudf_STAIR_RISERS(B2)"],
  ["1+[12]!_xldudf_CONTOSO_ADD(1,2)", "1+_xldudf_CONTOSO_ADD(1,2)"],
  ["_xldudf_stair_risers(B2)", "_xldudf_STAIR_RISERS(B2)"],
  ["STAIR.PICK(STAIR.LAYOUT(A1:B3),\"unit rise\")", "_xldudf_STAIR_PICK(_xldudf_STAIR_LAYOUT(A1:B3),\"unit rise\")"],
  ["FILTER(A1:A9,A1:A9>1)", "_xlfn._xlws.FILTER(A1:A9,A1:A9>1)"],
  ["_xlfn.FILTER(A1:A9,A1:A9>1)", "_xlfn._xlws.FILTER(A1:A9,A1:A9>1)"],
  ["_xlws.SORT(A1:A9)", "_xlfn._xlws.SORT(A1:A9)"],
  ["XLOOKUP(A1,B1:B3,C1:C3)", "_xlfn.XLOOKUP(A1,B1:B3,C1:C3)"],
  ["SUM(SORT(_xlfn.UNIQUE(A1:A9)))", "SUM(_xlfn._xlws.SORT(_xlfn.UNIQUE(A1:A9)))"],
  ["_xlfn._xlws.sort(_xlfn.anchorarray(A5))", "_xlfn._xlws.SORT(_xlfn.ANCHORARRAY(A5))"],
  ["STDEV.S(A1:A9)", "_xlfn.STDEV.S(A1:A9)"],
  ["LET(x,A1,y,x*2,x+y)", "_xlfn.LET(_xlpm.x,A1,_xlpm.y,_xlpm.x*2,_xlpm.x+_xlpm.y)"],
  ["_xlfn.LET(_xlpm.x,A1,x*2)", "_xlfn.LET(_xlpm.x,A1,_xlpm.x*2)"],
  ["MAP(A1:A3,LAMBDA(v,v+1))", "_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.v,_xlpm.v+1))"],
  ["LET(f,LAMBDA(a,a*2),f(3))", "_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.a,_xlpm.a*2),_xlpm.f(3))"],
  // A name counts where it is given alone: the first and the value of the LET's own are the workbook's.
  ["rate+LET(rate,rate*2,rate)", "rate+_xlfn.LET(_xlpm.rate,rate*2,_xlpm.rate)"],
  ["SUM(A1#)", "SUM(_xlfn.ANCHORARRAY(A1))"],
  ["'Cut plan'!$Q$8#", "_xlfn.ANCHORARRAY('Cut plan'!$Q$8)"],
  ["SUM(ANCHORARRAY(A1))", "SUM(_xlfn.ANCHORARRAY(A1))"],
  ["@A1:A9*2", "_xlfn.SINGLE(A1:A9)*2"],
  ["SUM(@A1#,@Bid!B2:B9)", "SUM(_xlfn.SINGLE(_xlfn.ANCHORARRAY(A1)),_xlfn.SINGLE(Bid!B2:B9))"],
  ["@INDEX(A1:A9,STAIR.RISERS(2))+1", "_xlfn.SINGLE(INDEX(A1:A9,_xldudf_STAIR_RISERS(2)))+1"],
  ["@@A1#", "_xlfn.SINGLE(_xlfn.SINGLE(_xlfn.ANCHORARRAY(A1)))"],
];

/** What is as it should be, or is none of a mender's business. */
const SOUND: readonly string[] = [
  "_xldudf_STAIR_RISERS(109.5)", "_xldudf_CONTOSO_ADD(1,2)", "_xlfn.LET(_xlpm.x,A1,_xlpm.x*2)", "_xlfn._xlws.SORT(A1:A9)", "sum( A1:A9 )",
  "SUM(_xlfn.SINGLE(_xlfn.ANCHORARRAY(A1)))", "_xlfn.SINGLE(A1+A2)", "_xlfn.LAMBDA(_xlpm.a,_xlop.b,_xlpm.a+_xlpm.b)(1)",
  "_xlfn.BYROW(A1:B2,_xleta.SUM)", "_xlfn.NEVERHEARD(A1)", '"FILTER(A1#)"&A1', "'FILTER(x'!A1+FILTER!A1", "Filter*2", "TAKE(A1)",
  "[0]!Rate*2",
  "Lines[Price]*Lines[[#This Row],[Price]]", "SUM(Jan:Dec!A1)", "IF(A1=\"\",#N/A,-A1%)", "NETWORKDAYS.INTL(A1,B1)", "{1,2;3,4}",
];

test.each(BROKEN)("%s is mended to %s", (file, formula) => {
  expect(mended(file)).toEqual({ formula, left: [] });
});

test.each(SOUND)("%s stays letter by letter", (file) => {
  expect(mended(file)).toEqual({ formula: file, left: [] });
});

test("mended twice is mended once", () => {
  for (const [, formula] of BROKEN) expect(mended(formula)).toEqual({ formula, left: [] });
});

test.each([
  ["[1]Prices!$A$1*STAIR.RISERS(B2)", "[1]Prices!$A$1*_xldudf_STAIR_RISERS(B2)", "reads another workbook"],
  ["SUM('[1]Prices 2026'!A1:A9)", "SUM('[1]Prices 2026'!A1:A9)", "reads another workbook"],
  ["[1]!Waste(B2)", "[1]!Waste(B2)", "reads another workbook"],
  ["[@Price]*2", "[@Price]*2", "asks for cells of a table without its name"],
  ["STAIR.RISER(B2)", "STAIR.RISER(B2)", "calls STAIR.RISER, which there is not"],
  ["SUM(A1:A9", "SUM(A1:A9", "is not written as a formula is: a bracket, a cell or a sign is missing in it"],
  ["SORT(A1@A2)", "SORT(A1@A2)", "is not written as a formula is: a bracket, a cell or a sign is missing in it"],
  ["A1##+SORT(A1)", "A1##+SORT(A1)", "is not written as a formula is: a bracket, a cell or a sign is missing in it"],
])("%s is %s, and it is said of it that it %s", (file, formula, why) => {
  expect(mended(file)).toEqual({ formula, left: [why] });
});

test("in a workbook with macros a function without a prefix may be one of those", () => {
  expect(mended("TEXTJOIN(1)+_xlfn.XOR(1)+STAIR.RISERS(B2)", { ...KNOWN, hasMacros: true })).toEqual({
    formula: "TEXTJOIN(1)+_xlfn.XOR(1)+_xldudf_STAIR_RISERS(B2)", left: ["calls TEXTJOIN, which may be a macro of this workbook"],
  });
});

test("a rule calls no function of an add-in, and one of the later ones with its prefix", () => {
  expect(mended("AND(IFNA(A1,0)>STAIR.RISERS(B2))", KNOWN, true)).toEqual({
    formula: "AND(_xlfn.IFNA(A1,0)>STAIR.RISERS(B2))", left: ["calls STAIR.RISERS, which no rule and no list may"],
  });
});

const NOTHING = namesInPlace({ names: [], tables: [] })({ sheet: "Bid", row: 0, column: 0 });

test("a live sheet reads of a mended formula what it read of it before", () => {
  // But for capitals, and a function of the file without its prefix, which a person never types.
  for (const [file, formula] of BROKEN.filter(([text]) => !/anchorarray/i.test(text)))
    expect(String(sheetFormula(formula, NOTHING))).toBe(String(sheetFormula(file, NOTHING)).replace("stair.Risers", "STAIR.RISERS"));
});

test("what a person types is mended to what this project writes into a new file", () => {
  for (const [file] of BROKEN.filter(([text]) => !/_xl|\[|ANCHORARRAY|rate|@@/.test(text)))
    expect(mended(file).formula).toBe(fileFormula(`=${file}`).formula);
});

test("whatever stands in a formula, mending it ends, and mending it once more changes nothing", () => {
  const piece = fc.constantFrom(
    "A1", "B2:B9", "Bid!C3", "'It''s'!D4", "x", "LET(", "LAMBDA(", "FILTER(", "STAIR.RISERS(", "[2]!", "_xlfn.", "_xlpm.x", "(", ")", ",",
    "@", "#", "+", "{1,2}", '"text', "[", "]", "!", ":", " ", "1E5", "Lines[Price]",
  );
  fc.assert(fc.property(fc.array(piece, { maxLength: 14 }), (pieces) => {
    const text = pieces.join("");
    // What cannot be mended in all its parts may have other parts in its place once some of them are.
    const missing = Math.max(0, text.split("(").length - text.split(")").length);
    for (const { formula, left } of [mended(text), mended(text + ")".repeat(missing))])
      if (left.length === 0) expect(mended(formula)).toEqual({ formula, left });
  }), { numRuns: 2000, seed: 20_261_129 });
});

test("deep brackets and long rows of signs come to an end", () => {
  for (const formula of ["LET(x,".repeat(4000), `${"(".repeat(9000)}A1${")".repeat(9000)}`, `${"@".repeat(16_000)}A1`, "@A1:".repeat(6000)])
    expect(mended(formula).formula.length).toBeGreaterThanOrEqual(formula.length);
});

/** Bid!A5 spills to A5:B7 and Q8 of Cut plan to Q8:R12; C1 is one cell alone. */
const BLOCKS: Readonly<Record<string, SpillFreeing["block"] extends (...given: never) => infer Block ? Block : never>> = {
  "Bid!A5": { row: 4, column: 0, rows: 3, columns: 2 }, "Cut plan!Q8": { row: 7, column: 16, rows: 5, columns: 2 },
  "Bid!C1": { row: 0, column: 2, rows: 1, columns: 1 },
};

/** A formula in D6 of Bid, or of no cell. */
const free = (formula: string, isArray: boolean, isInCell = true) =>
  spillFreeFormula(formula, {
    block: (sheet, address) => BLOCKS[`${sheet}!${address}`], sheet: "Bid", named: NOTHING, isArray,
    standing: isInCell ? { sheet: "Bid", row: 5, column: 3 } : undefined,
  });

// The cells of a spill are those that the blocks above say; by hand.
test.each([
  ["SUM(_xlfn.ANCHORARRAY(A5))", "SUM(A5:B7)"],
  ["_xlfn.ANCHORARRAY('Cut plan'!$Q$8)*2", "'Cut plan'!$Q$8:$R$12*2"],
  ["_xlfn.ANCHORARRAY(C1)+_xlfn.ANCHORARRAY($A5)", "C1+$A5:$B7"],
])("the spill of %s is the cells that it takes up: %s", (file, formula) => {
  expect(free(file, true)).toEqual({ formula, left: [] });
});

test("a spill that the file keeps no cells for stays, and is named; so is one that is another in each cell of a rule", () => {
  expect(free("SUM(_xlfn.ANCHORARRAY(Z9))+SUM(_xlfn.ANCHORARRAY(A5))", true)).toEqual({
    formula: "SUM(_xlfn.ANCHORARRAY(Z9))+SUM(A5:B7)", left: ["reads what a cell spills to, and the file keeps no cells for that one"],
  });
  expect(free("_xlfn.ANCHORARRAY(A5)", true, false).left).toHaveLength(1);
  expect(free("_xlfn.ANCHORARRAY(Bid!$A$5)", true, false)).toEqual({ formula: "Bid!$A$5:$B$7", left: [] });
});

/**
 * By hand, of a formula in D6: "Implicit intersection operator: @" (Microsoft) says that a plain formula takes of a range the cell in its
 * row or column wherever one value belongs, and that an array formula does not; SUM takes ranges as they are.
 */
test.each([
  ["_xlfn.SINGLE(A1)*2", true, "A1*2"],
  ["_xlfn.SINGLE(A1:A9)*2", false, "A1:A9*2"],
  ["_xlfn.SINGLE(A1:A9)*B1:B3", true, "A6*B1:B3"],
  ["SUM(_xlfn.SINGLE(A1:A9))", false, "SUM(A6)"],
  ["_xlfn.SINGLE(Rates!A1:G1)", true, "Rates!D1"],
  ["_xlfn.SINGLE(INDEX(A1:A9,2))+1", true, "INDEX(A1:A9,2)+1"],
  ["_xlfn.SINGLE(A1+A2)", true, "(A1+A2)"],
  ["_xlfn.SINGLE(_xldudf_STAIR_LAYOUT(A1:B3))", false, "_xldudf_STAIR_LAYOUT(A1:B3)"],
  ["_xlfn.SINGLE(_xlfn.ANCHORARRAY(A5))", false, "A5:B7"],
])("of %s, array %j, the @ is gone in %s", (file, isArray, formula) => {
  expect(free(file, isArray)).toEqual({ formula, left: [] });
});

test.each([
  ["SUM(_xlfn.SINGLE(_xldudf_STAIR_LAYOUT(A1:B3)))", false], ["_xlfn.SINGLE(A1:B9)", true], ["_xlfn.SINGLE(A20:A29)", true],
  ["_xlfn.LET(_xlpm.x,A1:A9,_xlfn.SINGLE(_xlpm.x))", true], ["_xlfn.SINGLE(Rate)", true], ["SUM(_xlfn.SINGLE(INDEX(A1:B9,2)))", true],
])("%s, array %j, has no form without @, stays, and is named", (file, isArray) => {
  const why = "takes one value of several by @, which an array formula has no other form for";
  expect(free(file, isArray)).toEqual({ formula: file, left: [why] });
});
