/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { TREADFIT } from "../../src/functions/fit/treadfit";
import { measuredIn } from "../../src/web/measured-in";
import { associated } from "../host/stand-in";
import { closeWorkbooks, openedWorkbook } from "../workbook/opened-workbook";

afterEach(closeWorkbooks);

const functions = associated();
const solve = (id: string, args: readonly unknown[]): unknown => functions.get(id)?.(...args);

const PARAMETERS = Object.keys(TREADFIT.parameters);

/** A call of TREADFIT with its tape and its unit as they are written in the formula. */
const formula = (tape: string, unit: string): string =>
  `=STAIR.TREADFIT(${PARAMETERS.slice(0, PARAMETERS.indexOf("unit") + 1)
    .map((name) => ({ readings: "A1:D2", tape, unit })[name] ?? "")
    .join(",")})`;

const measured = async (tape: string, unit: string) => {
  const book = await openedWorkbook({ Fit: { F1: "MM", F2: 2, F3: "cm" }, Layout: { A1: "unit", B1: "mm" } });
  return measuredIn(book, "Fit", formula(tape, unit), solve);
};

test.each([
  ["left out", "", "", { unit: "in", divisions: 16 }],
  ["typed", "32", '"in"', { unit: "in", divisions: 32 }],
  ["typed in millimetres, read to one", "", '"mm"', { unit: "mm", divisions: 1 }],
  ["in cells of the sheet", "F2", "F1", { unit: "mm", divisions: 2 }],
  ["in a cell of another sheet", "", "Layout!B1", { unit: "mm", divisions: 1 }],
  ["picked out of a table", "", 'STAIR.PICK(Layout!A1:B1,"unit")', { unit: "mm", divisions: 1 }],
])("unit and tape %s", async (_, tape, unit, wanted) => {
  expect(await measured(tape, unit)).toEqual(wanted);
});

// No figure is printed in a unit that was guessed.
test.each([
  ["worked out by the sheet", 'IF(F2=2,"mm","in")'],
  ["that there is not", "F3"],
])("a unit %s is no unit", async (_, unit) => {
  expect(await measured("", unit)).toBeUndefined();
});

test("a formula that is no call of ours is measured in nothing", async () => {
  expect(measuredIn(await openedWorkbook({ Fit: { A1: 1 } }), "Fit", "=SUM(A1:A2)", solve)).toBeUndefined();
});
