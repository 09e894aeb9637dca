import { lengthOf, measure, type Unit } from "./length";
import { fraction } from "./tape-text";

/**
 * A 32nd lies half way between two marks of a usual tape, and half a 32nd either way is said in a word, so a mark is made within a 128th of
 * an inch: on a tape read to sixteenths half of all treads came out more than 1/64 off, by trial.
 */
const MARKS_AN_INCH = 32;
/** What `strong` and `shy` stand for, and so from where on the one or the other is nearer than the plain mark. */
const STRONG_INCHES = 1 / 64;
/** An offset is read off a rule, not off a tape. */
const RULE_MARKS_AN_INCH = 64;
/** Metric tapes are read to half a millimetre by eye. */
const MILLIMETRE_MARK = 0.5;

const inches = (value: number, denominator: number): string => {
  const parts = Math.round(value * denominator);
  const [whole, rest] = [Math.floor(parts / denominator), parts % denominator];
  return [...(whole === 0 && rest !== 0 ? [] : [String(whole)]), ...(rest === 0 ? [] : [fraction(rest, denominator)])].join(" ");
};

const millimetres = (value: number): string => String(Math.round(value / MILLIMETRE_MARK) * MILLIMETRE_MARK);

/** A length as it is marked off: the nearest 1/32 in, `strong` or `shy` where it lies 1/64 past or short of that, or half a millimetre. */
export const markedLength = (value: number, unit: Unit): string => {
  if (unit === "mm") return millimetres(value);
  const rest = value - Math.round(value * MARKS_AN_INCH) / MARKS_AN_INCH;
  const word = Math.abs(rest) <= STRONG_INCHES / 2 ? "" : rest > 0 ? " strong" : " shy";
  return `${inches(value, MARKS_AN_INCH)}${word}`;
};

/** A small distance read off a rule: the nearest 1/64 in or half a millimetre. */
export const ruledLength = (value: number, unit: Unit): string =>
  unit === "mm" ? millimetres(value) : inches(value, RULE_MARKS_AN_INCH);

/** Whether a distance is nothing on a rule. */
export const isUnderTheRule = (value: number, unit: Unit): boolean => ruledLength(Math.abs(value), unit) === "0";

/** A length in inches in the unit of the call. */
export const inchesIn = (value: number, unit: Unit): number => measure(lengthOf(value, "in"), unit);
