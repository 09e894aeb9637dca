import { cellAddress, cellPlace } from "../../sheets/cell-address";
import { blockAddress } from "../../sheets/cell-blocks";
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

interface Splice {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The prefix that the elements of a sheet have in its text, with its colon. */
const prefixOf = (text: string, { from }: XmlElement): string => /^<([\w.-]+:)?/.exec(text.slice(from))?.[1] ?? "";

const without = (tag: string, name: string): string => tag.replace(new RegExp(`\\s${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`), "");

const isClosed = ({ opened, to }: XmlElement): boolean => opened === to;

/** A start tag without its end. */
const unclosed = (tag: string): string => tag.slice(0, tag.endsWith("/>") ? -2 : -1).trimEnd();

/** The start tag of a cell with the type of its value; what a rich value was said to be (vm) goes with the old one. */
const startTag = (text: string, cell: XmlElement, type: string): string => {
  const bare = unclosed(without(without(text.slice(cell.from, cell.opened), "t"), "vm"));
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
const referenceSplice = (text: string, { from, opened }: XmlElement, ref: string): Splice =>
  ({ from, to: opened, text: text.slice(from, opened).replace(/(\sref\s*=\s*)(?:"[^"]*"|'[^']*')/, `$1"${ref}"`) });

interface NewCell {
  readonly column: number;
  readonly xml: string;
}

const endOf = (text: string, element: XmlElement): number => text.lastIndexOf("</", element.to - 1);

/** New elements among those that are there, before the first that comes behind them; an element without any is opened for them. */
const insertions = <New extends { readonly at: number; readonly xml: string }>(
  text: string, parent: XmlElement, there: readonly { readonly at: number; readonly element: XmlElement }[], added: readonly New[],
): readonly Splice[] => {
  const inOrder = [...added].sort((one, other) => one.at - other.at);
  if (isClosed(parent) && inOrder.length > 0) {
    const open = unclosed(text.slice(parent.from, parent.opened));
    const name = /^<([\w:.-]+)/.exec(open)?.[1] ?? "";
    return [{ from: parent.from, to: parent.to, text: `${open}>${inOrder.map(({ xml }) => xml).join("")}</${name}>` }];
  }
  return inOrder.map(({ at, xml }) => {
    const place = there.find((one) => one.at > at)?.element.from ?? endOf(text, parent);
    return { from: place, to: place, text: xml };
  });
};

const newCells = (prefix: string, values: SheetChanges["values"], known: ReadonlySet<string>): ReadonlyMap<number, readonly NewCell[]> => {
  const rows = new Map<number, NewCell[]>();
  for (const [address, value] of values) {
    const written = known.has(address) ? undefined : valueXml(value);
    if (written === undefined) continue;
    const { row, column } = cellPlace(address);
    const type = written.type === "" ? "" : ` t="${written.type}"`;
    const xml = `<${prefix}c r="${address}"${type}><${prefix}v>${written.text}</${prefix}v></${prefix}c>`;
    rows.set(row, [...(rows.get(row) ?? []), { column, xml }]);
  }
  return rows;
};

const addedSplices = (
  text: string, sheetData: XmlElement, rows: readonly PlacedRow[], values: SheetChanges["values"],
): readonly Splice[] => {
  const known = new Set(rows.flatMap(({ cells }) => cells.map(cellAddress)));
  const prefix = prefixOf(text, sheetData);
  const added = newCells(prefix, values, known);
  const byNumber = new Map(rows.map((row) => [row.number - 1, row]));
  const splices: Splice[] = [];
  const newRows: { readonly at: number; readonly xml: string }[] = [];
  for (const [number, cells] of added) {
    const row = byNumber.get(number);
    const inRow = cells.map(({ column, xml }) => ({ at: column, xml }));
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

/** The dimension of a sheet, where new cells lie outside of it. */
const dimensionSplices = (text: string, sheet: XmlElement, values: SheetChanges["values"]): readonly Splice[] => {
  const dimension = childOf(sheet, "dimension");
  const before = dimension && fileBlock(dimension.attributes["ref"] ?? "");
  if (dimension === undefined || before === undefined) return [];
  let [top, left, bottom, right] = [before.row, before.column, before.row + before.rows - 1, before.column + before.columns - 1];
  for (const [address, value] of values) {
    if (value === null) continue;
    const { row, column } = cellPlace(address);
    [top, bottom] = [Math.min(top, row), Math.max(bottom, row)];
    [left, right] = [Math.min(left, column), Math.max(right, column)];
  }
  const ref = blockAddress({ row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 });
  return ref === blockAddress(before) ? [] : [referenceSplice(text, dimension, ref)];
};

/** The text of a sheet with other values in it and not a letter of the rest changed. */
export const splicedSheet = (text: string, sheet: XmlElement, { values, spillsTo }: SheetChanges): string => {
  const sheetData = childOf(sheet, "sheetData");
  if (sheetData === undefined) return text;
  const rows = placedRows(sheetData);
  const splices: Splice[] = [...dimensionSplices(text, sheet, values), ...addedSplices(text, sheetData, rows, values)];
  for (const { element, ...place } of rows.flatMap(({ cells }) => cells)) {
    const address = cellAddress(place);
    const [value, size] = [values.get(address), spillsTo.get(address)];
    const formula = childOf(element, "f");
    if (value !== undefined) splices.push(...valueSplices(text, element, value));
    if (size !== undefined && formula !== undefined) splices.push(referenceSplice(text, formula, blockAddress({ ...place, ...size })));
  }
  // Where two begin at one place what is put in comes before what is replaced.
  splices.sort((one, other) => one.from - other.from || one.to - other.to);
  const pieces: string[] = [];
  let at = 0;
  for (const { from, to, text: put } of splices) {
    pieces.push(text.slice(at, from), put);
    at = to;
  }
  return pieces.join("") + text.slice(at);
};
