import type { SheetsHost } from "../pane/host";
import { cellPlace } from "../sheets/cell-address";
import type { CellData, SheetData } from "../sheets/sheet-data";
import { enteredText } from "./cells";
import { run } from "./run";
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

/** The sheets of the workbook in Excel; `hasAreas` where it takes blocks of cells together. */
export const excelSheets = (hasAreas: boolean): SheetsHost => ({
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
  add: (sheets) =>
    run({ asked: `to add ${sheets.map(({ name }) => name).join(", ")}`, sheets: [] }, async (context) => {
      const { worksheets } = context.workbook;
      const added = sheets.map(({ name }) => worksheets.add(name));
      await context.sync();
      try {
        // The last one first: a formula finds the sheets after its own worked out.
        for (const [index, sheet] of [...sheets.entries()].reverse()) {
          const made = added[index];
          if (made !== undefined) filled(made, sheet, hasAreas);
        }
        added[0]?.activate();
        await context.sync();
      } catch (error) {
        for (const sheet of added) sheet.delete();
        await context.sync();
        throw error;
      }
    }),
});
