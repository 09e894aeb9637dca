import { blockAddress } from "../../sheets/cell-blocks";
import { mayComeToSeveral, callsSpilling } from "../formula/comes-to-several";
import type { MendedFormula } from "../formula/mended-formula";
import type { Standing } from "../formula/names-in-place";
import { type Named, sheetFormula } from "../formula/sheet-formula";
import { shiftedFormula } from "../formula/shifted-formula";
import type { SpillFreeFormula, SpillFreeing } from "../formula/spill-free-formula";
import { isClosed, prefixOf, type Splice, startOf, unclosed, withAttribute } from "../xml-splices";
import { childOf } from "../xml-tree";
import { escapedText } from "../xml-text";
import { type FormulaCell, type FormulaKind, formulaCells } from "./formula-cells";
import type { SheetPart } from "../read-workbook-file";

/** A formula of a cell, and what it is to be. */
export interface MendedCell extends FormulaCell {
  readonly now: string;
  readonly becomes: FormulaKind;
  readonly left: readonly string[];
}

/** What cells are mended with. */
export interface CellMending {
  readonly mend: (formula: string) => MendedFormula;
  readonly named: (standing: Standing) => Named;
}

const hasValue = ({ cell }: FormulaCell): boolean => childOf(cell, "v") !== undefined || childOf(cell, "is") !== undefined;

/**
 * What a formula is to be. Excel works a plain one out to one value: of several cells it takes the one in its row or its column, of
 * several values the first, and shows an @ for that (Microsoft, "Implicit intersection operator: @").
 * - One whose words it could not bind it has never worked out so: it is as somebody typed it, and becomes what typing it makes of it.
 * - One that it binds and that has a value stays: Excel keeps =@UNIQUE(A1:A9) and older formulas in this form (from memory).
 * - One that it binds, without a value, of functions that came with dynamic arrays: a script wrote it, and nothing has worked it out.
 * An array of a set block of cells is of the older kind on purpose, but where it calls functions of ours or such functions by words that
 * Excel could not bind: LibreOffice saves what was a dynamic array so (tests/workbook-file/files, saved-by-libreoffice.xlsx).
 */
const kindNow = (one: FormulaCell, now: string, standing: Standing, { named }: CellMending): FormulaKind => {
  if (one.kind === "dynamic") return "dynamic";
  const text = sheetFormula(now, named(standing));
  const isBound = now === one.text;
  if (one.kind === "array") return !isBound && typeof text === "string" && callsSpilling(text) ? "dynamic" : "array";
  if (typeof text !== "string") return isBound || !/\b_xldudf_/.test(now) ? "plain" : "dynamic";
  if (isBound && (hasValue(one) || !callsSpilling(text))) return "plain";
  return mayComeToSeveral(text) ? "dynamic" : "plain";
};

/** The formulas of a sheet with their words bound. */
export const boundCells = ({ name, root }: SheetPart, mending: CellMending): readonly MendedCell[] =>
  formulaCells(root).map((one) => {
    const { formula: now, left } = mending.mend(one.text);
    return { ...one, now, left, becomes: kindNow(one, now, { sheet: name, row: one.row, column: one.column }, mending) };
  });

const NOT_WORKED_OUT = "has never been worked out, so the cells it comes to are not in the file; recalculate it first";

/** Formulas for a spreadsheet that knows no spills: dynamic arrays as arrays of the size they have in the file. */
export const spillFreeCells = (
  cells: readonly MendedCell[], { named }: CellMending, sheet: string, block: SpillFreeing["block"],
  free: (formula: string, freeing: SpillFreeing) => SpillFreeFormula,
): readonly MendedCell[] =>
  cells.map((one) => {
    const standing = { sheet, row: one.row, column: one.column };
    const isArray = one.becomes !== "plain";
    const { formula: now, left } = free(one.now, { block, standing, sheet, named: named(standing), isArray });
    const isUnknown = one.becomes === "dynamic" && one.block.rows * one.block.columns === 1 && !hasValue(one);
    return {
      ...one, now, left: [...one.left, ...left, ...(isUnknown ? [NOT_WORKED_OUT] : [])], becomes: isArray ? "array" : "plain",
    };
  });

const sharedKey = ({ sharedWith }: FormulaCell): string => (sharedWith === undefined ? "" : `${sharedWith.row},${sharedWith.column}`);

/** The shared formulas that cannot be shared any more: one of them is an array now, or says another thing than the first, moved along. */
const unshared = (cells: readonly MendedCell[]): ReadonlySet<string> => {
  const firsts = new Map(cells.flatMap((one) =>
    (one.sharedWith?.row === one.row && one.sharedWith.column === one.column ? [[sharedKey(one), one] as const] : [])));
  return new Set(cells.filter((one) => {
    const first = firsts.get(sharedKey(one));
    if (one.sharedWith === undefined || first === undefined) return false;
    const isChanged = first.now !== first.text || one.now !== one.text;
    return one.becomes !== "plain" ||
      (isChanged && one.now !== shiftedFormula(first.now, one.row - first.row, one.column - first.column));
  }).map(sharedKey));
};

/** The start tag of a formula without its end, as it is now. */
const formulaTag = (before: string, { kind, becomes, address, sharedWith }: MendedCell, isOwn: boolean): string => {
  if (becomes !== "plain" && kind === "plain") {
    const bare = withAttribute(before, "si", "");
    return withAttribute(withAttribute(bare, "t", "array"), "ref", address);
  }
  return isOwn && sharedWith !== undefined ? ["t", "ref", "si"].reduce((tag, name) => withAttribute(tag, name, ""), before) : before;
};

/** A cell with its formula as it is now; what does not change in it stays letter by letter. */
const cellSplices = (text: string, one: MendedCell, isOwn: boolean, dynamic: () => number): readonly Splice[] => {
  const { cell, element, kind, becomes } = one;
  const [before, cellBefore] = [unclosed(startOf(text, element)), unclosed(startOf(text, cell))];
  const tag = formulaTag(before, one, isOwn);
  const mark = becomes === kind ? undefined : becomes === "dynamic" ? String(dynamic()) : "";
  const cellTag = mark === undefined ? cellBefore : withAttribute(cellBefore, "cm", mark);
  const isTold = one.now !== one.text || tag !== before;
  const escaped = escapedText(one.now);
  const end = text.lastIndexOf("</", element.to - 1);
  return [
    ...(cellTag === cellBefore ? [] : [{ from: cell.from, to: cell.opened, text: `${cellTag}>` }]),
    ...(!isTold ? [] : isClosed(element)
      ? [{ from: element.from, to: element.to, text: `${tag}>${escaped}</${prefixOf(text, element)}f>` }]
      : [
        ...(tag === before ? [] : [{ from: element.from, to: element.opened, text: `${tag}>` }]),
        ...(one.now === one.text && element.text !== "" ? [] : [{ from: element.opened, to: end, text: escaped }]),
      ]),
  ];
};

/** What is spliced into the text of a sheet, so that its formulas are as they are to be. */
export const mendedSplices = (text: string, cells: readonly MendedCell[], dynamic: () => number): readonly Splice[] => {
  const own = unshared(cells);
  return cells.flatMap((one) => {
    const isOwn = own.has(sharedKey(one));
    // What is still shared is told by the first of them.
    const isToldElsewhere = one.sharedWith !== undefined && !isOwn && one.element.text === "";
    return isToldElsewhere ? [] : cellSplices(text, one, isOwn, dynamic);
  });
};

/** The cells a formula takes up, as the file keeps them. */
export const cellsText = ({ becomes, block, address }: MendedCell): string => (becomes === "plain" ? address : blockAddress(block));
