import { Exact } from "../solver/length/exact";
import { type Length, lengthIn, lengthOf, type Unit } from "../solver/length/length";
import type { MalformedLength } from "../solver/length/parse-length";
import { tapeText } from "../solver/length/tape-text";
import { lettersApart, nearestOrAll, nearestSaid, nearestWord } from "../solver/nearest-word";
import type { Details, Problem } from "../solver/problem";
import { folded, type Given, isFailed } from "./cells";
import { plainText } from "./plain-text";

/** Decimals of an inch or a millimetre in a sentence: finer than any tape. */
const DECIMALS = 4;
const FINEST_TAPE = 64;

/** A number without float dust: 7.6875, 36.87, 1200. */
export const numberText = (value: number): string => new Exact(value.toPrecision(15)).toDecimalPlaces(DECIMALS).toString();

/** A whole number with its thousands apart: 125,000. */
export const grouped = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, ",");

/** A length as the shop says it: on the tape's 1/64 as a fraction, else in decimals. */
export const lengthText = (length: Length, unit: Unit): string => {
  const value = lengthIn(length, unit);
  if (unit === "mm") return `${value.toDecimalPlaces(DECIMALS).toString()} mm`;
  if (value.times(FINEST_TAPE).isInteger()) return tapeText(value, { denominator: FINEST_TAPE, feet: false, strong: false });
  return `${value.toDecimalPlaces(DECIMALS).toString()} in`;
};

/** A length in both units: 1 1/4 in (31.75 mm). */
export const inBothUnits = (length: Length): string =>
  length.isZero() ? "0" : `${lengthText(length, "in").replace(/"$/, " in")} (${lengthText(length, "mm")})`;

/** Characters of a text that a sentence repeats: enough to know it by, and the advice behind it stays in sight. */
const QUOTED = 80;
/** Facts that are long lists of ours, such as all the woods there are; every other text may have come out of a cell. */
const OWN_WORDS: readonly string[] = ["known", "choices", "hint", "nearest", "rates"];
/** Characters: of a list of ours, and of a fact that may be some cells' texts with commas between. */
const LONGEST_OWN = 1000;
const LONGEST_FACT = 200;

const shortened = (text: string, most: number): string => (text.length <= most ? text : `${text.slice(0, most)}…`);

/** A text out of a cell, as a sentence repeats it. */
export const inSight = (text: string): string => shortened(text, QUOTED);
export const quoted = (text: string): string => `"${inSight(text)}"`;

/** What stood in the cell, as a person would read it back. */
export const shown = (given: Given): string => {
  if (given === null) return "nothing";
  if (isFailed(given)) return given.failed;
  if (typeof given === "string") return given.trim() === "" ? "nothing" : quoted(given);
  if (typeof given === "boolean") return given ? "TRUE" : "FALSE";
  return numberText(given);
};

const longest = (name: string, fact: string): number =>
  OWN_WORDS.includes(name) ? LONGEST_OWN : fact.includes(", ") ? LONGEST_FACT : QUOTED;

const worded = (name: string, fact: Details[string], unit: Unit): string => {
  if (typeof fact === "string") return shortened(fact, longest(name, fact));
  return typeof fact === "number" ? numberText(fact) : lengthText(fact, unit);
};

/**
 * A sentence with the facts put in: `{given}` is the fact of that name, `{given length}` a number that is a length in the unit of the call.
 */
export const sentence = (template: string, details: Details, unit: Unit): string =>
  template.replace(/\{(\w+)( length)?\}/g, (whole, name: string, length?: string) => {
    const fact = details[name];
    if (fact === undefined) return whole;
    return worded(name, length !== undefined && typeof fact === "number" ? lengthOf(fact, unit) : fact, unit);
  });

/** How far a word may be from a known one and still be a slip of the hand. */
const SLIP = 2;
const SHORT_WORD = 4;

/** The known word that `word` is a slip of, if it is one. */
export const slipOf = (word: string, known: readonly string[]): string | undefined => {
  const name = nearestWord(word, known);
  if (name === undefined) return undefined;
  const far = lettersApart(word, name);
  return far > 0 && far <= (folded(word).length <= SHORT_WORD ? 1 : SLIP) ? name : undefined;
};

export const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} or ${names[names.length - 1] ?? ""}`;

const MALFORMED: Readonly<Record<MalformedLength, string>> = {
  "not-a-length": 'read "{text}", which is not a length; write 7 5/8", 9\' 1 1/2" or "2781 mm"',
  "no-length": 'is empty; write a length such as 7 5/8" or "194 mm"',
  "zero-denominator": 'read "{text}", a fraction over 0; write the fraction again',
  "too-many-inches": 'read "{text}", with {inches} inches after the feet; inches after feet stay under 12',
  "feet-or-inches": 'read "{text}", which may be feet and inches or a range; write {feet} for feet and inches',
  "two-units": 'read "{text}", which has two units at odds; write feet and inches, or millimetres, not both',
  "decimal-comma": 'read "{text}", which has a comma; write {instead}',
  "two-fractions": 'read "{text}", which has two fractions; write one length a cell',
  "fractional-feet-and-inches": 'read "{text}", with a part of a foot and inches too; write whole feet, or inches alone',
};

/** The only wording of what is wrong with one value; each starts with the argument's, label's or heading's name. */
export const say = {
  malformedLength: (name: string, found: Problem<MalformedLength>): string =>
    `${name}: ${sentence(MALFORMED[found.problem] ?? "", { ...found.details, text: inSight(String(found.details["text"])) }, "in")}`,
  missing: (name: string, what: string): string =>
    `${name}: is missing; give ${what.charAt(0).toLowerCase()}${plainText(what.slice(1)).replace(/\.$/, "")}`,
  emptyOrZero: (name: string): string => `${name}: is empty or 0; give a value`,
  mustBe: (name: string, rule: string, got: Given): string => `${name}: must be ${rule}, got ${shown(got)}`,
  oneValue: (name: string, rows: number, columns: number): string => `${name}: takes one value, got a range of ${rows} x ${columns} cells`,
  implausible: (name: string, limit: string, got: number, unit: Unit): string =>
    unit === "in"
      ? `${name}: ${numberText(got)} in is ${limit}; if this is millimetres, write "${numberText(got)} mm"`
      : `${name}: ${numberText(got)} mm is ${limit}; if this is inches, write "${numberText(got)} in" or leave the unit out`,
  metricBeside: (name: string, got: Given, bare: boolean, metricName: string, metric: Given): string =>
    bare
      ? `${name}: ${shown(got)} has no unit and counts as inches, but ${metricName} is metric, ${shown(metric)}; write all lengths ` +
        `in one unit, here "${String(got)} mm" if it is millimetres`
      : `${name}: ${shown(got)} is in inches, but ${metricName} is metric, ${shown(metric)}; write all lengths in one unit`,
  unitBeside: (name: string, got: Given, beside: string, unit: Unit): string =>
    `${name}: ${shown(got)} has ${beside === '"' ? "an inch mark" : `"${beside}"`} beside it, but the table's unit is ${unit}; ` +
    `write the unit in the cell, as in "${shown(got)} ${beside}", or add a row unit`,
  date: (name: string, got: number): string =>
    `${name}: ${numberText(got)} is over 20,000; the cell may hold a date: format it as text, or type the length with a space as in 7 5/8`,
  percent: (name: string, got: number): string =>
    `${name}: ${numberText(got)} is ${numberText(got * 100)} %, write ${numberText(got)}% or ${numberText(got / 100)}`,
  overOne: (name: string, got: number): string =>
    `${name}: ${numberText(got)} is ${numberText(got * 100)} %, more than the whole; write "${numberText(got * 100)}%" if it is ` +
    `meant, else a share under 1`,
  /** Of a problem that carries the margin in percent. */
  marginOfAll: (name: string): string => `${name}: a margin of {percent} % leaves no cost; write less than 100 %`,
  /** Of a word that is one of a few of ours. */
  unknown: (name: string, got: string, known: readonly string[]): string =>
    `${name}: ${quoted(got)} is not known${nearestSaid(got, known)}; write ${listed(known)}`,
  /** Of a name that is none of those there are. */
  notThere: (name: string, got: string, there: readonly string[]): string =>
    `${name}: ${quoted(got)} is not known${nearestOrAll(got, there)}`,
  severalNames: (name: string, got: string, one: string, other: string): string =>
    `${name}: ${quoted(got)} may be "${one}" or "${other}"; write it as it stands there`,
  passedOn: (name: string, code: string): string => `${name}: the cell given holds ${code}; put that cell right first`,
  shapes: (name: string, rows: number, columns: number, other: string, otherRows: number, otherColumns: number): string =>
    `${name}: is ${rows} x ${columns} cells where ${other} is ${otherRows} x ${otherColumns}; give ranges of one size, or one value`,
  misspeltHeading: (table: string, got: string, near: string): string =>
    `${table}: heading ${quoted(got)} is not known; did you mean "${near}"?`,
  foreignHeading: (table: string, got: string, home: string, isOneOfSeveral: boolean, near: string | undefined): string =>
    `${table}: heading ${quoted(got)} is not read here; it belongs in ${home}${isOneOfSeveral ? " and others" : ""}; ` +
    `${near === undefined ? "" : `nearest here is "${near}"; `}rename the column or leave it out`,
  noQuantity: (table: string, got: string, why: string): string =>
    `${table}: heading ${quoted(got)} may not be the quantity: ${why}; write "quantity" over how many, or leave the column out`,
  twoQuantities: (table: string, got: string, other: string): string =>
    `${table}: headings ${quoted(got)} and ${quoted(other)} may each be the quantity; write "quantity" over how many`,
  twiceHeading: (table: string, heading: string): string => `${table}: heading "${heading}" appears twice; keep one`,
  twiceLabel: (label: string): string => `${label}: appears twice with two values; keep one`,
  twiceTerm: (terms: string, label: string): string => `${terms}: "${label}" has two rates; keep one`,
  termsClash: (terms: string, one: string, other: string): string =>
    `${terms}: "${one}" and "${other}" would charge one thing twice; keep one`,
  missingHeading: (table: string, heading: string, found: readonly string[]): string =>
    `${table}: heading "${heading}" is missing; found ${found.join(", ")}`,
  ambiguousColumns: (table: string, question: string): string => `${table}: ${question} give headings`,
  emptyTable: (table: string, wants: readonly string[]): string =>
    `${table}: has no rows; give ${wants.length === 0 ? "its rows under their headings" : `a table with ${wants.join(", ")}`}`,
  tooMany: (name: string, count: number, what: "rows" | "cells", most: number): string =>
    `${name}: is ${grouped(count)} ${what}; this function takes up to ${grouped(most)}`,
};
