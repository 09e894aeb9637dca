import { cellAddress, columnName, columnPlace } from "../../sheets/cell-address";
import type { SheetData } from "../../sheets/sheet-data";
import { fileColour } from "../look/colours";
import { DECLARATION, MAIN } from "../namespaces";
import { attributeText, escapedText } from "../xml-text";
import { DIGIT, USUAL_WIDTH, WIDTH_PARTS } from "./read-settings";
import { type CellWriting, type Extent, writtenCells } from "./written-cells";
import { type LongLists, listsXml } from "./written-lists";
import { rulesXml } from "./written-rules";

/** What stands at the top of printed pages, and how much of a sheet is printed. */
export interface Printing {
  readonly job?: string;
  readonly date?: string;
  /** Columns from the left that are printed, where those behind them are read by other sheets alone. */
  readonly columns?: number;
}

/** A row whose height nobody has set, in points, as a live sheet has it. */
const USUAL_HEIGHT = 16.5;
/** A page upright takes up some 700 pixels at full size: what is wider is laid across. */
const UPRIGHT = 700;

/** The widest column in characters, and the longest header ("Excel specifications and limits"). */
const WIDEST = 255;
const LONGEST_HEADER = 255;
/** A date written out in any language. */
const LONGEST_DATE = 40;

export const fileWidth = (pixels: number): number => Math.min(Math.trunc((pixels / DIGIT) * WIDTH_PARTS) / WIDTH_PARTS, WIDEST);

const viewXml = ({ frozenRows = 0, frozenColumns = 0, hidesGridLines, isHidden }: SheetData, isFirst: boolean): string => {
  const shown = `${hidesGridLines ? ' showGridLines="0"' : ""}${isFirst && !isHidden ? ' tabSelected="1"' : ""}`;
  if (frozenRows === 0 && frozenColumns === 0) return `<sheetViews><sheetView${shown} workbookViewId="0"/></sheetViews>`;
  const pane = frozenRows === 0 ? "topRight" : frozenColumns === 0 ? "bottomLeft" : "bottomRight";
  const split = `${frozenColumns > 0 ? ` xSplit="${frozenColumns}"` : ""}${frozenRows > 0 ? ` ySplit="${frozenRows}"` : ""}`;
  const corner = cellAddress({ row: frozenRows, column: frozenColumns });
  return `<sheetViews><sheetView${shown} workbookViewId="0"><pane${split} topLeftCell="${corner}" activePane="${pane}" state="frozen"/>` +
    `<selection pane="${pane}"/></sheetView></sheetViews>`;
};

const columnsXml = ({ columnWidths = {}, hiddenColumns = [] }: SheetData): string => {
  const hidden = new Set(hiddenColumns);
  const names = [...new Set([...Object.keys(columnWidths), ...hiddenColumns])].sort((one, other) => columnPlace(one) - columnPlace(other));
  if (names.length === 0) return "";
  const columns = names.map((name) => {
    const width = columnWidths[name];
    const size = ` width="${fileWidth(width ?? USUAL_WIDTH)}"${width === undefined ? "" : ' customWidth="1"'}`;
    const at = columnPlace(name) + 1;
    return `<col min="${at}" max="${at}"${size}${hidden.has(name) ? ' hidden="1"' : ""}/>`;
  });
  return `<cols>${columns.join("")}</cols>`;
};

export const mergedXml = ({ merged = [] }: SheetData): string => {
  // One cell by itself is no merged block to a spreadsheet.
  const several = merged.filter((ref) => ref.split(":")[0] !== ref.split(":")[1]);
  const blocks = several.map((ref) => `<mergeCell ref="${attributeText(ref)}"/>`);
  return blocks.length === 0 ? "" : `<mergeCells count="${blocks.length}">${blocks.join("")}</mergeCells>`;
};

/** Marks of a header are doubled where they are meant as they stand (ECMA-376-1, 18.3.1.46). */
const headerText = (text: string): string => text.replaceAll("&", "&&");

const printXml = (sheet: SheetData, columns: number, { job, date }: Printing): string => {
  const { columnWidths = {}, hiddenColumns = [] } = sheet;
  let width = 0;
  for (let column = 0; column < columns; column += 1) {
    const name = columnName(column);
    if (!hiddenColumns.includes(name)) width += columnWidths[name] ?? USUAL_WIDTH;
  }
  const [middle, right] = [`&C${headerText(sheet.name)}`, date ? `&R${headerText(date.slice(0, LONGEST_DATE))}` : ""];
  const header = (job ? `&L${headerText(job.slice(0, (LONGEST_HEADER - middle.length - right.length) / 2))}` : "") + middle + right;
  return '<pageMargins left="0.5" right="0.5" top="0.75" bottom="0.6" header="0.3" footer="0.3"/>' +
    `<pageSetup orientation="${width > UPRIGHT ? "landscape" : "portrait"}" fitToHeight="0"/>` +
    `<headerFooter><oddHeader>${escapedText(header)}</oddHeader><oddFooter>&amp;C&amp;P / &amp;N</oddFooter></headerFooter>`;
};

export interface WrittenSheet {
  readonly xml: string;
  /** What is printed: to the last row and the last column with a cell, in the columns that are meant to be. */
  readonly printed: Extent;
}

/** A sheet as a part, its children in the order of CT_Worksheet (ECMA-376-1, A.2, sml.xsd). */
export const writtenSheet = (
  sheet: SheetData, isFirst: boolean, writing: CellWriting, long: LongLists, printing: Printing,
): WrittenSheet => {
  const { xml: cells, dimension, columns, within } = writtenCells(sheet, writing);
  const printed = within(printing.columns ?? columns);
  const colour = sheet.tabColour === undefined ? undefined : fileColour(sheet.tabColour);
  const hasRules = writing.hasFormulas || writing.shownLook === undefined;
  const xml = [
    `${DECLARATION}<worksheet xmlns="${MAIN}">`,
    `<sheetPr>${colour === undefined ? "" : `<tabColor rgb="${colour}"/>`}<pageSetUpPr fitToPage="1"/></sheetPr>`,
    `<dimension ref="${dimension}"/>`,
    viewXml(sheet, isFirst),
    `<sheetFormatPr defaultColWidth="${fileWidth(USUAL_WIDTH)}" defaultRowHeight="${USUAL_HEIGHT}" customHeight="1"/>`,
    columnsXml(sheet),
    cells,
    mergedXml(sheet),
    hasRules ? rulesXml(writing.hasFormulas ? sheet : { ...sheet, cells: {} }, writing.styles) : "",
    listsXml(sheet, long),
    printXml(sheet, printed.columns, printing),
    "</worksheet>",
  ].join("");
  return { xml, printed };
};
