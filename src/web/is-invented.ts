import type { WorkbookData } from "../workbook/workbook-data";

/** The demo's first title says it of the job; it goes along into a copy, a file and a ready sheet. */
const SAYS_SO = /\binvented job\b/;

/** Whether a workbook holds numbers of the demo's invented job. */
export const isInvented = ({ sheets }: WorkbookData): boolean =>
  sheets.some(({ cells }) => Object.values(cells).some(({ value }) => typeof value === "string" && SAYS_SO.test(value)));
