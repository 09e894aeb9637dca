import type { SheetsHost } from "../pane/host";
import { cellPlace } from "../sheets/cell-address";
import type { CellData, SheetData } from "../sheets/sheet-data";
import { enteredText } from "./cells";
import { asOneUndo, run } from "./run";
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

/** Adds sheets with all that is in them, or none. */
const added = async (sheets: readonly SheetData[], hasAreas: boolean, isOneUndo: boolean): Promise<void> => {
  const asked = { asked: `to add ${sheets.map(({ name }) => name).join(", ")}`, sheets: [] };
  let isThere = false;
  try {
    await run({ ...asked, isOneUndo }, async (context) => {
      const made = sheets.map(({ name }) => context.workbook.worksheets.add(name));
      await context.sync();
      isThere = true;
      // The last one first: a formula finds the sheets after its own worked out.
      for (const [index, sheet] of [...sheets.entries()].reverse()) {
        const one = made[index];
        if (one !== undefined) filled(one, sheet, hasAreas);
      }
      made[0]?.activate();
      await context.sync();
    });
  } catch (error) {
    // On its own: Excel has no Undo for a sheet that is deleted, so no group takes it (undo capabilities, Worksheet.delete).
    if (isThere) {
      await run(asked, async (context) => {
        for (const { name } of sheets) context.workbook.worksheets.getItem(name).delete();
        await context.sync();
      });
    }
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
  add: (sheets) => asOneUndo(hasUndoGroups, (isOneUndo) => added(sheets, hasAreas, isOneUndo)),
});
