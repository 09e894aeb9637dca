import { type CellPlace, cellPlace } from "../../sheets/cell-address";
import type { PlainValue } from "../../sheets/sheet-data";

/** A formula as a tree. What only a spreadsheet knows (its names, its tables, whole columns) is `other`, with its text. */
export type FormulaTree =
  | { readonly kind: "value"; readonly value: PlainValue }
  | { readonly kind: "error"; readonly code: string }
  | { readonly kind: "rows"; readonly rows: readonly (readonly PlainValue[])[] }
  /** Cells of a sheet, its own where none is named; with `isSpill` all that its first cell spills. */
  | {
      readonly kind: "cells";
      readonly sheet: string | undefined;
      readonly from: CellPlace;
      readonly to: CellPlace;
      readonly isSpill: boolean;
      readonly text: string;
    }
  | { readonly kind: "call"; readonly name: string; readonly arguments: readonly (FormulaTree | undefined)[]; readonly text: string }
  | { readonly kind: "operation"; readonly operator: string; readonly operands: readonly FormulaTree[]; readonly text: string }
  | { readonly kind: "other"; readonly text: string };

interface Token {
  readonly kind: "number" | "text" | "error" | "cells" | "call" | "name" | "sign";
  readonly text: string;
  readonly at: number;
}

const SHEET = String.raw`(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?`;
const CELL = String.raw`\$?[A-Za-z]{1,3}\$?[1-9]\d*`;
const TOKENS: readonly (readonly [Token["kind"], RegExp])[] = [
  ["text", /"(?:[^"]|"")*"/uy],
  ["error", /#(?:N\/A|[A-Z]+(?:\/0)?[!?])/uy],
  ["call", /[\p{L}_][\p{L}\p{N}_.]*\(/uy],
  ["cells", new RegExp(`${SHEET}${CELL}(?::${CELL}|#)?(?![\\p{L}\\p{N}_.(!:\\[])`, "uy")],
  ["number", /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?(?![\p{L}\p{N}_:!])/uy],
  ["name", /(?:'(?:[^']|'')+'!|\[[^\]]*\]|[\p{L}\p{N}_.$!:\\])+(?:\[[^\]]*(?:\[[^\]]*\][^\]]*)*\])?/uy],
  ["sign", /<>|<=|>=|[-+*/^&=<>%(){},;@]/uy],
];

const tokensOf = (formula: string): Token[] | undefined => {
  const found: Token[] = [];
  let at = 1;
  while (at < formula.length) {
    if (/\s/.test(formula[at] ?? "")) {
      at += 1;
      continue;
    }
    const token = TOKENS.map(([kind, pattern]) => {
      pattern.lastIndex = at;
      return { kind, text: pattern.exec(formula)?.[0] ?? "", at };
    }).find(({ text }) => text !== "");
    if (token === undefined) return undefined;
    found.push(token);
    at += token.text.length;
  }
  return found;
};

const cellsOf = (text: string): FormulaTree => {
  const mark = text.lastIndexOf("!");
  const name = text.slice(0, Math.max(0, mark));
  const [first = "", last = first] = text.slice(mark + 1).replace("#", "").split(":");
  const sheet = mark < 0 ? undefined : name.startsWith("'") ? name.slice(1, -1).replace(/''/g, "'") : name;
  const [one, other] = [cellPlace(first), cellPlace(last)];
  return {
    kind: "cells", sheet, text, isSpill: text.endsWith("#"),
    from: { row: Math.min(one.row, other.row), column: Math.min(one.column, other.column) },
    to: { row: Math.max(one.row, other.row), column: Math.max(one.column, other.column) },
  };
};

const unquoted = (text: string): string => text.slice(1, -1).replace(/""/g, '"');

/** How strongly operators between two operands bind, weakest first: Microsoft, calculation operators and precedence in Excel. */
const STRENGTH: Readonly<Record<string, number>> = {
  "=": 1,
  "<>": 1,
  "<": 1,
  ">": 1,
  "<=": 1,
  ">=": 1,
  "&": 2,
  "+": 3,
  "-": 3,
  "*": 4,
  "/": 4,
  "^": 5,
};

/** The parts of a formula, and the next of them to read. */
interface Reading {
  readonly formula: string;
  readonly tokens: readonly Token[];
  next: number;
}

const peek = ({ tokens, next }: Reading): Token | undefined => tokens[next];

const isNext = (reading: Reading, text: string): boolean => peek(reading)?.kind === "sign" && peek(reading)?.text === text;

const take = (reading: Reading, text: string): boolean => {
  if (!isNext(reading, text)) return false;
  reading.next += 1;
  return true;
};

const textFrom = ({ formula, tokens, next }: Reading, first: number): string => {
  const last = tokens[next - 1];
  return last === undefined ? "" : formula.slice(tokens[first]?.at ?? 1, last.at + last.text.length);
};

const rows = (reading: Reading): FormulaTree | undefined => {
  const read: PlainValue[][] = [[]];
  for (;;) {
    const isNegative = take(reading, "-");
    const cell = primary(reading);
    if (cell?.kind !== "value") return undefined;
    read[read.length - 1]?.push(isNegative ? -Number(cell.value) : cell.value);
    if (take(reading, "}")) return { kind: "rows", rows: read };
    if (take(reading, ";")) read.push([]);
    else if (!take(reading, ",")) return undefined;
  }
};

const call = (reading: Reading, name: string, first: number): FormulaTree | undefined => {
  const given: (FormulaTree | undefined)[] = [];
  if (!take(reading, ")")) {
    for (;;) {
      if (isNext(reading, ",") || isNext(reading, ")")) given.push(undefined);
      else {
        const argument = expression(reading, 0);
        if (argument === undefined) return undefined;
        given.push(argument);
      }
      if (take(reading, ")")) break;
      if (!take(reading, ",")) return undefined;
    }
  }
  return { kind: "call", name, arguments: given, text: textFrom(reading, first) };
};

const primary = (reading: Reading): FormulaTree | undefined => {
  const first = reading.next;
  const token = peek(reading);
  if (token === undefined) return undefined;
  reading.next += 1;
  switch (token.kind) {
    case "number":
      return { kind: "value", value: Number(token.text) };
    case "text":
      return { kind: "value", value: unquoted(token.text) };
    case "error":
      return { kind: "error", code: token.text };
    case "cells":
      return cellsOf(token.text);
    case "call":
      return call(reading, token.text.slice(0, -1), first);
    case "name":
      return /^(true|false)$/i.test(token.text)
        ? { kind: "value", value: /^true$/i.test(token.text) }
        : { kind: "other", text: token.text };
    default:
      return afterSign(reading, token.text, first);
  }
};

const afterSign = (reading: Reading, sign: string, first: number): FormulaTree | undefined => {
  if (sign === "{") return rows(reading);
  if (sign === "(") {
    const inner = expression(reading, 0);
    return inner !== undefined && take(reading, ")") ? inner : undefined;
  }
  // @ asks for one cell of many, which only the spreadsheet can pick.
  if (sign === "@") return primary(reading) === undefined ? undefined : { kind: "other", text: textFrom(reading, first) };
  if (sign !== "-" && sign !== "+") return undefined;
  const operand = percented(reading);
  return operand === undefined ? undefined : { kind: "operation", operator: sign, operands: [operand], text: textFrom(reading, first) };
};

const percented = (reading: Reading): FormulaTree | undefined => {
  const first = reading.next;
  let operand = primary(reading);
  while (operand !== undefined && take(reading, "%"))
    operand = { kind: "operation", operator: "%", operands: [operand], text: textFrom(reading, first) };
  return operand;
};

const expression = (reading: Reading, weakest: number): FormulaTree | undefined => {
  const first = reading.next;
  let left = percented(reading);
  for (;;) {
    const token = peek(reading);
    const strength = token?.kind === "sign" ? STRENGTH[token.text] : undefined;
    if (left === undefined || token === undefined || strength === undefined || strength <= weakest) return left;
    reading.next += 1;
    const right = expression(reading, strength);
    if (right === undefined) return undefined;
    left = { kind: "operation", operator: token.text, operands: [left, right], text: textFrom(reading, first) };
  }
};

/** Reads a formula as it is typed, from its = on; undefined where it cannot be read. */
export const formulaTree = (formula: string): FormulaTree | undefined => {
  const tokens = formula.startsWith("=") ? tokensOf(formula) : undefined;
  if (tokens === undefined) return undefined;
  const reading: Reading = { formula, tokens, next: 0 };
  const tree = expression(reading, 0);
  return reading.next === tokens.length ? tree : undefined;
};

/** Every part of a tree, itself first. */
export const treeParts = (tree: FormulaTree): readonly FormulaTree[] => {
  if (tree.kind === "call") return [tree, ...tree.arguments.flatMap((part) => (part === undefined ? [] : treeParts(part)))];
  return tree.kind === "operation" ? [tree, ...tree.operands.flatMap(treeParts)] : [tree];
};
