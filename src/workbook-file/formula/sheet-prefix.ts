import { isCell } from "./formula-tokens";

const PLAIN = /^[A-Za-z_][\w]*$/;
/** R1C1 and its like are references in the other notation. */
const OTHER_NOTATION = /^(?:R\d*C\d*|R|C)$/i;

/** A sheet before the ! of a reference, between quotes where it could be read as anything else (ECMA-376-1, 18.17.2.3). */
export const sheetPrefix = (sheet: string): string =>
  PLAIN.test(sheet) && !isCell(sheet) && !OTHER_NOTATION.test(sheet) ? `${sheet}!` : `'${sheet.replaceAll("'", "''")}'!`;
