import type { Solve } from "../answer";
import { type FormulaTree, formulaTree } from "./formula-tree";
import { sheetFunctions } from "./sheet-functions";
import { type CellsOf, isKnown, type NotKnown, ourFunction, type WorkedCell, workedOut, type WorkedRows } from "./worked-out";

type Given = WorkedCell | WorkedRows;

/** What a call of one of ours is given, as a host passes it: a cell, a range, or nothing. */
export const workedArguments = (formula: string, cellsOf: CellsOf, solve: Solve): readonly Given[] | NotKnown => {
  const tree: FormulaTree | undefined = formulaTree(formula);
  if (tree?.kind !== "call" || ourFunction(tree.name) === undefined) return { notKnown: formula };
  const given = tree.arguments.map((argument) =>
    argument === undefined ? [[null]] : workedOut(argument, cellsOf, solve, sheetFunctions));
  const missing = given.find((rows): rows is NotKnown => !isKnown(rows));
  if (missing !== undefined) return missing;
  return given.map((rows): Given => {
    const known = rows as WorkedRows;
    return known.length === 1 && known[0]?.length === 1 ? (known[0][0] ?? null) : known;
  });
};
