import { BooleanNumber, type IColumnData, type IRowData, type IWorksheetData, type Nullable } from "@univerjs/core";
import { columnName, columnPlace } from "../sheets/cell-address";
import { isColour } from "../sheets/own-look";
import { blockOfRange, rangeOf } from "./cell-range";
import { type SheetData, WIDEST } from "./workbook-data";

/** What a sheet has besides its name and its cells. */
type SheetSettings = Omit<SheetData, "name" | "cells" | "rules" | "lists" | "filter">;

/** How many rows and columns a sheet must have for its settings, whatever its cells take up. */
export const settingsExtent = (sheet: SheetSettings & Pick<SheetData, "filter">): { readonly rows: number; readonly columns: number } => {
  const blocks = [...(sheet.merged ?? []), ...(sheet.filter === undefined ? [] : [sheet.filter.cells])].map(rangeOf);
  return {
    rows: blocks.reduce((most, { endRow }) => Math.max(most, endRow + 1), sheet.frozenRows ?? 0),
    columns: blocks.reduce((most, { endColumn }) => Math.max(most, endColumn + 1), sheet.frozenColumns ?? 0),
  };
};

/** The settings of a sheet as the engine loads them. */
export const settingsSnapshot = (sheet: SheetSettings): Partial<IWorksheetData> => {
  const { columnWidths = {}, rowHeights = {}, hiddenRows = [], hiddenColumns = [], merged = [], frozenRows = 0, frozenColumns = 0 } = sheet;
  const columnData: Record<number, Partial<IColumnData>> = {};
  for (const [column, width] of Object.entries(columnWidths)) columnData[columnPlace(column)] = { w: width };
  for (const column of hiddenColumns) columnData[columnPlace(column)] = { ...columnData[columnPlace(column)], hd: BooleanNumber.TRUE };
  const rowData: Record<number, Partial<IRowData>> = {};
  for (const [row, height] of Object.entries(rowHeights)) rowData[Number(row) - 1] = { h: height, ia: BooleanNumber.FALSE };
  for (const row of hiddenRows) rowData[row - 1] = { ...rowData[row - 1], hd: BooleanNumber.TRUE };
  const freeze = {
    xSplit: frozenColumns, ySplit: frozenRows,
    startRow: frozenRows > 0 ? frozenRows : -1, startColumn: frozenColumns > 0 ? frozenColumns : -1,
  };
  return {
    ...(sheet.hidesGridLines ? { showGridlines: BooleanNumber.FALSE } : {}),
    ...(sheet.isHidden ? { hidden: BooleanNumber.TRUE } : {}),
    ...(sheet.tabColour === undefined ? {} : { tabColor: sheet.tabColour }),
    columnData,
    rowData,
    mergeData: merged.map(rangeOf),
    ...(frozenRows > 0 || frozenColumns > 0 ? { freeze } : {}),
  };
};

/** A size that can be stored. */
const sizeOf = (pixels: unknown): number | undefined => (typeof pixels === "number" && pixels > 0 ? Math.min(pixels, WIDEST) : undefined);

const isHidden = (part: Nullable<{ readonly hd?: BooleanNumber }>): boolean => part?.hd === BooleanNumber.TRUE;

const given = <Name extends keyof SheetSettings>(name: Name, value: SheetSettings[Name], count: number): SheetSettings =>
  count === 0 ? {} : { [name]: value };

/** Sheet settings as they are stored, from the engine's. */
export const storedSettings = (sheet: IWorksheetData): SheetSettings => {
  const { columnData, rowData, mergeData, freeze, tabColor } = sheet;
  const columns = Object.entries(columnData as Readonly<Record<string, Nullable<Partial<IColumnData>>>>);
  const rows = Object.entries(rowData as Readonly<Record<string, Nullable<Partial<IRowData>>>>);
  const widths = columns.flatMap(([column, data]) => {
    const width = sizeOf(data?.w);
    return width === undefined ? [] : [[columnName(Number(column)), width] as const];
  });
  // A height that the engine found by itself is found again.
  const heights = rows.flatMap(([row, data]) => {
    const height = data?.ia === BooleanNumber.FALSE ? sizeOf(data.h) : undefined;
    return height === undefined ? [] : [[String(Number(row) + 1), height] as const];
  });
  const hiddenRows = rows.flatMap(([row, data]) => (isHidden(data) ? [Number(row) + 1] : []));
  const hiddenColumns = columns.flatMap(([column, data]) => (isHidden(data) ? [columnName(Number(column))] : []));
  const merged = mergeData.map(blockOfRange);
  const { ySplit, xSplit } = freeze;
  return {
    ...given("columnWidths", Object.fromEntries(widths), widths.length),
    ...given("frozenRows", ySplit, ySplit),
    ...given("frozenColumns", xSplit, xSplit),
    ...given("rowHeights", Object.fromEntries(heights), heights.length),
    ...given("hiddenRows", hiddenRows, hiddenRows.length),
    ...given("hiddenColumns", hiddenColumns, hiddenColumns.length),
    ...given("merged", merged, merged.length),
    ...(sheet.showGridlines === BooleanNumber.FALSE ? { hidesGridLines: true } : {}),
    ...(sheet.hidden === BooleanNumber.TRUE ? { isHidden: true } : {}),
    ...(isColour(tabColor) ? { tabColour: tabColor } : {}),
  };
};
