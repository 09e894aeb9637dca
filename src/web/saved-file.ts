export { savedFile } from "../pane/saved-file";

/** What a workbook file is. */
export const EXCEL = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
