import { lengthIn, lengthOf, type Unit } from "../solver/length/length";
import { fraction, tapeText } from "../solver/length/tape-text";

/** A reading as its keys were touched: a whole inch or ten millimetres, the mark after it, and half a mark more or less. */
export interface Entry {
  readonly whole?: number;
  /** The whole was touched, and no longer follows what is expected. */
  readonly isChosen: boolean;
  readonly part?: number;
  readonly half: -1 | 0 | 1;
}

export const NOTHING_TOUCHED: Entry = { isChosen: false, half: 0 };

/** Sixteenths after an inch; millimetres after ten of them. */
const PARTS: Readonly<Record<Unit, number>> = { in: 16, mm: 10 };
const WHOLE: Readonly<Record<Unit, number>> = { in: 1, mm: 10 };
/** Half a sixteenth. */
const FINEST = 32;
const HALF = 0.5;

export const partsOf = (unit: Unit): readonly number[] => Array.from({ length: PARTS[unit] }, (_, part) => part);

/** What the key of a part says: `3/16`, or the digit. */
export const partText = (part: number, unit: Unit): string => (unit === "mm" || part === 0 ? String(part) : fraction(part, PARTS.in));

/** What the key of a whole says: `36`, or `92_` for what lies between 920 and 930. */
export const wholeText = (whole: number, unit: Unit): string => (unit === "mm" ? `${whole === 0 ? "" : whole}_` : String(whole));

/** The length in the unit of the tape, where whole and part were touched and there is something of it. */
export const entryValue = ({ whole, part, half }: Entry, unit: Unit): number | undefined => {
  if (whole === undefined || part === undefined) return undefined;
  const value = (whole + (part + half * HALF) / PARTS[unit]) * WHOLE[unit];
  return value > 0 ? value : undefined;
};

/** The keys that give a length, to half a mark. */
export const entryOf = (value: number, unit: Unit): Entry => {
  const halves = Math.round((value / WHOLE[unit]) * PARTS[unit] / HALF);
  const parts = Math.floor(halves * HALF);
  return {
    whole: Math.floor(parts / PARTS[unit]), isChosen: true, part: parts % PARTS[unit], half: halves % 2 === 0 ? 0 : 1,
  };
};

/** As on the tape, without its unit. */
export const lengthText = (value: number, unit: Unit): string =>
  unit === "mm"
    ? String(Math.round(value / HALF) * HALF)
    : tapeText(lengthIn(lengthOf(value, "in"), "in"), { denominator: FINEST, feet: false, strong: false }).replace(/"$/, "");

/** What stands for a length while its keys are touched. */
export const entryText = (entry: Entry, unit: Unit): string => {
  const { whole, part } = entry;
  const value = entryValue(entry, unit);
  if (value !== undefined) return lengthText(value, unit);
  if (whole !== undefined) return unit === "mm" ? wholeText(whole, unit) : `${whole} –`;
  return part === undefined ? "–" : `– ${partText(part, unit)}`;
};

const KEYS_ABOUT = 2;

/** The five wholes about what is expected. */
export const wholesAbout = (expected: number, unit: Unit): readonly number[] => {
  const first = Math.max(0, Math.floor(expected / WHOLE[unit]) - KEYS_ABOUT);
  return Array.from({ length: 2 * KEYS_ABOUT + 1 }, (_, place) => first + place);
};

/** The whole that is expected. */
export const expectedWhole = (expected: number, unit: Unit): number => Math.floor(expected / WHOLE[unit]);

/**
 * The whole that goes with a part: of the one expected and its neighbours the one that brings the length nearest to what is expected, where
 * that is near enough; else the one expected.
 */
export const wholeWith = (part: number, expected: number, near: number, unit: Unit): number => {
  const whole = expectedWhole(expected, unit);
  const off = (one: number): number => Math.abs((one + part / PARTS[unit]) * WHOLE[unit] - expected);
  const nearest = [whole, whole - 1, whole + 1].filter((one) => one >= 0).reduce((best, one) => (off(one) < off(best) ? one : best));
  return off(nearest) <= near ? nearest : whole;
};

/** Wholes typed on the keypad: no reading of a stair has more digits. */
export const MOST_DIGITS: Readonly<Record<Unit, number>> = { in: 3, mm: 4 };

/** The keypad is typed in whole inches, or in whole millimetres of which the last gives the part. */
export const paddedEntry = (digits: string, entry: Entry, unit: Unit): Entry => {
  if (digits === "") return entry;
  const number = Number(digits);
  return unit === "in"
    ? { ...entry, whole: number, isChosen: true }
    : { whole: Math.floor(number / PARTS.mm), isChosen: true, part: number % PARTS.mm, half: entry.half };
};
