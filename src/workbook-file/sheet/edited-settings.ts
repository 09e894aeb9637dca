import { columnPlace } from "../../sheets/cell-address";
import type { SheetData } from "../../sheets/sheet-data";
import {
  inOrderOf, insertions, isClosed, prefixed, prefixOf, type Splice, startOf, unclosed, withAttribute,
} from "../xml-splices";
import { childOf, childrenOf, countOf, type XmlElement } from "../xml-tree";
import type { EditedSheet } from "./edited-cells";
import { placedRows } from "./placed-cells";
import { POINTS } from "./read-cells";
import { USUAL_WIDTH } from "./read-settings";
import { HIGHEST } from "./written-cells";
import { fileWidth, mergedXml } from "./written-sheet";

/** The children of a sheet in the order of CT_Worksheet (ECMA-376-1, A.2, sml.xsd). */
const ORDER = [
  "sheetPr", "dimension", "sheetViews", "sheetFormatPr", "cols", "sheetData", "sheetCalcPr", "sheetProtection", "protectedRanges",
  "scenarios", "autoFilter", "sortState", "dataConsolidate", "customSheetViews", "mergeCells", "phoneticPr", "conditionalFormatting",
  "dataValidations", "hyperlinks", "printOptions", "pageMargins", "pageSetup", "headerFooter", "rowBreaks", "colBreaks",
  "customProperties", "cellWatches", "ignoredErrors", "smartTags", "drawing", "legacyDrawing", "legacyDrawingHF", "drawingHF", "picture",
  "oleObjects", "controls", "webPublishItems", "tableParts", "extLst",
];

/** An element in the place of one of its name, put in where there is none, and taken away where it is empty. */
const replaced = (text: string, root: XmlElement, name: string, xml: string): readonly Splice[] => {
  const there = childOf(root, name);
  if (there !== undefined) return [{ from: there.from, to: there.to, text: xml }];
  return xml === "" ? [] : inOrderOf(text, root, ORDER, name, xml);
};

interface Stretch {
  readonly min: number;
  readonly max: number;
  /** Its start tag without its end. */
  readonly tag: string;
}

/** Stretches of columns with one of them by itself. */
const alone = (stretches: readonly Stretch[], column: number, blank: string): readonly Stretch[] => {
  const isIn = ({ min, max }: Stretch): boolean => min <= column && column <= max;
  if (!stretches.some(isIn)) return [...stretches, { min: column, max: column, tag: blank }];
  return stretches.flatMap((one) =>
    !isIn(one) ? [one] : [
      ...(one.min < column ? [{ ...one, max: column - 1 }] : []), { ...one, min: column, max: column },
      ...(one.max > column ? [{ ...one, min: column + 1 }] : []),
    ]);
};

const isHidden = ({ hiddenColumns = [] }: SheetData, name: string): boolean => hiddenColumns.includes(name);

const columnSplices = ({ text, root, before, now }: EditedSheet): readonly Splice[] => {
  const names = [before, now].flatMap(({ columnWidths = {}, hiddenColumns = [] }) => [...Object.keys(columnWidths), ...hiddenColumns]);
  const width = ({ columnWidths = {} }: SheetData, name: string): number => columnWidths[name] ?? USUAL_WIDTH;
  const other = [...new Set(names)].filter((name) =>
    width(before, name) !== width(now, name) || isHidden(before, name) !== isHidden(now, name));
  if (other.length === 0) return [];
  const prefix = prefixOf(text, root);
  let stretches: readonly Stretch[] = childrenOf(childOf(root, "cols"), "col").map((col) => (
    { min: countOf(col.attributes["min"]) ?? 1, max: countOf(col.attributes["max"]) ?? 1, tag: unclosed(startOf(text, col)) }
  ));
  for (const name of other) {
    const column = columnPlace(name) + 1;
    stretches = alone(stretches, column, `<${prefix}col`).map((one) => {
      if (one.min !== column) return one;
      const sized = width(before, name) === width(now, name)
        ? one.tag
        : withAttribute(withAttribute(one.tag, "width", String(fileWidth(width(now, name)))), "customWidth", "1");
      return { ...one, tag: withAttribute(sized, "hidden", isHidden(now, name) ? "1" : "") };
    });
  }
  const written = [...stretches].sort((one, next) => one.min - next.min).map(({ min, max, tag }) =>
    `${withAttribute(withAttribute(tag, "min", String(min)), "max", String(max))}/>`);
  return replaced(text, root, "cols", `<${prefix}cols>${written.join("")}</${prefix}cols>`);
};

const rowSplices = ({ text, root, before, now }: EditedSheet): readonly Splice[] => {
  const sheetData = childOf(root, "sheetData");
  if (sheetData === undefined) return [];
  const height = ({ rowHeights = {} }: SheetData, row: number): number | undefined => rowHeights[row];
  const hides = ({ hiddenRows = [] }: SheetData, row: number): boolean => hiddenRows.includes(row);
  const numbers = [before, now].flatMap(({ rowHeights = {}, hiddenRows = [] }) => [...Object.keys(rowHeights).map(Number), ...hiddenRows]);
  const other = new Set(numbers.filter((row) => height(before, row) !== height(now, row) || hides(before, row) !== hides(now, row)));
  if (other.size === 0) return [];
  const tagged = (tag: string, row: number): string => {
    const points = height(now, row);
    const size = points === undefined ? "" : String(Math.min(points * POINTS, HIGHEST));
    const sized = height(before, row) === points
      ? tag
      : withAttribute(withAttribute(tag, "ht", size), "customHeight", size === "" ? "" : "1");
    return withAttribute(sized, "hidden", hides(now, row) ? "1" : "");
  };
  const rows = placedRows(sheetData);
  const splices = rows.filter(({ number }) => other.has(number)).map(({ number, element }): Splice => {
    other.delete(number);
    const tag = tagged(unclosed(startOf(text, element)), number);
    return { from: element.from, to: element.opened, text: tag + (isClosed(element) ? "/>" : ">") };
  });
  const there = rows.map(({ number, element }) => ({ at: number, element }));
  const added = [...other].map((at) => ({ at, xml: `${tagged(`<${prefixOf(text, sheetData)}row r="${at}"`, at)}/>` }));
  return [...splices, ...insertions(text, sheetData, there, added)];
};

const mergedSplices = ({ text, root, before, now }: EditedSheet): readonly Splice[] => {
  const [was, is] = [mergedXml(before), mergedXml(now)];
  return was === is ? [] : replaced(text, root, "mergeCells", prefixed(is, prefixOf(text, root)));
};

/** Widths, heights, what is hidden and what is merged, where a person has made them others. */
export const editedSettings = (sheet: EditedSheet): readonly Splice[] =>
  [...columnSplices(sheet), ...rowSplices(sheet), ...mergedSplices(sheet)];
