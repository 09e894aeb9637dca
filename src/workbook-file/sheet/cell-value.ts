import type { PlainValue } from "../../sheets/sheet-data";
import { dateNumber } from "../date-number";
import { childOf, countOf, isSet, numberOf, type XmlElement } from "../xml-tree";
import { plainText } from "../xml-text";
import { type SharedText, stringText } from "./shared-strings";

/** An error as a cell of a file holds it. */
export interface StoredError {
  readonly error: string;
}

export type StoredValue = PlainValue | StoredError;

export const isStoredError = (value: StoredValue | null | undefined): value is StoredError => typeof value === "object" && value !== null;

const PLAIN_ERROR = /^#[A-Z0-9/]+[!?]?$/;

const errorOf = (text: string): StoredError => ({ error: PLAIN_ERROR.test(text) ? text : "#VALUE!" });

/** What stands in a cell, or what its formula came to when it was last worked out (ECMA-376-1, 18.18.11, ST_CellType). */
export const cellValue = (cell: XmlElement, strings: readonly SharedText[]): StoredValue | undefined => {
  const kind = cell.attributes["t"] ?? "n";
  if (kind === "inlineStr") return stringText(childOf(cell, "is"));
  const text = childOf(cell, "v")?.text;
  if (text === undefined) return kind === "str" ? "" : undefined;
  if (kind === "s") return strings[countOf(text) ?? -1]?.text;
  if (kind === "str") return plainText(text);
  if (kind === "b") return isSet(text.trim());
  if (kind === "e") return errorOf(text.trim());
  return kind === "d" ? (dateNumber(text.trim()) ?? plainText(text)) : numberOf(text);
};
