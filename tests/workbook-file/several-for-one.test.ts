import fc from "fast-check";
import { severalForOne } from "../../src/workbook-file/formula/several-for-one";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { smallFile } from "./small-file";

// What a formula that is no array formula takes one value of (Microsoft, "Implicit intersection operator: @"; ECMA-376-1, 18.17.7 for what
// each function takes), by hand.
test.each([
  ["SUM(A1:A3*B1:B3)", "A1:A3"],
  ["A1:A3*10", "A1:A3"],
  ["A1:A3", "A1:A3"],
  ["(A1:A3)", "A1:A3"],
  ["-A1:A3%", "A1:A3"],
  ['IF(A:A>1,"big","small")', "A:A"],
  ["IF(A1>1,1:1,0)", "1:1"],
  ["IF(A1>1,B1:B3,0)*2", "B1:B3"],
  ["SUM(IF(A1>1,B1:B3,C1:C3)*2)", "B1:B3"],
  ["MAX(IF(A1:A3>1,B1:B3,0))", "A1:A3"],
  ["SUMPRODUCT(IF(A1:A3>1,B1:B3,0))", "A1:A3"],
  ["VLOOKUP(A1:A3,A1:B3,2)", "A1:A3"],
  ["ROUND(A1:A3,0)+1", "A1:A3"],
  ["SUM(LEN(A1:A3))", "A1:A3"],
  ["SUM(IFERROR(A1:A3,0))", "A1:A3"],
  ["COUNTIFS(A:A,B1:B3)", "B1:B3"],
  ["SUMIF(A:A,A:A,B:B)", "A:A"],
  ["SUM(ROW(A1:A3))", "A1:A3"],
  ["SUM((A1:A3)*Bid!$B$1:Bid!$B$3)", "A1:A3"],
  ["2*Bid!B1:B3", "B1:B3"],
  ["2*Bid!B1:Bid!B3", "B1:Bid"],
  ["B1#*2", "B1#"],
  ["SUM(B1#)&A:A", "A:A"],
  ["INDEX(A1:C3,0,2)*2", "INDEX"],
  ["SUM(2*INDEX(A1:C3,,2))", "INDEX"],
  ["OFFSET(A1,0,0,3,1)+1", "OFFSET"],
  ["SUM(OFFSET(A1:A3,1,0)*2)", "OFFSET"],
  ["SUM(INDEX(A1:C3,2)*2)", "INDEX"],
  ["SUM(SEQUENCE(3)*2)", "SEQUENCE"],
  ["2*TRANSPOSE(A1:A3)", "TRANSPOSE"],
  ['INDIRECT("A1:A"&3)&""', "INDIRECT"],
  ["A1:INDEX(A1:A3,3)", "A1:INDEX"],
  ["NOSUCH(A1:A3)", "A1:A3"],
  ["LET(r,A1:A3,SUM(r*2))", "A1:A3"],
  ["SUM(A1:A3*@B1:B3)", "A1:A3"],
])("%s takes one value of %s", (formula, several) => {
  expect(severalForOne(formula)).toBe(several);
});

test.each([
  "SUM(A1:A3)", "SUM(A1:A3,B1:B3)+MAX(A:A)*2", "SUM((A1:A3,C1:C3))", "SUM(A1:C3 B1:B9)", "SUM(Jan:Dec!A1)*2", "SUM(-1,A1:A3)", "A1:A1*2",
  "SUMPRODUCT(A1:A3*B1:B3)", "SUMPRODUCT(--(LEN(A1:A3)>1),B1:B3)", "SUMPRODUCT(MAX((A1:A3=1)*B1:B3))", "LOOKUP(2,1/(A1:A9<>\"\"),B1:B9)",
  "INDEX(B:B,MATCH(1,INDEX((A1:A3=1)*(B1:B3=2),0),0))*2", "AGGREGATE(15,6,A1:A3/(B1:B3=1),1)", "VLOOKUP(A1,Prices!$A:$D,COLUMN(B:B),0)*2",
  "LARGE($A$1:$A$9,ROW(1:1))+1", "ROW(A5)*2", "ROW(A5:C5)*2", "SUM(IF(A1>1,B1:B3,C1:C3))", "SUM(INDEX(A1:C3,0,2))",
  "SUM(OFFSET(A1,0,0,3,1))",
  "OFFSET(A1,1,2)*2", "INDEX(A1:C3,2,2)*2", "SUMIFS(C:C,A:A,A1,B:B,\">\"&B1)", "COUNTIFS(A:A,A1,B:B,B1)", 'COUNTIF(A1:A3,">"&B1)',
  'TEXTJOIN(", ",TRUE,A1:A3)&"."', "@A1:A3*2", "@INDEX(A1:C3,0,2)*2", "SUM(A1*{1,-2;3,4})", "STAIR.PICK(A1:D9,\"run\")*2", "A1*B1+'a:b'!C1",
  '"A1:A3"&A1', "SUM(B1#)", "AND(A1:A3)", "RANK(A1,$A$1:$A$9)", "NPV(A1,B1:B9)", "XLOOKUP(A1,B:B,C:C)", "SUM(SEQUENCE(3))", "SORT(A1:A3)",
  "SUM(INDEX(A:A,2)*2,INDEX(A1:C1,2)*2)", "SUMPRODUCT(TRANSPOSE(A1:A3)*B1:D1)", "ROUND(SUM(A1:A3),2)",
])("%s takes nothing but what its functions take", (formula) => {
  expect(severalForOne(formula)).toBeUndefined();
});

test("brackets as deep as they come, and brackets left open, end", () => {
  expect(severalForOne(`${"(".repeat(8000)}A1:A3${")".repeat(8000)}`)).toBe("A1:A3");
  expect(severalForOne(`SUM(${"(".repeat(8000)}A1:A3`)).toBeUndefined();
  expect(severalForOne("))A1:A3,)")).toBe("A1:A3");
  const many = `${"(".repeat(3000)}${"A1:A3,".repeat(300)}B1:B3${")".repeat(3000)}`;
  expect([severalForOne(`SUM(${many})`), severalForOne(`2*SUM(ROW(${many}))`)]).toEqual([undefined, "A1:A3"]);
  expect(severalForOne(`SUM(ROW((${"A1:C1,".repeat(300)}A1:C1))*2)`)).toBe("a range");
});

test("whatever stands in a formula, torn or not, it is read to its end", () => {
  const part = fc.constantFrom(
    "SUM(", "INDEX(", "OFFSET(", "ROW(", "IF(", "LET(", "STAIR.PICK(", "SEQUENCE(", "(", ")", "{", "}", ",", ";", ":", "#", "@", "!", "+",
    "%", " ", "A1", "$B$2", "A1:A3", "A:A", "1:1", "'a:b'!", "Bid!", "Jan:Dec!", '"x', "'", "#REF!", "x", "0", "",
  );
  fc.assert(fc.property(fc.array(part, { maxLength: 40 }), (parts) => {
    expect(["string", "undefined"]).toContain(typeof severalForOne(parts.join("")));
  }));
});

test("brackets change nothing, SUMPRODUCT takes all there is, and nothing else makes a wrong formula right", () => {
  const { formula } = fc.letrec<{ formula: string }>((tie) => ({
    formula: fc.oneof(
      { depthSize: "small" }, fc.constantFrom("A1", "A1:A3", "Bid!B:B", "2", '"x"', "C1#"),
      fc.tuple(tie("formula"), fc.constantFrom("+", "&", "<"), tie("formula")).map((parts) => parts.join("")),
      fc.tuple(fc.constantFrom("", "SUM", "ROUND", "INDEX", "MATCH", "ROW"), tie("formula")).map(([name, inner]) => `${name}(${inner})`),
    ),
  }));
  fc.assert(fc.property(formula, (one) => {
    const several = severalForOne(one);
    expect(severalForOne(`(${one})`)).toBe(several);
    expect(severalForOne(`SUMPRODUCT(${one})`)).toBeUndefined();
    if (several !== undefined) expect(severalForOne(`1+${one}`)).toBeDefined();
  }));
});

test("such a formula keeps the value it had; in an array formula, and where it is shared, as it must", () => {
  const rows = '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><v>10</v></c></row><row r="2"><c r="A2"><v>2</v></c><c r="B2"><v>20</v></c>' +
    '<c r="C2"><f>SUM(A1:A3*B1:B3)</f><v>40</v></c><c r="D2"><f t="array" ref="D2">SUM(A1:A3*B1:B3)</f><v>140</v></c>' +
    '<c r="E2"><f t="shared" si="0" ref="E2:E3">A$1:A$3*2</f><v>4</v></c><c r="F2"><f>prices*2</f><v>4</v></c>' +
    '<c r="G2"><f>SUM(_xlfn.SEQUENCE(3)*2)</f><v>2</v></c></row>' +
    '<row r="3"><c r="A3"><v>3</v></c><c r="B3"><v>30</v></c><c r="E3"><f t="shared" si="0"/><v>6</v></c></row>';
  const names = "<definedNames><definedName name=\"prices\">S!$A$1:$A$3</definedName></definedNames>";
  const { sheets, keptFormulas, stored } = readWorkbookFile(smallFile({ S: rows }, names));
  // By hand: in row 2 it is 2 x 20, as an array formula 1 x 10 + 2 x 20 + 3 x 30.
  expect(sheets[0]?.cells).toMatchObject({
    C2: { value: 40 }, D2: { formula: "=SUM(A1:A3*B1:B3)" }, E2: { value: 4 }, E3: { value: 6 }, F2: { value: 4 },
  });
  expect(keptFormulas["S"]?.map(({ address, why }) => [address, why])).toEqual([
    ["C2", "takes of A1:A3 the value in its own row or column alone, which cannot be worked out here"],
    ["E2", "takes of A$1:A$3 the value in its own row or column alone, which cannot be worked out here"],
    ["F2", "takes of $A$1:$A$3 the value in its own row or column alone, which cannot be worked out here"],
    ["G2", "takes one value alone of those that SEQUENCE comes to, which cannot be worked out here"],
    ["E3", "takes of A$1:A$3 the value in its own row or column alone, which cannot be worked out here"],
  ]);
  expect(stored["S"]).toMatchObject({ C2: 40, E3: 6 });
});
