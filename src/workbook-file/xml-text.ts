/** What ST_Xstring writes for a character that XML cannot have (ECMA-376-1, 22.9.2.19). */
const ESCAPED = /_x([0-9A-Fa-f]{4})_/g;
const HEX = 16;
const DIGITS = 4;
const UNDERSCORE = "_x005F_";

/** A text as a person reads it: _x000D_ is a carriage return, _x005F_ an underscore. */
export const plainText = (text: string): string =>
  text.includes("_x") ? text.replaceAll(ESCAPED, (_, code: string) => String.fromCharCode(Number.parseInt(code, HEX))) : text;

const MARKS: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const marked = (text: string): string => text.replaceAll(/[&<>"]/g, (mark) => MARKS[mark] ?? mark);

/** What XML 1.0 cannot have (2.2, Char), a half of a pair, and the carriage return, which its reader turns into a line end (2.11). */
const NOT_IN_XML = /[\0-\x08\x0b-\x1f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const code = (character: string): string => `_x${character.charCodeAt(0).toString(HEX).toUpperCase().padStart(DIGITS, "0")}_`;

/** A text of a cell as it stands in XML. */
export const escapedText = (text: string): string =>
  marked(text.replaceAll(ESCAPED, (whole) => UNDERSCORE + whole.slice(1)).replaceAll(NOT_IN_XML, code));

/** A text between quotes; a line end there is written by its number, or it would be read as a space (XML 1.0, 3.3.3). */
export const attributeText = (text: string): string =>
  marked(text.replaceAll(NOT_IN_XML, "")).replaceAll(/[\t\n]/g, (space) => `&#${space.charCodeAt(0)};`);
