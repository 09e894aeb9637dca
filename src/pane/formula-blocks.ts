import type { FormulaTree } from "./formula/formula-tree";
import type { Block, CellHost } from "./host";

/** Cells that a formula names. */
export type CellsPart = Extract<FormulaTree, { kind: "cells" }>;

const blockOf = (part: CellsPart, own: string): Block => ({
  sheet: part.sheet ?? own, ...part.from, rows: part.to.row - part.from.row + 1, columns: part.to.column - part.from.column + 1,
});

/** The blocks that parts of a formula name; a spill is asked for, its first cell alone where there is none. */
export const formulaBlocks = async (parts: readonly CellsPart[], own: string, host: CellHost): Promise<readonly Block[]> => {
  const spilling = parts.filter(({ isSpill }) => isSpill);
  const spills = spilling.length === 0 ? [] : await host.spills(spilling.map((part) => ({ sheet: part.sheet ?? own, ...part.from })));
  return parts.map((part) => (part.isSpill ? (spills[spilling.indexOf(part)] ?? blockOf(part, own)) : blockOf(part, own)));
};
