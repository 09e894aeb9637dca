import { type Drawing, drawnCall, isDrawn } from "../drawing/plans/drawn-call";
import { stairTable } from "../drawing/plans/stair-table";
import type { Solve } from "./answer";
import { type CellsPart, formulaBlocks } from "./formula-blocks";
import { type FormulaTree, formulaTree, treeParts } from "./formula/formula-tree";
import { ourFunction, workedOut, type WorkedCell, type WorkedRows } from "./formula/worked-out";
import type { CellHost, HeldCells, Place } from "./host";

/** A stair table is looked for so far up and down, and its labels so far to the left. */
const ROWS_ABOUT = 200;
const COLUMNS_LEFT = 2;
const COLUMNS_RIGHT = 3;

interface Called {
  readonly id: string;
  readonly args: readonly unknown[];
}

const valuesOf = (cells: HeldCells): WorkedRows =>
  cells.map((row) => row.map(({ value }): WorkedCell =>
    typeof value === "object" && value !== null ? { code: value.error, message: value.says ?? "" } : value));

/** The last call with a drawing that a formula makes, as the functions are given its cells; inner calls come before outer ones. */
const calledIn = (tree: FormulaTree, cellsOf: (part: FormulaTree) => WorkedRows | undefined, solve: Solve): Called | undefined => {
  let found: Called | undefined;
  const hearing: Solve = (id, args) => {
    if (isDrawn(id)) found = { id, args };
    return solve(id, args);
  };
  // What only the spreadsheet works out may stand around a call of ours.
  for (const part of treeParts(tree)) {
    if (part !== tree && (part.kind !== "call" || ourFunction(part.name) === undefined)) continue;
    workedOut(part, cellsOf, hearing);
    if (found !== undefined) return found;
  }
  return undefined;
};

/** The call that a cell's formula makes, the formula its value spilled from included. */
const callOf = async (place: Place, host: CellHost, solve: Solve): Promise<Called | undefined> => {
  const [spill] = await host.spills([place]);
  const anchor: Place = spill ?? place;
  const [[[held] = []] = []] = await host.read([{ ...anchor, rows: 1, columns: 1 }]);
  const tree = held?.formula === undefined ? undefined : formulaTree(held.formula);
  if (tree === undefined) return undefined;
  const parts = treeParts(tree).filter((part): part is CellsPart => part.kind === "cells");
  const blocks = await formulaBlocks(parts, anchor.sheet, host);
  const read = await host.read(blocks);
  const cells = new Map<FormulaTree, WorkedRows>(parts.map((part, which) => [part, valuesOf(read[which] ?? [])]));
  return calledIn(tree, (part) => cells.get(part), solve);
};

/** The drawings of the table that a cell belongs to; a sentence where there could be some, undefined where it belongs to none. */
export const drawnCell = async (place: Place, host: CellHost, solve: Solve): Promise<readonly Drawing[] | string | undefined> => {
  const called = await callOf(place, host, solve);
  if (called !== undefined) return drawnCall(called.id, called.args);
  const [row, column] = [Math.max(0, place.row - ROWS_ABOUT), Math.max(0, place.column - COLUMNS_LEFT)];
  const about = { sheet: place.sheet, row, column, rows: place.row - row + ROWS_ABOUT, columns: place.column - column + COLUMNS_RIGHT };
  const [cells = []] = await host.read([about]);
  const values = cells.map((line) => line.map(({ value }) => (typeof value === "object" ? null : value)));
  const table = stairTable(values, place.row - row, place.column - column);
  return table === undefined ? undefined : drawnCall("LAYOUT", [table]);
};
