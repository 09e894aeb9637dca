import type { Block, CellHost } from "../pane/host";
import { rangeOf, sheetsOf } from "./cells";
import { run } from "./run";

/** Blocks that formulas spill, in an Excel that has them. */
export const excelSpills: Pick<CellHost, "spills" | "touchesSpill"> = {
  spills: (places) =>
    run({ asked: `to find what spilled on ${sheetsOf(places).join(", ")}`, sheets: sheetsOf(places) }, async (context) => {
      const parents = places.map((place) => rangeOf(context, { ...place, rows: 1, columns: 1 }).getSpillParentOrNullObject());
      const own = places.map((place) => rangeOf(context, { ...place, rows: 1, columns: 1 }).getSpillingToRangeOrNullObject());
      for (const range of [...parents, ...own]) range.load("isNullObject");
      await context.sync();
      const found = places.map((_, index) => {
        const [parent, range] = [parents[index], own[index]];
        if (range !== undefined && !range.isNullObject) return range;
        return parent === undefined || parent.isNullObject ? undefined : parent.getSpillingToRangeOrNullObject();
      });
      for (const range of found) range?.load("isNullObject,rowIndex,columnIndex,rowCount,columnCount");
      await context.sync();
      return places.map(({ sheet }, index): Block | undefined => {
        const range = found[index];
        return range === undefined || range.isNullObject
          ? undefined
          : { sheet, row: range.rowIndex, column: range.columnIndex, rows: range.rowCount, columns: range.columnCount };
      });
    }),
  touchesSpill: (block) =>
    run({ asked: `to find what spilled on ${block.sheet}`, sheets: [block.sheet] }, async (context) => {
      const range = rangeOf(context, block);
      range.load("hasSpill");
      await context.sync();
      // Null where some cells are spilled and some are not.
      return range.hasSpill !== false;
    }),
};

/** For an Excel without spills: nothing spills there. */
export const noSpills: Pick<CellHost, "spills" | "touchesSpill"> = {
  spills: async (places) => places.map(() => undefined),
  touchesSpill: async () => false,
};
