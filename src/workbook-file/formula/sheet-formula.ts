import { closingPlace, formulaTokens, isCall, isSheetName, isSign, type Token } from "./formula-tokens";

/** What a formula of a file names that a live sheet has no names for, as the cells and the texts they stand for. */
export interface Named {
  /** A defined name in place, or why it cannot be; undefined for one that is not there. */
  readonly name: (name: string, sheet: string | undefined) => string | Unshown | undefined;
  /** A table with what stands behind it between brackets. */
  readonly table: (table: string, asked: string) => string | undefined;
}

/** Why a formula cannot stand in a live sheet. */
export interface Unshown {
  readonly unshown: string;
}

/** Add-in functions are kept under _xldudf_ and their full name, every point an underscore. */
const ADDED = /^_xldudf_([A-Z0-9]+)_(\w+)$/i;
const PREFIX = /^(?:_xlfn\.|_xlws\.|_xlpm\.|_xlop\.|_xleta\.)+/i;
const SPILL = "ANCHORARRAY";
const ONE = "SINGLE";
/** Parts of one formula, with all its names in place. */
const MOST_PARTS = 20_000;
const MOST_CHARACTERS = 8192;
/** With its prefixes a formula of a file is no more than some times as long. */
export const LONGEST_STORED = 32_768;
/** Calls within each other, as in Excel ("Excel specifications and limits"). */
const MOST_DEPTH = 64;
export const OTHER_BOOK = "reads another workbook";
export const TOO_LONG = "is longer than a cell takes";

/** The name by which a person calls a function of an add-in; undefined for any other function. */
export const addedName = (name: string): string | undefined => {
  const [, space, own] = ADDED.exec(name) ?? [];
  return space === undefined || own === undefined ? undefined : `${space}.${own}`.toUpperCase();
};

const plainName = (name: string): string => addedName(name) ?? name.replace(PREFIX, "");

const BOOK = /^\[(\d+)\]$/;
export const IN_QUOTED_BOOK = /^'(?:[^']|'')*\[(?:[^']|'')*\]/;

/** A number in brackets before what it may be dropped from: a function of an add-in, or a name of this very workbook, whose number is 0. */
const isEmptyBook = (tokens: readonly Token[], at: number): boolean => {
  const [, book] = BOOK.exec(tokens[at]?.text ?? "") ?? [];
  const word = tokens[at + 2];
  if (book === undefined || !isSign(tokens[at + 1], "!") || word?.kind !== "word") return false;
  return Number(book) === 0 || (isCall(tokens, at + 2) && (ADDED.test(word.text) || word.text.includes(".")));
};

const isReference = (text: string): boolean => /^(?:'(?:[^']|'')*'!|[\w.]+!)?[$\w.]+(?::[$\w.]+)?#?$/.test(text);

interface Reading {
  readonly tokens: readonly Token[];
  readonly named: Named;
  parts: number;
  depth: number;
}

class UnshownFormula extends Error {}

/** What stands in the place of a name; a formula cannot stand where one of its names cannot. */
const inPlace = ({ named }: Reading, name: string, sheet?: string): string | undefined => {
  const found = named.name(name, sheet);
  if (typeof found === "object") throw new UnshownFormula(found.unshown);
  return found;
};

const call = (reading: Reading, at: number): readonly [text: string, next: number] => {
  const { tokens } = reading;
  const word = tokens[at]?.text ?? "";
  const name = plainName(word);
  if (PREFIX.test(word) && [SPILL, ONE].includes(name.toUpperCase())) {
    const close = closingPlace(tokens, at + 1);
    reading.depth += 1;
    if (reading.depth > MOST_DEPTH) throw new UnshownFormula(TOO_LONG);
    const inner = written(reading, at + 2, close);
    reading.depth -= 1;
    // One call by itself needs no brackets either.
    const isAlone = isReference(inner) || (isCall(tokens, at + 2) && closingPlace(tokens, at + 3) === close - 1);
    const alone = isAlone ? inner : `(${inner})`;
    return [name.toUpperCase() === SPILL ? `${alone}#` : `@${alone}`, close + 1];
  }
  return [inPlace(reading, word) ?? name, at + 1];
};

const sheetOf = ({ kind, text }: Token): string => (kind === "quoted" ? text.slice(1, -1).replaceAll("''", "'") : text);

/** A word that is neither a call nor a sheet: a cell, a table, a defined name, a parameter. */
const word = (reading: Reading, at: number): readonly [text: string, next: number] => {
  const { tokens, named } = reading;
  const [text, behind] = [tokens[at]?.text ?? "", tokens[at + 1]];
  if (behind?.kind === "bracket") {
    const cells = named.table(text, behind.text);
    if (cells === undefined) throw new UnshownFormula("asks a table for cells it does not have");
    return [cells, at + 2];
  }
  return [inPlace(reading, text) ?? text.replace(PREFIX, ""), at + 1];
};

/** A sheet and what stands on it; a name on a sheet goes by what it stands for. */
const onSheet = (reading: Reading, at: number): readonly [text: string, next: number] => {
  const { tokens } = reading;
  const [sheet, name] = [tokens[at], tokens[at + 2]];
  if (sheet?.kind === "quoted" && IN_QUOTED_BOOK.test(sheet.text)) throw new UnshownFormula(OTHER_BOOK);
  const found = sheet !== undefined && name?.kind === "word" && isSign(tokens[at + 1], "!") && !isCall(tokens, at + 2)
    ? inPlace(reading, name.text, sheetOf(sheet))
    : undefined;
  if (found !== undefined) return [found, at + 3];
  // The cell goes along, so that it is not taken for a name.
  const length = isSign(tokens[at + 1], "!") ? 3 : 5;
  return [tokens.slice(at, at + length).map((token) => token.text).join(""), at + length];
};

const step = (reading: Reading, at: number): readonly [text: string, next: number] => {
  const { tokens } = reading;
  const { kind, text } = tokens[at] ?? { kind: "space", text: "" };
  if (kind === "bracket") {
    if (!isEmptyBook(tokens, at)) throw new UnshownFormula(OTHER_BOOK);
    return ["", at + 2];
  }
  if (isSheetName(tokens, at)) return onSheet(reading, at);
  if (kind !== "word") return [text, at + 1];
  return isCall(tokens, at) ? call(reading, at) : word(reading, at);
};

function written(reading: Reading, from: number, to: number): string {
  const texts: string[] = [];
  let at = from;
  while (at < to) {
    reading.parts += 1;
    if (reading.parts > MOST_PARTS) throw new UnshownFormula(TOO_LONG);
    const [text, next] = step(reading, at);
    texts.push(text);
    at = next;
  }
  return texts.join("");
}

/** A formula of a file as a live sheet takes it, without its = sign, or why it cannot stand there. */
export const sheetFormula = (formula: string, named: Named): string | Unshown => {
  if (formula.length > LONGEST_STORED) return { unshown: TOO_LONG };
  const tokens = formulaTokens(formula);
  try {
    const text = written({ tokens, named, parts: 0, depth: 0 }, 0, tokens.length);
    return text.length < MOST_CHARACTERS ? text : { unshown: TOO_LONG };
  } catch (error) {
    if (error instanceof UnshownFormula) return { unshown: error.message };
    throw error;
  }
};
