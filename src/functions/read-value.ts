import { dayOfText, type GivenDay } from "../solver/books/day";
import { Exact, exact, SPREADSHEET_DIGITS } from "../solver/length/exact";
import { type Length, lengthIn, lengthOf, measure, type Unit } from "../solver/length/length";
import { parseLength } from "../solver/length/parse-length";
import { isProblem } from "../solver/problem";
import type { Plausible, RateOf, Sign } from "./columns";
import { type Failed, failed, folded, type Given, givenFor, isFailed, isEmpty } from "./cells";
import { numberText, say, shown } from "./say";

/** A bare number beyond this is no length in a stair; spreadsheet dates of our time start at about 45,000. */
export const LONGEST = 20000;
export const LONGEST_TEXT = "20,000 in (508 m) or less";

/** Sizes beyond which the unit is surely wrong, in inches. */
const PLAUSIBLE: Readonly<Record<Plausible, { readonly over: number; readonly under?: number }>> = {
  "total rise": { over: 400 },
  rise: { over: 12 },
  // Screed on insulation, and a floor raised on joists, are some 12 to 20 in. Common practice, no source.
  floor: { over: 48 },
  run: { over: 24, under: 4 },
  // The longest boards sold are some 24 ft, rails and finger-jointed stock are joined up to 60 ft; sheets are up to 5 ft wide. Common
  // practice, no source.
  "board length": { over: 720 },
  "board width": { over: 72 },
};

const SIGNS: Readonly<Record<Sign, { readonly allows: (sign: number) => boolean; readonly rule: string }>> = {
  positive: { allows: (sign) => sign > 0, rule: "more than 0" },
  "not negative": { allows: (sign) => sign >= 0, rule: "0 or more" },
  any: { allows: () => true, rule: "a number" },
};

const passedOn = (name: string, cell: Failed): Failed => failed(say.passedOn(name, cell.held ?? cell.failed), cell.failed);

const signed = (name: string, value: Exact | number, sign: Sign, given: Given): Failed | undefined =>
  SIGNS[sign].allows(typeof value === "number" ? value : value.cmp(0)) ? undefined : failed(say.mustBe(name, SIGNS[sign].rule, given));

const implausible = (name: string, length: Length, unit: Unit, plausible: Plausible): Failed | undefined => {
  const inches = measure(length, "in");
  const { over, under } = PLAUSIBLE[plausible];
  const size = measure(length, unit);
  const limit = (limitInches: number): string => `${numberText(measure(lengthOf(limitInches, "in"), unit))} ${unit}`;
  if (inches > over) return failed(say.implausible(name, `over ${limit(over)}`, size, unit));
  if (under !== undefined && inches < under) return failed(say.implausible(name, `under ${limit(under)}`, size, unit));
  return undefined;
};

export interface LengthRule {
  readonly sign: Sign;
  readonly plausible?: Plausible;
}

/** A length out of a cell. `unit` is undefined where the call knows none: bare numbers are then taken as they come, in inches. */
export const readLength = (name: string, cell: Given, unit: Unit | undefined, rule: LengthRule): Length | Failed => {
  if (isFailed(cell)) return passedOn(name, cell);
  if (cell === null || typeof cell === "boolean") return failed(say.mustBe(name, "a length", cell));
  if (typeof cell === "number" && Math.abs(cell) > LONGEST) return failed(say.date(name, cell));
  const read = typeof cell === "number" ? lengthOf(cell, unit ?? "in") : parseLength(cell, unit ?? "in");
  if (isProblem(read)) return failed(say.malformedLength(name, read));
  if (typeof cell === "string" && lengthIn(read, "in").abs().gt(LONGEST))
    return failed(say.mustBe(name, LONGEST_TEXT, cell));
  return (
    signed(name, read, rule.sign, cell) ??
    (unit !== undefined && rule.plausible !== undefined ? implausible(name, read, unit, rule.plausible) : undefined) ??
    read
  );
};

const CROSSED = /^(.*\S)\s*[xX\u00d7]\s*(\S.*)$/;

/** A size out of a cell: one length, or two as 24 x 3. */
export const readSize = (
  name: string, cell: Given, unit: Unit | undefined, rule: LengthRule,
): { readonly length: Length; readonly width?: Length } | Failed => {
  const [, one, other] = (typeof cell === "string" ? CROSSED.exec(cell) : null) ?? [];
  const length = readLength(name, one ?? cell, unit, rule);
  if (isFailed(length) || other === undefined) return isFailed(length) ? length : { length };
  const width = readLength(name, other, unit, rule);
  return isFailed(width) ? width : { length, width };
};

/** A length as a number in the unit of the call, for geometry that is not exact anyway. */
export const readReading = (name: string, cell: Given, unit: Unit | undefined, rule: LengthRule): number | Failed => {
  // A plain number needs no exact arithmetic: thousands of readings come this way.
  if (typeof cell === "number" && rule.plausible === undefined && Math.abs(cell) <= LONGEST) {
    return signed(name, cell, rule.sign, cell) ?? Number(cell.toPrecision(SPREADSHEET_DIGITS));
  }
  const length = readLength(name, cell, unit, rule);
  return isFailed(length) ? length : measure(length, unit ?? "in");
};

const GROUPED = /^[-+]?\d{1,3}(,\d{3})+(\.\d+)?$/;
const PLAIN = /^[-+]?(\d+\.?\d*|\.\d+)$/;

/** A spreadsheet keeps 15 digits: beyond this it does not count in ones any more, and nothing of a stair shop is so large. */
const LARGEST = 1e15;

/** A number out of a cell; text that is plainly a number counts, with a currency sign or a percent sign too. */
const readExact = (name: string, cell: Given, rule: string): Exact | Failed => {
  if (isFailed(cell)) return passedOn(name, cell);
  const tooLarge = (): Failed => failed(say.mustBe(name, `${rule}, under 1,000,000,000,000,000 either way`, cell));
  if (typeof cell === "number") return Math.abs(cell) < LARGEST ? exact(cell) : tooLarge();
  if (typeof cell === "string") {
    const text = cell.trim().replace(/^([-+]?)[$€£]\s*/, "$1");
    const percent = text.endsWith("%");
    const digits = percent ? text.slice(0, -1).trim() : text;
    if (PLAIN.test(digits) || GROUPED.test(digits)) {
      const value = new Exact(digits.replace(/,/g, ""));
      if (value.abs().gte(LARGEST)) return tooLarge();
      return percent ? value.div(100) : value;
    }
  }
  return failed(say.mustBe(name, rule, cell));
};

export const readMoney = (name: string, cell: Given, sign: Sign): Exact | Failed => {
  const value = readExact(name, cell, "an amount of money");
  return isFailed(value) ? value : (signed(name, value, sign, cell) ?? value);
};

export const readExactNumber = (name: string, cell: Given, sign: Sign): Exact | Failed => {
  const value = readExact(name, cell, "a number");
  return isFailed(value) ? value : (signed(name, value, sign, cell) ?? value);
};

export interface NumberRule {
  readonly sign: Sign;
  readonly least?: number;
  readonly most?: number;
}

export const readNumber = (name: string, cell: Given, rule: NumberRule): number | Failed => {
  const value = readExact(name, cell, "a number");
  if (isFailed(value)) return value;
  const wrong = signed(name, value, rule.sign, cell);
  if (wrong) return wrong;
  if (rule.least !== undefined && value.lt(rule.least)) return failed(say.mustBe(name, `${rule.least} or more`, cell));
  if (rule.most !== undefined && value.gt(rule.most)) return failed(say.mustBe(name, `${rule.most} or less`, cell));
  return value.toNumber();
};

export const readCount = (name: string, cell: Given, rule: NumberRule): number | Failed => {
  const value = readNumber(name, cell, rule);
  if (isFailed(value)) return value;
  return Number.isInteger(value) ? value : failed(say.mustBe(name, "a whole number", cell));
};

/** A bare number up to this can be meant: 2.5 is what a cell that shows 250 % hands over. A tax or a waste is never the whole. */
const RATE_MEANT: Readonly<Record<RateOf, number>> = {
  "the cost": 5,
  "the price": 1,
  "the cost or of the price": 5,
  "what it falls on": 1,
  "the quantity": 1,
  "the whole": 1,
};
/** Beyond it a number is percent without its sign, 25 for 25 %. */
const RATE_SLIP = 5;
const MOST_RATE = 10;

/** A share such as overhead or tax. Text with a percent sign is what it says. */
export const readRate = (name: string, cell: Given, of: RateOf): Exact | Failed => {
  const value = readExact(name, cell, "a rate such as 25% or 0.25");
  if (isFailed(value)) return value;
  const wrong = signed(name, value, "not negative", cell);
  if (wrong !== undefined) return wrong;
  // Of the whole there is never more than all, however it is written.
  if (of === "the whole" && value.gt(1) && (typeof cell === "string" || value.lte(RATE_SLIP)))
    return failed(say.mustBe(name, "100 % or less", cell));
  if (typeof cell === "string" && cell.trim().endsWith("%"))
    return value.gt(MOST_RATE) ? failed(say.mustBe(name, "1000 % or less", cell)) : value;
  if (value.div(100).gt(RATE_MEANT[of])) return failed(say.mustBe(name, "a rate such as 25% or 0.25", cell));
  if (value.gt(RATE_SLIP)) return failed(say.percent(name, value.toNumber()));
  return value.gt(RATE_MEANT[of]) ? failed(say.overOne(name, value.toNumber())) : value;
};

const STEEPEST = 90;

export const readAngle = (name: string, cell: Given): number | Failed => {
  const value = readExact(name, cell, "an angle in degrees");
  if (isFailed(value)) return value;
  return value.abs().lt(STEEPEST) ? value.toNumber() : failed(say.mustBe(name, "less than 90 degrees either way", cell));
};

/** Numbers under 1950-01-01 are years, days of a month or quantities; the last is 9999-12-31. */
const FIRST_DAY = 18_264;
const LAST_DAY = 2_958_465;

/** A day: the whole number of a spreadsheet's date, or text in the one order of year, month and day that reads one way. */
export const readDate = (name: string, cell: Given): GivenDay | Failed => {
  if (isFailed(cell)) return passedOn(name, cell);
  if (typeof cell === "number" && Number.isInteger(cell) && cell >= FIRST_DAY && cell <= LAST_DAY) return { day: cell, given: cell };
  const day = typeof cell === "string" ? dayOfText(cell.trim()) : undefined;
  if (day !== undefined && typeof cell === "string") return { day, given: cell.trim() };
  const isTimed = typeof cell === "number" && !Number.isInteger(cell) && cell > FIRST_DAY && cell < LAST_DAY;
  return failed(say.mustBe(name, isTimed ? "a date without a time of day" : "a date, or text such as 2026-03-04", cell));
};

const optionKeys = new WeakMap<readonly string[], ReadonlyMap<string, string>>();

/** The options by their keys, of several under one the first: thousands of rows choose from the same. */
const keysOf = (options: readonly string[]): ReadonlyMap<string, string> => {
  const keys = optionKeys.get(options) ?? new Map([...options].reverse().map((option) => [folded(option), option]));
  optionKeys.set(options, keys);
  return keys;
};

const matched = (cell: string | number, options: readonly string[]): string | undefined => keysOf(options).get(folded(String(cell)));

export const readChoice = (name: string, cell: Given, options: readonly string[]): string | Failed => {
  if (isFailed(cell)) return passedOn(name, cell);
  if (typeof cell === "boolean" && options.includes("yes")) return cell ? "yes" : "no";
  if (cell === null || typeof cell === "boolean") return failed(say.mustBe(name, `one of ${options.join(", ")}`, cell));
  return matched(cell, options) ?? failed(say.unknown(name, String(cell), options));
};

const YES: readonly string[] = ["yes", "true", "y"];
const NO: readonly string[] = ["no", "false", "n"];

/** Yes or no. A number is taken as the spreadsheet takes it: 0 is no. */
export const readFlag = (name: string, cell: Given): boolean | Failed => {
  if (isFailed(cell)) return passedOn(name, cell);
  if (typeof cell === "boolean") return cell;
  if (typeof cell === "number") return cell !== 0;
  if (cell !== null && matched(cell, YES)) return true;
  if (cell !== null && matched(cell, NO)) return false;
  return failed(`${name}: must be yes or no, got ${shown(cell)}`);
};

/** A name, or a number that serves as one. */
export const readLabel = (name: string, cell: Given): string | number | Failed => {
  if (isFailed(cell)) {
    const own = givenFor(name, cell);
    // A sentence of ours begins with what is wrong; another's may name nothing.
    return own.says.includes(": ") ? own : failed(`${name}: ${own.says}`, own.failed);
  }
  return typeof cell === "number" ? cell : readText(name, cell);
};

export const readText = (name: string, cell: Given): string | Failed => {
  if (isFailed(cell)) return passedOn(name, cell);
  return isEmpty(cell) ? "" : String(cell).trim();
};
