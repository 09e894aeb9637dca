import type { PlainValue } from "./workbook-data";

/** What typing into a cell puts there: nothing, a formula, or a value and the number format that comes with the way it was typed. */
export type TypedCell =
  | { readonly kind: "nothing" }
  | { readonly kind: "formula"; readonly formula: string }
  | { readonly kind: "value"; readonly value: PlainValue; readonly format?: string };

export const TEXT_FORMAT = "@";

const NUMBER = /^([+-])?(\$)?(\d{1,3}(?:,\d{3})+|\d*)(\.\d*)?(e[+-]?\d+)?(%)?$/i;
const FRACTION = /^([+-])?(?:(\d+)(?:\s+|-))?(\d+)\/(\d+)\s*"?$/;
const WHOLE_INCHES = /^([+-]?\d+(?:\.\d+)?)\s*"$/;
const ISO_DATE = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const MONTH_FIRST_DATE = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/;

const HUNDRED = 100;
const DAY = 86_400_000;
// Day 0 of the serial dates of spreadsheets, right from 1 March 1900 on.
const DAY_ZERO = Date.UTC(1899, 11, 30);
const FIRST_RIGHT_DAY = 61;

const withoutQuoted = (format: string): string => format.replace(/"[^"]*"|\\./g, "");

export const isFractionFormat = (format: string | undefined): boolean =>
  format !== undefined && /[?#0]\s*\/\s*[?#\d]/.test(withoutQuoted(format));

const isDateFormat = (format: string): boolean => /[dy]/i.test(withoutQuoted(format));

const isGeneral = (format: string | undefined): boolean => format === undefined || format === "" || format.toLowerCase() === "general";

const value = (held: PlainValue, format?: string): TypedCell =>
  format === undefined ? { kind: "value", value: held } : { kind: "value", value: held, format };

const typedNumber = (text: string, format: string | undefined): TypedCell | undefined => {
  const [matched, sign, dollar, whole = "", decimals = "", power = "", percent] = NUMBER.exec(text) ?? [];
  if (matched === undefined || !/\d/.test(whole + decimals)) return undefined;
  const size = Number(`${whole.replaceAll(",", "") || "0"}${decimals}${power}`) / (percent === undefined ? 1 : HUNDRED);
  if (!Number.isFinite(size)) return undefined;
  const number = sign === "-" ? -size : size;
  if (!isGeneral(format)) return value(number);
  if (percent !== undefined) return value(number, decimals.length > 1 ? "0.00%" : "0%");
  return dollar === undefined ? value(number) : value(number, "$#,##0.00");
};

const typedInches = (text: string): TypedCell | undefined => {
  const [whole] = WHOLE_INCHES.exec(text)?.slice(1) ?? [];
  if (whole !== undefined) return value(Number(whole));
  const [matched, sign, inches = "0", parts, denominator] = FRACTION.exec(text) ?? [];
  if (matched === undefined || Number(denominator) === 0) return undefined;
  const size = Number(inches) + Number(parts) / Number(denominator);
  return value(sign === "-" ? -size : size);
};

const serialDay = (year: number, month: number, day: number): number | undefined => {
  const date = new Date(Date.UTC(year, month - 1, day));
  const serial = (date.getTime() - DAY_ZERO) / DAY;
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day && serial >= FIRST_RIGHT_DAY ? serial : undefined;
};

const typedDate = (text: string, format: string | undefined): TypedCell | undefined => {
  const own = isGeneral(format) || format === undefined;
  if (!own && !isDateFormat(format)) return undefined;
  const [year, month, day] = ISO_DATE.exec(text)?.slice(1).map(Number) ?? [];
  const [second, third, first] = MONTH_FIRST_DATE.exec(text)?.slice(1).map(Number) ?? [];
  const serial =
    year !== undefined && month !== undefined && day !== undefined
      ? serialDay(year, month, day)
      : first !== undefined && second !== undefined && third !== undefined
        ? serialDay(first, second, third)
        : undefined;
  if (serial === undefined) return undefined;
  return own ? value(serial, year === undefined ? "m/d/yyyy" : "yyyy-mm-dd") : value(serial);
};

/**
 * What a keyboard user gets who types this into a cell of this number format. A fraction is a number where the format shows fractions and
 * stays text elsewhere; it never becomes a date, for which a full year is needed.
 */
export const typedCell = (typed: string, format?: string): TypedCell => {
  if (typed === "") return { kind: "nothing" };
  if (format === TEXT_FORMAT) return value(typed);
  if (typed.startsWith("'")) return value(typed.slice(1));
  if (typed.startsWith("=") && typed.length > 1) return { kind: "formula", formula: typed };
  const text = typed.trim();
  if (/^(true|false)$/i.test(text)) return value(text.toLowerCase() === "true");
  const inches = isFractionFormat(format) ? typedInches(text) : undefined;
  return inches ?? typedNumber(text, format) ?? typedDate(text, format) ?? value(typed);
};
