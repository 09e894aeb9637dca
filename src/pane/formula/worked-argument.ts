import type { Solve } from "../answer";
import type { FormulaTree } from "./formula-tree";
import { type CellsOf, isKnown, ourFunction, workedOut, type WorkedCell } from "./worked-out";

/** What a call of ours is given for an argument, by its name: null where it is left out, undefined where only the sheet can work it out. */
export const workedArgument = (call: FormulaTree | undefined, name: string, cellsOf: CellsOf, solve: Solve): WorkedCell | undefined => {
  const ours = call?.kind === "call" ? ourFunction(call.name) : undefined;
  if (call?.kind !== "call" || ours === undefined) return undefined;
  const argument = call.arguments[Object.keys(ours.parameters).indexOf(name)];
  if (argument === undefined) return null;
  const worked = workedOut(argument, cellsOf, solve);
  return isKnown(worked) ? (worked[0]?.[0] ?? null) : undefined;
};
