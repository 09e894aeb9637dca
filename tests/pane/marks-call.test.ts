import { marksCall } from "../../src/pane/formula/marks-call";

test.each([
  ["=STAIR.MARKS(A4:G9,1.25)", "treads", "=STAIR.MARKS(A4:G9,1.25)"],
  ['=IF(IFERROR(LEFT(B7,6)="– type",TRUE),B7,STAIR.RISERMARKS(TAKE(A1:H9,2),"right)",(1/4)))', "risers",
    '=STAIR.RISERMARKS(TAKE(A1:H9,2),"right)",(1/4))'],
])("the marks in %s", (formula, pieces, call) => {
  expect(marksCall(formula)).toEqual({ pieces, formula: call });
});

test.each([["=SUM(A1:A3)"], ['="STAIR.MARKS("&A1'], ["=STAIR.TREADFIT(A4:G9,1.25)"]])("%s asks for no marks", (formula) => {
  expect(marksCall(formula)).toBeUndefined();
});
