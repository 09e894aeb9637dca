import type { Mended, NotMended } from "../workbook-file/mended-file";
import { isStoredError, type StoredValue } from "../workbook-file/sheet/cell-value";
import type { CellOfBook } from "./dependants";
import type { MendingReport } from "./mend";
import type { Recalculated } from "./recalc";

const place = ({ sheet, address }: CellOfBook): string => `${/^[\p{L}_][\p{L}\p{N}_]*$/u.test(sheet) ? sheet : `'${sheet}'`}!${address}`;

const shown = (value: StoredValue | null): string =>
  value === null ? "nothing" : isStoredError(value) ? value.error : typeof value === "string" ? `"${value}"` : String(value);

const counted = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;

/** A part of a report under its title; nothing where there are no lines. */
const part = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ["", title, ...lines.map((line) => `  ${line}`)];

const changedNumber = ([was, is]: readonly [number, number]): string => (was === is ? String(is) : `${was} -> ${is}`);

/** The plans that are better than a cell's, and where they show. */
const plansText = ({ plans, formulas }: NonNullable<Recalculated["longer"]>): readonly string[] => [
  ...plans.map(({ cost, sticks, verdict }) => `cost ${changedNumber(cost)}, sticks ${changedNumber(sticks)}: ${verdict}`),
  ...(plans.length === 0 ? ["none"] : []),
  ...(formulas.length === 0 ? [] : [`formulas that come to something else for it: ${formulas.map(place).join(", ")}`]),
];

/** What came of a recalculation, for a person. */
export const reportText = (found: Recalculated): string => {
  const { file, formulas, changed, inError, kept, restsOnKept, leftOut, written, longer } = found;
  return [
    `${file}: ${counted(formulas, "formula", "formulas")}, ${counted(changed.length, "cell has", "cells have")} another value now.`,
    ...part("Other values:", changed.map((one) => `${place(one)}  ${shown(one.was)} -> ${shown(one.is)}`)),
    ...part("Better cutting plans by the long search:", longer === undefined ? [] : plansText(longer)),
    ...part("In error:", inError.map((one) => `${place(one)}  ${one.error}  ${one.formula}${one.says === "" ? "" : `\n    ${one.says}`}`)),
    ...part("Kept the value they had:", kept.map((one) => `${place(one)}  ${one.formula}\n    ${one.why}`)),
    ...part("Rest on a value that was kept:", restsOnKept.map(place)),
    ...part("Not in the copy of values:", leftOut.map(({ sheet, what }) => (sheet === undefined ? what : `${sheet}: ${what}`))),
    ...part("Written:", written),
  ].join("\n");
};

const CELL = /^[A-Z]{1,3}\d+$/;

/** A cell, or the name, rule, list or table that a formula is of. */
const placeOf = ({ sheet, address }: Mended | NotMended): string =>
  sheet === undefined ? address : CELL.test(address) ? place({ sheet, address }) : `${sheet}, ${address}`;

const BECOMES: Readonly<Record<NonNullable<Mended["becomes"]>, (cells: string) => string>> = {
  "dynamic array": () => " (takes up as many cells as it comes to)", "array": (cells) => ` (an array of ${cells})`,
};

/** What came of mending, for a person. */
export const mendingText = ({ file, formulas, mended, notMended, written }: MendingReport): string => [
  `${file}: ${counted(formulas, "formula", "formulas")} in cells; ${counted(mended.length, "formula", "formulas")} to mend.`,
  ...part(written.length === 0 ? "To mend:" : "Mended:", mended.map((one) => {
    const becomes = one.becomes === undefined ? "" : BECOMES[one.becomes](one.cells ?? "");
    return `${placeOf(one)}  ${one.was}\n    ${one.is}${becomes}`;
  })),
  ...part("Cannot be mended:", notMended.map((one) => `${placeOf(one)}  ${one.formula}\n    ${one.why}`)),
  ...part("Written:", written),
  ...(written.length > 0 && mended.length > 0
    ? ["", `Values are as they were. To work them out: treadsheet recalc "${written[0] ?? ""}" --in-place`]
    : []),
].join("\n");
