/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { demo } from "../../src/sheets/demo/demo";
import { cutPiecesAt } from "../../src/web/cut-pieces";
import { marksCall } from "../../src/pane/formula/marks-call";
import { withWood } from "../../src/web/wood-of-pieces";
import { standIn } from "../../src/workbook/stand-in";
import type { Workbook } from "../../src/workbook/workbook";
import { associated } from "../host/stand-in";
import { closeWorkbooks, openedData, openedWorkbook } from "../workbook/opened-workbook";

afterEach(closeWorkbooks);

const functions = associated();
const solve = (id: string, args: readonly unknown[]): unknown => {
  const found = functions.get(id);
  if (found === undefined) throw standIn().error("#NAME?", `no function ${id}`);
  return found(...args);
};

const piecesAt = (workbook: Workbook, sheet: string, address: string) => {
  const call = marksCall(workbook.formula(sheet, address) ?? "");
  if (call === undefined) throw new Error(`no marks at ${sheet} ${address}`);
  return cutPiecesAt(workbook, sheet, address, call, solve);
};

/** Two openings of 36 x 10, square, and room for more. */
const READINGS = {
  A1: "step", B1: "run", C1: "back", D1: "front", E1: "left offset",
  A2: 1, B2: 10, C2: 36, D2: 36, E2: "square",
  A3: 2, B3: 10, C3: 36.5, D3: 36.5, E3: "square",
  A4: 3, F1: "end", F2: "right",
};

test.each([
  ["cells", '=STAIR.MARKS(A1:E3,,F2)'],
  ["cells down to the last that is filled", '=STAIR.MARKS(TAKE(A1:E9,1+MAX((B2:B9<>"")*SEQUENCE(8))),,F2)'],
  ["the rows that are filled", '=STAIR.MARKS(FILTER(A1:E9,B1:B9<>""),,F2)'],
  ["a cell that may be in error", '=IF(A2="","",STAIR.MARKS(A1:E3,IFERROR(STAIR.TOINCHES("x"),1.25),F2))'],
])("the pieces of a call that is given %s are those the sheet shows", async (_, formula) => {
  const workbook = await openedWorkbook({ Own: { ...READINGS, H1: formula } });
  const found = piecesAt(workbook, "Own", "H1");
  if (typeof found === "string") throw new Error(found);
  // By hand: 10 + 1 1/4 deep, the toe 1 1/4 past the skirt.
  const toe = (acts: (typeof found)[number]["acts"]) => acts.find(({ cells }) => cells.act === "MARK RIGHT TOE")?.cells.tape;
  const said = found.map(({ step, acts }) => [step, acts[0]?.cells.tape, toe(acts)]);
  expect(said).toEqual([["1", "11 1/4", "37 1/4"], ["2", "11 1/4", "37 3/4"]]);
});

test("what cannot be worked out is said, with what to do", async () => {
  const workbook = await openedWorkbook({ Own: { ...READINGS, H1: "=STAIR.MARKS(SORT(A1:E3),,F2)" } });
  expect(piecesAt(workbook, "Own", "H1")).toBe(
    "No cards of MARKS at Own H1: SORT(A1:E3) cannot be worked out here. " +
      "Give the call cells in its place, or print batch pages.",
  );
});

test("the demo's own treads and risers have cards, act by act what its tickets say", async () => {
  const workbook = await openedData({ version: 1, sheets: demo });
  const [treads, risers] = [piecesAt(workbook, "Fit", "CA8"), piecesAt(workbook, "Fit", "CN8")];
  if (typeof treads === "string" || typeof risers === "string") throw new Error(`${String(treads)} ${String(risers)}`);
  // Five treads and fourteen risers were taped.
  expect([treads.length, risers.length]).toEqual([5, 14]);
  for (const [pieces, address] of [[treads, "CA8"], [risers, "CN8"]] as const) {
    const [headings = [], ...rows] = workbook.spill("Fit", address);
    const tape = headings.indexOf("tape");
    expect(pieces.flatMap(({ acts }) => acts.map(({ cells }) => cells.tape))).toEqual(rows.map((row) => row[tape] ?? ""));
  }
});

test("the demo's risers are each on the board where its cut plan has them, and its treads on the blank it orders", async () => {
  const workbook = await openedData({ version: 1, sheets: demo });
  const formulas = demo.flatMap(({ name, cells }) =>
    Object.entries(cells).flatMap(([address, { formula }]) => (formula === undefined ? [] : [{ sheet: name, address, formula }])));
  const woods = (address: string): readonly (string | undefined)[] => {
    const pieces = piecesAt(workbook, "Fit", address);
    if (typeof pieces === "string") throw new Error(pieces);
    const at = { sheet: "Fit", address, formula: workbook.formula("Fit", address) ?? "" };
    return withWood(workbook, formulas, at, pieces).map(({ wood }) => wood);
  };
  // Stock, stick and piece are its first three columns; each riser stands there once.
  const plan = workbook.spill("Cut plan", "J8").filter(([, , piece]) => String(piece).startsWith("riser "));
  const expected = plan
    .map(([stock, stick, piece]) => [Number(String(piece).slice(6)), `${String(stock)}, board ${String(stick)} of the cut plan`] as const)
    .sort(([one], [other]) => one - other)
    .map(([, said]) => said);
  expect(expected).toHaveLength(14);
  expect(woods("CN8")).toEqual(expected);
  // As the demo's yard has them: 13 treads of one blank.
  expect(new Set(woods("CA8"))).toEqual(new Set(["oak blank 42, any of 13"]));
});
