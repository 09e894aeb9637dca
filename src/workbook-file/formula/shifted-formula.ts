import { columnName, columnPlace } from "../../sheets/cell-address";
import { COLUMNS, formulaTokens, isCall, isCell, isSheetName, isSign, ROWS, type Token } from "./formula-tokens";

const PARTS = /^(\$?)([A-Z]{1,3})?(\$?)(\d+)?$/i;
const NO_PLACE = "#REF!";

/** A column or a row moved by so many, unless a $ holds it; undefined off the sheet. */
const movedColumn = (fixed: string, name: string, by: number): string | undefined => {
  const place = columnPlace(name.toUpperCase()) + (fixed === "" ? by : 0);
  return place >= 0 && place < COLUMNS ? fixed + (fixed === "" ? columnName(place) : name) : undefined;
};

const movedRow = (fixed: string, digits: string, by: number): string | undefined => {
  const row = Number(digits) + (fixed === "" ? by : 0);
  return row >= 1 && row <= ROWS ? `${fixed}${row}` : undefined;
};

const movedCell = (word: string, rows: number, columns: number): string => {
  const [, fixedColumn = "", letters = "", fixedRow = "", digits = ""] = PARTS.exec(word) ?? [];
  const [column, row] = [movedColumn(fixedColumn, letters, columns), movedRow(fixedRow, digits, rows)];
  return column === undefined || row === undefined ? NO_PLACE : column + row;
};

const WHOLE_COLUMN = /^\$?[A-Z]{1,3}$/i;
const WHOLE_ROW = /^\$?[1-9]\d{0,6}$/;

/** Whether A:C or 1:3 begins or ends here. */
const isWhole = (tokens: readonly Token[], at: number, pattern: RegExp): boolean => {
  const isOne = (index: number): boolean => pattern.test(tokens[index]?.text ?? "");
  return isOne(at) && ((isSign(tokens[at + 1], ":") && isOne(at + 2)) || (isSign(tokens[at - 1], ":") && isOne(at - 2)));
};

const moved = (tokens: readonly Token[], at: number, rows: number, columns: number): string => {
  const { kind, text } = tokens[at] ?? { kind: "space", text: "" };
  if ((kind !== "word" && kind !== "number") || isCall(tokens, at) || isSheetName(tokens, at)) return text;
  if (isCell(text)) return movedCell(text, rows, columns);
  if (isWhole(tokens, at, WHOLE_COLUMN)) return movedColumn(text.startsWith("$") ? "$" : "", text.replace("$", ""), columns) ?? NO_PLACE;
  if (isWhole(tokens, at, WHOLE_ROW)) return movedRow(text.startsWith("$") ? "$" : "", text.replace("$", ""), rows) ?? NO_PLACE;
  return text;
};

/**
 * A formula as it stands so many rows and columns further: what a shared formula says in each of its cells (ECMA-376-1, 18.3.1.40), and a
 * rule or a name in a cell other than the one it is written for.
 */
export const shiftedFormula = (formula: string, rows: number, columns: number): string => {
  if (rows === 0 && columns === 0) return formula;
  const tokens = formulaTokens(formula);
  return tokens.map((_, at) => moved(tokens, at, rows, columns)).join("");
};
