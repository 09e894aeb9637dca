export type { CellError, CellValue, Workbook } from "../workbook";
export type { CellData, SheetData, WorkbookData } from "../workbook-data";
export { workbookData } from "../workbook-data";
export { type BuiltFunctions, openWorkbook } from "./open-workbook";
