import { cellAddress, cellPlace, type CellPlace } from "../../sheets/cell-address";
import { isDateFormat } from "../../sheets/cell-format";
import { cellLooks } from "../../sheets/cell-looks";
import { blockAddress, type CellBlock } from "../../sheets/cell-blocks";
import type { OwnLook } from "../../sheets/own-look";
import type { CellData, SheetData } from "../../sheets/sheet-data";
import { DAYS_TO_1904 } from "../date-number";
import { shiftedFormula } from "../formula/shifted-formula";
import { LOOK_PARTS } from "../look/written-styles";
import {
  isClosed, prefixed, prefixOf, type Splice, startOf, unclosed, withAttribute,
} from "../xml-splices";
import { childOf, childrenOf, countOf, isSet, type XmlElement } from "../xml-tree";
import { escapedText, plainText } from "../xml-text";
import { fileBlock } from "./file-block";
import { type PlacedRow, placedRows } from "./placed-cells";
import { dimensionSplices, newCells } from "./spliced-sheet";
import { type CellWriting, formulaXml, plainXml } from "./written-cells";

/** What becomes of a cell; a part that is missing stays as it is. */
interface CellEdit {
  readonly style?: number | undefined;
  /** Attributes and elements of what it holds, its own value and formula gone. */
  readonly content?: readonly [attributes: string, xml: string] | undefined;
  /** Its formula alone, in another form, with the mark of a dynamic array where it is one. */
  readonly formula?: { readonly xml: string; readonly mark?: number };
}

/** What edited cells are written with. */
export interface EditWriting extends CellWriting {
  readonly countsFrom1904: boolean;
  /** The record of a cell's format as it stands in the file, by its number. */
  readonly record: (style: number) => string;
}

/** A sheet of a file, as it was read and as it is now. */
export interface EditedSheet {
  readonly text: string;
  readonly root: XmlElement;
  readonly before: SheetData;
  readonly now: SheetData;
}

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

const wholeLook = ({ style, look = {} }: CellData): OwnLook => ({ ...(style === undefined ? {} : cellLooks[style]), ...look });

const NOTHING: CellData = {};

const hasContent = ({ value, formula }: CellData): boolean => value !== undefined || formula !== undefined;

const holdsSame = (one: CellData, other: CellData): boolean => one.value === other.value && one.formula === other.formula;

/** Cells of a file by their addresses, and the numbers of their looks. */
class FileCells {
  readonly rows: readonly PlacedRow[];
  readonly elements = new Map<string, { readonly element: XmlElement; readonly place: CellPlace }>();
  readonly #columns: readonly XmlElement[];
  readonly #rowStyles = new Map<number, number>();

  constructor({ root }: EditedSheet) {
    this.rows = placedRows(childOf(root, "sheetData"));
    this.#columns = childrenOf(childOf(root, "cols"), "col");
    for (const { number, element, cells } of this.rows) {
      if (isSet(element.attributes["customFormat"])) this.#rowStyles.set(number - 1, countOf(element.attributes["s"]) ?? 0);
      for (const { element: cell, ...place } of cells) this.elements.set(cellAddress(place), { element: cell, place });
    }
  }

  /** The look of a cell that is there, or of the row or the column where it will be (ECMA-376-1, 18.3.1.73 and 18.3.1.13). */
  style(address: string): number {
    const found = this.elements.get(address);
    if (found !== undefined) return countOf(found.element.attributes["s"]) ?? 0;
    const { row, column } = cellPlace(address);
    const isThere = ({ attributes: { min, max } }: XmlElement): boolean =>
      column + 1 >= (countOf(min) ?? 1) && column < (countOf(max) ?? 0);
    return this.#rowStyles.get(row) ?? countOf(this.#columns.find(isThere)?.attributes["style"]) ?? 0;
  }
}

const stylesChanged = (
  address: string, was: CellData, is: CellData, cells: FileCells, { styles, record }: EditWriting,
): number | undefined => {
  const [before, now] = [wholeLook(was), wholeLook(is)];
  const parts = (Object.keys(LOOK_PARTS) as (keyof typeof LOOK_PARTS)[]).filter((part) =>
    LOOK_PARTS[part].some((name) => !isSame(before[name], now[name])));
  const hasOtherFormat = (was.format ?? "") !== (is.format ?? "");
  const base = cells.style(address);
  const isOurs = base === 0 || was.style !== undefined;
  if (is.style !== undefined && is.style !== was.style && isOurs) return styles.cell(is);
  if (parts.length === 0 && !hasOtherFormat) return undefined;
  // What a live sheet does not know of the look that others gave stays.
  return styles.changed({ xf: record(base), look: now, format: is.format, parts, hasOtherFormat });
};

const contentNow = (address: string, { value, formula, format }: CellData, sheet: string, writing: EditWriting): CellEdit["content"] => {
  if (formula !== undefined) {
    const block = writing.calculated.spill(sheet, address);
    const [rows, columns] = [Math.max(block.length, 1), Math.max(block[0]?.length ?? 0, 1)];
    return formulaXml(formula, blockAddress({ ...cellPlace(address), rows, columns }), rows * columns > 1, writing);
  }
  const isDate = writing.countsFrom1904 && typeof value === "number" && format !== undefined && isDateFormat(format);
  return plainXml(isDate ? value - DAYS_TO_1904 : (value ?? null), writing.strings);
};

const typedEdits = ({ before, now }: EditedSheet, cells: FileCells, writing: EditWriting): Map<string, CellEdit> => {
  const edits = new Map<string, CellEdit>();
  for (const address of new Set([...Object.keys(before.cells), ...Object.keys(now.cells)])) {
    const [was, is] = [before.cells[address] ?? NOTHING, now.cells[address] ?? NOTHING];
    if (isSame(was, is)) continue;
    const style = stylesChanged(address, was, is, cells, writing);
    const edit = {
      ...(style === undefined ? {} : { style }),
      ...(holdsSame(was, is) ? {} : { content: contentNow(address, is, now.name, writing) }),
    };
    if (Object.keys(edit).length > 0) edits.set(address, edit);
  }
  return edits;
};

const addressesIn = ({ row, column, rows, columns }: CellBlock): readonly string[] =>
  Array.from({ length: rows * columns }, (_, at) => cellAddress({ row: row + Math.floor(at / columns), column: column + (at % columns) }));

/** Blocks that are larger than this are of files that nobody types into. */
const MOST_IN_BLOCK = 1_000_000;

/** Cells that showed what an array came to are emptied where it is gone or takes up others now; one of a set size becomes dynamic. */
const blockEdits = ({ now }: EditedSheet, cells: FileCells, edits: Map<string, CellEdit>, writing: EditWriting): void => {
  for (const [address, { element, place }] of cells.elements) {
    const formula = childOf(element, "f");
    const block = formula?.attributes["t"] === "array" ? fileBlock(formula.attributes["ref"] ?? "") : undefined;
    const size = block === undefined ? 0 : block.rows * block.columns;
    if (formula === undefined || block === undefined || size < 2 || size > MOST_IN_BLOCK) continue;
    const others = addressesIn(block).filter((one) => one !== address);
    const isGone = edits.get(address)?.content !== undefined;
    if (!isGone && !others.some((one) => edits.get(one)?.content !== undefined)) continue;
    for (const one of others)
      if (!hasContent(now.cells[one] ?? NOTHING) && cells.elements.has(one)) edits.set(one, { ...edits.get(one), content: ["", ""] });
    if (isGone) continue;
    const spilled = writing.calculated.spill(now.name, address);
    const ref = blockAddress({ ...place, rows: Math.max(spilled.length, 1), columns: Math.max(spilled[0]?.length ?? 0, 1) });
    const xml = `<f t="array" ref="${ref}">${escapedText(plainText(formula.text))}</f>`;
    edits.set(address, { ...edits.get(address), formula: { xml, mark: writing.dynamic() } });
  }
};

/** Formulas that were told by one of them, which is gone, are told by themselves (ECMA-376-1, 18.3.1.40). */
const sharedEdits = (cells: FileCells, edits: Map<string, CellEdit>): void => {
  const gone = new Map<string, { readonly place: CellPlace; readonly text: string }>();
  for (const [address, { element, place }] of cells.elements) {
    const formula = childOf(element, "f");
    const { t: kind, si } = formula?.attributes ?? {};
    if (formula === undefined || kind !== "shared" || si === undefined) continue;
    const isEdited = edits.get(address)?.content !== undefined;
    if (formula.text !== "" && isEdited) gone.set(si, { place, text: plainText(formula.text) });
    const first = gone.get(si);
    if (formula.text !== "" || isEdited || first === undefined) continue;
    const text = shiftedFormula(first.text, place.row - first.place.row, place.column - first.place.column);
    edits.set(address, { ...edits.get(address), formula: { xml: `<f>${escapedText(text)}</f>` } });
  }
};

/** A cell that is there, as it is now. */
const cellSplices = (text: string, cell: XmlElement, { style, content, formula }: CellEdit): readonly Splice[] => {
  const prefix = prefixOf(text, cell);
  let tag = unclosed(startOf(text, cell));
  if (style !== undefined) tag = withAttribute(tag, "s", style === 0 ? "" : String(style));
  if (formula?.mark !== undefined) tag = withAttribute(tag, "cm", String(formula.mark));
  if (content !== undefined) {
    const [attributes, xml] = content;
    for (const name of ["t", "cm", "vm"]) tag = withAttribute(tag, name, "");
    const inside = prefixed(xml, prefix);
    return [{ from: cell.from, to: cell.to, text: inside === "" ? `${tag}/>` : `${tag}${attributes}>${inside}</${prefix}c>` }];
  }
  const old = childOf(cell, "f");
  return [
    { from: cell.from, to: cell.opened, text: isClosed(cell) ? `${tag}/>` : `${tag}>` },
    ...(formula === undefined || old === undefined ? [] : [{ from: old.from, to: old.to, text: prefixed(formula.xml, prefix) }]),
  ];
};

const newCell = (address: string, { style, content: [attributes, xml] = ["", ""] }: CellEdit, cells: FileCells, prefix: string): string => {
  const look = style ?? cells.style(address);
  const tag = `<${prefix}c r="${address}"${look === 0 ? "" : ` s="${look}"`}${attributes}`;
  return xml === "" ? `${tag}/>` : `${tag}>${prefixed(xml, prefix)}</${prefix}c>`;
};

export interface EditedCells {
  readonly splices: readonly Splice[];
  /** Whether a formula came or went, which a file's order of calculation lists. */
  readonly hasOtherFormulas: boolean;
}

/** What a person has typed into the cells of a sheet and made of their looks. */
export const editedCells = (sheet: EditedSheet, writing: EditWriting): EditedCells => {
  const { text, root } = sheet;
  const sheetData = childOf(root, "sheetData");
  const cells = new FileCells(sheet);
  const edits = typedEdits(sheet, cells, writing);
  if (sheetData === undefined || edits.size === 0) return { splices: [], hasOtherFormulas: false };
  blockEdits(sheet, cells, edits, writing);
  sharedEdits(cells, edits);
  const [splices, added, prefix]: [Splice[], Map<string, string>, string] = [[], new Map(), prefixOf(text, sheetData)];
  let hasOtherFormulas = false;
  for (const [address, edit] of edits) {
    const there = cells.elements.get(address)?.element;
    hasOtherFormulas ||= edit.content !== undefined && (childOf(there, "f") !== undefined || edit.content[1].startsWith("<f"));
    if (there !== undefined) splices.push(...cellSplices(text, there, edit));
    else if (edit.style !== undefined || edit.content?.[1]) added.set(address, newCell(address, edit, cells, prefix));
  }
  splices.push(...newCells(text, sheetData, cells.rows, added), ...dimensionSplices(text, root, added.keys()));
  return { splices, hasOtherFormulas };
};
