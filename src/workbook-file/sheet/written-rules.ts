import { cellAddress, cellPlace } from "../../sheets/cell-address";
import { blockAddress, type CellBlock, cellBlocks } from "../../sheets/cell-blocks";
import type { SheetData } from "../../sheets/sheet-data";
import { tapeRules } from "../../sheets/tape-rules";
import { fileFormula } from "../formula/file-formula";
import type { WrittenStyles } from "../look/written-styles";
import { attributeText, escapedText } from "../xml-text";

interface Ranked {
  readonly sqref: string;
  readonly rules: readonly { readonly formula: string; readonly style: number; readonly stops: boolean }[];
}

/** Blocks in groups whose first cell is at the top left of them all, so that a formula for that cell can be read one way only. */
const groups = (blocks: readonly CellBlock[]): readonly (readonly CellBlock[])[] => {
  const found: CellBlock[][] = [];
  for (const block of blocks) {
    const group = found[found.length - 1];
    const first = group?.[0];
    if (group !== undefined && first !== undefined && block.column >= first.column && block.row >= first.row) group.push(block);
    else found.push([block]);
  }
  return found;
};

/** Lengths as they are read on a tape. */
const ofTape = (cells: SheetData["cells"], styles: WrittenStyles): readonly Ranked[] => {
  const byFormat = new Map<string, string[]>();
  for (const [address, { format }] of Object.entries(cells))
    if (format !== undefined) byFormat.set(format, [...(byFormat.get(format) ?? []), address]);
  return [...byFormat].flatMap(([format, addresses]) => {
    const rules = tapeRules(format).map(({ formula, numberFormat }) => ({ formula, style: styles.rule({}, numberFormat) ?? 0 }));
    return rules.length === 0 ? [] : groups(cellBlocks(addresses.map(cellPlace))).map((group): Ranked => {
      const first = cellAddress(group[0] ?? { row: 0, column: 0 });
      const here = rules.map(({ formula, style }) => ({ formula: formula.slice(1).replaceAll(/\bRC\b/g, first), style, stops: false }));
      return { sqref: group.map(blockAddress).join(" "), rules: here };
    });
  });
};

/** Looks by rule; one that asks the add-in is left to the extras, as a rule cannot call it (platform, "custom functions: synchronous"). */
const ofLooks = ({ rules = [] }: SheetData, styles: WrittenStyles): readonly Ranked[] =>
  rules.flatMap(({ cells, when, look }) => {
    const { formula, added } = fileFormula(when);
    const style = added.length > 0 ? undefined : styles.rule(look);
    return style === undefined ? [] : [{ sqref: cells, rules: [{ formula, style, stops: true }] }];
  });

/**
 * Conditional formats: how lengths are shown first, which stops nothing behind it, then the looks, of which the first that holds counts
 * alone and would stop that.
 */
export const rulesXml = (sheet: SheetData, styles: WrittenStyles): string => {
  let priority = 0;
  return [...ofTape(sheet.cells, styles), ...ofLooks(sheet, styles)].map(({ sqref, rules }) => {
    const written = rules.map(({ formula, style, stops }) => {
      priority += 1;
      const stop = stops ? ' stopIfTrue="1"' : "";
      return `<cfRule type="expression" dxfId="${style}" priority="${priority}"${stop}><formula>${escapedText(formula)}</formula></cfRule>`;
    });
    return `<conditionalFormatting sqref="${attributeText(sqref)}">${written.join("")}</conditionalFormatting>`;
  }).join("");
};
