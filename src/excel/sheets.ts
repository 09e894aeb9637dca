import type { Block, PutBlock, SheetsHost } from "../pane/host";
import { cellPlace } from "../sheets/cell-address";
import type { CellData, SheetData } from "../sheets/sheet-data";
import { enteredText, rangeOf, sheetsOf, writeBlock } from "./cells";
import { type Asked, asOneUndo, run } from "./run";
import { showLooks } from "./sheet-looks";
import { addRules } from "./sheet-rules";
import { setUp } from "./sheet-settings";

const put = ({ value, formula, format }: CellData) =>
  enteredText({
    ...(formula === undefined ? {} : { formula }),
    ...(value === undefined ? {} : { value }),
    ...(format === undefined ? {} : { format }),
  });

const filled = (sheet: Excel.Worksheet, data: SheetData, hasAreas: boolean): void => {
  const { cells } = data;
  const placed = Object.entries(cells).map(([address, cell]) => ({ ...cellPlace(address), cell }));
  const rows = Math.max(0, ...placed.map(({ row }) => row + 1));
  const columns = Math.max(0, ...placed.map(({ column }) => column + 1));
  const formats = Array.from({ length: rows }, () => Array<string | null>(columns).fill(null));
  const entries = Array.from({ length: rows }, () => Array<ReturnType<typeof put>>(columns).fill(null));
  for (const { row, column, cell } of placed) {
    if (cell.format !== undefined) (formats[row] ?? [])[column] = cell.format;
    (entries[row] ?? [])[column] = put(cell);
  }
  if (placed.length > 0) {
    const range = sheet.getRangeByIndexes(0, 0, rows, columns);
    range.numberFormat = formats;
    range.formulas = entries;
  }
  showLooks(sheet, data);
  setUp(sheet, data);
  addRules(sheet, data, hasAreas);
};

/** Formulas of a block as they stood, to be put back. */
interface Before {
  readonly block: Block;
  readonly formulas: unknown[][];
}

/** Puts formulas back and takes sheets away, each as far as Excel lets it. */
const takenAway = async (asked: Asked, sheets: readonly SheetData[], before: readonly Before[]): Promise<void> => {
  for (const { block, formulas } of before) {
    const put = run(asked, async (context) => {
      rangeOf(context, block).formulas = formulas;
      await context.sync();
    });
    // What cannot be written now could not be written before, and stands as it was.
    await put.catch(() => undefined);
  }
  // On its own: Excel has no Undo for a sheet that is deleted, so no group takes it (undo capabilities, Worksheet.delete).
  await run(asked, async (context) => {
    for (const { name } of sheets) context.workbook.worksheets.getItem(name).delete();
    await context.sync();
  });
};

const sizeOf = ({ at, cells }: PutBlock): Block =>
  ({ ...at, rows: cells.length, columns: Math.max(...cells.map((row) => row.length)) });

/** Adds sheets with all that is in them and writes blocks that go with them, or does nothing. */
const added = async (
  sheets: readonly SheetData[], blocks: readonly PutBlock[], hasAreas: boolean, isOneUndo: boolean,
): Promise<void> => {
  const asked = { asked: `to add ${sheets.map(({ name }) => name).join(", ")}`, sheets: sheetsOf(blocks.map(({ at }) => at)) };
  let before: readonly Before[] | undefined;
  try {
    await run({ ...asked, isOneUndo }, async (context) => {
      const there = blocks.map((block) => ({ block: sizeOf(block), range: rangeOf(context, sizeOf(block)) }));
      for (const { range } of there) range.load("formulas");
      const made = sheets.map(({ name }) => context.workbook.worksheets.add(name));
      await context.sync();
      before = there.map(({ block, range }) => ({ block, formulas: range.formulas }));
      // The last one first: a formula finds the sheets after its own worked out.
      for (const [index, sheet] of [...sheets.entries()].reverse()) {
        const one = made[index];
        if (one !== undefined) filled(one, sheet, hasAreas);
      }
      for (const block of blocks) writeBlock(context, block);
      made[0]?.activate();
      await context.sync();
    });
  } catch (error) {
    if (before !== undefined) await takenAway(asked, sheets, before);
    throw error;
  }
};

/** The sheets of the workbook in Excel; `hasAreas` where it takes blocks of cells together, `hasUndoGroups` where several steps are one. */
export const excelSheets = (hasAreas: boolean, hasUndoGroups: boolean): SheetsHost => ({
  names: () =>
    run({ asked: "to name the sheets", sheets: [] }, async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      return worksheets.items.map(({ name }) => name);
    }),
  show: (name) =>
    run({ asked: `to show ${name}`, sheets: [name] }, async (context) => {
      context.workbook.worksheets.getItem(name).activate();
      await context.sync();
    }),
  add: (sheets, blocks = []) => asOneUndo(hasUndoGroups, (isOneUndo) => added(sheets, blocks, hasAreas, isOneUndo)),
});
