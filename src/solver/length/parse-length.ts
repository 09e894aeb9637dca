import { type Problem, problem } from "../problem";
import { Exact } from "./exact";
import { INCHES_PER_FOOT, type Length, lengthOf, type Unit } from "./length";

/** The vulgar fractions of Unicode (Latin-1 and Number Forms blocks). */
const UNICODE_FRACTIONS: Readonly<Record<string, string>> = {
  "¼": "1/4", "½": "1/2", "¾": "3/4", "⅐": "1/7", "⅑": "1/9", "⅒": "1/10", "⅓": "1/3", "⅔": "2/3", "⅕": "1/5",
  "⅖": "2/5", "⅗": "3/5", "⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
};

const MILLIMETRES_PER: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000 };

export type MalformedLength =
  | "not-a-length" | "no-length" | "zero-denominator" | "too-many-inches" | "two-units" | "decimal-comma" | "two-fractions"
  | "fractional-feet-and-inches" | "feet-or-inches";

const NUMBER = String.raw`(?:\d+(?:\.\d*)?|\.\d+)`;
/** `7`, `7.5`, `5/8`, `7 5/8`, `7-5/8`: whole part, then numerator and denominator. */
const MIXED = String.raw`(?:(${NUMBER})(?:(?:\s+|\s*-\s*)(\d+)\s*/\s*(\d+))?|(\d+)\s*/\s*(\d+))`;
const FEET = String.raw`(?:'|ft\.?|feet|foot)`;
const INCHES = String.raw`(?:"|in\.?|inches|inch)`;

const INCH_FORM = new RegExp(`^${MIXED}\\s*(${INCHES})?$`);
const FEET_FORM = new RegExp(`^${MIXED}\\s*${FEET}(?:\\s*-?\\s*${MIXED}\\s*${INCHES}?)?$`);
const METRIC_FORM = new RegExp(`^${MIXED}\\s*(mm|cm|m)$`);
/** `8-11-3/8`, feet, inches and the fraction. */
const DASHED_FORM = /^(\d+)\s*-\s*(\d+)\s*-\s*(\d+\s*\/\s*\d+)\s*"?$/;
/** `11" 3/8`, the fraction behind the inch mark. */
const LATE_FRACTION = /(\d)\s*"\s*-?\s*(\d+\s*\/\s*\d+)\s*"?$/;
/** `8-11` may be feet and inches, or from one to the other. */
const PAIR = /^\d+\s*-\s*(?:\d|1[01])\s*"?$/;
/** What TAPE appends where the length is longer than the mark, or shy of it: behind an inch mark, + behind a fraction too. */
const STRENGTH = new RegExp(`(?:(${INCHES})\\s*[+-]|(\\/\\s*\\d+)\\s*\\+)$`);

/** Signs of a plain keyboard alone: nothing typographic is in the text, and thousands of cells are read in a call. */
const KEYBOARD = /^[ -_a-~]*$/;

const keyboard = (text: string): string =>
  text
    .normalize("NFC")
    .replace(/[¼½¾⅐-⅞]/g, (sign) => ` ${UNICODE_FRACTIONS[sign] ?? sign}`)
    .replace(/[\u2044\u2215\uff0f]/g, "/")
    .replace(/[\u2010-\u2015\u2212\ufe63\uff0d]/g, "-")
    .replace(/[\u2018\u2019\u201b\u2032\u00b4`]/g, "'")
    .replace(/[\u201c\u201d\u201f\u2033\u3003]/g, '"')
    .replace(/[\s\u00a0\u2000-\u200b\u202f\u3000]/g, " ");

/** Every way of writing the same mark made one: straight quotes, plain hyphen, plain slash, single spaces. */
const plain = (text: string): string =>
  (KEYBOARD.test(text) ? text : keyboard(text))
    .replace(/''/g, '"')
    .replace(/ +/g, " ")
    .trim()
    .toLowerCase()
    .replace(STRENGTH, (_, inch?: string, fraction?: string) => inch ?? fraction ?? "")
    .replace(DASHED_FORM, (_, feet: string, whole: string, fraction: string) => `${feet}' ${whole} ${fraction}`)
    .replace(LATE_FRACTION, (_, whole: string, fraction: string) => `${whole} ${fraction}"`);

interface Mixed {
  readonly value: Exact;
  readonly zeroDenominator: boolean;
}

const mixed = (whole: string | undefined, over: string | undefined, under: string | undefined): Mixed => {
  const zeroDenominator = under !== undefined && Number(under) === 0;
  const fraction = over === undefined || zeroDenominator ? new Exact(0) : new Exact(over).div(under ?? 1);
  return { value: new Exact(whole ?? 0).plus(fraction), zeroDenominator };
};

const isAbsent = (parts: readonly (string | undefined)[]): boolean => parts.every((part) => part === undefined);

/** Says why a text is no length, as precisely as the text allows. */
const malformed = (text: string, read: string): Problem<MalformedLength> => {
  const isGrouped = /^\d{1,3}(,\d{3})+(?!\d)/.test(read);
  const ungrouped = read.replace(/,/g, "");
  // 1,000 may be a thousand or one: neither is guessed at. With a second comma it is no decimal.
  const either = read.includes(",", read.indexOf(",") + 1) ? ungrouped : `${ungrouped} or ${read.replace(",", ".")}, whichever is meant`;
  const instead = isGrouped ? either : `${read.replace(/\s*,\s*/, ".")} with a point`;
  if (/\d\s*,\s*\d/.test(read)) return problem("decimal-comma", { text, instead });
  const units = [/'|ft|feet|foot|"|in\b|inch/, /mm|cm|\dm\b|\d m\b/].filter((unit) => unit.test(read));
  if (units.length === 2) return problem("two-units", { text });
  if ((read.match(/\//g) ?? []).length > 1) return problem("two-fractions", { text });
  if (PAIR.test(read)) return problem("feet-or-inches", { text, feet: read.replace(/\s*-\s*/, "' ").replace(/"?$/, '"') });
  return problem("not-a-length", { text });
};

/** The unit a text states itself; undefined where it leaves that to the call, or is no length. */
export const statedUnit = (text: string): Unit | undefined => {
  const body = plain(text).replace(/^[-+]\s*/, "");
  if (METRIC_FORM.test(body)) return "mm";
  const inches = INCH_FORM.exec(body);
  return (inches !== null && inches[6] !== undefined) || FEET_FORM.test(body) ? "in" : undefined;
};

/**
 * The length a text states: feet and inches, inches with fractions or decimals, or metric. A text without a unit of its own is in `unit`.
 * Forms: 9' 1 1/2", 9'-1 1/2", 8'11"3/8, 8-11-3/8, 109 1/2, 109-1/2", 7-5/8, 2781 mm, 278.1cm, 2.781 m, 10', 3/16, -1/2", 7 5/8" + as TAPE
 * writes it (the mark is read), typographic quotes and fractions.
 */
export const parseLength = (text: string, unit: Unit): Length | Problem<MalformedLength> => {
  const read = plain(text);
  if (read === "") return problem("no-length", { text });
  const negative = /^-\s*/.exec(read);
  const body = negative ? read.slice(negative[0].length) : read.replace(/^\+\s*/, "");
  const signed = (length: Length): Length => (negative ? length.neg() : length);

  const metric = METRIC_FORM.exec(body);
  if (metric) {
    const size = mixed(metric[1], metric[2] ?? metric[4], metric[3] ?? metric[5]);
    if (size.zeroDenominator) return problem("zero-denominator", { text });
    return signed(lengthOf(size.value.times(MILLIMETRES_PER[metric[6] ?? "mm"] ?? 1), "mm"));
  }

  const inches = INCH_FORM.exec(body);
  if (inches) {
    const size = mixed(inches[1], inches[2] ?? inches[4], inches[3] ?? inches[5]);
    if (size.zeroDenominator) return problem("zero-denominator", { text });
    return signed(lengthOf(size.value, inches[6] === undefined ? unit : "in"));
  }

  const feet = FEET_FORM.exec(body);
  if (feet) {
    const whole = mixed(feet[1], feet[2] ?? feet[4], feet[3] ?? feet[5]);
    const inchParts = feet.slice(6, 11);
    const rest = isAbsent(inchParts) ? mixed("0", undefined, undefined) : mixed(feet[6], feet[7] ?? feet[9], feet[8] ?? feet[10]);
    if (whole.zeroDenominator || rest.zeroDenominator) return problem("zero-denominator", { text });
    if (rest.value.gte(INCHES_PER_FOOT)) return problem("too-many-inches", { text, inches: rest.value.toString() });
    if (!whole.value.isInteger() && !rest.value.isZero()) return problem("fractional-feet-and-inches", { text });
    return signed(lengthOf(whole.value.times(INCHES_PER_FOOT).plus(rest.value), "in"));
  }
  return malformed(text, body);
};
