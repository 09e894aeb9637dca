import { closingPlace, formulaTokens, isCall, isSheetName, isSign, type Token } from "./formula-tokens";
import { futurePrefix } from "./future-functions";

/** A formula as it stands in a file. */
export interface FileFormula {
  readonly formula: string;
  /** Functions of the add-in it calls, as the file names them. */
  readonly added: readonly string[];
  /** Whether it may come to more than one cell, which is stored as a dynamic array. */
  readonly isArray: boolean;
}

/**
 * The add-in's namespace in the manifest, and the name its functions are kept under (as the platform
 * saves it: tests/workbook-file/as-excel-saves.ts, which names its source).
 */
export const OURS = /^STAIR\./i;
const ADDED = "_xldudf_";
export const PARAMETER = "_xlpm.";
export const SPILL = "_xlfn.ANCHORARRAY";
export const ONE = "_xlfn.SINGLE";

const isWord = (token: Token | undefined): boolean => token?.kind === "word";

/** The name by which a file calls a function of ours. */
export const storedName = (name: string): string => ADDED + name.toUpperCase().replaceAll(".", "_");

/** The places at which the arguments of a call begin and end. */
const argumentsOf = (tokens: readonly Token[], open: number): readonly (readonly [number, number])[] => {
  const found: [number, number][] = [];
  const close = closingPlace(tokens, open);
  let from = open + 1;
  for (let at = open + 1; at < close; at += 1) {
    if (isSign(tokens[at], "(") || isSign(tokens[at], "{")) at = closingPlace(tokens, at);
    else if (isSign(tokens[at], ",")) {
      found.push([from, at]);
      from = at + 1;
    }
  }
  return [...found, [from, close]];
};

/** Of each function that gives names, whether its argument at a place does so, counted from 0; the last one of all does not. */
export const NAMING: Readonly<Record<string, (index: number) => boolean>> = { LET: (index) => index % 2 === 0, LAMBDA: () => true };

/** Names that LET and LAMBDA give, in lower case. */
export const givenNames = (tokens: readonly Token[]): ReadonlySet<string> => {
  const found = new Set<string>();
  for (const [at, { text }] of tokens.entries()) {
    const isNaming = isCall(tokens, at) ? NAMING[text.toUpperCase()] : undefined;
    if (isNaming === undefined) continue;
    for (const [index, [from, to]] of argumentsOf(tokens, at + 1).slice(0, -1).entries()) {
      const words = tokens.slice(from, to).filter(({ kind }) => kind !== "space");
      if (isNaming(index) && words.length === 1 && isWord(words[0])) found.add((words[0]?.text ?? "").toLowerCase());
    }
  }
  return found;
};

/** The place after the cell, call or bracket that begins here, with a # behind it. */
const operandEnd = (tokens: readonly Token[], from: number): number => {
  let at = from;
  if (isSheetName(tokens, at)) at += isSign(tokens[at + 1], "!") ? 2 : 4;
  if (isCall(tokens, at)) at = closingPlace(tokens, at + 1) + 1;
  else if (isSign(tokens[at], "(")) at = closingPlace(tokens, at) + 1;
  else at += 1;
  if (isSign(tokens[at], "#")) at += 1;
  return isSign(tokens[at], ":") ? operandEnd(tokens, at + 1) : at;
};

interface Writing {
  readonly tokens: readonly Token[];
  readonly parameters: ReadonlySet<string>;
  readonly added: Set<string>;
}

const name = ({ tokens, parameters: given, added }: Writing, at: number): string => {
  const text = tokens[at]?.text ?? "";
  if (given.has(text.toLowerCase())) return PARAMETER + text;
  if (!isCall(tokens, at)) return text;
  if (OURS.test(text)) {
    added.add(storedName(text));
    return storedName(text);
  }
  return futurePrefix(text.toUpperCase()) + text;
};

const step = (writing: Writing, at: number, to: number): readonly [text: string, next: number] => {
  const { tokens } = writing;
  const text = tokens[at]?.text ?? "";
  if (isSign(tokens[at], "@")) {
    const end = Math.min(operandEnd(tokens, at + 1), to);
    return [`${ONE}(${written(writing, at + 1, end)})`, end];
  }
  const cell = isSheetName(tokens, at) ? at + (isSign(tokens[at + 1], "!") ? 2 : 4) : at;
  if (cell < to && isWord(tokens[cell]) && isSign(tokens[cell + 1], "#"))
    return [`${SPILL}(${tokens.slice(at, cell + 1).map((token) => token.text).join("")})`, cell + 2];
  if (cell > at) return [tokens.slice(at, cell).map((token) => token.text).join(""), cell];
  return [isWord(tokens[at]) ? name(writing, at) : text, at + 1];
};

function written(writing: Writing, from: number, to: number): string {
  const texts: string[] = [];
  let at = from;
  while (at < to) {
    const [text, next] = step(writing, at, to);
    texts.push(text);
    at = next;
  }
  return texts.join("");
}

/** A formula of a live sheet in the form in which the platform itself stores it and binds it to the add-in. */
export const fileFormula = (formula: string): FileFormula => {
  const tokens = formulaTokens(formula.replace(/^=/, ""));
  const added = new Set<string>();
  const text = written({ tokens, parameters: givenNames(tokens), added }, 0, tokens.length);
  const isArray = added.size > 0 || text.includes("_xlfn.") || tokens.some((token) => isSign(token, ":") || isSign(token, "{"));
  return { formula: text, added: [...added], isArray };
};
