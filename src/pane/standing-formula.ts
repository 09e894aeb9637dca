import { type CellsPart, formulaBlocks } from "./formula-blocks";
import { type FormulaTree, treeParts } from "./formula/formula-tree";
import type { CellsOf, WorkedCell, WorkedRows } from "./formula/worked-out";
import type { Block, CellHost, HeldCells, Place } from "./host";

/** A formula with the cells that show its answer, the one it stands in first. */
export interface StandingFormula {
  readonly at: Block;
  readonly formula: string;
}

/** The formula of a cell, or of the cell it spilled from; undefined where there is none. */
export const standingFormula = async (place: Place, host: CellHost): Promise<StandingFormula | undefined> => {
  const [spill] = await host.spills([place]);
  const at: Block = spill ?? { ...place, rows: 1, columns: 1 };
  const [[[held] = []] = []] = await host.read([{ ...at, rows: 1, columns: 1 }]);
  return held?.formula === undefined ? undefined : { at, formula: held.formula };
};

export const valuesOf = (cells: HeldCells): WorkedRows =>
  cells.map((row) => row.map(({ value }): WorkedCell =>
    typeof value === "object" && value !== null ? { code: value.error, message: value.says ?? "" } : value));

/** The cells that a formula on a sheet names, as they stand. */
export const cellsOfFormula = async (tree: FormulaTree, sheet: string, host: CellHost): Promise<CellsOf> => {
  const parts = treeParts(tree).filter((part): part is CellsPart => part.kind === "cells");
  const read = await host.read(await formulaBlocks(parts, sheet, host));
  const cells = new Map(parts.map(({ text }, which) => [text, valuesOf(read[which] ?? [])]));
  return (part) => (part.kind === "cells" ? cells.get(part.text) : undefined);
};
