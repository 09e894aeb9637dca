import type { Block, CellHost, HeldCell, HeldCells, Place, PutBlock, PutCell } from "../pane/host";
import { cellBlocks } from "../sheets/cell-blocks";
import { TEXT_FORMAT } from "../sheets/cell-format";
import { isReadOtherwise } from "../sheets/text-cell";
import { run } from "./run";
import { POINTS_A_PIXEL } from "./sheet-settings";

/** The cells of a block. */
export const rangeOf = (context: Excel.RequestContext, { sheet, row, column, rows, columns }: Block): Excel.Range =>
  context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, rows, columns);

/** The sheets that places are on, each once. */
export const sheetsOf = (places: readonly { readonly sheet: string }[]): readonly string[] => [
  ...new Set(places.map(({ sheet }) => sheet)),
];

/** A cell from what Excel answers for it: formulas holds the value where there is no formula, and an error's text is its value. */
const held = (formula: unknown, value: unknown, type: unknown, format: unknown): HeldCell => ({
  // A text that starts with = without being a formula is its own value.
  formula: typeof formula === "string" && formula.startsWith("=") && formula !== value ? formula : undefined,
  value: type === "Error" ? { error: String(value) } : value === "" ? null : (value as HeldCell["value"]),
  format: String(format),
});

/** What is set for a cell: null leaves it, an empty text empties it. */
export const enteredText = ({ formula, value, format }: PutCell): string | number | boolean | null => {
  if (formula !== undefined) return formula;
  if (value === undefined) return null;
  if (value === null) return "";
  return typeof value === "string" && format !== TEXT_FORMAT && isReadOtherwise(value) ? `'${value}` : value;
};

const matrix = (cells: PutBlock["cells"], part: (cell: PutCell) => unknown): unknown[][] => {
  const width = Math.max(...cells.map((row) => row.length));
  return cells.map((row) =>
    Array.from({ length: width }, (_, column) => {
      const cell = row[column];
      return cell === undefined ? null : (part(cell) ?? null);
    }),
  );
};

const oneCell = (context: Excel.RequestContext, { sheet, row, column }: Place): Excel.Range =>
  rangeOf(context, { sheet, row, column, rows: 1, columns: 1 });

/** A part of the format of each place. */
const formatsOf = (places: readonly Place[], part: "columnWidth" | "rowHeight" | "wrapText"): Promise<readonly Excel.RangeFormat[]> =>
  run({ asked: `to read ${sheetsOf(places).join(", ")}`, sheets: sheetsOf(places) }, async (context) => {
    const formats = places.map((place) => oneCell(context, place).format);
    for (const format of formats) format.load(part);
    await context.sync();
    return formats;
  });

const resize = (context: Excel.RequestContext, { at, widths = [], heights = [] }: PutBlock): void => {
  for (const [column, width] of widths.entries())
    if (width !== undefined) oneCell(context, { ...at, column: at.column + column }).format.columnWidth = width * POINTS_A_PIXEL;
  // Not left to Excel to fit: when this arrives there, what the functions answer has not.
  for (const [row, height] of heights.entries())
    if (height !== undefined) oneCell(context, { ...at, row: at.row + row }).format.rowHeight = height * POINTS_A_PIXEL;
};

const wrap = (context: Excel.RequestContext, { at, cells }: PutBlock): void => {
  for (const wraps of [true, false]) {
    const places = cells.flatMap((row, down) =>
      row.flatMap((cell, right) => (cell?.wraps === wraps ? [{ row: at.row + down, column: at.column + right }] : [])));
    for (const block of cellBlocks(places)) rangeOf(context, { ...block, sheet: at.sheet }).format.wrapText = wraps;
  }
};

/** Sets a block, to go to Excel with what else is asked of it. */
export const writeBlock = (context: Excel.RequestContext, block: PutBlock): void => {
  resize(context, block);
  const { at, cells } = block;
  const range = rangeOf(context, { ...at, rows: cells.length, columns: Math.max(...cells.map((row) => row.length)) });
  // The format first: a text that comes into a cell of another format might be taken for a date.
  if (cells.flat().some((cell) => cell?.format !== undefined)) range.numberFormat = matrix(cells, ({ format }) => format);
  if (cells.flat().some((cell) => cell?.formula !== undefined || cell?.value !== undefined)) range.formulas = matrix(cells, enteredText);
  wrap(context, block);
};

/** Reading and writing cells in Excel. */
export const excelCells: Pick<CellHost, "read" | "write" | "widths" | "heights" | "wraps"> = {
  read: (blocks) =>
    run({ asked: `to read ${sheetsOf(blocks).join(", ")}`, sheets: sheetsOf(blocks) }, async (context): Promise<readonly HeldCells[]> => {
      const ranges = blocks.map((block) => rangeOf(context, block));
      for (const range of ranges) range.load("formulas,values,valueTypes,numberFormat");
      await context.sync();
      return ranges.map(({ formulas, values, valueTypes, numberFormat }) =>
        formulas.map((row, down) =>
          row.map((formula: unknown, right) =>
            held(formula, values[down]?.[right], valueTypes[down]?.[right], numberFormat[down]?.[right]),
          ),
        ),
      );
    }),
  write: (blocks) =>
    run(
      { asked: `to write to ${sheetsOf(blocks.map(({ at }) => at)).join(", ")}`, sheets: sheetsOf(blocks.map(({ at }) => at)) },
      async (context) => {
        for (const block of blocks) writeBlock(context, block);
        await context.sync();
      },
    ),
  widths: async (block) => {
    const columns = Array.from({ length: block.columns }, (_, column) => ({ ...block, column: block.column + column }));
    return (await formatsOf(columns, "columnWidth")).map(({ columnWidth }) => columnWidth / POINTS_A_PIXEL);
  },
  heights: async (block) => {
    const rows = Array.from({ length: block.rows }, (_, row) => ({ ...block, row: block.row + row }));
    return (await formatsOf(rows, "rowHeight")).map(({ rowHeight }) => rowHeight / POINTS_A_PIXEL);
  },
  wraps: async (places) => (await formatsOf(places, "wrapText")).map(({ wrapText }) => wrapText),
};
