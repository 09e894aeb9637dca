import { parseDate as plainParseDate } from "numfmt";

/** Reads a date that is written with its full year; without one, 1/2 and 3-4 are lengths or plain text, never days. */
export const parseDate: typeof plainParseDate = (text, options) => {
  const date = plainParseDate(text, options);
  return date?.z?.includes("yyyy") ? date : null;
};
