import { Exact, exact } from "./exact";

/**
 * An exact length, held as a decimal number of millimetres. An inch is 25.4 mm by definition (the international inch of 1959), so
 * inches and millimetres are both exact in it and two lengths meet without rounding.
 */
export type Length = Exact & { readonly quantity?: "length" };

export type Unit = "in" | "mm";

/** By definition, exact. */
export const MILLIMETRES_PER_INCH = new Exact("25.4");

export const INCHES_PER_FOOT = 12;

const millimetresPer = (unit: Unit): Exact => (unit === "in" ? MILLIMETRES_PER_INCH : new Exact(1));

/** The length of `value` inches or millimetres; a number counts as the spreadsheet shows it. */
export const lengthOf = (value: number | string | Exact, unit: Unit): Length => exact(value).times(millimetresPer(unit));

/** A length in inches or millimetres, exact. */
export const lengthIn = (length: Length, unit: Unit): Exact => length.div(millimetresPer(unit));

/** A length in inches or millimetres, as the nearest number a spreadsheet can hold. */
export const measure = (length: Length, unit: Unit): number => lengthIn(length, unit).toNumber();
