import { cellAddress, cellPlace } from "../../sheets/cell-address";
import { blockAddress } from "../../sheets/cell-blocks";
import { insertions, isClosed, prefixOf, type Splice, spliced, startOf, unclosed, without } from "../xml-splices";
import { childOf, type XmlElement } from "../xml-tree";
import type { CalculatedValue } from "./calculated";
import { fileBlock } from "./file-block";
import { type PlacedRow, placedRows } from "./placed-cells";
import { valueXml } from "./value-xml";

/** What of a sheet is another now. */
export interface SheetChanges {
  /** By address; null for a cell that shows nothing any more. */
  readonly values: ReadonlyMap<string, CalculatedValue>;
  /** Sizes of the blocks that dynamic arrays spill into, where they changed. */
  readonly spillsTo: ReadonlyMap<string, { readonly rows: number; readonly columns: number }>;
}

/** The start tag of a cell with the type of its value; what a rich value was said to be (vm) goes with the old one. */
const startTag = (text: string, cell: XmlElement, type: string): string => {
  const bare = unclosed(without(without(startOf(text, cell), "t"), "vm"));
  return `${bare}${type === "" ? "" : ` t="${type}"`}`;
};

const valueSplices = (text: string, cell: XmlElement, value: CalculatedValue): readonly Splice[] => {
  const prefix = prefixOf(text, cell);
  const written = valueXml(value);
  const inside = written === undefined ? "" : `<${prefix}v>${written.text}</${prefix}v>`;
  const tag = startTag(text, cell, written?.type ?? "");
  if (isClosed(cell)) return [{ from: cell.from, to: cell.to, text: inside === "" ? `${tag}/>` : `${tag}>${inside}</${prefix}c>` }];
  const old = cell.children.filter(({ name }) => name === "v" || name === "is");
  const behind = childOf(cell, "f")?.to ?? cell.opened;
  const [first, ...more] = old;
  return [
    { from: cell.from, to: cell.opened, text: `${tag}>` },
    first === undefined ? { from: behind, to: behind, text: inside } : { from: first.from, to: first.to, text: inside },
    ...more.map(({ from, to }) => ({ from, to, text: "" })),
  ];
};

/** A reference in the start tag of an element. */
export const referenceSplice = (text: string, { from, opened }: XmlElement, ref: string): Splice =>
  ({ from, to: opened, text: text.slice(from, opened).replace(/(\sref\s*=\s*)(?:"[^"]*"|'[^']*')/, `$1"${ref}"`) });

/** Cells that are not there yet, and rows for them where there are none. */
export const newCells = (
  text: string, sheetData: XmlElement, rows: readonly PlacedRow[], cells: ReadonlyMap<string, string>,
): readonly Splice[] => {
  const prefix = prefixOf(text, sheetData);
  const added = new Map<number, { readonly at: number; readonly xml: string }[]>();
  for (const [address, xml] of cells) {
    const { row, column } = cellPlace(address);
    const inRow = added.get(row) ?? [];
    inRow.push({ at: column, xml });
    added.set(row, inRow);
  }
  const byNumber = new Map(rows.map((row) => [row.number - 1, row]));
  const splices: Splice[] = [];
  const newRows: { readonly at: number; readonly xml: string }[] = [];
  for (const [number, inRow] of added) {
    const row = byNumber.get(number);
    if (row !== undefined) {
      const there = row.cells.map(({ column, element }) => ({ at: column, element }));
      splices.push(...insertions(text, row.element, there, inRow));
    } else {
      const xml = [...inRow].sort((one, other) => one.at - other.at).map((one) => one.xml).join("");
      newRows.push({ at: number, xml: `<${prefix}row r="${number + 1}">${xml}</${prefix}row>` });
    }
  }
  const there = rows.map(({ number, element }) => ({ at: number - 1, element }));
  return [...splices, ...insertions(text, sheetData, there, newRows)];
};

const addedSplices = (
  text: string, sheetData: XmlElement, rows: readonly PlacedRow[], values: SheetChanges["values"],
): readonly Splice[] => {
  const known = new Set(rows.flatMap(({ cells }) => cells.map(cellAddress)));
  const prefix = prefixOf(text, sheetData);
  const added = new Map<string, string>();
  for (const [address, value] of values) {
    const written = known.has(address) ? undefined : valueXml(value);
    if (written === undefined) continue;
    const type = written.type === "" ? "" : ` t="${written.type}"`;
    added.set(address, `<${prefix}c r="${address}"${type}><${prefix}v>${written.text}</${prefix}v></${prefix}c>`);
  }
  return newCells(text, sheetData, rows, added);
};

/** The dimension of a sheet, where new cells lie outside of it. */
export const dimensionSplices = (text: string, sheet: XmlElement, filled: Iterable<string>): readonly Splice[] => {
  const dimension = childOf(sheet, "dimension");
  const before = dimension && fileBlock(dimension.attributes["ref"] ?? "");
  if (dimension === undefined || before === undefined) return [];
  let [top, left, bottom, right] = [before.row, before.column, before.row + before.rows - 1, before.column + before.columns - 1];
  for (const address of filled) {
    const { row, column } = cellPlace(address);
    [top, bottom] = [Math.min(top, row), Math.max(bottom, row)];
    [left, right] = [Math.min(left, column), Math.max(right, column)];
  }
  const ref = blockAddress({ row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 });
  return ref === blockAddress(before) ? [] : [referenceSplice(text, dimension, ref)];
};

const filledIn = (values: SheetChanges["values"]): readonly string[] =>
  [...values].flatMap(([address, value]) => (value === null ? [] : [address]));

/** The text of a sheet with other values in it and not a letter of the rest changed. */
export const splicedSheet = (text: string, sheet: XmlElement, { values, spillsTo }: SheetChanges): string => {
  const sheetData = childOf(sheet, "sheetData");
  if (sheetData === undefined) return text;
  const rows = placedRows(sheetData);
  const splices: Splice[] = [...dimensionSplices(text, sheet, filledIn(values)), ...addedSplices(text, sheetData, rows, values)];
  for (const { element, ...place } of rows.flatMap(({ cells }) => cells)) {
    const address = cellAddress(place);
    const [value, size] = [values.get(address), spillsTo.get(address)];
    const formula = childOf(element, "f");
    if (value !== undefined) splices.push(...valueSplices(text, element, value));
    if (size !== undefined && formula !== undefined) splices.push(referenceSplice(text, formula, blockAddress({ ...place, ...size })));
  }
  return spliced(text, splices);
};
