import { isStoredError, type StoredValue } from "../workbook-file/sheet/cell-value";
import type { Recalculated } from "./recalc";
import type { CellOfBook } from "./dependants";

const place = ({ sheet, address }: CellOfBook): string => `${/^[\p{L}_][\p{L}\p{N}_]*$/u.test(sheet) ? sheet : `'${sheet}'`}!${address}`;

const shown = (value: StoredValue | null): string =>
  value === null ? "nothing" : isStoredError(value) ? value.error : typeof value === "string" ? `"${value}"` : String(value);

const counted = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;

/** What came of a recalculation, for a person. */
export const reportText = (found: Recalculated): string => {
  const { file, formulas, changed, inError, kept, restsOnKept, leftOut, written } = found;
  const part = (title: string, lines: readonly string[]): readonly string[] =>
    lines.length === 0 ? [] : ["", title, ...lines.map((line) => `  ${line}`)];
  return [
    `${file}: ${counted(formulas, "formula", "formulas")}, ${counted(changed.length, "cell has", "cells have")} another value now.`,
    ...part("Other values:", changed.map((one) => `${place(one)}  ${shown(one.was)} -> ${shown(one.is)}`)),
    ...part("In error:", inError.map((one) => `${place(one)}  ${one.error}  ${one.formula}${one.says === "" ? "" : `\n    ${one.says}`}`)),
    ...part("Kept the value they had:", kept.map((one) => `${place(one)}  ${one.formula}\n    ${one.why}`)),
    ...part("Rest on a value that was kept:", restsOnKept.map(place)),
    ...part("Not in the copy of values:", leftOut.map(({ sheet, what }) => (sheet === undefined ? what : `${sheet}: ${what}`))),
    ...part("Written:", written),
  ].join("\n");
};
