import type { SheetsHost } from "../pane/host";
import { cellPlace } from "../sheets/cell-address";
import { cellLooks } from "../sheets/cell-looks";
import type { OwnLook } from "../sheets/own-look";
import type { CellData, SheetData } from "../sheets/sheet-data";
import { enteredText } from "./cells";
import { run } from "./run";

/** Columns of the ready sheets are in pixels, 96 to the inch; Excel's are in points, 72 to the inch. */
const POINTS_A_PIXEL = 72 / 96;

/** Looks of cells that stand side by side in a row and are alike. */
interface Stretch {
  readonly row: number;
  readonly column: number;
  readonly columns: number;
  readonly look: OwnLook;
}

const stretches = (cells: SheetData["cells"]): readonly Stretch[] => {
  const found: Stretch[] = [];
  const styled = Object.entries(cells)
    .flatMap(([address, { style }]) => (style === undefined ? [] : [{ ...cellPlace(address), look: cellLooks[style] as OwnLook }]))
    .sort((one, other) => one.row - other.row || one.column - other.column);
  for (const { row, column, look } of styled) {
    const last = found[found.length - 1];
    if (last !== undefined && last.row === row && last.look === look && last.column + last.columns === column)
      found[found.length - 1] = { ...last, columns: last.columns + 1 };
    else found.push({ row, column, columns: 1, look });
  }
  return found;
};

const put = ({ value, formula, format }: CellData) =>
  enteredText({
    ...(formula === undefined ? {} : { formula }),
    ...(value === undefined ? {} : { value }),
    ...(format === undefined ? {} : { format }),
  });

const show = (range: Excel.Range, { bold, italic, size, ink, fill, wrap }: OwnLook): void => {
  const { format } = range;
  if (bold) format.font.bold = true;
  if (italic) format.font.italic = true;
  if (size !== undefined) format.font.size = size;
  if (ink !== undefined) format.font.color = ink;
  if (fill !== undefined) format.fill.color = fill;
  if (wrap) format.wrapText = true;
};

const filled = (sheet: Excel.Worksheet, { cells, columnWidths = {}, frozenRows = 0 }: SheetData): void => {
  const placed = Object.entries(cells).map(([address, cell]) => ({ ...cellPlace(address), cell }));
  const rows = Math.max(0, ...placed.map(({ row }) => row + 1));
  const columns = Math.max(0, ...placed.map(({ column }) => column + 1));
  const formats = Array.from({ length: rows }, () => Array<string | null>(columns).fill(null));
  const entries = Array.from({ length: rows }, () => Array<ReturnType<typeof put>>(columns).fill(null));
  for (const { row, column, cell } of placed) {
    if (cell.format !== undefined) (formats[row] ?? [])[column] = cell.format;
    (entries[row] ?? [])[column] = put(cell);
  }
  const range = sheet.getRangeByIndexes(0, 0, rows, columns);
  range.numberFormat = formats;
  range.formulas = entries;
  for (const { row, column, columns: width, look } of stretches(cells)) show(sheet.getRangeByIndexes(row, column, 1, width), look);
  for (const [column, pixels] of Object.entries(columnWidths))
    sheet.getRange(`${column}:${column}`).format.columnWidth = pixels * POINTS_A_PIXEL;
  if (frozenRows > 0) sheet.freezePanes.freezeRows(frozenRows);
};

/** The sheets of the workbook in Excel. */
export const excelSheets: SheetsHost = {
  names: () =>
    run({ asked: "to name the sheets", sheets: [] }, async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      return worksheets.items.map(({ name }) => name);
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
          if (made !== undefined) filled(made, sheet);
        }
        added[0]?.activate();
        await context.sync();
      } catch (error) {
        for (const sheet of added) sheet.delete();
        await context.sync();
        throw error;
      }
    }),
};
