import { cellAddress, type CellPlace } from "../../sheets/cell-address";
import type { CellBlock } from "../../sheets/cell-blocks";
import { LONGEST_STORED } from "../formula/sheet-formula";
import { shiftedFormula } from "../formula/shifted-formula";
import { childOf, countOf, type XmlElement } from "../xml-tree";
import { plainText } from "../xml-text";
import { fileBlock } from "./file-block";
import { placedRows } from "./placed-cells";

/**
 * What a formula of a cell is: of one value; an array that takes up as many cells as it comes to, by the metadata of its cell ([MS-XLSX]
 * 2.2.4.17); an array of a set block of cells (ECMA-376-1, 18.3.1.40).
 */
export type FormulaKind = "plain" | "dynamic" | "array";

/** A formula as it lies in a file. */
export interface FormulaCell extends CellPlace {
  readonly address: string;
  readonly cell: XmlElement;
  readonly element: XmlElement;
  /** What it says, of a shared one what it says here. */
  readonly text: string;
  readonly kind: FormulaKind;
  readonly block: CellBlock;
  /** The formula that says it for this cell and others, where they share one; its own then for the first of them. */
  readonly sharedWith: CellPlace | undefined;
}

const kindOf = (cell: XmlElement, { attributes }: XmlElement): FormulaKind =>
  attributes["t"] !== "array" ? "plain" : (countOf(cell.attributes["cm"]) ?? 0) > 0 ? "dynamic" : "array";

/** The formulas of the cells of a sheet, but for what-if tables, and shared ones whose first is not there. */
export const formulaCells = (sheet: XmlElement): readonly FormulaCell[] => {
  const shared = new Map<string, CellPlace & { readonly text: string }>();
  return placedRows(childOf(sheet, "sheetData")).flatMap(({ cells }) => cells).flatMap(({ element: cell, row, column }) => {
    const element = childOf(cell, "f");
    const { t: type, si, ref = "" } = element?.attributes ?? {};
    if (element === undefined || type === "dataTable") return [];
    const own = plainText(element.text).replace(/^=/, "");
    const isShared = type === "shared" && si !== undefined;
    if (isShared && own !== "") shared.set(si, { row, column, text: own });
    const first = isShared ? shared.get(si) : undefined;
    const isTold = own === "" && first !== undefined && first.text.length <= LONGEST_STORED;
    const text = isTold ? shiftedFormula(first.text, row - first.row, column - first.column) : own;
    if (text === "") return [];
    const kind = kindOf(cell, element);
    const block = (kind === "plain" ? undefined : fileBlock(ref)) ?? { row, column, rows: 1, columns: 1 };
    return [{ row, column, address: cellAddress({ row, column }), cell, element, text, kind, block, sharedWith: first }];
  });
};
