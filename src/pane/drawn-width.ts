import type { PlainValue } from "../sheets/sheet-data";

/**
 * Widths of letters as shares of the size of the type, those of Arial (its published metrics: digits 0.556, capitals 0.667 and more, small
 * letters 0.5 to 0.556, l and i 0.222), rounded up, so that narrower types fit as well.
 */
const SHARES: readonly (readonly [RegExp, number])[] = [
  [/[ijl.,:;'|!]/, 0.28],
  [/[ frt/()[\]"-]/, 0.36],
  [/[mwMW@%]/, 0.92],
  [/[A-Z&]/, 0.72],
];
const OTHERS = 0.56;
/** Type of 11 points, at 96 pixels to 72 points. */
const TYPE_SIZE = (11 * 96) / 72;
/** Left free of a column beside its text, both sides together, in pixels. */
const ROOM = 12;
/** Digits of a plain number that are wanted in sight. */
const DIGITS = 9;

/** How wide a column is, in pixels, that shows a text of the usual size. */
export const drawnWidth = (text: string): number =>
  Math.ceil([...text].reduce((sum, letter) => sum + (SHARES.find(([of]) => of.test(letter))?.[1] ?? OTHERS), 0) * TYPE_SIZE) + ROOM;

/** How many lines a text takes in a column of this width: it parts between words. */
export const drawnLines = (text: string, width: number): number => {
  let lines = 1;
  let line = "";
  for (const word of text.split(" ")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && drawnWidth(longer) > width) {
      lines += 1;
      line = word;
    } else line = longer;
  }
  return lines;
};

const grouped = (value: number, decimals: number): string =>
  value.toLocaleString("en-US", { minimumFractionDigits: decimals, maximumFractionDigits: decimals });

/** A text as wide as what a cell of this format shows at the widest. */
export const widestShown = (value: PlainValue, format: string): string => {
  if (typeof value !== "number") return typeof value === "boolean" ? String(value).toUpperCase() : value;
  const [, parts] = /\/(\d+)/.exec(format) ?? [];
  if (parts !== undefined) return `${Math.trunc(value)} ${Number(parts) - 1}/${parts}`;
  const [, decimals] = /0\.([0#]+)/.exec(format) ?? [];
  const percent = format.endsWith("%") ? "%" : "";
  if (decimals !== undefined) return `${grouped(percent === "" ? value : value * 100, decimals.length)}${percent}`;
  return String(Number(value.toPrecision(DIGITS)));
};
