import { cellAddress, type CellPlace } from "../../sheets/cell-address";
import type { KeptFile, SheetPart } from "../read-workbook-file";
import { childOf, countOf, isSet, type XmlElement } from "../xml-tree";
import { cellValue, type StoredValue } from "./cell-value";
import { fileBlock } from "./file-block";
import { placedRows } from "./placed-cells";

/** A formula of a file with the cells that show what it came to. */
export interface KeptBlock extends CellPlace {
  readonly address: string;
  /** Of one cell, of as many as it comes to, or of a set block of cells. */
  readonly kind: "one" | "dynamic" | "fixed";
  readonly rows: number;
  readonly columns: number;
}

export interface KeptSheet {
  readonly blocks: readonly KeptBlock[];
  readonly value: (address: string) => StoredValue | undefined;
  readonly format: (address: string) => string | undefined;
}

const blockOf = (place: CellPlace, cell: XmlElement, formula: XmlElement): KeptBlock => {
  const address = cellAddress(place);
  const { t: kind, ref = "" } = formula.attributes;
  if (kind !== "array") return { ...place, address, kind: "one", rows: 1, columns: 1 };
  const { rows, columns } = fileBlock(ref) ?? { rows: 1, columns: 1 };
  // A dynamic array is one by the metadata of its cell ([MS-XLSX] 2.2.4.17).
  return { ...place, address, kind: (countOf(cell.attributes["cm"]) ?? 0) > 0 ? "dynamic" : "fixed", rows, columns };
};

/** The formulas of a sheet as they lie in the file, and what its cells hold. */
export const keptSheet = ({ strings, styles }: KeptFile, { root }: SheetPart): KeptSheet => {
  const blocks: KeptBlock[] = [];
  const cells = new Map<string, XmlElement>();
  for (const row of placedRows(childOf(root, "sheetData"))) {
    for (const { element, ...place } of row.cells) {
      cells.set(cellAddress(place), element);
      const formula = childOf(element, "f");
      if (formula !== undefined && !isSet(formula.attributes["dt2D"]) && formula.attributes["t"] !== "dataTable")
        blocks.push(blockOf(place, element, formula));
    }
  }
  const of = <Found>(address: string, found: (cell: XmlElement) => Found): Found | undefined => {
    const cell = cells.get(address);
    return cell === undefined ? undefined : found(cell);
  };
  return {
    blocks,
    value: (address) => of(address, (cell) => cellValue(cell, strings)),
    format: (address) => of(address, (cell) => styles.cell(countOf(cell.attributes["s"])).format),
  };
};
