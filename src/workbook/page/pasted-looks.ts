import type { Injector, IRange } from "@univerjs/core";
import { COPY_TYPE, ISheetClipboardService, PREDEFINED_HOOK_NAME_PASTE } from "@univerjs/preset-sheets-core";
import { type CarriedBlock, looksPasted } from "../carried-rules";

/** Ways to paste that leave the looks of the cells there as they are. */
const WITHOUT_LOOKS: ReadonlySet<string> = new Set([
  PREDEFINED_HOOK_NAME_PASTE.SPECIAL_PASTE_VALUE, PREDEFINED_HOOK_NAME_PASTE.SPECIAL_PASTE_COL_WIDTH,
  PREDEFINED_HOOK_NAME_PASTE.SPECIAL_PASTE_FORMULA,
]);

interface Run {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

/** Rows or columns that follow one another both where they were and where they go; those that are copied are repeated to fill the place. */
const runs = (copied: readonly number[], pasted: readonly number[]): readonly Run[] => {
  const times = Math.max(1, Math.floor(pasted.length / Math.max(1, copied.length)));
  const found: Run[] = [];
  for (const [index, to] of pasted.slice(0, times * copied.length).entries()) {
    const from = copied[index % copied.length] ?? 0;
    const last = found.at(-1);
    const isNext = last !== undefined && from === last.from + last.count && to === last.to + last.count;
    if (isNext) found[found.length - 1] = { ...last, count: last.count + 1 };
    else found.push({ from, to, count: 1 });
  }
  return found;
};

const blockOf = (rows: Run, columns: Run): CarriedBlock => {
  const from: IRange = {
    startRow: rows.from, endRow: rows.from + rows.count - 1, startColumn: columns.from, endColumn: columns.from + columns.count - 1,
  };
  return { from, down: rows.to - rows.from, right: columns.to - columns.from };
};

/** Looks by rule go with cells that are copied or cut, which the engine leaves behind; its own package for lists does as much. */
export const pastedLooks = (injector: Injector): void =>
  void injector.get(ISheetClipboardService).addClipboardHook({
    id: "looks-by-rule",
    onPasteCells: (copied, pasted, _cells, { copyType, pasteType }) => {
      if (!copied || WITHOUT_LOOKS.has(pasteType)) return { redos: [], undos: [] };
      const { range: from, ...source } = copied;
      const { range: to, ...target } = pasted;
      const isCut = copyType === COPY_TYPE.CUT;
      // Cells that are moved on their own sheet take their rules along with everything else that reads them.
      if (isCut && source.subUnitId === target.subUnitId) return { redos: [], undos: [] };
      const columns = runs(from.cols, to.cols);
      const blocks = runs(from.rows, to.rows).flatMap((rows) => columns.map((one) => blockOf(rows, one)));
      return looksPasted(injector, source, target, blocks, isCut);
    },
  });
