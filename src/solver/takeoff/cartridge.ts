import { Exact } from "../length/exact";
import { MILLIMETRES_PER_INCH } from "../length/length";
import { type Problem, problem } from "../problem";

/** A US gallon is 231 cubic inches and 128 fluid ounces by definition (NIST Handbook 44, appendix C), so an ounce is 1.8046875. */
const CUBIC_INCHES_PER_OUNCE = new Exact("1.8046875");
const OUNCES_PER_GALLON = 128;

const CUBIC_MILLIMETRES_PER_CUBIC_INCH = MILLIMETRES_PER_INCH.times(MILLIMETRES_PER_INCH).times(MILLIMETRES_PER_INCH);

/** A millilitre is a cubic centimetre, by definition. */
const CUBIC_MILLIMETRES_PER_MILLILITRE = 1000;

/** Digits of a number typed into a cell that count. */
const SPREADSHEET_DIGITS = 15;

const FORM = /^\+?(\d+\.?\d*|\.\d+)\s*(ml|(?:us )?(?:fl\.? ?|fluid )?(?:oz\.?|ounces?))?$/;

export type NoCartridge = "not-a-volume" | "volume-comma" | "no-volume" | "volume-in-millilitres";

const cubicMillimetres = (amount: Exact, isMetric: boolean): Exact =>
  amount.times(isMetric ? CUBIC_MILLIMETRES_PER_MILLILITRE : CUBIC_INCHES_PER_OUNCE.times(CUBIC_MILLIMETRES_PER_CUBIC_INCH));

/**
 * What a cartridge holds, in cubic millimetres, exact: a bare number or `fl oz` counts US fluid ounces, `ml` millilitres. A bare number
 * over a gallon is refused, because cartridges are sold by the millilitre too.
 */
export const cartridge = (text: string): Exact | Problem<NoCartridge> => {
  const form = FORM.exec(text.trim().toLowerCase().replace(/\s+/g, " "));
  if (form === null) {
    return /\d\s*,\s*\d/.test(text)
      ? problem("volume-comma", { text, instead: text.replace(/\s*,\s*/, ".") })
      : problem("not-a-volume", { text });
  }
  const [, digits = "0", unit] = form;
  const amount = new Exact(digits).toSignificantDigits(SPREADSHEET_DIGITS);
  if (amount.isZero()) return problem("no-volume", { text });
  if (unit === undefined && amount.gt(OUNCES_PER_GALLON)) return problem("volume-in-millilitres", { text });
  return cubicMillimetres(amount, unit === "ml");
};
