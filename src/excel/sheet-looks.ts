import { cellPlace } from "../sheets/cell-address";
import { blockAddress, cellBlocks, type CellBlock } from "../sheets/cell-blocks";
import { cellLooks } from "../sheets/cell-looks";
import type { Border, OwnLook } from "../sheets/own-look";
import type { SheetData } from "../sheets/sheet-data";

const ACROSS = { left: "Left", center: "Center", right: "Right" } as const;
const DOWN = { top: "Top", middle: "Center", bottom: "Bottom" } as const;

/** What is set for letters under each other: "180 for vertically-oriented text" (RangeFormat.textOrientation). */
const STACKED = 180;

/** The lines of a border as Excel names them; a double one has no weight of its own. */
const LINES = {
  thin: ["Continuous", "Thin"],
  hair: ["Continuous", "Hairline"],
  dotted: ["Dot", "Thin"],
  dashed: ["Dash", "Thin"],
  "dash-dot": ["DashDot", "Thin"],
  "dash-dot-dot": ["DashDotDot", "Thin"],
  double: ["Double", undefined],
  medium: ["Continuous", "Medium"],
  "medium-dashed": ["Dash", "Medium"],
  "medium-dash-dot": ["DashDot", "Medium"],
  "medium-dash-dot-dot": ["DashDotDot", "Medium"],
  "slant-dash-dot": ["SlantDashDot", "Medium"],
  thick: ["Continuous", "Thick"],
} as const satisfies Record<Border["line"], readonly [Excel.RangeBorder["style"], Excel.RangeBorder["weight"] | undefined]>;

/** The edges of a block, and the lines between its cells, that a side of each of its cells lies on. */
const EDGES = {
  top: ["EdgeTop", "InsideHorizontal"],
  bottom: ["EdgeBottom", "InsideHorizontal"],
  left: ["EdgeLeft", "InsideVertical"],
  right: ["EdgeRight", "InsideVertical"],
} as const;

const drawn = (format: Excel.RangeFormat, borders: NonNullable<OwnLook["borders"]>, { rows, columns }: CellBlock): void => {
  for (const side of Object.keys(EDGES) as (keyof typeof EDGES)[]) {
    const border = borders[side];
    if (border === undefined) continue;
    const [edge, inside] = EDGES[side];
    const hasInside = inside === "InsideHorizontal" ? rows > 1 : columns > 1;
    const [style, weight] = LINES[border.line];
    for (const place of hasInside ? [edge, inside] : [edge]) {
      const line = format.borders.getItem(place);
      line.style = style;
      if (weight !== undefined) line.weight = weight;
      line.color = border.ink;
    }
  }
};

const written = (font: Excel.RangeFont, { bold, italic, underline, font: name, size, ink }: OwnLook): void => {
  if (bold) font.bold = true;
  if (italic) font.italic = true;
  if (underline) font.underline = "Single";
  if (name !== undefined) font.name = name;
  if (size !== undefined) font.size = size;
  if (ink !== undefined) font.color = ink;
};

const show = (format: Excel.RangeFormat, look: OwnLook, block: CellBlock): void => {
  written(format.font, look);
  const { fill, wrap, across, down, turned, stacked, borders } = look;
  if (fill !== undefined) format.fill.color = fill;
  if (wrap) format.wrapText = true;
  if (across !== undefined) format.horizontalAlignment = ACROSS[across];
  if (down !== undefined) format.verticalAlignment = DOWN[down];
  if (stacked) format.textOrientation = STACKED;
  else if (turned !== undefined) format.textOrientation = turned;
  if (borders !== undefined) drawn(format, borders, block);
};

/** What of them has which look: cells by the look they share, style and what is its own together. */
const byLook = (cells: SheetData["cells"]): ReadonlyMap<string, readonly string[]> => {
  const found = new Map<string, string[]>();
  for (const [address, { style, look }] of Object.entries(cells)) {
    const whole: OwnLook = { ...(style === undefined ? {} : cellLooks[style]), ...look };
    const key = JSON.stringify(whole);
    if (key !== "{}") found.set(key, [...(found.get(key) ?? []), address]);
  }
  return found;
};

/** Makes the cells of a sheet look as they are to, block by block. */
export const showLooks = (sheet: Excel.Worksheet, { cells }: SheetData): void => {
  for (const [look, addresses] of byLook(cells)) {
    for (const block of cellBlocks(addresses.map(cellPlace)))
      show(sheet.getRange(blockAddress(block)).format, JSON.parse(look) as OwnLook, block);
  }
};
