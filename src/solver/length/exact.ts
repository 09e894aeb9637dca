import { Decimal } from "decimal.js";

/**
 * Exact decimal arithmetic of the project's own: its settings are fixed here and never changed.
 * 60 significant digits hold every sum, product and stock fraction met in a stair exactly.
 */
export const Exact = Decimal.clone({ defaults: true, precision: 60, rounding: Decimal.ROUND_HALF_UP });

export type Exact = Decimal;

/** A spreadsheet shows and keeps 15 significant digits. */
export const SPREADSHEET_DIGITS = 15;

/** Whole numbers under this have no more digits than a spreadsheet shows. */
const WHOLE = 10 ** SPREADSHEET_DIGITS;

/** A number as the spreadsheet shows it, so that 1.1 + 1.1 + 1.1 is 3.3 and not a hair more. */
export const exact = (value: number | string | Exact): Exact =>
  new Exact(
    typeof value === "number" && !(Number.isInteger(value) && Math.abs(value) < WHOLE) ? value.toPrecision(SPREADSHEET_DIGITS) : value,
  );

/** What a sheet worked out is off by dust in its 15th digit, a quotient in its 60th; a part in 10^12 is none. */
const DIGITS_THAT_COUNT = 12;

/** The next whole number upwards, of an amount to be bought or opened whole: the dust of a division opens no further one. */
export const wholeUp = (amount: Exact): Exact => amount.toSignificantDigits(DIGITS_THAT_COUNT).ceil();

/** The smallest whole number not below a quotient, without dividing: how many of `each` it takes to cover `whole`. */
export const ceilingOfQuotient = (whole: Exact, each: Exact): number => {
  const floor = whole.divToInt(each);
  return (floor.times(each).lt(whole) ? floor.plus(1) : floor).toNumber();
};

/** `value` rounded to whole steps of `step`, ties away from zero. */
export const roundedTo = (value: Exact, step: Exact): Exact =>
  value.div(step).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).times(step);
