import type { CellHost } from "../pane/host";
import { rangeOf } from "./cells";
import { run } from "./run";
import { showTape } from "./shown-tape";

/** Lengths that are inserted as they are read on a tape, by rules that Undo takes away again. */
export const insertedTape = (hasAreas: boolean): Required<Pick<CellHost, "showTape">> => ({
  showTape: async ({ at, cells }) => {
    const placed = cells.flatMap((row, down) =>
      row.flatMap((cell, right) => (cell === undefined ? [] : [{ row: at.row + down, column: at.column + right, format: cell.format }])));
    const asked = { asked: `to format cells of ${at.sheet}`, sheets: [at.sheet] };
    const ids = await run(asked, async (context) => {
      const added = showTape(context.workbook.worksheets.getItem(at.sheet), placed, hasAreas);
      for (const rule of added) rule.load("id");
      await context.sync();
      return new Set(added.map(({ id }) => id));
    });
    if (ids.size === 0) return async () => undefined;
    return () =>
      run(asked, async (context) => {
        const block = { ...at, rows: cells.length, columns: Math.max(...cells.map((row) => row.length)) };
        const { conditionalFormats } = rangeOf(context, block);
        conditionalFormats.load("items/id,items/type");
        await context.sync();
        // Those that somebody has taken away meanwhile are not looked for.
        for (const rule of conditionalFormats.items) if (rule.type === "Custom" && ids.has(rule.id)) rule.delete();
        await context.sync();
      });
  },
});
