import { fitCall } from "../../src/web/fit-call";

test.each([
  ["=STAIR.TREADFIT(A4:G9,1.25)", "treads", "=STAIR.TREADFIT(A4:G9,1.25)"],
  ['=IF(IFERROR(LEFT(B7,6)="– type",TRUE),B7,STAIR.RISERFIT(TAKE(A1:H9,2),"right)",(1/4)))', "risers",
    '=STAIR.RISERFIT(TAKE(A1:H9,2),"right)",(1/4))'],
])("the fit in %s", (formula, pieces, call) => {
  expect(fitCall(formula)).toEqual({ pieces, formula: call });
});

test.each([["=SUM(A1:A3)"], ['="STAIR.TREADFIT("&A1']])("%s calls no fit", (formula) => {
  expect(fitCall(formula)).toBeUndefined();
});
