import { cellPlace, type CellPlace } from "../../sheets/cell-address";
import { fileFault } from "../file-fault";
import { COLUMNS, ROWS } from "../formula/formula-tokens";
import { childrenOf, countOf, type XmlElement } from "../xml-tree";

const ADDRESS = /^[A-Z]{1,3}[1-9]\d{0,6}$/;

/** Where a cell stands: by its address, or behind the one before it. */
const placeOf = ({ attributes: { r: address } }: XmlElement, row: number, column: number): CellPlace | undefined => {
  if (address === undefined) return column < COLUMNS ? { row, column } : undefined;
  if (!ADDRESS.test(address)) return undefined;
  const place = cellPlace(address);
  return place.row < ROWS && place.column < COLUMNS ? place : undefined;
};

export interface PlacedCell extends CellPlace {
  readonly element: XmlElement;
}

export interface PlacedRow {
  /** Counted from 1. */
  readonly number: number;
  readonly element: XmlElement;
  readonly cells: readonly PlacedCell[];
}

/** The rows of a sheet and their cells, each with its place. */
export const placedRows = (sheetData: XmlElement | undefined): readonly PlacedRow[] => {
  let number = 0;
  return childrenOf(sheetData, "row").map((element) => {
    number = countOf(element.attributes["r"]) ?? number + 1;
    if (number < 1 || number > ROWS) throw fileFault("broken");
    let column = 0;
    const cells = childrenOf(element, "c").map((cell): PlacedCell => {
      const place = placeOf(cell, number - 1, column);
      if (place === undefined) throw fileFault("broken");
      column = place.column + 1;
      return { ...place, element: cell };
    });
    return { number, element, cells };
  });
};
