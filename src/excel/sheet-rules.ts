import { cellPlace } from "../sheets/cell-address";
import { blockAddress, cellBlocks } from "../sheets/cell-blocks";
import type { OwnLook } from "../sheets/own-look";
import type { SheetData } from "../sheets/sheet-data";
import { formatsOfAreas } from "./areas";
import { tapeRules } from "./tape-rules";

/** Excel takes no longer text for the addresses of several blocks, nor for the choices of a list (from memory). */
const LONGEST = 255;

/** Addresses as few texts as they fit into. */
const joined = (addresses: readonly string[]): readonly string[] => {
  const texts: string[] = [];
  for (const address of addresses) {
    const last = texts[texts.length - 1];
    if (last !== undefined && last.length + 1 + address.length <= LONGEST) texts[texts.length - 1] = `${last},${address}`;
    else texts.push(address);
  }
  return texts;
};

const formatsOf = (sheet: Excel.Worksheet, addresses: readonly string[], hasAreas: boolean): Excel.ConditionalFormatCollection[] =>
  hasAreas
    ? joined(addresses).map((text) => (text.includes(",") ? formatsOfAreas(sheet, text) : sheet.getRange(text).conditionalFormats))
    : addresses.map((address) => sheet.getRange(address).conditionalFormats);

/** Lengths as they are read on a tape. */
const showTape = (sheet: Excel.Worksheet, cells: SheetData["cells"], hasAreas: boolean): void => {
  const byFormat = new Map<string, string[]>();
  for (const [address, { format }] of Object.entries(cells))
    if (format !== undefined) byFormat.set(format, [...(byFormat.get(format) ?? []), address]);
  for (const [format, addresses] of byFormat) {
    const rules = tapeRules(format);
    if (rules.length === 0) continue;
    for (const formats of formatsOf(sheet, cellBlocks(addresses.map(cellPlace)).map(blockAddress), hasAreas)) {
      for (const { formula, numberFormat } of rules) {
        const added = formats.add("Custom");
        added.custom.rule.formulaR1C1 = formula;
        added.custom.format.numberFormat = numberFormat;
        // Colours by rule are for these cells too.
        added.stopIfTrue = false;
      }
    }
  }
};

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
  showTape(sheet, cells, hasAreas);
  for (const { cells: block, options } of lists) {
    const source = options.join(",");
    if (source.length > LONGEST) continue;
    const { dataValidation } = sheet.getRange(block);
    dataValidation.rule = { list: { inCellDropDown: true, source } };
  }
};
