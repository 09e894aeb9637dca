import { cellAddress, columnName } from "../../sheets/cell-address";
import type { CellBlock } from "../../sheets/cell-blocks";
import { fileBlock } from "../sheet/file-block";
import { isKnownFunction } from "./arguments-taken";
import { ONE, SPILL } from "./file-formula";
import { bracketPartners, formulaTokens, isCall, isSheetName, type Token } from "./formula-tokens";
import type { Standing } from "./names-in-place";
import { type Named, sheetFormula } from "./sheet-formula";
import { severalForOne } from "./several-for-one";

/** What a formula is rewritten with for a spreadsheet that knows no spills. */
export interface SpillFreeing {
  /** The cells that a formula in a cell of a sheet takes up in the file; undefined where none is kept with its cells. */
  readonly block: (sheet: string, address: string) => CellBlock | undefined;
  /** The cell it stands in; undefined for one of a name, a rule or a list. */
  readonly standing: Standing | undefined;
  readonly sheet: string;
  readonly named: Named;
  /** Whether it works out whole ranges, as an array formula does, and not of each the cell in its own row or column. */
  readonly isArray: boolean;
}

export interface SpillFreeFormula {
  readonly formula: string;
  readonly left: readonly string[];
}

const CELL_ON_SHEET = /^((?:'(?:[^']|'')*'|[\p{L}_\\][\p{L}\p{N}_.]*)!)?(\$?)([A-Z]{1,3})(\$?)([1-9]\d{0,6})$/iu;
const RANGE_ON_SHEET = /^((?:'(?:[^']|'')*'|[\p{L}_\\][\p{L}\p{N}_.]*)!)?(\$?[A-Z]{1,3}\$?[1-9]\d{0,6}:\$?[A-Z]{1,3}\$?[1-9]\d{0,6})$/iu;
/** More of them are in no formula that a person can read. */
const MOST_CALLS = 64;

const NO_BLOCK = "reads what a cell spills to, and the file keeps no cells for that one";
const NO_ONE = "takes one value of several by @, which an array formula has no other form for";
const TOO_MANY = "has more spills and @ in it than are rewritten";

const sheetIn = (prefix: string | undefined, own: string): string => {
  if (prefix === undefined) return own;
  const name = prefix.slice(0, -1);
  return name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name;
};

/** The cells that a cell spills to, written as the cell is. */
const cellsOf = (anchor: string, { block, sheet, standing }: SpillFreeing): string | undefined => {
  const [, prefix, column = "", letters = "", row = "", digits = ""] = CELL_ON_SHEET.exec(anchor.trim()) ?? [];
  // Without a cell of its own a formula says another place in each that it stands for.
  if (letters === "" || (standing === undefined && (column === "" || row === ""))) return undefined;
  const found = block(sheetIn(prefix, sheet), `${letters}${digits}`.toUpperCase());
  if (found === undefined) return undefined;
  if (found.rows * found.columns === 1) return anchor.trim();
  return `${anchor.trim()}:${column}${columnName(found.column + found.columns - 1)}${row}${found.row + found.rows}`;
};

/** The cell of a range in the row or the column of a formula, which @ takes of it (Microsoft, "Implicit intersection operator: @"). */
const cellInLine = (range: string, { standing }: SpillFreeing): string | undefined => {
  const [, prefix = "", cells = ""] = RANGE_ON_SHEET.exec(range.trim()) ?? [];
  const block = fileBlock(cells.replaceAll("$", ""));
  if (standing === undefined || block === undefined) return undefined;
  const { row, column } = standing;
  const isBeside = row >= block.row && row < block.row + block.rows;
  const isAbove = column >= block.column && column < block.column + block.columns;
  if (block.columns === 1 && isBeside) return prefix + cellAddress({ row, column: block.column });
  return block.rows === 1 && isAbove ? prefix + cellAddress({ row: block.row, column }) : undefined;
};

/** Whether a formula comes to one value, as far as every name and function in it says so. */
const isOneValue = (inner: string, { named }: SpillFreeing): boolean => {
  const text = sheetFormula(inner, named);
  if (typeof text !== "string" || /_xl(?:pm|eta)\./i.test(inner)) return false;
  const tokens = formulaTokens(text);
  const isKnown = tokens.every(({ text: word }, at) => !isCall(tokens, at) || isKnownFunction(word.toUpperCase()));
  const hasName = tokens.some(({ kind, text: word }, at) =>
    kind === "word" && !isCall(tokens, at) && !isSheetName(tokens, at) && !CELL_ON_SHEET.test(word));
  return isKnown && !hasName && severalForOne(`0+(${text})`) === undefined;
};

interface Call {
  readonly before: string;
  readonly inner: string;
  readonly behind: string;
}

/**
 * Whether a formula that takes of a range the cell in its own row or column does so where the @ stands: it does wherever one value belongs,
 * and so needs no sign for it.
 */
const isTakenAnyway = ({ before, inner, behind }: Call, { named, isArray }: SpillFreeing): boolean => {
  if (isArray) return false;
  if (before.trim() === "" && behind.trim() === "") return true;
  const [kept, dropped] = [`${ONE}(${inner})`, inner].map((one) => sheetFormula(before + one + behind, named));
  return typeof kept === "string" && typeof dropped === "string" &&
    severalForOne(kept) === undefined && severalForOne(dropped) !== undefined;
};

const isAlone = (tokens: readonly Token[]): boolean =>
  tokens.length === 1 || CELL_ON_SHEET.test(tokens.map(({ text }) => text).join("")) ||
  RANGE_ON_SHEET.test(tokens.map(({ text }) => text).join("")) ||
  (isCall(tokens, 0) && bracketPartners(tokens)?.get(1) === tokens.length - 1);

const plainOne = (call: Call, freeing: SpillFreeing): string | undefined => {
  const inner = call.inner.trim();
  if (CELL_ON_SHEET.test(inner)) return inner;
  if (isTakenAnyway(call, freeing) || isOneValue(inner, freeing)) return isAlone(formulaTokens(inner)) ? inner : `(${inner})`;
  return cellInLine(inner, freeing);
};

/** The last call of a function in a formula before a place: nothing of its kind is within it. */
const lastCall = (formula: string, name: string, before: number): readonly [Call, number] | undefined => {
  const tokens = formulaTokens(formula);
  const partners = bracketPartners(tokens);
  const text = (from: number, to: number): string => tokens.slice(from, to).map((token) => token.text).join("");
  for (let at = Math.min(before, tokens.length) - 1; at >= 0; at -= 1) {
    if (!isCall(tokens, at) || tokens[at]?.text.toUpperCase() !== name.toUpperCase()) continue;
    const close = partners?.get(at + 1);
    if (close !== undefined) return [{ before: text(0, at), inner: text(at + 2, close), behind: text(close + 1, tokens.length) }, at];
  }
  return undefined;
};

/** Both kinds of calls from the back of a formula to its front, each once. */
const freedOnce = (formula: string, freeing: SpillFreeing, left: Set<string>): string => {
  let now = formula;
  for (const [name, put, why] of [
    [SPILL, ({ inner }: Call) => cellsOf(inner, freeing), NO_BLOCK], [ONE, (call: Call) => plainOne(call, freeing), NO_ONE],
  ] as const) {
    let at = Number.POSITIVE_INFINITY;
    for (let found = lastCall(now, name, at); found !== undefined; found = lastCall(now, name, at)) {
      const [call, place] = found;
      const text = put(call);
      if (text === undefined) left.add(why);
      else now = call.before + text + call.behind;
      at = place;
    }
  }
  return now;
};

const CALLS = new RegExp(`${SPILL}|${ONE}`.replaceAll(".", "\\."), "gi");

/** A formula of a file without spills and @, as far as there is a form for that in which it comes to the same. */
export const spillFreeFormula = (formula: string, freeing: SpillFreeing): SpillFreeFormula => {
  let now = formula;
  // What stood within one that is gone may stand by itself now, and have a form so.
  for (let calls = (now.match(CALLS) ?? []).length; calls > 0;) {
    if (calls > MOST_CALLS) return { formula, left: [TOO_MANY] };
    const left = new Set<string>();
    now = freedOnce(now, freeing, left);
    const still = (now.match(CALLS) ?? []).length;
    if (still === 0 || still === calls) return { formula: now, left: [...left] };
    calls = still;
  }
  return { formula: now, left: [] };
};
