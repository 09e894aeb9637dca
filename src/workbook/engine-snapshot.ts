import {
  BuildTextUtils,
  CellValueType,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
  type Nullable,
} from "@univerjs/core";
import { cellPlace } from "../sheets/cell-address";
import { filterResources } from "./engine-filter";
import { hasLook, storedLook, styleOf } from "./engine-look";
import { ruleResources } from "./engine-rules";
import { settingsExtent, settingsSnapshot } from "./engine-settings";
import { SHEET_GRID } from "./sheet-grid";
import { roomFor } from "./sheet-room";
import { TEXT_FORMAT } from "../sheets/cell-format";
import type { CellData, PlainValue, SheetData, WorkbookData } from "./workbook-data";

const isNumberText = (text: string): boolean => text.trim() !== "" && !Number.isNaN(Number(text));

/** A value as the engine keeps it, text as text: text that reads as a number is marked, or the engine would take it for one. */
export const valueCell = (value: PlainValue, format?: string): ICellData => {
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: isNumberText(value) && format !== TEXT_FORMAT ? CellValueType.FORCE_STRING : CellValueType.STRING };
};

/** A sheet as the engine loads it; `styleId` answers the style of a cell or where the workbook keeps it. */
export const sheetSnapshot = (
  id: string, sheet: SheetData, styleId: (cell: CellData) => IStyleData | string | undefined,
): Partial<IWorksheetData> => {
  const { name, cells } = sheet;
  const cellData: Record<number, Record<number, ICellData>> = {};
  let { rows, columns } = settingsExtent(sheet);
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
    ...SHEET_GRID,
    ...settingsSnapshot(sheet),
  };
};

/** Workbook data as the engine loads it. */
export const engineSnapshot = (id: string, { sheets }: WorkbookData): IWorkbookData => {
  const styles: Record<string, IStyleData> = {};
  const styleId = (cell: CellData): string | undefined => {
    if (!hasLook(cell)) return undefined;
    const key = JSON.stringify([cell.style, cell.format, cell.look]);
    styles[key] ??= styleOf(cell);
    return key;
  };
  const idOf = (index: number): string => `sheet-${index + 1}`;
  const snapshots = sheets.map((sheet, index) => sheetSnapshot(idOf(index), sheet, styleId));
  return {
    id,
    name: "",
    appVersion: "",
    locale: LocaleType.EN_US,
    sheetOrder: snapshots.map(({ id: sheet }) => sheet ?? ""),
    styles,
    sheets: Object.fromEntries(snapshots.map((snapshot) => [snapshot.id ?? "", snapshot])),
    resources: [...ruleResources(sheets, idOf), ...filterResources(sheets, idOf)],
  };
};

// The engine ends a line within a cell as a paragraph of a document.
const withLines = (text: string): string => text.replaceAll("\r", "\n");

export const plainValue = ({ v, t, p }: ICellData): PlainValue | undefined => {
  // The text of a link, or of several lines, is in a document of its own.
  if (v === undefined || v === null) return p?.body ? withLines(BuildTextUtils.transform.getPlainText(p.body.dataStream)) : undefined;
  if (typeof v === "string") return withLines(v);
  return t === CellValueType.BOOLEAN ? v === 1 || v === true : v;
};

/** A cell as it is stored, from the engine's; undefined for an empty one. */
export const storedCell = (cell: ICellData, formula: string | undefined, style: Nullable<IStyleData>): CellData | undefined => {
  const value = formula === undefined ? plainValue(cell) : undefined;
  const format = style?.n?.pattern;
  const look = storedLook(style);
  if (value === undefined && formula === undefined && format === undefined && Object.keys(look).length === 0) return undefined;
  return {
    ...(value === undefined ? {} : { value }),
    ...(formula === undefined ? {} : { formula }),
    ...(format === undefined ? {} : { format }),
    ...look,
  };
};
