import { ownNames } from "../../src/pane/formula/own-names";

/** Names as in tests/workbook-file/as-excel-saves.ts, which names its sources; the forms before them as issues 2568 and 2051 have them. */
test.each([
  ["=_xldudf_STAIR_RISERS(B2)", "=STAIR.RISERS(B2)"],
  ["=_xldudf_stair_risers (B2)", "=STAIR.RISERS (B2)"],
  ["=[2]!_xldudf_STAIR_RISERS(B2)+[12]!STAIR.PITCH(1)", "=STAIR.RISERS(B2)+STAIR.PITCH(1)"],
  ["='C:\\It''s here\\[tools.xlam]One'!_xldudf_STAIR_RISERS(B2)", "=STAIR.RISERS(B2)"],
  ["=SUM(_xldudf_STAIR_LAYOUT(A1:B3))", "=SUM(STAIR.LAYOUT(A1:B3))"],
  ["=STAIR.RISERS(B2)", "=STAIR.RISERS(B2)"],
])("%s is typed %s", (formula, typed) => {
  expect(ownNames(formula)).toEqual({ formula: typed, isOurs: true });
});

test.each([
  '="STAIR.RISERS("&_xldudf_CONTOSO_ADD(1)', '="_xldudf_STAIR_RISERS(1)"', "='STAIR.A(1)'!B2", "=MY_xldudf_STAIR_RISERS(1)",
  "=MYSTAIR.RISERS(1)", "=[2]!Waste(B2)", "=STAIR.RISERS",
])("%s is none of ours and stays", (formula) => {
  expect(ownNames(formula)).toEqual({ formula, isOurs: false });
});
