import { LONGEST, LONGEST_TEXT } from "../functions/read-value";
import { listed, say, slipOf } from "../functions/say";
import { lengthIn, type Unit } from "../solver/length/length";
import { parseLength, statedUnit } from "../solver/length/parse-length";
import { isProblem } from "../solver/problem";
import { wordKey } from "../solver/word-key";
import { words } from "../solver/words";
import type { ReadStep } from "./reading-set";
import { KEPT, NO, NOT_TAKEN, type Part, PARTS, STEP, YES } from "./text-form";
import { inQuotes, isUnread, type TextLine, type Unread, unread } from "./text-lines";

const UNIT_WORDS = { in: "inches", mm: "millimetres" } as const;

const WRITE = { in: "write inches such as 36 5/8", mm: "write millimetres such as 930.5" } as const;

/** Said of inches that stand in a set of millimetres. */
const INCH_FRACTION = /\d\s*\/\s*\d|[¼½¾⅐-⅞]/;
/** What belongs to the number before it where a message made spaces of tabs: `36 5/8`, `36 ⅝ "`, `930 mm`. */
const GOES_ON =
  /^(?:\d+[/\u2044\u2215\uff0f]\d+["\u201c\u201d\u2033]?|[¼½¾⅐-⅞]["\u201c\u201d\u2033]?|["\u201c\u201d\u2033]|in\.?|inch(?:es)?|mm)$/i;
/** A number that a fraction may follow. */
const WHOLE = /^\d+$/;
const NUMBER = /^\d/;
const MARKS_ONLY = /^[-\u2010-\u2015\u2212]+$/;

const known = (part: Part): readonly string[] => [STEP, ...PARTS[part], KEPT];

/** Headings parted by spaces: the longest of ours each time, for `second diagonal` is not `diagonal`. */
const squashedHeadings = (text: string, part: Part): readonly string[] => {
  const names = known(part).map(words).sort((one, other) => other.length - one.length);
  const found: string[] = [];
  let rest = text.replace(/\s+/g, " ").trim();
  while (rest !== "") {
    const name = names.find((one) => `${rest.toLowerCase()} `.startsWith(`${one} `)) ?? rest.split(" ")[0] ?? rest;
    found.push(name);
    rest = rest.slice(name.length).trim();
  }
  return found;
};

/** The headings of a table as columns of ours, in the order they stand in. */
export const headingsIn = (line: TextLine, part: Part): readonly string[] | Unread => {
  const names = known(part);
  const found: string[] = [];
  for (const cell of line.text.includes("\t") ? line.text.split("\t") : squashedHeadings(line.text, part)) {
    const heading = names.find((name) => wordKey(words(name)) === wordKey(cell));
    if (heading === undefined) {
      const near = slipOf(cell, names.map(words));
      const write = near === undefined ? `write ${listed(names.map(words))}` : `write ${near}`;
      return unread(line, `${inQuotes(cell.trim())} is no heading of ${part}; ${write}`);
    }
    if (found.includes(heading)) return unread(line, `the heading ${words(heading)} stands twice; leave one of them out`);
    found.push(heading);
  }
  const all = names.map(words).join(", ");
  return found.includes(STEP) ? found : unread(line, `no heading reads ${STEP}; write ${all}, a tab between them`);
};

/** The cells of a row whose tabs became spaces. */
const squashedCells = (text: string): readonly string[] => {
  const cells: string[] = [];
  for (const token of text.split(/\s+/)) {
    const before = cells[cells.length - 1] ?? "";
    const isFraction = /^[\d¼½¾⅐-⅞]/.test(token);
    const goesOn = cells.length > 1 && GOES_ON.test(token) && (isFraction ? WHOLE.test(before) : NUMBER.test(before));
    if (goesOn) cells[cells.length - 1] = `${before} ${token}`;
    else cells.push(token);
  }
  return cells;
};

const cellsOf = (line: TextLine, headings: readonly string[]): readonly string[] | Unread => {
  const { text } = line;
  if (text.includes("\t")) {
    const cells = text.split("\t").map((cell) => cell.trim());
    const beyond = cells.slice(headings.length).find((cell) => cell !== "");
    return beyond === undefined
      ? headings.map((_, place) => cells[place] ?? "")
      : unread(line, `${inQuotes(beyond)} stands beyond the ${headings.length} headings; leave it out`);
  }
  const apart = text.split(/ {2,}/);
  const cells = apart.length === headings.length ? apart : squashedCells(text);
  return cells.length === headings.length
    ? cells
    : unread(
      line,
      `reads ${inQuotes(text)}, ${cells.length} cells under ${headings.length} headings; put a tab between the cells and ` +
        `${NOT_TAKEN} for a reading not taken`,
    );
};

const readLength = (line: TextLine, name: string, text: string, unit: Unit): number | Unread => {
  const length = parseLength(text, unit);
  if (isProblem(length)) {
    const isNone = length.problem === "not-a-length";
    return unread(line, isNone ? `${name} reads ${inQuotes(text)}, which is no length; ${WRITE[unit]}` : say.malformedLength(name, length));
  }
  const stated = statedUnit(text) ?? (unit === "mm" && INCH_FRACTION.test(text) ? "in" : unit);
  if (stated !== unit) {
    const units = `which is ${UNIT_WORDS[stated]}, and the set is in ${UNIT_WORDS[unit]}`;
    return unread(line, `${name} reads ${inQuotes(text)}, ${units}; write it in ${UNIT_WORDS[unit]}`);
  }
  if (!length.gt(0)) return unread(line, `${name} reads ${inQuotes(text)}; write a length over 0, or ${NOT_TAKEN} where it was not taken`);
  if (lengthIn(length, "in").gt(LONGEST)) return unread(line, `${name} reads ${inQuotes(text)}; write ${LONGEST_TEXT}`);
  return lengthIn(length, unit).toNumber();
};

const keptIn = (line: TextLine, name: string, text: string): boolean | Unread => {
  const key = text.toLowerCase();
  if (key === YES || key === KEPT) return true;
  return key === NO || key === "" || MARKS_ONLY.test(key) ? false : unread(line, `${name} reads ${inQuotes(text)}; write ${YES} or ${NO}`);
};

/** One row of a table: the step, what was read, and whether it was kept although it did not close. */
export const readRow = (line: TextLine, part: Part, headings: readonly string[], unit: Unit): ReadStep | Unread => {
  const cells = cellsOf(line, headings);
  if (isUnread(cells)) return cells;
  const stepText = cells[headings.indexOf(STEP)] ?? "";
  const step = Number(stepText);
  if (!/^\d{1,4}$/.test(stepText) || step === 0)
    return unread(line, `${STEP} reads ${inQuotes(stepText)}; write the number of the step, 1 or more`);
  const read: Record<string, number> = {};
  let kept = false;
  for (const [place, heading] of headings.entries()) {
    const text = cells[place] ?? "";
    const name = `step ${step}, ${words(heading)}`;
    if (heading === KEPT) {
      const isKept = keptIn(line, name, text);
      if (typeof isKept !== "boolean") return isKept;
      kept = isKept;
    } else if (heading !== STEP && text !== "" && !MARKS_ONLY.test(text)) {
      const value = readLength(line, name, text, unit);
      if (typeof value !== "number") return value;
      read[heading] = value;
    }
  }
  return { step, read, kept };
};
