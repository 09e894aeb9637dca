import { formulaTree } from "../../src/pane/formula/formula-tree";
import { sheetFunctions } from "../../src/pane/formula/sheet-functions";
import { workedOut, type WorkedCell } from "../../src/pane/formula/worked-out";

const heard: string[] = [];

/** What a formula without cells comes to; our functions answer their name. */
const worked = (formula: string): readonly (readonly WorkedCell[])[] | string => {
  const tree = formulaTree(formula);
  if (tree === undefined) throw new Error(`${formula} cannot be read`);
  const found = workedOut(tree, () => undefined, (id) => {
    heard.push(id);
    return id;
  }, sheetFunctions);
  if ("notKnown" in found) return `not known: ${found.notKnown}`;
  return found.map((row) => row.map((cell) => (typeof cell === "object" && cell !== null ? cell.code : cell)));
};

const TABLE = "{1,\"a\",10;2,\"b\",20;3,\"\",30}";

// By hand, by what Excel's help says of each function.
test.each<readonly [string, readonly (readonly WorkedCell[])[]]>([
  [`=TAKE(${TABLE},2)`, [[1, "a", 10], [2, "b", 20]]],
  [`=TAKE(${TABLE},-1,2)`, [[3, ""]]],
  [`=TAKE(${TABLE},,-1)`, [[10], [20], [30]]],
  [`=DROP(${TABLE},1)`, [[2, "b", 20], [3, "", 30]]],
  [`=DROP(${TABLE},-2,1)`, [["a", 10]]],
  [`=DROP(${TABLE},3)`, [["#CALC!"]]],
  [`=CHOOSECOLS(${TABLE},3,1)`, [[10, 1], [20, 2], [30, 3]]],
  [`=CHOOSECOLS(${TABLE},-1)`, [[10], [20], [30]]],
  [`=CHOOSECOLS(${TABLE},4)`, [["#VALUE!"]]],
  [`=CHOOSEROWS(${TABLE},-1,1)`, [[3, "", 30], [1, "a", 10]]],
  [`=FILTER(${TABLE},CHOOSECOLS(${TABLE},2)<>"")`, [[1, "a", 10], [2, "b", 20]]],
  [`=FILTER(${TABLE},{1,0,1})`, [[1, 10], [2, 20], [3, 30]]],
  [`=FILTER(${TABLE},{0;0;0})`, [["#CALC!"]]],
  [`=FILTER(${TABLE},{0;0;0},"none")`, [["none"]]],
  ["=VSTACK({1,2},{3})", [[1, 2], [3, "#N/A"]]],
  ["=HSTACK({1;2},{3})", [[1, 3], [2, "#N/A"]]],
  ["=TRANSPOSE({1,2;3,4})", [[1, 3], [2, 4]]],
  ["=MAX({1,5;2,3})-MIN({4,2})+SUM({1,\"x\",2})", [[6]]],
  ["=ROWS({1;2;3})*COLUMNS({1,2})", [[6]]],
  ["=COUNTA({1,\"\",TRUE})", [[3]]],
  ["=LEFT(\"– type in Job B11\",6)=\"– TYPE\"", [[true]]],
  ["=ISNUMBER({1,\"1\",TRUE})", [[true, false, false]]],
  // Microsoft's page on SUBSTITUTE: letters count, every instance where none is named.
  ["=SUBSTITUTE(0.25&\"\",\".\",\",\")&\" x 0\"", [["0,25 x 0"]]],
  ["=SUBSTITUTE(\"Sales a a\",\"a\",\"b\")", [["Sbles b b"]]],
  ["=LEFT({\"ab\",12})", [["a", "1"]]],
  ["=SEQUENCE(3)", [[1], [2], [3]]],
  ["=IF({1;0},{\"a\";\"b\"},\"-\")", [["a"], ["-"]]],
  ["=IF(2>1,\"yes\",\"no\")", [["yes"]]],
  ["=IF(FALSE,1)", [[false]]],
  ["=IF(\"x\",1,2)", [["#VALUE!"]]],
  ["=IFERROR(VSTACK({1,2},{3}),0)", [[1, 2], [3, 0]]],
  ["=IFERROR(#REF!,TRUE)", [[true]]],
  ["=LET(a,2,b,a*3,a+b)", [[8]]],
  ["=LET(Rise,2,LET(rise,5,rise)+RISE)", [[7]]],
  ["={1,\"b\",TRUE}>{1,\"a\",5}", [[false, true, true]]],
  ["=(1<=1)*(2<>2)", [[0]]],
])("%s", (formula, answer) => expect(worked(formula)).toEqual(answer));

test("only what IF chooses is worked out, and what LET does not use", () => {
  heard.length = 0;
  expect(worked("=IF(TRUE,STAIR.RISERS(100),STAIR.PITCH(7,10))")).toEqual([["RISERS"]]);
  expect(heard).toEqual(["RISERS"]);
});

test.each([
  ["=LET(a,NOW(),a)", "not known: NOW()"],
  ["=FILTER({1;2},other)", "not known: FILTER({1;2},other)"],
  ["=LET(1,2,3)", "not known: LET(1,2,3)"],
])("%s is named as what only the spreadsheet works out", (formula, says) => expect(worked(formula)).toBe(says));
