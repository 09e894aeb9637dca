import { isDateFormat, isGeneral, isPercentFormat, TEXT_FORMAT, withoutQuoted } from "../sheets/cell-format";
import { typedLength } from "../sheets/typed-length";
import type { PlainValue } from "./workbook-data";

/** What typing into a cell puts there: nothing, a formula, or a value and the number format that comes with the way it was typed. */
export type TypedCell =
  | { readonly kind: "nothing" }
  | { readonly kind: "formula"; readonly formula: string }
  | { readonly kind: "value"; readonly value: PlainValue; readonly format?: string };

const NUMBER = /^([+-])?(\$)?(\d{1,3}(?:,\d{3})+|\d*)(\.\d*)?(e[+-]?\d+)?(\s*%)?$/i;
// As in a bookkeeper's column: what stands in brackets is taken off.
const IN_BRACKETS = /^\(([^()+-]+)\)$/;
const ISO_DATE = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const DATE_WITH_YEAR = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/;
// In a column of dates, where it can mean nothing else.
const SHORT_DATE = /^(\d{1,2})[/-](\d{1,2})(?:[/-](\d{4}|\d{2}))?$/;

const HUNDRED = 100;
const DAY = 86_400_000;
// Day 0 of the serial dates of spreadsheets, right from 1 March 1900 on.
const DAY_ZERO = Date.UTC(1899, 11, 30);
const FIRST_RIGHT_DAY = 61;

const value = (held: PlainValue, format?: string): TypedCell =>
  format === undefined ? { kind: "value", value: held } : { kind: "value", value: held, format };

const typedNumber = (text: string, format: string | undefined): TypedCell | undefined => {
  const [, inBrackets] = IN_BRACKETS.exec(text) ?? [];
  const [matched, sign, dollar, whole = "", decimals = "", power = "", percent] = NUMBER.exec(inBrackets ?? text) ?? [];
  if (matched === undefined || !/\d/.test(whole + decimals)) return undefined;
  const digits = Number(`${whole.replaceAll(",", "") || "0"}${decimals}${power}`);
  // In a cell of percentages 10 and 0.1 are both 10 % (Microsoft, Format numbers as percentages).
  const isPercent = percent !== undefined || (isPercentFormat(format) && digits >= 1);
  const size = digits / (isPercent ? HUNDRED : 1);
  if (!Number.isFinite(size)) return undefined;
  const number = sign === "-" || inBrackets !== undefined ? -size : size;
  if (!isGeneral(format)) return value(number);
  if (percent !== undefined) return value(number, decimals.length > 1 ? "0.00%" : "0%");
  return dollar === undefined ? value(number) : value(number, "$#,##0.00");
};

const serialDay = (year: number, month: number, day: number): number | undefined => {
  const date = new Date(Date.UTC(year, month - 1, day));
  const serial = (date.getTime() - DAY_ZERO) / DAY;
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day && serial >= FIRST_RIGHT_DAY ? serial : undefined;
};

const dated = (serial: number | undefined, format?: string): TypedCell | undefined =>
  serial === undefined ? undefined : value(serial, format);

/** Whether a date format is written day/month, as in Britain and Australia; one with the month in letters does not say how it is typed. */
const isDayFirst = (format: string): boolean => /d[/.-]m{1,2}(?!m)/i.test(withoutQuoted(format));

// Excel's own: a year of two digits is from 1930 to 2029 (Microsoft, Change the date system, format, or two-digit year interpretation).
const LAST_OF_THIS_CENTURY = 29;
const CENTURY = 100;
const THIS_CENTURY = 2000;
const fullYear = (year: number): number =>
  year >= CENTURY ? year : year + THIS_CENTURY - (year > LAST_OF_THIS_CENTURY ? CENTURY : 0);

const typedDate = (text: string, format: string | undefined, thisYear: number): TypedCell | undefined => {
  const [year, month, day] = ISO_DATE.exec(text)?.slice(1).map(Number) ?? [];
  if (format === undefined || isGeneral(format)) {
    if (year !== undefined && month !== undefined && day !== undefined) return dated(serialDay(year, month, day), "yyyy-mm-dd");
    const [first, second, third] = DATE_WITH_YEAR.exec(text)?.slice(1).map(Number) ?? [];
    return first === undefined || second === undefined || third === undefined
      ? undefined
      : dated(serialDay(third, first, second), "m/d/yyyy");
  }
  if (!isDateFormat(format)) return undefined;
  if (year !== undefined && month !== undefined && day !== undefined) return dated(serialDay(year, month, day));
  const [matched, one, other, yearTyped] = SHORT_DATE.exec(text) ?? [];
  if (matched === undefined) return undefined;
  const [monthTyped, dayTyped] = isDayFirst(format) ? [other, one] : [one, other];
  return dated(serialDay(yearTyped === undefined ? thisYear : fullYear(Number(yearTyped)), Number(monthTyped), Number(dayTyped)));
};

/**
 * What a keyboard user gets who types this into a cell of this number format. A length in inches is a number; a fraction never becomes a
 * date: for that a full year is needed, or a column of dates.
 */
export const typedCell = (typed: string, format?: string, thisYear = new Date().getFullYear()): TypedCell => {
  if (typed === "") return { kind: "nothing" };
  if (format === TEXT_FORMAT) return value(typed);
  if (typed.startsWith("'")) return value(typed.slice(1));
  if (typed.startsWith("=") && typed.length > 1) return { kind: "formula", formula: typed };
  const text = typed.trim();
  if (/^(true|false)$/i.test(text)) return value(text.toLowerCase() === "true");
  const length = typedLength(text, format);
  return typedNumber(text, format) ?? (length && value(length.size, length.format)) ?? typedDate(text, format, thisYear) ?? value(typed);
};
