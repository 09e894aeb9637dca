import { blockAddress, cellBlocks } from "../sheets/cell-blocks";
import type { CellPlace } from "../sheets/cell-address";
import { formatsOfAreas } from "./areas";
import { tapeRules } from "../sheets/tape-rules";

/** Excel takes no longer text for the addresses of several blocks (from memory). */
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

/** Shows lengths as they are read on a tape, by the number formats of their cells; answers the rules that were added for it. */
export const showTape = (
  sheet: Excel.Worksheet, cells: readonly (CellPlace & { readonly format?: string | undefined })[], hasAreas: boolean,
): readonly Excel.ConditionalFormat[] => {
  const byFormat = new Map<string, CellPlace[]>();
  for (const { format, ...place } of cells)
    if (format !== undefined) byFormat.set(format, [...(byFormat.get(format) ?? []), place]);
  return [...byFormat].flatMap(([format, places]) => {
    const rules = tapeRules(format);
    if (rules.length === 0) return [];
    return formatsOf(sheet, cellBlocks(places).map(blockAddress), hasAreas).flatMap((formats) =>
      rules.map(({ formula, numberFormat }) => {
        const added = formats.add("Custom");
        added.custom.rule.formulaR1C1 = formula;
        added.custom.format.numberFormat = numberFormat;
        // Colours by rule are for these cells too.
        added.stopIfTrue = false;
        return added;
      }));
  });
};
