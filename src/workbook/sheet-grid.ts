import { type IWorksheetData, VerticalAlign } from "@univerjs/core";

/** How every sheet looks where nothing says otherwise: rows as high as a line of text with some air, in pixels. */
export const SHEET_GRID = {
  defaultRowHeight: 22,
  gridlinesColor: "#ece8e1",
  defaultStyle: { vt: VerticalAlign.MIDDLE, pd: { t: 0, r: 6, b: 0, l: 5 } },
} as const satisfies Partial<IWorksheetData>;
