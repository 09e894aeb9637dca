import type { CellHost, PutBlock } from "../pane/host";
import { rangeOf, writeBlock } from "./cells";
import { codeOf, refusal } from "./refusal";
import { type Asked, asOneUndo, run } from "./run";
import { showTape } from "./shown-tape";

interface Written {
  /** The rules that show lengths as they are read on a tape. */
  readonly ids: ReadonlySet<string>;
  readonly refused?: string;
}

const written = (block: PutBlock, asked: Asked, hasAreas: boolean): Promise<Written> =>
  run(asked, async (context) => {
    const { at, cells } = block;
    const placed = cells.flatMap((row, down) =>
      row.flatMap((cell, right) => (cell === undefined ? [] : [{ row: at.row + down, column: at.column + right, format: cell.format }])));
    writeBlock(context, block);
    await context.sync();
    try {
      const added = showTape(context.workbook.worksheets.getItem(at.sheet), placed, hasAreas);
      for (const rule of added) rule.load("id");
      await context.sync();
      return { ids: new Set(added.map(({ id }) => id)) };
    } catch (error) {
      // Without the group it may be possible.
      if (asked.isOneUndo === true && codeOf(error) === "UndoNotSupported") throw error;
      const where = { asked: `to format cells of ${at.sheet}`, protectedSheets: [], isReadOnly: false };
      return { ids: new Set<string>(), refused: refusal(error, where) };
    }
  });

/** An insert with its lengths as they are read on a tape, by rules that Undo takes away again. */
export const insertedTape = (hasAreas: boolean, hasUndoGroups: boolean): Required<Pick<CellHost, "insert">> => ({
  insert: async (block) => {
    const { at, cells } = block;
    const asked = { asked: `to write to ${at.sheet}`, sheets: [at.sheet] };
    const { ids, refused } = await asOneUndo(hasUndoGroups, (isOneUndo) => written(block, { ...asked, isOneUndo }, hasAreas));
    const rulesThere = async (context: Excel.RequestContext): Promise<readonly Excel.ConditionalFormat[]> => {
      if (ids.size === 0) return [];
      const whole = { ...at, rows: cells.length, columns: Math.max(...cells.map((row) => row.length)) };
      const { conditionalFormats } = rangeOf(context, whole);
      conditionalFormats.load("items/id,items/type");
      await context.sync();
      // Those that somebody has taken away meanwhile are not looked for.
      return conditionalFormats.items.filter((rule) => rule.type === "Custom" && ids.has(rule.id));
    };
    const takeBack = (before: PutBlock): Promise<void> =>
      asOneUndo(hasUndoGroups, (isOneUndo) =>
        run({ ...asked, isOneUndo }, async (context) => {
          for (const rule of await rulesThere(context)) rule.delete();
          writeBlock(context, before);
          await context.sync();
        }));
    return { takeBack, ...(refused === undefined ? {} : { refused }) };
  },
});
