import { Decimal } from "decimal.js";
import { type Exact, roundedTo, Exact as exactNumber } from "./exact";
import { INCHES_PER_FOOT } from "./length";

export interface TapeStyle {
  /** Parts an inch is divided into: 2, 4, 8, 16, 32 or 64. */
  readonly denominator: number;
  /** Feet and inches from 12 inches up. */
  readonly feet: boolean;
  /** Append + when the length is longer than the mark printed, − when it is shy of it. */
  readonly strong: boolean;
}

/** So many parts of a whole, reduced. */
export const fraction = (parts: number, denominator: number): string => {
  let [over, under] = [parts, denominator];
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return `${over}/${under}`;
};

/** Inches as they are read on a tape: the nearest mark, ties away from zero, the fraction reduced. */
export const tapeText = (inches: Exact, style: TapeStyle): string => {
  const mark = roundedTo(inches, new exactNumber(1).div(style.denominator));
  const whole = mark.abs().toDecimalPlaces(0, Decimal.ROUND_DOWN);
  const parts = mark.abs().minus(whole).times(style.denominator).toNumber();
  const inFeet = style.feet && whole.gte(INCHES_PER_FOOT);
  const feet = inFeet ? `${whole.divToInt(INCHES_PER_FOOT).toString()}' ` : "";
  const wholeInches = inFeet ? whole.mod(INCHES_PER_FOOT) : whole;
  const inchParts = [
    ...(wholeInches.isZero() && parts !== 0 && !inFeet ? [] : [wholeInches.toString()]),
    ...(parts === 0 ? [] : [fraction(parts, style.denominator)]),
  ];
  const strength = !style.strong || mark.eq(inches) ? "" : (mark.isZero() ? inches.gt(mark) : inches.abs().gt(mark.abs())) ? "+" : "−";
  return `${mark.isNegative() && !mark.isZero() ? "-" : ""}${feet}${inchParts.join(" ")}"${strength}`;
};
