import { type ICellData, type IStyleData, WrapStrategy } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { type CellPlace, cellPlace } from "../sheets/cell-address";
import { valueCell } from "./engine-snapshot";
import type { OpenBook } from "./open-book";
import { type TypedCell, typedCell } from "./typed-cell";
import type { CellPut, Workbook } from "./workbook";

export const GENERAL = "General";

const EMPTY: ICellData = { v: null, f: null, si: null, p: null };

const cellOf = (typed: TypedCell): ICellData => {
  if (typed.kind === "nothing") return EMPTY;
  if (typed.kind === "formula") return { ...EMPTY, f: typed.formula };
  return { ...EMPTY, ...valueCell(typed.value), ...(typed.format === undefined ? {} : { s: { n: { pattern: typed.format } } }) };
};

const putStyle = (format: string | undefined, wraps: boolean | undefined): IStyleData => ({
  ...(format === undefined ? {} : { n: format === GENERAL ? null : { pattern: format } }),
  ...(wraps === undefined ? {} : { tb: wraps ? WrapStrategy.WRAP : null }),
});

const putCell = ({ formula, value, format, wraps }: CellPut): ICellData => ({
  ...(formula === undefined
    ? value === undefined
      ? {}
      : value === null
        ? EMPTY
        : { ...EMPTY, ...valueCell(value, format) }
    : { ...EMPTY, f: formula }),
  ...(format === undefined && wraps === undefined ? {} : { s: putStyle(format, wraps) }),
});

const rangeOf = ({ row, column }: CellPlace) => ({ startRow: row, endRow: row, startColumn: column, endColumn: column });

/** Writes cells, as typed or as they are. */
export const cellsWritten = ({ sheetNamed, styleOf, onSheet }: OpenBook): Pick<Workbook, "setCell" | "put"> => ({
  setCell: (name, address, input) => {
    const place = cellPlace(address);
    const format = styleOf(sheetNamed(name).getCellRaw(place.row, place.column))?.n?.pattern;
    const value = cellOf(typeof input === "string" ? typedCell(input, format) : { kind: "value", value: input });
    if (!onSheet(SetRangeValuesCommand.id, name, { range: rangeOf(place), value }))
      throw new Error(`${name}!${address}: the sheet does not take "${String(input)}"`);
  },
  put: (name, cells) => {
    const value: Record<number, Record<number, ICellData>> = {};
    for (const [address, put] of Object.entries(cells)) {
      const { row, column } = cellPlace(address);
      (value[row] ??= {})[column] = putCell(put);
    }
    const [first] = Object.keys(cells);
    if (first === undefined) return;
    // The command goes by the cells of the value; it only needs some range.
    if (!onSheet(SetRangeValuesCommand.id, name, { range: rangeOf(cellPlace(first)), value }))
      throw new Error(`${name}: the sheet does not take what is put into ${Object.keys(cells).join(", ")}`);
  },
});
