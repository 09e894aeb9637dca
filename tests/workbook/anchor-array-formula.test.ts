import { anchorArrayFormula } from "../../src/workbook/anchor-array-formula";

test.each([
  ["=SUM(A1#)", "=SUM(ANCHORARRAY(A1))"],
  ["=$A$1#", "=ANCHORARRAY($A$1)"],
  ["=ROWS(a1#)+SUM(B2#)", "=ROWS(ANCHORARRAY(a1))+SUM(ANCHORARRAY(B2))"],
  ["=Layout!A1#", "=ANCHORARRAY(Layout!A1)"],
  ["='Cut plan'!A1#", "=ANCHORARRAY('Cut plan'!A1)"],
  ["='Bob''s'!A1#", "=ANCHORARRAY('Bob''s'!A1)"],
  ['=A1#&"see A1#"', '=ANCHORARRAY(A1)&"see A1#"'],
  ['="5# of nails"&A1', '="5# of nails"&A1'],
  ["=IF(A1=#N/A,1,2)", "=IF(A1=#N/A,1,2)"],
  ["=A1+#REF!", "=A1+#REF!"],
  ["=_xlfn.ANCHORARRAY(A1)", "=_xlfn.ANCHORARRAY(A1)"],
  ["=rise.A1#", "=rise.A1#"],
  ["=A1#/2", "=ANCHORARRAY(A1)/2"],
  ["=SUM(A1#:B9)", "=SUM(SPILL.RANGE(ANCHORARRAY(A1),B9))"],
  ["=SUM(B9:$A$1#)", "=SUM(SPILL.RANGE(B9,ANCHORARRAY($A$1)))"],
  ["=SUM('Cut plan'!A1#:B9#)", "=SUM(SPILL.RANGE(ANCHORARRAY('Cut plan'!A1),ANCHORARRAY('Cut plan'!B9)))"],
  ["=SUM(A1:B9)+LOG10(C1#)", "=SUM(A1:B9)+LOG10(ANCHORARRAY(C1))"],
])("%s is read as %s", (typed, read) => {
  expect(anchorArrayFormula(typed)).toBe(read);
});
