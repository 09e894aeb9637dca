import {
  BooleanNumber,
  BuildTextUtils,
  CellValueType,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
  type Nullable,
  WrapStrategy,
} from "@univerjs/core";
import { cellPlace, columnName, columnPlace } from "../sheets/cell-address";
import { type CellLook, cellLooks, type StyleName } from "../sheets/cell-looks";
import { roomFor } from "./sheet-room";
import { TEXT_FORMAT } from "./typed-cell";
import type { CellData, PlainValue, SheetData, WorkbookData } from "./workbook-data";

export const lookStyle = (look: CellLook): IStyleData => ({
  ...(look.bold ? { bl: BooleanNumber.TRUE } : {}),
  ...(look.italic ? { it: BooleanNumber.TRUE } : {}),
  ...(look.size === undefined ? {} : { fs: look.size }),
  ...(look.ink === undefined ? {} : { cl: { rgb: look.ink } }),
  ...(look.fill === undefined ? {} : { bg: { rgb: look.fill } }),
  ...(look.wrap ? { tb: WrapStrategy.WRAP } : {}),
});

export const styleOf = ({ style, format }: CellData): IStyleData => ({
  ...(style === undefined ? {} : lookStyle(cellLooks[style])),
  ...(format === undefined ? {} : { n: { pattern: format } }),
});

const isNumberText = (text: string): boolean => text.trim() !== "" && !Number.isNaN(Number(text));

/** A value as the engine keeps it, text as text: text that reads as a number is marked, or the engine would take it for one. */
export const valueCell = (value: PlainValue, format?: string): ICellData => {
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: isNumberText(value) && format !== TEXT_FORMAT ? CellValueType.FORCE_STRING : CellValueType.STRING };
};

/** A sheet as the engine loads it; `styleId` answers the style of a cell or where the workbook keeps it. */
export const sheetSnapshot = (
  id: string, { name, cells, columnWidths = {}, frozenRows = 0 }: SheetData, styleId: (cell: CellData) => IStyleData | string | undefined,
): Partial<IWorksheetData> => {
  const cellData: Record<number, Record<number, ICellData>> = {};
  let rows = 0;
  let columns = 0;
  for (const [address, cell] of Object.entries(cells)) {
    const { row, column } = cellPlace(address);
    rows = Math.max(rows, row + 1);
    columns = Math.max(columns, column + 1);
    const style = styleId(cell);
    (cellData[row] ??= {})[column] = {
      ...(cell.value === undefined ? {} : valueCell(cell.value, cell.format)),
      ...(cell.formula === undefined ? {} : { f: cell.formula }),
      ...(style === undefined ? {} : { s: style }),
    };
  }
  return {
    id,
    name,
    ...roomFor(rows, columns),
    cellData,
    columnData: Object.fromEntries(Object.entries(columnWidths).map(([column, width]) => [columnPlace(column), { w: width }])),
    ...(frozenRows > 0 ? { freeze: { xSplit: 0, ySplit: frozenRows, startRow: frozenRows, startColumn: -1 } } : {}),
  };
};

/** Workbook data as the engine loads it. */
export const engineSnapshot = (id: string, { sheets }: WorkbookData): IWorkbookData => {
  const styles: Record<string, IStyleData> = {};
  const styleId = (cell: CellData): string | undefined => {
    if (cell.style === undefined && cell.format === undefined) return undefined;
    const key = `${cell.style ?? ""} ${cell.format ?? ""}`;
    styles[key] ??= styleOf(cell);
    return key;
  };
  const snapshots = sheets.map((sheet, index) => sheetSnapshot(`sheet-${index + 1}`, sheet, styleId));
  return {
    id,
    name: "",
    appVersion: "",
    locale: LocaleType.EN_US,
    sheetOrder: snapshots.map(({ id: sheet }) => sheet ?? ""),
    styles,
    sheets: Object.fromEntries(snapshots.map((snapshot) => [snapshot.id ?? "", snapshot])),
  };
};

const isLookOf = (style: IStyleData, look: CellLook): boolean =>
  (style.bl === BooleanNumber.TRUE) === (look.bold ?? false) &&
  (style.it === BooleanNumber.TRUE) === (look.italic ?? false) &&
  (style.fs ?? undefined) === look.size &&
  (style.cl?.rgb?.toLowerCase() ?? undefined) === look.ink &&
  (style.bg?.rgb?.toLowerCase() ?? undefined) === look.fill &&
  (style.tb === WrapStrategy.WRAP) === (look.wrap ?? false);

const styleName = (style: IStyleData): StyleName | undefined =>
  (Object.keys(cellLooks) as StyleName[]).find((name) => isLookOf(style, cellLooks[name]));

export const plainValue = ({ v, t, p }: ICellData): PlainValue | undefined => {
  // The text of a link, or of several lines, is in a document of its own.
  if (v === undefined || v === null) return p?.body ? BuildTextUtils.transform.getPlainText(p.body.dataStream) : undefined;
  return t === CellValueType.BOOLEAN ? v === 1 || v === true : v;
};

/** A cell as it is stored, from the engine's; undefined for an empty one. */
export const storedCell = (cell: ICellData, formula: string | undefined, style: Nullable<IStyleData>): CellData | undefined => {
  const value = formula === undefined ? plainValue(cell) : undefined;
  const format = style?.n?.pattern;
  const look = style ? styleName(style) : undefined;
  if (value === undefined && formula === undefined && format === undefined && look === undefined) return undefined;
  return {
    ...(value === undefined ? {} : { value }),
    ...(formula === undefined ? {} : { formula }),
    ...(format === undefined ? {} : { format }),
    ...(look === undefined ? {} : { style: look }),
  };
};

/** Sheet settings as they are stored, from the engine's. */
export const storedSettings = (
  columns: Readonly<Record<number, Nullable<{ readonly w?: number }>>>,
  frozenRows: number,
): Pick<SheetData, "columnWidths" | "frozenRows"> => {
  const widths = Object.entries(columns).flatMap(([column, data]) =>
    typeof data?.w === "number" ? [[columnName(Number(column)), data.w] as const] : [],
  );
  return {
    ...(widths.length === 0 ? {} : { columnWidths: Object.fromEntries(widths) }),
    ...(frozenRows > 0 ? { frozenRows } : {}),
  };
};
