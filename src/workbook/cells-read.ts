import type { ICellData, IRange, Nullable, Worksheet } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { cellAddress, type CellPlace, cellPlace } from "../sheets/cell-address";
import { isGeneral } from "../sheets/cell-format";
import { wholeLook } from "./engine-look";
import { plainValue } from "./engine-snapshot";
import { errorCode, errorSentence } from "./error-sentence";
import { GENERAL } from "./cells-written";
import type { OpenBook } from "./open-book";
import { spillSentence } from "./spill-sentence";
import type { CellValue, SpilledBlock, Workbook } from "./workbook";

/** Digits that a spreadsheet keeps of a number ("Excel specifications and limits": number precision). */
const DIGITS = 15;

const valueOf = (cell: Nullable<ICellData>): CellValue => {
  const error = errorCode(cell);
  if (error !== undefined) return { error };
  return (cell ? plainValue(cell) : undefined) ?? null;
};

const shownAt = (sheet: Worksheet, { row, column }: CellPlace): string => {
  const cell = sheet.getCell(row, column);
  const plain = cell ? plainValue(cell) : undefined;
  return plain === undefined ? "" : typeof plain === "boolean" ? String(plain).toUpperCase() : String(plain);
};

const copied = (textAt: (place: CellPlace) => string, isShown: (row: number) => boolean, first: CellPlace, last: CellPlace): string => {
  const lines: string[] = [];
  for (let row = first.row; row <= last.row; row += 1) {
    if (!isShown(row)) continue;
    const texts: string[] = [];
    for (let column = first.column; column <= last.column; column += 1) texts.push(textAt({ row, column }));
    lines.push(texts.join("\t"));
  }
  return lines.join("\n");
};

const blockOf = ({ startRow, startColumn, endRow, endColumn }: IRange): SpilledBlock => ({
  row: startRow,
  column: startColumn,
  rows: endRow - startRow + 1,
  columns: endColumn - startColumn + 1,
});

const heldAt = (sheet: Worksheet, address: string): string => {
  const { row, column } = cellPlace(address);
  const block = sheet.getMergedCell(row, column);
  return block ? cellAddress({ row: block.startRow, column: block.startColumn }) : address;
};

type Reads = Pick<Workbook, "value" | "shown" | "look" | "spill" | "spills" | "format" | "errorMessage" | "formula" | "heldAt" | "copied">;

/** What the cells of a workbook hold and show, those that spilled among them. */
export const cellsRead = ({ injector, current, sheetNamed, styleOf }: OpenBook): Reads => {
  const model = injector.get(FormulaDataModel);

  // Spilled cells are not in the sheet itself. A cell that was typed into hides what would spill there.
  const cellAt = (sheet: Worksheet, { row, column }: CellPlace): Nullable<ICellData> => {
    const own = sheet.getCellRaw(row, column);
    if (own?.v !== undefined && own.v !== null) return own;
    return model.getArrayFormulaCellData()[current().getUnitId()]?.[sheet.getSheetId()]?.[row]?.[column] ?? own;
  };
  const isSpilled = (sheet: Worksheet, row: number, column: number): boolean =>
    Boolean(model.getArrayFormulaCellData()[current().getUnitId()]?.[sheet.getSheetId()]?.[row]?.[column]);
  const blocksOf = (sheet: Worksheet) => model.getArrayFormulaRange()[current().getUnitId()]?.[sheet.getSheetId()] ?? {};

  return {
    value: (name, address) => valueOf(cellAt(sheetNamed(name), cellPlace(address))),
    shown: (name, address) => shownAt(sheetNamed(name), cellPlace(address)),
    look: (name, address) => {
      const { row, column } = cellPlace(address);
      return wholeLook(styleOf(sheetNamed(name).getCell(row, column)) ?? {});
    },
    spill: (name, address) => {
      const sheet = sheetNamed(name);
      const place = cellPlace(address);
      const anchor = valueOf(cellAt(sheet, place));
      const range = blocksOf(sheet)[place.row]?.[place.column];
      if (!range || (typeof anchor === "object" && anchor?.error === "#SPILL!")) return [[anchor]];
      const { row, column, rows, columns } = blockOf(range);
      return Array.from({ length: rows }, (_, down) =>
        Array.from({ length: columns }, (__, along) => valueOf(cellAt(sheet, { row: row + down, column: column + along }))),
      );
    },
    spills: (name) =>
      Object.values(blocksOf(sheetNamed(name))).flatMap((columns) =>
        Object.values<Nullable<IRange>>(columns ?? {}).flatMap((range) => (range ? [blockOf(range)] : [])),
      ),
    format: (name, address) => {
      const { row, column } = cellPlace(address);
      return styleOf(sheetNamed(name).getCellRaw(row, column))?.n?.pattern ?? GENERAL;
    },
    errorMessage: (name, address) => {
      const sheet = sheetNamed(name);
      const place = cellPlace(address);
      const cell = cellAt(sheet, place);
      const block = errorCode(cell) === "#SPILL!" ? blocksOf(sheet)[place.row]?.[place.column] : undefined;
      return block ? spillSentence(sheet, block, (row, column) => isSpilled(sheet, row, column)) : errorSentence(cell);
    },
    formula: (name, address) => {
      const { row, column } = cellPlace(address);
      return model.getFormulaStringByCell(row, column, sheetNamed(name).getSheetId(), current().getUnitId()) ?? undefined;
    },
    heldAt: (name, address) => heldAt(sheetNamed(name), address),
    copied: (name, from, to) => {
      const sheet = sheetNamed(name);
      // A plain cell shows of a number what fits; what is copied is the number, as far as a spreadsheet keeps it.
      const textAt = (place: CellPlace): string => {
        const value = valueOf(cellAt(sheet, place));
        const isPlain = isGeneral(styleOf(sheet.getCellRaw(place.row, place.column))?.n?.pattern ?? undefined);
        return typeof value === "number" && isPlain ? String(Number(value.toPrecision(DIGITS))) : shownAt(sheet, place);
      };
      // What a filter hides is not copied, as in any spreadsheet.
      return copied(textAt, (row) => !sheet.getRowFiltered(row), cellPlace(from), cellPlace(to));
    },
  };
};
