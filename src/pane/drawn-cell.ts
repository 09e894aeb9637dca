import { type Drawing, drawnCall, drawnCalls, type HeardCall, isDrawn } from "../drawing/plans/drawn-call";
import { stairTable } from "../drawing/plans/stair-table";
import type { Solve } from "./answer";
import { type FormulaTree, formulaTree, treeParts } from "./formula/formula-tree";
import { sheetFunctions } from "./formula/sheet-functions";
import { type CellsOf, isKnown, ourFunction, workedOut } from "./formula/worked-out";
import type { CellHost, Place } from "./host";
import { cellsOfFormula, standingFormula } from "./standing-formula";

/** A stair table is looked for so far up and down, and its labels so far to the left. */
const ROWS_ABOUT = 200;
const COLUMNS_LEFT = 2;
const COLUMNS_RIGHT = 3;
/** As many as a sheet of Excel has (its specifications and limits). */
const SHEET_ROWS = 1_048_576;

/** The calls that a formula makes of functions with drawings, as they are given its cells. */
const calledIn = (tree: FormulaTree, cellsOf: CellsOf, solve: Solve): readonly HeardCall[] => {
  const heard: HeardCall[] = [];
  const hearing: Solve = (id, cells) => {
    if (isDrawn(id)) heard.push({ id, cells });
    return solve(id, cells);
  };
  if (isKnown(workedOut(tree, cellsOf, hearing, sheetFunctions)) || heard.length > 0) return heard;
  // What only the spreadsheet works out stands around our calls: each of them by itself, the inner ones first.
  for (const part of [...treeParts(tree)].reverse()) {
    if (part.kind === "call" && ourFunction(part.name) !== undefined) workedOut(part, cellsOf, hearing, sheetFunctions);
  }
  return heard;
};

/** The calls that a cell's formula makes, or that of the cell it spilled from. */
const callsOf = async (place: Place, host: CellHost, solve: Solve): Promise<readonly HeardCall[]> => {
  const standing = await standingFormula(place, host);
  const tree = standing === undefined ? undefined : formulaTree(standing.formula);
  if (standing === undefined || tree === undefined) return [];
  return calledIn(tree, await cellsOfFormula(tree, standing.at.sheet, host), solve);
};

/** The drawings of the table that a cell belongs to; a sentence where there could be some, undefined where it belongs to none. */
export const drawnCell = async (place: Place, host: CellHost, solve: Solve): Promise<readonly Drawing[] | string | undefined> => {
  const drawn = drawnCalls(await callsOf(place, host, solve));
  if (drawn !== undefined) return drawn;
  const [row, column] = [Math.max(0, place.row - ROWS_ABOUT), Math.max(0, place.column - COLUMNS_LEFT)];
  const rows = Math.min(place.row + ROWS_ABOUT, SHEET_ROWS) - row;
  const about = { sheet: place.sheet, row, column, rows, columns: place.column - column + COLUMNS_RIGHT };
  const [cells = []] = await host.read([about]);
  const values = cells.map((line) => line.map(({ value }) => (typeof value === "object" ? null : value)));
  const table = stairTable(values, place.row - row, place.column - column);
  return table === undefined ? undefined : drawnCall("LAYOUT", [table]);
};
