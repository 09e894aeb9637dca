import { isDateFormat, isFractionFormat, isGeneral, TEXT_FORMAT, withoutQuoted } from "./cell-format";

const FRACTION = /^([+-])?\s*(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+)\s*("?)$/;
const MARKED_INCHES = /^([+-]?(?:\d+(?:\.\d*)?|\.\d+))\s*"$/;

/** Parts of an inch that tapes are divided into; the coarsest of them that shows a fraction is its format's. */
const TAPE_PARTS: readonly number[] = [16, 32, 64];
const FINEST = 64;
/** Digits under the line of a fraction that number formats show. */
const MOST_DIGITS = 3;

/** Beyond it a number is no longer told from the next, and no length: what is typed stays text. */
const MOST_COUNTED = Number.MAX_SAFE_INTEGER;

/** A length in inches as it is typed, and the number format that comes with it. */
export interface TypedLength {
  readonly size: number;
  readonly format?: string;
}

const common = (one: number, other: number): number => (other === 0 ? one : common(other, one % other));

/** How many parts the inch has of which a fraction counts some: 8 for 10/16. */
const partsOf = (over: number, under: number): number => under / common(under, over);

/** The format under which parts of an inch are seen as they were typed; undefined where that of the cell does, or none would. */
const formatOf = (parts: number, format: string | undefined): string | undefined => {
  const onTape = TAPE_PARTS.find((division) => division % parts === 0);
  if (isGeneral(format)) {
    const digits = "?".repeat(String(parts).length);
    if (onTape !== undefined) return `# ??/${onTape}`;
    return digits.length > MOST_DIGITS ? undefined : `# ${digits}/${digits}`;
  }
  // A cell in sixteenths would show a 32nd that was just typed as the sixteenth beside it.
  const [, division] = /\/\s*(\d+)/.exec(withoutQuoted(format ?? "")) ?? [];
  return onTape !== undefined && TAPE_PARTS.includes(Number(division)) && Number(division) % parts !== 0
    ? format?.replace(/\/(\s*)\d+/, `/$1${onTape}`)
    : undefined;
};

const lengthOf = (size: number, format: string | undefined): TypedLength => (format === undefined ? { size } : { size, format });

// As on a telephone's keyboard, or out of a document of text: 7½″, 7–5/8”.
const plainMarks = (text: string): string =>
  text
    .replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${sign.normalize("NFKD")}`)
    .replace(/[\u2044\u2215]/g, "/")
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/[\u201c\u201d\u2033]|''/g, '"')
    .trim();

/**
 * What is typed as inches, as a number: 7 9/16, 7-9/16, 36 5/8". A fraction alone is one where the cell shows fractions, or it is less than
 * an inch and stands on a tape: 5/4 and 12/25 may be names. The inch mark stays, and with it the text, in a cell of decimals, which may be
 * one of millimetres. Feet, marks such as 7 9/16+ and metric lengths are texts.
 */
export const typedLength = (typed: string, format: string | undefined): TypedLength | undefined => {
  if (format !== undefined && (format === TEXT_FORMAT || isDateFormat(format))) return undefined;
  const isOfFractions = isFractionFormat(format);
  const takesMark = isOfFractions || isGeneral(format);
  const text = plainMarks(typed);
  const [, inches] = MARKED_INCHES.exec(text) ?? [];
  if (inches !== undefined) {
    const counted = Math.abs(Number(inches)) * FINEST;
    if (!takesMark || counted > MOST_COUNTED) return undefined;
    return lengthOf(Number(inches), Number.isInteger(counted) ? formatOf(partsOf(counted, FINEST), format) : undefined);
  }
  const [matched, sign, whole, over, under, mark] = FRACTION.exec(text) ?? [];
  if (matched === undefined || Number(under) === 0 || (mark === '"' && !takesMark)) return undefined;
  if (Math.max(Number(whole ?? 0), Number(over), Number(under)) > MOST_COUNTED) return undefined;
  const parts = partsOf(Number(over), Number(under));
  const isLess = Number(over) < Number(under) && FINEST % parts === 0;
  if (whole === undefined && mark === "" && !isOfFractions && !isLess) return undefined;
  const size = Number(whole ?? 0) + Number(over) / Number(under);
  return lengthOf(sign === "-" ? -size : size, formatOf(parts, format));
};
