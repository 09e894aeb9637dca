import type { OwnLook } from "./own-look";
import type { StyleName } from "./sheet-data";

export type { StyleName } from "./sheet-data";

/** What a style name in the workbook data stands for. Colours are written #rrggbb in lower case. Every look differs from every other, since a cell's style name is found again by its look. */
export const cellLooks = {
  title: { bold: true, size: 14 },
  says: { italic: true, ink: "#5a5148" },
  heading: { bold: true, fill: "#ece5da" },
  input: { ink: "#123f7a", fill: "#fff8dc" },
  label: { bold: true },
  total: { bold: true, fill: "#e4efe2" },
  caution: { ink: "#8a2b12" },
} as const satisfies Record<StyleName, OwnLook>;

export const isStyleName = (name: unknown): name is StyleName => typeof name === "string" && Object.hasOwn(cellLooks, name);
