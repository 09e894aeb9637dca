/** The number format of a cell that takes everything for text. */
export const TEXT_FORMAT = "@";

/** A number format without what it only prints, and without its colours. */
export const withoutQuoted = (format: string): string => format.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, "");

export const isFractionFormat = (format: string | undefined): boolean =>
  format !== undefined && /[?#0]\s*\/\s*[?#\d]/.test(withoutQuoted(format));

export const isDateFormat = (format: string): boolean => /[dy]/i.test(withoutQuoted(format));

export const isPercentFormat = (format: string | undefined): boolean => format !== undefined && withoutQuoted(format).includes("%");

export const isGeneral = (format: string | undefined): boolean =>
  format === undefined || format === "" || format.toLowerCase() === "general";
