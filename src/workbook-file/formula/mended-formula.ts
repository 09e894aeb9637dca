import { ONE, OURS, PARAMETER, SPILL, storedName } from "./file-formula";
import { bracketPartners, formulaTokens, isCall, isSheetName, isSign, type Token } from "./formula-tokens";
import { futurePrefix } from "./future-functions";
import { BEFORE_CALL, type GivenNames, givenNamesIn } from "./given-names";
import { addedName, IN_QUOTED_BOOK, LONGEST_STORED, OTHER_BOOK, TOO_LONG } from "./sheet-formula";

/** What a workbook, and whoever mends it, say of the words in its formulas. */
export interface KnownWords {
  /** Whether we have a function, by its name in capitals: STAIR.RISERS. */
  readonly isOurs: (name: string) => boolean;
  /** The workbook's own names in lower case, some of which may be called. */
  readonly defined: ReadonlySet<string>;
  readonly hasMacros: boolean;
}

export interface MendedFormula {
  readonly formula: string;
  /** What in it stays as it is though it is not right, and why, as what is said of the formula. */
  readonly left: readonly string[];
}

/** What is optional in LAMBDA (from memory). */
const OPTIONAL = "_xlop.";
const IN_BOOK = /^\[[^#@[\]]+\]$/;
const OWN_BOOK = "[0]";
const NOT_A_FORMULA = "is not written as a formula is: a bracket, a cell or a sign is missing in it";

interface Mending {
  readonly tokens: readonly Token[];
  readonly partners: ReadonlyMap<number, number>;
  readonly given: GivenNames;
  readonly known: KnownWords;
  /** Whether the formula is of a rule or a list, which Excel lets call no function of an add-in. */
  readonly isRule: boolean;
  readonly texts: string[];
  readonly left: Set<string>;
  /** Where what stands behind an @ ends, of those that are mended already. */
  readonly ends: Map<number, number>;
}

const wantedPrefix = (name: string): string =>
  [SPILL, ONE].some((one) => one.endsWith(`.${name}`)) ? "_xlfn." : futurePrefix(name);

/** A function by the name that binds it. */
const called = ({ known, isRule, left }: Mending, text: string): string => {
  const own = addedName(text) ?? text;
  if (OURS.test(own)) {
    const name = own.toUpperCase();
    const why = isRule ? "which no rule and no list may" : known.isOurs(name) ? undefined : "which there is not";
    if (why === undefined) return storedName(name);
    left.add(`calls ${name}, ${why}`);
    return text;
  }
  const bare = text.replace(BEFORE_CALL, "");
  // In capitals: LibreOffice saves a function that it does not know in small letters.
  const name = bare.toUpperCase();
  const prefix = wantedPrefix(name);
  // A name of the workbook is called by itself: a LAMBDA.
  if (prefix === "" || prefix + name === text || (bare === text && known.defined.has(text.toLowerCase()))) return text;
  if (bare === text && known.hasMacros) {
    // A function of a macro has no prefix, and Excel takes it for that (from memory).
    left.add(`calls ${text}, which may be a macro of this workbook`);
    return text;
  }
  return prefix + name;
};

/** The first place after the cell, call or brackets that begin here, with a range and a # behind them. */
const operandEnd = ({ tokens, partners, ends }: Mending, from: number): number => {
  let at = from;
  for (;;) {
    while (tokens[at]?.kind === "space") at += 1;
    const known = ends.get(at);
    if (known !== undefined) return known;
    if (isSheetName(tokens, at)) at += isSign(tokens[at + 1], "!") ? 2 : 4;
    const open = isCall(tokens, at) ? at + 1 : at;
    at = (partners.get(open) ?? open) + 1;
    if (tokens[at]?.kind === "bracket") at += 1;
    if (isSign(tokens[at], "#")) at += 1;
    if (!isSign(tokens[at], ":")) return Math.min(at, tokens.length);
    at += 1;
  }
};

/** Whether a cell, a name, a call or something between brackets begins or ends with this part. */
const isOperand = (token: Token | undefined, bracket: string): boolean =>
  token?.kind === "word" || token?.kind === "quoted" || token?.kind === "bracket" || isSign(token, bracket);

/** The place of the cell, the name or the call that a # stands behind. */
const operandStart = ({ tokens, partners }: Mending, end: number): number => {
  let at = partners.get(end) ?? end;
  if (at !== end && tokens[at - 1]?.kind === "word") at -= 1;
  if (!isSign(tokens[at - 1], "!")) return at;
  // A name may say !A1 for a cell of whichever sheet it is asked on. Jan:Dec! is no place that anything spills to.
  at -= isOperand(tokens[at - 2], ")") ? 2 : 1;
  return tokens[at - 1]?.kind === "bracket" ? at - 1 : at;
};

const put = (texts: string[], at: number, before: string, behind = ""): void => {
  texts[at] = before + (texts[at] ?? "") + behind;
};

const CLOSED: Readonly<Partial<Record<Token["kind"], RegExp>>> = { text: /^"(?:[^"]|"")*"$/, quoted: /^'(?:[^']|'')*'$/ };

/** Whether a part ends as it begins; in brackets a mark behind an apostrophe is none (ECMA-376-1, 18.17.2.4). */
const isClosed = ({ kind, text }: Token): boolean => {
  if (kind !== "bracket") return CLOSED[kind]?.test(text) ?? true;
  const marks = text.replaceAll(/'./gs, "");
  return marks.split("[").length === marks.split("]").length;
};

/** Whether a # stands behind something, an @ before something, and it, the name of a sheet and of a workbook behind nothing. */
const isSound = (tokens: readonly Token[], at: number): boolean => {
  const [before, token] = [tokens[at - 1], tokens[at]];
  if (token === undefined || !isClosed(token)) return false;
  const { kind } = token;
  const isBehind = isOperand(before, ")") || before?.kind === "number" || isSign(before, "#");
  const after = tokens[at + 1];
  if (kind === "bracket" && isBehind) return !isSign(after, "!") && !isOperand(after, "(") && after?.kind !== "number";
  if (isSign(tokens[at], "#")) return before?.kind === "word" || isSign(before, ")");
  if (!isSign(tokens[at], "@")) return kind !== "quoted" || !isBehind;
  const next = after?.kind === "space" ? tokens[at + 2] : after;
  return !isBehind && (isOperand(next, "(") || isSign(next, "@"));
};

/** Signs that only a person types: the file has functions in their place. */
const signed = (mending: Mending, at: number): void => {
  const { tokens, texts, ends } = mending;
  if (isSign(tokens[at], "@")) {
    const end = operandEnd(mending, at + 1);
    ends.set(at, end);
    texts[at] = `${ONE}(`;
    put(texts, end - 1, "", ")");
  } else if (isSign(tokens[at], "#")) {
    put(texts, operandStart(mending, at - 1), `${SPILL}(`);
    texts[at] = ")";
  }
};

/** A bracket by itself names another workbook; dropped where it only stands before a function of an add-in, which is in none. */
const bracketed = ({ tokens, texts, left }: Mending, at: number): void => {
  const [text, next, word] = [tokens[at]?.text ?? "", tokens[at + 1], tokens[at + 2]?.text ?? ""];
  // Behind a word it says which cells of a table.
  if (tokens[at - 1]?.kind === "word" || (text === OWN_BOOK && isSign(next, "!"))) return;
  if (isSign(next, "!") && isCall(tokens, at + 2) && (addedName(word) !== undefined || OURS.test(word))) {
    Object.assign(texts, { [at]: "", [at + 1]: "" });
    return;
  }
  const isBook = IN_BOOK.test(text) && (isSign(next, "!") || next?.kind === "word" || next?.kind === "number");
  left.add(isBook ? OTHER_BOOK : "asks for cells of a table without its name");
};

/** Mends the part at a place; answers the next one. */
const step = (mending: Mending, at: number): number => {
  const { tokens, texts, given, left } = mending;
  const { kind, text } = tokens[at] ?? { kind: "space", text: "" };
  if (given.places.has(at)) {
    const optional = given.places.get(at);
    if (optional !== undefined) texts[at] = OPTIONAL + optional;
    else if (!text.startsWith("_xl")) texts[at] = PARAMETER + text;
  } else if (isSheetName(tokens, at)) {
    if (kind === "quoted" && IN_QUOTED_BOOK.test(text)) left.add(OTHER_BOOK);
    // What stands on a sheet is none of the names given here, nor a function.
    return at + (isSign(tokens[at + 1], "!") ? 3 : 5);
  } else if (kind === "bracket") bracketed(mending, at);
  else if (kind === "word" && tokens[at + 1]?.kind !== "bracket") {
    const isOfBook = isSign(tokens[at - 1], "!") && texts[at - 1] !== "";
    if (given.isGiven(text, at)) texts[at] = PARAMETER + text;
    else if (isCall(tokens, at) && !isOfBook) texts[at] = called(mending, text);
  }
  return at + 1;
};

/**
 * A formula of a file with its words as Excel binds them: functions of ours under the names that the platform keeps them by, functions
 * that came later with their prefixes, names that LET and LAMBDA give with theirs, and functions for the signs @ and #. Everything else of
 * it stays letter by letter.
 */
export const mendedFormula = (formula: string, known: KnownWords, isRule = false): MendedFormula => {
  if (formula.length > LONGEST_STORED) return { formula, left: [TOO_LONG] };
  const tokens = formulaTokens(formula);
  const partners = bracketPartners(tokens);
  if (partners === undefined || !tokens.every((_, at) => isSound(tokens, at))) return { formula, left: [NOT_A_FORMULA] };
  const texts = tokens.map(({ text }) => text);
  const given = givenNamesIn(tokens, partners);
  const mending: Mending = { tokens, partners, given, known, isRule, texts, left: new Set(), ends: new Map() };
  for (let at = 0; at < tokens.length; at = step(mending, at));
  // From the back, so that what is put around several parts is put around what stands within it already.
  for (let at = tokens.length - 1; at >= 0; at -= 1) if (tokens[at]?.kind === "sign") signed(mending, at);
  return { formula: texts.join(""), left: [...mending.left] };
};
