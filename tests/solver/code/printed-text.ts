import { Decimal } from "decimal.js";

/** Digits far beyond any printed figure. */
const Digits = Decimal.clone({ defaults: true, precision: 50 });

const INCHES_PER_FOOT = 12;

/**
 * A printed number: whole, decimal, vulgar fraction, or feet and inches in inches. Reads words as a person does, and none of the project's
 * code.
 */
const numberOf = (text: string): Decimal => {
  const [feet, inches] = text.split(/ ft ?/);
  if (inches !== undefined)
    return new Digits(feet ?? 0).times(INCHES_PER_FOOT).plus(inches === "" ? 0 : numberOf(inches.replace(/ in$/, "")));
  return text.split(" ").map((part) => {
    const [over, under] = part.split("/");
    return new Digits(over ?? 0).div(under ?? 1);
  }).reduce((sum, part) => sum.plus(part));
};

/** Every figure in a printed text, in its order. */
export const numbersIn = (text: string): readonly Decimal[] => {
  const found: Decimal[] = [];
  let rest = text;
  for (;;) {
    const start = rest.search(/\d/);
    if (start < 0) return found;
    const [number = ""] = /^\d+(?:\.\d+|\/\d+)?( \d+\/\d+)?( ft( \d+( \d+\/\d+)? in)?)?/.exec(rest.slice(start)) ?? [];
    found.push(numberOf(number));
    rest = rest.slice(start + number.length);
  }
};

/** Millimetres, square millimetres, or as it is. */
const SIZE: Readonly<Record<string, string>> = {
  in: "25.4",
  mm: "1",
  cm: "10",
  m: "1000",
  "sq in": "645.16",
  deg: "1",
  ratio: "1",
  count: "1",
};

/** One printed figure as a size: its own unit where the text has one, else the unit its record is in. */
export const sizeIn = (text: string, unit: string): Decimal => {
  const [number] = numbersIn(text);
  if (number === undefined) throw new Error(`no figure in "${text}"`);
  return number.times(SIZE[/ m$/.test(text) ? "m" : unit] ?? NaN);
};

/** Texts that are figures from end to end: one, two with "to" or "or", a threshold, a slope. */
export const isFigureText = (text: string): boolean =>
  /^(more than )?\d[\d./ ]*( ft( [\d./ ]+ in)?)?(( to | or )\d[\d./ ]*)?( or more)?( risers)?$/.test(text) || /^\d+:\d+$/.test(text);

/** `more than 30` leaves 30 out; `4 or more` and everything else takes its figure in. */
export const leavesItsFigureOut = (text: string): boolean => /\bmore than\b/.test(text);
