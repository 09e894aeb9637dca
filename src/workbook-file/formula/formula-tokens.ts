import { cellPlace } from "../../sheets/cell-address";

/** A formula cut into its smallest parts; together they are the formula again. */
export interface Token {
  readonly kind: "text" | "quoted" | "error" | "number" | "word" | "bracket" | "space" | "sign";
  readonly text: string;
}

/** Errors as formulas write them (ECMA-376-1, 18.17.2.2, error-constant), and the later ones of the platform. */
const ERRORS = ["NULL!", "DIV/0!", "VALUE!", "REF!", "NAME?", "NUM!", "N/A", "SPILL!", "CALC!", "FIELD!", "BLOCKED!", "CONNECT!", "BUSY!"];
const escaped = ERRORS.map((error) => error.replaceAll(/[?/]/g, "\\$&")).join("|");

const KINDS: readonly (readonly [Token["kind"], RegExp])[] = [
  ["text", /"(?:[^"]|"")*"?/y],
  ["quoted", /'(?:[^']|'')*'?/y],
  ["error", new RegExp(`#(?:${escaped})`, "iy")],
  ["number", /(?:\d+(?:\.\d*)?|\.\d+)(?:E[+-]?\d+)?/iy],
  ["word", /[$\p{L}_\\][$\p{L}\p{M}\p{N}_.\\?]*/uy],
  ["space", /\s+/y],
];

/** What stands between brackets, others within; a mark after an apostrophe is itself (18.17.2.4, structure references). */
const bracketEnd = (formula: string, from: number): number => {
  let depth = 0;
  for (let at = from; at < formula.length; at += 1) {
    if (formula[at] === "'") at += 1;
    else if (formula[at] === "[") depth += 1;
    else if (formula[at] === "]") {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
  }
  return formula.length;
};

const tokenAt = (formula: string, at: number): Token => {
  if (formula[at] === "[") return { kind: "bracket", text: formula.slice(at, bracketEnd(formula, at)) };
  for (const [kind, pattern] of KINDS) {
    pattern.lastIndex = at;
    const found = pattern.exec(formula)?.[0];
    if (found !== undefined) return { kind, text: found };
  }
  return { kind: "sign", text: formula[at] ?? "" };
};

/** The parts of a formula that is written without its = sign. */
export const formulaTokens = (formula: string): readonly Token[] => {
  const tokens: Token[] = [];
  let at = 0;
  while (at < formula.length) {
    const token = tokenAt(formula, at);
    tokens.push(token);
    at += token.text.length;
  }
  return tokens;
};

const isSign = (token: Token | undefined, text: string): boolean => token?.kind === "sign" && token.text === text;

export const isCall = (tokens: readonly Token[], at: number): boolean => tokens[at]?.kind === "word" && isSign(tokens[at + 1], "(");

/** Whether a word or a quoted text names a sheet, or the first of several: Bid!A1, Jan:Dec!A1. */
export const isSheetName = (tokens: readonly Token[], at: number): boolean => {
  const kind = tokens[at]?.kind;
  if (kind !== "word" && kind !== "quoted") return false;
  return isSign(tokens[at + 1], "!") || (isSign(tokens[at + 1], ":") && tokens[at + 2]?.kind === "word" && isSign(tokens[at + 3], "!"));
};

/** The place after the bracket that closes the one here. */
export const closingPlace = (tokens: readonly Token[], open: number): number => {
  let depth = 0;
  for (let at = open; at < tokens.length; at += 1) {
    if (isSign(tokens[at], "(") || isSign(tokens[at], "{")) depth += 1;
    else if (isSign(tokens[at], ")") || isSign(tokens[at], "}")) {
      depth -= 1;
      if (depth === 0) return at;
    }
  }
  return tokens.length;
};

/** Of each bracket the place of its other half; undefined where one has none. One pass, for formulas of which every bracket is asked. */
export const bracketPartners = (tokens: readonly Token[]): ReadonlyMap<number, number> | undefined => {
  const partners = new Map<number, number>();
  const open: number[] = [];
  for (const [at, token] of tokens.entries()) {
    if (isSign(token, "(") || isSign(token, "{")) open.push(at);
    else if (isSign(token, ")") || isSign(token, "}")) {
      const from = open.pop();
      if (from === undefined || isSign(tokens[from], "(") !== isSign(token, ")")) return undefined;
      partners.set(from, at).set(at, from);
    }
  }
  return open.length === 0 ? partners : undefined;
};

const CELL = /^\$?[A-Z]{1,3}\$?[1-9]\d{0,6}$/i;
/** Rows and columns of a sheet ("Excel specifications and limits"). */
export const ROWS = 1_048_576;
export const COLUMNS = 16_384;

/** Whether a word is a cell of a sheet: $B$7. */
export const isCell = (word: string): boolean => {
  if (!CELL.test(word)) return false;
  const { row, column } = cellPlace(word);
  return row < ROWS && column < COLUMNS;
};
export { isSign };
