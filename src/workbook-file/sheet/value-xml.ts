import { escapedText } from "../xml-text";
import { isStoredError } from "./cell-value";
import type { CalculatedValue } from "./calculated";

/** Errors a cell of a file may hold by their code (ECMA-376-1, 18.17.3); the later ones are kept as the first that all readers know. */
const PLAIN_ERRORS = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"];

export const plainError = (error: string): string => (PLAIN_ERRORS.includes(error) ? error : "#VALUE!");

/** A value of a formula in a cell: the attribute for its type, and its text. */
export interface ValueXml {
  readonly type: "" | "b" | "e" | "str";
  readonly text: string;
}

/** What a formula came to as a cell of a file holds it; undefined for nothing. */
export const valueXml = (value: CalculatedValue): ValueXml | undefined => {
  if (value === null) return undefined;
  if (isStoredError(value)) return { type: "e", text: plainError(value.error) };
  if (typeof value === "boolean") return { type: "b", text: value ? "1" : "0" };
  if (typeof value === "number") return { type: "", text: String(value) };
  return { type: "str", text: escapedText(value) };
};
