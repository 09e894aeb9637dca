import { cellPlace } from "../sheets/cell-address";
import type { OwnLook } from "../sheets/own-look";
import { LONGEST_CHOICES, type SheetData } from "../sheets/sheet-data";
import { showTape } from "./shown-tape";

const showLook = (format: Excel.ConditionalRangeFormat, { fill, ink, bold, italic, underline, strike }: OwnLook): void => {
  const { font } = format;
  if (fill !== undefined) format.fill.color = fill;
  if (ink !== undefined) font.color = ink;
  if (bold) font.bold = true;
  if (italic) font.italic = true;
  if (underline) font.underline = "Single";
  if (strike) font.strikethrough = true;
};

/** Looks by rule, lists of choices, and lengths as on a tape. */
export const addRules = (sheet: Excel.Worksheet, { cells, rules = [], lists = [] }: SheetData, hasAreas: boolean): void => {
  // Each is added before those that are there: "at the first/top priority" (ConditionalFormatCollection.add).
  for (const { cells: block, when, look } of [...rules].reverse()) {
    const added = sheet.getRange(block).conditionalFormats.add("Custom");
    added.custom.rule.formula = when;
    showLook(added.custom.format, look);
    added.stopIfTrue = true;
  }
  showTape(sheet, Object.entries(cells).map(([address, { format }]) => ({ ...cellPlace(address), format })), hasAreas);
  for (const { cells: block, options } of lists) {
    const source = options.join(",");
    if (source.length > LONGEST_CHOICES) continue;
    const { dataValidation } = sheet.getRange(block);
    dataValidation.rule = { list: { inCellDropDown: true, source } };
  }
};
