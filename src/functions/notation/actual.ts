import { actualSize } from "../../solver/notation/actual-size";
import { isProblem } from "../../solver/problem";
import { declare } from "../declare";

export const ACTUAL = declare({
  id: "ACTUAL",
  group: "Notation",
  says: "Actual thickness and width of nominal softwood lumber, dry and dressed.",
  parameters: { nominal: { kind: "text", says: "Nominal size such as 1x8 or 5/4x12." } },
  result: {
    kind: "row",
    says: "Two cells: thickness and width in inches.",
    columns: { thickness: { kind: "length", says: "Actual thickness." }, width: { kind: "length", says: "Actual width." } },
  },
  problems: {
    "not-a-nominal-size": {
      cell: "#VALUE!",
      says: 'nominal: read "{nominal}", which is not a nominal size; write thickness x width, such as 1x8',
    },
    "size-not-listed": { cell: "#N/A", says: 'nominal: the {side} of "{nominal}" is not in the table; known are {known}' },
  },
  examples: [
    { given: { nominal: "1x8" }, gives: [[0.75, 7.25]], from: "American Softwood Lumber Standard sizes: a 1x8 is 3/4 x 7 1/4" },
    { given: { nominal: "2 x 12" }, gives: [[1.5, 11.25]], from: "American Softwood Lumber Standard sizes: a 2x12 is 1 1/2 x 11 1/4" },
    {
      given: { nominal: "5/4x12" },
      gives: [[1, 11.25]],
      from: "American Softwood Lumber Standard sizes: nominal 1 1/4 is 1 thick, nominal 12 is 11 1/4 wide",
    },
    {
      given: { nominal: "1x13" },
      fails: "#N/A",
      says: 'nominal: the width of "1x13" is not in the table; known are 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16',
      from: "American Softwood Lumber Standard sizes: no nominal 13",
    },
  ],
  source: "American Softwood Lumber Standard, PS 20, dry dressed sizes of boards and dimension lumber. Hardwood and green sizes differ.",
  solve: ({ nominal }) => {
    const size = actualSize(nominal);
    return isProblem(size) ? size : { ...size };
  },
});
