import type { IRange, Nullable } from "@univerjs/core";
import type { FormulaDataModel } from "@univerjs/engine-formula";

/** A spilled block by its size, by how many of its cells hold something, and by what they hold. */
interface Block {
  readonly height: number;
  readonly width: number;
  readonly filled: number;
  readonly held: string;
}

export type Blocks = ReadonlyMap<string, Block>;

/** Every block that spilled, by workbook, sheet and cell. */
export const spilledBlocks = (model: FormulaDataModel): Blocks => {
  const found = new Map<string, Block>();
  const cells = model.getArrayFormulaCellData();
  for (const [unit, sheets] of Object.entries(model.getArrayFormulaRange())) {
    for (const [sheet, rows] of Object.entries(sheets ?? {})) {
      for (const [row, columns] of Object.entries(rows ?? {})) {
        for (const [column, range] of Object.entries<Nullable<IRange>>(columns ?? {})) {
          if (!range) continue;
          const held: unknown[] = [];
          for (let r = range.startRow; r <= range.endRow; r += 1) {
            for (let c = range.startColumn; c <= range.endColumn; c += 1) {
              const cell = cells[unit]?.[sheet]?.[r]?.[c];
              held.push(cell ? (cell.v ?? "") : null);
            }
          }
          found.set([unit, sheet, row, column].join(" "), {
            height: range.endRow - range.startRow,
            width: range.endColumn - range.startColumn,
            filled: held.filter((one) => one !== null).length,
            held: JSON.stringify(held),
          });
        }
      }
    }
  }
  return found;
};

/** Whether a block is gone, smaller, or less full. */
export const hasShrunk = (before: Blocks, now: Blocks): boolean =>
  [...before].some(([key, block]) => {
    const next = now.get(key);
    return next === undefined || next.height < block.height || next.width < block.width || next.filled < block.filled;
  });

/** Whether two blocks or more differ, so that one of them may have been worked out from what the other held before. */
export const haveChanged = (before: Blocks, now: Blocks): boolean =>
  [...now].filter(([key, block]) => {
    const last = before.get(key);
    return last === undefined || last.height !== block.height || last.width !== block.width || last.held !== block.held;
  }).length > 1;
