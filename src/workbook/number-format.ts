/**
 * What the sheet engine gets in the place of the package numfmt: the package, with its reading of dates and writing of fractions put right.
 */
export * from "numfmt";
export { format } from "./fraction-format";
export { parseDate } from "./full-date";
